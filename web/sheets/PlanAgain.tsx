import { Button } from '../ui/Button'
import styles from './Bench.module.css'

interface PlanAgainProps {
  readonly isBusy: boolean
  /** Why there is nothing to plan by yet. */
  readonly why: string | null
  readonly onPlan: () => void
}

/** The button that plans again, and why it cannot be pressed yet. */
export function PlanAgain({ isBusy, why, onPlan }: PlanAgainProps) {
  return (
    <p className={styles.plan}>
      <Button disabled={isBusy || why !== null} onClick={onPlan}>
        Plan again
      </Button>
      <span>{why ?? 'What is not cut yet stays as it was laid out, where it can.'}</span>
    </p>
  )
}
