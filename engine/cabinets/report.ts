import type { CabinetId } from '../basics/id'
import type { Problem } from '../basics/problem'
import { formatWithUnit } from '../units/format'
import type { LengthDisplay, Mm } from '../units/length'

/** Collects what is wrong with one cabinet while it is being built. */
export interface Report {
  readonly problems: Problem[]
  /** It cannot be built like this. */
  readonly stop: (text: string) => void
  /** It can be built, but the maker should mind it. */
  readonly mind: (text: string) => void
  /** A length as a message says it. */
  readonly say: (length: Mm) => string
}

const TENTHS: LengthDisplay = { unit: 'mm', step: 0.1 }

/** Of a sum that is done again: what is wrong with it was told the first time. */
export const SILENT: Report = { problems: [], stop: () => {}, mind: () => {}, say: () => '' }

export function reportOn(cabinet: CabinetId, mark: string, display: LengthDisplay = TENTHS): Report {
  const problems: Problem[] = []
  const add = (weight: Problem['weight']) => (text: string) => {
    problems.push({ weight, about: { kind: 'cabinet', cabinet }, message: `${mark}: ${text}` })
  }
  const shown = display.unit === 'mm' ? TENTHS : display
  const say = (length: Mm) => (Number.isFinite(length) ? formatWithUnit(length, shown) : 'not a number')
  return { problems, stop: add('stop'), mind: add('mind'), say }
}
