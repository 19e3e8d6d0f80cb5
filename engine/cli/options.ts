import { bad, good, type Result } from '../basics/result'

/** What a batch of jobs is asked with. */
export interface BatchOptions {
  readonly jobs: string
  readonly out: string
  readonly seconds: number
  readonly stages?: 2 | 3 | null
  readonly first?: 'rip' | 'crosscut' | 'any'
  readonly turn: boolean
}

const STAGES: Readonly<Record<string, 2 | 3 | null>> = { 2: 2, 3: 3, any: null }
const FIRST = { rip: 'rip', crosscut: 'crosscut', any: 'any' } as const
const WITH_VALUE = ['--batch', '--out', '--seconds', '--stages', '--first']
/** A day; more was not meant. */
const MOST_SECONDS = 86_400

/** The options of a batch, or the first that is none, with its value and what it may be. */
export function batchOptions(args: readonly string[]): Result<BatchOptions> {
  const given = givenIn(args)
  if (!given.ok) return given
  const { value: options } = given
  const jobs = options.get('--batch')
  if (!jobs) return bad('--batch is missing; it must name a file with one job a line')
  const out = options.get('--out')
  if (!out) return bad('--out is missing; it must name the file for the answers')
  const text = options.get('--seconds')
  const seconds = text?.trim() ? Number(text) : Number.NaN
  if (!(seconds > 0 && seconds <= MOST_SECONDS))
    return bad(`--seconds is ${text ?? 'missing'}; it must be a number above 0, at most ${MOST_SECONDS}`)
  const stages = options.get('--stages')
  if (stages !== undefined && !Object.hasOwn(STAGES, stages))
    return bad(`--stages is ${stages}; it must be 2, 3 or any`)
  const first = options.get('--first')
  if (first !== undefined && !isFirst(first)) return bad(`--first is ${first}; it must be rip, crosscut or any`)
  const turn = options.has('--turn')
  return good({ jobs, out, seconds, stages: stages === undefined ? undefined : STAGES[stages], first, turn })
}

function givenIn(args: readonly string[]): Result<ReadonlyMap<string, string>> {
  const given = new Map<string, string>()
  for (let at = 0; at < args.length; at++) {
    const name = args[at]!
    const value = args[at + 1]
    if (given.has(name)) return bad(`${name} is given twice`)
    if (name === '--turn') given.set(name, 'yes')
    else if (!WITH_VALUE.includes(name))
      return bad(`${name} is no option; there are ${WITH_VALUE.join(', ')} and --turn`)
    else if (value === undefined || value.startsWith('--')) return bad(`${name} has no value`)
    else {
      given.set(name, value)
      at++
    }
  }
  return good(given)
}

function isFirst(text: string): text is keyof typeof FIRST {
  return Object.hasOwn(FIRST, text)
}
