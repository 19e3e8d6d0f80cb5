import type { CabinetId } from '../basics/id'
import type { Problem } from '../basics/problem'
import { GEOMETRY } from '../basics/source'
import { formatWithUnit, PLAIN_MM } from '../units/format'
import type { LengthDisplay, Mm } from '../units/length'

/** What a problem is held against: a length is said as messages say it. */
export interface Told {
  readonly is?: Mm | string
  readonly limit?: Mm | string
  /** Who says so; what follows from the boards alone where it is not said. */
  readonly source?: string
  readonly way?: Problem['way']
}

/** Collects what is wrong with one cabinet while it is being built. */
export interface Report {
  readonly problems: Problem[]
  /** It cannot be built like this. */
  readonly stop: (text: string, told?: Told) => void
  /** It can be built, but the maker should mind it. */
  readonly mind: (text: string, told?: Told) => void
  /** A length as a message says it. */
  readonly say: (length: Mm) => string
  /** What is left of a length, which is no less than nothing. */
  readonly left: (length: Mm) => string
  /** What is left where something must be. */
  readonly room: (length: Mm) => Told
}

/** Of a sum that is done again: what is wrong with it was told the first time. */
export const SILENT: Report = {
  problems: [],
  stop: () => {},
  mind: () => {},
  say: () => '',
  left: () => '',
  room: () => ({}),
}

export function reportOn(cabinet: CabinetId, mark: string, display: LengthDisplay = PLAIN_MM): Report {
  const problems: Problem[] = []
  const shown = display.unit === 'mm' ? PLAIN_MM : display
  const say = (length: Mm) => (Number.isFinite(length) ? formatWithUnit(length, shown) : 'not a number')
  const words = (of: Mm | string) => (typeof of === 'string' ? of : say(of))
  const add =
    (weight: Problem['weight']) =>
    (text: string, { is, limit, source = GEOMETRY, way }: Told = {}) => {
      const message = `${mark}: ${text}`
      // Both doors of a pair are told once.
      if (problems.some((one) => one.weight === weight && one.message === message)) return
      problems.push({
        ...{ weight, about: { kind: 'cabinet', cabinet }, message, source },
        ...(is === undefined ? {} : { measure: words(is) }),
        ...(limit === undefined ? {} : { limit: words(limit) }),
        ...(way && { way }),
      })
    }
  const left = (length: Mm) => say(Number.isFinite(length) ? Math.max(0, length) : length)
  const room = (length: Mm): Told => ({ is: left(length), limit: `over ${say(0)}` })
  return { problems, stop: add('stop'), mind: add('mind'), say, left, room }
}
