import type { Interval } from '../geometry/interval'
import { type Mm, settle } from '../units/length'
import { type Carcass, clearBottom } from './carcass'
import type { Report } from './report'

/** The undersides of shelves that part a height into equal clear rooms, in mm in the frame of the height. */
export function evenLevels(count: number, { from, to }: Interval, thickness: Mm): Mm[] {
  const clear = (to - from - count * thickness) / (count + 1)
  return Array.from({ length: count }, (_, at) => settle(from + (at + 1) * clear + at * thickness))
}

/** What is said of the fixed shelves of a bay: how many, and where some of them are over the upper face of the bottom. */
interface Wanted {
  readonly fixed: number
  readonly fixedAt: readonly (Mm | null)[]
}

/**
 * The undersides of the fixed shelves of a height, from the bottom up, in the cabinet's frame. The typed ones are where
 * they are said to be; the others part evenly what is left between those, the floor and the ceiling. Where a typed one
 * would run into what is below or above it, all of them are spread evenly, and it is told.
 */
export function fixedLevels(
  { fixed, fixedAt }: Wanted,
  stretch: Interval,
  carcass: Carcass,
  report: Report,
): readonly Mm[] {
  const { thickness } = carcass
  const bottom = clearBottom(carcass)
  const even = evenLevels(fixed, stretch, thickness)
  const levels: Mm[] = []
  for (let at = 0; at < fixed; at++) {
    const typed = Array.from({ length: fixed - at }, (_, on) => fixedAt[at + on] ?? null)
    const free = typed.findIndex((height) => height !== null)
    const floor = at === 0 ? stretch.from : settle(levels[at - 1]! + thickness)
    const count = free < 0 ? typed.length : free
    const ceiling = free < 0 ? stretch.to : settle(bottom + typed[free]!)
    if (count > 0) {
      levels.push(...evenLevels(count, { from: floor, to: ceiling }, thickness))
      at += count
    }
    if (free < 0) break
    // Those that are still to come over it want their own thickness at least.
    const least = settle(floor + count * thickness)
    const most = settle(stretch.to - (fixed - at) * thickness)
    if (ceiling < least || ceiling > most) {
      tellOff(at + 1, settle(ceiling - bottom), settle(least - bottom), settle(most - bottom), report)
      return even
    }
    levels.push(ceiling)
  }
  return levels
}

function tellOff(number: number, height: Mm, least: Mm, most: Mm, report: Report): void {
  const limit = height < least ? least : most
  const word = height < least ? 'least' : 'most'
  report.stop(
    `fixed shelf ${number} would be ${report.say(height)} over the bottom; ${report.say(limit)} is the ${word}, so its fixed shelves are spread evenly.`,
    { is: height, limit },
  )
}
