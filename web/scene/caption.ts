import { counted, type Derived, formatLength, formatWeight, type Part } from '../../engine/index'
import type { Selection } from '../store/state'
import { builtIn } from './built'
import { standingWords } from './standing'

export interface Caption {
  readonly mark: string
  readonly words: string
}

/** What is said over the picture: the thing that is selected, or the whole run. */
export function captionOf(derived: Derived, selection: Selection): Caption {
  switch (selection.kind) {
    case 'nothing':
      return whole(derived)
    case 'cabinets': {
      const chosen = selection.ids.map((id) => derived.cabinetOf[id]).filter((built) => built !== undefined)
      if (chosen.length === 0) return whole(derived)
      const parts = chosen.flatMap((built) => built.parts)
      return { mark: chosen.map((built) => built.mark).join(' '), words: partsWords(parts, derived) }
    }
    case 'part': {
      const part = derived.partOf.get(selection.part)
      return part ? { mark: part.mark, words: `${part.name}, ${sizeOf(part, derived)}` } : whole(derived)
    }
    case 'row': {
      const row = derived.cutList.rows.find((each) => each.key === selection.row)
      if (!row) return whole(derived)
      return { mark: row.mark, words: `${row.name}, ${row.quantity} in ${row.cabinets.join(' ')}` }
    }
  }
}

/** What the picture shows, for whoever cannot see it. */
export function pictureWords(derived: Derived, explode: number, areFrontsHidden: boolean): string {
  const marks = derived.cabinets.map((built) => built.mark).join(', ')
  const run = marks === '' ? 'An empty wall in 3D' : `${standingWords(derived.cabinets)} in 3D: ${marks}`
  const state = explode === 0 ? 'closed' : `${Math.round(explode * 100)} % apart`
  return `${run}; ${state}${areFrontsHidden ? ', fronts hidden' : ''}`
}

/** In kg: the boards at their finished size, without hardware. */
export function weightOf(parts: readonly Part[], derived: Pick<Derived, 'project'>): number {
  return parts.reduce((sum, part) => {
    const density = derived.project.materials[part.material]?.density ?? 0
    return sum + (part.length * part.width * part.thickness * density) / 1e9
  }, 0)
}

function whole(derived: Derived): Caption {
  if (derived.cabinets.length === 0) return { mark: '', words: 'No cabinets on the wall yet' }
  const parts = builtIn(derived).flatMap((built) => built.parts)
  return { mark: standingWords(derived.cabinets), words: partsWords(parts, derived) }
}

function partsWords(parts: readonly Part[], derived: Derived): string {
  return `${counted(parts.length, 'part')}, ${formatWeight(weightOf(parts, derived), derived.project.display)}`
}

function sizeOf(part: Part, { project }: Derived): string {
  return [part.length, part.width, part.thickness].map((length) => formatLength(length, project.display)).join(' × ')
}
