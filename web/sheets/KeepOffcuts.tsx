import { useMemo } from 'react'
import { counted } from '../../engine/index'
import { areOffcutsKept, keepOffcuts, offcutsOf } from '../store/offcuts'
import type { Cutting } from '../store/state'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import styles from './Sheets.module.css'
import { sizeWords } from './words'

/** When all is cut: what is left over, large enough to be kept, as offcuts on hand. */
export function KeepOffcuts({ cutting }: { readonly cutting: Cutting }) {
  const project = useStore((state) => state.shown)
  const left = useMemo(() => offcutsOf(cutting, project), [cutting, project])
  const pieces = left.reduce((sum, { quantity }) => sum + quantity, 0)
  if (pieces === 0) return null
  const { materials, display } = project
  if (areOffcutsKept(cutting, project)) {
    return (
      <p className={styles.words}>
        {counted(pieces, 'offcut is', 'offcuts are')} kept under Shop and boards, set aside.
      </p>
    )
  }
  return (
    <section aria-label="Offcuts">
      <p className={styles.words}>
        Large enough to keep. They are set aside under Shop and boards, so that no layout of this design counts on them;
        untick that there when they are to be cut from.
      </p>
      <ul className={styles.sawn}>
        {left.map(({ material, length, width, quantity, names }) => (
          <li key={names[0]}>
            {quantity} × {materials[material]?.name ?? material},{' '}
            <span className="frac">{sizeWords(length, width, display)}</span> clean ({names.join(', ')})
          </li>
        ))}
      </ul>
      <Button onClick={keepOffcuts}>Keep {pieces === 1 ? 'the offcut' : `the ${pieces} offcuts`}</Button>
    </section>
  )
}
