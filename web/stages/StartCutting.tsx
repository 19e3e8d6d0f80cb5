import { useEffect, useMemo, useRef, useState } from 'react'
import { leftOut } from '../../engine/index'
import { leftCount, onNoSheetWords } from '../sheets/words'
import { startCutting } from '../store/cutting'
import { currentLayout } from '../store/state'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import styles from './Stages.module.css'

/** Boards that are on no sheet are told, and asked about, before the others are cut. */
export function StartCutting({ isReady }: { readonly isReady: boolean }) {
  const layout = useStore(currentLayout)
  const [isAsked, setAsked] = useState(false)
  const count = layout ? leftCount(layout.answer) : 0
  const question = useRef<HTMLDivElement>(null)
  // On a phone the sheets below may be drawn anew meanwhile, and move it out of sight.
  useEffect(() => {
    if (isAsked) question.current?.scrollIntoView({ block: 'nearest' })
  }, [isAsked, layout])
  if (!isReady || count === 0) {
    return (
      <Button disabled={!isReady} onClick={startCutting}>
        Start cutting
      </Button>
    )
  }
  if (!isAsked) return <Button onClick={() => setAsked(true)}>Start cutting</Button>
  return (
    <div ref={question} className={styles.unplaced} role="alert">
      <Unplaced count={count} />
      <span>
        <Button onClick={startCutting}>Cut the others all the same</Button>
        <Button look="plain" onClick={() => setAsked(false)}>
          Not yet
        </Button>
      </span>
    </div>
  )
}

function Unplaced({ count }: { readonly count: number }) {
  const layout = useStore(currentLayout)
  const { project, cutList } = useStore((state) => state.derived)
  const lines = useMemo(() => {
    if (!layout) return []
    const { job, answer } = layout
    return leftOut({ project, rows: cutList.rows, job }, answer).map(({ message }) => message)
  }, [layout, project, cutList])
  return <UnplacedWords count={count} lines={lines} />
}

interface UnplacedProps {
  readonly count: number
  /** Which, and why. */
  readonly lines: readonly string[]
}

/** As many reasons as are read at a glance; more of them are folded. */
const FEW = 2

export function UnplacedWords({ count, lines }: UnplacedProps) {
  return (
    <>
      <strong>{`${onNoSheetWords(count)} and would not be cut.`}</strong>
      <details open={lines.length <= FEW}>
        <summary>Which, and why</summary>
        <ul>
          {lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </details>
    </>
  )
}
