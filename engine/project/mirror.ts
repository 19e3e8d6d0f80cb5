import type { Cabinet, Front, Interior, Project } from './document'
import { childrenOf } from './frontTree'
import { find } from './references'

/** The front as it is seen in a mirror: doors hung at the other side, columns in the other order. */
export function mirroredFront(front: Front): Front {
  switch (front.kind) {
    case 'door':
      return front.hinge === 'top' ? front : { ...front, hinge: front.hinge === 'left' ? 'right' : 'left' }
    case 'rows':
      return { ...front, rows: front.rows.map((row) => ({ ...row, front: mirroredFront(row.front) })) }
    case 'columns':
      return {
        ...front,
        columns: front.columns.map((column) => ({ ...column, front: mirroredFront(column.front) })).reverse(),
      }
    default:
      return front
  }
}

/** The inside as it is seen in a mirror: its bays in the other order. */
export function mirroredInterior(interior: Interior): Interior {
  const { partition, bays } = interior
  if (!partition && !bays) return interior
  return {
    ...interior,
    ...(partition && { partition: { at: 1 - partition.at } }),
    ...(bays && { bays: [...bays].reverse() }),
  }
}

/**
 * What was made for the corner at one end of a wall and has been moved to the other half of it is made for the corner
 * there: a corner cabinet with its other leg, a blind corner with its blind part.
 */
export function mirroredWhenMoved(before: Cabinet, after: Cabinet, { walls }: Project): Partial<Cabinet> {
  const wall = find(walls, after.wall)
  if (!wall || (!after.corner && !isBlind(after.front))) return {}
  const isAtRight = ({ left, width }: Cabinet) => left + width / 2 > wall.length / 2
  if (before.left === after.left || isAtRight(before) === isAtRight(after)) return {}
  if (!after.corner) return { front: mirroredFront(after.front), interior: mirroredInterior(after.interior) }
  const hand = isAtRight(after) ? 'right' : 'left'
  if (after.corner.hand === hand) return {}
  return { corner: { ...after.corner, hand }, front: mirroredFront(after.front) }
}

function isBlind(front: Front): boolean {
  return front.kind === 'blind' || childrenOf(front).some((child) => isBlind(child.front))
}
