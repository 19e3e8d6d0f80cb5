import { useDeferredValue, useMemo } from 'react'
import { boughtFor, type DerivedCabinet, formatLength, type HardwareTotal, hardwareList } from '../../engine/index'
import { chosenCabinets } from '../store/selection'
import { useStore } from '../store/store'
import { useFollowing } from '../store/turns'
import { markStretches } from './changes'
import styles from './Tables.module.css'

/** What is bought in pieces, counted from fronts, drawers, shelves and floors; which make it is stays the maker's choice. */
export function HardwareTable() {
  const { cabinets, runs, project } = useDeferredValue(useFollowing('lists', (state) => state.derived))
  const selection = useFollowing('lists', (state) => state.selection)
  const actions = useStore((state) => state.actions)
  const list = useMemo(() => hardwareList([...cabinets, ...boughtFor(runs, project)]), [cabinets, runs, project])
  if (list.length === 0) {
    return (
      <div className={styles.empty}>
        <strong>Nothing asks for hardware yet.</strong>
        <p>Give a cabinet doors, drawers, adjustable shelves or legs, and what to buy for them is counted here.</p>
      </div>
    )
  }
  const { display } = project
  return (
    <div className={styles.table}>
      <table aria-label="Hardware">
        <thead>
          <tr>
            <th scope="col">Piece</th>
            <th scope="col" className={styles.figure}>
              Length ({display.unit})
            </th>
            <th scope="col" className={styles.figure}>
              Qty
            </th>
            <th scope="col">Cabinets</th>
            <th scope="col">
              <span className={styles.unseen}>Show them</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {list.map((row) => {
            const ids = cabinetsOf(row, cabinets)
            const chosen = chosenCabinets(selection)
            const areChosen = ids.length === chosen.length && ids.every((id) => chosen.includes(id))
            return (
              <tr key={`${row.name} ${row.length}`} className={areChosen ? styles.chosen : undefined}>
                <th scope="row" className={styles.mark}>
                  {row.name}
                </th>
                <td className={styles.figure}>
                  <span className="frac">{row.length === null ? '' : formatLength(row.length, display)}</span>
                </td>
                <td className={styles.figure}>{row.quantity}</td>
                <td className={styles.wide}>{markStretches(row.cabinets)}</td>
                <td>
                  <button
                    type="button"
                    className={styles.tool}
                    aria-pressed={areChosen}
                    aria-label={`Show the cabinets with ${row.name}`}
                    onClick={() => actions.select({ kind: 'cabinets', ids })}
                  >
                    Show
                  </button>
                </td>
              </tr>
            )
          })}
        </tbody>
      </table>
    </div>
  )
}

function cabinetsOf({ cabinets: marks }: HardwareTotal, cabinets: readonly DerivedCabinet[]) {
  return cabinets.filter(({ mark }) => marks.includes(mark)).map(({ cabinet }) => cabinet.id)
}
