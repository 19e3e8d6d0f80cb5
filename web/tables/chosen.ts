import type { CutRow, Derived, PartId } from '../../engine/index'
import type { Selection } from '../store/state'

/** Every part that the selection means: of a cabinet all, of a row all, or the one. */
export function chosenParts(
  selection: Selection,
  derived: Pick<Derived, 'cabinetOf' | 'cutList'>,
): ReadonlySet<PartId> {
  switch (selection.kind) {
    case 'nothing':
      return new Set()
    case 'cabinets':
      return new Set(selection.ids.flatMap((id) => derived.cabinetOf[id]?.parts.map((part) => part.id) ?? []))
    case 'part':
      return new Set([selection.part])
    case 'row':
      return new Set(derived.cutList.rows.find(({ key }) => key === selection.row)?.parts ?? [])
  }
}

export function isRowChosen(row: CutRow, selection: Selection, chosen: ReadonlySet<PartId>): boolean {
  return selection.kind === 'row' ? selection.row === row.key : row.parts.some((part) => chosen.has(part))
}

/** What to select for a part, or nothing when the part is gone. */
export function selectionOf(part: PartId, derived: Pick<Derived, 'partOf'>): Selection {
  const found = derived.partOf.get(part)
  return found ? { kind: 'part', owner: found.owner, part } : { kind: 'nothing' }
}
