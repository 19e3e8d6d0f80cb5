import { z } from 'zod'
import { CHART_ROWS, hingesOfRow, notRising } from './hingeChart'
import { field, measure } from './savedNumber'

const CHART_FORM = `it must be a list of ${CHART_ROWS.least} to ${CHART_ROWS.most} rows: for 2 hinges, for 3 and so on`
const row = z.strictObject({ height: measure, weight: field('weight') })

/** A chart of hinges; one that does not rise is refused by the first measure that does not. */
export const savedChart = z
  .array(row, { error: CHART_FORM })
  .min(CHART_ROWS.least, CHART_FORM)
  .max(CHART_ROWS.most, CHART_FORM)
  .check(({ value, issues }) => {
    const fault = notRising(value)
    if (!fault) return
    const { row: at, field: name, limit } = fault
    const message = `it must be above ${limit} ${name === 'height' ? 'mm' : 'kg'}, the ${name} for ${hingesOfRow(at - 1)} hinges`
    issues.push({ code: 'custom', input: value, path: [at, name], message })
  })

/** What a build method bores for hardware, as a file has it. */
export const savedMachining = {
  hinge: z.strictObject({
    cupDiameter: measure,
    cupDepth: measure,
    cupFromEdge: measure,
    screwSpread: measure,
    screwBehind: measure,
    screwDiameter: measure,
    screwDepth: measure,
    firstFromEnd: measure,
    plateFromFront: measure,
    plateSpread: measure,
    plateDiameter: measure,
    plateDepth: measure,
    plateLength: measure,
    plateHeight: measure,
    fixedDistance: measure,
    halfCrank: measure,
    fullCrank: measure,
    sideAdjustment: measure,
    foldFromEdge: measure.optional(),
    chart: savedChart.optional(),
  }),
  slides: z.strictObject({
    lineUp: measure,
    firstFromFront: measure,
    pitch: field('pitch'),
    holeDiameter: measure,
    holeDepth: measure,
    setback: measure,
    loadClass: field('loadClass'),
    extension: z.literal('standard').optional(),
  }),
}
