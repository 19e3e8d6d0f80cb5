import { type House, inch, type LengthDisplay, type Mm, type Project } from '../../engine/index'
import { useStore } from '../store/store'
import { Choice } from '../ui/Choice'
import fields from '../ui/Fields.module.css'
import { LengthField } from '../ui/LengthField'
import styles from './Stages.module.css'

/** As the engine has them: 15, 40 and 50 lb per square foot. */
const LOADS: Readonly<Record<LengthDisplay['unit'], readonly (readonly [House['shelfLoad'], string])[]>> = {
  mm: [
    ['kitchen', 'kitchen, 73 kg/m²'],
    ['general', 'general, 195 kg/m²'],
    ['books', 'books, 244 kg/m²'],
  ],
  in: [
    ['kitchen', 'kitchen, 15 lb/ft²'],
    ['general', 'general, 40 lb/ft²'],
    ['books', 'books, 50 lb/ft²'],
  ],
}

/** Of most framed walls. Source: thehonestcarpenter.com, on hanging wall cabinets. */
const USUAL_STUDS: Mm = inch(16)

/** A door of a house where none was measured yet, in round figures of the unit (common practice, no source). */
const USUAL_DOORWAY: Readonly<Record<LengthDisplay['unit'], NonNullable<House['doorway']>>> = {
  mm: { width: 800, height: 2000 },
  in: { width: inch(32), height: inch(80) },
}

/** What the house asks of the cabinets: the checks among the findings hold the design against it. */
export function HouseFields({ project: { house, display } }: { readonly project: Project }) {
  const actions = useStore((state) => state.actions)
  const change = (what: Partial<House>) => {
    actions.commit({ kind: 'editHouse', change: what })
    return null
  }
  const { doorway, studSpacing } = house
  return (
    <section aria-label="House">
      <h2>House</h2>
      <p>What shelves are to carry, what walls are made of, and the narrowest way in. The findings judge by it.</p>
      <div className={styles.fields}>
        <Choice
          label="Shelves carry"
          value={house.shelfLoad}
          options={LOADS[display.unit]}
          onChoice={(shelfLoad) => change({ shelfLoad })}
        />
        <label className={fields.check}>
          <input
            type="checkbox"
            checked={studSpacing !== null}
            onChange={(event) => change({ studSpacing: event.currentTarget.checked ? USUAL_STUDS : null })}
          />
          Walls are framed with studs
        </label>
        {studSpacing !== null && (
          <LengthField
            label="From stud to stud"
            value={studSpacing}
            display={display}
            field="width"
            onLength={(length) => change({ studSpacing: length })}
          />
        )}
        <label className={fields.check}>
          <input
            type="checkbox"
            checked={doorway !== null}
            onChange={(event) => change({ doorway: event.currentTarget.checked ? USUAL_DOORWAY[display.unit] : null })}
          />
          The narrowest way in was measured
        </label>
        {doorway !== null && (
          <>
            <LengthField
              label="Doorway, clear width"
              value={doorway.width}
              display={display}
              field="width"
              onLength={(width) => change({ doorway: { ...doorway, width } })}
            />
            <LengthField
              label="Doorway, clear height"
              value={doorway.height}
              display={display}
              field="height"
              onLength={(height) => change({ doorway: { ...doorway, height } })}
            />
          </>
        )}
      </div>
    </section>
  )
}
