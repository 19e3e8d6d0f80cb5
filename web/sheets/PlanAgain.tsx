import { Button } from '../ui/Button'
import styles from './Bench.module.css'

interface PlanAgainProps {
  readonly isBusy: boolean
  /** Why there is nothing to plan by yet. */
  readonly why: string | null
  readonly onPlan: () => void
}

/** The button that asks what an entry would do, and why it cannot be pressed yet. */
export function PlanAgain({ isBusy, why, onPlan }: PlanAgainProps) {
  return (
    <p className={styles.plan}>
      <Button disabled={isBusy || why !== null} onClick={onPlan}>
        {isBusy ? 'Working it out…' : 'What would this do?'}
      </Button>
      <span>{why ?? 'It is told first, and done only on your yes.'}</span>
    </p>
  )
}
