import { asShown, formatWithUnit, unitName } from './format'
import { inch, type LengthDisplay, type Mm, settle } from './length'

const MOST_DECIMALS = 6

/**
 * Two lengths with their unit, as the display shows them; where they would look the same and are not, both as much finer
 * as it takes, in the same unit: `24 in` beside `24.002 in`.
 */
export function formatApart(a: Mm, b: Mm, display: LengthDisplay): readonly [string, string] {
  const ways = [display, finest(display)].map((one) => (length: Mm) => formatWithUnit(length, one))
  for (let decimals = 2; decimals <= MOST_DECIMALS; decimals++) {
    ways.push((length) => `${Number(inUnit(length, display).toFixed(decimals))} ${unitName(display)}`)
  }
  const shown = ways.map((say) => [say(a), say(b)] as const)
  return shown.find(([one, other]) => one !== other) ?? shown[0]!
}

/**
 * What lies between two lengths that are shown beside it, with its unit, never below 0: the difference of what is shown, so
 * that it comes out for who takes the one from the other. Where both look the same and are not, it is less than a step:
 * `under 1/32 in`.
 */
export function formatBetween(a: Mm, b: Mm, display: LengthDisplay): string {
  const between = settle(Math.abs(asShown(a, display) - asShown(b, display)))
  if (between > 0 || a === b) return formatWithUnit(between, display)
  return `under ${formatWithUnit(display.unit === 'mm' ? display.step : inch(1 / display.step), display)}`
}

function finest({ unit }: LengthDisplay): LengthDisplay {
  return unit === 'mm' ? { unit, step: 0.1 } : { unit, step: 64 }
}

function inUnit(length: Mm, { unit }: LengthDisplay): number {
  return unit === 'mm' ? length : length / inch(1)
}
