import { describe, expect, it } from 'vitest'
import type { MaterialId, MethodId } from '../../../engine/basics/id'
import { applyEdit } from '../../../engine/project/apply'
import type { Edit } from '../../../engine/project/edit'
import { begin, make, undo } from '../../../engine/project/history'
import { isMethodFree, namersOf, ownName } from '../../../engine/project/methods'
import { readProject, writeProject } from '../../../engine/project/schema'
import { aWall, cabinet } from '../../helpers/wall'

const [m1, m2, m4] = ['m1', 'm2', 'm4'] as [MethodId, MethodId, MethodId]
const project = aWall(cabinet('B1'), cabinet('B2', { left: 700, method: m2 }))
const standard = project.methods[m1]!
const gone = 'gone' as MethodId

/** The project with an edit made; undo gives the very same project back, and a file keeps what was made. */
function made(edit: Edit, to = project) {
  const history = make(begin(to), edit, 'Change')
  const { present } = history
  if (present !== to) expect(undo(history).present).toBe(to)
  expect(readProject(writeProject(present))).toEqual({ ok: true, value: present })
  return present
}

describe('a copied method', () => {
  it('has a free id, a name of its own and everything else as it was', () => {
    const after = made({ kind: 'copyMethod', id: m1 })
    expect(after.methods[m4]).toEqual({ ...standard, id: m4, name: 'Shop standard, copy' })
    expect(after.methods[m1]).toBe(standard)
    expect(after.method).toBe(m1)
  })

  it('of a copy is the next copy of the first', () => {
    const once = made({ kind: 'copyMethod', id: m1 })
    const twice = made({ kind: 'copyMethod', id: m4 }, once)
    expect(twice.methods['m5' as MethodId]?.name).toBe('Shop standard, copy 2')
  })

  it('of a long name ends in its number all the same', () => {
    const long = 'x'.repeat(80)
    const named = applyEdit(project, { kind: 'editMethod', id: m1, change: { name: long } })
    expect(made({ kind: 'copyMethod', id: m1 }, named).methods[m4]?.name).toBe(`${'x'.repeat(74)}, copy`)
  })

  it('changes apart from the one it was copied from', () => {
    const copied = applyEdit(project, { kind: 'copyMethod', id: m1 })
    const after = made({ kind: 'editMethod', id: m4, change: { bottom: 'under' } }, copied)
    expect([after.methods[m1]!.bottom, after.methods[m4]!.bottom]).toEqual(['between', 'under'])
  })
})

describe('a name of its own', () => {
  it('is the name itself while no method has it', () => {
    expect(ownName('Boat lockers', project.methods)).toBe('Boat lockers')
  })
})

describe('removing a method', () => {
  it('takes away one that nothing is built by', () => {
    const free = applyEdit(project, { kind: 'setCabinetMethod', ids: [namersOf(project, m2)[0]!.id], method: null })
    expect(Object.keys(made({ kind: 'removeMethod', id: m2 }, free).methods)).toEqual(['m1', 'm3'])
  })

  it('is refused while the project is built by it', () => {
    expect(isMethodFree(project, m1)).toBe(false)
    expect(applyEdit(project, { kind: 'removeMethod', id: m1 })).toBe(project)
  })

  it('is refused while a cabinet names it, though it does the same for no other', () => {
    expect(namersOf(project, m2).map(({ id }) => id)).toEqual(['b2'])
    expect(applyEdit(project, { kind: 'removeMethod', id: m2 })).toBe(project)
  })
})

describe('the method of the project', () => {
  it('is another one when it is told so, and cabinets that name theirs keep it', () => {
    const copied = applyEdit(project, { kind: 'copyMethod', id: m1 })
    const after = made({ kind: 'useMethod', id: m4 }, copied)
    expect(after.method).toBe(m4)
    expect(after.cabinets).toBe(project.cabinets)
  })
})

describe('a method that is put', () => {
  const own = { ...project.materials['back' as MaterialId]!, id: 'own' as MaterialId, name: '4 mm ply', thickness: 4.2 }
  const lockers = { ...standard, id: m4, name: 'Boat lockers', backMaterial: own.id }

  it('comes in with the boards that it brings', () => {
    const after = made({ kind: 'putMethod', method: lockers, materials: [own] })
    expect(after.methods[m4]).toEqual(lockers)
    expect(after.materials[own.id]).toEqual(own)
  })

  it('is left out, boards and all, when one of its boards is nowhere', () => {
    expect(applyEdit(project, { kind: 'putMethod', method: lockers, materials: [] })).toBe(project)
    const drawn = { ...lockers, drawerMaterial: 'nowhere' as MaterialId }
    expect(applyEdit(project, { kind: 'putMethod', method: drawn, materials: [own] })).toBe(project)
  })

  it('is left out when one of its boards has a thickness that no file could keep', () => {
    const thin = { ...own, thickness: 0 }
    expect(applyEdit(project, { kind: 'putMethod', method: lockers, materials: [thin] })).toBe(project)
  })
})

describe('an edit of methods that changes nothing', () => {
  it.each<[string, Edit]>([
    ['copies one that is not there', { kind: 'copyMethod', id: gone }],
    ['copies what every object has', { kind: 'copyMethod', id: 'constructor' as MethodId }],
    ['removes one that is not there', { kind: 'removeMethod', id: gone }],
    ['uses one that is not there', { kind: 'useMethod', id: 'constructor' as MethodId }],
    ['uses the one that is used', { kind: 'useMethod', id: m1 }],
    ['puts the same one again', { kind: 'putMethod', method: { ...standard }, materials: [] }],
  ])('%s: the project stays the same object', (_, edit) => {
    expect(applyEdit(project, edit)).toBe(project)
  })
})
