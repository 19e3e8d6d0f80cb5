import { memo } from 'react'
import type { CutList, Derived, MaterialId } from '../../engine/index'
import styles from './Tables.module.css'

interface TotalsProps {
  readonly cutList: CutList
  readonly materials: Derived['project']['materials']
  readonly material: MaterialId | 'all'
}

/** Parts, area, weight and banding of each material. */
export const Totals = memo(function Totals({ cutList, materials, material }: TotalsProps) {
  const totals = cutList.totals.filter((total) => material === 'all' || total.material === material)
  return (
    <table className={styles.totals} aria-label="Totals by material">
      <thead>
        <tr>
          <th scope="col">Material</th>
          <th scope="col" className={styles.figure}>
            Parts
          </th>
          <th scope="col" className={styles.figure}>
            Area (m²)
          </th>
          <th scope="col" className={styles.figure}>
            Weight (kg)
          </th>
          <th scope="col" className={styles.figure}>
            Banding (m)
          </th>
        </tr>
      </thead>
      <tbody>
        {totals.map((total) => (
          <tr key={total.material}>
            <th scope="row">{materials[total.material]?.name ?? total.material}</th>
            <td className={styles.figure}>{total.parts}</td>
            <td className={styles.figure}>{total.area.toFixed(2)}</td>
            <td className={styles.figure}>{total.weight.toFixed(1)}</td>
            <td className={styles.figure}>{total.banding.toFixed(1)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
})
