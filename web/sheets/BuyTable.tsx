import { useMemo } from 'react'
import { buyList, type Derived, formatLength } from '../../engine/index'
import type { Layout } from '../store/state'
import styles from './Sheets.module.css'

/** What to buy and what to take from the rack. */
export function BuyTable({ layout, derived }: { readonly layout: Layout; readonly derived: Derived }) {
  const lines = useMemo(() => buyList(layout.job, layout.answer), [layout])
  const { display, shop, materials } = derived.project
  const total = lines.reduce((sum, { cost }) => sum + cost, 0)
  const isEndless = lines.some(({ stock }) => stock.quantity === undefined)
  return (
    <>
      <table className={styles.buy} aria-label="What to buy">
        <thead>
          <tr>
            <th scope="col">To buy</th>
            <th scope="col" className={styles.figure}>
              Length ({display.unit})
            </th>
            <th scope="col" className={styles.figure}>
              Width ({display.unit})
            </th>
            <th scope="col" className={styles.figure}>
              Sheets
            </th>
            <th scope="col" className={styles.figure}>
              Each ({shop.currency})
            </th>
            <th scope="col" className={styles.figure}>
              Cost ({shop.currency})
            </th>
          </tr>
        </thead>
        <tbody>
          {lines.map(({ stock, sheets, price, cost, isOffcut }) => (
            <tr key={stock.id}>
              <th scope="row">
                {Object.values(materials).find(({ id }) => id === stock.material)?.name ?? stock.material}
                {isOffcut && ', offcut from the rack'}
              </th>
              <td className={`frac ${styles.figure}`}>{formatLength(stock.length, display)}</td>
              <td className={`frac ${styles.figure}`}>{formatLength(stock.width, display)}</td>
              <td className={styles.figure}>{sheets}</td>
              <td className={styles.figure}>{price.toFixed(2)}</td>
              <td className={styles.figure}>{cost.toFixed(2)}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row" colSpan={5}>
              All sheets
            </th>
            <td className={styles.figure}>{total.toFixed(2)}</td>
          </tr>
        </tfoot>
      </table>
      {isEndless && (
        <p className={styles.note}>
          Of sheets that are bought as they are needed none has to be left aside. To leave out a spoiled one that is
          there, enter the number on hand under Shop and boards, on the Cut page.
        </p>
      )}
    </>
  )
}
