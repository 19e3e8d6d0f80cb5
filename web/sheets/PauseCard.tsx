import type { Step } from '../../engine/index'
import type { Cutting } from '../store/state'
import styles from './Bench.module.css'
import { MeasureForm } from './MeasureForm'

interface PauseCardProps {
  readonly step: Step
  readonly cutting: Cutting
  readonly isDone: boolean
}

/** The carcasses are built and measured before the late parts are cut. */
export function PauseCard({ step, cutting, isDone }: PauseCardProps) {
  return (
    <article className={styles.card} data-step={step.id} data-done={isDone}>
      <p className={styles.setting}>
        <b>Build</b>
        <span>the saw rests{isDone && ', done'}</span>
      </p>
      <p className={styles.text}>{step.text}</p>
      {step.cautions.map((caution) => (
        <p key={caution} className={styles.caution}>
          <span aria-hidden="true">▲</span> {caution}
        </p>
      ))}
      <MeasureForm cutting={cutting} />
    </article>
  )
}
