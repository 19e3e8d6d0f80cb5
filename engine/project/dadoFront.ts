import type { Mm } from '../units/length'

/**
 * How dados, and the rabbets at the ends of boards, end at a front edge that is seen. What is behind a face frame runs out
 * whatever is chosen.
 */
export type DadoFront =
  /** Cut after banding and out through the band: their ends are seen. */
  | { readonly kind: 'through' }
  /** Cut before banding and out through the edge: the band goes over their ends. */
  | { readonly kind: 'covered' }
  /** Stopped behind the edge by so much, and what goes in is notched at its front corner by as much. */
  | { readonly kind: 'stopped'; readonly behind: Mm }

/** What goes with each where it is chosen for the first time. How far stopped ones stop is common practice, no source. */
export const USUAL_DADO_FRONTS = {
  through: { kind: 'through' },
  covered: { kind: 'covered' },
  stopped: { kind: 'stopped', behind: 10 },
} as const satisfies { readonly [Kind in DadoFront['kind']]: Extract<DadoFront, { readonly kind: Kind }> }
