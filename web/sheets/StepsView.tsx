import { memo, type ReactNode, useDeferredValue, useMemo, useState } from 'react'
import {
  type Breakdown,
  breakdownOf,
  counted,
  type Derived,
  formatLength,
  type LengthDisplay,
  type Step,
} from '../../engine/index'
import { breakdownFor } from '../store/cutting'
import { type Cutting, currentLayout } from '../store/state'
import { useStore } from '../store/store'
import { useFollowing } from '../store/turns'
import { chosenParts } from '../tables/chosen'
import { Button } from '../ui/Button'
import { unbroken } from '../ui/unbroken'
import { Odds } from './Odds'
import { PiecePicture } from './PiecePicture'
import { SawnOutList } from './SawnOutList'
import styles from './Sheets.module.css'
import { piecesWords, TOOLS, timeWords } from './words'

/** The breakdown of the shown design: one thing to do after another. An old layout is never broken down. */
export function StepsView() {
  const derived = useDeferredValue(useFollowing('sheets', (state) => state.derived))
  // Hundreds of steps are told again for every better layout: that waits for what is more pressing.
  const layout = useDeferredValue(useFollowing('sheets', (state) => state.layout))
  const packing = useFollowing('sheets', (state) => state.packing)
  const current = currentLayout({ layout, derived })
  const breakdown = useMemo(() => (current ? breakdownFor(derived, current) : null), [current, derived])
  if (!breakdown || breakdown.steps.length === 0) {
    const isThinking = packing === 'thinking' && derived.cutList.rows.length > 0
    return isThinking ? (
      <p className={styles.thinking}>The steps follow when the boards are laid out on sheets…</p>
    ) : (
      <div className={styles.empty}>
        <strong>No steps yet.</strong>
        <p>
          Put a cabinet on the wall: once its boards lie on sheets, the cuts are listed here in the order to make them,
          each with what to set and what to write.
        </p>
        <ToTheWall />
      </div>
    )
  }
  return (
    <StepList breakdown={breakdown} derived={derived}>
      <SawnOutList derived={derived} />
    </StepList>
  )
}

/** The plan that was taken to the saw, which a change of the design leaves as it is. */
export function CuttingSteps({ cutting }: { readonly cutting: Cutting }) {
  const derived = useStore((state) => state.derived)
  const breakdown = useMemo(() => breakdownOf(cutting.input), [cutting.input])
  const done = useMemo(() => new Set(cutting.done), [cutting.done])
  return (
    <>
      <Odds cutting={cutting} />
      {breakdown.steps.length === 0 ? (
        <p className={styles.words}>Nothing is left to cut.</p>
      ) : (
        <StepList breakdown={breakdown} derived={derived} done={done} before={cutting.stepsBefore ?? 0} />
      )}
    </>
  )
}

interface StepListProps {
  readonly breakdown: Breakdown
  readonly derived: Derived
  readonly done?: ReadonlySet<string>
  /** How many steps of earlier plans are done: the numbers go on from there. */
  readonly before?: number
  /** What is done when the last step is. */
  readonly children?: ReactNode
}

const NONE_DONE: ReadonlySet<string> = new Set()

function StepList({ breakdown, derived, done = NONE_DONE, before: cut = 0, children }: StepListProps) {
  const selection = useStore((state) => state.selection)
  const [material, setMaterial] = useState('all')
  const { steps, cautions } = breakdown
  const names = new Map<string, string>(Object.values(derived.project.materials).map(({ id, name }) => [id, name]))
  const used = [...new Set(steps.map((step) => step.material))]
  const shown = used.includes(material) ? material : 'all'
  const listed = steps
    .map((step, at) => ({ step, number: cut + at + 1 }))
    .filter(({ step }) => shown === 'all' || step.kind === 'pause' || step.material === shown)
  const marks = useMemo(() => {
    return new Set([...chosenParts(selection, derived)].map((part) => derived.partOf.get(part)?.mark))
  }, [selection, derived])
  return (
    <div className={styles.view}>
      <ul className={styles.cautions} aria-label="Before you cut">
        {cautions.map((caution) => (
          <li key={caution}>
            <span aria-hidden="true">▲</span> {caution}
          </li>
        ))}
      </ul>
      <p className={styles.words}>{effortWords(breakdown)}</p>
      <label className={styles.filter}>
        Material
        <select value={shown} onChange={(event) => setMaterial(event.currentTarget.value)}>
          <option value="all">all</option>
          {used.map((id) => (
            <option key={id} value={id}>
              {names.get(id) ?? id}
            </option>
          ))}
        </select>
      </label>
      <ol className={styles.steps}>
        {listed.map(({ step, number }, at) => {
          if (step.kind === 'pause') return <PauseLine key={step.id} step={step} number={number} done={done} />
          const before = listed[at - 1]?.step
          return (
            <StepLine
              key={step.id}
              step={step}
              number={number}
              isDone={done.has(step.id)}
              isNewBlade={before === undefined || before.kind === 'pause' || before.blade !== step.blade}
              material={names.get(step.material) ?? step.material}
              display={derived.project.display}
              isChosen={step.write.some((mark) => marks.has(mark))}
            />
          )
        })}
      </ol>
      {children}
    </div>
  )
}

interface PauseLineProps {
  readonly step: Step
  readonly number: number
  readonly done: ReadonlySet<string>
}

/** Where the saw rests until the carcasses stand. */
function PauseLine({ step: { id, text, cautions }, number, done }: PauseLineProps) {
  return (
    <li value={number} data-step={id}>
      <h3 className={styles.blade}>Build the carcasses</h3>
      <div className={styles.step}>
        <span className={styles.number}>{number}</span>
        <div className={styles.setting}>
          <span className={styles.line}>measure</span>
        </div>
        <div>
          <p className={styles.say}>
            {done.has(id) && <strong>Done. </strong>}
            {text}
          </p>
          {cautions.map((caution) => (
            <p key={caution} className={styles.caution}>
              <span aria-hidden="true">▲</span> {caution}
            </p>
          ))}
        </div>
      </div>
    </li>
  )
}

/** From a page that has no wall on it. */
function ToTheWall() {
  const isElsewhere = useStore((state) => state.stage === 'cut')
  const { setStage } = useStore((state) => state.actions)
  if (!isElsewhere) return null
  return (
    <p className={styles.onward}>
      <Button onClick={() => setStage('design')}>Go to the wall</Button>
    </p>
  )
}

function effortWords({ steps, settings, bladeChanges, minutes, minutesOtherwise, order }: Breakdown): string {
  const other = order === 'sheet by sheet' ? 'setting by setting' : 'sheet by sheet'
  const blades = bladeChanges === 1 ? 'one blade change' : `${bladeChanges} blade changes`
  return `${counted(steps.length, 'step')}, ${counted(settings, 'setting')}, ${blades}. This list goes ${order}: about ${timeWords(minutes)} by the shop’s own minutes. To go ${other} would take ${timeWords(minutesOtherwise)}.`
}

interface StepLineProps {
  readonly step: Step
  readonly number: number
  readonly isDone: boolean
  readonly isNewBlade: boolean
  readonly material: string
  readonly display: LengthDisplay
  readonly isChosen: boolean
}

const StepLine = memo(function StepLine({
  step,
  number,
  isDone,
  isNewBlade,
  material,
  display,
  isChosen,
}: StepLineProps) {
  const size = (length: number, width: number) => `${formatLength(length, display)} × ${formatLength(width, display)}`
  return (
    <li value={number} data-step={step.id} data-chosen={isChosen} className={isChosen ? styles.chosenStep : undefined}>
      {isNewBlade && <h3 className={styles.blade}>{step.blade === 'rip' ? 'Rip blade in' : 'Crosscut blade in'}</h3>}
      <div className={styles.step}>
        <span className={styles.number}>{number}</span>
        <div className={styles.setting}>
          {step.setting === null ? (
            <span className={styles.line}>{step.kind === 'trim' || step.kind === 'square' ? step.kind : 'line'}</span>
          ) : (
            <>
              <span className="frac">{formatLength(step.setting, display)}</span> <small>{display.unit}</small>
            </>
          )}
          <small>{TOOLS[step.tool]}</small>
        </div>
        <div>
          <p className={styles.say}>
            {isDone && <strong>Done. </strong>}
            {isChosen && <span className={styles.unseen}>Selected: </span>}
            {unbroken(step.text)}
          </p>
          <p className={styles.facts}>
            {step.isLate && 'cut late, '}
            {material}, {step.count} {step.count === 1 ? 'piece' : 'pieces'} of{' '}
            <span className="frac">{size(step.takes.length, step.takes.width)}</span>; leaves{' '}
            {step.leaves.map(({ kind, length, width, count, clean }, at) => (
              <span key={at}>
                {at > 0 && ', '}
                {piecesWords({ kind, count })} <span className="frac">{size(length, width)}</span>
                {clean && (
                  <>
                    , clean <span className="frac">{size(clean.length, clean.width)}</span>
                  </>
                )}
              </span>
            ))}
          </p>
          {step.write.length > 0 && (
            <p className={styles.facts}>
              Write <strong>{step.write.join(' ')}</strong>
            </p>
          )}
          <PiecePicture sketch={step.sketch} label={`${step.takes.name} before the cut`} />
          {step.cautions.map((caution) => (
            <p key={caution} className={styles.caution}>
              <span aria-hidden="true">▲</span> {caution}
            </p>
          ))}
        </div>
      </div>
    </li>
  )
})
