import { inch } from '../units/length'
import { KG_PER_POUND } from '../units/weight'
import type { HingeChart, HingeRow, HingeRules } from './hingeRules'

/** No door hangs on fewer, and the chart begins with them. */
const FEWEST = 2

/** In inches and pounds, as it is printed. Source: a hinge maker's chart of hinges by door height and weight. */
export const USUAL_CHART: HingeChart = [
  { height: inch(40), weight: 15 * KG_PER_POUND },
  { height: inch(60), weight: 30 * KG_PER_POUND },
  { height: inch(80), weight: 45 * KG_PER_POUND },
  { height: inch(100), weight: 60 * KG_PER_POUND },
]

/** The chart that doors are hung by: a method's own, or the usual one. */
export function chartOf({ chart }: Pick<HingeRules, 'chart'>): HingeChart {
  return chart ?? USUAL_CHART
}

/** How many hinges a row of the chart is for, from 0. */
export function hingesOfRow(row: number): number {
  return FEWEST + row
}

/** The first measure of a chart that is not above the same one of the row before it; null where all rise. */
export function notRising(
  chart: readonly HingeRow[],
): { readonly row: number; readonly field: keyof HingeRow; readonly limit: number } | null {
  for (const [before, { height, weight }] of chart.entries()) {
    const next = chart[before + 1]
    if (next && next.height <= height) return { row: before + 1, field: 'height', limit: height }
    if (next && next.weight <= weight) return { row: before + 1, field: 'weight', limit: weight }
  }
  return null
}
