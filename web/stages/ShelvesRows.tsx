import {
  type BayPlace,
  type ColumnShelves,
  type LengthDisplay,
  withFixedAt,
  withFixedShelves,
} from '../../engine/index'
import { Choice } from '../ui/Choice'
import { LengthField } from '../ui/LengthField'
import { NumberField } from '../ui/NumberField'
import { BayRows } from './BayRows'

export const MOST_SHELVES = 20

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
      <NumberField
        label={`· ${name} fixed shelves`}
        value={shelves.fixedShelves}
        least={0}
        most={MOST_SHELVES}
        isWhole
        onNumber={(count) => onShelves(withFixedShelves(shelves, count))}
      />
      <HeightRows name={`${name} `} shelves={shelves} place={place} display={display} onShelves={onShelves} />
      <NumberField
        label={`· ${name} loose shelves`}
        value={shelves.adjustableShelves}
        least={0}
        most={MOST_SHELVES}
        isWhole
        onNumber={(adjustableShelves) => onShelves({ ...shelves, adjustableShelves })}
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

interface HeightRowsProps<Shelves extends ColumnShelves> {
  /** Before each label; nothing where the cabinet is one bay. */
  readonly name: string
  readonly shelves: Shelves
  readonly place: BayPlace | undefined
  readonly display: LengthDisplay
  readonly onShelves: (shelves: Shelves) => void
}

/** How high its fixed shelves are, from the bottom up: one that is typed stays there, the others part what is left. */
export function HeightRows<Shelves extends ColumnShelves>(props: HeightRowsProps<Shelves>) {
  const { name, shelves, place, display, onShelves } = props
  return place?.fixed.map(({ at, least, most }, shelf) => {
    const words = `${name}shelf ${shelf + 1} over bottom`
    const isTyped = typeof shelves.fixedAt?.[shelf] === 'number'
    return (
      // Shelves are told apart by their order, from the bottom up.
      <div key={shelf}>
        <LengthField
          label={`· ${name ? words : words.charAt(0).toUpperCase() + words.slice(1)}`}
          value={at}
          display={display}
          field={{ spoken: `The height of fixed shelf ${shelf + 1}`, least, most }}
          onLength={(height) => {
            onShelves(withFixedAt(shelves, shelf, height))
            return null
          }}
        />
        <Choice
          label="· Its place"
          value={isTyped ? 'typed' : 'even'}
          options={[
            ['even', 'evenly between'],
            ['typed', 'fixed'],
          ]}
          onChoice={(choice) => onShelves(withFixedAt(shelves, shelf, choice === 'even' ? null : at))}
        />
      </div>
    )
  })
}
