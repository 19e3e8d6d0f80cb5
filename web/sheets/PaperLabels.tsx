import { useMemo } from 'react'
import { breakdownOf, type Label, type LengthDisplay, labelsOf, type Material, rowName } from '../../engine/index'
import { breakdownFor, inputOf, useCutting } from '../store/cutting'
import { currentLayout } from '../store/state'
import { useStore } from '../store/store'
import { bandWords } from '../tables/bandWords'
import styles from './PaperLabels.module.css'
import { sizeWords } from './words'

/** A label for every part of the plan, to be cut apart: on paper alone, in the order in which the saw frees them. */
export function PaperLabels() {
  const cutting = useCutting()
  const layout = useStore(currentLayout)
  const derived = useStore((state) => state.derived)
  const labels = useMemo(() => {
    if (cutting) return labelsOf(breakdownOf(cutting.input), cutting.input)
    return layout ? labelsOf(breakdownFor(derived, layout), inputOf(derived, layout.job, layout.answer)) : []
  }, [cutting, layout, derived])
  const { materials, display } = derived.project
  const before = cutting?.stepsBefore ?? 0
  return (
    <ul className={styles.labels} aria-label="Labels">
      {labels.map((label) => (
        <PartLabel
          key={label.part}
          {...{ label, before, display }}
          called={derived.partOf.get(label.part)?.name ?? label.row.name}
          material={materials[label.row.material]}
        />
      ))}
    </ul>
  )
}

interface PartLabelProps {
  readonly label: Label
  /** How many steps of earlier plans are done: the numbers go on from there. */
  readonly before: number
  /** What the part is called in its cabinet. */
  readonly called: string
  readonly display: LengthDisplay
  readonly material: Material | undefined
}

function PartLabel({ label: { mark, row, step }, before, called, display, material }: PartLabelProps) {
  const bands = bandWords(row.bandedEdges) || (row.insideBand > 0 ? 'inside' : '')
  return (
    <li>
      <strong>{mark}</strong>
      <span className={styles.step}>step {before + step}</span>
      <span className={styles.name}>{rowName({ ...row, name: called })}</span>
      <span className={`frac ${styles.size}`}>{sizeWords(row.length, row.width, display)}</span>
      <span className={styles.name}>
        {material?.name ?? row.material}
        {bands && `, banded: ${bands}`}
      </span>
      {row.bank && (
        <span className={styles.name}>
          grain, place {row.bank.place}: {row.bank.id}
        </span>
      )}
    </li>
  )
}
