import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../../engine/basics/id'
import { type FacePlane, stoodIn, undone } from '../../../engine/cabinets/facePlane'
import { toCabinet } from '../../../engine/geometry/placement'
import type { Part } from '../../../engine/parts/part'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { Between, Cabinet, Project, Stock } from '../../../engine/project/document'
import { interferences } from '../../../engine/solids/interference'
import { aCorner, aWall, cabinet, OTHER_WALL } from '../../helpers/wall'

const T = 18
const CARCASS = 'carcass' as MaterialId
const RAIL = { material: CARCASS, height: 50, forward: 0 }
const CROWN = { material: CARCASS, height: 70, forward: 20 }
const BOTH = { lightRail: RAIL, crown: CROWN }
const DOOR = { kind: 'door', hinge: 'left' } as const

const trimmed = (project: Project, change: Partial<Between>) => applyEdit(project, { kind: 'editBetween', change })
const upper = (mark: string, left: number, more: Partial<Cabinet> = {}) =>
  cabinet(mark, { left, width: 600, bottom: 1400, height: 700, depth: 320, front: DOOR, ...more })
/** 600 along both walls and 320 deep at both ends, unless it is said otherwise. */
const inCorner = (kind: 'L' | 'diagonal', hand: 'left' | 'right' = 'right', other = 600, otherDepth = 320) => ({
  corner: { kind, hand, other, otherDepth } as const,
  ...(hand === 'left' ? { wall: OTHER_WALL } : {}),
})

/** Each board by its mark, with its length. */
function lengths(project: Project): Readonly<Record<string, number>> {
  const parts = derive(project).runs.flatMap((run) => run.parts)
  return Object.fromEntries(parts.map(({ mark, length }) => [mark, length]))
}

/** Where the second wall is in the frame of the first, which it meets at 3600. */
const SECOND: FacePlane = { x: 3600, z: 0, turn: { cos: 0, sin: -1 } }

/** Every part in the frame of one of the walls: that of a slanting board, which cannot be turned once more. */
function inTheRoom(project: Project, isSecond = false): Part[] {
  const { cabinets, runs } = derive(project)
  const placed = [...cabinets.map((one) => ({ place: one.cabinet, parts: one.parts })), ...runs]
  return placed.flatMap(({ place, parts }) =>
    parts.map((part): Part => {
      const { x, y, z } = part.placement.origin
      const moved = { ...part, placement: { ...part.placement, origin: { x: x + place.left, y: y + place.bottom, z } } }
      if ((place.wall === OTHER_WALL) === isSecond) return moved
      return { ...moved, ...stoodIn(moved, isSecond ? undone(SECOND) : SECOND) }
    }),
  )
}

describe('the trim of a diagonal corner upper', () => {
  const u1 = upper('U1', 2400)
  const u2 = upper('U2', 3000, inCorner('diagonal'))
  const u3 = upper('U3', 600, { wall: OTHER_WALL })
  // The face goes 600 - 320 along and as far out; the joint of two trims halves its 45 degrees.
  const FACE = (600 - 320) * Math.SQRT2
  const HALF = Math.tan(Math.PI / 8)
  const MEET = 20 * HALF
  /** How much longer a board is behind its face where it is mitred. */
  const BEHIND = T * HALF

  it('ends the run where the face begins, goes across the face and has a return at its free end', () => {
    const boards = lengths(trimmed(aWall(u1, u2), BOTH))
    expect(Object.keys(boards)).toEqual([
      ...['UL1-LR1', 'UL1-LT1', 'ULC2-LR1', 'ULC2-LT1'],
      ...['UC1-CR1', 'UC1-CE1', 'UCC2-CR1', 'UCC2-CE1'],
    ])
    expect(boards['UL1-LR1']).toBeCloseTo(600 + BEHIND, 2)
    expect(boards['ULC2-LR1']).toBeCloseTo(FACE + BEHIND, 2)
    // To the long point of its mitre, which is the end of the face of the slanting board.
    expect(boards['ULC2-LT1']).toBeCloseTo(320, 2)
    expect(boards['UC1-CR1']).toBeCloseTo(600 - MEET + BEHIND, 2)
    // 20 before the face it ends in line with the free end: at that end no shorter by MEET, but by 20.
    expect(boards['UCC2-CR1']).toBeCloseTo(FACE - MEET - 20 + BEHIND, 2)
    expect(boards['UCC2-CE1']).toBeCloseTo(320 + 20 * Math.SQRT2, 2)
  })

  it('goes on along the other wall, with the faces and the rears of all three meeting', () => {
    const project = trimmed(aCorner(u1, u2, u3), BOTH)
    const boards = lengths(project)
    expect(boards['ULC2-LR1']).toBeCloseTo(FACE + 2 * BEHIND, 2)
    expect(boards['UCC2-CR1']).toBeCloseTo(FACE - 2 * MEET + 2 * BEHIND, 2)
    expect(boards['UC3-CR1']).toBeCloseTo(600 - MEET + BEHIND, 2)
    expect(boards['UCC2-CE1']).toBeUndefined()
    expect(boards['UC3-CE2']).toBeUndefined()
    const crowns = inTheRoom(project).filter(({ role }) => role === 'crown')
    const [first, slant, second] = ['UC1-CR', 'UCC2-CR', 'UC3-CR'].map(
      (mark) => crowns.find((part) => part.mark.startsWith(mark))!,
    )
    // In the room the slanting face goes from the right end of the first to the near end of the second.
    const ends = (part: Part, end: 'start' | 'end') => {
      const by = part.operations.find((one) => one.kind === 'bevel' && one.edge === end)
      const short = by?.kind === 'bevel' ? by.by : Number.NaN
      const [face, rear] = end === 'start' ? [short, 0] : [part.length - short, part.length]
      return [toCabinet(part.placement, face, 0, 0), toCabinet(part.placement, rear, 0, T)]
    }
    const [toFirst, toSecond] = [ends(slant!, 'end'), ends(slant!, 'start')]
    expect(toFirst[0]).toMatchObject({ x: expect.closeTo(3000 - MEET, 2), z: expect.closeTo(340, 2) })
    expect(toSecond[0]).toMatchObject({ x: expect.closeTo(3600 - 340, 2), z: expect.closeTo(600 + MEET, 2) })
    const near = (points: typeof toFirst) =>
      points.map(({ x, z }) => expect.objectContaining({ x: expect.closeTo(x, 2), z: expect.closeTo(z, 2) }))
    expect(ends(first!, 'start')).toEqual(near(toFirst))
    expect(ends(second!, 'end')).toEqual(near(toSecond))
  })

  it('is mitred with half the angle at either end: longer behind where it meets another, at the face before a return', () => {
    const { runs } = derive(trimmed(aWall(u1, u2), { crown: CROWN }))
    const parts = runs.flatMap((run) => run.parts)
    const by = expect.closeTo(BEHIND, 2)
    const mitre = (edge: string, face: string) => ({ kind: 'bevel', edge, face, by })
    expect(Object.fromEntries(parts.map(({ mark, operations }) => [mark, operations]))).toEqual({
      'UC1-CR1': [mitre('start', 'outside')],
      'UC1-CE1': [],
      'UCC2-CR1': [mitre('start', 'inside'), mitre('end', 'outside')],
      'UCC2-CE1': [mitre('end', 'inside')],
    })
    expect(runs.flatMap(({ problems }) => problems)).toEqual([])
  })

  it('is not told to stand in the trim that it is mitred against, but in what it does stand in', () => {
    const told = (...cabinets: readonly Cabinet[]) =>
      derive(trimmed(aCorner(...cabinets), BOTH)).problems.flatMap(({ message }) =>
        message.includes('would stand in one another') ? [message] : [],
      )
    expect(told(u1, u2, u3)).toEqual([])
    // Its crown reaches up into what hangs over it.
    const over = upper('U4', 2900, { bottom: 1400 + 700 + 60, height: 200 })
    expect(told(u2, over)).toContainEqual(expect.stringMatching(/UCC2 reaches up to 2170 mm .* U4 begins at 2160 mm/))
  })

  it('is spliced where it is longer than its sheets, mitred at its ends alone', () => {
    const wide = upper('U2', 1600, { ...inCorner('diagonal', 'right', 2000), width: 2000 })
    const long = trimmed(aWall(wide), { lightRail: RAIL })
    const sheets = Object.values<Stock>(long.stock).map((one) => [one.id, { ...one, length: 1020 }])
    const short: Project = { ...long, stock: Object.fromEntries(sheets) }
    const { trim } = short.shop
    const longest = 1020 - 2 * trim
    const parts = derive(short).runs.flatMap((run) => run.parts)
    const rails = parts.filter(({ role }) => role === 'lightRail')
    const face = (2000 - 320) * Math.SQRT2
    expect(rails.map(({ mark }) => mark)).toEqual(['ULC2-LR1', 'ULC2-LR2', 'ULC2-LR3'])
    expect(rails.map(({ length }) => length)).toEqual([longest, longest, expect.closeTo(face - 2 * longest, 2)])
    expect(rails.map(({ operations }) => operations.length)).toEqual([1, 0, 1])
    expect(interferences(parts)).toEqual([])
  })

  it('goes along a filler at its free side, and back to it from a deeper neighbour', () => {
    const filler = { left: { kind: 'filler', width: 40, scribe: 0 }, right: { kind: 'none' } } as const
    const filled = lengths(trimmed(aWall({ ...u2, beside: filler }), { lightRail: RAIL }))
    expect(filled['UL2-LR1']).toBeCloseTo(40 + BEHIND, 2)
    expect(filled['ULC2-LR1']).toBeCloseTo(FACE + BEHIND, 2)
    const deeper = lengths(trimmed(aWall({ ...u1, depth: 400 }, u2), { lightRail: RAIL }))
    expect(deeper).toMatchObject({ 'UL1-LR1': 600, 'UL1-LT2': 400 - T - 320 })
    expect(deeper['ULC2-LT2']).toBeUndefined()
  })
})

describe('the trim of an L corner upper', () => {
  const u1 = upper('U1', 2400)
  const u2 = upper('U2', 3000, inCorner('L'))
  const u3 = upper('U3', 600, { wall: OTHER_WALL })

  it('runs through before its own leg, and is butted against that before the other', () => {
    // As far as the rear of the other: its face is 320 + 20 from that wall.
    expect(lengths(trimmed(aWall(u1, u2), { crown: CROWN }))).toEqual({
      'UC1-CR1': 600 + 600 - (320 + 20 - T),
      'UC1-CE1': 320 + 20 - T,
      'UCC2-CR1': 600 - (320 + 20),
      'UCC2-CE1': 320 + 20 - T,
    })
  })

  it('goes on along the other wall without returns between them', () => {
    expect(lengths(trimmed(aCorner(u1, u2, u3), { lightRail: RAIL }))).toEqual({
      'UL1-LR1': 600 + 600 - (320 - T),
      'UL1-LT1': 320 - T,
      'ULC2-LR1': 600 - 320,
      'UL3-LR1': 600,
      'UL3-LT1': 320 - T,
    })
  })
})

describe('the trims round a corner', () => {
  const CORNERS = [
    ['L', 600, 320],
    ['L', 700, 360],
    ['diagonal', 600, 320],
    ['diagonal', 720, 350],
  ] as const
  const cases = CORNERS.flatMap(([kind, other, otherDepth]) =>
    (['left', 'right'] as const).flatMap((hand) =>
      [-25, 0, 30].map((forward) => ({ kind, other, otherDepth, hand, forward })),
    ),
  )

  it.each(cases)('lie in no cabinet and not in one another: $kind $hand $other, $forward forward', (one) => {
    const { kind, hand, other, otherDepth, forward } = one
    const corner = inCorner(kind, hand, other, otherDepth)
    const isLeft = hand === 'left'
    const own = isLeft
      ? [upper('U2', 0, corner), upper('U3', 600, { wall: OTHER_WALL })]
      : [upper('U1', 2400), upper('U2', 3000, corner)]
    const next = isLeft
      ? upper('U1', 3600 - other - 600, { depth: otherDepth })
      : upper('U3', other, { wall: OTHER_WALL, depth: otherDepth })
    for (const cabinets of [[...own, next], own, own.filter(({ corner }) => corner)]) {
      const project = trimmed(aCorner(...cabinets), {
        lightRail: { ...RAIL, forward },
        crown: { ...CROWN, forward },
      })
      const parts = inTheRoom(project, isLeft)
      expect(parts.filter(({ role }) => role === 'crown' || role === 'lightRail').length).toBeGreaterThanOrEqual(2)
      const found = interferences(parts).map(({ a, b, volume }) => `${a.mark} in ${b.mark}: ${volume} mm3`)
      expect(found).toEqual([])
      const marks = parts.map(({ mark }) => mark)
      expect(new Set(marks).size).toBe(marks.length)
    }
  })
})
