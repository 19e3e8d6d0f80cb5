import type { Cabinet, Interior } from '../../engine/index'
import { useStore } from '../store/store'
import { NumberField } from '../ui/NumberField'
import { common } from './shaping'

const MOST_SHELVES = 20

/** How many shelves are in cabinets. */
export function ShelfRows({ cabinets }: { readonly cabinets: readonly Cabinet[] }) {
  const actions = useStore((state) => state.actions)
  function change(part: Partial<Interior>) {
    const edits = cabinets.map(
      ({ id, interior }) => ({ kind: 'setInterior', ids: [id], interior: { ...interior, ...part } }) as const,
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
        onNumber={(fixedShelves) => change({ fixedShelves })}
      />
      <NumberField
        label="Loose shelves"
        value={common(cabinets, ({ interior }) => interior.adjustableShelves)}
        least={0}
        most={MOST_SHELVES}
        isWhole
        onNumber={(adjustableShelves) => change({ adjustableShelves })}
      />
    </>
  )
}
