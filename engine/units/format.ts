import { inch, type LengthDisplay, type Mm, settle } from './length'

/**
 * A length as it is shown: `756.6` or `30 1/4`, fractions reduced, without its unit. Showing rounds to the display's
 * step; the length itself stays what it is.
 */
export function formatLength(length: Mm, display: LengthDisplay): string {
  return display.unit === 'mm' ? formatMm(length, display.step) : formatInches(length, display.step)
}

/** Where nobody says in which unit. */
export const PLAIN_MM: LengthDisplay = { unit: 'mm', step: 0.1 }

/** In mm to a tenth whatever the unit: bits and hardware are sold by it. */
export function plainMm(length: Mm): string {
  return formatMm(length, 0.1)
}

/** Under a quarter of an inch a 32nd is a large part of it. */
const SMALL: Mm = inch(1 / 4)

/** What small measures are shown in, which need finer steps than a tape has: tenths of a millimetre, or 1/64 of an inch; others 1/32. */
export function fineFor(length: Mm, { unit }: LengthDisplay): LengthDisplay {
  return unit === 'mm' ? { unit, step: 0.1 } : { unit, step: Math.abs(length) < SMALL ? 64 : 32 }
}

/** The depth of a joint or a hole with its unit: `6.4 mm`, `13/64 in`. */
export function formatFine(length: Mm, display: LengthDisplay): string {
  return formatWithUnit(length, fineFor(length, display))
}

/**
 * A measure of a bit or of hardware, whose size is not ours to round: `1 1/4` where it is that, or else in mm with its unit,
 * as it is sold, `32 mm`; `about 1 17/64` where it is no round number of either. What is shown in mm is rounded as ever.
 */
export function formatMeasure(length: Mm, display: LengthDisplay): string {
  const shown = formatLength(length, display)
  if (display.unit === 'mm' || isShownTrue(length, display)) return shown
  const tenths = plainMm(length)
  return Math.abs(Number(tenths) - length) < TRUE ? `${tenths} mm` : `about ${shown}`
}

/**
 * The size by which a piece of hardware is asked for, with its unit. In inches it is `3/16 in` where it is that, and else what
 * it is sold as, with the inches beside it: `4 mm (about 5/32 in)`.
 */
export function formatSold(length: Mm, display: LengthDisplay): string {
  const fine = fineFor(length, display)
  if (fine.unit === 'mm' || isShownTrue(length, fine)) return formatWithUnit(length, fine)
  return `${plainMm(length)} mm (about ${formatWithUnit(length, fine)})`
}

/** Closer than any tool goes. */
const TRUE: Mm = 0.005

function isShownTrue(length: Mm, { step }: LengthDisplay): boolean {
  const parts = (length * 10 * step) / 254
  return Math.abs(parts - Math.round(parts)) * (254 / 10 / step) < TRUE
}

/** With its unit: `756.6 mm`, `30 1/4 in`. */
export function formatWithUnit(length: Mm, display: LengthDisplay): string {
  return `${formatLength(length, display)} ${unitName(display)}`
}

/** The unit of the display as it stands in headers and behind numbers: `mm` or `in`. */
export function unitName(display: LengthDisplay): 'mm' | 'in' {
  return display.unit
}

/** A length as its display rounds it, for sums that are read beside it. */
export function asShown(length: Mm, { unit, step }: LengthDisplay): Mm {
  return unit === 'mm' ? settle(Math.round(length / step) * step) : inch(Math.round((length * 10 * step) / 254) / step)
}

function formatMm(length: Mm, step: 1 | 0.5 | 0.1): string {
  const perMm = Math.round(1 / step)
  const shown = Math.round(length * perMm) / perMm
  return String(shown === 0 ? 0 : Number(shown.toFixed(1)))
}

function formatInches(length: Mm, parts: 16 | 32 | 64): string {
  const count = Math.round((length * 10 * parts) / 254)
  const sign = count < 0 ? '-' : ''
  const whole = Math.floor(Math.abs(count) / parts)
  const rest = Math.abs(count) % parts
  if (rest === 0) return `${sign}${whole}`
  const common = greatestCommonDivisor(rest, parts)
  const fraction = `${rest / common}/${parts / common}`
  return whole === 0 ? `${sign}${fraction}` : `${sign}${whole} ${fraction}`
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b)
}
