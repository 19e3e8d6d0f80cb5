import { useMemo, useRef, useState } from 'react'
import type { CutList, CutRow, MaterialId } from '../../engine/index'
import { currentLayout } from '../store/state'
import { useFollowing } from '../store/turns'
import { useIsNarrow } from '../ui/wide'
import { CutRows } from './CutRows'
import { changesOf } from './changes'
import { sheetsOfRows } from './places'
import styles from './Tables.module.css'
import { Totals } from './Totals'

/** Of the columns, in pixels; the two with words share the rest. Fixed, so that a new figure moves no other column. */
const WIDTHS = [76, '26%', 64, 104, 104, 92, 66, null, 84] as const
/** On a phone what a board is called and both its sizes are in sight; the rest is found by moving the list aside. */
const NARROW_WIDTHS = [58, 158, 34, 70, 68, 62, 58, null, 70] as const

const NO_SHEETS: ReadonlyMap<string, string> = new Map()

/** The cut list of what is shown, live while something is dragged. */
export function CutListTable() {
  const derived = useFollowing('lists', (state) => state.derived)
  const before = useFollowing('lists', (state) => state.before)
  // Under the hand the sheets of a row change at every move: they are named again when it lets go.
  const layout = useFollowing('lists', (state) => (state.preview ? null : currentLayout(state)))
  const [material, setMaterial] = useState<MaterialId | 'all'>('all')
  const scroller = useRef<HTMLDivElement>(null)
  const widths = useIsNarrow() ? NARROW_WIDTHS : WIDTHS
  const { cutList } = derived

  const sheets = useMemo(() => (layout ? sheetsOfRows(layout.answer) : NO_SHEETS), [layout])
  const changes = useMemo(() => changesOf(cutList, before), [cutList, before])
  const { display, materials } = derived.project
  const used = cutList.totals.map((total) => total.material)
  const shownMaterial = material !== 'all' && used.includes(material) ? material : 'all'
  const rows = useMemo(() => rowsOf(cutList, shownMaterial), [cutList, shownMaterial])
  if (cutList.rows.length === 0) return <NoBoards />
  return (
    <div className={styles.table} ref={scroller}>
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
      <table role="grid" aria-label="Cut list" aria-rowcount={rows.length + 1} className={styles.cutList}>
        <colgroup>
          {widths.map((width, at) => (
            <col key={at} style={width === null ? undefined : { width }} />
          ))}
        </colgroup>
        <Head unit={display.unit} />
        <CutRows rows={rows} derived={derived} changes={changes} sheets={sheets} scroller={scroller} />
      </table>
      <Totals cutList={cutList} materials={materials} material={shownMaterial} display={display} />
    </div>
  )
}

function rowsOf({ rows }: CutList, material: MaterialId | 'all'): readonly CutRow[] {
  return material === 'all' ? rows : rows.filter((row) => row.material === material)
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

function NoBoards() {
  return (
    <div className={styles.empty}>
      <strong>No boards to cut yet.</strong>
      <p>Put a base, an upper or a tall on the wall: its boards are listed here at once, at the size to cut.</p>
    </div>
  )
}
