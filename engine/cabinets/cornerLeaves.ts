import { rightOf } from '../geometry/rect'
import { USUAL_FOLD } from '../project/machining'
import { settle } from '../units/length'
import type { Board, FrontFace } from './board'
import { frontsRear } from './carcass'
import { type Doors, otherWall, outOfCorner } from './cornerDoor'
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
import { pulled } from './pull'
import { fitsOn } from './removed'

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
  const first = leafOf(doorOf(face, 1, outOfCorner(hand), own, report), hand)
  const leadingFace = pulledFace(legs, doors)
  const second = leafOf(doorOf(leadingFace, 2, outOfCorner(away), other, report), away)
  const weightOf = (leaf: readonly Board[]) => leafWeight({ boards: leaf }, densityOf)
  // Both leaves hang on the hinges of the first.
  const carried = hung([...boards, ...first], [face], own, () => weightOf([...first, ...second]))
  const cupped = withCups(second, [leadingFace], other, () => weightOf(second))
  const folded = withFoldPlates(carried, cupped, legs, doors)
  const done = pulled(cupped, [leadingFace], { method: other.method, of, report })
  const plane = otherWall(legs, doors)
  return { boards: [...folded, ...done.map((board) => stoodIn(board, plane))], fronts: [face] }
}

function leafOf(pieces: Parameters<typeof frontsApart>[0], corner: 'left' | 'right'): Board[] {
  return joined(pieces.length > 1 ? frontsApart(pieces, corner) : pieces)
}

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
