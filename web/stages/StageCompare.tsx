import { useEffect, useState } from 'react'
import { breakdownOf, type Derived, type SheetAnswer, type SheetJob, takenBy } from '../../engine/index'
import { breakdownFor, inputOf } from '../store/cutting'
import { currentLayout, type Layout } from '../store/state'
import { useStore } from '../store/store'
import { hirePacker } from '../workers/hire'
import { packOnce } from '../workers/once'
import styles from './Panels.module.css'
import { type Load, stageWords, threeWords } from './stageWords'

/** Where other cut directions than three are chosen: what they cost or save in sheets and at the saw. */
export function StageCompare() {
  const derived = useStore((state) => state.derived)
  const isLive = useStore((state) => state.preview !== null)
  const layout = useStore(currentLayout)
  const isAsked = derived.project.shop.stages !== 3 && !isLive && layout?.isSettled && layout.answer.sheets.length > 0
  return isAsked ? <Compared derived={derived} layout={layout} /> : null
}

interface ComparedProps {
  readonly derived: Derived
  readonly layout: Layout
}

type Words = { readonly of: Layout; readonly text: string }

function Compared({ derived, layout }: ComparedProps) {
  const [words, setWords] = useState<Words | null>(null)
  const directions = threeWords(derived.project.shop.firstCut)
  useEffect(() => {
    // Sheets that are kept as they are may take more directions than three.
    const { locked: _, lockedAt: __, ...free } = layout.job
    const job = { ...free, stages: 3 as const }
    const packing = packOnce(job, hirePacker)
    let isWanted = true
    packing.answer.then(
      (three) => {
        if (!isWanted) return
        const chosen = loadOf(layout.job, layout.answer, breakdownFor(derived, layout))
        const text = isComparable(layout.answer, three)
          ? stageWords(chosen, loadOf(job, three, breakdownOf(inputOf(derived, job, three))), directions)
          : `By ${directions} not as many boards find a place, so there is nothing to compare.`
        setWords({ of: layout, text })
      },
      // It is only told; nothing is lost without it.
      () => {},
    )
    return () => {
      isWanted = false
      packing.stop()
    }
  }, [derived, layout, directions])
  return <p className={styles.note}>{words?.of === layout ? words.text : `Comparing with ${directions}…`}</p>
}

function loadOf(job: SheetJob, answer: SheetAnswer, { minutes, bladeChanges }: Omit<Load, 'sheets'>): Load {
  return { ...takenBy(job, answer), minutes, bladeChanges }
}

function isComparable(a: SheetAnswer, b: SheetAnswer): boolean {
  const left = ({ unplaced }: SheetAnswer) => unplaced.reduce((sum, { quantity }) => sum + quantity, 0)
  return left(a) === left(b)
}
