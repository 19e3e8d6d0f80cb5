import type { Derived, PartId } from '../../engine/index'
import type { Selection } from '../store/state'
import type { Built } from './built'

/** What is lit of a cabinet: nothing, all of it, or some of its parts. */
export type Lit =
  | { readonly kind: 'none' }
  | { readonly kind: 'whole' }
  | { readonly kind: 'parts'; readonly parts: readonly PartId[] }

const NONE: Lit = { kind: 'none' }
const WHOLE: Lit = { kind: 'whole' }

export function litOf(selection: Selection, derived: Pick<Derived, 'rowOf'>, built: Built): Lit {
  switch (selection.kind) {
    case 'nothing':
      return NONE
    case 'cabinets':
      return selection.ids.some((id) => id === built.id) ? WHOLE : NONE
    case 'part':
      return selection.owner === built.id ? { kind: 'parts', parts: [selection.part] } : NONE
    case 'row': {
      const parts = built.parts.filter((part) => derived.rowOf.get(part.id) === selection.row).map((part) => part.id)
      return parts.length === 0 ? NONE : { kind: 'parts', parts }
    }
  }
}

/** Equal for what is lit alike, so that a cabinet whose light did not change is not touched. */
export function sameLit(a: Lit, b: Lit): boolean {
  if (a.kind !== b.kind) return false
  if (a.kind !== 'parts' || b.kind !== 'parts') return true
  return a.parts.length === b.parts.length && a.parts.every((part, at) => part === b.parts[at])
}

/** How strongly chalk is laid on, of 255: a part is one of few and may be loud; a whole cabinet is a wash. */
const PART_CHALK = 120
export const WHOLE_CHALK = 52

export function chalkOn(lit: Lit, part: PartId): number {
  if (lit.kind === 'whole') return WHOLE_CHALK
  return lit.kind === 'parts' && lit.parts.includes(part) ? PART_CHALK : 0
}
