import type { Way } from './cutTree'

/** Kinds of parts in a section, on one another. */
export interface PatternSection {
  readonly along: number
  readonly kinds: readonly { readonly kind: number; readonly across: number; readonly turned: boolean }[]
}

export interface PatternStrip {
  readonly across: number
  readonly sections: readonly PatternSection[]
}

export interface PatternSheet {
  /** Which way it is cut first. */
  readonly way: Way
  readonly strips: readonly PatternStrip[]
  readonly worth: number
}
