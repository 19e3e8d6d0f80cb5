import { useMemo, useState } from 'react'
import {
  derive,
  type LengthDisplay,
  type Material,
  type Mishap,
  materialsInOrder,
  type PartId,
  type Rect,
} from '../../engine/index'
import { handNow, partsCut, planAgain } from '../store/cutting'
import type { Cutting } from '../store/state'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import { LengthField } from '../ui/LengthField'
import { Segments } from '../ui/Segments'
import { hirePacker } from '../workers/hire'
import styles from './Bench.module.css'
import { sizeWords } from './words'

const KINDS = [
  ['spoiled', 'A part is spoiled'],
  ['damaged', 'A board is damaged'],
  ['thickness', 'Another thickness'],
] as const
type Kind = (typeof KINDS)[number][0]

interface MishapFormProps {
  readonly cutting: Cutting
  readonly onDone: () => void
}

/** What went wrong is told, and the rest is planned again; what is cut stays cut. */
export function MishapForm({ cutting, onDone }: MishapFormProps) {
  const [kind, setKind] = useState<Kind>('spoiled')
  const [why, setWhy] = useState<string | null>(null)
  const [isBusy, setBusy] = useState(false)

  async function plan(mishap: Mishap) {
    setBusy(true)
    const wrong = await planAgain(mishap, hirePacker)
    setBusy(false)
    if (wrong === null) onDone()
    else setWhy(wrong)
  }

  const form = { cutting, isBusy, onMishap: (mishap: Mishap) => void plan(mishap) }
  return (
    <section className={styles.card} aria-label="Something went wrong">
      <h2>Something went wrong</h2>
      <Segments label="What went wrong" options={KINDS} value={kind} onChoice={setKind} />
      {kind === 'spoiled' && <Spoiled {...form} />}
      {kind === 'damaged' && <Damaged {...form} />}
      {kind === 'thickness' && <Thickness {...form} />}
      {why && (
        <p className={styles.refusal} role="alert">
          <span aria-hidden="true">■</span> {why}
        </p>
      )}
      <p>
        <Button onClick={onDone}>Leave the plan as it is</Button>
      </p>
    </section>
  )
}

interface FormProps {
  readonly cutting: Cutting
  readonly isBusy: boolean
  readonly onMishap: (mishap: Mishap) => void
}

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
      <Button disabled={isBusy || chosen.size === 0} onClick={() => onMishap({ kind: 'spoiled', parts: [...chosen] })}>
        Plan the rest anew
      </Button>
    </>
  )
}

function without(set: ReadonlySet<PartId>, part: PartId): ReadonlySet<PartId> {
  return new Set([...set].filter((each) => each !== part))
}

/** What can be damaged: a piece that lies there, or a sheet with all that is cut from it. */
interface Choice {
  readonly on: number | string
  readonly words: string
  readonly length: number
  readonly width: number
}

function Damaged({ cutting, isBusy, onMishap }: FormProps) {
  const { display = { unit: 'mm', step: 0.1 } as const } = cutting.input
  const { pieces, sheets } = useMemo(() => choicesOf(cutting, display), [cutting, display])
  const all = [...pieces, ...sheets]
  const [picked, setPicked] = useState<Choice['on'] | undefined>(all[0]?.on)
  const [rect, setRect] = useState<Rect>({ left: 0, bottom: 0, width: 100, height: 100 })
  const choice = all.find(({ on }) => on === picked) ?? all[0]
  if (!choice) return <p>Nothing lies there that could be damaged.</p>
  return (
    <>
      <p>What is damaged, and where? Measured on it as it lies, from the corner of its first edges.</p>
      <label className={styles.pick}>
        On
        <select value={all.indexOf(choice)} onChange={(event) => setPicked(all[Number(event.currentTarget.value)]?.on)}>
          <Choices label="At hand" all={all} choices={pieces} />
          <Choices label="A sheet as it came, with all that is cut from it" all={all} choices={sheets} />
        </select>
      </label>
      {sidesOf(choice).map(({ side, label, ...limits }) => (
        <LengthField
          key={`${choice.on} ${side}`}
          label={label}
          value={rect[side]}
          display={display}
          field={limits}
          onLength={(length) => {
            setRect({ ...rect, [side]: length })
            return null
          }}
        />
      ))}
      <Button disabled={isBusy} onClick={() => onMishap({ kind: 'damaged', on: choice.on, rect })}>
        Plan the rest anew
      </Button>
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
  const { job, answer, firstSheet = 1 } = cutting.input
  const laid = answer.sheets.flatMap(({ stock, copies }) => Array.from({ length: copies }, () => stock))
  const sheets = laid.flatMap((id, at): Choice[] => {
    const stock = job.stock.find((each) => each.id === id)
    const name = `sheet ${firstSheet + at}`
    if (!stock || there.has(name) || cutting.input.atHand?.has(id)) return []
    const { length, width } = stock
    return [{ on: firstSheet + at, words: `${name}, ${sizeWords(length, width, display)}`, length, width }]
  })
  return { pieces, sheets }
}

/** The damage begins on the piece; what of it hangs over is not counted. */
function sidesOf({ length, width }: Choice) {
  const far = { least: LEAST_DAMAGE, most: 60_000 }
  return [
    { side: 'left', label: 'From its first end', spoken: 'The distance from the first end', least: 0, most: length },
    { side: 'bottom', label: 'From its first edge', spoken: 'The distance from the first edge', least: 0, most: width },
    { side: 'width', label: 'Along it', spoken: 'The length of the damage', ...far },
    { side: 'height', label: 'Across it', spoken: 'The width of the damage', ...far },
  ] as const
}

const LEAST_DAMAGE = 0.1

/** The design follows the new thickness, as one undo step; then the rest is planned by what the design has now. */
function Thickness({ cutting, isBusy, onMishap }: FormProps) {
  const actions = useStore((state) => state.actions)
  const { materials, display } = useStore((state) => state.shown)
  const used = materialsInOrder(materials).filter(({ id }) => {
    return cutting.input.cutList.rows.some(({ material }) => material === id)
  })
  const [chosen, setChosen] = useState(used[0]?.id)
  const material = used.find(({ id }) => id === chosen)
  if (!material) return <p>Nothing is left to cut.</p>
  return (
    <>
      <p>What does the batch measure? The design follows, and every part that is cut and still right stays.</p>
      <label className={styles.pick}>
        Board
        <select value={material.id} onChange={(event) => setChosen(event.currentTarget.value as Material['id'])}>
          {used.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <LengthField
        label="Measures"
        value={material.thickness}
        display={display}
        field="thickness"
        onLength={(thickness) => {
          actions.commit({ kind: 'editMaterial', id: material.id, change: { thickness } })
          return null
        }}
      />
      <Button
        disabled={isBusy}
        onClick={() => {
          const { rows } = derive(useStore.getState().history.present).cutList
          onMishap({ kind: 'thickness', material: material.id, rows })
        }}
      >
        Plan the rest anew
      </Button>
    </>
  )
}
