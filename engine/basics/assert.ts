/** A promise of our own was broken: this is a bug in Casewright, never in the user's design. */
export function assert(holds: unknown, promise: string): asserts holds {
  if (!holds) throw new Error(`Bug in Casewright: ${promise}`)
}

/** Ends a switch over a union, so that a forgotten kind does not compile. */
export function unreachable(kind: never): never {
  throw new Error(`Bug in Casewright: nobody thought of ${JSON.stringify(kind)}`)
}
