import type { Interval } from '../geometry/interval'
import { type Mm, settle } from '../units/length'
import type { Board, BoardRole } from './board'
import { boxOf } from './boardBox'
import { dimensionOf } from './frame'
import type { EdgeFace, Face } from './operation'

type Dimension = 'x' | 'y' | 'z'

/**
 * The end of one board at the face of another, in the cabinet's frame; of a board that goes through a corner also its edge.
 *
 *      |carrier|
 *      |       |____________
 *      |     #############  |   # what fixes them, on a line through the middle of the mate
 *      |       |________mate|
 *            -> into the carrier is the other way
 */
export interface Meeting {
  readonly carrier: Board
  /** Of the carrier: the one that the mate is at. */
  readonly face: Face
  readonly mate: Board
  readonly end: EdgeFace
  /** Which way the mate goes into the carrier, and whether the carrier is at its high end. */
  readonly through: Dimension
  readonly isHigh: boolean
  /** How long the mate is that way. */
  readonly reach: Mm
  /** Where the mate's end is along that way. */
  readonly level: Mm
  /** How far it is let into the face. */
  readonly sunk: Mm
  /** Across the mate's thickness, and its middle. */
  readonly across: Dimension
  readonly middle: Mm
  /** The line of fixings, and the stretch of it where both boards are. */
  readonly line: Dimension
  readonly stretch: Interval
}

/** Which ends are fixed to which boards. */
const FIXED: Partial<Readonly<Record<BoardRole, readonly BoardRole[]>>> = {
  bottom: ['leftSide', 'rightSide'],
  top: ['leftSide', 'rightSide'],
  frontStretcher: ['leftSide', 'rightSide'],
  backStretcher: ['leftSide', 'rightSide'],
  topNailer: ['leftSide', 'rightSide'],
  bottomNailer: ['leftSide', 'rightSide'],
  middleNailer: ['leftSide', 'rightSide'],
  leftSide: ['bottom', 'top'],
  rightSide: ['bottom', 'top'],
}

const ENDS: readonly EdgeFace[] = ['start', 'end', 'low', 'high']

/** Every end of a board of a carcass that stands at the face of another. */
export function meetingsOf(boards: readonly Board[]): Meeting[] {
  return boards.flatMap((mate) => {
    const roles = FIXED[mate.role]
    if (!roles) return []
    const carriers = boards.filter(({ role }) => roles.includes(role))
    return carriers.flatMap((carrier) =>
      ENDS.flatMap((end) => {
        const meeting = meetingAt(mate, end, carrier)
        return meeting ? [meeting] : []
      }),
    )
  })
}

function meetingAt(mate: Board, end: EdgeFace, carrier: Board): Meeting | null {
  const { length, width, thickness } = mate.placement
  const isAcross = end === 'low' || end === 'high'
  const { dimension: through, sign } = dimensionOf(isAcross ? width : length)
  const looks = dimensionOf(carrier.placement.thickness)
  if (looks.dimension !== through) return null
  const [own, other] = [boxOf(mate), boxOf(carrier)]
  const isHigh = (end === 'end' || end === 'high') === sign > 0
  const level = isHigh ? own.max[through] : own.min[through]
  const sunk = settle(isHigh ? level - other.min[through] : other.max[through] - level)
  if (sunk < 0 || sunk >= carrier.thickness) return null
  const line = dimensionOf(isAcross ? length : width).dimension
  const across = dimensionOf(thickness).dimension
  const stretch = {
    from: Math.max(own.min[line], other.min[line]),
    to: Math.min(own.max[line], other.max[line]),
  }
  const middle = settle((own.min[across] + own.max[across]) / 2)
  if (stretch.from >= stretch.to || middle <= other.min[across] || middle >= other.max[across]) return null
  // The mate lies on the low side of a carrier that is at its high end.
  const face = isHigh === looks.sign < 0 ? 'inside' : 'outside'
  const reach = isAcross ? mate.width : mate.length
  return { carrier, face, mate, end, through, isHigh, reach, level, sunk, across, middle, line, stretch }
}
