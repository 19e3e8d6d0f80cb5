import type { Derived, OwnerId } from '../../engine/index'
import type { Selection } from '../store/state'
import { arrange, boxOfCabinet, standAt, wallLefts } from './arrange'
import { type Built, builtIn } from './built'
import { type Box, boxAround, boxOfBoxes, shifted } from './space'

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
    return boxOfBoxes(shown.map((stand) => shifted(boxOfCabinet(stand.built, explode), standAt(stand, explode))))
  }
  const lefts = wallLefts(derived.project)
  const walls = Object.values(derived.project.walls)
  if (walls.length === 0) return boxAround({ x: 0, y: 0, z: 0 }, { x: 3000, y: 2400, z: 600 })
  return boxOfBoxes(
    walls.map((wall) => {
      const left = lefts.get(wall.id) ?? 0
      return boxAround({ x: left, y: 0, z: 0 }, { x: left + wall.length, y: wall.height, z: 600 })
    }),
  )
}
