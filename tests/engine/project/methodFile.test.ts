import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { MaterialId, MethodId } from '../../../engine/basics/id'
import { applyEdit } from '../../../engine/project/apply'
import { broughtIn } from '../../../engine/project/bringIn'
import { USUAL_DADO_FRONTS } from '../../../engine/project/dadoFront'
import { newProject } from '../../../engine/project/defaults'
import type { Project } from '../../../engine/project/document'
import { USUAL_LEGS } from '../../../engine/project/fixing'
import { NO_FRAMES, USUAL_FIVE_PART, USUAL_FRAME, USUAL_SOLID } from '../../../engine/project/frames'
import { USUAL_HINGE, USUAL_SLIDES } from '../../../engine/project/machining'
import { type MethodFile, readMethod, writeMethod } from '../../../engine/project/methodFile'
import { METHOD_VERSION } from '../../../engine/project/saved'
import { readProject, writeProject } from '../../../engine/project/schema'
import { aWall, cabinet, idOf } from '../../helpers/wall'

const project = aWall(cabinet('B1'))
const [m1, m2, m4] = ['m1', 'm2', 'm4'] as [MethodId, MethodId, MethodId]
const SOUND = writeMethod(project, m1)!

type Json = { [key: string]: Json }

/** The file of the shop standard with one value of it changed; undefined takes it out. */
function spoilt(path: string, value: unknown): string {
  const file = JSON.parse(SOUND) as Json
  const keys = path.split('.')
  keys.slice(0, -1).reduce((inner, key) => inner[key]!, file)[keys.at(-1)!] = value as Json
  return JSON.stringify(file)
}

function why(text: string): string {
  const result = readMethod(text)
  return result.ok ? 'it was read' : result.message
}

function read(text: string): MethodFile {
  const result = readMethod(text)
  if (!result.ok) throw new Error(result.message)
  return result.value
}

describe('a build method in a file', () => {
  it('comes back equal, with the boards that it names and no others', () => {
    for (const one of [project, newProject('in')]) {
      const file = read(writeMethod(one, m2)!)
      expect(file.method).toEqual(one.methods[m2])
      expect(file.materials).toEqual(one.materials)
    }
    const plain = applyEdit(project, { kind: 'editMethod', id: m1, change: { drawerMaterial: 'back' as MaterialId } })
    expect(Object.keys(read(writeMethod(plain, m1)!).materials)).toEqual(['back', 'carcass', 'front'])
  })

  it('comes back with its face frame and its five-part doors', () => {
    const change = { faceFrame: USUAL_FRAME, frontBuild: USUAL_FIVE_PART, panelWood: USUAL_SOLID }
    const framed = applyEdit(project, { kind: 'editMethod', id: m1, change })
    expect(read(writeMethod(framed, m1)!).method).toMatchObject(change)
  })

  it('comes back with how its dados end at the front, which a cabinet may settle otherwise', () => {
    for (const dadoFront of Object.values(USUAL_DADO_FRONTS)) {
      const ended = applyEdit(project, { kind: 'editMethod', id: m1, change: { dadoFront } })
      expect(read(writeMethod(ended, m1)!).method.dadoFront).toEqual(dadoFront)
      const own = applyEdit(project, { kind: 'override', ids: [idOf('B1')], choices: { dadoFront } })
      expect(readProject(writeProject(own))).toEqual({ ok: true, value: own })
    }
    expect(why(spoilt('method.dadoFront', { kind: 'stopped' }))).toMatch(/behind/)
  })

  it('is not written when it is not there', () => {
    expect(writeMethod(project, 'constructor' as MethodId)).toBeNull()
  })

  it('of the first version is read as it was written', () => {
    const text = readFileSync('tests/old-files/v1.casewright-method', 'utf8')
    expect(read(text).method.name).toBe('Shop standard')
  })

  it('of the first version is bored as most shops bore', () => {
    const { method } = read(readFileSync('tests/old-files/v1.casewright-method', 'utf8'))
    expect([method.hinge, method.slides]).toEqual([USUAL_HINGE, USUAL_SLIDES])
  })

  it('of the second version has no face frame and doors of one board, and so needs no board for them', () => {
    const { method } = read(readFileSync('tests/old-files/v2.casewright-method', 'utf8'))
    expect(method).toMatchObject({
      ...NO_FRAMES,
      frameMaterial: method.frontMaterial,
      panelMaterial: method.backMaterial,
    })
  })

  it('of the second version has nothing bored for fixings and pulls, and legs as they were counted', () => {
    const { method } = read(readFileSync('tests/old-files/v2.casewright-method', 'utf8'))
    expect([method.fixing, method.doorPull, method.drawerPull]).toEqual(new Array(3).fill({ kind: 'none' }))
    expect(method.legs).toEqual(USUAL_LEGS)
  })

  it('of this version is written back byte for byte', () => {
    const text = SOUND
    const { method, materials } = read(text)
    const there = { ...project, methods: { [method.id]: method } as typeof project.methods, materials }
    expect(writeMethod(there, method.id)).toBe(text)
  })
})

const UNREADABLE = 'The file cannot be read as a build method. '

describe('a file that is no build method', () => {
  it('is refused where it is cut short with the line', () => {
    expect(why(SOUND.slice(0, 300))).toMatch(/it is not JSON, or it is cut short\. Line \d+, materials\b/)
  })

  it.each([
    [
      '',
      'The file is not a Casewright build method: it is not JSON, or it is cut short. Line 1: a value is missing before the end.',
    ],
    ['[]', 'The file is not a Casewright build method: it holds a list.'],
    ['{}', 'The file is not a Casewright build method: kind is missing.'],
    [spoilt('kind', 'cupboard'), 'The file is not a Casewright build method: kind is "cupboard".'],
    [writeProject(project), 'The file is a project, not a build method. Open it with Open file.'],
    ['['.repeat(100_000), 'The file is nested more than 64 deep; it is not a Casewright build method.'],
    [' '.repeat(200_001), 'The file has 200001 characters; a build method has 200000 at most.'],
    [
      spoilt('version', 7),
      `The file is of version 7; this Casewright reads build methods up to version ${METHOD_VERSION}. Nothing was changed.`,
    ],
  ])('is refused in plain words', (text, message) => {
    expect(why(text)).toBe(message)
  })

  it.each<[string, string, unknown]>([
    ['method.nailers.width is -20; it must be between 0 and 20000 mm.', 'method.nailers.width', -20],
    ['method.bottom is "beside"; it must be between or under.', 'method.bottom', 'beside'],
    ['method.shelves.pitch is missing; it must be between 1 and 1000 mm.', 'method.shelves.pitch', undefined],
    ['method has a field that is not known: colour.', 'method.colour', 'red'],
    ['method.backMaterial is oak, which is not among materials.', 'method.backMaterial', 'oak'],
    ['method.backMaterial is constructor, which is not among materials.', 'method.backMaterial', 'constructor'],
    ['materials.back.id is front; it must be back.', 'materials.back.id', 'front'],
    ['materials.back.thickness is 0; it must be between 1 and 20000 mm.', 'materials.back.thickness', 0],
  ])('is refused with: %s', (message, path, value) => {
    expect(why(spoilt(path, value))).toBe(UNREADABLE + message)
  })

  it('cannot reach what every object has', () => {
    const text = SOUND.replace('"materials": {', '"materials": { "__proto__": { "polluted": true },')
    readMethod(text)
    expect(({} as Record<string, unknown>).polluted).toBeUndefined()
    expect(({} as Record<string, unknown>).id).toBeUndefined()
  })

  it('is no project either', () => {
    const result = readProject(SOUND)
    expect(result.ok || result.message).toBe(
      'The file is a build method, not a project. Bring it in under Build method.',
    )
  })

  it('is answered, never a crash, whatever one value in it becomes, and what is read can be brought in', () => {
    const paths = pathsIn(JSON.parse(SOUND))
    fc.assert(
      fc.property(fc.constantFrom(...paths), fc.jsonValue(), (path, value) => {
        const result = readMethod(spoilt(path.join('.'), value))
        if (!result.ok) {
          expect(result.message.length).toBeLessThan(900)
          return
        }
        const after = applyEdit(project, broughtIn(project, result.value).edit)
        expect(after.methods[m4]).toBeDefined()
        expect(readProject(writeProject(after))).toEqual({ ok: true, value: after })
      }),
      { seed: 3, numRuns: 300 },
    )
  })
})

function pathsIn(value: unknown, path: readonly string[] = []): string[][] {
  if (typeof value !== 'object' || value === null) return [[...path]]
  return Object.entries(value).flatMap(([key, inner]) => pathsIn(inner, [...path, key]))
}

describe('a build method brought into a project', () => {
  it('is a method of its own and finds its boards by their names', () => {
    const { edit, told } = broughtIn(project, read(SOUND))
    expect(told).toEqual([])
    const after = applyEdit(project, edit)
    expect(after.methods[m4]).toEqual({ ...project.methods[m1], id: m4, name: 'Shop standard, copy' })
    expect(after.materials).toBe(project.materials)
  })

  it('keeps its name where no method has it', () => {
    const { edit } = broughtIn(project, read(spoilt('method.name', 'Boat lockers')))
    expect(edit.method).toMatchObject({ id: 'm4', name: 'Boat lockers' })
  })

  it('finds boards of other names by what they measure, and of equals the one used for the same', () => {
    const file = read(writeMethod(newProject('in'), m1)!)
    const { edit, told } = broughtIn(project, file)
    expect(edit.materials).toEqual([])
    expect(edit.method).toMatchObject({
      ...{ carcassMaterial: 'carcass', backMaterial: 'back', frontMaterial: 'front' },
      ...{ drawerMaterial: 'drawer', drawerBottomMaterial: 'back' },
    })
    expect(told).toEqual([
      '3/4 in birch ply (18.3 mm) is 18 mm birch ply here (18 mm), by its thickness.',
      '1/4 in birch ply (5.2 mm) is 6 mm birch ply here (6 mm), by its thickness.',
      '3/4 in front ply (18.3 mm) is 18 mm front ply here (18 mm), by its thickness.',
      '1/2 in birch ply (11.9 mm) is 12 mm birch ply here (12 mm), by its thickness.',
    ])
  })

  it('says of a board of another name that it measures the same, where no difference would show', () => {
    const named = withBoard(project, 'carcass', { name: 'Yard ply', thickness: 18 })
    expect(broughtIn(named, read(SOUND)).told).toEqual(['18 mm birch ply is Yard ply here: it measures 18 mm too.'])
  })

  it('says where the board of its name measures something else', () => {
    const thinner = withBoard(project, 'carcass', { thickness: 17.6 })
    expect(broughtIn(thinner, read(SOUND)).told).toEqual(['18 mm birch ply measures 17.6 mm here, not 18 mm.'])
  })

  it('brings along a board that nothing here comes near to, and its joints stay as they were', () => {
    const thick = withBoard(project, 'carcass', { name: '25 mm oak', thickness: 25.4 })
    const { edit, told } = broughtIn(project, read(writeMethod(thick, m2)!))
    expect(told).toEqual(['25 mm oak (25.4 mm) is new here and has no sheets yet.'])
    const after = applyEdit(project, edit)
    const board = 'board1' as MaterialId
    expect(after.materials[board]).toEqual({ ...thick.materials['carcass' as MaterialId], id: board })
    expect(after.methods[m4]).toMatchObject({ cornerJoint: project.methods[m2]!.cornerJoint, carcassMaterial: board })
    expect(readProject(writeProject(after))).toEqual({ ok: true, value: after })
  })
})

function withBoard(to: Project, id: string, change: { readonly name?: string; readonly thickness: number }): Project {
  return applyEdit(to, { kind: 'editMaterial', id: id as MaterialId, change })
}
