import { useEffect } from 'react'
import { applyProposal, leaveProposal, proposalOf } from '../store/proposing'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import styles from './MethodChange.module.css'

/**
 * What a change of a build method would do, before it is done. It stays while the wall is looked at or a cabinet is
 * picked, and goes when it is answered or when another change is made.
 */
export function MethodChange() {
  const proposal = useStore(proposalOf)
  const isWaiting = proposal !== null
  useEffect(() => {
    if (!isWaiting) return
    const onKey = (event: KeyboardEvent) => {
      if (event.key === 'Escape') leaveProposal()
    }
    addEventListener('keydown', onKey)
    return () => removeEventListener('keydown', onKey)
  }, [isWaiting])
  return (
    <section className={styles.place} aria-label="Change of the build method">
      <div className={styles.change} data-waiting={isWaiting || undefined}>
        <span role="status">{proposal?.words}</span>
        {proposal && (
          <span className={styles.answers}>
            <Button className={styles.primary} onClick={applyProposal}>
              Apply
            </Button>
            <Button onClick={leaveProposal}>Leave it</Button>
          </span>
        )}
      </div>
    </section>
  )
}
