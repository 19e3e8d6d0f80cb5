import { describe, expect, it } from 'vitest'
import type { MaterialId, StockId } from '../../../engine/basics/id'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import { isMaterialFree } from '../../../engine/project/boards'
import type { Cabinet, Countertop, OwnTop, Project } from '../../../engine/project/document'
import { labelOf } from '../../../engine/project/label'
import { readProject, writeProject } from '../../../engine/project/schema'
import { ownTopEdit, ownTopNames, topEdit } from '../../../engine/project/topOver'
import { aCorner, aWall, cabinet, idOf, OTHER_WALL, type Said, the } from '../../helpers/wall'
import { findingIn } from '../checks/findings'

const TOP: Countertop = { material: 'carcass' as MaterialId, overhang: 20, ends: 15, splash: 80, banding: 2 }
const OAK = 'oak' as MaterialId

/** With a board of oak, 40 thick, and a countertop over all bases. */
function topped(plain: Project, change: Partial<Countertop> = {}): Project {
  const board = { ...plain.materials['carcass' as MaterialId]!, id: OAK, name: 'Oak', nominal: 40, thickness: 40 }
  const like = Object.values(plain.stock).find((one) => one.material === 'carcass')!
  const withOak = applyEdit(plain, {
    kind: 'addMaterial',
    material: board,
    stock: { ...like, id: 's7' as StockId, material: OAK },
  })
  return applyEdit(withOak, { kind: 'editBetween', change: { countertop: { ...TOP, ...change } } })
}
const base = (mark: string, said: Said) => cabinet(mark, { front: { kind: 'pair' }, ...said })
const row = () => [
  base('B1', { left: 200, width: 600 }),
  base('B2', { left: 800, width: 900 }),
  base('B3', { left: 1700, width: 500 }),
]
const own = (project: Project, marks: readonly string[], change: OwnTop | { readonly [name: string]: undefined }) =>
  applyEdit(
    project,
    ownTopEdit(
      marks.map((mark) => the(project, mark)),
      change,
    ),
  )
/** Each board over runs by its part name, board, and size. */
const boards = (project: Project) =>
  derive(project).runs.flatMap(({ parts }) =>
    parts.map(({ mark, material, length, width }) => `${mark} ${material} ${length} x ${width}`),
  )
const depth = 580 + 18

describe('a countertop of another board over some bases', () => {
  it('parts the run there, and either stops where the other begins', () => {
    const project = own(topped(aWall(...row())), ['B2', 'B3'], { material: OAK })
    expect(boards(project)).toEqual([
      `BT1-CT1 carcass ${15 + 600} x ${depth + 20}`,
      `BT1-SP1 carcass ${15 + 600} x 80`,
      `BT2-CT1 oak ${900 + 500 + 15} x ${depth + 20}`,
      `BT2-SP1 oak ${900 + 500 + 15} x 80`,
    ])
    expect(derive(project).runs.map(({ mark, isOwn }) => [mark, isOwn])).toEqual([
      ['BT1', undefined],
      ['BT2', true],
    ])
  })
  it('has its own overhangs, splash and band, and the others as they were', () => {
    const own2 = { overhang: 35, ends: 50, splash: 0, banding: 3 }
    const project = own(topped(aWall(...row())), ['B3'], own2)
    expect(boards(project)).toEqual([
      `BT1-CT1 carcass ${15 + 600 + 900} x ${depth + 20}`,
      `BT1-SP1 carcass ${15 + 600 + 900} x 80`,
      `BT3-CT1 carcass ${500 + 50} x ${depth + 35}`,
    ])
    expect(derive(project).runs[1]!.parts[0]!.banding).toEqual({ low: 0, high: 3, start: 0, end: 3 })
  })
  it('is one again when what is its own is taken back, one by one, and then differs in nothing', () => {
    const before = topped(aWall(...row()))
    const both = own(before, ['B3'], { material: OAK, overhang: 35 })
    expect(ownTopNames(the(both, 'B3'))).toEqual(['material', 'overhang'])
    const one = own(both, ['B3'], { material: undefined })
    expect(ownTopNames(the(one, 'B3'))).toEqual(['overhang'])
    const none = own(one, ['B3'], { overhang: undefined })
    expect(ownTopNames(the(none, 'B3'))).toEqual([])
    expect(boards(none)).toEqual(boards(before))
  })
  it('goes on in one where what is its own comes to the same as beside it', () => {
    const project = own(topped(aWall(...row())), ['B2'], { overhang: 20 })
    expect(boards(project)[0]).toBe(`BT1-CT1 carcass ${15 + 2000 + 15} x ${depth + 20}`)
  })
  it('follows the project in all that is not its own', () => {
    const project = own(topped(aWall(...row())), ['B1', 'B2', 'B3'], { material: OAK })
    const wider = applyEdit(project, { kind: 'editBetween', change: { countertop: { ...TOP, overhang: 30 } } })
    expect(boards(wider)[0]).toBe(`BT1-CT1 oak ${15 + 2000 + 15} x ${depth + 30}`)
  })
  it('is on sheets of its own board, and is told in one undo step with all that it lies on', () => {
    const before = topped(aWall(...row()))
    const edit = ownTopEdit([the(before, 'B1'), the(before, 'B2'), the(before, 'B3')], { material: OAK })
    const parts = derive(applyEdit(before, edit)).sheetJob.parts.filter(({ material }) => material === OAK)
    expect(parts.map(({ length, width }) => `${length} x ${width}`).sort()).toHaveLength(2)
    expect(labelOf(before, edit)).toBe('Change the countertop over B1, B2 and B3')
  })
})

describe('countertops of different boards in a corner', () => {
  const side = (said: Partial<Cabinet> = {}) => base('B2', { wall: OTHER_WALL, left: 620, width: 900, ...said })
  const project = () => topped(aCorner(base('B1', { left: 2000, width: 1600 }), side()))
  it('stop at one another, with no splash that would stand at two heights', () => {
    const plain = boards(project())
    expect(plain).toContain(`BT2-CT1 carcass ${620 + 900 + 15 - (depth + 20)} x ${depth + 20}`)
    // The splash goes on over the other top as far as the splash there.
    expect(plain).toContain(`BT2-SP1 carcass ${620 + 900 + 15 - 18} x 80`)
    const mixed = boards(own(project(), ['B2'], { material: OAK }))
    expect(mixed).toContain(`BT2-CT1 oak ${620 + 900 + 15 - (depth + 20)} x ${depth + 20}`)
    expect(mixed).toContain(`BT2-SP1 oak ${620 + 900 + 15 - (depth + 20)} x 80`)
  })
  it('goes on to the wall with its splash where the other has none', () => {
    expect(boards(own(project(), ['B1'], { splash: 0 }))).toContain(`BT2-SP1 carcass ${620 + 900 + 15} x 80`)
  })
})

describe('what is said of a countertop of its own', () => {
  it('is of its own board and overhang, and its way out changes nothing else', () => {
    const far = own(topped(aWall(...row())), ['B1', 'B2', 'B3'], { overhang: 300 })
    const finding = findingIn(far, /stands out 300 mm before its fronts/)!
    const held = applyEdit(far, finding.remedy!.edit)
    expect(held.between).toBe(far.between)
    expect(the(held, 'B2').top!.own!.overhang).toBeLessThan(300)
    expect(findingIn(held, /before its fronts/)).toBeNull()
    // Of 40 mm oak it holds more: the edge gives with the third power of the thickness.
    expect(findingIn(own(far, ['B1', 'B2', 'B3'], { material: OAK, overhang: 290 }), /before its fronts/)).toBeNull()
    expect(findingIn(own(far, ['B1', 'B2', 'B3'], { overhang: 290 }), /before its fronts/)).not.toBeNull()
  })
  it('changes the project where the measure is the project’s', () => {
    const project = own(topped(aWall(...row())), ['B1'], { material: OAK })
    expect(topEdit(project, [the(project, 'B1')], { splash: 40 }).kind).toBe('editBetween')
  })
})

describe('a countertop of its own in a file', () => {
  const project = own(topped(aWall(...row())), ['B3'], { material: OAK, overhang: 35 })
  it('comes back as it was', () => {
    expect(readProject(writeProject(project))).toEqual({ ok: true, value: project })
  })
  it('is refused where its board is not there, or a measure is none', () => {
    const lost = readProject(
      writeProject(project).replace('"material": "oak",\n     "overhang"', '"material": "elm",\n     "overhang"'),
    )
    expect(lost.ok ? 'read' : lost.message).toContain(
      'cabinets.b3.top.own.material is elm, which is not among materials',
    )
    const bad = readProject(writeProject(project).replace('"overhang": 35', '"overhang": -35'))
    expect(bad.ok ? 'read' : bad.message).toContain('cabinets.b3.top.own.overhang')
  })
  it('keeps its board from being deleted, and takes none that is not there', () => {
    expect(isMaterialFree(project, OAK)).toBe(false)
    expect(own(project, ['B1'], { material: 'elm' as MaterialId })).toBe(project)
    const lost = { ...the(project, 'B3'), id: idOf('B9'), number: 9, top: { own: { material: 'elm' as MaterialId } } }
    expect(applyEdit(project, { kind: 'addCabinet', cabinet: lost })).toBe(project)
  })
})
