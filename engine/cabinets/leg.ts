import type { Vec3 } from '../geometry/vector'
import type { LegRules } from '../project/fixing'
import { type Mm, settle } from '../units/length'
import type { Board } from './board'
import { boxOf } from './boardBox'
import { type Carcass, kickRear } from './carcass'
import { holesBetween, withHoles } from './holes'
import type { HoleRow } from './operation'
import { placesAlong } from './spacing'

/** How far apart the legs of one row are: the first as far from the sides as is said, two at least. */
export function legsAcross(width: Mm, { fromEdge, spacing }: LegRules): Mm[] {
  return placesAlong({ from: 0, to: width }, { fromEdge, spacing })
}

/** Where a leg stands, from above, in the cabinet's frame. */
export interface Foot {
  readonly x: Mm
  readonly z: Mm
}

/** The boards with what is bored in the underside of the bottom for the plates of legs. */
export function onLegs(boards: readonly Board[], carcass: Carcass): readonly Board[] {
  return withPlates(boards, carcass, (bottom) => feetUnder(bottom, carcass))
}

/** The same for feet that stand elsewhere than in two rows. */
export function withPlates(
  boards: readonly Board[],
  { method: { floor, legs }, floorHeight }: Carcass,
  feetOf: (bottom: Board) => readonly Foot[],
): readonly Board[] {
  if (floor.kind !== 'legs' || !(floorHeight > 0 && legs.plateSpread > 0)) return boards
  return boards.map((board) => {
    if (board.role !== 'bottom') return board
    const { y } = boxOf(board).min
    const plates = feetOf(board).flatMap(({ x, z }) => plateAt({ x, y, z }, board, legs))
    return withHoles(board, plates)
  })
}

/** The front row stands behind the recess of the kick, the rear row before the rear edge of the bottom. */
function feetUnder(bottom: Board, carcass: Carcass): Foot[] {
  const { legs } = carcass.method
  const rows = [settle(boxOf(bottom).min.z + legs.fromEdge), settle(kickRear(carcass) - legs.fromEdge)]
  return legsAcross(carcass.width, legs).flatMap((x) => rows.map((z) => ({ x, z })))
}

/** Four screws in a square. */
function plateAt({ x, y, z }: Vec3, bottom: Board, { plateSpread, screwDiameter, screwDepth }: LegRules): HoleRow[] {
  const half = plateSpread / 2
  const bore = { purpose: 'legPlate', diameter: screwDiameter, depth: screwDepth } as const
  return [-half, half].flatMap((by) => {
    const at = (across: Mm): Vec3 => ({ x: settle(x + across), y, z: settle(z + by) })
    return holesBetween(bottom, 'outside', at(-half), at(half), bore)
  })
}
