import {
  baysOf,
  type Cabinet,
  childrenOf,
  type Edit,
  type Front,
  type Interior,
  withPartitions,
} from '../../engine/index'

/** A front put on a cabinet, and in the same step all taken out that cannot stand behind it. */
export function frontEdit(cabinet: Cabinet, front: Front): Edit {
  const put: Edit = { kind: 'setFront', ids: [cabinet.id], front: withRoomForShelves(front) }
  const interior = interiorBehind(front, cabinet.interior)
  if (interior === cabinet.interior) return put
  return { kind: 'several', edits: [put, { kind: 'setInterior', ids: [cabinet.id], interior }] }
}

/** Several cabinets with a front each, in one step. */
export function frontEdits(cabinets: readonly Cabinet[], frontOf: (cabinet: Cabinet) => Front): Edit {
  const edits = cabinets.map((cabinet) => frontEdit(cabinet, frontOf(cabinet)))
  return edits.length === 1 ? edits[0]! : { kind: 'several', edits }
}

function interiorBehind(front: Front, interior: Interior): Interior {
  const { fixedShelves, adjustableShelves, pipes, rollOuts, dividers } = interior
  const isParted = baysOf(interior).length > 0
  const isFilled = fixedShelves + adjustableShelves + (rollOuts?.count ?? 0) + (dividers ?? 0) > 0 || isParted
  if (!isFilled) return interior
  // A column that is full has no shelves anyway.
  if (!isFull(front) || front.kind === 'columns') {
    return isParted && hasNiche(front) ? withPartitions(interior, 0) : interior
  }
  return { fixedShelves: 0, adjustableShelves: 0, partition: null, ...(pipes ? { pipes } : {}) }
}

/** Columns that are full of drawers or appliances have no shelves of their own. */
function withRoomForShelves(front: Front): Front {
  if (front.kind !== 'columns') return front
  const columns = front.columns.map((one) => (one.shelves && isFull(one.front) ? { ...one, shelves: null } : one))
  return columns.every((one, at) => one === front.columns[at]) ? front : { ...front, columns }
}

/** Whether drawers, appliances and rows parted by short boards leave no height for shelves behind a front. */
export function isFull(front: Front): boolean {
  if (front.kind === 'rows') return front.rows.every((row) => row.front.kind === 'columns' || isFull(row.front))
  if (front.kind === 'columns') return front.columns.every((column) => isFull(column.front))
  return front.kind === 'drawer' || front.kind === 'pullOut' || front.kind === 'appliance'
}

function hasNiche(front: Front): boolean {
  return front.kind === 'appliance' || childrenOf(front).some((child) => hasNiche(child.front))
}
