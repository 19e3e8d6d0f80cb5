import {
  type BuildMethod,
  formatLength,
  formatWithUnit,
  LEFT_INSIDE,
  type LengthDisplay,
  pocketsOf,
  SLIDE_CLASSES,
  slideClass,
  USUAL_FOLD,
} from '../../engine/index'
import { Choice } from '../ui/Choice'
import fields from '../ui/Fields.module.css'
import { LengthField } from '../ui/LengthField'
import { NumberField } from '../ui/NumberField'
import styles from './Panels.module.css'

interface MethodRulesProps {
  readonly method: BuildMethod
  readonly display: LengthDisplay
  readonly onChange: (change: Partial<Omit<BuildMethod, 'id'>>) => void
}

const RULES = {
  fronts: {
    title: 'Gaps of fronts',
    rows: [
      ['gap', 'Between fronts'],
      ['endReveal', 'At the ends'],
      ['topReveal', 'At the top'],
      ['bottomReveal', 'At the bottom'],
    ],
  },
  banding: {
    title: 'Banding',
    rows: [
      ['carcass', 'Carcass edges'],
      ['fronts', 'Fronts, fillers, trims'],
    ],
  },
  shelves: {
    title: 'Loose shelves',
    rows: [
      ['sideClearance', 'Play in all'],
      ['setback', 'Setback'],
      ['pinDiameter', 'Pin diameter'],
      ['pinDepth', 'Pin depth'],
      ['pitch', 'Pitch of holes'],
      ['rowSetback', 'Rows from edges'],
      ['firstHole', 'First hole'],
    ],
  },
  drawers: {
    title: 'Drawers',
    rows: [
      ['bottomClearance', 'Free below'],
      ['topClearance', 'Free above'],
      ['lengthStep', 'Slides in steps of'],
      ['rearClearance', 'Free behind'],
      ['grooveDepth', 'Groove depth'],
      ['grooveUp', 'Groove up'],
      ['bottomPlay', 'Play of the bottom'],
    ],
  },
  hinge: {
    title: 'Hinges',
    rows: [
      ['firstFromEnd', 'First from the end'],
      ['cupDiameter', 'Cup diameter'],
      ['cupDepth', 'Cup depth'],
      ['cupFromEdge', 'Cup from the edge'],
      ['screwSpread', 'Screws apart'],
      ['screwBehind', 'Screws behind the cup'],
      ['screwDiameter', 'Screw holes'],
      ['screwDepth', 'Screw holes, depth'],
      ['plateFromFront', 'Plate from the front'],
      ['plateSpread', 'Plate holes apart'],
      ['plateDiameter', 'Plate holes'],
      ['plateDepth', 'Plate holes, depth'],
      ['plateLength', 'Plate length'],
      ['plateHeight', 'Plate height'],
      ['fixedDistance', 'Fixed distance'],
      ['halfCrank', 'Crank, half overlay'],
      ['fullCrank', 'Crank, inset'],
      ['sideAdjustment', 'Can be set by'],
      ['foldFromEdge', 'Folding leaves: plate from the edge'],
    ],
  },
  slides: {
    title: 'Slides',
    rows: [
      ['lineUp', 'Up from the box'],
      ['firstFromFront', 'First from the front'],
      ['pitch', 'Grid of screws'],
      ['holeDiameter', 'Hole diameter'],
      ['holeDepth', 'Hole depth'],
      ['setback', 'Undermount: set back'],
    ],
  },
  legs: {
    title: 'Legs',
    rows: [
      ['spacing', 'Apart at most'],
      ['fromEdge', 'First from the sides'],
      ['plateSpread', 'Screws of a plate apart'],
      ['screwDiameter', 'Screw holes'],
      ['screwDepth', 'Screw holes, depth'],
    ],
  },
  pockets: {
    title: 'Pocket screws',
    rows: [
      ['diameter', 'Pocket'],
      ['underHead', 'Wood under the head'],
      ['screwDiameter', 'Screw'],
      ['screwLength', 'Screw length'],
      ['fromEdge', 'Frames: first from the edge'],
      ['spacing', 'Frames: apart at most'],
    ],
  },
} as const

type RuleSet = keyof typeof RULES

/** The measures of a build method that hold for all its cabinets. */
export function MethodRules({ method, display, onChange }: MethodRulesProps) {
  return (
    <>
      {(Object.keys(RULES) as RuleSet[]).map((set) => {
        const rules = { ...method, pockets: pocketsOf(method) }
        // What leaves are hinged to one another by is the one measure that a method may leave out.
        const values = rules[set] as unknown as Readonly<Record<string, number>>
        return (
          <fieldset key={set} className={styles.set}>
            <legend>{RULES[set].title}</legend>
            {RULES[set].rows.map(([name, label]) => (
              <LengthField
                key={name}
                label={label}
                value={values[name] ?? USUAL_FOLD}
                display={display}
                isMeasure
                field={set === 'banding' ? 'banding' : 'small'}
                onLength={(length) => {
                  onChange({ [set]: { ...rules[set], [name]: length } })
                  return null
                }}
              />
            ))}
            {set === 'pockets' && (
              <NumberField
                label="Angle, degrees"
                value={rules.pockets.angle}
                least={5}
                most={45}
                onNumber={(angle) => onChange({ pockets: { ...rules.pockets, angle } })}
              />
            )}
            {set === 'shelves' && <BalanceRows {...{ method, onChange }} />}
            {set === 'slides' && <SlideClass {...{ method, display, onChange }} />}
            {set === 'banding' && (
              <label className={fields.check}>
                <input
                  type="checkbox"
                  checked={method.banding.isInFinishedSize}
                  onChange={(event) =>
                    onChange({ banding: { ...method.banding, isInFinishedSize: event.currentTarget.checked } })
                  }
                />
                Boards are cut smaller by it
              </label>
            )}
          </fieldset>
        )
      })}
    </>
  )
}

/** Whether the sides are balanced panels, and what then sits in their grid. */
function BalanceRows({ method: { shelves }, onChange }: Pick<MethodRulesProps, 'method' | 'onChange'>) {
  const { balance, ...others } = shelves
  return (
    <>
      <Choice
        label="Rows of holes"
        value={balance?.rows ?? 'floors'}
        options={[
          ['floors', 'From each floor'],
          ['asLeft', 'Balanced panel'],
          ['multiple', 'Balanced, apart by pitches'],
        ]}
        onChoice={(rows) => {
          if (rows === 'floors') return onChange({ shelves: others })
          onChange({ shelves: { ...others, balance: { arePlatesOn: balance?.arePlatesOn ?? true, rows } } })
        }}
      />
      {balance && (
        <label className={fields.check}>
          <input
            type="checkbox"
            checked={balance.arePlatesOn}
            onChange={(event) => {
              const arePlatesOn = event.currentTarget.checked
              onChange({ shelves: { ...others, balance: { ...balance, arePlatesOn } } })
            }}
          />
          Hinge plates sit in the grid
        </label>
      )}
    </>
  )
}

/** What a pair of slides carries, by the classes that are sold, and how far they come out. */
function SlideClass({ method, display, onChange }: MethodRulesProps) {
  const { slides } = method
  const { extension, ...others } = slides
  const [least, most] = LEFT_INSIDE
  return (
    <>
      <Choice
        label="A pair carries"
        value={SLIDE_CLASSES.some((pounds) => pounds === slides.loadClass) ? String(slides.loadClass) : null}
        options={SLIDE_CLASSES.map((pounds) => [String(pounds), slideClass(pounds, display)])}
        onChoice={(pounds) => onChange({ slides: { ...slides, loadClass: Number(pounds) } })}
      />
      <Choice
        label="Drawers come out"
        value={extension ?? 'full'}
        options={[
          ['full', 'all the way'],
          ['standard', `all but ${formatLength(least, display)} to ${formatWithUnit(most, display)}`],
        ]}
        onChoice={(way) => onChange({ slides: way === 'standard' ? { ...others, extension: way } : others })}
      />
    </>
  )
}
