import { type Random, randomFrom } from '../basics/random'
import type { Lot } from './lot'
import { lookFor } from './search'
import type { Look } from './spot'

/** Rests looked at between two looks up: some ten milliseconds' worth, less when there is little work. */
const CHUNK = 250_000
const LEAST_CHUNKS = 8

/** What every search of a lot works with. */
export interface Saw {
  readonly lot: Lot
  readonly look: Look
  readonly random: Random
  readonly chunk: number
}

export function sawFor(lot: Lot, seed: number, budget: number): Saw {
  const random = randomFrom(seed)
  return { lot, look: lookFor(lot, random), random, chunk: Math.min(CHUNK, budget / LEAST_CHUNKS) }
}
