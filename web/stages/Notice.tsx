import { useEffect } from 'react'
import { takeOver } from '../store/keeping'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import styles from './Notice.module.css'

/** What is good to know goes by itself; what stopped something stays longer. */
const KNOW_MS = 6000
const STOP_MS = 12_000

/** One short message about what just happened, and the one that stays while another tab has the project. */
export function Notice() {
  const notice = useStore((state) => state.notice)
  const isElsewhere = useStore((state) => state.isElsewhere)
  const actions = useStore((state) => state.actions)
  useEffect(() => {
    if (!notice) return
    const timer = setTimeout(actions.hush, notice.tone === 'stop' ? STOP_MS : KNOW_MS)
    return () => clearTimeout(timer)
  }, [notice, actions])
  return (
    <>
      {isElsewhere && (
        <div className={styles.elsewhere} role="alert">
          This project is open in another tab. Here it can be looked at; nothing is changed or saved.
          <Button onClick={() => void takeOver()}>Take over</Button>
        </div>
      )}
      <div className={styles.place} role="status">
        {notice && (
          <div className={styles.notice} data-tone={notice.tone}>
            <span aria-hidden="true">{notice.tone === 'stop' ? '✕' : '●'}</span>
            <span>{notice.text}</span>
            <Button look="plain" onClick={actions.hush} aria-label="Dismiss this message">
              OK
            </Button>
          </div>
        )}
      </div>
    </>
  )
}
