import type { Front, LengthDisplay } from '../../engine/index'
import { Choice } from '../ui/Choice'
import { LengthField } from '../ui/LengthField'
import { NumberField } from '../ui/NumberField'

type Drawer = Extract<Front, { kind: 'drawer' }>

interface DrawerRowsProps {
  readonly front: Drawer
  readonly display: LengthDisplay
  readonly name: string
  readonly onFront: (front: Front) => void
}

/** A tray for cutlery, as it is often divided (common practice, no source). */
const USUAL = { divisions: 4, height: 60 } as const

/** What lies loose in a drawer: nothing, or an insert with so many divisions. */
export function DrawerRows({ front, display, name, onFront }: DrawerRowsProps) {
  const { insert } = front
  return (
    <>
      <Choice
        label={`· ${name} inside`}
        value={insert ? 'insert' : 'none'}
        options={[
          ['none', 'nothing'],
          ['insert', 'divided insert'],
        ]}
        onChoice={(way) => onFront(way === 'insert' ? { ...front, insert: insert ?? USUAL } : { kind: 'drawer' })}
      />
      {insert && (
        <>
          <NumberField
            label={`· ${name} divisions`}
            value={insert.divisions}
            least={2}
            most={12}
            isWhole
            onNumber={(divisions) => onFront({ ...front, insert: { ...insert, divisions } })}
          />
          <LengthField
            label={`· ${name} insert height`}
            value={insert.height}
            display={display}
            field="small"
            onLength={(height) => {
              onFront({ ...front, insert: { ...insert, height } })
              return null
            }}
          />
        </>
      )}
    </>
  )
}
