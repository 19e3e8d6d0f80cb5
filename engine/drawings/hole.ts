import { type HolePurpose, type HoleRow, isInEdge, mouthLength } from '../cabinets/operation'
import { formatFine, plainMm } from '../units/format'
import type { LengthDisplay, Mm } from '../units/length'
import type { DrawingMark, Point } from './drawing'

/** A hole on the paper; `runsAcross` where its line runs from left to right. */
export function holeMark(at: Point, row: HoleRow, runsAcross: boolean): DrawingMark {
  const { diameter, oval, slant } = row
  if (oval === undefined && !slant) return { kind: 'circle', layer: 'hole', at, diameter }
  const long = mouthLength(row)
  const [width, height] = runsAcross ? [long, diameter] : [diameter, long]
  return { kind: 'rect', layer: 'hole', rect: { left: at.x - width / 2, bottom: at.y - height / 2, width, height } }
}

/** The mouth of a hole that is bored aslant and aside, long the way that it goes on the paper. */
export function asideMarks(at: Point, row: HoleRow, way: Point): DrawingMark[] {
  const [long, wide] = [mouthLength(row) / 2, row.diameter / 2]
  const corner = (along: number, across: number): Point => ({
    x: at.x + along * long * way.x - across * wide * way.y,
    y: at.y + along * long * way.y + across * wide * way.x,
  })
  const corners = [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)]
  return corners.map((from, one) => ({ kind: 'line', layer: 'hole', from, to: corners[(one + 1) % 4]! }))
}

const PURPOSES: Readonly<Record<HolePurpose, string>> = {
  shelfPin: 'shelf pins',
  hingeCup: 'hinge cups',
  hingeScrew: 'screws of hinges',
  hingePlate: 'hinge plates',
  slide: 'slides',
  screw: 'screws',
  pilot: 'the points of screws',
  dowel: 'dowels',
  looseTenon: 'loose tenons',
  biscuit: 'biscuits',
  pocketScrew: 'pocket screws',
  pull: 'pulls',
  pullBolt: 'the bolts of the pull',
  frontScrew: 'the screws of the front',
  frontPilot: 'the points of its screws',
  legPlate: 'the plates of legs',
  seamBolt: 'the bolts of seams',
}

/** Bits and rows of holes are bought by the millimetre whatever the unit; how deep they go is told in the unit of the project. */
export function holeWords(row: HoleRow, thickness: Mm, display: LengthDisplay): string {
  const { purpose, diameter, oval, countersink, depth, step, count, slant } = row
  if (slant) {
    return `hole of ${plainMm(diameter)} mm for ${PURPOSES[purpose]}, ${plainMm(slant.angle)}° to the face, ${formatFine(depth, display)} deep${slant.aside === undefined ? '' : ', square to the line of the corner that is cut off'}`
  }
  const what =
    oval === undefined
      ? `hole of ${plainMm(diameter)} mm`
      : `${purpose === 'biscuit' ? 'slot' : 'mortise'} of ${plainMm(diameter)} × ${plainMm(oval)} mm`
  const apart = purpose === 'shelfPin' && count > 1 ? `, ${plainMm(step)} mm apart` : ''
  const sunk = countersink ? `, sunk to ${plainMm(countersink)} mm` : ''
  const deep = !isInEdge(row) && depth >= thickness ? 'right through' : `${formatFine(depth, display)} deep`
  return `${what} for ${PURPOSES[purpose]}, ${deep}${sunk}${apart}`
}
