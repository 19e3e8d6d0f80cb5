import { Fragment, type KeyboardEvent, useEffect, useMemo, useRef, useState } from 'react'
import { breakdownOf, counted, formatLength, type Step, settingsOf, stepsNeeding, usableOf } from '../../engine/index'
import { canTakeBack, goToBench, handNow, sheetsHaveCome, tick, useCutting } from '../store/cutting'
import { takeBack } from '../store/planAgain'
import type { Cutting } from '../store/state'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import { unbroken } from '../ui/unbroken'
import { AllCut } from './AllCut'
import styles from './Bench.module.css'
import { MishapForm } from './MishapForm'
import { Odds } from './Odds'
import { PauseCard } from './PauseCard'
import { PiecePicture } from './PiecePicture'
import { Sentence } from './Sentence'
import { useAwake } from './useAwake'
import { handWords, piecesWords, roughWords, TOOLS } from './words'

/** What is being cut, one step at a time, large enough to be read beside the saw. */
export function BenchView() {
  const cutting = useCutting()
  const isAtBench = useStore((state) => state.isAtBench)
  return cutting && isAtBench ? <Bench cutting={cutting} /> : null
}

function Bench({ cutting }: { readonly cutting: Cutting }) {
  const dialog = useRef<HTMLDialogElement>(null)
  const [isWrong, setWrong] = useState(false)
  const breakdown = useMemo(() => breakdownOf(cutting.input), [cutting.input])
  const { steps } = breakdown
  const before = cutting.stepsBefore ?? 0
  const done = useMemo(() => new Set(cutting.done), [cutting.done])
  const [at, setAt] = useState(() => nextOpen(steps, done, 0))
  useAwake()
  useEffect(() => {
    if (!dialog.current?.open) dialog.current?.showModal()
    dialog.current?.querySelector<HTMLElement>('[data-next]')?.focus()
  }, [])
  // A plan made anew begins at its first step; one that is taken up again where it was left.
  const answer = useRef(cutting.input.answer)
  if (answer.current !== cutting.input.answer) {
    answer.current = cutting.input.answer
    setAt(nextOpen(steps, done, 0))
  }
  const step = steps[at]

  /** The second tap of a double one is no other step. */
  function finishAt({ detail }: { readonly detail: number }) {
    if (detail < 2) finish()
  }

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
          {step ? `Step ${before + at + 1} of ${before + steps.length}` : 'The end'}{' '}
          <small>
            {before + done.size} of {before + steps.length} done
          </small>
        </p>
        <progress aria-label="Steps done" max={Math.max(1, before + steps.length)} value={before + done.size} />
        <Button onClick={() => dialog.current?.close()}>Leave the bench</Button>
      </header>
      <div className={styles.body}>
        {!isWrong && (at === 0 || canTakeBack(cutting)) && <Told cutting={cutting} />}
        {!isWrong && <Odds cutting={cutting} />}
        {isWrong ? (
          <MishapForm cutting={cutting} inHand={step} onDone={() => setWrong(false)} />
        ) : step?.kind === 'pause' ? (
          <PauseCard step={step} cutting={cutting} isDone={done.has(step.id)} />
        ) : step ? (
          <StepCard step={step} before={steps[at - 1]} cutting={cutting} isDone={done.has(step.id)} />
        ) : (
          <AllCut
            cutting={cutting}
            steps={before + steps.length}
            open={steps.filter(({ id }) => !done.has(id)).length}
          />
        )}
        {!isWrong && step && done.has(step.id) && <UndoneToo cutting={cutting} step={step.id} />}
        {!isWrong && (
          <p className={styles.rest}>
            {restWords(steps, done)}
            <Button onClick={() => setWrong(true)}>Something went wrong</Button>
          </p>
        )}
        {!isWrong && <AtHand cutting={cutting} />}
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
              <button type="button" data-next className={styles.done} onClick={finishAt}>
                Done
              </button>
            )
          )}
        </footer>
      )}
    </dialog>
  )
}

/** What would be undone with a step, where more than it is done. */
function UndoneToo({ cutting: { input, done }, step }: { readonly cutting: Cutting; readonly step: Step['id'] }) {
  const also = stepsNeeding(input, step).filter((id) => done.includes(id)).length
  if (also === 0) return null
  return (
    <p>
      If this is not done after all, neither {also === 1 ? 'is' : 'are'} {counted(also, 'step')} that followed from it.
    </p>
  )
}

function nextOpen(steps: readonly Step[], done: ReadonlySet<string>, from: number): number {
  const at = steps.findIndex(({ id }, index) => index >= from && !done.has(id))
  return at < 0 ? steps.length : at
}

/** What is left to do: steps, and how often something is set. What it is cut from stands beside it, as it lies there. */
export function restWords(steps: readonly Step[], done: ReadonlySet<string>): string {
  const isSet = settingsOf(steps)
  const open = steps.filter(({ id, kind }) => !done.has(id) && kind !== 'pause')
  if (open.length === 0) return 'No step is left.'
  const settings = steps.filter(({ id }, at) => isSet[at] && !done.has(id)).length
  return `${counted(open.length, 'step')} left, with ${counted(settings, 'setting')}.`
}

function Told({ cutting }: { readonly cutting: Cutting }) {
  const { told } = cutting
  const unitThen = useStore((state) => state.cutting?.input.display?.unit)
  const unit = cutting.input.display?.unit
  if (told.length === 0) return null
  return (
    <section className={styles.told} aria-label="What has changed">
      <h2>What has changed</h2>
      <ul>
        {told.map((line) => (
          <li key={line}>
            <Sentence words={line} />
          </li>
        ))}
      </ul>
      {unitThen !== unit && (
        <p>
          Told in {unitThen}, in which it was entered; the steps are in {unit} now.
        </p>
      )}
      {canTakeBack(cutting) && (
        <p>
          Nothing is cut since. <Button onClick={takeBack}>Take this entry back</Button>
        </p>
      )}
    </section>
  )
}

/** What lies in the shop now, each by the name that is written on it; folded, since it is long. */
function AtHand({ cutting }: { readonly cutting: Cutting }) {
  const { display = { unit: 'mm', step: 0.1 } as const, materials } = cutting.input
  const hand = useMemo(() => handNow(cutting), [cutting])
  const names = new Map<string, string>(Object.values(materials).map(({ id, name }) => [id, name]))
  if (hand.length === 0) return null
  const toBuy = hand.filter(({ isToBuy }) => isToBuy).length
  const offcuts = new Set(cutting.input.job.stock.filter(({ offcut }) => offcut).map(({ id }) => id))
  // An offcut from the rack is whole as it came, and no sheet.
  const kinds = hand.map((each) => ({ ...each, isWhole: each.isWhole && !offcuts.has(each.stock ?? '') }))
  return (
    <>
      {toBuy > 0 && (
        <p className={styles.caution}>
          <span aria-hidden="true">▲</span> To be bought: {counted(toBuy, 'sheet')} that this plan cuts and that{' '}
          {toBuy === 1 ? 'was' : 'were'} not in the first plan.{' '}
          <Button onClick={sheetsHaveCome}>{toBuy === 1 ? 'It is here now' : 'They are here now'}</Button>
        </p>
      )}
      <details className={styles.hand}>
        <summary>{handWords(kinds)}</summary>
        <ul>
          {hand.map(({ name, material, place, rough, isWhole, isToBuy, isToCut }) => (
            <li key={name}>
              <strong>{name}</strong>, {names.get(material) ?? material},{' '}
              <span className="frac">{roughWords(place, usableOf(place, rough), isWhole, display)}</span>
              {isToBuy ? ', to be bought' : isToCut ? '' : ', left over'}
            </li>
          ))}
        </ul>
      </details>
    </>
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
  // After a mishap the blade that is in stays in.
  const last = before?.kind === 'pause' ? undefined : (before?.blade ?? cutting.input.bladeIn)
  const isNewBlade = last !== step.blade
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
          {setting !== null && (step.isNewSetting ? ': set to this' : ': stands at this already, leave it')}
          {isDone && ', done'}
        </span>
      </p>
      <p className={styles.text}>{unbroken(step.text)}</p>
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
          Write{' '}
          <strong>
            {step.write.map((mark, at) => (
              <Fragment key={at}>
                <span>{mark}</span>{' '}
              </Fragment>
            ))}
          </strong>
        </p>
      )}
      <ul className={styles.leaves} aria-label="It leaves">
        {leaves.map(({ kind, name, length, width, count: pieces, clean }, at) => (
          <li key={at}>
            {piecesWords({ kind, count: pieces })} {kind === 'waste' ? '' : <Sentence words={name} />}{' '}
            <span className="frac">
              {say(length)} × {say(width)}
              {clean && `, clean ${say(clean.length)} × ${say(clean.width)}`}
            </span>
          </li>
        ))}
      </ul>
      {step.cautions.map((caution) => (
        <p key={caution} className={styles.caution}>
          <span aria-hidden="true">▲</span> <Sentence words={caution} />
        </p>
      ))}
    </article>
  )
}
