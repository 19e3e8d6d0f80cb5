import { z } from 'zod'
import { settle } from '../units/length'
import { isInRange, MEASURE, RANGES, type Range, type RangedField } from './ranges'

// Without compiling checks at run time, which a page with a strict content policy would not allow.
z.config({ jitless: true })

/** A number of the file in its range; lengths settle, and -0 is 0. */
function within(range: Range) {
  const { least, most, unit, isWhole } = range
  const limit = `it must be ${isWhole ? 'a whole number ' : ''}between ${least} and ${most}${unit ? ` ${unit}` : ''}`
  return z
    .number({ error: limit })
    .refine((value) => isInRange(value, range), { error: limit })
    .transform((value) => (unit ? settle(value) : value + 0))
}

/** A number of the file in the range of its name. */
export const field = (name: RangedField) => within(RANGES[name])
/** A length inside a rule. */
export const measure = within(MEASURE)
