import { useState } from 'react'
import { type CutRow, counted, type SheetAnswer } from '../../engine/index'
import { startCutting } from '../store/cutting'
import { currentLayout } from '../store/state'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import styles from './Stages.module.css'

/** Parts that lie on no sheet are told, and asked about, before the others are cut. */
export function StartCutting({ isReady }: { readonly isReady: boolean }) {
  const unplaced = useStore((state) => currentLayout(state)?.answer.unplaced)
  const rows = useStore((state) => state.derived.cutList.rows)
  const [isAsked, setAsked] = useState(false)
  const left = unplaced ?? []
  const count = left.reduce((sum, { quantity }) => sum + quantity, 0)
  if (!isReady || count === 0) {
    return (
      <Button disabled={!isReady} onClick={startCutting}>
        Start cutting
      </Button>
    )
  }
  if (!isAsked) return <Button onClick={() => setAsked(true)}>Start cutting</Button>
  return (
    <span className={styles.unplaced} role="alert">
      <UnplacedWords left={left} rows={rows} />
      <span>
        <Button onClick={startCutting}>Cut the others all the same</Button>
        <Button look="plain" onClick={() => setAsked(false)}>
          Not yet
        </Button>
      </span>
    </span>
  )
}

interface UnplacedProps {
  readonly left: SheetAnswer['unplaced']
  readonly rows: readonly CutRow[]
}

export function UnplacedWords({ left, rows }: UnplacedProps) {
  const mark = new Map<string, string>(rows.map((row) => [row.key, `${row.mark} ${row.name}`]))
  const count = left.reduce((sum, { quantity }) => sum + quantity, 0)
  return (
    <>
      <strong>{`${counted(count, 'part')} ${count === 1 ? 'lies' : 'lie'} on no sheet and would not be cut:`}</strong>
      {left.map(({ part, quantity, reason }) => (
        <span key={part}>{`${quantity} of ${mark.get(part) ?? part}: ${reason}.`}</span>
      ))}
    </>
  )
}
