import { type CabinetId, type Derived, isRunId, type OwnerId, type WallId } from '../../engine/index'
import type { Selection } from './state'

const NOTHING: Selection = { kind: 'nothing' }

/**
 * The selection without what is no longer there; the same object when all of it is. A row whose boards are on others now,
 * as they are cut to another size or from a sheet of their own, is the row of its first board.
 */
export function prunedSelection(selection: Selection, derived: Derived, before: Derived): Selection {
  switch (selection.kind) {
    case 'nothing':
      return selection
    case 'cabinets': {
      const ids = selection.ids.filter((id) => Object.hasOwn(derived.cabinetOf, id))
      if (ids.length === selection.ids.length) return selection
      return ids.length > 0 ? { kind: 'cabinets', ids } : NOTHING
    }
    case 'part':
      if (derived.partOf.has(selection.part)) return selection
      return !isRunId(selection.owner) && Object.hasOwn(derived.cabinetOf, selection.owner)
        ? { kind: 'cabinets', ids: [selection.owner] }
        : NOTHING
    case 'row': {
      if (derived.cutList.rows.some(({ key }) => key === selection.row)) return selection
      const parts = before.cutList.rows.find(({ key }) => key === selection.row)?.parts ?? []
      const row = parts.map((part) => derived.rowOf.get(part)).find((key) => key !== undefined)
      return row ? { kind: 'row', row } : NOTHING
    }
  }
}

/** The selection with a cabinet added to it, or taken out of it. */
export function toggled(selection: Selection, id: CabinetId): Selection {
  const ids = chosenCabinets(selection)
  const after = ids.includes(id) ? ids.filter((other) => other !== id) : [...ids, id]
  return after.length > 0 ? { kind: 'cabinets', ids: after } : NOTHING
}

/** The wall to look at for a selection: as before while anything of it is there, else the wall of its first thing. */
export function wallFor(selection: Selection, derived: Derived, before: WallId | null): WallId | null {
  const walls = wallsIn(selection, derived)
  return walls.length === 0 || (before !== null && walls.includes(before)) ? before : walls[0]!
}

function wallsIn(selection: Selection, { cabinetOf, runs, cutList, partOf }: Derived): WallId[] {
  const wallOf = (owner: OwnerId) =>
    isRunId(owner) ? runs.find(({ id }) => id === owner)?.place.wall : cabinetOf[owner]?.cabinet.wall
  const owners = (): readonly OwnerId[] => {
    if (selection.kind === 'cabinets') return selection.ids
    if (selection.kind === 'part') return [selection.owner]
    if (selection.kind === 'nothing') return []
    const row = cutList.rows.find(({ key }) => key === selection.row)
    return (row?.parts ?? []).map((part) => partOf.get(part)!.owner)
  }
  return owners().flatMap((owner) => wallOf(owner) ?? [])
}

const NONE: readonly CabinetId[] = []

/** The cabinets that are worked on: those selected, or the one whose part is. */
export function chosenCabinets(selection: Selection): readonly CabinetId[] {
  if (selection.kind === 'cabinets') return selection.ids
  return selection.kind === 'part' && !isRunId(selection.owner) ? [selection.owner] : NONE
}
