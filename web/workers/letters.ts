import type { Freedom, Project, SheetAnswer, SheetJob, Thrift, ThriftProgress } from '../../engine/index'

/** What the page writes to the packer. A job with a higher number takes the place of every job before it. */
export interface JobLetter {
  readonly number: number
  readonly job: SheetJob
}

/** What the packer writes back: answers get better until one is settled. */
export type AnswerLetter =
  | { readonly kind: 'answer'; readonly number: number; readonly answer: SheetAnswer; readonly isSettled: boolean }
  /** Still at work, so many rounds of it: sent so that a packer that hangs can be told from one that thinks. */
  | { readonly kind: 'atWork'; readonly number: number; readonly rounds: number }

/**
 * A letter as text, which is read in half the time that an object of many small objects takes to be copied. Every sheet
 * has a line of its own. Placements stay out of it: the tree of cuts tells them.
 */
export function written(letter: AnswerLetter): string {
  if (letter.kind !== 'answer') return JSON.stringify(letter)
  const { sheets, ...rest } = letter.answer
  const lines = sheets.map(({ stock, copies, root }) => JSON.stringify({ stock, copies, root }))
  return [JSON.stringify({ ...letter, answer: rest }), ...lines].join('\n')
}

/** What the page asks of the search for savings. */
export interface ThriftQuestion {
  readonly project: Project
  readonly freedoms: readonly Freedom[]
}

export type ThriftLetter =
  | { readonly kind: 'atWork'; readonly progress: ThriftProgress }
  | { readonly kind: 'found'; readonly thrift: Thrift }
