import type { Mm } from '../units/length'
import { CHART_ROWS, HEAVIEST_DOOR, notRising } from './hingeChart'
import type { HingeRow } from './hingeRules'
import { LIMITS } from './limits'

/** From the least to the most that a number of the document may be; lengths are in mm. */
export interface Range {
  readonly least: number
  readonly most: number
  readonly unit?: 'mm'
  readonly isWhole?: true
}

const SIZE: Range = { least: 1, most: 20_000, unit: 'mm' }
const PLACE: Range = { least: -100_000, most: 100_000, unit: 'mm' }
const COUNT: Range = { least: 0, most: 20, isWhole: true }
const MINUTES: Range = { least: 0, most: 600 }

/** A measure inside a rule: the depth of a groove, the width of a stretcher, the height of a front. */
export const MEASURE: Range = { least: 0, most: 20_000, unit: 'mm' }

/** A wider gap is filled by a cabinet. */
export const MOST_BESIDE: Mm = 600

/**
 * What the document may hold, by the name of the field. Wider than what an entry field takes: a limit there may be drawn
 * tighter one day, and old files must still be read. What is not named here is a measure.
 */
export const RANGES = {
  width: SIZE,
  height: SIZE,
  depth: SIZE,
  thickness: SIZE,
  nominal: SIZE,
  length: { least: 1, most: 100_000, unit: 'mm' },
  left: PLACE,
  filler: { least: 0, most: MOST_BESIDE, unit: 'mm' },
  scribe: { least: 0, most: 100, unit: 'mm' },
  bottom: PLACE,
  /** Of a cut-out in a countertop. */
  aside: { least: -6000, most: 6000, unit: 'mm' },
  forward: { least: -1000, most: 1000, unit: 'mm' },
  grid: { least: 1, most: 1000, unit: 'mm' },
  pitch: { least: 1, most: 1000, unit: 'mm' },
  /** No blade is thicker, and the packer takes no more. */
  kerf: { ...LIMITS.kerf, unit: 'mm' },
  lengthStep: { least: 1, most: 1000, unit: 'mm' },
  order: { least: 0, most: 100_000, isWhole: true },
  number: { least: 1, most: 99_999, isWhole: true },
  /** Of a sheet, among those of its material. */
  sheet: { least: 1, most: 10_000, isWhole: true },
  fixedShelves: COUNT,
  adjustableShelves: COUNT,
  count: COUNT,
  dividers: COUNT,
  divisions: { least: 2, most: 12, isWhole: true },
  at: { least: 0.01, most: 0.99 },
  share: { least: 0.001, most: 1000 },
  density: { least: 1, most: 25_000 },
  stiffness: { least: 1, most: 250_000 },
  stiffnessAcross: { least: 1, most: 250_000 },
  price: { least: 0, most: 1_000_000 },
  quantity: { least: 0, most: 100_000, isWhole: true },
  copies: { least: 1, most: 10_000, isWhole: true },
  /** Of a door, in kg. */
  weight: { least: 0.1, most: HEAVIEST_DOOR },
  loadClass: { least: 1, most: 1000 },
  onePersonLift: { least: 0, most: 500 },
  teeth: { least: 1, most: 500, isWhole: true },
  across: { least: 0, most: 0.02 },
  moisture: { least: 0, most: 30 },
  /** Of a pocket hole, in degrees. */
  angle: { least: 5, most: 45 },
  perSetting: MINUTES,
  perCut: MINUTES,
  perSheet: MINUTES,
} as const satisfies Record<string, Range>

export type RangedField = keyof typeof RANGES

/** Inside a rule these are measures like any other; of a thing by itself they are sizes. */
const SIZES = new Set(['width', 'height', 'depth', 'length'])

export function isInRange(value: number, { least, most, isWhole }: Range): boolean {
  return value >= least && value <= most && (!isWhole || Number.isInteger(value))
}

/**
 * Whether a file could keep a value in a field, or a thing with all its fields: every number finite and in the range of
 * its name.
 */
export function isSavable(value: unknown, field?: string): boolean {
  if (typeof value === 'number') return isInRange(value, rangeOf(field, false))
  return areNumbersSavable(value, field !== undefined)
}

function areNumbersSavable(value: unknown, isInside: boolean): boolean {
  if (typeof value !== 'object' || value === null) return true
  return Object.entries(value).every(([field, inner]) => {
    if (typeof inner === 'number') return isInRange(inner, rangeOf(field, isInside))
    return areNumbersSavable(inner, true) && (field !== 'chart' || isRising(inner))
  })
}

/** A chart of hinges, which what reads a file would refuse otherwise; null where a cabinet does without. */
function isRising(chart: unknown): boolean {
  if (!Array.isArray(chart)) return true
  return isInRange(chart.length, CHART_ROWS) && notRising(chart as HingeRow[]) === null
}

function rangeOf(field: string | undefined, isInside: boolean): Range {
  if (field === undefined || !Object.hasOwn(RANGES, field) || (isInside && SIZES.has(field))) return MEASURE
  return RANGES[field as RangedField]
}
