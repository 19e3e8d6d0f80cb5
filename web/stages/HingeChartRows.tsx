import {
  type BuildMethod,
  chartOf,
  formatWithUnit,
  type HingeChart,
  type HingeRow,
  hingesOfRow,
  type LengthDisplay,
  type Mm,
  weightUnit,
} from '../../engine/index'
import { LengthField } from '../ui/LengthField'
import { NumberField } from '../ui/NumberField'
import type { Own } from '../ui/Reset'
import { common } from './shaping'

interface HingeChartRowsProps {
  readonly methods: readonly BuildMethod[]
  readonly display: LengthDisplay
  /** The chart is one choice, so that all its rows are a cabinet's own or none. */
  readonly own: Own
  readonly onChart: (chart: HingeChart) => void
}

/** In kg. */
const LIGHTEST = 0.1
const HEAVIEST = 500
/** Of a tenth, so that a pound in kg and back is a pound again. */
const ROUNDING = 1e-6

/** How many hinges a door has: how high it may be for each number, and what it must weigh less than. */
export function HingeChartRows({ methods, display, own, onChart }: HingeChartRowsProps) {
  const [first] = methods
  if (!first) return null
  const chart = chartOf(first.hinge)
  const unit = weightUnit(display)
  const put = (at: number, change: Partial<HingeRow>) =>
    onChart(chart.map((row, other) => (other === at ? { ...row, ...change } : row)) as unknown as HingeChart)
  return chart.map((_, at) => {
    const hinges = hingesOfRow(at)
    const [before, after] = [chart[at - 1], chart[at + 1]]
    return [
      <LengthField
        key={`${hinges} high`}
        label={`${hinges} hinges up to a height of`}
        value={common(methods, ({ hinge }) => chartOf(hinge)[at]!.height)}
        display={display}
        isMeasure
        field="height"
        onLength={(height) => {
          const why = outOfLine(height, [before?.height, after?.height], hinges, display)
          if (why === null) put(at, { height })
          return why
        }}
        {...own}
      />,
      <NumberField
        key={`${hinges} heavy`}
        label={`${hinges} hinges below a weight of, ${unit.name}`}
        value={common(methods, ({ hinge }) => chartOf(hinge)[at]!.weight)}
        per={unit.kg}
        least={before ? tenthBeside(before.weight, 1, unit.kg) : LIGHTEST}
        most={after ? tenthBeside(after.weight, -1, unit.kg) : HEAVIEST}
        onNumber={(weight) => put(at, { weight })}
        {...own}
      />,
    ]
  })
}

/** The next tenth of a unit above a weight, or below it, in kg as it is: weights are shown and typed in tenths. */
function tenthBeside(weight: number, way: 1 | -1, unit: number): number {
  const tenths = (weight / unit) * 10
  const next = way === 1 ? Math.floor(tenths + ROUNDING) + 1 : Math.ceil(tenths - ROUNDING) - 1
  return (next / 10) * unit
}

/** Why a height cannot be that of its row: it is not between those of the rows beside it. */
function outOfLine(
  height: Mm,
  [before, after]: readonly [Mm | undefined, Mm | undefined],
  hinges: number,
  display: LengthDisplay,
): string | null {
  const is = `The height for ${hinges} hinges is ${formatWithUnit(height, display)}`
  if (before !== undefined && height <= before) {
    return `${is}; it must be above ${formatWithUnit(before, display)}, which is for ${hinges - 1}.`
  }
  if (after !== undefined && height >= after) {
    return `${is}; it must be below ${formatWithUnit(after, display)}, which is for ${hinges + 1}.`
  }
  return null
}
