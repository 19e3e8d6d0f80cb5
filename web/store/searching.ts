import { create } from 'zustand'

/** The search for a better layout at rest: how far it is, and what the maker can do about it. */
export interface Searching {
  /** Rounds of looking done so far; each is about as much work as any other, however long it takes. */
  readonly rounds: number
  /** The best layout so far stays, and nothing better is looked for until the next change. */
  readonly stop: () => void
  /** A search that was stopped is taken up again. */
  readonly goOn: () => void
}

/** Apart from the state of the page, so that a count does not wake all that follows that. */
export const searching = create<Searching>(() => ({ rounds: 0, stop: () => {}, goOn: () => {} }))
