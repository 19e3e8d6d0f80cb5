import { type Box, boxAround, boxesOverlap } from '../geometry/box'
import type { Interval } from '../geometry/interval'
import { toCabinet } from '../geometry/placement'
import type { PocketRules } from '../project/fixing'
import { type Mm, settle } from '../units/length'
import type { Board } from './board'
import { boxOf } from './boardBox'
import { nearestFree, nearestOf } from './clearing'
import { inBoard } from './frame'
import { type Finder, spreadOver } from './fromBothEnds'
import { LEAST_WOOD } from './hinge'
import { withHoles } from './holes'
import { type EdgeFace, type Face, type HoleRow, isLongAlong, radians } from './operation'
import { boredBy, roomsIn } from './removed'
import { type FixedBoards, rowsOfPoints, type Spacing, wishesAlong } from './spacing'

/** A board that is butted with an end or an edge to others, and screwed to them from holes in one of its faces. */
export interface PocketJoint {
  readonly board: Board
  readonly face: Face
  readonly towards: EdgeFace
  /** Where a line within its outline is that looks that way, where that is butted and not its end or edge. */
  readonly inner?: Mm
  /** Of that end, edge or line, in the board's frame. */
  readonly stretch: Interval
  readonly spacing: Spacing
  /** What the screws may go into. */
  readonly into: readonly Board[]
}

/**
 * Where a pocket hole begins, and how far along its axis the pocket goes. The axis comes out of the end in the middle of the
 * thickness:
 *
 *      face  ______.____________     begins at  thickness / 2 / tan(angle)  from the end
 *                   `.  axis    |    the axis is  thickness / 2 / sin(angle)  long
 *                      `.       |    of which the pocket leaves what is under the head
 *             screw  ->   `.    |
 *                           `.  |
 *      ------------------------`.   middle of the thickness
 */
export function pocketIn(
  thickness: Mm,
  { angle, underHead }: PocketRules,
): { readonly fromEnd: Mm; readonly depth: Mm } {
  const half = thickness / 2
  return {
    fromEnd: settle(half / Math.tan(radians(angle))),
    depth: settle(half / Math.sin(radians(angle)) - underHead),
  }
}

/**
 * The boards with pocket holes in all joints, as far as they find places that meet nothing else: neither what is worked on
 * the board, nor what is worked on the one that the screw goes into, nor a screw that comes from its other side. Of two that
 * would meet from left and right, as in a rail that is too short for both, neither is bored: there is no hand to give one.
 */
export function pocketed(boards: readonly Board[], joints: readonly PocketJoint[], rules: PocketRules): FixedBoards {
  let now: Bored = { boards, screws: [] }
  let missing = 0
  for (const together of atOnce(joints)) {
    const before = now
    const ways = together.map((inTurn) => boredInTurn(inTurn, boards, before, rules))
    const found = ways.flatMap((one, at) => withoutMeeting(one, ways[1 - at] ?? [], rules))
    for (const { joint, wished, places } of found.sort((a, b) => joints.indexOf(a.joint) - joints.indexOf(b.joint))) {
      missing += Math.max(0, wished - places.length)
      now = withPockets(now, boards.indexOf(joint.board), places, joint, rules)
    }
  }
  return { boards: now.boards, missing }
}

/** The boards in the order that they were given, and all screws that hold them by now, in the cabinet's frame. */
interface Bored {
  readonly boards: readonly Board[]
  readonly screws: readonly Box[]
}

interface Found {
  /** Of the boards as they were given. */
  readonly joint: PocketJoint
  readonly wished: number
  readonly places: readonly Mm[]
}

/** One after another, each making way for those before it. */
function boredInTurn(
  joints: readonly PocketJoint[],
  boards: readonly Board[],
  before: Bored,
  rules: PocketRules,
): Found[] {
  let now = before
  return joints.map((joint) => {
    const at = (board: Board) => now.boards[boards.indexOf(board)]!
    const current = { ...joint, board: at(joint.board), into: joint.into.map(at) }
    const wishes = wishesAlong(joint.stretch, joint.spacing, rules.diameter)
    const places = freePlaces(wishes, current, now.screws, rules)
    now = withPockets(now, boards.indexOf(joint.board), places, joint, rules)
    return { joint, wished: wishes.length, places }
  })
}

function withPockets(
  { boards, screws }: Bored,
  bored: number,
  places: readonly Mm[],
  joint: PocketJoint,
  rules: PocketRules,
): Bored {
  const rows = rowsAt(places, joint, rules)
  return {
    boards: boards.map((board, at) => (at === bored ? withHoles(board, rows) : board)),
    screws: [...screws, ...places.map((place) => screwAt(place, joint, rules))],
  }
}

/** Joints in their order, each by itself; but of those across the cabinet that follow one another, either way at once. */
function atOnce(joints: readonly PocketJoint[]): PocketJoint[][][] {
  const groups: PocketJoint[][][] = []
  for (const joint of joints) {
    const last = groups.at(-1)
    const way = wayAcross(joint)
    if (way === null) groups.push([[joint]])
    else {
      const both = last?.length === 2 ? last : [[], []]
      if (both !== last) groups.push(both)
      both[way]!.push(joint)
    }
  }
  return groups
}

/** 0 where what is butted looks left, 1 where it looks right, null where neither. */
function wayAcross(joint: PocketJoint): 0 | 1 | null {
  const { placement } = joint.board
  const way = joint.towards === 'start' || joint.towards === 'end' ? placement.length : placement.width
  if (!way.endsWith('x')) return null
  return way.startsWith('+') === isHigh(joint) ? 1 : 0
}

/** The same without the places whose pockets or screws would meet one of the others. */
function withoutMeeting(found: readonly Found[], others: readonly Found[], rules: PocketRules): readonly Found[] {
  const theirs = others.flatMap((one) => one.places.flatMap((place) => roomsAt(place, one, rules)))
  if (theirs.length === 0) return found
  const isMet = (own: Box) => theirs.some((one) => boxesOverlap(own, one, -LEAST_WOOD))
  return found.map((one) => ({ ...one, places: one.places.filter((place) => !roomsAt(place, one, rules).some(isMet)) }))
}

/** What a pocket and its screw take, in the cabinet's frame. */
function roomsAt(place: Mm, { joint }: Found, rules: PocketRules): Box[] {
  const alone = withHoles({ ...joint.board, operations: [] }, rowsAt([place], joint, rules))
  return [screwAt(place, joint, rules), ...roomsIn(alone)]
}

function rowsAt(places: readonly Mm[], joint: PocketJoint, rules: PocketRules): HoleRow[] {
  const { board, face, towards, inner } = joint
  const { fromEnd, depth } = pocketIn(board.thickness, rules)
  const slant = { towards, angle: rules.angle, ...(inner === undefined ? {} : { away: fromEnd }) }
  const isEnd = isLongAlong({ slant })
  const own = settle(isHigh(joint) ? lineOf(joint) - fromEnd : lineOf(joint) + fromEnd)
  const points = places.map((place) => (isEnd ? { x: own, y: place } : { x: place, y: own }))
  return rowsOfPoints(points, isEnd, { purpose: 'pocketScrew', face, diameter: rules.diameter, depth, slant })
}

function isHigh({ towards }: PocketJoint): boolean {
  return towards === 'end' || towards === 'high'
}

/** Where what is butted lies, along the way that it looks. */
function lineOf(joint: PocketJoint): Mm {
  const { board, towards, inner } = joint
  return inner ?? (isHigh(joint) ? (towards === 'end' ? board.length : board.width) : 0)
}

/** How far a screw goes beyond the end, square to it, and how far across the thickness meanwhile. */
function biteOf({ angle, screwLength, underHead }: PocketRules): { readonly out: Mm; readonly down: Mm } {
  const bite = screwLength - underHead
  return { out: bite * Math.cos(radians(angle)), down: bite * Math.sin(radians(angle)) }
}

/** The box around what of a screw is beyond the end, in the cabinet's frame. */
function screwAt(place: Mm, joint: PocketJoint, rules: PocketRules): Box {
  const { board, face, towards } = joint
  const { out, down } = biteOf(rules)
  const radius = rules.screwDiameter / 2
  const isEnd = towards === 'start' || towards === 'end'
  const line = lineOf(joint)
  const through = isHigh(joint) ? [line, line + out] : [line - out, line]
  const from = board.thickness / 2 - radius
  const to = board.thickness / 2 + down + radius
  const z = face === 'outside' ? [from, to] : [board.thickness - to, board.thickness - from]
  const across = [place - radius, place + radius]
  const [x, y] = isEnd ? [through, across] : [across, through]
  const corner = (at: 0 | 1) => toCabinet(board.placement, x[at]!, y[at]!, z[at]!)
  return boxAround(corner(0), corner(1))
}

function freePlaces(wishes: readonly Mm[], joint: PocketJoint, screws: readonly Box[], rules: PocketRules): Mm[] {
  const { board, stretch, into, towards } = joint
  const along = towards === 'start' || towards === 'end' ? 'y' : 'x'
  const [row] = rowsAt([0], joint, rules)
  const pocket = row && boredBy(row, board)[0]
  if (!row || !pocket || !(row.depth > 0) || !(rules.screwLength > rules.underHead)) return []
  if (pocket.min.z < 0 || pocket.max.z > board.thickness || !isHeadSunk(board.thickness, rules)) return []
  const screw = inBoard(board, screwAt(0, joint, rules))
  const ranges = into.flatMap((one) => rangeWithin(inBoard(board, boxOf(one)), screw, along))
  const taken = [
    ...takenBy(roomsIn(board), board, pocket, along),
    ...takenBy([...into.flatMap(roomsIn), ...screws], board, screw, along),
  ]
  const room = rules.diameter / 2 + LEAST_WOOD
  const near: Finder = (wish, others, rather) => {
    const free = ranges.flatMap(({ from, to }) => {
      const within = { from: settle(Math.max(from, stretch.from + room)), to: settle(Math.min(to, stretch.to - room)) }
      return nearestFree(wish, [...taken, ...others], within, rather) ?? []
    })
    return nearestOf(wish, free, rather)
  }
  const { placement } = board
  const axis = (along === 'x' ? placement.length : placement.width).slice(1) as 'x' | 'y' | 'z'
  return spreadOver(wishes, axis, rules.diameter + LEAST_WOOD, near)
    .map(settle)
    .sort((a, b) => a - b)
}

/** Whether the whole seat of the head is below the face: in a thin board less may be left under it. */
function isHeadSunk(thickness: Mm, { angle, diameter, underHead }: PocketRules): boolean {
  const [sin, cos] = [Math.sin(radians(angle)), Math.cos(radians(angle))]
  return thickness / 2 - underHead * sin >= (diameter / 2) * cos
}

type Way = 'x' | 'y'

/** Where along the joint a board takes the whole of a screw; `screw` is one at 0. */
function rangeWithin(box: Box, screw: Box, along: Way): Interval[] {
  const others = (['x', 'y', 'z'] as const).filter((axis) => axis !== along)
  const isIn = others.every(
    (axis) => box.min[axis] <= screw.min[axis] + DUST && box.max[axis] >= screw.max[axis] - DUST,
  )
  const range = { from: box.min[along] - screw.min[along], to: box.max[along] - screw.max[along] }
  return isIn && range.from <= range.to ? [range] : []
}

/** Coordinates are sums of settled lengths: less than this is the dust of adding them. */
const DUST: Mm = 1e-3

/** Where along the joint what is at 0 cannot be for rooms of the cabinet's frame. */
function takenBy(rooms: readonly Box[], board: Board, { min, max }: Box, along: Way): Interval[] {
  const others = (['x', 'y', 'z'] as const).filter((axis) => axis !== along)
  return rooms.flatMap((one) => {
    const box = inBoard(board, one)
    const isMet = others.every((axis) => box.min[axis] < max[axis] - DUST && box.max[axis] > min[axis] + DUST)
    if (!isMet) return []
    return [
      { from: settle(box.min[along] - max[along] - LEAST_WOOD), to: settle(box.max[along] - min[along] + LEAST_WOOD) },
    ]
  })
}
