import { memo } from 'react'
import type { Cabinet, Derived, DerivedCabinet, Mm, OwnerId, Project, WallId } from '../../engine/index'
import { cabinetWords, formatLength, isRunId } from '../../engine/index'
import type { Selection } from '../store/state'
import { useStore } from '../store/store'
import { CabinetDrawing } from './CabinetDrawing'
import { PartOutline, Wrong } from './Overlay'
import { RunDrawing } from './RunDrawing'

interface CabinetsProps {
  readonly wall: WallId
  readonly mmPerPx: number
}

/** All cabinets of the wall, from left to right, and the parts that are selected in another view. */
export const Cabinets = memo(function Cabinets({ wall, mmPerPx }: CabinetsProps) {
  const derived = useStore((state) => state.derived)
  const selection = useStore((state) => state.selection)
  const gesture = useStore((state) => state.gesture)
  const { project } = derived
  const inOrder = derived.cabinets
    .filter(({ cabinet }) => cabinet.wall === wall)
    .sort((a, b) => a.cabinet.left - b.cabinet.left)
  const lit = litParts(derived, selection).filter(({ owner }) => placeOf(derived, owner).wall === wall)
  return (
    <>
      {inOrder.map((built, at) => {
        const { cabinet } = built
        const isHeld = gesture?.about?.includes(cabinet.id) ?? false
        return (
          <CabinetDrawing
            key={cabinet.id}
            built={built}
            kick={kickOf(project, cabinet)}
            mmPerPx={mmPerPx}
            look={lookOf(built, selection, isHeld, gesture?.fits ?? true, lit)}
            label={`${built.mark} ${cabinetWords(cabinet)}, ${formatLength(cabinet.width, project.display)} wide, ${at + 1} of ${inOrder.length}`}
          />
        )
      })}
      {derived.runs
        .filter(({ place }) => place.wall === wall)
        .map((run) => (
          <RunDrawing key={run.id} run={run} mmPerPx={mmPerPx} />
        ))}
      {gesture && !gesture.fits && gesture.about?.map((id) => <Wrong key={id} cabinet={project.cabinets[id]} />)}
      {lit.map((part) => (
        <PartOutline key={part.id} part={part} place={placeOf(derived, part.owner)} />
      ))}
    </>
  )
})

/** Where the frame of a part's owner is on its wall. */
function placeOf({ project, runs }: Derived, owner: OwnerId): Pick<Cabinet, 'wall' | 'left' | 'bottom'> {
  return isRunId(owner) ? runs.find(({ id }) => id === owner)!.place : project.cabinets[owner]!
}

type Lit = ReturnType<typeof litParts>

/** The list is looked into only for a part or a row: a drag of cabinets does not need it at every move. */
function litParts(derived: Derived, selection: Selection) {
  if (selection.kind !== 'part' && selection.kind !== 'row') return []
  const { partOf, cutList } = derived
  const ids =
    selection.kind === 'part' ? [selection.part] : (cutList.rows.find(({ key }) => key === selection.row)?.parts ?? [])
  return ids.flatMap((id) => {
    const part = partOf.get(id)
    return part ? [part] : []
  })
}

function lookOf(built: DerivedCabinet, selection: Selection, isHeld: boolean, fits: boolean, lit: Lit) {
  const { id } = built.cabinet
  if (isHeld) return fits ? 'chosen' : 'wrong'
  if (selection.kind === 'cabinets' && selection.ids.includes(id)) return 'chosen'
  return lit.some(({ owner }) => owner === id) ? 'lit' : 'plain'
}

/** The height of what is under the box; uppers have nothing. */
function kickOf({ methods, method }: Project, cabinet: Cabinet): Mm {
  if (cabinet.kind === 'upper' || cabinet.space?.isKickBefore === false) return 0
  const floor = cabinet.overrides.floor ?? methods[cabinet.method ?? method]!.floor
  return floor.kind === 'none' ? 0 : floor.height
}
