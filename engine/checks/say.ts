import { formatApart, formatBetween } from '../units/apart'
import { fineFor, formatFine } from '../units/format'
import type { LengthDisplay, Mm } from '../units/length'
import { formatWeight, NEWTON_PER_KG } from '../units/weight'
import { PSF } from './load'

/** Lengths, weights and loads as findings say them, in the units of the project. */
export interface Say {
  readonly length: (length: Mm) => string
  /** Two lengths that are told apart: finer where they would look the same, in one unit. */
  readonly apart: (a: Mm, b: Mm) => readonly [string, string]
  /** What lies between two lengths that are said beside it: the difference of what is read. */
  readonly between: (a: Mm, b: Mm) => string
  /** From kg. */
  readonly weight: (kg: number) => string
  /** From newtons per square millimetre. */
  readonly load: (pressure: number) => string
}

const MM2_PER_M2 = 1e6

/** Small measures need finer steps than a tape has: tenths of a millimetre, or 1/64 of an inch; others 1/32. */
export function sayIn(display: LengthDisplay): Say {
  const isMetric = display.unit === 'mm'
  return {
    length: (length) => formatFine(length, display),
    apart: (a, b) => formatApart(a, b, fineFor(Math.min(Math.abs(a), Math.abs(b)), display)),
    between: (a, b) => formatBetween(a, b, fineFor(Math.min(Math.abs(a), Math.abs(b)), display)),
    weight: (kg) => formatWeight(kg, display),
    load: (pressure) =>
      isMetric
        ? `${Math.round((pressure * MM2_PER_M2) / NEWTON_PER_KG)} kg per m²`
        : `${Math.round(pressure / PSF)} lb per sq ft`,
  }
}
