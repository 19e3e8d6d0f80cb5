import type { Random } from '../../engine/basics/random'

export function pick<Option>(options: readonly Option[], random: Random): Option {
  return options[Math.floor(random() * options.length)]!
}

/** One of what is listed, with the same dice each time. */
export const picker =
  (random: Random) =>
  <Value>(...values: readonly Value[]): Value =>
    pick(values, random)

export function whole(from: number, to: number, random: Random): number {
  return from + Math.floor(random() * (to - from + 1))
}

/** Not on the grid, so that lengths have something to settle. */
export function length(from: number, to: number, random: Random): number {
  return from + random() * (to - from)
}
