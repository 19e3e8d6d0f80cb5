import { rightOf } from '../geometry/rect'
import { plus } from '../geometry/vector'
import type { Side } from '../project/document'
import { USUAL_FOLD } from '../project/machining'
import { type Mm, settle } from '../units/length'
import { WAYS } from './apart'
import type { Board, FrontFace, Leg as LegOfWay } from './board'
import { frontsRear } from './carcass'
import { type Doors, otherWall } from './cornerDoor'
import type { Legs } from './cornerLegs'
import { stoodIn } from './facePlane'
import { doorOf } from './fronts'
import { hung, withCups } from './hingeBoring'
import { boreDepth, withHoles } from './holes'
import { joined } from './joinery'
import { leafWeight } from './leaf'
import { frontsApart } from './membersApart'
import { frontArea } from './openings'
import type { HoleRow } from './operation'
import type { Piece } from './piece'
import { pulled } from './pull'
import { fitsOn } from './removed'
import type { Report } from './report'
import { canBeCut } from './sound'

/**
 * The two leaves of an L. The one on the own leg hangs on the side there and runs into the inside corner; the other is
 * hinged to it and stands before it, a gap away. It is the one that is pulled, at its free edge.
 *
 *      |
 *    o |
 *    t |   gap
 *    h #_________________
 *    e  #################  hung leaf
 *    r #
 *      #  leaf that is pulled
 */
export function withLeaves(boards: readonly Board[], legs: Legs, doors: Doors) {
  const { hand, of, report, densityOf } = doors
  const { own, other } = legs
  const away = hand === 'left' ? 'right' : 'left'
  const face = hungFace(legs, doors)
  const leadingFace = pulledFace(legs, doors)
  const ways = waysOut(own.isInset, hand)
  const first = leafOf(doorOf(face, [1, 2], ways.hung.by, own, report), hand, ways.hung.after, report)
  const second = leafOf(doorOf(leadingFace, [2, 2], ways.leading.by, other, report), away, ways.leading.after, report)
  const weightOf = (leaf: readonly Board[]) => leafWeight({ boards: leaf }, densityOf)
  // Both leaves hang on the hinges of the first.
  const carried = hung([...boards, ...first], [face], own, () => weightOf([...first, ...second]))
  const cupped = withCups(second, [leadingFace], other, () => weightOf(second))
  const folded = withFoldPlates(carried, cupped, legs, doors)
  const done = pulled(cupped, [leadingFace], { method: other.method, of, report })
  const plane = otherWall(legs, doors)
  return { boards: [...folded, ...done.map((board) => stoodIn(board, plane))], fronts: [face] }
}

function leafOf(pieces: readonly Piece[], corner: Side, then: LegOfWay | null, report: Report): Board[] {
  const sound = pieces.filter((piece) => canBeCut(piece, report))
  return joined(sound.length > 1 ? frontsApart(sound, corner) : sound).map((board) => {
    const { explode } = board
    return then ? { ...board, explode: { ...explode, after: withWay(then, explode.after) } } : board
  })
}

function withWay(then: LegOfWay, apart: LegOfWay | undefined): LegOfWay {
  return apart ? { ...then, by: plus(then.by, apart.by) } : then
}

interface WayOut {
  readonly by: LegOfWay
  readonly after: LegOfWay | null
}

/**
 * How both leaves leave the corner, each in its own flat frame. Laid over the fronts they go forward and away from the corner
 * together. Inset ones stand in what is round them: the leaf that is pulled comes out of that first, then the one that is
 * hung, while the other makes way for it, and at last both are where the others would be.
 */
function waysOut(isInset: boolean, hand: Side): { readonly hung: WayOut; readonly leading: WayOut } {
  const way = WAYS.front
  const x = hand === 'left' ? way : -way
  const leg = (across: Mm, z: Mm, from: number, to: number): LegOfWay => ({ by: { x: across, y: 0, z }, from, to })
  if (!isInset) {
    return {
      hung: { by: leg(x, way, 0, OUT), after: null },
      leading: { by: leg(-x, way, 0, OUT), after: null },
    }
  }
  const [first, free] = [0.17, 0.2]
  return {
    hung: { by: leg(0, CLEAR, first, free), after: leg(x, way - CLEAR, free, OUT) },
    leading: { by: leg(0, way, 0, first), after: leg(-x, 0, first, OUT) },
  }
}

/** When all that is before a carcass has come forward. */
const OUT = 0.35
/** So far out no inset leaf is in its frame any more. */
const CLEAR: Mm = 50

/** Seen from the room at the own wall, in the cabinet's frame: from the rear of the other leaf to the free end. */
function hungFace({ own, other }: Legs, { hand, width }: Doors): FrontFace {
  const area = frontArea(own)
  const from = frontsRear(other)
  const long = settle(rightOf(area) - from)
  const left = hand === 'left' ? from : settle(width - from - long)
  return { kind: 'door', hinge: hand === 'left' ? 'right' : 'left', rect: { ...area, left, width: long } }
}

/** Seen from the room at the other wall, in the frame of its leg: from its free end to the gap before the face of the first. */
function pulledFace({ own, other }: Legs, { hand }: Doors): FrontFace {
  const area = frontArea(other)
  const from = settle(frontsRear(own) + own.frontThickness + own.method.fronts.gap)
  const long = settle(other.width - area.left - from)
  // Its corner is at the other end than at the own wall, and there it hangs on the first.
  const [hinge, left] = hand === 'left' ? (['right', area.left] as const) : (['left', from] as const)
  return { kind: 'door', hinge, rect: { ...area, left, width: long } }
}

/** The plates of the hinges between both leaves, beside the cups of the leaf that is pulled. */
function withFoldPlates(
  boards: readonly Board[],
  leading: readonly Board[],
  { own }: Legs,
  { hand, report }: Doors,
): readonly Board[] {
  const { hinge } = own.method
  const from = hinge.foldFromEdge ?? USUAL_FOLD
  const cups = leading.flatMap(({ operations }) =>
    operations.flatMap((one) => (one.kind === 'holeRow' && one.purpose === 'hingeCup' ? [one] : [])),
  )
  return boards.map((board) => {
    if (!isAtFold(board, hand)) return board
    const y = settle(hand === 'left' ? from : board.width - from)
    const plates = cups.map((cup): HoleRow => {
      const bore = { diameter: hinge.plateDiameter, depth: boreDepth(hinge.plateDepth, board) }
      const x = settle(cup.x - hinge.plateSpread / 2)
      return {
        kind: 'holeRow',
        purpose: 'hingePlate',
        face: 'inside',
        x,
        y,
        step: hinge.plateSpread,
        count: 2,
        ...bore,
      }
    })
    const sound = plates.filter((row) => fitsOn(board, row))
    if (sound.length < plates.length) {
      report.mind('the plates between its leaves find no place on the leaf that is hung; nothing is bored for them.')
    }
    return withHoles(board, sound)
  })
}

/** The board of the hung leaf that lies along the corner: the leaf itself, or its stile there. */
function isAtFold({ role, number }: Board, corner: 'left' | 'right'): boolean {
  return (role === 'door' && number === 1) || (role === 'doorStile' && number === (corner === 'left' ? 1 : 2))
}
