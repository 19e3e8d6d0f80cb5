import { type ColumnShelves, type LengthDisplay, type ShelfPlace, withFixedAt } from '../../engine/index'
import { Choice } from '../ui/Choice'
import { LengthField } from '../ui/LengthField'

interface HeightRowsProps<Shelves extends ColumnShelves> {
  /** Before each label; nothing where the cabinet is one bay. */
  readonly name: string
  readonly shelves: Shelves
  /** Where they are, from the bottom up; none where they cannot be built. */
  readonly places: readonly ShelfPlace[]
  readonly display: LengthDisplay
  readonly onShelves: (shelves: Shelves) => void
}

/** How high its fixed shelves are, from the bottom up: one that is typed stays there, the others part what is left. */
export function HeightRows<Shelves extends ColumnShelves>(props: HeightRowsProps<Shelves>) {
  const { name, shelves, places, display, onShelves } = props
  return places.map(({ at, least, most }, shelf) => {
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
