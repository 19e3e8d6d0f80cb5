import { type KeyboardEvent, useEffect, useMemo, useRef, useState } from 'react'
import { type Breakdown, breakdownOf, formatLength, type Step } from '../../engine/index'
import { goToBench, tick } from '../store/cutting'
import type { Cutting } from '../store/state'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import styles from './Bench.module.css'
import { MishapForm } from './MishapForm'
import { PiecePicture } from './PiecePicture'
import { useAwake } from './useAwake'
import { KINDS, TOOLS } from './words'

/** What is being cut, one step at a time, large enough to be read beside the saw. */
export function BenchView() {
  const cutting = useStore((state) => state.cutting)
  const isAtBench = useStore((state) => state.isAtBench)
  return cutting && isAtBench ? <Bench cutting={cutting} /> : null
}

function Bench({ cutting }: { readonly cutting: Cutting }) {
  const dialog = useRef<HTMLDialogElement>(null)
  const [isWrong, setWrong] = useState(false)
  const breakdown = useMemo(() => breakdownOf(cutting.input), [cutting.input])
  const { steps } = breakdown
  const done = useMemo(() => new Set(cutting.done), [cutting.done])
  const [at, setAt] = useState(() => nextOpen(steps, done, 0))
  useAwake()
  useEffect(() => {
    if (!dialog.current?.open) dialog.current?.showModal()
    dialog.current?.querySelector<HTMLElement>('[data-next]')?.focus()
  }, [])
  // A plan made anew begins at its first step.
  const input = useRef(cutting.input)
  if (input.current !== cutting.input) {
    input.current = cutting.input
    setAt(0)
  }
  const step = steps[at]

  function finish() {
    if (!step) return
    tick(step.id, true)
    setAt(nextOpen(steps, new Set([...done, step.id]), at + 1))
  }

  function onKeyDown(event: KeyboardEvent) {
    if (isWrong || (event.target instanceof Element && event.target.closest('button, input, select'))) return
    if (event.key === 'ArrowLeft' && at > 0) setAt(at - 1)
    else if (event.key === 'ArrowRight' && at < steps.length) setAt(at + 1)
    else if (event.key === 'Enter') finish()
  }

  return (
    <dialog
      ref={dialog}
      className={styles.bench}
      aria-label="At the bench"
      onClose={() => goToBench(false)}
      onKeyDown={onKeyDown}
    >
      <header className={styles.head}>
        <p>
          {step ? `Step ${at + 1} of ${steps.length}` : 'All cut'} <small>{done.size} done</small>
        </p>
        <progress aria-label="Steps done" max={Math.max(1, steps.length)} value={done.size} />
        <Button onClick={() => dialog.current?.close()}>Leave the bench</Button>
      </header>
      <div className={styles.body}>
        {cutting.told.length > 0 && at === 0 && <Told told={cutting.told} />}
        {isWrong ? (
          <MishapForm cutting={cutting} onDone={() => setWrong(false)} />
        ) : step ? (
          <StepCard step={step} before={steps[at - 1]} cutting={cutting} isDone={done.has(step.id)} />
        ) : (
          <AllCut cutting={cutting} breakdown={breakdown} open={steps.filter(({ id }) => !done.has(id)).length} />
        )}
        {!isWrong && (
          <p className={styles.rest}>
            {restWords(steps, done)}
            <Button look="plain" onClick={() => setWrong(true)}>
              Something went wrong
            </Button>
          </p>
        )}
      </div>
      {!isWrong && (
        <footer className={styles.foot}>
          <button type="button" disabled={at === 0} onClick={() => setAt(at - 1)}>
            Back
          </button>
          {step && done.has(step.id) ? (
            <>
              <button type="button" onClick={() => tick(step.id, false)}>
                Not done after all
              </button>
              <button type="button" data-next className={styles.done} onClick={() => setAt(at + 1)}>
                Next
              </button>
            </>
          ) : (
            step && (
              <button type="button" data-next className={styles.done} onClick={finish}>
                Done
              </button>
            )
          )}
        </footer>
      )}
    </dialog>
  )
}

function nextOpen(steps: readonly Step[], done: ReadonlySet<string>, from: number): number {
  const at = steps.findIndex(({ id }, index) => index >= from && !done.has(id))
  return at < 0 ? steps.length : at
}

/** What is left to do, in steps, settings and sheets. */
export function restWords(steps: readonly Step[], done: ReadonlySet<string>): string {
  const open = steps.filter(({ id }) => !done.has(id))
  if (open.length === 0) return 'Nothing is left to cut.'
  const settings = new Set(open.flatMap(({ tool, setting }) => (setting === null ? [] : [`${tool} ${setting}`]))).size
  const sheets = new Set(open.flatMap((step) => step.sheets)).size
  return `${count(open.length, 'step')} left, with ${count(settings, 'setting')}, on ${count(sheets, 'sheet')}.`
}

function count(number: number, noun: string): string {
  return `${number} ${noun}${number === 1 ? '' : 's'}`
}

function Told({ told }: { readonly told: readonly string[] }) {
  return (
    <section className={styles.told} aria-label="What has changed">
      <h2>Planned anew</h2>
      <ul>
        {told.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  )
}

interface StepCardProps {
  readonly step: Step
  readonly before: Step | undefined
  readonly cutting: Cutting
  readonly isDone: boolean
}

function StepCard({ step, before, cutting, isDone }: StepCardProps) {
  const { display = { unit: 'mm', step: 0.1 } as const, materials } = cutting.input
  const say = (length: number) => formatLength(length, display)
  const { takes, setting, leaves } = step
  const material = Object.values(materials).find(({ id }) => id === step.material)?.name ?? step.material
  const isNewBlade = before?.blade !== step.blade
  const isNewSetting = before?.setting !== setting || before?.tool !== step.tool
  return (
    <article className={styles.card} data-step={step.id} data-done={isDone}>
      {isNewBlade && (
        <p className={styles.blade}>
          Put the {step.blade === 'rip' ? 'rip' : 'crosscut'} blade in, {step.teeth} teeth. Unplug the saw first.
        </p>
      )}
      <p className={styles.setting}>
        {setting === null ? (
          <b>{step.kind === 'trim' || step.kind === 'square' ? step.kind : 'to a line'}</b>
        ) : (
          <>
            <b className="frac">{say(setting)}</b> {display.unit}
          </>
        )}
        <span>
          {TOOLS[step.tool]}
          {setting !== null && (isNewSetting ? ', set anew' : ', as it is set')}
          {isDone && ', done'}
        </span>
      </p>
      <p className={styles.text}>{step.text}</p>
      <PiecePicture sketch={step.sketch} label={`${takes.name} before the cut`} />
      <p>
        {step.count > 1 && `${step.count} of `}
        <strong>{takes.name}</strong>, {material},{' '}
        <span className="frac">
          {say(takes.length)} × {say(takes.width)} {display.unit}
        </span>
      </p>
      {step.write.length > 0 && (
        <p className={styles.write}>
          Write <strong>{step.write.join('  ')}</strong>
        </p>
      )}
      <ul className={styles.leaves} aria-label="It leaves">
        {leaves.map(({ kind, name, length, width, count: pieces }, at) => (
          <li key={at}>
            {pieces} {KINDS[kind]} {kind === 'waste' ? '' : name}{' '}
            <span className="frac">
              {say(length)} × {say(width)}
            </span>
          </li>
        ))}
      </ul>
      {step.cautions.map((caution) => (
        <p key={caution} className={styles.caution}>
          <span aria-hidden="true">▲</span> {caution}
        </p>
      ))}
    </article>
  )
}

interface AllCutProps {
  readonly cutting: Cutting
  readonly breakdown: Breakdown
  readonly open: number
}

function AllCut({ cutting, breakdown, open }: AllCutProps) {
  const parts = cutting.cutBefore.length + cutting.input.cutList.rows.reduce((sum, { quantity }) => sum + quantity, 0)
  return (
    <article className={styles.card}>
      <p className={styles.setting}>
        <b>{open === 0 ? 'All cut' : `${open} left out`}</b>
      </p>
      <p className={styles.text}>
        {open === 0
          ? `${parts} parts are cut, in ${breakdown.steps.length} steps. Count them against the cut list before the blade comes out.`
          : 'Go back to the steps that are not done yet.'}
      </p>
    </article>
  )
}
