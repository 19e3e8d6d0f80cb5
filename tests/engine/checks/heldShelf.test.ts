import { describe, expect, it } from 'vitest'
import { SHELF_LOADS } from '../../../engine/checks/load'
import { sagOf } from '../../../engine/checks/sag'
import { derive } from '../../../engine/pipeline'
import type { Project } from '../../../engine/project/document'
import { USUAL_LEGS } from '../../../engine/project/fixing'
import type { Floor } from '../../../engine/project/method'
import { aWall, cabinet, type Said } from '../../helpers/wall'
import { built, figureOf, findingIn, inHouse } from './findings'
import { boardsIn, FIXED, SAG, shelves } from './shelves'

describe('a fixed shelf', () => {
  // Source: a formula sheet of beams, both ends fixed: w L^4 / (384 E I), a fifth of one that rests. Half way between the two
  // is three fifths: common practice, no source.
  it('in dadoes sags three fifths of one on pins', () => {
    const fixed = inHouse(shelves(1300, FIXED), { shelfLoad: 'general' })
    const inDadoes = findingIn(fixed, SAG)
    const onPins = findingIn(built(fixed, { fixedShelf: 'pinned' }), SAG)
    // Both are as long as the room between the sides; with 200 lb on both the sum is the same.
    expect(inDadoes?.message).toContain('judged half way')
    expect(onPins?.message).toContain('on pins')
    const grown = (finding: typeof onPins) => figureOf(finding?.measure) / (/years/.test(finding!.message) ? 1.5 : 1)
    expect(grown(inDadoes) / grown(onPins)).toBeCloseTo(0.6, 2)
  })
})

describe('the bottom', () => {
  const OPEN = { fixedShelves: 0, adjustableShelves: 0, partition: null }
  const books = (mark: string, floor: Floor, said: Said) =>
    findingIn(
      inHouse(aWall(cabinet(mark, { interior: OPEN, overrides: { floor }, ...said })), { shelfLoad: 'books' }),
      SAG,
    )
  const NONE: Floor = { kind: 'none' }
  const NOTCHED: Floor = { kind: 'notched', height: 100, setback: 75 }

  it('of a base that hangs sags as that of an upper of its size does', () => {
    const size = { bottom: 350, height: 500, depth: 460, width: 1600 }
    const [base, upper] = [books('B1', NONE, size), books('U1', NONE, size)]
    expect(base).toMatchObject({ weight: 'stop' })
    expect(base!.message).toContain('the bottom of 1564 mm')
    expect([base!.measure, base!.limit, base!.source]).toEqual([upper!.measure, upper!.limit, upper!.source])
  })

  it('of one that stands on the floor or on a plinth is borne by it', () => {
    const size = { height: 868, depth: 580, width: 1600 }
    expect(books('B1', NONE, size)).toBeNull()
    expect(books('B1', { kind: 'plinth', height: 100, setback: 75 }, size)).toBeNull()
  })

  it('between notched sides is judged from side to side, and says that the kick bears its front alone', () => {
    const size = { height: 868, depth: 580, width: 1500 }
    const told = books('B1', NOTCHED, size)!
    // Between sides of 18; 200 lb are less than the even load.
    const span = 1500 - 2 * 18
    const { width } = boardsIn(aWall(cabinet('B1', { ...size, overrides: { floor: NOTCHED } }))).find(
      ({ role }) => role === 'bottom',
    )!
    const newtons = 200 * 0.45359237 * 9.80665
    const atOnce = (0.6 * 5 * newtons * span ** 3) / (384 * 9000 * ((width * 18 ** 3) / 12))
    expect(atOnce).toBeLessThan(span / 144)
    expect(told.weight).toBe('mind')
    expect(figureOf(told.measure)).toBeCloseTo(1.5 * atOnce, 1)
    expect(figureOf(told.limit)).toBeCloseTo(span / 144, 1)
    expect(told.message).toContain('the kick board is taken to bear its front and nothing its rear edge')
    expect(told.source).toContain('half way between resting and clamped: common practice, no source')
    // A partition stands on the bottom, and is no way out.
    expect(books('B1', NOTCHED, { ...size, interior: { ...OPEN, partition: { at: 0.5 } } })?.measure).toBe(told.measure)
    expect(told.remedy).toBeUndefined()
    expect(books('B1', NOTCHED, { ...size, width: 700 })).toBeNull()
  })

  it('on legs is judged from leg to leg', () => {
    const legs = (spacing: number) =>
      findingIn(
        built(inHouse(aWall(cabinet('B1', { width: 1500, interior: OPEN })), { shelfLoad: 'books' }), {
          floor: { kind: 'legs', height: 100, setback: 50 },
          legs: { ...USUAL_LEGS, spacing, fromEdge: 50 },
        }),
        SAG,
      )
    expect(legs(500)).toBeNull()
    expect(legs(1400)?.message).toContain('the bottom of 1400 mm from leg to leg')
  })

  it('on three legs goes on over the middle one, and sags 0.415 of what it does from leg to leg alone', () => {
    const over = (width: number) =>
      findingIn(
        built(inHouse(aWall(cabinet('B1', { width, interior: OPEN })), { shelfLoad: 'books' }), {
          floor: { kind: 'legs', height: 100, setback: 50 },
          legs: { ...USUAL_LEGS, spacing: 1300, fromEdge: 50 },
        }),
        SAG,
      )
    const told = over(2500)!
    expect(told.message).toContain('go on over the middle ones')
    const newtons = 200 * 0.45359237 * 9.80665
    const { width } = boardsIn(aWall(cabinet('B1', { width: 2500, interior: OPEN }))).find(
      ({ role }) => role === 'bottom',
    )!
    // Two spans of (2500 - 2 x 50) / 2. From memory: w L^4 / (185 E I) where both are loaded.
    const alone = (newtons * 1200 ** 3) / (185 * 9000 * ((width * 18 ** 3) / 12))
    expect(figureOf(told.measure)).toBeCloseTo(1.5 * alone, 0)
  })
})

describe('a shelf round a corner', () => {
  const DEEP = 330
  const inCorner = (kind: 'L' | 'diagonal', width: number, other: number, loose = true): Project =>
    inHouse(
      aWall(
        cabinet('B1', {
          corner: { kind, hand: 'left', other, otherDepth: DEEP },
          ...{ width, depth: DEEP, left: 0, overrides: { back: { kind: 'none' } } },
          interior: { fixedShelves: loose ? 0 : 1, adjustableShelves: loose ? 1 : 0, partition: null },
        }),
      ),
      { shelfLoad: 'books' },
    )
  const shelfOf = (project: Project, role: string) =>
    derive(project).cabinets[0]!.parts.find((part) => part.role === role)!

  it('sags along its longer leg, as deep as that, and not over the rectangle that it is cut from', () => {
    const project = inCorner('L', 1200, 900)
    const finding = findingIn(project, /loose shelf .* corner post/)!
    // The post takes 60 of the leg from the wall, the side 18; the shelf stands back 10 and rests on both.
    const span = 1200 - 60 - 18
    const { thickness } = shelfOf(project, 'adjustableShelf')
    const pressure = SHELF_LOADS.books.pressure
    const bearing = { depth: DEEP - 10, thickness, stiffness: 9000, ends: 'resting' } as const
    const factor = finding.message.includes('in the course of years') ? 1.5 : 1
    expect(figureOf(finding.measure)).toBeCloseTo(factor * sagOf(span, bearing, pressure), 1)
    expect(finding.message).toContain(`of ${span} mm along its own wall`)
  })

  it('is of no concern where both legs are short, however large the rectangle', () => {
    expect(findingIn(inCorner('L', 610, 610), /shelf .* would sag/)).toBeNull()
    expect(shelfOf(inCorner('L', 610, 610), 'adjustableShelf').width).toBeGreaterThan(550)
  })

  it('of a diagonal is deeper in the middle of its legs, so that it sags less than that of an L', () => {
    const [straight, slanting] = (['L', 'diagonal'] as const).map((kind) => {
      return findingIn(inCorner(kind, 1200, 900), /loose shelf .* corner post/)!
    })
    expect([straight!.weight, slanting!.weight]).toEqual(['stop', 'mind'])
    // At once and in the course of years, which is half as much more.
    expect(figureOf(slanting!.measure)).toBeLessThan(figureOf(straight!.measure))
  })

  it('that is fixed is judged along its leg too', () => {
    const finding = findingIn(inCorner('L', 1200, 900, false), /fixed shelf .* corner post/)
    expect(finding?.message).toContain(`of ${1200 - 60 - 18} mm along its own wall`)
  })
})
