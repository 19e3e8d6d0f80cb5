import { useDeferredValue } from 'react'
import type { DerivedCabinet } from '../../engine/index'
import { useStore } from '../store/store'
import styles from './Tables.module.css'

/** What asks for hardware, cabinet by cabinet. It counts fronts and shelves; which hinge or slide is the maker's choice. */
export function HardwareTable() {
  const derived = useDeferredValue(useStore((state) => state.derived))
  const selection = useStore((state) => state.selection)
  const actions = useStore((state) => state.actions)
  const lines = derived.cabinets.map(needsOf).filter(({ doors, drawers, shelves }) => doors + drawers + shelves > 0)
  if (lines.length === 0) {
    return (
      <div className={styles.empty}>
        <strong>Nothing asks for hardware yet.</strong>
        <p>
          Give a cabinet doors, drawers or adjustable shelves, and they are counted here for hinges, slides and pins.
        </p>
      </div>
    )
  }
  return (
    <div className={styles.table}>
      <table aria-label="What asks for hardware">
        <thead>
          <tr>
            <th scope="col">Cabinet</th>
            <th scope="col" className={styles.figure}>
              Doors to hinge
            </th>
            <th scope="col" className={styles.figure}>
              Drawers to slide
            </th>
            <th scope="col" className={styles.figure}>
              Shelves on pins
            </th>
          </tr>
        </thead>
        <tbody>
          {lines.map(({ built, doors, drawers, shelves }) => {
            const { id } = built.cabinet
            const isChosen = selection.kind === 'cabinets' && selection.ids.includes(id)
            return (
              <tr key={id} className={isChosen ? styles.chosen : undefined}>
                <th scope="row" className={styles.mark}>
                  <button
                    type="button"
                    className={styles.part}
                    aria-pressed={isChosen}
                    onClick={() => actions.select({ kind: 'cabinets', ids: [id] })}
                  >
                    {built.mark}
                  </button>
                </th>
                <td className={styles.figure}>{doors}</td>
                <td className={styles.figure}>{drawers}</td>
                <td className={styles.figure}>{shelves}</td>
              </tr>
            )
          })}
        </tbody>
      </table>
    </div>
  )
}

function needsOf(built: DerivedCabinet) {
  return {
    built,
    doors: built.fronts.filter(({ kind }) => kind === 'door').length,
    drawers: built.fronts.filter(({ kind }) => kind === 'drawer').length,
    shelves: built.parts.filter(({ role }) => role === 'adjustableShelf').length,
  }
}
