import { counted } from '../basics/counted'
import { PRACTICE } from '../basics/source'
import type { Box } from '../geometry/box'
import type { FrontScrews } from '../project/fixing'
import { AS_SETTLED, type Mm, settle } from '../units/length'
import type { Board, BoardRole, FrontFace } from './board'
import { boxOf } from './boardBox'
import { boxFrontBehind, isMiddleIn } from './boxFront'
import { fromBothEnds, type Spread } from './fromBothEnds'
import { LEAST_WOOD } from './hinge'
import { holesBetween, withHoles } from './holes'
import type { HoleRow } from './operation'
import { roomsIn } from './removed'
import type { Report } from './report'
import { wishesAlong } from './spacing'

type Screws = Extract<FrontScrews, { readonly kind: 'screws' }>

/** What of a screw is to hold in a front at least. Common practice, no source. */
const LEAST_BITE: Mm = 8
/** What stays before the point of a screw, so that it does not show. */
const BEFORE_POINT: Mm = 1

/** A drawer front as it is made, and the front of the box behind it. */
interface Drawer {
  readonly boxFront: Board
  /** The front, or the stiles and rails of one in five parts. */
  readonly members: readonly Board[]
  /** Between the two. */
  readonly gap: Mm
}

/**
 * The boards with the holes for the screws that draw a drawer front to its box, from inside: right through the front of the
 * box, wide enough that the front can be set, and a spot for each point in the back of the front. Each goes where it is
 * wished or near to it, where it meets no pull, no groove and no joint.
 */
export function frontsScrewed(
  boards: readonly Board[],
  fronts: readonly FrontFace[],
  screws: FrontScrews | undefined,
  report: Report,
): readonly Board[] {
  if (!screws || screws.kind === 'none') return boards
  const rowsOf = new Map<Board, HoleRow[]>()
  const bore = (board: Board, rows: readonly HoleRow[]) => rowsOf.set(board, [...(rowsOf.get(board) ?? []), ...rows])
  let missing = 0
  for (const drawer of drawersIn(boards, fronts)) {
    const depth = settle(screws.length - drawer.boxFront.thickness - drawer.gap)
    if (!doesReach(depth, drawer, screws, report)) continue
    const lines = wishesIn(drawer.boxFront, screws)
    const found = screwsIn(drawer, lines, depth, screws)
    missing += Math.max(0, lines.flat().length - found.length)
    for (const { board, row } of found.flat()) bore(board, [row])
  }
  if (missing > 0) {
    report.mind(
      `${counted(missing, 'screw')} of its drawer fronts find no place: pulls, grooves or panels are in the way. Nothing is bored for them.`,
      { is: `${missing} missing`, limit: 'none' },
    )
  }
  return rowsOf.size === 0 ? boards : boards.map((board) => withHoles(board, rowsOf.get(board) ?? []))
}

const MEMBERS: readonly BoardRole[] = ['drawerFront', 'drawerStile', 'drawerRail']

function drawersIn(boards: readonly Board[], fronts: readonly FrontFace[]): Drawer[] {
  const members = boards.filter(({ role }) => MEMBERS.includes(role))
  return fronts.flatMap((face): Drawer[] => {
    if (face.kind !== 'drawer') return []
    const own = members.filter((member) => isMiddleIn(boxOf(member), face))
    const boxFront = boxFrontBehind(boards, face)
    const [first] = own
    if (!boxFront || !first) return []
    return [{ boxFront, members: own, gap: settle(boxOf(first).min.z - boxOf(boxFront).max.z) }]
  })
}

/** Whether screws hold in the front and do not come out of it. */
function doesReach(depth: Mm, { members, gap }: Drawer, { length }: Screws, report: Report): boolean {
  const { thickness } = members[0]!
  const most = settle(thickness - BEFORE_POINT)
  if (depth > most) {
    report.mind(
      `screws of ${report.say(length)} would go ${report.say(depth)} into a drawer front of ${report.say(thickness)} and show; nothing is bored for them. Take shorter ones.`,
      { is: depth, limit: most, source: PRACTICE },
    )
    return false
  }
  if (depth >= LEAST_BITE) return true
  const before = gap > 0 ? `, which stands ${report.say(gap)} before its box` : ''
  report.mind(
    `screws of ${report.say(length)} would hold ${report.left(depth)} in a drawer front${before}; ${report.say(LEAST_BITE)} at least is usual. Nothing is bored for them. Take longer ones.`,
    { is: report.left(depth), limit: LEAST_BITE, source: PRACTICE },
  )
  return false
}

interface Place {
  readonly x: Mm
  readonly y: Mm
}

/** Along the front of the box, in two lines, or in one where it is low. */
function wishesIn(boxFront: Board, { fromEdge, spacing, head }: Screws): Place[][] {
  const { min, max } = boxOf(boxFront)
  const xs = wishesAlong({ from: min.x, to: max.x }, { fromEdge, spacing }, head)
  const isLow = max.y - min.y < 3 * fromEdge
  const ys = isLow ? [settle((min.y + max.y) / 2)] : [settle(min.y + fromEdge), settle(max.y - fromEdge)]
  return ys.map((y) => xs.map((x) => ({ x, y })))
}

/** How far a screw may make way, and in what steps it is tried. */
const AWAY: Mm = 40
const STEP: Mm = 4

const OFFSETS: readonly Place[] = (() => {
  const steps = Array.from({ length: (2 * AWAY) / STEP + 1 }, (_, at) => at * STEP - AWAY)
  const far = ({ x, y }: Place) => x * x + y * y
  return steps.flatMap((x) => steps.map((y) => ({ x, y }))).sort((a, b) => far(a) - far(b) || b.y - a.y || a.x - b.x)
})()

type Bored = readonly { readonly board: Board; readonly row: HoleRow }[]

/** The two holes of each screw of a drawer, line after line, each line from both of its ends. */
function screwsIn(drawer: Drawer, lines: readonly (readonly Place[])[], depth: Mm, screws: Screws): Bored[] {
  const boredAt = boredIn(drawer, depth, screws)
  const room = settle((screws.hole + Math.max(screws.head, screws.hole)) / 2 + LEAST_WOOD)
  const far = (one: Place, other: Place) => Math.max(Math.abs(one.x - other.x), Math.abs(one.y - other.y))
  const places: Place[] = []
  for (const line of lines) {
    const near: Spread<Place>['near'] = (wish, taken, rather, least) => {
      const outwards = rather === 'low' ? 1 : -1
      const isClear = (at: Place) => ![...places, ...taken].some((one) => far(at, one) < room)
      for (const by of OFFSETS) {
        if (by.x !== 0 && Math.abs(by.x) < least) continue
        const at = { x: settle(wish.x + outwards * by.x), y: settle(wish.y + by.y) }
        if (isClear(at) && boredAt(at)) return at
      }
      return null
    }
    const between = (one: Place, other: Place) => ({ x: settle((one.x + other.x) / 2), y: one.y })
    places.push(...fromBothEnds(line, { room, near, far, between }))
  }
  return places.flatMap((at): Bored[] => {
    const bored = boredAt(at)
    return bored ? [bored] : []
  })
}

/** What is bored for a screw at a place; nothing where it meets what is worked on either board, or has no wood round it. */
function boredIn({ boxFront, members, gap }: Drawer, depth: Mm, screws: Screws): (at: Place) => Bored | null {
  const z = boxOf(boxFront).max.z
  const inBox = { box: boxOf(boxFront), rooms: roomsIn(boxFront) }
  const inMembers = members.map((board) => ({ board, box: boxOf(board), rooms: roomsIn(board) }))
  const deep = { from: settle(z + gap), to: settle(z + gap + depth) }
  return (at) => {
    if (!isFree(at, screws.head / 2, { from: inBox.box.min.z, to: z }, inBox)) return null
    const member = inMembers.find((one) => isFree(at, screws.pilot / 2, deep, one))
    if (!member) return null
    const point = (plane: Mm) => ({ ...at, z: plane })
    const through = { purpose: 'frontScrew', diameter: screws.hole, depth: 'through' } as const
    const [hole] = holesBetween(boxFront, 'inside', point(z), point(z), through)
    const spot = { purpose: 'frontPilot', diameter: screws.pilot, depth } as const
    const [pilot] = holesBetween(member.board, 'inside', point(deep.from), point(deep.from), spot)
    if (!hole || !pilot) return null
    return [
      { board: boxFront, row: hole },
      { board: member.board, row: pilot },
    ]
  }
}

/** Whether a round hole lies in a board with wood all round it, and meets nothing that is worked on it. */
function isFree(
  { x, y }: Place,
  radius: Mm,
  z: { readonly from: Mm; readonly to: Mm },
  { box, rooms }: { readonly box: Box; readonly rooms: readonly Box[] },
): boolean {
  const by = radius + LEAST_WOOD - AS_SETTLED
  const isInside = x - by >= box.min.x && x + by <= box.max.x && y - by >= box.min.y && y + by <= box.max.y
  return (
    isInside &&
    !rooms.some(
      ({ min, max }) =>
        min.x < x + by && max.x > x - by && min.y < y + by && max.y > y - by && min.z < z.to && max.z > z.from,
    )
  )
}
