import { type Derived, type OwnerId, wallsOf } from '../../engine/index'
import type { Selection } from '../store/state'
import { arrange, boxInScene } from './arrange'
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

/** The cabinets as far apart as they are, or the bare wall when there are none to show. */
export function boxToShow(derived: Derived, explode: number, only: readonly OwnerId[] | null): Box {
  const stands = arrange(derived)
  const chosen = only ? stands.filter((stand) => only.includes(stand.built.id)) : stands
  const shown = chosen.length > 0 ? chosen : stands
  if (shown.length > 0) {
    return boxOfBoxes(shown.map((stand) => boxInScene(stand, explode)))
  }
  const frames = wallFrames(derived.project)
  const walls = wallsOf(derived.project)
  if (walls.length === 0) return boxAround({ x: 0, y: 0, z: 0 }, { x: 3000, y: 2400, z: 600 })
  return boxOfBoxes(
    walls.map((wall) => {
      const frame = frames.get(wall.id)!
      const before = boxAround({ x: 0, y: 0, z: 0 }, { x: wall.length, y: wall.height, z: 600 })
      return shifted(turnedBox(before, frame.turns), frame.origin)
    }),
  )
}
