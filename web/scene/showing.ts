import { type Derived, type OwnerId, wallsOf } from '../../engine/index'
import type { Selection } from '../store/state'
import { arrange, boxInScene, type Stand } from './arrange'
import { type Built, builtIn } from './built'
import { type Box, boxAround, boxOfBoxes, shifted } from './space'
import { turnedBox, wallFrames } from './walls'

/** The cabinets and runs that a selection is in; null when it is in none. */
export function ownersOf(derived: Derived, selection: Selection): readonly OwnerId[] | null {
  switch (selection.kind) {
    case 'nothing':
      return null
    case 'cabinets':
      return selection.ids.length === 0 ? null : selection.ids
    case 'part':
      return [selection.owner]
    case 'row': {
      const holds = ({ parts }: Built) => parts.some((part) => derived.rowOf.get(part.id) === selection.row)
      const ids = builtIn(derived)
        .filter(holds)
        .map(({ id }) => id)
      return ids.length === 0 ? null : ids
    }
  }
}

/**
 * The cabinets as far apart as they are. Without a choice, all walls with them where there are several, so that a bare one
 * is seen too; and the bare wall where there is nothing else to show.
 */
export function boxToShow(derived: Derived, explode: number, only: readonly OwnerId[] | null): Box {
  const stands = arrange(derived)
  const boxes = (shown: readonly Stand[]) => shown.map((stand) => boxInScene(stand, explode))
  const chosen = only ? stands.filter((stand) => only.includes(stand.built.id)) : []
  if (chosen.length > 0) return boxOfBoxes(boxes(chosen))
  const frames = wallFrames(derived.project)
  const walls = wallsOf(derived.project)
  const depth = stands.length > 0 ? 0 : USUAL_DEPTH
  const drawn = walls.map((wall) => {
    const before = boxAround({ x: 0, y: 0, z: 0 }, { x: wall.length, y: wall.height, z: depth })
    const { origin, turns } = frames.get(wall.id)!
    return shifted(turnedBox(before, turns), origin)
  })
  const isOneWall = walls.length < 2
  const all = [...boxes(stands), ...(isOneWall && stands.length > 0 ? [] : drawn)]
  return all.length > 0 ? boxOfBoxes(all) : boxAround({ x: 0, y: 0, z: 0 }, { x: 3000, y: 2400, z: USUAL_DEPTH })
}

/** What will stand before a bare wall. */
const USUAL_DEPTH = 600
