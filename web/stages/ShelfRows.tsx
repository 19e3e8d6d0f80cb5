import { type Cabinet, type Interior, withFixedShelves } from '../../engine/index'
import { useStore } from '../store/store'
import { NumberField } from '../ui/NumberField'
import { MOST_SHELVES } from './ShelvesRows'
import { common } from './shaping'

/** How many shelves are in cabinets. */
export function ShelfRows({ cabinets }: { readonly cabinets: readonly Cabinet[] }) {
  const actions = useStore((state) => state.actions)
  function change(made: (interior: Interior) => Interior) {
    const edits = cabinets.map(
      ({ id, interior }) => ({ kind: 'setInterior', ids: [id], interior: made(interior) }) as const,
    )
    actions.commit(edits.length === 1 ? edits[0]! : { kind: 'several', edits })
  }
  return (
    <>
      <NumberField
        label="Fixed shelves"
        value={common(cabinets, ({ interior }) => interior.fixedShelves)}
        least={0}
        most={MOST_SHELVES}
        isWhole
        onNumber={(count) => change((interior) => withFixedShelves(interior, count))}
      />
      <NumberField
        label="Loose shelves"
        value={common(cabinets, ({ interior }) => interior.adjustableShelves)}
        least={0}
        most={MOST_SHELVES}
        isWhole
        onNumber={(adjustableShelves) => change((interior) => ({ ...interior, adjustableShelves }))}
      />
    </>
  )
}
