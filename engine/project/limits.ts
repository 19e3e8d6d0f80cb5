import { bad, good, type Result } from '../basics/result'
import { formatWithUnit } from '../units/format'
import type { LengthDisplay, Mm } from '../units/length'

/** What a length may be, in mm. Wide enough for any shop, narrow enough to catch a slip of the finger. */
export const LIMITS = {
  width: { least: 50, most: 6000 },
  height: { least: 50, most: 4000 },
  depth: { least: 50, most: 2000 },
  left: { least: 0, most: 60_000 },
  bottom: { least: 0, most: 4000 },
  wallLength: { least: 100, most: 60_000 },
  wallHeight: { least: 500, most: 10_000 },
  thickness: { least: 1, most: 100 },
  sheetLength: { least: 100, most: 6000 },
  sheetWidth: { least: 100, most: 6000 },
  kerf: { least: 0, most: 20 },
  trim: { least: 0, most: 200 },
  frontSize: { least: 20, most: 4000 },
  small: { least: 0, most: 1000 },
} as const satisfies Record<string, { least: Mm; most: Mm }>

export type LimitedField = keyof typeof LIMITS

const SPOKEN: Readonly<Record<LimitedField, string>> = {
  width: 'The width',
  height: 'The height',
  depth: 'The depth',
  left: 'The distance from the left',
  bottom: 'The height above the floor',
  wallLength: 'The length of the wall',
  wallHeight: 'The height of the wall',
  thickness: 'The thickness',
  sheetLength: 'The length of the sheet',
  sheetWidth: 'The width of the sheet',
  kerf: 'The kerf',
  trim: 'The trim',
  frontSize: 'The size of the front',
  small: 'The size',
}

/** The length itself if the field can take it; otherwise a message with the field, the value and the limit. */
export function checkLength(field: LimitedField | Limits, value: Mm, display: LengthDisplay): Result<Mm> {
  const { spoken, least, most } = typeof field === 'string' ? { spoken: SPOKEN[field], ...LIMITS[field] } : field
  if (!Number.isFinite(value)) return bad(`${spoken} is not a number.`)
  const shown = shownBeside(value, [least, most], display)
  if (value < least) return bad(`${spoken} is ${shown}; it must be at least ${formatWithUnit(least, display)}.`)
  if (value > most) return bad(`${spoken} is ${shown}; it can be at most ${formatWithUnit(most, display)}.`)
  return good(value)
}

/** The limits of a length that no project holds, in mm, and what it is called at the beginning of a sentence. */
export interface Limits {
  readonly spoken: string
  readonly least: Mm
  readonly most: Mm
}

/** A value that rounds to the very limit it breaks is shown to the hundredth, or the message would contradict itself. */
function shownBeside(value: Mm, limits: readonly Mm[], display: LengthDisplay): string {
  const shown = formatWithUnit(value, display)
  const isMisleading = limits.some((limit) => limit !== value && formatWithUnit(limit, display) === shown)
  return isMisleading ? `${Number(value.toFixed(2))} mm` : shown
}
