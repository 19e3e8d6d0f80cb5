import { counted } from '../basics/counted'
import type { Interval } from '../geometry/interval'
import type { Vec3 } from '../geometry/vector'
import type { Fixing } from '../project/fixing'
import { type Mm, settle } from '../units/length'
import type { Board } from './board'
import { boxOf } from './boardBox'
import { nearestFree } from './clearing'
import { inBoard } from './frame'
import { LEAST_WOOD } from './hinge'
import { boreDepth, withHoles } from './holes'
import { type Meeting, meetingsOf } from './meeting'
import type { HoleRow } from './operation'
import { roomsIn } from './removed'
import type { Report } from './report'

type Fixed = Exclude<Fixing, { readonly kind: 'none' }>

/** What a screw passes is so much wider than the screw. Common practice, no source. */
export const PLAY_OF_SCREW: Mm = 0.5

export interface FixedBoards {
  readonly boards: readonly Board[]
  /** What the rule asks for and what finds no place. */
  readonly missing: number
}

/** The boards with what holds their corners, last of all that is bored, since it can best make way. */
export function held(boards: readonly Board[], fixing: Fixing, report: Report): readonly Board[] {
  const { boards: done, missing } = fixed(boards, fixing)
  if (missing > 0) {
    report.mind(
      `${counted(missing, 'fixing')} of its corners find no place: other holes, grooves or a thin board are in the way. Nothing is bored for them.`,
    )
  }
  return done
}

/**
 * The boards with what is bored to hold the corners of the carcass: in the face of one and the end of the other, on one
 * axis. Dowels and loose tenons are set where a board is butted; a housed one is held in place by its housing.
 */
export function fixed(boards: readonly Board[], fixing: Fixing): FixedBoards {
  if (fixing.kind === 'none') return { boards, missing: 0 }
  let now = boards
  let missing = 0
  for (const meeting of meetingsOf(boards)) {
    if (fixing.kind !== 'screws' && meeting.sunk > 0) continue
    // What was bored for the corners before this one is on the boards of now.
    const at = (board: Board) => now[boards.indexOf(board)]!
    const current = { ...meeting, mate: at(meeting.mate), carrier: at(meeting.carrier) }
    const wishes = placesAlong(current.stretch, fixing)
    const places = freePlaces(wishes, current, fixing)
    missing += wishes.length - places.length
    const [inFace, inEnd] = [faceRows(places, current, fixing), endRows(places, current, fixing)]
    now = now.map((board) => {
      return withHoles(board, board === current.carrier ? inFace : board === current.mate ? inEnd : [])
    })
  }
  return { boards: now, missing }
}

/**
 * Where the fixings of a joint are, the same from both of its ends: the first as far in as it may be, the others no farther
 * apart than they may be, two at least. Of a joint that is too short for that they are a quarter of it from its ends.
 */
export function placesAlong({ from, to }: Interval, { fromEdge, spacing }: Pick<Fixed, 'fromEdge' | 'spacing'>): Mm[] {
  const length = to - from
  const end = Math.min(fromEdge, length / 4)
  const count = spacing > 0 ? Math.max(2, Math.ceil((length - 2 * end) / spacing - 1e-6) + 1) : 2
  const step = settle((length - 2 * end) / (count - 1))
  const first = settle(from + (length - (count - 1) * step) / 2)
  return Array.from({ length: Math.min(count, MOST) }, (_, at) => settle(first + at * step))
}

/** Nobody sets more in one joint; what is asked for in nonsense must end too. */
const MOST = 60

/** How wide a fixing is along its line and across it, with its head. */
function extentOf(fixing: Fixed): { readonly along: Mm; readonly across: Mm } {
  if (fixing.kind === 'screws') {
    const widest = Math.max(fixing.diameter + PLAY_OF_SCREW, fixing.head)
    return { along: widest, across: widest }
  }
  return { along: fixing.kind === 'dowels' ? fixing.diameter : fixing.across, across: fixing.diameter }
}

/** How deep it is bored into the face and into the end. A screw passes what its housing leaves of the board. */
function depthsOf(fixing: Fixed, { carrier, reach, sunk }: Meeting): { readonly inFace: Mm; readonly inEnd: Mm } {
  if (fixing.kind === 'screws') {
    const inFace = settle(carrier.thickness - sunk)
    return { inFace, inEnd: settle(Math.min(fixing.length - inFace, reach - 1)) }
  }
  return { inFace: boreDepth(fixing.inFace, carrier), inEnd: settle(Math.min(fixing.inEnd, reach / 2 - 1)) }
}

/** Each where it is wished, or at the nearest place where it meets nothing that is worked on either board. */
function freePlaces(wishes: readonly Mm[], meeting: Meeting, fixing: Fixed): Mm[] {
  const { carrier, mate, across, middle, stretch } = meeting
  const { along, across: wide } = extentOf(fixing)
  const { inFace, inEnd } = depthsOf(fixing, meeting)
  const ownWide = fixing.kind === 'screws' ? fixing.pilot : wide
  const box = boxOf(carrier)
  const isInside = middle - wide / 2 >= box.min[across] && middle + wide / 2 <= box.max[across]
  if (!isInside || !(inFace > 0 && inEnd > 0 && ownWide > 0) || ownWide > mate.thickness - 2) return []
  const taken = [
    ...takenOn(carrier, meeting, reachInto(meeting, inFace, true), wide, along),
    ...takenOn(mate, meeting, reachInto(meeting, inEnd, false), ownWide, along),
  ]
  const room = along / 2 + LEAST_WOOD
  const range = { from: settle(stretch.from + room), to: settle(stretch.to - room) }
  const places: Mm[] = []
  for (const wish of wishes) {
    const others = places.map((at) => ({ from: at - along - LEAST_WOOD, to: at + along + LEAST_WOOD }))
    const place = nearestFree(wish, [...taken, ...others], range)
    if (place !== null) places.push(settle(place))
  }
  return places.sort((a, b) => a - b)
}

/** From the mate's end into the carrier, or back into the mate. */
function reachInto({ level, isHigh }: Meeting, depth: Mm, isCarrier: boolean): Interval {
  return isHigh === isCarrier ? { from: level, to: level + depth } : { from: level - depth, to: level }
}

/** Where the middle of a fixing cannot be on its line for what is worked on a board already. */
function takenOn(
  board: Board,
  { through, across, middle, line }: Meeting,
  reach: Interval,
  wide: Mm,
  along: Mm,
): Interval[] {
  const half = wide / 2 + LEAST_WOOD
  return roomsIn(board).flatMap(({ min, max }) => {
    const isMet =
      max[through] > reach.from + DUST &&
      min[through] < reach.to - DUST &&
      max[across] > middle - half &&
      min[across] < middle + half
    const room = along / 2 + LEAST_WOOD
    return isMet ? [{ from: settle(min[line] - room), to: settle(max[line] + room) }] : []
  })
}

/** Coordinates are sums of settled lengths: less than this is the dust of adding them. */
const DUST: Mm = 1e-6

function faceRows(places: readonly Mm[], meeting: Meeting, fixing: Fixed): HoleRow[] {
  const { inFace: depth } = depthsOf(fixing, meeting)
  const isScrewed = fixing.kind === 'screws'
  const face = isScrewed ? otherFace(meeting.face) : meeting.face
  const bore = isScrewed
    ? ({ purpose: 'screw', diameter: settle(fixing.diameter + PLAY_OF_SCREW), ...headOf(fixing) } as const)
    : insertOf(fixing)
  return rowsAt(meeting.carrier, places, meeting, { face, depth, ...bore })
}

/** A head that is no wider than its hole is not sunk. */
function headOf({ head, diameter }: Extract<Fixed, { kind: 'screws' }>) {
  return head > diameter + PLAY_OF_SCREW ? { countersink: head } : {}
}

function otherFace(face: Meeting['face']): Meeting['face'] {
  return face === 'inside' ? 'outside' : 'inside'
}

function endRows(places: readonly Mm[], meeting: Meeting, fixing: Fixed): HoleRow[] {
  const { mate, end } = meeting
  const { inEnd: depth } = depthsOf(fixing, meeting)
  const bore = fixing.kind === 'screws' ? ({ purpose: 'pilot', diameter: fixing.pilot } as const) : insertOf(fixing)
  const up = settle(mate.thickness / 2)
  return rowsAt(mate, places, meeting, { face: end, depth, up, ...bore })
}

function insertOf(fixing: Exclude<Fixed, { kind: 'screws' }>) {
  return fixing.kind === 'dowels'
    ? ({ purpose: 'dowel', diameter: fixing.diameter } as const)
    : ({ purpose: 'looseTenon', diameter: fixing.diameter, oval: fixing.across } as const)
}

type Bore = Pick<HoleRow, 'purpose' | 'face' | 'diameter' | 'depth'> &
  Partial<Pick<HoleRow, 'up' | 'oval' | 'countersink'>>

/** The holes of one line in a board: one row where they are equally far apart, else each by itself. */
function rowsAt(board: Board, places: readonly Mm[], meeting: Meeting, bore: Bore): HoleRow[] {
  const points = places.map((place) => {
    const at = { [meeting.through]: meeting.level, [meeting.across]: meeting.middle, [meeting.line]: place }
    const point = at as unknown as Vec3
    return inBoard(board, { min: point, max: point }).min
  })
  points.sort((a, b) => a.x - b.x || a.y - b.y)
  const [first, second] = points
  if (!first) return []
  const runsAcross = second ? second.x === first.x : isAcross(board, meeting)
  const along = runsAcross ? ({ along: 'width' } as const) : {}
  const row = ({ x, y }: Vec3, step: Mm, count: number): HoleRow => {
    return { kind: 'holeRow', ...along, x, y, step, count, ...bore }
  }
  const steps = points.slice(1).map((point, at) => settle(point.x - points[at]!.x + point.y - points[at]!.y))
  const isEven = steps.every((step) => step === steps[0])
  return isEven ? [row(first, steps[0] ?? 0, points.length)] : points.map((point) => row(point, 0, 1))
}

function isAcross({ placement }: Board, { line }: Meeting): boolean {
  return placement.width.endsWith(line)
}
