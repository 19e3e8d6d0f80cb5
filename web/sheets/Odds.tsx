import { useMemo } from 'react'
import { oddsOf } from '../store/cutting'
import type { Cutting } from '../store/state'
import { useFollowing } from '../store/turns'
import styles from './Sheets.module.css'

/** Where the design has gone on and what is being cut has not, so that neither is taken for the other. */
export function Odds({ cutting }: { readonly cutting: Cutting }) {
  const derived = useFollowing('sheets', (state) => state.derived)
  const odds = useMemo(() => oddsOf(cutting, derived), [cutting, derived])
  if (odds.length === 0) return null
  return (
    <ul className={styles.outgrown} aria-label="Where the design differs from what is being cut">
      {odds.map((line) => (
        <li key={line}>
          <span aria-hidden="true">▲</span> {line}
        </li>
      ))}
    </ul>
  )
}
