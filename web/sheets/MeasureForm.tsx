import { useMemo } from 'react'
import { measuredPlan } from '../store/cutting'
import type { Cutting } from '../store/state'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import styles from './Bench.module.css'
import { OpeningRows } from './OpeningRows'
import openings from './Openings.module.css'
import { AskingRefused, ProposedPlan, useAsking } from './ProposedPlan'

interface MeasureFormProps {
  readonly cutting: Cutting
  readonly onDone?: () => void
}

/** The openings of all cabinets, and what becomes of the plan by what was measured: told first, and done on a yes. */
export function MeasureForm({ cutting, onDone }: MeasureFormProps) {
  const derived = useStore((state) => state.derived)
  const display = useStore((state) => state.shown.display)
  const plan = useMemo(() => measuredPlan(cutting, derived), [cutting, derived])
  const asking = useAsking(cutting, onDone)
  const built = derived.cabinets.filter((one) => one.openings.length > 0)
  if (asking.proposed) return <ProposedPlan asking={asking} />

  return (
    <>
      <div className={openings.cabinets}>
        {built.map((one) => (
          <details key={one.cabinet.id} open={built.length <= FEW}>
            <summary>
              {one.mark}
              {one.openings.some(({ measured }) => measured) && ', measured'}
            </summary>
            <OpeningRows built={one} display={display} />
          </details>
        ))}
      </div>
      <section aria-label="What would change" aria-live="polite">
        {plan.ok && plan.value && (
          <ul className={openings.changes}>
            {plan.value.told.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        )}
        <p className={styles.plan}>
          <Button
            disabled={asking.isBusy || !plan.ok || !plan.value}
            onClick={() => plan.ok && plan.value && asking.ask(plan.value.mishap)}
          >
            Plan the rest by what was measured
          </Button>
          {plan.ok && !plan.value && <span>Nothing that is measured changes what is left to cut.</span>}
        </p>
        <AskingRefused why={asking.why ?? (plan.ok ? null : plan.message)} />
      </section>
    </>
  )
}

/** As many cabinets as are measured without unfolding them. */
const FEW = 3
