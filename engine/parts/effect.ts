import type { OwnerId, PartId } from '../basics/id'
import { isSame } from '../project/settled'
import type { Part } from './part'

/** A cabinet with its boards, as far as a comparison needs it. */
export interface Boards {
  readonly cabinet: { readonly id: OwnerId }
  readonly mark: string
  readonly parts: readonly Part[]
  readonly problems: readonly { readonly message: string }[]
}

/** What a change does to boards. Each board is counted once, by the first of these that is true of it. */
export interface Counts {
  /** Of another material than before. */
  readonly ofOtherBoard: number
  /** Cut longer, shorter, wider, narrower or thicker. */
  readonly resized: number
  /** As large as before, but lying elsewhere, or worked or banded otherwise. */
  readonly reworked: number
  readonly added: number
  readonly gone: number
}

export interface Effect extends Counts {
  /** Marks of the cabinets with any change, in shop order. */
  readonly marks: readonly string[]
  /** How much there is to mind that was not before. */
  readonly findings: number
}

/** What becomes of the boards of every cabinet between two designs. A cabinet that is in only one of them is all new or gone. */
export function effectOf(before: readonly Boards[], after: readonly Boards[]): Effect {
  const past = new Map(before.map((one) => [one.cabinet.id, one]))
  const present = new Set(after.map(({ cabinet }) => cabinet.id))
  const pairs = [
    ...after.map((one) => [past.get(one.cabinet.id), one] as const),
    ...before.filter(({ cabinet }) => !present.has(cabinet.id)).map((one) => [one, undefined] as const),
  ]
  const touched = pairs
    .map(([was, is]) => ({ mark: (is ?? was)!.mark, counts: countsBetween(was?.parts ?? [], is?.parts ?? []) }))
    .filter(({ counts }) => Object.values(counts).some((count) => count > 0))
  const findings = pairs.reduce((sum, [was, is]) => sum + newFindings(was, is), 0)
  const total = touched.reduce((sum, { counts }) => plus(sum, counts), NONE)
  return { ...total, marks: touched.map(({ mark }) => mark), findings }
}

const NONE: Counts = { ofOtherBoard: 0, resized: 0, reworked: 0, added: 0, gone: 0 }

function plus(a: Counts, b: Counts): Counts {
  return {
    ofOtherBoard: a.ofOtherBoard + b.ofOtherBoard,
    resized: a.resized + b.resized,
    reworked: a.reworked + b.reworked,
    added: a.added + b.added,
    gone: a.gone + b.gone,
  }
}

function countsBetween(before: readonly Part[], after: readonly Part[]): Counts {
  if (before === after) return NONE
  const past = new Map<PartId, Part>(before.map((part) => [part.id, part]))
  const stayed = after.flatMap((part) => {
    const was = past.get(part.id)
    return was ? [kindOfChange(was, part)] : []
  })
  const count = (kind: Change) => stayed.filter((one) => one === kind).length
  return {
    ofOtherBoard: count('ofOtherBoard'),
    resized: count('resized'),
    reworked: count('reworked'),
    added: after.length - stayed.length,
    gone: before.length - stayed.length,
  }
}

type Change = 'ofOtherBoard' | 'resized' | 'reworked' | 'none'

const SIZES = ['cutLength', 'cutWidth', 'length', 'width', 'thickness'] as const
const WORK = ['placement', 'operations', 'banding'] as const

function kindOfChange(before: Part, after: Part): Change {
  if (before.material !== after.material) return 'ofOtherBoard'
  if (SIZES.some((size) => before[size] !== after[size])) return 'resized'
  return WORK.some((work) => !isSame(before[work], after[work])) ? 'reworked' : 'none'
}

function newFindings(before: Boards | undefined, after: Boards | undefined): number {
  const known = new Set(before?.problems.map(({ message }) => message))
  return after?.problems.filter(({ message }) => !known.has(message)).length ?? 0
}

const MOST_MARKS = 6

/** `Changes B1, B2, T1: 34 parts of other sizes, 6 new, 2 gone.` Empty when no board changes. */
export function effectWords(effect: Effect): string {
  const { marks, ofOtherBoard, resized, reworked, added, gone, findings } = effect
  const counts = [
    [resized, 'of other sizes'],
    [ofOtherBoard, 'of another board'],
    [reworked, 'placed or worked otherwise'],
    [added, 'new'],
    [gone, 'gone'],
  ] as const
  const told = counts
    .filter(([count]) => count > 0)
    .map(([count, words], at) =>
      at === 0 ? `${count} ${count === 1 ? 'part' : 'parts'} ${words}` : `${count} ${words}`,
    )
  if (told.length === 0) return ''
  const who = marks.length > MOST_MARKS ? `${marks.length} cabinets` : marks.join(', ')
  const mind = findings === 0 ? '' : ` ${findings === 1 ? 'One new finding' : `${findings} new findings`}.`
  return `Changes ${who}: ${told.join(', ')}.${mind}`
}
