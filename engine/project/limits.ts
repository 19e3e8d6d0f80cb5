import { bad, good, type Result } from '../basics/result'
import { formatApart } from '../units/apart'
import type { LengthDisplay, Mm } from '../units/length'

/** What a length may be, in mm. Wide enough for any shop, narrow enough to catch a slip of the finger. */
export const LIMITS = {
  width: { least: 50, most: 6000 },
  height: { least: 50, most: 4000 },
  depth: { least: 50, most: 2000 },
  left: { least: 0, most: 60_000 },
  gapLeft: { least: 0, most: 60_000 },
  gapRight: { least: 0, most: 60_000 },
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
  /** Nobody glues thicker bands on. Common practice, no source. */
  banding: { least: 0, most: 10 },
} as const satisfies Record<string, { least: Mm; most: Mm }>

export type LimitedField = keyof typeof LIMITS

const SPOKEN: Readonly<Record<LimitedField, string>> = {
  width: 'The width',
  height: 'The height',
  depth: 'The depth',
  left: 'The distance from the left',
  gapLeft: 'The gap at the left',
  gapRight: 'The gap at the right',
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
  banding: 'The banding',
}

/** The length itself if the field can take it; otherwise a message with the field, the value and the limit. */
export function checkLength(field: LimitedField | Limits, value: Mm, display: LengthDisplay): Result<Mm> {
  const { spoken, least, most } = typeof field === 'string' ? { spoken: SPOKEN[field], ...LIMITS[field] } : field
  if (!Number.isFinite(value)) return bad(`${spoken} is not a number.`)
  if (value >= least && value <= most) return good(value)
  const [is, limit] = formatApart(value, value < least ? least : most, display)
  return bad(`${spoken} is ${is}; it ${value < least ? 'must be at least' : 'can be at most'} ${limit}.`)
}

/** The limits of a length that no project holds, in mm, and what it is called at the beginning of a sentence. */
export interface Limits {
  readonly spoken: string
  readonly least: Mm
  readonly most: Mm
}
