import { searching } from '../store/searching'
import type { Layout } from '../store/state'
import { Button } from '../ui/Button'
import styles from './Sheets.module.css'
import { roundsWords } from './words'

/** How far the search for a better layout is, and a way to end it, or to take it up again. */
export function LookingBar({ layout: { isSettled, isStopped } }: { readonly layout: Layout }) {
  if (isStopped) {
    return (
      <span className={styles.looking}>
        <Button onClick={() => searching.getState().goOn()}>Look on</Button>
      </span>
    )
  }
  return isSettled ? null : <Underway />
}

function Underway() {
  const rounds = searching((state) => state.rounds)
  return (
    <span className={styles.looking}>
      {rounds > 0 && <span data-rounds={rounds}>{roundsWords(rounds)}</span>}
      <Button onClick={() => searching.getState().stop()}>Stop looking</Button>
    </span>
  )
}
