import { type LengthDisplay, type Shop, STOP_REACH, weightUnit } from '../../engine/index'
import { useStore } from '../store/store'
import { Choice } from '../ui/Choice'
import fields from '../ui/Fields.module.css'
import { LengthField } from '../ui/LengthField'
import { NumberField } from '../ui/NumberField'
import { TextField } from '../ui/TextField'
import { GoalRows } from './GoalRows'
import styles from './Panels.module.css'
import { StageCompare } from './StageCompare'
import { stageChoices } from './stageWords'

const BLADES = [
  ['rip', 'Rip blade, teeth'],
  ['crosscut', 'Crosscut blade, teeth'],
] as const

/** What a rail, and the fence of a stop, may measure; and what guides and a bench may reach across. */
const RAIL = { least: 100, most: 6000 }
const REACH = { least: 50, most: 6000 }

interface NarrowRipsProps {
  readonly shop: Shop
  readonly display: LengthDisplay
  readonly onChange: (what: Partial<Shop>) => null
}

/** What the guides start from when an attachment is ticked: common practice, no source. */
const USUAL_NARROW_RIPS = { least: 0, greatest: 230 }

/** The attachment of the guides for narrow rips, where there is one. */
function NarrowRips({ shop: { narrowRips }, display, onChange }: NarrowRipsProps) {
  return (
    <>
      <label className={fields.check}>
        <input
          type="checkbox"
          checked={narrowRips !== null}
          onChange={(event) => onChange({ narrowRips: event.currentTarget.checked ? USUAL_NARROW_RIPS : null })}
        />
        Attachment for narrow rips
      </label>
      {narrowRips && (
        <LengthField
          label="It reaches to"
          value={narrowRips.greatest}
          display={display}
          field="width"
          onLength={(greatest) => onChange({ narrowRips: { ...narrowRips, greatest } })}
        />
      )}
    </>
  )
}

const LATE = [
  ['fronts', 'Doors and drawer fronts'],
  ['drawerBoxes', 'Drawer boxes'],
  ['fitted', 'Fillers, ends, tops and rails fitted on site'],
] as const

/** What waits on the sheet until the carcasses stand. */
function LateRows({ shop: { late }, onChange }: Pick<NarrowRipsProps, 'shop' | 'onChange'>) {
  return (
    <fieldset className={styles.set}>
      <legend>Cut last</legend>
      <p className={styles.note}>
        When the carcasses stand and their openings are measured. What is ticked is cut after all other parts, and made
        to what was built. Where guide and stop are set seldom, it lies on sheets of its own as far as that takes no
        sheet more.
      </p>
      {LATE.map(([kind, label]) => (
        <label key={kind} className={fields.check}>
          <input
            type="checkbox"
            checked={late[kind]}
            onChange={(event) => onChange({ late: { ...late, [kind]: event.currentTarget.checked } })}
          />
          {label}
        </label>
      ))}
    </fieldset>
  )
}

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
          isMeasure
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
          options={stageChoices(shop.firstCut)}
          onChoice={(stages) => change({ stages: stages === 'any' ? null : stages === 'two' ? 2 : 3 })}
        />
        <StageCompare />
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
        <GoalRows goals={shop.goals} onGoals={(goals) => change({ goals })} />
        <LengthField
          label="Rail"
          value={shop.railLength}
          display={display}
          field={{ spoken: 'The length of the rail', ...RAIL }}
          onLength={(railLength) => change({ railLength })}
        />
        <label className={fields.check}>
          <input
            type="checkbox"
            checked={shop.canJoinRails}
            onChange={(event) => change({ canJoinRails: event.currentTarget.checked })}
          />
          Another of its length can be joined to it
        </label>
        <LengthField
          label="Guides, least"
          value={shop.guides.least}
          display={display}
          field={{ spoken: 'The least that the guides reach', least: REACH.least, most: shop.guides.greatest }}
          onLength={(least) => change({ guides: { ...shop.guides, least } })}
        />
        <LengthField
          label="Guides, most"
          value={shop.guides.greatest}
          display={display}
          field={{ spoken: 'The most that the guides reach', least: shop.guides.least, most: REACH.most }}
          onLength={(greatest) => change({ guides: { ...shop.guides, greatest } })}
        />
        <NarrowRips shop={shop} display={display} onChange={change} />
        <LengthField
          label="Bench crosscut"
          value={shop.benchCrosscut}
          display={display}
          field={{ spoken: 'What the bench crosscuts', ...REACH }}
          onLength={(benchCrosscut) => change({ benchCrosscut })}
        />
        <LengthField
          label="Stop, most"
          value={shop.stopReach ?? STOP_REACH}
          display={display}
          field={{ spoken: 'The reach of the stop', ...RAIL }}
          onLength={(stopReach) => change({ stopReach })}
        />
        <LengthField
          label="Left on a rough cut"
          value={shop.roughLength}
          display={display}
          field="small"
          onLength={(roughLength) => change({ roughLength })}
        />
        {BLADES.map(([blade, label]) => (
          <NumberField
            key={blade}
            label={label}
            value={shop.blades[blade].teeth}
            least={1}
            most={200}
            isWhole
            onNumber={(teeth) => change({ blades: { ...shop.blades, [blade]: { teeth } } })}
          />
        ))}
        <Choice
          label="Full sheets"
          value={shop.cutOrder ?? 'quicker'}
          options={[
            ['quicker', 'whichever is quicker'],
            ['sheet by sheet', 'sheet by sheet'],
            ['setting by setting', 'setting by setting'],
          ]}
          onChoice={(order) => change({ cutOrder: order === 'quicker' ? null : order })}
        />
      </fieldset>
      <LateRows shop={shop} onChange={change} />
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
          label={`One lifts, ${weightUnit(display).name}`}
          per={weightUnit(display).kg}
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
