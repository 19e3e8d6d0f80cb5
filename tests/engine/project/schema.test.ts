import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { derive } from '../../../engine/pipeline'
import { newProject } from '../../../engine/project/defaults'
import { type Project, VERSION } from '../../../engine/project/document'
import { USUAL_LEGS } from '../../../engine/project/fixing'
import { NO_FRAMES, USUAL_FRAME } from '../../../engine/project/frames'
import { USUAL_HINGE, USUAL_SLIDES } from '../../../engine/project/machining'
import type { BuildMethod } from '../../../engine/project/method'
import { MIGRATIONS } from '../../../engine/project/migrate'
import { readProject, writeProject } from '../../../engine/project/schema'
import { demonstrationKitchen } from '../../../engine/samples/kitchen'
import { aWall, cabinet, idOf } from '../../helpers/wall'

const project = aWall(cabinet('B1'), cabinet('B2', { left: 600 }))

type Json = { [key: string]: Json }

/** The file of the project with one value of it changed; undefined takes it out. */
function spoilt(path: string, value: unknown): string {
  return JSON.stringify(changedAt(JSON.parse(writeProject(project)), path.split('.'), value))
}

function changedAt(file: Json, path: readonly string[], value: unknown): Json {
  const holder = path.slice(0, -1).reduce((inner, key) => inner[key]!, file)
  holder[path.at(-1)!] = value as Json
  return file
}

function why(text: string): string {
  const result = readProject(text)
  return result.ok ? 'it was read' : result.message
}

const UNREADABLE = 'The file cannot be read as a project. '

describe('a project in a file', () => {
  it('comes back equal, and is the same file when written again', () => {
    for (const one of [newProject('mm'), newProject('in'), project, demonstrationKitchen()]) {
      const text = writeProject(one)
      const read = readProject(text)
      expect(read).toEqual({ ok: true, value: one })
      if (read.ok) expect(writeProject(read.value)).toBe(text)
    }
  })

  it('keeps what a method may leave out: longer slides that come out in part, another top rail of uppers', () => {
    const plain = newProject('in')
    const method = plain.methods[plain.method]!
    const changed: BuildMethod = {
      ...method,
      slide: { kind: 'undermount', insideDeduction: 41.3, longerBy: 22.225 },
      slides: { ...method.slides, extension: 'standard' },
      faceFrame: { ...USUAL_FRAME, upperTopRail: 63.5 },
    }
    const project: Project = { ...plain, methods: { ...plain.methods, [method.id]: changed } }
    expect(readProject(writeProject(project))).toEqual({ ok: true, value: project })
  })

  it('is the same whatever the order its keys were made in', () => {
    const turned = Object.fromEntries(Object.entries(project).reverse()) as unknown as typeof project
    expect(writeProject(turned)).toBe(writeProject(project))
  })

  it('may begin with the mark that some editors put there', () => {
    expect(readProject(`\uFEFF${writeProject(project)}`).ok).toBe(true)
  })

  it('may have a name full of brackets', () => {
    const named = { ...project, name: '['.repeat(70) }
    expect(readProject(writeProject(named))).toEqual({ ok: true, value: named })
  })

  it('has its lengths settled and its names cleaned as it is read', () => {
    const file = JSON.parse(writeProject({ ...project, name: 'Cafe\u0301\u202E' }))
    file.cabinets.b1.left = 0.1 + 0.2
    const read = readProject(JSON.stringify(file).replace('"left":600', '"left":-0'))
    expect(read.ok && read.value.cabinets).toMatchObject({ b1: { left: 0.3 }, b2: { left: 0 } })
    expect(read.ok && read.value.name).toBe('Café')
  })
})

describe('a file that is no project', () => {
  it.each([
    [
      '',
      'The file is not a Casewright project: it is not JSON, or it is cut short. Line 1: a value is missing before the end.',
    ],
    [
      '{\n"version": 6,\n"cabinets": {"b1": {"width": NaN}}}',
      'The file is not a Casewright project: it is not JSON, or it is cut short. Line 3, cabinets.b1.width: the value is NaN, which is no JSON number; it must be a number that has an end.',
    ],
    ['[]', 'The file is not a Casewright project: it holds a list.'],
    ['{}', 'The file is not a Casewright project: version is missing.'],
    ['{"version":"one"}', 'The file is not a Casewright project: version is "one".'],
    [`${'['.repeat(100_000)}`, 'The file is nested more than 64 deep; it is not a Casewright project.'],
    [' '.repeat(20_000_001), 'The file has 20000001 characters; a project has 20000000 at most.'],
  ])('is refused in plain words', (text, message) => {
    expect(why(text)).toBe(message)
  })

  it('is refused where it is cut short with the line that is the last', () => {
    const text = writeProject(project).slice(0, 500)
    expect(why(text)).toMatch(
      new RegExp(`cut short\\. Line ${text.trimEnd().split('\n').length}\\b.* is missing before`),
    )
  })

  it('of a newer version is refused by that version', () => {
    expect(why(spoilt('version', VERSION + 1))).toBe(
      `The file is of version ${VERSION + 1}; this Casewright reads up to version ${VERSION}. Nothing was changed.`,
    )
  })

  it.each<[string, string, unknown]>([
    ['cabinets.b1.width is -20; it must be between 1 and 20000 mm.', 'cabinets.b1.width', -20],
    ['cabinets.b1.width is "wide"; it must be between 1 and 20000 mm.', 'cabinets.b1.width', 'wide'],
    ['cabinets.b1.width is missing; it must be between 1 and 20000 mm.', 'cabinets.b1.width', undefined],
    ['cabinets.b1.left is null; it must be between -100000 and 100000 mm.', 'cabinets.b1.left', Number.NaN],
    ['cabinets.b1.number is 1.5; it must be a whole number between 1 and 99999.', 'cabinets.b1.number', 1.5],
    ['cabinets is missing; it must be an object.', 'cabinets', undefined],
    ['shop.canJoinRails is "no"; it must be true or false.', 'shop.canJoinRails', 'no'],
    ['shop.kerf is 300; it must be between 0 and 20 mm.', 'shop.kerf', 300],
    ['cabinets.b1.kind is "shelf"; it must be base or upper or tall.', 'cabinets.b1.kind', 'shelf'],
    [
      'cabinets.b1.front.kind is "hatch"; it must be one of the kinds that Casewright knows.',
      'cabinets.b1.front',
      { kind: 'hatch' },
    ],
    ['cabinets.b1 has a field that is not known: colour.', 'cabinets.b1.colour', 'red'],
    [`name is "${'x'.repeat(59)}...; it must be a text of 80 signs at most.`, 'name', 'x'.repeat(81)],
    ['cabinets.b1.id is b9; it must be b1.', 'cabinets.b1.id', 'b9'],
    ['cabinets.b1.wall is w9, which is not among walls.', 'cabinets.b1.wall', 'w9'],
    ['cabinets.b1.wall is constructor, which is not among walls.', 'cabinets.b1.wall', 'constructor'],
    ['cabinets.b1.method is m9, which is not among methods.', 'cabinets.b1.method', 'm9'],
    [
      'cabinets.b1.overrides.backMaterial is oak, which is not among materials.',
      'cabinets.b1.overrides',
      { backMaterial: 'oak' },
    ],
    ['cabinets.b2.number is 1, which another base cabinet has.', 'cabinets.b2.number', 1],
    ['method is m9, which is not among methods.', 'method', 'm9'],
    ['methods.m2.frontMaterial is oak, which is not among materials.', 'methods.m2.frontMaterial', 'oak'],
    ['stock.s1.material is oak, which is not among materials.', 'stock.s1.material', 'oak'],
    ['walls is empty; a project has one wall at least.', 'walls', {}],
    ['display.step is 3; it must be 1, 0.5 or 0.1.', 'display.step', 3],
    [
      'cabinets.B 1 has a name that is no id: small letters, figures and hyphens.',
      'cabinets.B 1',
      project.cabinets[idOf('B1')],
    ],
  ])('is refused with: %s', (message, path, value) => {
    expect(why(spoilt(path, value))).toBe(UNREADABLE + message)
  })

  it('is told by its first three faults and the number of the others', () => {
    const faults = { width: 'x', height: 'x', depth: 'x', left: 'x', bottom: 'x' }
    const text = spoilt('cabinets.b1', { ...project.cabinets[idOf('B1')], ...faults })
    expect(why(text)).toMatch(/^The file cannot.* And 2 more\.$/)
  })

  it('of 501 cabinets is refused by their number', () => {
    const many = Array.from({ length: 501 }, (_, at) => [`k${at}`, cabinet(`B${at + 1}`, {})])
    const text = spoilt('cabinets', Object.fromEntries(many))
    expect(why(text)).toBe('The file has 501 cabinets; 500 is the most.')
  })

  it('cannot reach what every object has', () => {
    const text = writeProject(project).replace('"cabinets": {', '"cabinets": { "__proto__": { "polluted": true },')
    const result = readProject(text)
    expect(({} as Record<string, unknown>).polluted).toBeUndefined()
    if (result.ok) expect(Object.keys(result.value.cabinets)).toEqual(['b1', 'b2'])
  })

  it('is answered, never a crash, whatever one value in it becomes', () => {
    const paths = pathsIn(JSON.parse(writeProject(project)))
    fc.assert(
      fc.property(fc.constantFrom(...paths), fc.jsonValue(), (path, value) => {
        const file = changedAt(JSON.parse(writeProject(project)), path, value)
        const result = readProject(JSON.stringify(file))
        if (result.ok) expect(readProject(writeProject(result.value))).toEqual(result)
        else expect(result.message.length).toBeLessThan(900)
      }),
      { seed: 3, numRuns: 500 },
    )
  })
})

function pathsIn(value: unknown, path: readonly string[] = []): string[][] {
  if (typeof value !== 'object' || value === null) return [[...path]]
  return Object.entries(value).flatMap(([key, inner]) => pathsIn(inner, [...path, key]))
}

// They do not end in .json, so that no formatter ever touches them: they are frozen to the byte.
describe('files of old versions', () => {
  const files = readdirSync('tests/old-files').filter((file) => file.endsWith('.casewright'))

  it('are there for every version, and every version but the last has its migration', () => {
    const versions = Array.from({ length: VERSION }, (_, at) => `v${at + 1}.casewright`)
    expect(files.sort()).toEqual(versions)
    expect(MIGRATIONS.length).toBe(VERSION - 1)
  })

  it.each(files)('%s is read, and is a file of this version when written again', (file) => {
    const read = readProject(readFileSync(`tests/old-files/${file}`, 'utf8'))
    expect(read.ok ? 'read' : read.message).toBe('read')
    if (!read.ok) return
    expect(Object.keys(read.value.cabinets)).toHaveLength(file === 'v7.casewright' ? 11 : 10)
    expect(readProject(writeProject(read.value))).toEqual(read)
  })

  it('of version 1 get the tools that shops had without saying so', () => {
    const read = readProject(readFileSync('tests/old-files/v1.casewright', 'utf8'))
    expect(read.ok && read.value.shop).toMatchObject({
      ...{ canJoinRails: true, narrowRips: { least: 0, greatest: 230 }, roughLength: 10, cutOrder: null },
      ...{ blades: { rip: { teeth: 18 }, crosscut: { teeth: 48 } }, railLength: 2700 },
    })
  })

  it('of version 2 have no sheet set aside', () => {
    const read = readProject(readFileSync('tests/old-files/v2.casewright', 'utf8'))
    expect(read.ok && Object.values(read.value.stock).map(({ isExcluded }) => isExcluded)).toEqual([
      ...new Array(read.ok ? Object.keys(read.value.stock).length : 0).fill(false),
    ])
  })

  it('of version 5 get hinges and slides bored as most shops bore them', () => {
    const read = readProject(readFileSync('tests/old-files/v5.casewright', 'utf8'))
    const rules = read.ok && Object.values(read.value.methods).map(({ hinge, slides }) => ({ hinge, slides }))
    expect(rules).toEqual(new Array(2).fill({ hinge: USUAL_HINGE, slides: USUAL_SLIDES }))
  })

  it('of version 6 have nothing bored for fixings, pulls and legs', () => {
    const read = readProject(readFileSync('tests/old-files/v6.casewright', 'utf8'))
    if (!read.ok) throw new Error(read.message)
    const none = { kind: 'none' }
    for (const { fixing, doorPull, drawerPull, legs } of Object.values(read.value.methods)) {
      expect({ fixing, doorPull, drawerPull, legs }).toEqual({
        ...{ fixing: none, doorPull: none, drawerPull: none },
        legs: USUAL_LEGS,
      })
    }
    const added = ['screw', 'pilot', 'dowel', 'looseTenon', 'pull', 'legPlate']
    const bored = derive(read.value).cabinets.flatMap(({ parts }) =>
      parts.flatMap(({ operations }) =>
        operations.flatMap((one) => (one.kind === 'holeRow' && added.includes(one.purpose) ? [one] : [])),
      ),
    )
    expect(bored).toEqual([])
  })

  it('of version 5 have nothing beside their cabinets and nothing over them', () => {
    const read = readProject(readFileSync('tests/old-files/v5.casewright', 'utf8'))
    if (!read.ok) throw new Error(read.message)
    expect(read.value.between).toMatchObject({ kick: 'perCabinet', countertop: null })
    for (const { beside, cutout } of Object.values(read.value.cabinets)) {
      expect([beside, cutout]).toEqual([{ left: { kind: 'none' }, right: { kind: 'none' } }, null])
    }
  })

  it('of version 6 have no trims, and countertops without bands', () => {
    const read = readProject(readFileSync('tests/old-files/v6.casewright', 'utf8'))
    if (!read.ok) throw new Error(read.message)
    const { countertop, ...between } = read.value.between
    expect(between).toMatchObject({ lightRail: null, crown: null, valance: null })
    expect(countertop!.banding).toBe(0)
  })

  it('of version 6 have no cabinet that goes on along another wall', () => {
    const read = readProject(readFileSync('tests/old-files/v6.casewright', 'utf8'))
    if (!read.ok) throw new Error(read.message)
    expect(Object.values(read.value.cabinets).map(({ corner }) => corner)).toEqual(new Array(10).fill(null))
  })

  it('of version 6 have no face frame, doors of one board and no board for what they have not', () => {
    const read = readProject(readFileSync('tests/old-files/v6.casewright', 'utf8'))
    if (!read.ok) throw new Error(read.message)
    for (const method of Object.values(read.value.methods)) {
      const { frontMaterial: frameMaterial, backMaterial: panelMaterial } = method
      expect(method).toMatchObject({ ...NO_FRAMES, frameMaterial, panelMaterial })
    }
  })

  it('of this version are written back byte for byte', () => {
    const text = readFileSync(`tests/old-files/v${VERSION}.casewright`, 'utf8')
    const read = readProject(text)
    expect(read.ok && writeProject(read.value)).toBe(text)
  })
})
