import { describe, expect, it } from 'vitest'
import type { Board, FrontFace } from '../../../engine/cabinets/board'
import { boxOf } from '../../../engine/cabinets/boardBox'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { centresOf, type HoleRow } from '../../../engine/cabinets/operation'
import { pullsIn, pullsOf } from '../../../engine/cabinets/pull'
import { boltsThrough, type Pull } from '../../../engine/cabinets/pullBolt'
import type { Box } from '../../../engine/geometry/box'
import { toCabinet } from '../../../engine/geometry/placement'
import { hardwareOf } from '../../../engine/hardware/hardwareOf'
import { partsOf } from '../../../engine/parts/partsOf'
import type { CabinetKind, Front } from '../../../engine/project/document'
import { USUAL_DOOR_PULLS, USUAL_DRAWER_PULLS } from '../../../engine/project/fixing'
import { USUAL_FIVE_PART } from '../../../engine/project/frames'
import type { BuildMethod } from '../../../engine/project/method'
import { settle } from '../../../engine/units/length'
import { aCabinet, boardIn, boardsOf, type MethodChanges, PLAIN, rulesWith } from '../../helpers/cabinets'

const BARS: MethodChanges = { doorPull: USUAL_DOOR_PULLS.bar, drawerPull: USUAL_DRAWER_PULLS.bar }
const KNOBS: MethodChanges = { doorPull: USUAL_DOOR_PULLS.knob, drawerPull: USUAL_DRAWER_PULLS.knob }

function told({ from, to }: Pull): string {
  return `${from.x},${from.y} to ${to.x},${to.y}`
}

/** A front of 400 x 700, its lower left corner at 10, 20. */
function pulls(
  kind: FrontFace['kind'],
  hinge: FrontFace['hinge'],
  of: CabinetKind,
  changes: MethodChanges,
  bottom = 20,
) {
  const face = { kind, hinge, rect: { left: 10, bottom, width: 400, height: 700 } }
  return pullsOf(face, { ...PLAIN, ...changes } as BuildMethod, of).map(told)
}

describe('the pull of a door', () => {
  it('is at its free edge: in the upper corner of a base, in the lower one of an upper', () => {
    // 410 - 40 = 370 across; 720 - 60 = 660 up, and 128 below that.
    expect(pulls('door', 'left', 'base', BARS)).toEqual([`370,${660 - 128} to 370,660`])
    // 10 + 40 = 50 across; 20 + 60 = 80 up.
    expect(pulls('door', 'right', 'upper', BARS)).toEqual([`50,80 to 50,${80 + 128}`])
  })

  it('of a tall cabinet is where a hand is, 1050 over the floor, as near as its corners let it', () => {
    // A door from 600 to 1300 has it at 1050 -/+ 64; one from 20 to 720 in its upper corner, one from 1400 in its lower.
    expect(pulls('door', 'left', 'tall', BARS, 600)).toEqual([`370,${1050 - 64} to 370,${1050 + 64}`])
    expect(pulls('door', 'left', 'tall', BARS)).toEqual(['370,532 to 370,660'])
    expect(pulls('door', 'left', 'tall', BARS, 1400)).toEqual(['370,1460 to 370,1588'])
  })

  it('that is a flap is in the middle of its lower edge', () => {
    expect(pulls('door', 'top', 'upper', BARS)).toEqual([`${210 - 64},60 to ${210 + 64},60`])
    expect(pulls('door', 'top', 'upper', KNOBS)).toEqual(['210,60 to 210,60'])
  })

  it('is none where nothing moves, and none by a method that bores none', () => {
    expect(pulls('falseFront', null, 'base', BARS)).toEqual([])
    expect(pulls('door', 'left', 'base', {})).toEqual([])
  })
})

describe('the pull of a drawer', () => {
  it('is in the middle, or in the middle of each half from a width up', () => {
    expect(pulls('drawer', null, 'base', BARS)).toEqual([`${210 - 64},370 to ${210 + 64},370`])
    const drawerPull = { ...USUAL_DRAWER_PULLS.knob, twoFrom: 400 }
    expect(pulls('drawer', null, 'base', { drawerPull })).toEqual(['110,370 to 110,370', '310,370 to 310,370'])
  })
})

describe('a front with a pull', () => {
  const front: Front = {
    kind: 'rows',
    rows: [
      { size: { kind: 'fixed', height: 150 }, front: { kind: 'drawer' } },
      { size: { kind: 'share', share: 1 }, front: { kind: 'pair' } },
    ],
  }

  it('is bored right through from the outside, where the pull is', () => {
    const door = boardIn(boardsOf(aCabinet('base', { front }), rulesWith(BARS)), 'door', 1)
    const rows = door.operations.filter((one) => one.kind === 'holeRow' && one.purpose === 'pull')
    expect(rows).toMatchObject([{ face: 'outside', count: 2, step: 128, diameter: 5, depth: 19 }])
    // Along its length from its lower end: 60 + 128 and 60 from the upper one; across it 40 from the free edge.
    expect(pullsIn(door)).toEqual([
      { from: { x: door.length - 60 - 128, y: door.width - 40 }, to: { x: door.length - 60, y: door.width - 40 } },
    ])
  })

  it('gets none where its hinge is in the way, and that is told', () => {
    // A door of 77 wide has its cup from 5 to 40; the pull 40 from the free edge would be at 37.
    const cabinet = aCabinet('base', { width: 80, front: { kind: 'door', hinge: 'left' } })
    const doorPull = { ...USUAL_DOOR_PULLS.bar, fromCorner: 60, spread: 20 }
    const narrow = buildCabinet(cabinet, rulesWith({ doorPull }))
    const said = narrow.problems.map(({ message }) => message)
    expect(said).toContain('B1: a door is too small for its pull, or its hinges are in the way; none is bored.')
    expect(narrow.boards.flatMap((board) => pullsIn(board))).toEqual([])
  })

  it('gets none where it would be bored through the tongues of a rail, and that is told', () => {
    const rules = rulesWith({ ...BARS, frontBuild: { ...USUAL_FIVE_PART, stile: 57, groove: 10 } })
    const built = (width: number) =>
      buildCabinet(aCabinet('base', { width, front: { kind: 'door', hinge: 'top' } }), rules)
    const pullsOn = (width: number) => built(width).boards.flatMap((board) => pullsIn(board)).length
    // The flap is 237 wide, its rail 237 - 2 * 57 + 2 * 10 = 143: holes 128 apart are 7.5 from its ends, in tongues of 10.
    expect(pullsOn(240)).toBe(0)
    expect(built(240).problems.map(({ message }) => message)).toContainEqual(expect.stringContaining('its pull'))
    expect(pullsOn(260)).toBe(1)
  })

  it('counts with its cabinet', () => {
    const names = (changes: MethodChanges) => {
      const rules = rulesWith(changes)
      const build = buildCabinet(aCabinet('base', { front }), rules)
      return hardwareOf(build, partsOf(build, rules), rules)
        .filter(({ name }) => name.startsWith('pull') || name === 'knob')
        .map(({ name, quantity }) => `${quantity} ${name}`)
    }
    expect(names(BARS)).toEqual(['3 pull with holes 128 mm apart'])
    expect(names(KNOBS)).toEqual(['3 knob'])
    expect(names({})).toEqual([])
  })
})

describe('the front of a drawer box behind a pull', () => {
  const at = ({ min, max }: Box) => ({ x: (min.x + max.x) / 2, y: (min.y + max.y) / 2 })
  const boltsIn = (board: Board) =>
    board.operations.flatMap((one) => (one.kind === 'holeRow' && one.purpose === 'pullBolt' ? [one] : []))
  const placesIn = (board: Board, rows: readonly HoleRow[]) =>
    rows
      .flatMap((row) => centresOf(row).map(({ x, y }) => toCabinet(board.placement, x, y, 0)))
      .map(({ x, y }) => `${settle(x)},${settle(y)}`)
      .sort()

  it('is bored on the axes of the holes in the drawer front, right through', () => {
    const boards = boardsOf(aCabinet('base', { front: { kind: 'drawer' } }), rulesWith(BARS))
    const boxFront = boardIn(boards, 'drawerBoxFront')
    const rows = boltsIn(boxFront)
    expect(rows).toMatchObject([{ count: 2, step: 128, diameter: 5, depth: 12 }])
    const { x, y } = at(boxOf(boardIn(boards, 'drawerFront')))
    expect(placesIn(boxFront, rows)).toEqual([`${x - 64},${y}`, `${x + 64},${y}`])
    // Its own frame begins 600 - 2 x 18 - 2 x 12.7 - 2 x 12 = 514.6 from the other end.
    expect(rows[0]!.x).toBeCloseTo(514.6 / 2 - 64, 6)
  })

  it('adds no pull to what is bought', () => {
    const rules = rulesWith(KNOBS)
    const build = buildCabinet(aCabinet('base', { front: { kind: 'drawer' } }), rules)
    expect(build.boards.flatMap(boltsIn).length).toBe(1)
    expect(hardwareOf(build, partsOf(build, rules), rules)).toContainEqual({ name: 'knob', quantity: 1, length: null })
  })

  it('is not bored where the pull is above it, nor is anything said of that', () => {
    const build = buildCabinet(aCabinet('base', { front: { kind: 'pullOut', box: 120 } }), rulesWith(BARS))
    expect(boardIn(build.boards, 'drawerBoxFront')).toBeDefined()
    expect(build.boards.flatMap(pullsIn).length).toBe(1)
    expect(build.boards.flatMap(boltsIn)).toEqual([])
    expect(build.problems).toEqual([])
  })

  it('is bored for one bolt where the other goes past its end, and not where its groove is', () => {
    const boxFront = boardIn(boardsOf(aCabinet('base', { front: { kind: 'drawer' } }), rulesWith()), 'drawerBoxFront')
    const { min, max } = boxOf(boxFront)
    const level = (from: number, to: number, y: number): Pull => ({ from: { x: from, y }, to: { x: to, y } })
    const past = boltsThrough(boxFront, level(min.x - 28, min.x + 100, 300), 5)
    expect([placesIn(boxFront, past.rows), past.missing]).toEqual([[`${min.x + 100},300`], 0])
    // The groove for the bottom begins 10 up.
    expect(boltsThrough(boxFront, level(200, 328, min.y + 12), 5)).toEqual({ rows: [], missing: 2 })
    expect(boltsThrough(boxFront, level(200, 328, max.y - 1), 5)).toEqual({ rows: [], missing: 2 })
    expect(boltsThrough(boxFront, level(200, 328, max.y + 1), 5)).toEqual({ rows: [], missing: 0 })
  })
})
