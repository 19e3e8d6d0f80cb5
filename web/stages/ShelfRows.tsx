import { type Cabinet, type Interior, type LengthDisplay, type ShelfPlace, withFixedShelves } from '../../engine/index'
import { useStore } from '../store/store'
import { CountField } from './CountField'
import { HeightRows } from './HeightRows'
import { common } from './shaping'

interface ShelfRowsProps {
  readonly cabinets: readonly Cabinet[]
  /** Where the fixed shelves of the one cabinet are, if it is one and they have no bays of their own. */
  readonly places: readonly ShelfPlace[]
  readonly display: LengthDisplay
}

/** How many shelves are in cabinets, and of one alone how high its fixed ones are. */
export function ShelfRows({ cabinets, places, display }: ShelfRowsProps) {
  const actions = useStore((state) => state.actions)
  function change(made: (interior: Interior) => Interior) {
    const edits = cabinets.map(
      ({ id, interior }) => ({ kind: 'setInterior', ids: [id], interior: made(interior) }) as const,
    )
    actions.commit(edits.length === 1 ? edits[0]! : { kind: 'several', edits })
  }
  return (
    <>
      <CountField
        label="Fixed shelves"
        count={common(cabinets, ({ interior }) => interior.fixedShelves)}
        onCount={(count) => change((interior) => withFixedShelves(interior, count))}
      />
      <CountField
        label="Loose shelves"
        count={common(cabinets, ({ interior }) => interior.adjustableShelves)}
        onCount={(adjustableShelves) => change((interior) => ({ ...interior, adjustableShelves }))}
      />
      {cabinets.length === 1 && (
        <HeightRows
          name=""
          shelves={cabinets[0]!.interior}
          places={places}
          display={display}
          onShelves={(interior) => change(() => interior)}
        />
      )}
    </>
  )
}
