import { formatWithUnit, unitName } from './format'
import { inch, type LengthDisplay, type Mm } from './length'

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

function finest({ unit }: LengthDisplay): LengthDisplay {
  return unit === 'mm' ? { unit, step: 0.1 } : { unit, step: 64 }
}

function inUnit(length: Mm, { unit }: LengthDisplay): number {
  return unit === 'mm' ? length : length / inch(1)
}
