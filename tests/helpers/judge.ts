import fc from 'fast-check'
import { expect } from 'vitest'
import { once } from '../../engine/basics/remember'
import type { Board } from '../../engine/cabinets/board'
import type { CabinetBuild } from '../../engine/cabinets/build'
import { buildCabinet } from '../../engine/cabinets/buildCabinet'
import type { Mm } from '../../engine/units/length'
import { type Made, SEED } from './anyMade'

/** A cabinet that is built, with the width by which it is to be made wider. */
export interface Built extends Made {
  readonly build: CabinetBuild
  readonly boards: readonly Board[]
  readonly more: Mm
}

/** What a cabinet does that it should not; nothing where it keeps the law. */
export type Law = (built: Built) => readonly string[]

export interface Judged {
  /** How many of them there are, and how many of these can be built as they are drawn. */
  readonly all: number
  readonly sound: number
  /** The laws that one of them breaks. */
  readonly broken: ReadonlySet<Law>
}

/** Every cabinet is built once and judged by all laws, since building is what takes long; a law that is broken is not asked again. */
function judged(any: fc.Arbitrary<Made>, numRuns: number, laws: readonly Law[]): Judged {
  const broken = new Set<Law>()
  let [all, sound] = [0, 0]
  for (const [made, more] of fc.sample(withMore(any), { numRuns, seed: SEED })) {
    const built = builtOf(made, more)
    all++
    if (built.boards.length > 4 && built.build.problems.every(({ weight }) => weight !== 'stop')) sound++
    for (const law of laws) if (!broken.has(law) && isBrokenBy(built, law)) broken.add(law)
  }
  return { all, sound, broken }
}

const withMore = (any: fc.Arbitrary<Made>) => fc.tuple(any, fc.integer({ min: 1, max: 200 }))

function builtOf(made: Made, more: Mm): Built {
  const build = buildCabinet(made.cabinet, made.rules)
  return { ...made, build, boards: build.boards, more }
}

function isBrokenBy(built: Built, law: Law): boolean {
  try {
    return law(built).length > 0
  } catch {
    return true
  }
}

/** So many of them, judged when the first law is asked for. One that is broken is told by the plainest cabinet that breaks it. */
export function judge(any: fc.Arbitrary<Made>, numRuns: number, laws: readonly Law[]) {
  const all = once(() => judged(any, numRuns, laws))
  const isKept = (law: Law): void => {
    if (!all().broken.has(law)) return
    const property = fc.property(withMore(any), ([made, more]) => {
      expect(law(builtOf(made, more))).toEqual([])
    })
    fc.assert(property, { numRuns, seed: SEED })
    throw new Error('a law that was broken is kept when it is asked again')
  }
  return { all, isKept }
}
