import type { CutRow } from '../../engine/index'
import { bandWords } from './bandWords'
import styles from './Tables.module.css'

/** Which edges are banded, as a board seen from its face: long edges at the foot and the top, ends left and right. */
export function Bands({ row }: { readonly row: Pick<CutRow, 'bandedEdges' | 'insideBand'> }) {
  const { long, ends } = row.bandedEdges
  if (long + ends === 0 && row.insideBand > 0) return <span title="banded where its corner is sawn out">inside</span>
  if (long + ends === 0) return <span className={styles.faint}>none</span>
  const words = bandWords(row.bandedEdges)
  return (
    <svg width="22" height="15" viewBox="0 0 22 15" role="img" aria-label={`banded: ${words}`} className={styles.bands}>
      <title>{`banded: ${words}`}</title>
      <rect x="1.5" y="1.5" width="19" height="12" />
      {long > 0 && <path d="M1 13H21" />}
      {long > 1 && <path d="M1 2H21" />}
      {ends > 0 && <path d="M2 1V14" />}
      {ends > 1 && <path d="M20 1V14" />}
    </svg>
  )
}
