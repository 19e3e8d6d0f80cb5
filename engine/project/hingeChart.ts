import { inch, type Mm, settle } from '../units/length'
import { KG_PER_POUND } from '../units/weight'
import type { HingeChart, HingeRow, HingeRules } from './hingeRules'

/** No door hangs on fewer, and the chart begins with them. */
const FEWEST = 2

/** How many rows a chart may have: for 2 and 3 hinges at least, for 9 at most. Common practice, no source. */
export const CHART_ROWS = { least: 2, most: 8 } as const

/** Nobody hangs a higher or a heavier door, in mm and in kg. Common practice, no source. */
const HIGHEST: Mm = 4000
export const HEAVIEST_DOOR = 500

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

/** A chart with one more row, as far above the last as that is above the one before it; null where there is no room for it. */
export function withRowAdded(chart: HingeChart): HingeChart | null {
  const [before, last] = chart.slice(-2)
  if (!before || !last || chart.length >= CHART_ROWS.most) return null
  const row = {
    height: Math.min(HIGHEST, settle(2 * last.height - before.height)),
    weight: Math.min(HEAVIEST_DOOR, 2 * last.weight - before.weight),
  }
  return row.height > last.height && row.weight > last.weight ? [...chart, row] : null
}

/** A chart without its last row; null where it has no more than it must. */
export function withRowRemoved(chart: HingeChart): HingeChart | null {
  return chart.length > CHART_ROWS.least ? chart.slice(0, -1) : null
}
