import { unreachable } from '../basics/assert'
import type { Rules } from '../cabinets/build'
import { type HoleRow, isInEdge } from '../cabinets/operation'
import type { Part } from '../parts/part'
import { type Fixing, pocketsOf } from '../project/fixing'
import { plainMm } from '../units/format'
import type { HardwareRow } from './row'

/** Screws, dowels, loose tenons or biscuits, one for each hole in an end, and a screw for each pocket. Named by their size in mm, as they are sold. */
export function fixingsFor(parts: readonly Part[], { method }: Rules): HardwareRow[] {
  const { fixing } = method
  const pockets = pocketsOf(method)
  const rows = parts.flatMap(({ operations }) => operations.filter((one) => one.kind === 'holeRow'))
  const pocketScrews: HardwareRow = {
    name: `pocket screw of ${plainMm(pockets.screwDiameter)} mm`,
    quantity: countOf(rows.filter(({ purpose }) => purpose === 'pocketScrew')),
    length: pockets.screwLength,
  }
  if (fixing.kind === 'none' || fixing.kind === 'pocketScrews') return [pocketScrews]
  return [{ name: nameOf(fixing), quantity: countOf(rows.filter(isInEdge)), length: fixing.length }, pocketScrews]
}

/** A screw for each hole in the front of a drawer box. */
export function frontScrewsFor(parts: readonly Part[], { method: { frontScrews } }: Rules): HardwareRow[] {
  if (frontScrews?.kind !== 'screws') return []
  const rows = parts.flatMap(({ operations }) => operations.filter((one) => one.kind === 'holeRow'))
  const quantity = countOf(rows.filter(({ purpose }) => purpose === 'frontScrew'))
  return [{ name: `screw of ${plainMm(frontScrews.diameter)} mm`, quantity, length: frontScrews.length }]
}

function countOf(rows: readonly HoleRow[]): number {
  return rows.reduce((sum, { count }) => sum + count, 0)
}

function nameOf(fixing: Exclude<Fixing, { kind: 'none' | 'pocketScrews' }>): string {
  switch (fixing.kind) {
    case 'screws':
      return `screw of ${plainMm(fixing.diameter)} mm`
    case 'dowels':
      return `dowel of ${plainMm(fixing.diameter)} mm`
    case 'looseTenons':
      return `loose tenon of ${plainMm(fixing.diameter)} × ${plainMm(fixing.across)} mm`
    case 'biscuits':
      return `biscuit #${fixing.size}`
    default:
      return unreachable(fixing)
  }
}
