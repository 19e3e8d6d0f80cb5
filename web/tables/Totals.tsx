import { memo } from 'react'
import { type CutList, type Derived, type LengthDisplay, type MaterialId, weightUnit } from '../../engine/index'
import styles from './Tables.module.css'

interface TotalsProps {
  readonly cutList: CutList
  readonly materials: Derived['project']['materials']
  readonly material: MaterialId | 'all'
  readonly display: LengthDisplay
}

/** What areas and lengths of banding are told in: how many square metres it is, and how many metres. */
const LARGE = {
  mm: { area: { name: 'm²', m2: 1 }, run: { name: 'm', m: 1 } },
  in: { area: { name: 'ft²', m2: 0.3048 ** 2 }, run: { name: 'ft', m: 0.3048 } },
} as const

/** Parts, area, weight and banding of each material. */
export const Totals = memo(function Totals({ cutList, materials, material, display }: TotalsProps) {
  const totals = cutList.totals.filter((total) => material === 'all' || total.material === material)
  const weight = weightUnit(display)
  const { area, run } = LARGE[display.unit]
  return (
    <table className={styles.totals} aria-label="Totals by material">
      <thead>
        <tr>
          <th scope="col">Material</th>
          <th scope="col" className={styles.figure}>
            Parts
          </th>
          <th scope="col" className={styles.figure}>
            Area ({area.name})
          </th>
          <th scope="col" className={styles.figure}>
            Weight ({weight.name})
          </th>
          <th scope="col" className={styles.figure}>
            Banding ({run.name})
          </th>
        </tr>
      </thead>
      <tbody>
        {totals.map((total) => (
          <tr key={total.material}>
            <th scope="row">{materials[total.material]?.name ?? total.material}</th>
            <td className={styles.figure}>{total.parts}</td>
            <td className={styles.figure}>{(total.area / area.m2).toFixed(2)}</td>
            <td className={styles.figure}>{(total.weight / weight.kg).toFixed(1)}</td>
            <td className={styles.figure}>{(total.banding / run.m).toFixed(1)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
})
