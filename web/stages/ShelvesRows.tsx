import { type BayPlace, type ColumnShelves, type LengthDisplay, withFixedShelves } from '../../engine/index'
import { BayRows } from './BayRows'
import { CountField } from './CountField'
import { HeightRows } from './HeightRows'

interface ShelvesRowsProps {
  /** `Bay 2`: what its labels begin with. */
  readonly name: string
  readonly shelves: ColumnShelves
  /** Where they are; nothing where they cannot be built. */
  readonly place: BayPlace | undefined
  readonly display: LengthDisplay
  readonly onShelves: (shelves: ColumnShelves) => void
}

/** What stands in one bay. */
export function ShelvesRows({ name, shelves, place, display, onShelves }: ShelvesRowsProps) {
  return (
    <>
      <CountField
        label={`· ${name} fixed shelves`}
        count={shelves.fixedShelves}
        onCount={(count) => onShelves(withFixedShelves(shelves, count))}
      />
      <HeightRows
        name={`${name} `}
        shelves={shelves}
        places={place?.fixed ?? []}
        display={display}
        onShelves={onShelves}
      />
      <CountField
        label={`· ${name} loose shelves`}
        count={shelves.adjustableShelves}
        onCount={(adjustableShelves) => onShelves({ ...shelves, adjustableShelves })}
      />
      <BayRows
        name={`· ${name} `}
        bay={shelves}
        display={display}
        onBay={(part) => onShelves({ ...shelves, ...part })}
      />
    </>
  )
}
