import { describe, expect, it } from 'vitest'
import { type MaterialId, valuesOf } from '../../../engine/basics/id'
import { loadOfShelf, SHELF_LOADS } from '../../../engine/checks/load'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { Material, Project } from '../../../engine/project/document'
import { begin, make, undo } from '../../../engine/project/history'
import { readProject, writeProject } from '../../../engine/project/schema'
import { aWall, cabinet, idOf, the } from '../../helpers/wall'
import { figureOf, findingIn, inHouse, remedied } from './findings'
import { boardsIn, FIXED, LOOSE, PSF, SAG, shelves } from './shelves'

const LESS = 2 * 18 + 3

/** 5 w L^4 / (384 E I) under so many lb per sq ft: the depth falls out. */
function sag(span: number, psf: number): number {
  return ((5 / 32) * psf * PSF * span ** 4) / (9000 * 18 ** 3)
}

describe('a loose shelf', () => {
  it('of a usual width holds what a kitchen asks, and nothing is said', () => {
    expect(findingIn(shelves(600), SAG)).toBeNull()
  })

  it('that sags more than the eye overlooks in the course of years is good to know of', () => {
    // Source: Building Furniture (Fine Woodworking, 2007), p. 25: the eye notices no sag under 1/32 in per foot, which is
    // 1/384, and it grows by half or more in time; mdf-info.eu says the same of the growth.
    // 1/384 of the span is passed between the two widths.
    expect(1.5 * sag(900 - LESS, 15)).toBeLessThan((900 - LESS) / 384)
    expect(1.5 * sag(1000 - LESS, 15)).toBeGreaterThan((1000 - LESS) / 384)
    expect(findingIn(shelves(900), SAG)).toBeNull()
    const finding = findingIn(shelves(1000), SAG)
    expect(finding).toMatchObject({ weight: 'know', about: { kind: 'cabinet', cabinet: idOf('U1') } })
    expect(figureOf(finding?.measure)).toBeCloseTo(1.5 * sag(1000 - LESS, 15), 1)
    expect(figureOf(finding?.limit)).toBeCloseTo((1000 - LESS) / 384, 1)
  })

  // Source: Building Furniture (Fine Woodworking, 2007), p. 25: 0.02 in per foot at once, which is 1/600, is what to design for.
  it('that is designed to sag 1/600 at once is never spoken of, and one that sags a little more is', () => {
    const spanAt = (part: number) => Math.cbrt((32 * 9000 * 18 ** 3) / (5 * 15 * PSF * part))
    expect(findingIn(shelves(spanAt(600) + LESS), SAG)).toBeNull()
    expect(findingIn(shelves(spanAt(560) + LESS), SAG)?.weight).toBe('know')
    // Source: J. Eakes, 'Shelving that does not Sag' (2000): 1/240 is the limit on the side of fibreboard.
    expect(findingIn(shelves(spanAt(240) + LESS), SAG)?.weight).toBe('know')
  })

  // Source: J. Eakes, 'Shelving that does not Sag' (2000): about 3/16 in over 36 in on the side of plywood.
  it('of 36 in may sag 3/16 in in a kitchen', () => {
    const project = shelves(36 * 25.4 + LESS)
    const { id } = Object.values(project.materials)[0]!
    const finding = findingIn(applyEdit(project, { kind: 'editMaterial', id, change: { stiffness: 2500 } }), SAG)
    expect(finding?.weight).toBe('mind')
    expect(figureOf(finding?.limit)).toBeCloseTo((3 / 16) * 25.4, 1)
  })

  // Source: a question-and-answer page on shelves: 20 to 40 lb on a foot of shelf, and 35 in libraries.
  it('for books is taken to carry 40 lb on each foot and more', () => {
    const { length, width } = boardsIn(shelves(600)).find(({ role }) => role === 'adjustableShelf')!
    const pounds = loadOfShelf(length, width, SHELF_LOADS.books.pressure) / (0.45359237 * 9.80665)
    expect(pounds / (length / 304.8)).toBeGreaterThan(40)
  })

  it('under a kitchen load is to be minded where it sags 1/4 in, long before 1/192 of its span', () => {
    // Over 1313 mm 1/4 in is reached: (6.35 x 32 x 9000 x 18^3 / (5 x 15 lb per sq ft)) to the power 1/4.
    const reached = ((6.35 * 32 * 9000 * 18 ** 3) / (5 * 15 * PSF)) ** 0.25
    expect(findingIn(shelves(reached + LESS - 1), SAG)?.weight).toBe('know')
    const finding = findingIn(shelves(reached + LESS + 1), SAG)!
    expect(finding).toMatchObject({ weight: 'mind', limit: '6.35 mm' })
    expect(finding.source).toContain('ANSI/KCMA A161.1')
    expect(sag(reached, 15)).toBeLessThan(reached / 192)
  })

  it('for books is to be minded where 1/144 of its span is passed in time, and a stop where it is at once', () => {
    const books = (width: number) => findingIn(inHouse(shelves(width), { shelfLoad: 'books' }), SAG)
    const atOnce = Math.cbrt((32 * 9000 * 18 ** 3) / (5 * 50 * PSF * 144))
    const inTime = Math.cbrt((32 * 9000 * 18 ** 3) / (1.5 * 5 * 50 * PSF * 144))
    expect(books(inTime + LESS - 1)?.weight).toBe('know')
    expect(books(inTime + LESS + 1)?.weight).toBe('mind')
    expect(books(atOnce + LESS - 1)?.weight).toBe('mind')
    const finding = books(atOnce + LESS + 1)!
    expect(finding).toMatchObject({ weight: 'stop', about: { kind: 'cabinet', cabinet: idOf('U1') } })
    expect(finding.source).toContain('Architectural Woodwork Standards')
    const holds = Number(/([\d.]+) mm is the greatest span/.exec(finding.message)?.[1])
    expect(holds).toBeCloseTo(atOnce, 0)
  })

  it('carries 200 lb at most, however long it is', () => {
    const span = 1800 - LESS
    const depth = boardsIn(shelves(1800)).find(({ role }) => role === 'adjustableShelf')!.width
    const pounds = (50 * PSF * span * depth) / (0.45359237 * 9.80665)
    expect(pounds).toBeGreaterThan(200)
    const finding = findingIn(inHouse(shelves(1800), { shelfLoad: 'books' }), SAG)
    expect(figureOf(finding?.measure)).toBeCloseTo((sag(span, 50) * 200) / pounds, 1)
  })

  it('is told with the 200 lb that it was judged by, and with the even load where that is less', () => {
    const books = (width: number) => findingIn(inHouse(shelves(width), { shelfLoad: 'books' }), SAG)!
    const depth = boardsIn(shelves(1800)).find(({ role }) => role === 'adjustableShelf')!.width
    // 200 lb are 90.7 kg; 50 lb per square foot are 244 kg per m2, here on a shelf of 1761.
    const asked = Math.round((244.12 * (1800 - LESS) * depth) / 1e5) / 10
    expect(books(1800).message).toContain(
      `under 90.7 kg, the most that one is taken to carry in all (244 kg per m² would be ${asked} kg); `,
    )
    expect(books(1800).source).toContain('1.2.21.2')
    expect(books(1000).message).toContain('under 244 kg per m²; ')
    const inches: Project = { ...shelves(1800), display: { unit: 'in', step: 32 } }
    expect(findingIn(inHouse(inches, { shelfLoad: 'books' }), SAG)!.message).toContain('under 200 lb, the most')
  })

  // Source: Architectural Woodwork Standards (2009), section 10, 4.4.14.10 to 13: the spans of the table go with the even load.
  it('so deep that 200 lb are less than the even load is told by the spans of the published table', () => {
    const deep = (width: number) =>
      findingIn(inHouse(aWall(cabinet('U1', { width, depth: 620, interior: LOOSE })), { shelfLoad: 'books' }), SAG)
    const even = Math.cbrt((32 * 9000 * 18 ** 3) / (5 * 50 * PSF * 144))
    const depth = boardsIn(aWall(cabinet('U1', { width: 1100, depth: 620, interior: LOOSE }))).find(
      ({ role }) => role === 'adjustableShelf',
    )!.width
    // Under 200 lb, 889.6 N, it holds up to √(32 E b t^3 / (5 x 144 W)), which is longer.
    const capped = Math.sqrt((32 * 9000 * depth * 18 ** 3) / (5 * 144 * 200 * 0.45359237 * 9.80665))
    expect(capped).toBeGreaterThan(even + 100)
    const greatest = (message = '') => Number(/([\d.]+) mm is the greatest span/.exec(message)?.[1])
    const over = deep(capped + LESS + 1)!
    expect(over.weight).toBe('stop')
    expect(greatest(over.message)).toBeCloseTo(even, 0)
    expect(over.message).toContain('the greatest span that holds under 244 kg per m²')
    // What it is asked to carry at most grows by half in time, and is to be minded; less long, only the table says so.
    expect(deep(capped / Math.sqrt(1.5) + LESS + 1)?.weight).toBe('mind')
    const known = deep(Math.max(even + 1, capped / Math.sqrt(1.5) - 1) + LESS)!
    expect(known.message).toContain('it holds the 90.7 kg that one is taken to carry at most')
    expect(known).toMatchObject({ weight: 'know' })
    expect(known.source).toContain('4.4.14.10 to 13')
    expect(figureOf(known.limit)).toBeLessThan(figureOf(known.measure))
  })

  it('is stiffer when its board measures thicker', () => {
    const project = inHouse(shelves(1000), { shelfLoad: 'general' })
    const carcass = Object.values(project.materials)[0]!
    const at = (thickness: number) => {
      const materials = { ...project.materials, [carcass.id]: { ...carcass, thickness } }
      return findingIn({ ...project, materials }, SAG)
    }
    expect(at(18)?.weight).toBe('mind')
    expect(at(27)).toBeNull()
  })

  it('is worked out with the stiffness of its board', () => {
    const project = inHouse(shelves(1000), { shelfLoad: 'general' })
    const carcass = Object.values(project.materials)[0]!
    const change = { stiffness: 3590 }
    const soft = applyEdit(project, { kind: 'editMaterial', id: carcass.id, change })
    const grown = figureOf(findingIn(project, SAG)?.measure)
    expect(grown).toBeCloseTo(1.5 * sag(1000 - LESS, 40), 1)
    // Fibreboard sags so much more that it is a stop, which is judged at once and not in time.
    expect(figureOf(findingIn(soft, SAG)?.measure)).toBeCloseTo(((grown / 1.5) * 9000) / 3590, 0)
  })
})

describe('shelves of several bays', () => {
  const own = { fixedShelves: 0, adjustableShelves: 1 }
  const bays = [
    { size: { kind: 'fixed', width: 300 }, shelves: own },
    { size: { kind: 'fixed', width: 900 }, shelves: own },
    { size: { kind: 'share', share: 1 }, shelves: own },
  ] as const
  const three = inHouse(
    aWall(cabinet('U1', { width: 2400, interior: { fixedShelves: 0, adjustableShelves: 0, partition: null, bays } })),
    { shelfLoad: 'books' },
  )
  const told = (project: Project) =>
    derive(project).problems.flatMap(({ message }) => (/would sag/.test(message) ? [message] : []))

  it('are judged bay by bay, each by its own span', () => {
    // 2400 - 2 x 18 less two partitions and the two typed bays; a loose shelf is 3 shorter.
    const last = 2400 - 2 * 18 - 2 * 18 - 300 - 900
    const inBays = told(three).filter((message) => /in bay/.test(message))
    expect(inBays).toHaveLength(2)
    expect(inBays[0]).toContain(`the loose shelf of ${900 - 3} mm in bay 2 on pins would sag`)
    expect(inBays[1]).toContain(`the loose shelf of ${last - 3} mm in bay 3 on pins would sag`)
  })

  it('are fixed in their bay alone, where that is enough', () => {
    const way = findingIn(three, /in bay 2 on pins/)!
    expect(way.remedy?.label).toBe('Fix the shelves in bay 2 of U1')
    const after = remedied(three, way)
    expect(the(after, 'U1').interior.bays?.map(({ shelves }) => shelves)).toEqual([
      own,
      { fixedShelves: 1, adjustableShelves: 0 },
      own,
    ])
  })
})

describe('the way out for shelves that sag', () => {
  const project = inHouse(shelves(1000), { shelfLoad: 'books' })
  const finding = findingIn(project, SAG)!

  it('fixes them where they then hold, in one step', () => {
    const after = remedied(project, finding)
    expect(the(after, 'U1').interior).toEqual(FIXED)
    expect(findingIn(after, SAG)?.weight ?? 'know').toBe('know')
  })

  it('is undone in one step, and kept in a file', () => {
    const made = make(begin(project), finding.remedy!.edit, finding.remedy!.label)
    expect(made.past.at(-1)?.label).toBe('Fix the shelves of U1')
    expect(undo(made).present).toBe(project)
    expect(readProject(writeProject(made.present))).toEqual({ ok: true, value: made.present })
  })

  it('is a partition where fixing is not enough', () => {
    const wide = inHouse(aWall(cabinet('T1', { width: 1500, interior: LOOSE })), { shelfLoad: 'books' })
    const way = findingIn(wide, SAG)!
    expect(way.remedy?.label).toBe('Put a partition into T1')
    expect(the(remedied(wide, way), 'T1').interior.partition).toEqual({ at: 0.5 })
  })

  it('is a partition that cures the loose shelves, where the bottom still sags and nothing sags more', () => {
    const interior = { fixedShelves: 1, adjustableShelves: 2, partition: null }
    const wide = inHouse(aWall(cabinet('U1', { width: 1200, front: { kind: 'pair' }, interior })), {
      shelfLoad: 'books',
    })
    const way = findingIn(wide, SAG)!
    expect(way.message).toMatch(/2 loose shelves/)
    expect(way.remedy?.label).toBe('Put a partition into U1')
    const left = findingIn(remedied(wide, way), SAG)
    expect(left?.message ?? '').not.toMatch(/shel(f|ves) of/)
  })

  it('is a thicker board that the project has, where everything then holds', () => {
    const interior = { fixedShelves: 1, adjustableShelves: 2, partition: null }
    const wide = inHouse(aWall(cabinet('U1', { width: 1200, interior })), { shelfLoad: 'books' })
    const [plain] = valuesOf<Material>(wide.materials)
    const boards = [20, 25, 30].map((thickness) => {
      return {
        ...plain!,
        id: `m${thickness}` as MaterialId,
        name: `${thickness} mm ply`,
        nominal: thickness,
        thickness,
      }
    })
    const materials = { ...wide.materials, ...Object.fromEntries(boards.map((one) => [one.id, one])) }
    const project = { ...wide, materials: materials as Project['materials'] }
    const way = findingIn(project, SAG)!
    // The thinnest that does: of 20 they would still sag.
    expect(way.remedy?.label).toBe('Build U1 of 25 mm ply')
    const after = remedied(project, way)
    expect(the(after, 'U1').overrides).toEqual({ carcassMaterial: 'm25' })
    expect(findingIn(after, SAG)?.weight ?? 'know').toBe('know')
  })

  it('is not offered where nothing is held by it', () => {
    const vast = inHouse(aWall(cabinet('U1', { width: 3400, interior: LOOSE })), { shelfLoad: 'books' })
    expect(findingIn(vast, SAG)?.remedy).toBeUndefined()
  })
})
