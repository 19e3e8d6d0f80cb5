import type { Limits, Mm } from '../../engine/index'

/** One thing that a build method settles, as words to choose from and the measures that go with them. */
export interface ChoiceOf<Value> {
  readonly label: string
  readonly ways: readonly (readonly [string, string])[]
  readonly wayOf: (value: Value) => string
  readonly make: (way: string, before: Value) => Value
  readonly measures?: (value: Value) => readonly Measure<Value>[]
}

export interface Measure<Value> {
  readonly label: string
  readonly value: Mm
  readonly put: (length: Mm) => Value
  /** Where it may be more than small measures are: what it can be, and what it is called then. */
  readonly limits?: Limits
  /** Where it is a plain number and no length: its limits. */
  readonly number?: { readonly least: number; readonly most: number }
}
