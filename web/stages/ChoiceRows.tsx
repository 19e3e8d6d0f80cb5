import type { LengthDisplay, Material, MaterialId, MethodChoices, Overrides } from '../../engine/index'
import { Choice } from '../ui/Choice'
import { LengthField } from '../ui/LengthField'
import { NumberField } from '../ui/NumberField'
import { boardOptions } from './boardOptions'
import type { ChoiceOf, Measure } from './choiceOf'
import { CHOICE_NAMES, CHOICES, type ChoiceName, MATERIAL_CHOICES, type MaterialChoice } from './choices'
import { isIdle } from './frameChoices'

const MATERIAL_NAMES = Object.keys(MATERIAL_CHOICES) as MaterialChoice[]

interface ChoiceRowsProps {
  /** What holds now, one for each thing that is edited together. */
  readonly choices: readonly MethodChoices[]
  /** What of it is a cabinet's own; empty where a method itself is edited. */
  readonly own: readonly Overrides[]
  readonly materials: Readonly<Record<MaterialId, Material>>
  readonly display: LengthDisplay
  readonly onChoice: (choices: Partial<MethodChoices>) => void
  readonly onReset?: (name: keyof MethodChoices) => void
}

/** Everything that a build method settles and a cabinet may settle otherwise. */
export function ChoiceRows(props: ChoiceRowsProps) {
  return (
    <>
      {CHOICE_NAMES.filter((name) => !isIdle(name, props.choices)).map((name) => (
        <ChoiceRow key={name} name={name} {...props} />
      ))}
      {MATERIAL_NAMES.filter((name) => !isIdle(name, props.choices)).map((name) => (
        <MaterialRow key={name} name={name} {...props} />
      ))}
    </>
  )
}

function ChoiceRow({
  name,
  choices,
  own,
  display,
  onChoice,
  onReset,
}: ChoiceRowsProps & { readonly name: ChoiceName }) {
  // The table says of each name what its value is; here it is handled for any of them alike.
  const choice = CHOICES[name] as unknown as ChoiceOf<unknown>
  const values = choices.map((one) => one[name] as unknown)
  const [value] = values
  const ways = new Set(values.map(choice.wayOf))
  const isOne = new Set(values.map((one) => JSON.stringify(one))).size === 1
  const put = (next: unknown) => onChoice({ [name]: next } as Partial<MethodChoices>)
  return (
    <>
      <Choice
        label={choice.label}
        value={ways.size === 1 ? choice.wayOf(value) : null}
        options={choice.ways}
        onChoice={(way) => put(choice.make(way, value))}
        isOwn={own.some((one) => one[name] !== undefined)}
        onReset={onReset && (() => onReset(name))}
      />
      {isOne &&
        choice
          .measures?.(value)
          .map((measure) => <MeasureRow key={measure.label} measure={measure} display={display} onValue={put} />)}
    </>
  )
}

interface MeasureRowProps {
  readonly measure: Measure<unknown>
  readonly display: LengthDisplay
  readonly onValue: (value: unknown) => void
}

function MeasureRow({ measure, display, onValue }: MeasureRowProps) {
  const label = `· ${measure.label}`
  if (measure.number) {
    return (
      <NumberField
        label={label}
        value={measure.value}
        {...measure.number}
        onNumber={(number) => onValue(measure.put(number))}
      />
    )
  }
  return (
    <LengthField
      label={label}
      value={measure.value}
      display={display}
      isMeasure
      field={measure.limits ?? 'small'}
      onLength={(length) => {
        onValue(measure.put(length))
        return null
      }}
    />
  )
}

function MaterialRow(props: ChoiceRowsProps & { readonly name: MaterialChoice }) {
  const { name, choices, own, materials, onChoice, onReset } = props
  const ids = new Set(choices.map((one) => one[name]))
  const [id] = ids
  return (
    <Choice
      label={MATERIAL_CHOICES[name]}
      value={ids.size === 1 && id ? id : null}
      options={boardOptions(materials)}
      onChoice={(chosen) => onChoice({ [name]: chosen })}
      isOwn={own.some((one) => one[name] !== undefined)}
      onReset={onReset && (() => onReset(name))}
    />
  )
}
