import type { Interval } from '../geometry/interval'
import type { Vec3 } from '../geometry/vector'
import type { Fixing, PocketRules } from '../project/fixing'
import { type Mm, settle } from '../units/length'
import type { Board } from './board'
import { boxOf } from './boardBox'
import { nearestFree } from './clearing'
import { inBoard } from './frame'
import { LEAST_WOOD } from './hinge'
import { boreDepth, withHoles } from './holes'
import { type Meeting, meetingsOf } from './meeting'
import type { HoleRow } from './operation'
import { type PocketJoint, pocketed } from './pocket'
import { roomsIn } from './removed'
import { type FixedBoards, rowsOfPoints, type Spacing, wishesAlong } from './spacing'

type Fixed = Exclude<Fixing, { readonly kind: 'none' | 'pocketScrews' }>

/** What a screw passes is so much wider than the screw. Common practice, no source. */
export const PLAY_OF_SCREW: Mm = 0.5

/**
 * The boards with what is bored to hold the corners of the carcass: in the face of one and the end of the other, on one
 * axis. Dowels and loose tenons are set where a board is butted; a housed one is held in place by its housing.
 */
export function fixed(boards: readonly Board[], fixing: Fixing, pockets: PocketRules): FixedBoards {
  if (fixing.kind === 'none') return { boards, missing: 0 }
  if (fixing.kind === 'pocketScrews') return pocketed(boards, butted(boards, fixing), pockets)
  let now = boards
  let missing = 0
  for (const meeting of meetingsOf(boards)) {
    if (fixing.kind !== 'screws' && meeting.sunk > 0) continue
    // What was bored for the corners before this one is on the boards of now.
    const at = (board: Board) => now[boards.indexOf(board)]!
    const current = { ...meeting, mate: at(meeting.mate), carrier: at(meeting.carrier) }
    const wishes = wishesAlong(current.stretch, fixing, extentOf(fixing).along)
    const places = freePlaces(wishes, current, fixing)
    missing += wishes.length - places.length
    const [inFace, inEnd] = [faceRows(places, current, fixing), endRows(places, current, fixing)]
    now = now.map((board) => {
      return withHoles(board, board === current.carrier ? inFace : board === current.mate ? inEnd : [])
    })
  }
  return { boards: now, missing }
}

/** Every end that is butted, bored from the face that looks out of the carcass: but for a board on edge at its front from behind. */
function butted(boards: readonly Board[], spacing: Spacing): PocketJoint[] {
  return meetingsOf(boards).flatMap((meeting): PocketJoint[] => {
    const { mate, carrier, end, line, stretch, sunk } = meeting
    if (sunk > 0) return []
    const at = (place: Mm) => ({ ...boxOf(mate).min, [line]: place }) as Vec3
    const { min, max } = inBoard(mate, { min: at(stretch.from), max: at(stretch.to) })
    const way = end === 'low' || end === 'high' ? 'x' : 'y'
    const isOnEdgeInFront = mate.role === 'frontStretcher' && mate.placement.thickness.endsWith('z')
    const face = isOnEdgeInFront ? 'inside' : 'outside'
    return [{ board: mate, face, towards: end, stretch: { from: min[way], to: max[way] }, spacing, into: [carrier] }]
  })
}

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
  if (fixing.kind === 'dowels') return { purpose: 'dowel', diameter: fixing.diameter } as const
  const purpose = fixing.kind === 'biscuits' ? 'biscuit' : 'looseTenon'
  return { purpose, diameter: fixing.diameter, oval: fixing.across } as const
}

type Bore = Pick<HoleRow, 'purpose' | 'face' | 'diameter' | 'depth'> &
  Partial<Pick<HoleRow, 'up' | 'oval' | 'countersink'>>

/** The holes of one line in a board. */
function rowsAt(board: Board, places: readonly Mm[], meeting: Meeting, bore: Bore): HoleRow[] {
  const points = places.map((place) => {
    const at = { [meeting.through]: meeting.level, [meeting.across]: meeting.middle, [meeting.line]: place }
    const point = at as unknown as Vec3
    return inBoard(board, { min: point, max: point }).min
  })
  return rowsOfPoints(points, isAcross(board, meeting), bore)
}

function isAcross({ placement }: Board, { line }: Meeting): boolean {
  return placement.width.endsWith(line)
}
