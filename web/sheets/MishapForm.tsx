import { useMemo, useState } from 'react'
import {
  applyEdit,
  derive,
  formatWithUnit,
  type LengthDisplay,
  type Material,
  type Mm,
  materialsInOrder,
  type PartId,
  type Rect,
  refusedExtent,
  type Step,
  sheetNumbers,
} from '../../engine/index'
import { handNow, partsCut } from '../store/cutting'
import type { Cutting, MaterialEdit } from '../store/state'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import { LengthField } from '../ui/LengthField'
import { Segments } from '../ui/Segments'
import styles from './Bench.module.css'
import { DamagePicture } from './DamagePicture'
import { sidesOf } from './damageSides'
import { MeasureForm } from './MeasureForm'
import { PlanAgain } from './PlanAgain'
import { type Asking, AskingRefused, ProposedPlan, useAsking } from './ProposedPlan'
import { begunBeforeWords, sizeWords } from './words'

const KINDS = [
  ['spoiled', 'A part is spoiled'],
  ['damaged', 'A board is damaged'],
  ['thickness', 'Another thickness'],
  ['openings', 'Openings are measured'],
] as const
type Kind = (typeof KINDS)[number][0]

interface MishapFormProps {
  readonly cutting: Cutting
  /** The step that is shown: what it takes is likely what went wrong. */
  readonly inHand: Step | undefined
  readonly onDone: () => void
}

/** What went wrong is told, and the rest is planned again; what is cut stays cut. */
export function MishapForm({ cutting, inHand, onDone }: MishapFormProps) {
  const [kind, setKind] = useState<Kind>(() => (partsCut(cutting).length > 0 ? 'spoiled' : 'damaged'))
  const asking = useAsking(cutting, onDone)
  const form = { cutting, isBusy: asking.isBusy, onMishap: asking.ask }
  if (asking.proposed) {
    return (
      <section className={styles.card} aria-label="Something went wrong">
        <ProposedPlan asking={asking} />
      </section>
    )
  }
  return (
    <section className={styles.card} aria-label="Something went wrong">
      <h2>Something went wrong</h2>
      <Segments label="What went wrong" options={KINDS} value={kind} onChoice={setKind} />
      {kind === 'spoiled' && <Spoiled {...form} />}
      {kind === 'damaged' && <Damaged {...form} inHand={inHand} />}
      {kind === 'thickness' && <Thickness {...form} inHand={inHand} />}
      {kind === 'openings' && <MeasureForm cutting={cutting} onDone={onDone} />}
      <AskingRefused why={asking.why} />
      <p>
        <Button onClick={onDone}>Leave the plan as it is</Button>
      </p>
    </section>
  )
}

interface FormProps {
  readonly cutting: Cutting
  readonly isBusy: boolean
  /** Asks what it would do; the edit is what the design takes over with the new plan. */
  readonly onMishap: Asking['ask']
}

const REFUSED = 'A length above is not taken. Put it right first.'

function Spoiled({ cutting, isBusy, onMishap }: FormProps) {
  const parts = useMemo(() => partsCut(cutting), [cutting])
  const [chosen, setChosen] = useState<ReadonlySet<PartId>>(new Set())
  if (parts.length === 0) return <p>No part is cut yet, so none can be spoiled.</p>
  return (
    <>
      <p>Which parts must be cut again?</p>
      <div className={styles.marks}>
        {parts.map(({ part, mark }) => (
          <button
            key={part}
            type="button"
            aria-pressed={chosen.has(part)}
            onClick={() => setChosen(chosen.has(part) ? without(chosen, part) : new Set([...chosen, part]))}
          >
            {mark}
          </button>
        ))}
      </div>
      <PlanAgain
        isBusy={isBusy}
        why={chosen.size === 0 ? 'Choose a part first.' : null}
        onPlan={() => onMishap({ kind: 'spoiled', parts: [...chosen] })}
      />
    </>
  )
}

function without<T>(set: ReadonlySet<T>, part: T): ReadonlySet<T> {
  return new Set([...set].filter((each) => each !== part))
}

/** What can be damaged: a piece that lies there, or a sheet with all that is cut from it. */
interface Choice {
  readonly on: number | string
  readonly words: string
  readonly length: number
  readonly width: number
}

function Damaged({ cutting, inHand, isBusy, onMishap }: FormProps & Pick<MishapFormProps, 'inHand'>) {
  const { display = { unit: 'mm', step: 0.1 } as const } = cutting.input
  const { pieces, sheets } = useMemo(() => choicesOf(cutting, display), [cutting, display])
  const all = [...pieces, ...sheets]
  const [picked, setPicked] = useState<Choice['on'] | undefined>(
    () => (pieces.find(({ on }) => inHand?.takes.names.includes(String(on))) ?? all[0])?.on,
  )
  const [rect, setRect] = useState<Rect>({ left: 0, bottom: 0, width: 100, height: 100 })
  const [typed, setTyped] = useState<Partial<Rect>>({})
  const [refused, setRefused] = useState<ReadonlySet<keyof Rect>>(new Set())
  const choice = all.find(({ on }) => on === picked) ?? all[0]
  if (!choice) return <p>Nothing lies there that could be damaged. {begunBeforeWords(cutting.input)}</p>
  return (
    <>
      <p>
        What is damaged, and where? Measured on it as it lies, from the corner of its first edges.{' '}
        {begunBeforeWords(cutting.input)}
      </p>
      <label className={styles.pick}>
        On
        <select
          value={all.indexOf(choice)}
          onChange={(event) => {
            setPicked(all[Number(event.currentTarget.value)]?.on)
            setTyped({})
            setRefused(new Set())
          }}
        >
          <Choices label="At hand" all={all} choices={pieces} />
          <Choices label="A sheet as it came, with all that is cut from it" all={all} choices={sheets} />
        </select>
      </label>
      <DamagePicture name={choice.words} length={choice.length} width={choice.width} damage={{ ...rect, ...typed }} />
      {sidesOf(choice).map(({ side, label, extent, ...limits }) => (
        <LengthField
          key={`${choice.on} ${side}`}
          label={label}
          value={rect[side]}
          display={display}
          field={limits}
          onLength={(length) => {
            const why = extent === null ? null : refusedExtent(extent, length, display)
            if (why === null) setRect({ ...rect, [side]: length })
            return why
          }}
          onTyped={(length) => setTyped(length === null ? {} : { [side]: length })}
          onRefusal={(why) => setRefused((now) => (why === null ? without(now, side) : new Set([...now, side])))}
        />
      ))}
      <PlanAgain
        isBusy={isBusy}
        why={refused.size > 0 ? REFUSED : null}
        onPlan={() => onMishap({ kind: 'damaged', on: choice.on, rect })}
      />
    </>
  )
}

interface ChoicesProps {
  readonly label: string
  readonly all: readonly Choice[]
  readonly choices: readonly Choice[]
}

function Choices({ label, all, choices }: ChoicesProps) {
  if (choices.length === 0) return null
  return (
    <optgroup label={label}>
      {choices.map((choice) => (
        <option key={choice.on} value={all.indexOf(choice)}>
          {choice.words}
        </option>
      ))}
    </optgroup>
  )
}

/** A sheet that is not cut yet is a piece at hand; one that is cut can be told of as it came. */
function choicesOf(cutting: Cutting, display: LengthDisplay) {
  const hand = handNow(cutting)
  const pieces = hand.map(({ name, place }): Choice => {
    const { width: length, height: width } = place
    return { on: name, words: `${name}, ${sizeWords(length, width, display)}`, length, width }
  })
  const there = new Set(hand.map(({ name }) => name))
  const { job, answer } = cutting.input
  const numbers = sheetNumbers(cutting.input).laid
  const laid = answer.sheets.flatMap(({ stock, copies }) => Array.from({ length: copies }, () => stock))
  const sheets = laid.flatMap((id, at): Choice[] => {
    const stock = job.stock.find((each) => each.id === id)
    const number = numbers[at]!
    const name = `sheet ${number}`
    if (!stock || there.has(name) || cutting.input.atHand?.has(id)) return []
    const { length, width } = stock
    return [{ on: number, words: `${name}, ${sizeWords(length, width, display)}`, length, width }]
  })
  return { pieces, sheets }
}

/** The design follows the new thickness when the rest is planned by it, as one undo step, and not before. */
function Thickness({ cutting, inHand, isBusy, onMishap }: FormProps & Pick<MishapFormProps, 'inHand'>) {
  const { materials, display } = useStore((state) => state.shown)
  const planned = new Map(cutting.input.cutList.rows.map(({ material, thickness }) => [material, thickness]))
  const used = materialsInOrder(materials).filter(({ id }) => planned.has(id))
  const [chosen, setChosen] = useState((used.find(({ id }) => id === inHand?.material) ?? used[0])?.id)
  const [measured, setMeasured] = useState<Mm | null>(null)
  const [isRefused, setRefused] = useState(false)
  const material = used.find(({ id }) => id === chosen)
  if (!material) return <p>Nothing is left to cut.</p>
  const { id, name } = material
  const before = planned.get(id)!
  const thickness = measured ?? before
  const isSame = thickness === before && `The plan has ${formatWithUnit(before, display)} for ${name} already.`
  return (
    <>
      <p>What does the batch measure? The design follows, and every part that is cut and still right stays.</p>
      <label className={styles.pick}>
        Board
        <select
          value={id}
          onChange={(event) => {
            setChosen(event.currentTarget.value as Material['id'])
            setMeasured(null)
            setRefused(false)
          }}
        >
          {used.map((each) => (
            <option key={each.id} value={each.id}>
              {each.name}
            </option>
          ))}
        </select>
      </label>
      <LengthField
        key={id}
        label="Measures"
        value={thickness}
        display={display}
        field="thickness"
        onLength={(length) => {
          setMeasured(length)
          return null
        }}
        onRefusal={(why) => setRefused(why !== null)}
      />
      <PlanAgain
        isBusy={isBusy}
        why={isRefused ? REFUSED : isSame || null}
        onPlan={() => {
          const edit: MaterialEdit = { kind: 'editMaterial', id, change: { thickness } }
          const { rows } = derive(applyEdit(useStore.getState().history.present, edit)).cutList
          onMishap({ kind: 'thickness', material: id, rows }, edit)
        }}
      />
    </>
  )
}
