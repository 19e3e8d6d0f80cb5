import type { CabinetId } from '../basics/id'
import type { Problem } from '../basics/problem'
import { formatWithUnit } from '../units/format'
import type { Mm } from '../units/length'

/** Collects what is wrong with one cabinet while it is being built. */
export interface Report {
  readonly problems: Problem[]
  /** It cannot be built like this. */
  readonly stop: (text: string) => void
  /** It can be built, but the maker should mind it. */
  readonly mind: (text: string) => void
}

export function reportOn(cabinet: CabinetId, mark: string): Report {
  const problems: Problem[] = []
  const add = (weight: Problem['weight']) => (text: string) => {
    problems.push({ weight, about: { kind: 'cabinet', cabinet }, message: `${mark}: ${text}` })
  }
  return { problems, stop: add('stop'), mind: add('mind') }
}

/** A length as a message says it. */
export function spoken(length: Mm): string {
  return Number.isFinite(length) ? formatWithUnit(length, { unit: 'mm', step: 0.1 }) : 'not a number'
}
