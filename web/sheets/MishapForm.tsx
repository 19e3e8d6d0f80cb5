import { useMemo, useState } from 'react'
import { derive, type Material, type Mishap, type PartId, type Rect, valuesOf } from '../../engine/index'
import { partsCut, planAgain } from '../store/cutting'
import type { Cutting } from '../store/state'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import { LengthField } from '../ui/LengthField'
import { NumberField } from '../ui/NumberField'
import { Segments } from '../ui/Segments'
import { hirePacker } from '../workers/hire'
import styles from './Bench.module.css'

const KINDS = [
  ['spoiled', 'A part is spoiled'],
  ['damaged', 'A sheet is damaged'],
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

const SIDES = [
  ['left', 'From its first end'],
  ['bottom', 'From its first edge'],
  ['width', 'Along the sheet'],
  ['height', 'Across the sheet'],
] as const

function Damaged({ cutting, isBusy, onMishap }: FormProps) {
  const { display = { unit: 'mm', step: 0.1 } as const, firstSheet = 1, answer } = cutting.input
  const last = firstSheet - 1 + answer.sheets.reduce((sum, { copies }) => sum + copies, 0)
  const [sheet, setSheet] = useState(firstSheet)
  const [rect, setRect] = useState<Rect>({ left: 0, bottom: 0, width: 100, height: 100 })
  return (
    <>
      <p>Which sheet, and where? Measured as it came, from the corner of its first edges.</p>
      <NumberField label="Sheet" value={sheet} least={firstSheet} most={last} isWhole onNumber={setSheet} />
      {SIDES.map(([side, label]) => (
        <LengthField
          key={side}
          label={label}
          value={rect[side]}
          display={display}
          field="left"
          onLength={(length) => {
            if (length === 0 && (side === 'width' || side === 'height')) return 'What is damaged is larger than 0.'
            setRect({ ...rect, [side]: length })
            return null
          }}
        />
      ))}
      <Button disabled={isBusy} onClick={() => onMishap({ kind: 'damaged', sheet, rect })}>
        Plan the rest anew
      </Button>
    </>
  )
}

/** The design follows the new thickness, as one undo step; then the rest is planned by what the design has now. */
function Thickness({ cutting, isBusy, onMishap }: FormProps) {
  const actions = useStore((state) => state.actions)
  const { materials, display } = useStore((state) => state.shown)
  const used = valuesOf<Material>(materials).filter(({ id }) => {
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
