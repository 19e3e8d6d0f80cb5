import type { Rules } from '../cabinets/build'
import { type HoleRow, isInEdge } from '../cabinets/operation'
import type { Part } from '../parts/part'
import type { Fixing } from '../project/fixing'
import { plainMm } from '../units/format'
import type { HardwareRow } from './row'

/** Screws, dowels or loose tenons, one for each hole in an end. Named by their size in mm, as they are sold. */
export function fixingsFor(parts: readonly Part[], { method: { fixing } }: Rules): HardwareRow[] {
  if (fixing.kind === 'none') return []
  const quantity = parts
    .flatMap(({ operations }) => operations.filter((one): one is HoleRow => one.kind === 'holeRow' && isInEdge(one)))
    .reduce((sum, { count }) => sum + count, 0)
  return [{ name: nameOf(fixing), quantity, length: fixing.length }]
}

function nameOf(fixing: Exclude<Fixing, { kind: 'none' }>): string {
  if (fixing.kind === 'screws') return `screw of ${plainMm(fixing.diameter)} mm`
  return fixing.kind === 'dowels'
    ? `dowel of ${plainMm(fixing.diameter)} mm`
    : `loose tenon of ${plainMm(fixing.diameter)} × ${plainMm(fixing.across)} mm`
}
