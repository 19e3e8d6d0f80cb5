import { useMemo } from 'react'
import {
  buyList,
  costOfLines,
  type Derived,
  formatLength,
  inOrderOf,
  onHandList,
  type SheetJob,
  type TakenLine,
} from '../../engine/index'
import type { Layout } from '../store/state'
import styles from './Sheets.module.css'

/** What to buy, and what to take from what is on hand, each with its own sum. */
export function BuyTable({ layout, derived }: { readonly layout: Layout; readonly derived: Derived }) {
  const { materials } = derived.project
  const bought = useMemo(() => inOrderOf(materials, buyList(layout.job, layout.answer)), [layout, materials])
  const taken = useMemo(() => inOrderOf(materials, onHandList(layout.job, layout.answer)), [layout, materials])
  return (
    <>
      <Lines
        title="To buy"
        label="What to buy"
        lines={bought}
        sum={bought.length > 0 ? 'To pay' : 'Nothing to buy'}
        derived={derived}
      />
      {taken.length > 0 && (
        <Lines title="From what is on hand" label="What is on hand" lines={taken} sum="Worth" derived={derived} />
      )}
      {taken.some((line) => mayBeDearer(line, layout.job)) && (
        <p className={styles.note}>
          Sheets on hand count at their price when layouts are compared. To use them up before any is bought, enter 0 as
          the price of each under Shop and boards, on the Cut page.
        </p>
      )}
      {bought.length > 0 && (
        <p className={styles.note}>
          Of sheets that are bought as they are needed none has to be left aside. To leave out a spoiled one that is
          there, enter the number on hand under Shop and boards, on the Cut page.
        </p>
      )}
    </>
  )
}

/** Sheets with a price that lie there, of a board that is bought in another size too. */
function mayBeDearer({ cost, isOffcut, stock: { material } }: TakenLine, { stock }: SheetJob): boolean {
  return cost > 0 && !isOffcut && stock.some((other) => isToBuy(other) && other.material === material)
}

function isToBuy({ quantity, offcut, excluded }: SheetJob['stock'][number]): boolean {
  return quantity === undefined && !offcut && !excluded
}

interface LinesProps {
  readonly title: string
  readonly label: string
  readonly lines: readonly TakenLine[]
  readonly sum: string
  readonly derived: Derived
}

function Lines({ title, label, lines, sum, derived }: LinesProps) {
  const { display, shop, materials } = derived.project
  return (
    <table className={styles.buy} aria-label={label}>
      <thead>
        <tr>
          <th scope="col">{title}</th>
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
            {sum === 'Worth' ? 'Worth' : 'Cost'} ({shop.currency})
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
            {sum}
          </th>
          <td className={styles.figure}>{costOfLines(lines).toFixed(2)}</td>
        </tr>
      </tfoot>
    </table>
  )
}
