import { Button } from '../ui/Button'
import styles from './Bench.module.css'

interface PlanAnewProps {
  readonly isBusy: boolean
  /** Why there is nothing to plan by yet. */
  readonly why: string | null
  readonly onPlan: () => void
}

/** The button that plans the rest anew, and why it cannot be pressed yet. */
export function PlanAnew({ isBusy, why, onPlan }: PlanAnewProps) {
  return (
    <p className={styles.plan}>
      <Button disabled={isBusy || why !== null} onClick={onPlan}>
        Plan the rest anew
      </Button>
      {why !== null && <span>{why}</span>}
    </p>
  )
}
