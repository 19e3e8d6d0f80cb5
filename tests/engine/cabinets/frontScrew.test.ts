import { describe, expect, it } from 'vitest'
import type { Board } from '../../../engine/cabinets/board'
import { boxOf } from '../../../engine/cabinets/boardBox'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { centresOf, type HolePurpose, type HoleRow } from '../../../engine/cabinets/operation'
import { toCabinet } from '../../../engine/geometry/placement'
import { hardwareOf } from '../../../engine/hardware/hardwareOf'
import { partsOf } from '../../../engine/parts/partsOf'
import type { Front } from '../../../engine/project/document'
import { USUAL_DRAWER_PULLS, USUAL_FRONT_SCREWS } from '../../../engine/project/fixing'
import { USUAL_FIVE_PART } from '../../../engine/project/frames'
import { aCabinet, boardIn, type MethodChanges, rulesWith } from '../../helpers/cabinets'
import { FRAME } from '../../helpers/frames'

const { screws } = USUAL_FRONT_SCREWS
const DRAWER: Front = { kind: 'drawer' }

function built(changes: MethodChanges = {}, front = DRAWER) {
  const rules = rulesWith({ frontScrews: screws, ...changes })
  const build = buildCabinet(aCabinet('base', { front }), rules)
  return { ...build, rules }
}

function rowsIn({ operations }: Board, purpose: HolePurpose): HoleRow[] {
  return operations.filter((one): one is HoleRow => one.kind === 'holeRow' && one.purpose === purpose)
}

/** Where holes are, in the cabinet's frame, from the left and from below. */
function places(board: Board, purpose: HolePurpose): string[] {
  const points = rowsIn(board, purpose).flatMap((row) =>
    centresOf(row).map(({ x, y }) => toCabinet(board.placement, x, y, 0)),
  )
  return points
    .sort((a, b) => a.y - b.y || a.x - b.x)
    .map(({ x, y }) => `${Math.round(x * 100) / 100},${Math.round(y * 100) / 100}`)
}

describe('a drawer front that is screwed from inside its box', () => {
  it('has a hole in the box and a spot in the front on one axis for each screw', () => {
    const { boards } = built()
    // The box is 600 - 2 x 18 - 2 x 12.7 = 538.6 wide, its front 12 less at each end: it begins at 18 + 12.7 + 12 = 42.7
    // and is 514.6 long. 454.6 between the first and the last screw are two steps of 227.3. From 18 + 16 = 34 it goes up
    // 720 - 2 x 18 - 16 - 14 = 654.
    const [left, middle, right] = [42.7 + 30, 42.7 + 514.6 / 2, 42.7 + 514.6 - 30]
    const [low, high] = [34 + 30, 34 + 654 - 30]
    const wanted = [low, high].flatMap((y) => [left, middle, right].map((x) => `${Math.round(x * 100) / 100},${y}`))
    expect(places(boardIn(boards, 'drawerBoxFront'), 'frontScrew')).toEqual(wanted)
    expect(places(boardIn(boards, 'drawerFront'), 'frontPilot')).toEqual(wanted)
  })

  it('holds with what the box leaves of the screw', () => {
    const { boards } = built()
    const [hole] = rowsIn(boardIn(boards, 'drawerBoxFront'), 'frontScrew')
    expect([hole!.face, hole!.diameter, hole!.depth]).toEqual(['inside', 6, 12])
    const [spot] = rowsIn(boardIn(boards, 'drawerFront'), 'frontPilot')
    expect([spot!.face, spot!.diameter, spot!.depth]).toEqual(['inside', 2.5, 25 - 12])
  })

  it('has one line in a low box', () => {
    const low: Front = {
      kind: 'rows',
      rows: [
        { size: { kind: 'fixed', height: 110 }, front: DRAWER },
        { size: { kind: 'share', share: 1 }, front: { kind: 'open' } },
      ],
    }
    const { boards } = built({}, low)
    const { min, max } = boxOf(boardIn(boards, 'drawerBoxFront'))
    expect(max.y - min.y).toBeLessThan(90)
    const heights = new Set(places(boardIn(boards, 'drawerBoxFront'), 'frontScrew').map((at) => at.split(',')[1]))
    expect([...heights]).toEqual([String((min.y + max.y) / 2)])
  })

  it('makes way for the knob in its middle', () => {
    const shallow = { ...screws, spacing: 200, fromEdge: 300 }
    const knob = USUAL_DRAWER_PULLS.knob
    const { boards } = built({ frontScrews: shallow, drawerPull: knob })
    const front = boardIn(boards, 'drawerFront')
    const [pull] = places(front, 'pull')
    const [x, y] = pull!.split(',').map(Number) as [number, number]
    const all = places(front, 'frontPilot')
    expect(all.length).toBeGreaterThan(0)
    for (const at of all) {
      const [sx, sy] = at.split(',').map(Number) as [number, number]
      // A knob of 5, a spot of 2.5, and 3 of wood between them, one way or the other.
      expect(Math.max(Math.abs(sx - x), Math.abs(sy - y))).toBeGreaterThanOrEqual(2.5 + 1.25 + 3)
    }
  })

  it('is told where screws would show, or hardly hold', () => {
    const messages = (changes: MethodChanges) => built(changes).problems.map(({ message }) => message)
    expect(messages({ frontScrews: { ...screws, length: 31 } })).toEqual([
      'B1: screws of 31 mm would go 19 mm into a drawer front of 19 mm and show; nothing is bored for them. Take shorter ones.',
    ])
    expect(messages({ frontScrews: { ...screws, length: 18 } })).toEqual([
      'B1: screws of 18 mm would hold 6 mm in a drawer front; 8 mm at least is usual. Nothing is bored for them. Take longer ones.',
    ])
  })

  it('is told where a face frame keeps it from its box', () => {
    const overlay = { ...FRAME, fronts: { kind: 'overlay', by: 12 } } as const
    expect(built({ faceFrame: overlay }).problems.map(({ message }) => message)).toEqual([
      'B1: screws of 25 mm would hold 0 mm in a drawer front, which stands 20 mm before its box; 8 mm at least is usual. Nothing is bored for them. Take longer ones.',
    ])
  })

  it('has them in stiles and rails where it is made of five parts, and never in the panel', () => {
    const { boards, problems } = built({ frontBuild: { ...USUAL_FIVE_PART, areDrawersToo: true, rail: 90, stile: 90 } })
    const spots = boards.flatMap((board) => rowsIn(board, 'frontPilot').map(() => board.role))
    expect(new Set(spots)).toEqual(new Set(['drawerRail', 'drawerStile']))
    expect(spots.length).toBe(6)
    expect(problems).toEqual([])
  })

  it('is counted by its screws', () => {
    const build = built()
    const rows = hardwareOf(build, partsOf(build, build.rules), build.rules)
    expect(rows).toContainEqual({ name: 'screw of 4 mm', quantity: 2 * 3, length: 25 })
  })

  it('has nothing bored where nothing is said of screws', () => {
    const { boards } = buildCabinet(aCabinet('base', { front: DRAWER }), rulesWith())
    expect(boards.flatMap((board) => [...rowsIn(board, 'frontScrew'), ...rowsIn(board, 'frontPilot')])).toEqual([])
  })
})
