import { remember } from '../basics/remember'
import type { Board } from '../cabinets/board'
import { centresOf, type HoleRow, isLongAlong, mouthLength, wayOf } from '../cabinets/operation'
import { type Axis, unit, type Vec3 } from '../geometry/vector'
import type { Mm } from '../units/length'

/** The mouth of a hole, in the board's frame. */
export interface Hole {
  /** The centre, on the face that it opens in. */
  readonly x: Mm
  readonly y: Mm
  readonly z: Mm
  /** Out of the wood. */
  readonly opens: Axis
  /** Which way a mortise, or the mouth of a pocket, is long: 1 in that direction. */
  readonly along: Vec3
  readonly diameter: Mm
  /** As long as it is wide, but for a mortise. */
  readonly length: Mm
}

/** Every mouth of every hole of a board; one that is bored right through has two. */
export const holesOf: (board: Board) => readonly Hole[] = remember((board: Board) => {
  return board.operations.flatMap((one) => (one.kind === 'holeRow' ? mouthsOf(one, board) : []))
})

const OPENS: Readonly<Record<HoleRow['face'], Axis>> = {
  inside: '+z',
  outside: '-z',
  start: '-x',
  end: '+x',
  low: '-y',
  high: '+y',
}

function mouthsOf(row: HoleRow, { thickness }: Board): Hole[] {
  const opens = OPENS[row.face]
  const along = row.slant ? { ...wayOf(row.slant), z: 0 } : unit(isLongAlong(row) ? '+x' : '+y')
  const z = row.up ?? (row.face === 'inside' ? thickness : 0)
  const near = {
    opens,
    along,
    diameter: row.countersink ?? row.diameter,
    length: row.countersink ?? mouthLength(row),
  }
  const far = {
    opens: opens === '+z' ? '-z' : '+z',
    along,
    diameter: row.diameter,
    length: row.oval ?? row.diameter,
  } as const
  const isThrough = opens.endsWith('z') && !row.slant && row.depth >= thickness
  return centresOf(row).flatMap(({ x, y }): Hole[] => {
    const mouth: Hole = { x, y, z, ...near }
    return isThrough ? [mouth, { x, y, z: thickness - z, ...far }] : [mouth]
  })
}

/** The wood that the holes of a row take, in mm3. */
export function rowVolume({ count, depth, diameter, oval = diameter, countersink = diameter }: HoleRow): number {
  const [narrow, wide] = [diameter / 2, Math.max(diameter, countersink) / 2]
  const shaft = depth * (Math.PI * narrow ** 2 + diameter * (oval - diameter))
  // The frustum of a cone at 90 degrees is as high as its radius grows; the shaft in it is counted already.
  const high = wide - narrow
  const sunk = Math.PI * high * ((wide ** 2 + wide * narrow + narrow ** 2) / 3 - narrow ** 2)
  return count * (shaft + sunk)
}
