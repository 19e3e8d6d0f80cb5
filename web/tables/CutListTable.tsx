import { Fragment, useCallback, useDeferredValue, useMemo, useState } from 'react'
import type { CutRow, Derived, MaterialId, PartId, RowKey } from '../../engine/index'
import { currentLayout } from '../store/state'
import { useStore } from '../store/store'
import { CutRowLine, PartsLine } from './CutRowLine'
import { changeOf } from './changes'
import { chosenParts, isRowChosen, selectionOf } from './chosen'
import { placedParts, sheetsOfRows } from './places'
import styles from './Tables.module.css'

/** The cut list of what is shown, live while something is dragged: a frame may come before the list has caught up. */
export function CutListTable() {
  const derived = useDeferredValue(useStore((state) => state.derived))
  const before = useDeferredValue(useStore((state) => state.before))
  const selection = useStore((state) => state.selection)
  const layout = useStore((state) => state.layout)
  const actions = useStore((state) => state.actions)
  const [material, setMaterial] = useState<MaterialId | 'all'>('all')
  const [open, setOpen] = useState<ReadonlySet<RowKey>>(new Set())

  const sheets = useMemo(() => {
    const current = currentLayout({ layout, derived })
    return current ? sheetsOfRows(placedParts(derived.cutList, current.answer)) : null
  }, [layout, derived])
  const chosen = useMemo(() => chosenParts(selection, derived), [selection, derived])
  const changes = useMemo(
    () => new Map(derived.cutList.rows.map((row) => [row.key, changeOf(row, before)])),
    [derived, before],
  )

  const choose = useCallback((row: CutRow) => actions.select({ kind: 'row', row: row.key }), [actions])
  const choosePart = useCallback((part: PartId) => actions.select(selectionOf(part, derived)), [actions, derived])
  const toggle = useCallback((row: CutRow) => setOpen((was) => toggled(was, row.key)), [])

  const { display, materials } = derived.project
  const used = derived.cutList.totals.map((total) => total.material)
  const shownMaterial = material !== 'all' && used.includes(material) ? material : 'all'
  const rows = derived.cutList.rows.filter((row) => shownMaterial === 'all' || row.material === shownMaterial)
  if (derived.cutList.rows.length === 0) return <NoBoards />
  const tabStop = (rows.find((row) => isRowChosen(row, selection, chosen)) ?? rows[0])?.key
  return (
    <div className={styles.table}>
      <label className={styles.filter}>
        Material
        <select
          value={shownMaterial}
          onChange={(event) => setMaterial(event.currentTarget.value as MaterialId | 'all')}
        >
          <option value="all">all</option>
          {used.map((id) => (
            <option key={id} value={id}>
              {materials[id]?.name ?? id}
            </option>
          ))}
        </select>
      </label>
      {/* biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: its rows are selected, which only a grid can say */}
      <table role="grid" aria-label="Cut list">
        <Head unit={display.unit} />
        <tbody>
          {rows.map((row) => (
            <Fragment key={row.key}>
              <CutRowLine
                row={row}
                display={display}
                change={changes.get(row.key)!}
                sheets={sheets?.get(row.key)?.join(', ') ?? ''}
                isChosen={isRowChosen(row, selection, chosen)}
                isOpen={open.has(row.key)}
                isTabStop={row.key === tabStop}
                onChoose={choose}
                onToggle={toggle}
              />
              {open.has(row.key) && (
                <PartsLine row={row} marks={marksOf(row, derived)} chosen={chosen} onPart={choosePart} />
              )}
            </Fragment>
          ))}
        </tbody>
      </table>
      <Totals derived={derived} material={shownMaterial} />
    </div>
  )
}

function toggled(keys: ReadonlySet<RowKey>, key: RowKey): ReadonlySet<RowKey> {
  return keys.has(key) ? new Set([...keys].filter((each) => each !== key)) : new Set([...keys, key])
}

function marksOf(row: CutRow, { partOf }: Derived): string[] {
  return row.parts.map((part) => partOf.get(part)?.mark ?? part)
}

function Head({ unit }: { readonly unit: string }) {
  return (
    <thead>
      <tr>
        <th scope="col">Mark</th>
        <th scope="col">Part</th>
        <th scope="col" className={styles.figure}>
          Qty
        </th>
        <th scope="col" className={styles.figure}>
          Length ({unit})
        </th>
        <th scope="col" className={styles.figure}>
          Width ({unit})
        </th>
        <th scope="col" className={styles.figure}>
          Thick ({unit})
        </th>
        <th scope="col">Bands</th>
        <th scope="col">Cabinets</th>
        <th scope="col" className={styles.figure}>
          Sheet
        </th>
      </tr>
    </thead>
  )
}

function Totals({ derived, material }: { readonly derived: Derived; readonly material: MaterialId | 'all' }) {
  const totals = derived.cutList.totals.filter((total) => material === 'all' || total.material === material)
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
            <th scope="row">{derived.project.materials[total.material]?.name ?? total.material}</th>
            <td className={styles.figure}>{total.parts}</td>
            <td className={styles.figure}>{total.area.toFixed(2)}</td>
            <td className={styles.figure}>{total.weight.toFixed(1)}</td>
            <td className={styles.figure}>{total.banding.toFixed(1)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

function NoBoards() {
  return (
    <div className={styles.empty}>
      <strong>No boards to cut yet.</strong>
      <p>Put a base, an upper or a tall on the wall: its boards are listed here at once, at the size to cut.</p>
    </div>
  )
}
