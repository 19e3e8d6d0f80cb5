import { useEffect, useMemo, useState } from 'react'
import { counted } from '../../engine/index'
import { CuttingSheets } from '../sheets/CuttingSheets'
import { PaperLabels } from '../sheets/PaperLabels'
import { SheetsView } from '../sheets/SheetsView'
import { CuttingSteps, StepsView } from '../sheets/StepsView'
import { doneOf, goToBench, stopCutting, useCutting } from '../store/cutting'
import { currentLayout } from '../store/state'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import { MaterialRows } from './MaterialRows'
import panels from './Panels.module.css'
import { ShopRows } from './ShopRows'
import styles from './Stages.module.css'
import { StartCutting } from './StartCutting'

/** Sheets to buy, the cuts in their order, and the shop they are made for. */
export function CutStage() {
  const [isForLabels, setForLabels] = useState(false)
  // The labels are on the page when it is printed, and off it when that is over, however it ends.
  useEffect(() => {
    if (!isForLabels) return
    const isOver = () => setForLabels(false)
    window.addEventListener('afterprint', isOver)
    window.print()
    return () => window.removeEventListener('afterprint', isOver)
  }, [isForLabels])
  return (
    <div className={styles.cutPage} data-paper={isForLabels ? 'labels' : undefined}>
      <CutTools onLabels={() => setForLabels(true)} />
      <CutParts />
      <Cut />
      {isForLabels && <PaperLabels />}
    </div>
  )
}

/** Where the parts of the page lie one below the other: from one to the next without passing hundreds of steps. */
function CutParts() {
  return (
    <nav className={styles.cutParts} aria-label="Parts of this page">
      {['Sheets', 'Steps', 'Shop and boards'].map((name) => (
        <Button
          key={name}
          look="plain"
          onClick={() => document.querySelector(`section[aria-label="${name}"]`)?.scrollIntoView()}
        >
          {name}
        </Button>
      ))}
    </nav>
  )
}

function Cut() {
  const cutting = useCutting()
  return (
    <div className={styles.cut}>
      <section className={styles.filled} aria-label="Sheets">
        <h2>{cutting ? 'Sheets of what is being cut' : 'Sheets'}</h2>
        {cutting ? <CuttingSheets cutting={cutting} /> : <SheetsView />}
      </section>
      <section className={styles.filled} aria-label="Steps">
        <h2>{cutting ? 'Steps of what is being cut' : 'Steps'}</h2>
        {cutting ? <CuttingSteps cutting={cutting} /> : <StepsView />}
      </section>
      <section aria-label="Shop and boards">
        <h2>Shop and boards</h2>
        <div className={panels.panel}>
          <ShopRows />
          <MaterialRows />
        </div>
      </section>
    </div>
  )
}

/** From the plan to the saw, and back to it on another day. */
function CutTools({ onLabels }: { readonly onLabels: () => void }) {
  const cutting = useStore((state) => state.cutting)
  const isReady = useStore((state) => currentLayout(state)?.isSettled && state.derived.cutList.rows.length > 0)
  const [isSure, setSure] = useState(false)
  const far = useMemo(() => cutting && doneOf(cutting), [cutting])
  return (
    <div className={styles.cutTools}>
      {cutting ? (
        <>
          <Button onClick={() => goToBench(true)}>
            {far!.steps === far!.of
              ? `All is cut: look at the ${counted(far!.of, 'step')} again`
              : `Go on cutting (${far!.steps} of ${far!.of} steps done)`}
          </Button>
          <Button look="plain" onClick={() => (isSure ? stopCutting() : setSure(true))} onBlur={() => setSure(false)}>
            {isSure ? 'Forget what is done, and plan from the design again' : 'Put this cutting away'}
          </Button>
        </>
      ) : (
        <StartCutting isReady={isReady === true} />
      )}
      <Button look="plain" onClick={() => window.print()}>
        Print sheets and steps
      </Button>
      <Button look="plain" disabled={!cutting && !isReady} onClick={onLabels}>
        Print labels
      </Button>
    </div>
  )
}
