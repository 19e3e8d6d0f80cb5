import { type Box, boxOver } from '../geometry/box'
import type { CabinetKind, Side } from '../project/document'
import { type Mm, settle } from '../units/length'
import { forward, WAYS } from './apart'
import type { Board, FrontFace } from './board'
import { boxOf } from './boardBox'
import type { Carcass } from './carcass'
import type { Legs } from './cornerLegs'
import { frontLine } from './cornerLevels'
import { type FacePlane, OWN_WALL, stoodIn, undone } from './facePlane'
import { doorOf } from './fronts'
import { hungOn, withCups, withPlates } from './hingeBoring'
import { withHoles } from './holes'
import { joined } from './joinery'
import { leafWeight, leavesOf } from './leaf'
import { frontsApart } from './membersApart'
import { frontArea } from './openings'
import { pulled } from './pull'
import type { Report } from './report'
import { canBeCut } from './sound'

/** What the doors of a corner are hung by, besides their legs. */
export interface Doors {
  /** The end of its wall that is the corner. */
  readonly hand: Side
  /** Of the whole cabinet, along its own wall. */
  readonly width: Mm
  readonly of: CabinetKind
  readonly report: Report
  readonly densityOf: (board: Board) => number
}

/** The other wall: flat, its leg is seen from the room, with the corner at the other end than at the own wall. */
export function otherWall({ other }: Legs, { hand, width }: Pick<Doors, 'hand' | 'width'>): FacePlane {
  return hand === 'left'
    ? { x: 0, z: other.width, turn: { cos: 0, sin: 1 } }
    : { x: width, z: 0, turn: { cos: 0, sin: -1 } }
}

/**
 * The plane from the front edge of one side to that of the other, or of the rear of a face frame: flat, it begins at the
 * left end of the front as seen from the room.
 */
export function slantPlane({ own, ends }: Legs, { hand, width }: Pick<Doors, 'hand' | 'width'>): FacePlane {
  const { cos, sin } = slantTurn(ends)
  const thickness = own.frame?.thickness ?? 0
  const behind = ({ x, z }: Legs['ends']['own']) => ({ x: settle(x - thickness * sin), z: settle(z - thickness * cos) })
  if (hand === 'left') return { ...behind(ends.other), turn: { cos, sin } }
  const { x, z } = behind(ends.own)
  return { x: settle(width - x), z, turn: { cos, sin: -sin } }
}

function slantTurn({ own, other }: Legs['ends']) {
  const [along, out] = [own.x - other.x, other.z - own.z]
  const long = Math.hypot(along, out)
  return { cos: along / long, sin: out / long, long: settle(long) }
}

/** The carcass behind the slanting front, as if that were all of its front; its frame ends with it. */
export function slantCarcass({ own, ends }: Legs): Carcass {
  const frame = own.frame && { ...own.frame, rules: { ...own.frame.rules, pastLeft: 0, pastRight: 0 } }
  return { ...own, width: slantTurn(ends).long, depth: 0, frame }
}

/** The one door of a diagonal, on its line from side to side. */
export function withSlantDoor(boards: readonly Board[], legs: Legs, hinge: Side, doors: Doors) {
  const { of, report, densityOf } = doors
  const carcass = slantCarcass(legs)
  const face = slantFace(legs, hinge, doors, carcass)
  const pieces = doorOf(face, [1, 1], forward(WAYS.front), carcass, report).filter((piece) => canBeCut(piece, report))
  const leaf = joined(pieces.length > 1 ? frontsApart(pieces) : pieces)
  const kg = leafWeight({ boards: leaf }, densityOf)
  const hung = hungAslant(boards, leaf, face, kg, legs, doors)
  const plane = slantPlane(legs, doors)
  const done = pulled(hung.leaf, [face], { method: carcass.method, of, report }).map((board) => stoodIn(board, plane))
  return { boards: [...hung.boards, ...done], fronts: done.length > 0 ? [asSeen(done, face)] : [] }
}

/**
 * In a face frame it closes its opening. Without one it ends where its outer corners are as far inside the ends of both legs
 * as its reveal, so that it is clear of the fronts beside it. An inset one stands with its face on the line, and these
 * corners are as far inside both sides: behind its face the sides lean away from it.
 */
function slantFace(legs: Legs, hinge: Side, { hand }: Doors, carcass: Carcass): FrontFace {
  if (carcass.frame) return { kind: 'door', hinge, rect: frontArea(carcass) }
  const area = frontArea(legs.own)
  const { along, out, long } = frontLine(legs, 0)
  const beyond = carcass.isInset ? 0 : carcass.frontThickness
  const atOther = slantReveal(area.left, beyond, along, out, long)
  const atOwn = slantReveal(area.left, beyond, out, along, long)
  const [left, right] = hand === 'left' ? [atOther, atOwn] : [atOwn, atOther]
  return { kind: 'door', hinge, rect: { ...area, left, width: settle(long - right - left) } }
}

/** Along the line, from the front edge of a side: what is before the line leans out over the end, and the reveal is square to it. */
function slantReveal(reveal: Mm, thickness: Mm, along: Mm, out: Mm, long: Mm): Mm {
  return settle((thickness * along + reveal * long) / out)
}

/**
 * Cups in the door, and the plates of its hinges on the side that it hangs on, on the line where those of a straight door
 * are: hinges for slanting doors have plates for it. From memory, no source; the drawing of the hinge comes first.
 */
function hungAslant(
  boards: readonly Board[],
  leaf: readonly Board[],
  { hinge, rect, kind }: FrontFace,
  kg: number,
  legs: Legs,
  doors: Doors,
): { readonly boards: readonly Board[]; readonly leaf: readonly Board[] } {
  const [own] = leavesOf(leaf, [{ hinge, rect, kind }])
  if (!own || (hinge !== 'left' && hinge !== 'right')) return { boards, leaf }
  const isOnOwn = hinge !== doors.hand
  const carrier = boards.find(({ role }) => role === `${hinge}Side`)
  // On a frame nothing is bored in the carcass.
  if (!carrier || legs.own.frame) return { boards, leaf: withCups(leaf, [{ hinge, rect, kind }], legs.own, () => kg) }
  // Each side as it stands along its own wall.
  const wall = isOnOwn ? OWN_WALL : undone(otherWall(legs, doors))
  const along = boards.map((board) => stoodIn(board, wall))
  const hanging = { leaf: own.hung, rect, hinge, carrier: along[boards.indexOf(carrier)]!, overlay: 0 } as const
  const { cups, plates } = hungOn({ ...hanging, face: 'inside' }, along, isOnOwn ? legs.own : legs.other, kg)
  return {
    boards: boards.map((board) => (board === carrier ? withPlates(board, plates, legs.own) : board)),
    leaf: leaf.map((board) => (board === own.hung ? withHoles(board, cups) : board)),
  }
}

/** A door of a diagonal as it is seen from the room at the own wall: as wide as it looks. */
function asSeen(boards: readonly Board[], { hinge, kind, rect }: FrontFace): FrontFace {
  const { min, max } = boards.map(boxOf).reduce((all, one): Box => boxOver(all, one))
  return { kind, hinge, rect: { ...rect, left: min.x, width: settle(max.x - min.x) } }
}
