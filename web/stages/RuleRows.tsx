import {
  type BuildMethod,
  chartOf,
  formatLength,
  formatWithUnit,
  LEFT_INSIDE,
  type LengthDisplay,
  type Overrides,
  ownNames,
  pocketsOf,
  type RuleSet,
  SLIDE_CLASSES,
  slideClass,
  USUAL_FOLD,
  USUAL_WIDEST_DOOR,
} from '../../engine/index'
import { Choice } from '../ui/Choice'
import fields from '../ui/Fields.module.css'
import { LengthField } from '../ui/LengthField'
import { NumberField } from '../ui/NumberField'
import { ownTitle, Reset } from '../ui/Reset'
import { HingeChartRows } from './HingeChartRows'
import { RULES } from './rules'
import { common } from './shaping'

export interface RuleRowsProps {
  readonly set: RuleSet
  /** What holds now, one for each thing that is edited together. */
  readonly methods: readonly BuildMethod[]
  /** What of it is a cabinet's own; empty where a method itself is edited. */
  readonly own: readonly Overrides[]
  readonly display: LengthDisplay
  /** Told the measures that change; null for one that is left out. */
  readonly onRules: (change: Overrides) => void
  /** Told what changes of each, where they go on to differ; of the first where it is left out. */
  readonly onEach?: (change: (method: BuildMethod) => Overrides) => void
  readonly onReset?: (change: Overrides) => void
}

/** The measures of one set of rules, of a method or of cabinets that have them otherwise. */
export function RuleRows(props: RuleRowsProps) {
  const { set, methods, display, onRules, onEach } = props
  const put = (name: string, value: unknown) => onRules({ [set]: { [name]: value } } as Overrides)
  return (
    <>
      {RULES[set].rows.map(([name, label]) => (
        <LengthField
          key={name}
          label={label}
          value={common(methods, (method) => measureOf(method, set, name))}
          display={display}
          isMeasure
          field={set === 'banding' ? 'banding' : 'small'}
          onLength={(length) => {
            put(name, length)
            return null
          }}
          {...ownOf(name, props)}
        />
      ))}
      {set === 'pockets' && (
        <NumberField
          label="Angle, degrees"
          value={common(methods, (method) => pocketsOf(method).angle)}
          least={5}
          most={45}
          onNumber={(angle) => put('angle', angle)}
          {...ownOf('angle', props)}
        />
      )}
      {set === 'hinge' && (
        <HingeChartRows
          methods={methods}
          display={display}
          own={ownOf('chart', props)}
          onCharts={(change) => {
            const of = ({ hinge }: BuildMethod): Overrides => ({ hinge: { chart: change(chartOf(hinge)) } })
            if (onEach) onEach(of)
            else if (methods[0]) onRules(of(methods[0]))
          }}
        />
      )}
      {set === 'shelves' && <BalanceRows {...props} />}
      {set === 'slides' && <SlideClass {...props} />}
      {set === 'banding' && (
        <Choice
          label="Ends of sides"
          value={common(methods, ({ banding }) => banding.ends ?? 'none')}
          options={[
            ['none', 'not banded'],
            ['uppers', 'bottom ends of uppers'],
            ['uppersAndTalls', 'top ends of high talls, bottom ends of uppers'],
          ]}
          onChoice={(ends) => put('ends', ends === 'none' ? null : ends)}
          {...ownOf('ends', props)}
        />
      )}
      {set === 'banding' && (
        <Tick
          label="Boards are cut smaller by it"
          isTicked={methods.every(({ banding }) => banding.isInFinishedSize)}
          onTick={(isInFinishedSize) => put('isInFinishedSize', isInFinishedSize)}
          {...ownOf('isInFinishedSize', props)}
        />
      )}
    </>
  )
}

/** Measures that a method may leave out. */
const USUAL: Readonly<Record<string, number>> = { foldFromEdge: USUAL_FOLD, widestDoor: USUAL_WIDEST_DOOR }

function measureOf(method: BuildMethod, set: RuleSet, name: string): number {
  const rules = { ...method, pockets: pocketsOf(method) }[set] as unknown as Readonly<Record<string, number>>
  return rules[name] ?? USUAL[name]!
}

function ownOf(name: string, { set, own, onReset }: RuleRowsProps) {
  return {
    isOwn: own.some((one) => ownNames(one).includes(`${set}.${name}`)),
    onReset: onReset && (() => onReset({ [set]: { [name]: undefined } } as Overrides)),
  }
}

interface TickProps extends ReturnType<typeof ownOf> {
  readonly label: string
  readonly isTicked: boolean
  readonly onTick: (isTicked: boolean) => void
}

function Tick({ label, isTicked, onTick, isOwn, onReset }: TickProps) {
  return (
    <span className={fields.control}>
      <label className={fields.check} title={isOwn ? ownTitle() : undefined}>
        <input type="checkbox" checked={isTicked} onChange={(event) => onTick(event.currentTarget.checked)} />
        {isOwn ? `${label} *` : label}
      </label>
      <Reset label={label} isOwn={isOwn} onReset={onReset} />
    </span>
  )
}

/** Whether the sides are balanced panels, and what then sits in their grid. */
function BalanceRows(props: RuleRowsProps) {
  const { methods, onRules } = props
  const balance = methods[0]?.shelves.balance
  return (
    <>
      <Choice
        label="Rows of holes"
        value={common(methods, ({ shelves }) => shelves.balance?.rows ?? 'floors')}
        options={[
          ['floors', 'From each floor'],
          ['asLeft', 'Balanced panel'],
          ['multiple', 'Balanced, apart by pitches'],
        ]}
        onChoice={(rows) => {
          if (rows === 'floors') return onRules({ shelves: { balance: null } })
          onRules({ shelves: { balance: { arePlatesOn: balance?.arePlatesOn ?? true, rows } } })
        }}
        {...ownOf('balance', props)}
      />
      {balance && (
        <label className={fields.check}>
          <input
            type="checkbox"
            checked={balance.arePlatesOn}
            onChange={(event) => {
              const arePlatesOn = event.currentTarget.checked
              onRules({ shelves: { balance: { ...balance, arePlatesOn } } })
            }}
          />
          Hinge plates sit in the grid
        </label>
      )}
    </>
  )
}

/** What a pair of slides carries, by the classes that are sold, and how far they come out. */
function SlideClass(props: RuleRowsProps) {
  const { methods, display, onRules } = props
  const [least, most] = LEFT_INSIDE
  const loadClass = common(methods, ({ slides }) => slides.loadClass)
  return (
    <>
      <Choice
        label="A pair carries"
        value={SLIDE_CLASSES.some((pounds) => pounds === loadClass) ? String(loadClass) : null}
        options={SLIDE_CLASSES.map((pounds) => [String(pounds), slideClass(pounds, display)])}
        onChoice={(pounds) => onRules({ slides: { loadClass: Number(pounds) } })}
        {...ownOf('loadClass', props)}
      />
      <Choice
        label="Drawers come out"
        value={common(methods, ({ slides }) => slides.extension ?? 'full')}
        options={[
          ['full', 'all the way'],
          ['standard', `all but ${formatLength(least, display)} to ${formatWithUnit(most, display)}`],
        ]}
        onChoice={(way) => onRules({ slides: { extension: way === 'standard' ? way : null } })}
        {...ownOf('extension', props)}
      />
    </>
  )
}
