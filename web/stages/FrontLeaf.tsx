import type { Cabinet, ColumnShelves, Front, LengthDisplay } from '../../engine/index'
import { LengthField } from '../ui/LengthField'
import { NumberField } from '../ui/NumberField'

type Appliance = Extract<Front, { kind: 'appliance' }>
type Columns = Extract<Front, { kind: 'columns' }>

interface NicheRowsProps {
  readonly front: Appliance
  readonly display: LengthDisplay
  readonly name: string
  readonly onFront: (front: Front) => void
}

/** What the maker of an appliance asks for. */
export function NicheRows({ front, display, name, onFront }: NicheRowsProps) {
  const fields = [
    ['width', `· ${name} cut-out width`],
    ['height', `· ${name} cut-out height`],
    ['air', `· ${name} air behind`],
  ] as const
  return fields.map(([field, label]) => (
    <LengthField
      key={field}
      label={label}
      value={front[field]}
      display={display}
      field={field === 'air' ? 'small' : 'frontSize'}
      onLength={(length) => {
        onFront({ ...front, [field]: length })
        return null
      }}
    />
  ))
}

interface ColumnShelvesRowsProps {
  readonly front: Columns
  readonly cabinet: Cabinet
  readonly at: number
  readonly onFront: (front: Front) => void
}

const MOST_SHELVES = 20

/** The shelves of one bay; until they are typed it has as many as the cabinet says. */
export function ColumnShelvesRows({ front, cabinet: { interior }, at, onFront }: ColumnShelvesRowsProps) {
  const { fixedShelves, adjustableShelves } = front.columns[at]!.shelves ?? interior
  const change = (part: Partial<ColumnShelves>) => {
    const shelves = { fixedShelves, adjustableShelves, ...part }
    onFront({ ...front, columns: front.columns.map((one, index) => (index === at ? { ...one, shelves } : one)) })
  }
  return (
    <>
      <NumberField
        label={`· Column ${at + 1} fixed shelves`}
        value={fixedShelves}
        least={0}
        most={MOST_SHELVES}
        isWhole
        onNumber={(count) => change({ fixedShelves: count })}
      />
      <NumberField
        label={`· Column ${at + 1} loose shelves`}
        value={adjustableShelves}
        least={0}
        most={MOST_SHELVES}
        isWhole
        onNumber={(count) => change({ adjustableShelves: count })}
      />
    </>
  )
}
