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

/** The boards with what is bored in the underside of the bottom for the plates of legs. */
export function onLegs(boards: readonly Board[], carcass: Carcass): readonly Board[] {
  const { floor, legs } = carcass.method
  if (floor.kind !== 'legs' || !(carcass.floorHeight > 0 && legs.plateSpread > 0)) return boards
  return boards.map((board) => (board.role === 'bottom' ? withHoles(board, platesUnder(board, carcass)) : board))
}

/** The front row stands behind the recess of the kick, the rear row before the rear edge of the bottom. */
function platesUnder(bottom: Board, carcass: Carcass): HoleRow[] {
  const { legs } = carcass.method
  const { min } = boxOf(bottom)
  const rows = [settle(min.z + legs.fromEdge), settle(kickRear(carcass) - legs.fromEdge)]
  return legsAcross(carcass.width, legs).flatMap((x) => rows.flatMap((z) => plateAt({ x, y: min.y, z }, bottom, legs)))
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
