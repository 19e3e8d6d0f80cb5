import { unbroken } from '../ui/unbroken'
import styles from './Bench.module.css'

/** Words in which no line ends within a length or within the mark of a part, `B3-LS`. */
export function Sentence({ words }: { readonly words: string }) {
  return unbroken(words)
    .split(/([A-Z]+\d+-\w+)/)
    .map((piece, at) => (at % 2 === 0 ? piece : <MarkOf key={at} part={piece} />))
}

function MarkOf({ part }: { readonly part: string }) {
  return <span className={styles.whole}>{part}</span>
}
