import type { Shop } from '../../engine/index'
import { useStore } from '../store/store'
import { Choice } from '../ui/Choice'
import { LengthField } from '../ui/LengthField'
import { NumberField } from '../ui/NumberField'
import { TextField } from '../ui/TextField'
import styles from './Panels.module.css'

/** The saw, its guides and the person: what sheets and steps are made for. */
export function ShopRows() {
  const { shop, display } = useStore((state) => state.shown)
  const actions = useStore((state) => state.actions)
  const change = (what: Partial<Shop>) => {
    actions.commit({ kind: 'editShop', change: what })
    return null
  }
  return (
    <>
      <fieldset className={styles.set}>
        <legend>The saw</legend>
        <LengthField
          label="Kerf"
          value={shop.kerf}
          display={display}
          field="kerf"
          onLength={(kerf) => change({ kerf })}
        />
        <LengthField
          label="Trim"
          value={shop.trim}
          display={display}
          field="trim"
          onLength={(trim) => change({ trim })}
        />
        <Choice
          label="Cut directions"
          value={shop.stages === null ? 'any' : shop.stages === 2 ? 'two' : 'three'}
          options={[
            ['two', 'rip, crosscut'],
            ['three', 'rip, crosscut, re-rip'],
            ['any', 'as many as it takes'],
          ]}
          onChoice={(stages) => change({ stages: stages === 'any' ? null : stages === 'two' ? 2 : 3 })}
        />
        <Choice
          label="First cut"
          value={shop.firstCut}
          options={[
            ['rip', 'rip'],
            ['crosscut', 'crosscut'],
            ['any', 'either'],
          ]}
          onChoice={(firstCut) => change({ firstCut })}
        />
        <LengthField
          label="Rail"
          value={shop.railLength}
          display={display}
          field="wallLength"
          onLength={(railLength) => change({ railLength })}
        />
        <LengthField
          label="Guides, least"
          value={shop.guides.least}
          display={display}
          field="width"
          onLength={(least) => change({ guides: { ...shop.guides, least } })}
        />
        <LengthField
          label="Guides, most"
          value={shop.guides.greatest}
          display={display}
          field="width"
          onLength={(greatest) => change({ guides: { ...shop.guides, greatest } })}
        />
        <LengthField
          label="Bench crosscut"
          value={shop.benchCrosscut}
          display={display}
          field="width"
          onLength={(benchCrosscut) => change({ benchCrosscut })}
        />
      </fieldset>
      <fieldset className={styles.set}>
        <legend>Kept as an offcut from</legend>
        <LengthField
          label="Length"
          value={shop.offcutLeast.length}
          display={display}
          field="width"
          onLength={(length) => change({ offcutLeast: { ...shop.offcutLeast, length } })}
        />
        <LengthField
          label="Width"
          value={shop.offcutLeast.width}
          display={display}
          field="width"
          onLength={(width) => change({ offcutLeast: { ...shop.offcutLeast, width } })}
        />
      </fieldset>
      <fieldset className={styles.set}>
        <legend>Time, strength and money</legend>
        <NumberField
          label="One lifts, kg"
          value={shop.onePersonLift}
          least={0}
          most={200}
          onNumber={(onePersonLift) => change({ onePersonLift })}
        />
        <NumberField
          label="Minutes a setting"
          value={shop.minutes.perSetting}
          least={0}
          most={600}
          onNumber={(perSetting) => change({ minutes: { ...shop.minutes, perSetting } })}
        />
        <NumberField
          label="Minutes a cut"
          value={shop.minutes.perCut}
          least={0}
          most={600}
          onNumber={(perCut) => change({ minutes: { ...shop.minutes, perCut } })}
        />
        <NumberField
          label="Minutes a sheet"
          value={shop.minutes.perSheet}
          least={0}
          most={600}
          onNumber={(perSheet) => change({ minutes: { ...shop.minutes, perSheet } })}
        />
        <TextField
          label="Currency"
          value={shop.currency}
          onText={(currency) => change({ currency: currency.slice(0, 8) })}
        />
      </fieldset>
    </>
  )
}
