import type { CabinetId } from '../basics/id'
import { listed } from '../basics/listed'
import type { Edit } from '../project/edit'
import { stretchesOf } from '../project/mark'
import { type Finding, type Remedy, withRemedy } from './finding'

/** A cabinet that a finding is about, with the mark that it is called by. */
export interface Called {
  readonly id: CabinetId
  readonly mark: string
}

/** A finding, or what is found alike in several cabinets, told in one line. */
export interface AlikeFindings {
  readonly finding: Finding
  /** Those that are told together, in the order of their findings; none where it is told by itself. */
  readonly cabinets: readonly Called[]
}

interface One extends Called {
  readonly finding: Finding
}

interface Line {
  readonly finding: Finding
  readonly ones: One[]
}

/**
 * Findings that say the same of several cabinets become one line, in the place of the first of them. Its way out does for
 * all of them what was tried for each, as one undo step.
 */
export function alikeFindings(
  findings: readonly Finding[],
  markOf: (cabinet: CabinetId) => string | undefined,
): AlikeFindings[] {
  const lines: Line[] = []
  const lineOf = new Map<string, Line>()
  for (const finding of findings) {
    const one = oneOf(finding, markOf)
    const said = one && saidOf(one)
    const open = said === null ? undefined : lineOf.get(said)
    // What is said twice of one cabinet is about two things in it.
    if (one && open && !open.ones.some(({ id }) => id === one.id)) open.ones.push(one)
    else {
      const line: Line = { finding, ones: one ? [one] : [] }
      lines.push(line)
      if (said !== null && !open) lineOf.set(said, line)
    }
  }
  return lines.map(({ finding, ones }) =>
    ones.length < 2
      ? { finding, cabinets: [] }
      : { finding: together(ones), cabinets: ones.map(({ id, mark }) => ({ id, mark })) },
  )
}

/** A finding whose words begin with the mark of the cabinet that it is about; null of any other. */
function oneOf(finding: Finding, markOf: (cabinet: CabinetId) => string | undefined): One | null {
  if (finding.about.kind !== 'cabinet') return null
  const mark = markOf(finding.about.cabinet)
  if (mark === undefined || !finding.message.startsWith(`${mark}: `)) return null
  return { id: finding.about.cabinet, mark, finding }
}

/** All that a line of the list says, but for the mark. */
function saidOf({ mark, finding: { weight, message, measure, limit, source } }: One): string {
  return JSON.stringify([weight, message.slice(mark.length), measure, limit, source])
}

/** `U1 to U4`, `U1 and U3`. */
function marksOf(ones: readonly Called[]): string {
  return listed(stretchesOf(ones.map(({ mark }) => mark)))
}

function together(ones: readonly One[]): Finding {
  const { finding, mark } = ones[0]!
  const { weight, about, message, measure, limit, source } = finding
  const told: Finding = {
    ...{ weight, about, message: `${marksOf(ones)}, each${message.slice(mark.length)}` },
    ...(measure && { measure }),
    ...(limit && { limit }),
    ...(source && { source }),
  }
  return ones.some((one) => 'remedy' in one.finding) ? withRemedy(told, () => forAll(ones)) : told
}

/**
 * One step for all that have the same way out. What changes nothing but the cabinet itself was tried for each, so it holds
 * for all; what moves others is offered for the first alone, and for the next when that is done.
 */
function forAll(ones: readonly One[]): Remedy | null {
  const ways = ones.flatMap((one) => (one.finding.remedy ? [{ one, remedy: one.finding.remedy }] : []))
  const first = ways[0]
  if (!first) return null
  const alike = ways.filter(
    ({ one, remedy }) => isWithin(remedy.edit) && wordsOf(remedy, one) === wordsOf(first.remedy, first.one),
  )
  if (alike.length < 2) return first.remedy
  return {
    label: wordsOf(first.remedy, first.one).replace(HERE, marksOf(alike.map(({ one }) => one))),
    edit: { kind: 'several', edits: alike.map(({ remedy }) => remedy.edit) },
  }
}

/** Where the mark of the cabinet stands in the words of a way out. */
const HERE = '\u0000'

function wordsOf({ label }: Remedy, { mark }: Called): string {
  return label.replace(new RegExp(`\\b${mark}\\b`), HERE)
}

/** Whether an edit changes what is inside its own cabinet and no place or size of any. */
function isWithin({ kind }: Edit): boolean {
  return kind === 'override' || kind === 'setInterior' || kind === 'setFront'
}
