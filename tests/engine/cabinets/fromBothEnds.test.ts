import { describe, expect, it } from 'vitest'
import type { Board } from '../../../engine/cabinets/board'
import { boxOf } from '../../../engine/cabinets/boardBox'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { nearestFree } from '../../../engine/cabinets/clearing'
import { spreadOver } from '../../../engine/cabinets/fromBothEnds'
import { hingeRoom, hingesFor } from '../../../engine/cabinets/hinge'
import { centresOf, type HolePurpose } from '../../../engine/cabinets/operation'
import { toCabinet } from '../../../engine/geometry/placement'
import { hardwareOf } from '../../../engine/hardware/hardwareOf'
import { partsOf } from '../../../engine/parts/partsOf'
import type { Cabinet, CabinetKind, Front } from '../../../engine/project/document'
import { type DrawerPull, USUAL_DRAWER_PULLS, USUAL_FRONT_SCREWS } from '../../../engine/project/fixing'
import { USUAL_FIVE_PART } from '../../../engine/project/frames'
import { chartOf } from '../../../engine/project/hingeChart'
import { USUAL_HINGE } from '../../../engine/project/machining'
import { aCabinet, boardIn, type MethodChanges, rulesWith } from '../../helpers/cabinets'
import { FRAME } from '../../helpers/frames'

const FLAP = { kind: 'door', hinge: 'top' } as const

function built(kind: CabinetKind, said: Partial<Cabinet>, changes: MethodChanges) {
  const rules = rulesWith(changes)
  const build = buildCabinet(aCabinet(kind, said), rules)
  return { ...build, bought: hardwareOf(build, partsOf(build, rules), rules) }
}

/** How far holes are from the middle of their board, across the cabinet: below 0 they are left of it. */
function fromMiddle(board: Board, purpose: HolePurpose): number[] {
  const { min, max } = boxOf(board)
  const points = board.operations.flatMap((one) => {
    if (one.kind !== 'holeRow' || one.purpose !== purpose) return []
    return centresOf(one).map(({ x, y }) => toCabinet(board.placement, x, y, 0).x - (min.x + max.x) / 2)
  })
  return points.map((at) => Math.round(at * 100) / 100 + 0).sort((a, b) => a - b)
}

describe('places along a line without a hand', () => {
  const within = { from: 0, to: 600 }
  const spread = (wishes: readonly number[], taken: readonly (readonly [number, number])[]) =>
    spreadOver(wishes, 'x', 60, (wish, others, rather) => {
      return nearestFree(wish, [...taken.map(([from, to]) => ({ from, to })), ...others], within, rather)
    }).sort((a, b) => a - b)

  it('are where they are wished while that is free', () => {
    expect(spread([100, 300, 500], [])).toEqual([100, 300, 500])
  })

  it('are at both sides of a middle that is taken, as far from it', () => {
    expect(spread([300], [[250, 350]])).toEqual([250, 350])
  })

  it('are at the one side where the other is farther or taken', () => {
    expect(spread([300], [[250, 370]])).toEqual([250])
    expect(spread([300], [[0, 350]])).toEqual([350])
  })

  it('are so far from one another that there is room for both, or none is', () => {
    expect(spread([300], [[290, 310]])).toEqual([270, 330])
    const [left, right] = [
      [-1, 280],
      [320, 601],
    ] as const
    expect(spread([300], [left, [290, 310], right])).toEqual([])
    expect(spread([300], [left, [280, 310], right])).toEqual([310])
  })

  it('are one in the middle where two would have one place', () => {
    expect(spread([290, 310], [])).toEqual([300])
  })
})

describe('what is bored in the middle of a cabinet', () => {
  it('is at both sides of a knob: two screws of a drawer front for one, and as many are bought', () => {
    const screws = { ...USUAL_FRONT_SCREWS.screws, spacing: 300, fromEdge: 30 }
    const front: Front = {
      kind: 'rows',
      rows: [
        { size: { kind: 'fixed', height: 110 }, front: { kind: 'drawer' } },
        { size: { kind: 'share', share: 1 }, front: { kind: 'open' } },
      ],
    }
    const drawerWith = (drawerPull: DrawerPull) => {
      const { boards, bought } = built('base', { front }, { frontScrews: screws, drawerPull })
      const [holes, spots] = [boardIn(boards, 'drawerBoxFront'), boardIn(boards, 'drawerFront')]
      expect(fromMiddle(spots, 'frontPilot')).toEqual(fromMiddle(holes, 'frontScrew'))
      return {
        holes: fromMiddle(holes, 'frontScrew'),
        screws: bought.find(({ name }) => /^screw/.test(name))?.quantity,
      }
    }
    // The front of the box is 600 - 2 x 18 - 2 x 12.7 - 2 x 12 = 514.6 long; the first screws are 30 from its ends.
    expect(drawerWith(USUAL_DRAWER_PULLS.none)).toEqual({ holes: [-227.3, 0, 227.3], screws: 3 })
    // A bolt of 40 and a spot of 2.5 with 3 of wood between are 24.25 apart; they make way by steps of 4.
    const thick = drawerWith({ ...USUAL_DRAWER_PULLS.knob, diameter: 40 })
    expect(thick).toEqual({ holes: [-227.3, -28, 28, 227.3], screws: 4 })
  })

  it('is at neither end of a rail that is too short for screws from both', () => {
    const frame = { ...FRAME, pastLeft: 0, pastRight: 0 }
    const at = (width: number) => {
      const { boards, problems, bought } = built('base', { width }, { faceFrame: frame })
      const told = problems.map(({ message }) => message)
      return { places: fromMiddle(boardIn(boards, 'topRail'), 'pocketScrew'), told, bought }
    }
    // A pocket in 20 mm begins 10 / tan 15 = 37.32 from its end and is open for 9.5 / sin 15 = 36.71 about that: two of them
    // with 3 between take 2 x (37.32 + 18.35) + 3 = 114.35 of a rail, which is 80 shorter than its frame.
    const [short, long] = [at(194), at(195)]
    expect(short.places).toEqual([])
    expect(short.told).toEqual([
      'B1: 8 pocket screws of its face frame find no place: the members are too narrow, too short or too thin for them, or other holes are in the way. Nothing is bored for them.',
    ])
    expect(short.bought).toEqual([])
    const away = Math.round((115 / 2 - 37.32) * 100) / 100
    expect(long.places).toEqual([-away, -away, away, away])
    expect(long.told).toEqual([])
    expect(long.bought.map(({ quantity }) => quantity)).toEqual([8])
  })

  it('is the one hinge of a flap that has no room for two, and one is bought; where its plate has no room there, none is bored', () => {
    const flap = (width: number, partition: Cabinet['interior']['partition'] = null) => {
      const interior = { fixedShelves: 0, adjustableShelves: 0, partition }
      const { boards, bought } = built(
        'upper',
        { width, front: FLAP, interior },
        { frontBuild: USUAL_FIVE_PART, hinge: USUAL_HINGE },
      )
      const hinges = bought.filter(({ name }) => / hinge$/.test(name)).map(({ quantity }) => quantity)
      return { cups: fromMiddle(boardIn(boards, 'doorRail', 2), 'hingeCup'), hinges }
    }
    // Two take 2 x 59 of the rail: it is 3 narrower than the cabinet without two stiles of 57, of which 10 are groove.
    expect(hingeRoom(USUAL_HINGE)).toBe(45 + 8 + 2 * 3)
    expect(flap(2 * 59 + 3 + 2 * 57 - 1)).toEqual({ cups: [0], hinges: [1] })
    expect(flap(2 * 59 + 3 + 2 * 57 + 1)).toEqual({ cups: [-30, 30], hinges: [2] })
    expect(flap(2 * 59 + 3 + 2 * 57 - 1, { at: 0.5 })).toEqual({ cups: [], hinges: [1] })
  })

  it('is as much where the ends of a flap were settled apart by a hair', () => {
    const { height } = chartOf(USUAL_HINGE)[0]!
    expect([height, height + 1 / 3200, height + 0.01].map((at) => hingesFor(at, 1, USUAL_HINGE))).toEqual([2, 2, 3])
  })
})
