import { unreachable } from '../basics/assert'
import type { Rules } from '../cabinets/build'
import { type HoleRow, isInEdge } from '../cabinets/operation'
import type { Part } from '../parts/part'
import { type Fixing, pocketsOf } from '../project/fixing'
import { formatSold, PLAIN_MM, plainMm } from '../units/format'
import type { LengthDisplay, Mm } from '../units/length'
import type { HardwareRow } from './row'

/** Screws, dowels, loose tenons or biscuits, one for each hole in an end, and a screw for each pocket. Named by the size that they are sold by. */
export function fixingsFor(parts: readonly Part[], { method, display = PLAIN_MM }: Rules): HardwareRow[] {
  const { fixing } = method
  const pockets = pocketsOf(method)
  const rows = parts.flatMap(({ operations }) => operations.filter((one) => one.kind === 'holeRow'))
  const pocketScrews: HardwareRow = {
    name: `pocket screw of ${formatSold(pockets.screwDiameter, display)}`,
    quantity: countOf(rows.filter(({ purpose }) => purpose === 'pocketScrew')),
    length: pockets.screwLength,
  }
  if (fixing.kind === 'none' || fixing.kind === 'pocketScrews') return [pocketScrews]
  return [
    { name: nameOf(fixing, display), quantity: countOf(rows.filter(isInEdge)), length: fixing.length },
    pocketScrews,
  ]
}

/** A screw for each hole in the front of a drawer box. */
export function frontScrewsFor(
  parts: readonly Part[],
  { method: { frontScrews }, display = PLAIN_MM }: Rules,
): HardwareRow[] {
  if (frontScrews?.kind !== 'screws') return []
  const rows = parts.flatMap(({ operations }) => operations.filter((one) => one.kind === 'holeRow'))
  const quantity = countOf(rows.filter(({ purpose }) => purpose === 'frontScrew'))
  return [{ name: `screw of ${formatSold(frontScrews.diameter, display)}`, quantity, length: frontScrews.length }]
}

/** `8 × 22 mm`, and in inches each by itself. */
function sizeOf(thickness: Mm, across: Mm, display: LengthDisplay): string {
  if (display.unit === 'mm') return `${plainMm(thickness)} × ${plainMm(across)} mm`
  return `${formatSold(thickness, display)} × ${formatSold(across, display)}`
}

function countOf(rows: readonly HoleRow[]): number {
  return rows.reduce((sum, { count }) => sum + count, 0)
}

function nameOf(fixing: Exclude<Fixing, { kind: 'none' | 'pocketScrews' }>, display: LengthDisplay): string {
  switch (fixing.kind) {
    case 'screws':
      return `screw of ${formatSold(fixing.diameter, display)}`
    case 'dowels':
      return `dowel of ${formatSold(fixing.diameter, display)}`
    case 'looseTenons':
      return `loose tenon of ${sizeOf(fixing.diameter, fixing.across, display)}`
    case 'biscuits':
      return `biscuit #${fixing.size}`
    default:
      return unreachable(fixing)
  }
}
