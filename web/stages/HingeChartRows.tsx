import {
  type BuildMethod,
  chartOf,
  formatWithUnit,
  HEAVIEST_DOOR,
  type HingeChart,
  type HingeRow,
  hingesOfRow,
  type LengthDisplay,
  type Mm,
  weightUnit,
  withRowAdded,
  withRowRemoved,
} from '../../engine/index'
import { Button } from '../ui/Button'
import fields from '../ui/Fields.module.css'
import { LengthField } from '../ui/LengthField'
import { NumberField } from '../ui/NumberField'
import type { Own } from '../ui/Reset'
import { common } from './shaping'

interface HingeChartRowsProps {
  readonly methods: readonly BuildMethod[]
  readonly display: LengthDisplay
  /** The chart is one choice, so that all its rows are a cabinet's own or none. */
  readonly own: Own
  /** Told what becomes of each chart: several that differ go on to differ in all but what was touched. */
  readonly onCharts: (change: (chart: HingeChart) => HingeChart) => void
}

/** In kg. */
const LIGHTEST = 0.1
/** Of a tenth, so that a pound in kg and back is a pound again. */
const ROUNDING = 1e-6

/** How many hinges a door has: how high it may be for each number, and what it must weigh less than. */
export function HingeChartRows({ methods, display, own, onCharts }: HingeChartRowsProps) {
  if (methods.length === 0) return null
  const charts = methods.map(({ hinge }) => chartOf(hinge))
  const most = Math.max(...charts.map(({ length }) => length))
  const unit = weightUnit(display)
  const put = (at: number, change: Partial<HingeRow>) =>
    onCharts((chart) => chart.map((row, other) => (other === at ? { ...row, ...change } : row)))
  return (
    <>
      {Array.from({ length: most }, (_, at) => {
        const hinges = hingesOfRow(at)
        const [before, after] = [rowsAt(charts, at - 1, at), rowsAt(charts, at + 1, at)]
        const heaviestBefore = Math.max(...before.map(({ weight }) => weight))
        const lightestAfter = Math.min(...after.map(({ weight }) => weight))
        return [
          <LengthField
            key={`${hinges} high`}
            label={`${hinges} hinges up to a height of`}
            value={common(charts, (chart) => chart[at]?.height ?? null)}
            display={display}
            isMeasure
            field="height"
            onLength={(height) => {
              const beside = [
                before.length > 0 ? Math.max(...before.map((row) => row.height)) : undefined,
                after.length > 0 ? Math.min(...after.map((row) => row.height)) : undefined,
              ] as const
              const why = outOfLine(height, beside, hinges, display)
              if (why === null) put(at, { height })
              return why
            }}
            {...own}
          />,
          <NumberField
            key={`${hinges} heavy`}
            label={`${hinges} hinges below a weight of, ${unit.name}`}
            value={common(charts, (chart) => chart[at]?.weight ?? null)}
            per={unit.kg}
            least={before.length > 0 ? tenthBeside(heaviestBefore, 1, unit.kg) : LIGHTEST}
            most={after.length > 0 ? tenthBeside(lightestAfter, -1, unit.kg) : HEAVIEST_DOOR}
            onNumber={(weight) => put(at, { weight })}
            {...own}
          />,
        ]
      })}
      <RowButtons charts={charts} onCharts={onCharts} />
    </>
  )
}

/** The rows at a place of the charts that have a row at another: those that it must not pass there. */
function rowsAt(charts: readonly HingeChart[], at: number, of: number): HingeRow[] {
  return charts.filter((chart) => chart[of] !== undefined).flatMap((chart) => chart[at] ?? [])
}

/** A chart grows and shrinks at its end, since its rows are for so many hinges, one more and so on. */
function RowButtons({
  charts,
  onCharts,
}: { readonly charts: readonly HingeChart[] } & Pick<HingeChartRowsProps, 'onCharts'>) {
  const longest = charts.reduce((a, b) => (b.length > a.length ? b : a))
  const next = hingesOfRow(longest.length)
  const isOne = charts.every(({ length }) => length === longest.length)
  return (
    <span className={fields.together}>
      <Button
        disabled={charts.every((chart) => withRowAdded(chart) === null)}
        onClick={() => onCharts((chart) => withRowAdded(chart) ?? chart)}
      >
        {isOne ? `Add a row for ${next} hinges` : 'Add a row to each'}
      </Button>
      <Button
        disabled={charts.every((chart) => withRowRemoved(chart) === null)}
        onClick={() => onCharts((chart) => withRowRemoved(chart) ?? chart)}
      >
        {isOne ? `Remove the row for ${next - 1}` : 'Remove the last row of each'}
      </Button>
    </span>
  )
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
