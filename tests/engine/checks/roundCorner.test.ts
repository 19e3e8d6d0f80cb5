import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../../engine/basics/id'
import { applyEdit } from '../../../engine/project/apply'
import type { Cabinet, Project } from '../../../engine/project/document'
import { aCorner, aWall, cabinet, OTHER_WALL, type Said, space, the, WALL } from '../../helpers/wall'
import { findingIn, remedied } from './findings'

const TOP = { material: 'carcass' as MaterialId, overhang: 20, ends: 0, splash: 0, banding: 0 }
const SINK = { of: 'sink', width: 480, depth: 400, fromFront: 70 } as const
const HOB = { of: 'hob', width: 560, depth: 490, fromFront: 55 } as const
const PAIR = { front: { kind: 'pair' } } as const
/** The first wall is 3600 long and ends in the corner; the second begins there. */
const LENGTH = 3600
/** Bases are 580 deep with fronts of 18, and 868 high under a top of 18. */
const FACE = 580 + 18
const SURFACE = 868 + 18

function topped(...cabinets: readonly Cabinet[]): Project {
  return applyEdit(aCorner(...cabinets), { kind: 'editBetween', change: { countertop: TOP } })
}
const base = (mark: string, left: number, width: number, said: Said = {}) =>
  cabinet(mark, { left, width, ...PAIR, ...said })
const upper = (mark: string, left: number, width: number, said: Said = {}) =>
  cabinet(mark, { left, width, bottom: 1500, height: 600, depth: 330, ...said })

describe('a sink round the corner from a dishwasher', () => {
  /**
   * The LSU AgCenter's Kitchen Design and Space Guidelines: within 36 in, 914.4 mm. The dishwasher ends 800 before the
   * corner; the sink of 480 lies in the middle of 600 at the other wall.
   */
  const at = (sink: number, more: readonly Cabinet[] = []) =>
    topped(
      space('S1', 'dishwasher', { left: LENGTH - 800 - 600, width: 600 }),
      base('B1', LENGTH - 800, 800),
      base('B2', sink, 600, { wall: OTHER_WALL, cutout: SINK }),
      ...more,
    )
  // From the corner: the front edge of the sink is 580 + 18 + 20 - 70 off the other wall; the dishwasher is 580 deep.
  const along = 800 - (FACE + 20 - 70)
  const away = (sink: number) => Math.hypot(along, sink + 60 - 580)

  it('is at most 36 in from it, straight from edge to edge', () => {
    const far = findingIn(at(1500), /edge of the sink/)!
    expect(away(1500)).toBeGreaterThan(914.4)
    expect(far).toMatchObject({ weight: 'know', measure: `${away(1500).toFixed(1)} mm`, limit: '914.4 mm' })
    expect(far.about).toEqual({ kind: 'cabinet', cabinet: 's1' })
    expect(far.message).toContain('round the corner')
    expect(far.source).toContain('LSU AgCenter')
    const limit = 580 - 60 + Math.sqrt(914.4 ** 2 - along ** 2)
    expect(findingIn(at(limit - 1), /edge of the sink/)).toBeNull()
    expect(findingIn(at(limit + 1), /edge of the sink/)).not.toBeNull()
  })
  it('does not count where there is a nearer one at its own wall', () => {
    const own = base('B3', LENGTH - 800 - 600 - 700, 700, { cutout: SINK })
    expect(findingIn(at(1500, [own]), /edge of the sink/)).toBeNull()
  })
  it('is found from the other wall of the corner too', () => {
    const project = topped(
      base('B1', LENGTH - 2600, 600, { cutout: SINK }),
      space('S1', 'dishwasher', { wall: OTHER_WALL, left: 700, width: 600 }),
    )
    // Its right edge is 2600 - 60 - 480 from the corner, the dishwasher 580 deep; its front edge 548 and the dishwasher from 700.
    const gap = Math.hypot(2600 - 60 - 480 - 580, 700 - (FACE + 20 - 70))
    expect(findingIn(project, /edge of the sink/)!.measure).toBe(`${gap.toFixed(1)} mm`)
  })
})

describe('standing room beside a dishwasher', () => {
  const ROOM = /are free to stand in/
  /** The LSU AgCenter's Kitchen Design and Space Guidelines: 21 in, 533.4 mm, to what stands at a right angle. */
  const at = (gap: number, ...more: readonly Cabinet[]) =>
    topped(
      space('S1', 'dishwasher', { left: LENGTH - FACE - gap - 600, width: 600 }),
      base('B2', 0, 600, { wall: OTHER_WALL }),
      base('B3', 600, 600, { wall: OTHER_WALL }),
      ...more,
    )
  it('is 21 in to the face of the run round the corner, and is made in one step', () => {
    const project = at(500)
    expect(findingIn(project, ROOM)).toMatchObject({ weight: 'know', measure: '500 mm', limit: '533.4 mm' })
    expect(findingIn(project, ROOM)!.source).toContain('LSU AgCenter')
    const after = remedied(project, findingIn(project, ROOM)!)
    expect(the(after, 'S1').left).toBeCloseTo(LENGTH - FACE - 533.4 - 600, 2)
    expect(findingIn(after, ROOM)).toBeNull()
    expect(findingIn(at(533), ROOM)).not.toBeNull()
    expect(findingIn(at(534), ROOM)).toBeNull()
  })
  it('ends at the other leg of a corner base beside it', () => {
    const leg = (width: number) =>
      topped(
        space('S1', 'dishwasher', { left: LENGTH - width - 600, width: 600 }),
        base('B1', LENGTH - width, width, { corner: { kind: 'L', hand: 'right', other: 900, otherDepth: 580 } }),
      )
    expect(findingIn(leg(900), ROOM)).toMatchObject({ measure: `${900 - FACE} mm`, limit: '533.4 mm' })
    expect(findingIn(leg(1140), ROOM)).toBeNull()
  })
  it('is of no concern at a straight wall, before what does not stand out, and to other appliances', () => {
    const straight = aWall(space('S1', 'dishwasher', { left: 600, width: 600 }), base('B1', 1200, 600))
    expect(findingIn(straight, ROOM)).toBeNull()
    const alone = topped(
      space('S1', 'dishwasher', { left: LENGTH - FACE - 300 - 600, width: 600 }),
      base('B2', 0, 500, { wall: OTHER_WALL }),
    )
    // What ends before its face has nobody standing before it.
    expect(findingIn(alone, ROOM)).toBeNull()
    const range = topped(
      space('S1', 'range', { left: LENGTH - FACE - 300 - 600, width: 600 }),
      base('B2', 0, 900, { wall: OTHER_WALL }),
    )
    expect(findingIn(range, ROOM)).toBeNull()
  })
})

describe('what rises and hangs beside a hob round the corner', () => {
  const BESIDE = /a side that rises/
  const hobAt = (right: number, ...more: readonly Cabinet[]) =>
    topped(base('B1', LENGTH - right - 600, 600, { cutout: HOB }), ...more)
  it('is told nearer than 10 in (older US federal minimum property text): a tall at the other wall', () => {
    const tall = (away: number) =>
      hobAt(away, cabinet('T1', { wall: OTHER_WALL, left: 0, width: 600, depth: 580, ...PAIR }))
    // The hob ends 20 before the side of its base.
    expect(findingIn(tall(FACE + 200), BESIDE)).toMatchObject({ weight: 'mind', measure: '220 mm', limit: '254 mm' })
    expect(findingIn(tall(FACE + 200), BESIDE)!.message).toContain('T1 round the corner')
    expect(findingIn(tall(FACE + 235), BESIDE)).toBeNull()
    // One that begins before the hob is in the room, not beside it.
    const past = hobAt(FACE + 100, cabinet('T1', { wall: OTHER_WALL, left: 700, width: 600, depth: 580, ...PAIR }))
    expect(findingIn(past, BESIDE)).toBeNull()
  })
  it('is told of an upper that comes down beside it', () => {
    const low = (bottom: number) => {
      const own = base('B1', 1200, 600, { cutout: HOB })
      return topped(own, upper('U1', 1850, 600, { wall: WALL, bottom, depth: 300 }))
    }
    expect(findingIn(low(SURFACE + 200), BESIDE)).toMatchObject({ measure: '70 mm', limit: '254 mm' })
    expect(findingIn(low(SURFACE + 254), BESIDE)).toBeNull()
  })
  it('is told deeper than 13 in: an upper of the other wall stands out by its place, the leg of a corner by its length', () => {
    const DEEP = /is the most for a wall cabinet there/
    const round = hobAt(500, upper('U1', 0, 600, { wall: OTHER_WALL, ...PAIR }))
    // 500 + 20 to the hob, 330 + 18 to the face of the upper.
    expect(findingIn(round, DEEP)).toMatchObject({ weight: 'know', measure: '600 mm', limit: '330.2 mm' })
    expect(findingIn(round, DEEP)!.message).toContain('U1 round the corner beside its hob stands out 600 mm')
    expect(findingIn(hobAt(600, upper('U1', 0, 600, { wall: OTHER_WALL, ...PAIR })), DEEP)).toBeNull()
    const corner = upper('U1', LENGTH - 600, 600, {
      corner: { kind: 'L', hand: 'right', other: 650, otherDepth: 330 },
      ...PAIR,
    })
    expect(findingIn(hobAt(520, corner), DEEP)).toMatchObject({ measure: '650 mm' })
  })
})
