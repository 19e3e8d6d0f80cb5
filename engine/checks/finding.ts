import type { Problem } from '../basics/problem'
import { once } from '../basics/remember'
import type { FrontFace } from '../cabinets/board'
import type { Rules } from '../cabinets/build'
import type { Part } from '../parts/part'
import type { Cabinet, House, Shop } from '../project/document'
import type { Edit } from '../project/edit'
import type { LengthDisplay, Mm } from '../units/length'

/** A problem of which a way out may be known. */
export interface Finding extends Problem {
  readonly remedy?: Remedy | undefined
}

/** A way out that was tried on the design before it is offered. */
export interface Remedy {
  /** What it does, and the name of the undo step: `Fix the shelves of B3`. */
  readonly label: string
  readonly edit: Edit
}

/** All that the checks of one cabinet look at, wherever it stands along its wall. */
export interface Checked {
  readonly cabinet: Cabinet
  readonly mark: string
  readonly parts: readonly Part[]
  readonly fronts: readonly FrontFace[]
  /** With the cabinet's own choices in its method. */
  readonly rules: Rules
  readonly display: LengthDisplay
  readonly house: House
  readonly shop: Shop
  /** Whether a countertop or a seat board goes over it. */
  readonly isUnderTop: boolean
  /** From the floor to the ceiling; null where it has no wall. */
  readonly wallHeight: Mm | null
}

/**
 * A finding whose way out is tried when somebody asks for it, and its words are made then too: while the design changes
 * under the hand nobody does.
 */
export function withRemedy(finding: Finding, tried: () => Remedy | null): Finding {
  const { weight, about, measure, limit, source } = finding
  const remedy = once(tried)
  return {
    ...{ weight, about },
    get message() {
      return finding.message
    },
    ...(measure && { measure }),
    ...(limit && { limit }),
    ...(source && { source }),
    get remedy() {
      return remedy() ?? undefined
    },
  }
}

/** What no finding about fixing leaves out. */
export const FIXING_DEFERS = 'Local codes and the makers of the fixings come first.'

export { GEOMETRY, PRACTICE } from '../basics/source'

/** The findings about a cabinet begin with its mark, as those of its build do. Words that take work are made when asked for. */
export function about(
  { cabinet, mark }: Pick<Checked, 'cabinet' | 'mark'>,
  { message, ...rest }: Omit<Finding, 'about' | 'message'> & { readonly message: string | (() => string) },
): Finding {
  const words = typeof message === 'string' ? () => message : once(message)
  return {
    ...rest,
    about: { kind: 'cabinet', cabinet: cabinet.id },
    get message() {
      return `${mark}: ${words()}`
    },
  }
}
