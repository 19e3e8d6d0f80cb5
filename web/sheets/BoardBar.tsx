import { type CutRow, type Derived, formatLength, rowName, type StockId, stockFor, stockOf } from '../../engine/index'
import type { Selection } from '../store/state'
import { useStore } from '../store/store'
import { chosenParts } from '../tables/chosen'
import { Choice } from '../ui/Choice'
import styles from './Sheets.module.css'

const ANY = 'any'

/** What is selected on the sheets, and which sheets it must come from. */
export function BoardBar({ selection, derived }: { readonly selection: Selection; readonly derived: Derived }) {
  const actions = useStore((state) => state.actions)
  if (selection.kind !== 'part' && selection.kind !== 'row') return null
  const parts = [...chosenParts(selection, derived)]
  const row = derived.cutList.rows.find(({ parts: all }) => all.includes(parts[0]!))
  if (!row) return null
  const { materials } = derived.project
  return (
    <div className={styles.board}>
      <span>
        <strong>{selection.kind === 'row' ? row.mark : derived.partOf.get(selection.part)!.mark}</strong>{' '}
        {selection.kind === 'row'
          ? `${rowName(row)}, ${row.quantity} of them`
          : derived.partOf.get(selection.part)!.name}
      </span>
      <Choice
        label="Cut from"
        value={row.from ?? ANY}
        options={[[ANY, `any sheet of ${materials[row.material]!.name}`], ...sheetsFor(row, derived)]}
        onChoice={(stock) => actions.commit({ kind: 'pin', parts, stock: stock === ANY ? null : (stock as StockId) })}
      />
    </div>
  )
}

/**
 * The sheets and offcuts that give the row's boards, by their sizes, and those on hand by how many there are; one that was
 * chosen and gives none is named as such.
 */
function sheetsFor({ key, material, from }: CutRow, { project, sheetJob }: Derived): [string, string][] {
  const { display } = project
  const large = new Set(stockFor(sheetJob, key).map(({ id }) => id))
  return stockOf(project.stock, material)
    .filter(({ id, isExcluded }) => id === from || (large.has(id) && !isExcluded))
    .map(({ id, length, width, quantity, isOffcut, isExcluded }) => {
      const size = `${formatLength(length, display)} × ${formatLength(width, display)}`
      const there = quantity === null ? '' : `, ${quantity} on hand`
      const why = isExcluded ? ', set aside' : large.has(id) ? '' : ', too small'
      return [id, `the ${isOffcut ? 'offcut' : 'sheet'} ${size} ${display.unit}${there}${why}`]
    })
}
