import {
  type CutRow,
  type Derived,
  type Edit,
  formatLength,
  formatMoney,
  type PartId,
  rowName,
  type StockId,
  stockFor,
  stockOf,
} from '../../engine/index'
import type { Selection } from '../store/state'
import { useStore } from '../store/store'
import { chosenParts } from '../tables/chosen'
import { Choice } from '../ui/Choice'
import type { Fold } from './folds'
import { SequenceChoice } from './SequenceChoice'
import styles from './Sheets.module.css'

const ANY = 'any'

interface BoardBarProps {
  readonly selection: Selection
  readonly derived: Derived
  readonly folds: readonly Fold[]
}

/** What is selected on the sheets, which sheets, or which one of them, it must come from, and beside what it lies there. */
export function BoardBar({ selection, derived, folds }: BoardBarProps) {
  const actions = useStore((state) => state.actions)
  if (selection.kind !== 'part' && selection.kind !== 'row') return null
  const parts = [...chosenParts(selection, derived)]
  const row = derived.cutList.rows.find(({ parts: all }) => all.includes(parts[0]!))
  if (!row) return null
  const { materials } = derived.project
  const numbered = sheetsOf(row, derived, folds)
  const sheet = row.sheet === undefined ? null : String(row.sheet)
  const isLost = sheet !== null && !numbered.some(({ number }) => String(number) === sheet)
  const before = folds.find(({ stock }) => stock.material === row.material)
  const lost = isLost ? [[sheet, `sheet ${wishedNumber(row, before)}, which is not there`] as const] : []
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
      <Choice
        label="From sheet"
        value={sheet ?? ANY}
        options={[
          [ANY, 'any sheet'],
          ...numbered.map(({ number, words }) => [String(number), words] as const),
          ...lost,
        ]}
        onChoice={(choice) => {
          const chosen = numbered.find(({ number }) => String(number) === choice)
          actions.commit(...pinning(parts, chosen ?? null, row))
        }}
      />
      <SequenceChoice parts={parts} derived={derived} />
    </div>
  )
}

/**
 * The sheets and offcuts that give the row's boards, by their sizes, those on hand by how many there are, and by their
 * prices where nothing else tells them apart; one that was chosen and gives none is named as such.
 */
function sheetsFor({ key, material, from }: CutRow, { project, sheetJob }: Derived): [string, string][] {
  const { display, shop } = project
  const large = new Set(stockFor(sheetJob, key).map(({ id }) => id))
  const named = stockOf(project.stock, material)
    .filter(({ id, isExcluded }) => id === from || (large.has(id) && !isExcluded))
    .map(({ id, length, width, price, quantity, isOffcut, isExcluded }) => {
      const size = `${formatLength(length, display)} × ${formatLength(width, display)}`
      const there = quantity === null ? '' : `, ${quantity} on hand`
      const why = isExcluded ? ', set aside' : large.has(id) ? '' : ', too small'
      return { id, price, words: `the ${isOffcut ? 'offcut' : 'sheet'} ${size} ${display.unit}${there}${why}` }
    })
  return named.map(({ id, price, words }) => {
    const isAlone = named.every((other) => other.id === id || other.words !== words)
    return [id, isAlone ? words : `${words}, ${formatMoney(price, shop.currency)}`]
  })
}

/** A sheet of the layout in sight that boards may be chosen from. */
interface Numbered {
  /** Among the sheets of its material. */
  readonly number: number
  readonly words: string
  /** Where its material has sheets of several kinds, the kind that it is of. */
  readonly stock: StockId | null
}

/** The sheets that are large enough for a row's boards, called by the numbers that stand under their drawings. */
function sheetsOf({ key, material }: CutRow, { project, sheetJob }: Derived, folds: readonly Fold[]): Numbered[] {
  const large = new Set(stockFor(sheetJob, key).map(({ id }) => id))
  const hasKinds = stockOf(project.stock, material).filter(({ isExcluded }) => !isExcluded).length > 1
  return folds
    .filter(({ stock }) => stock.material === material && large.has(stock.id))
    .flatMap(({ stock, layout, first, ofMaterial, kept }) =>
      Array.from({ length: layout.copies }, (_, copy): Numbered => {
        // A kept sheet is asked for by the number that it was kept with.
        const number = (kept && project.kept[kept]?.sheet) ?? ofMaterial
        const words = `sheet ${first + copy}${stock.offcut ? ', an offcut' : ''}${kept ? ', kept' : ''}`
        return { number: number + copy, words, stock: hasKinds ? (stock.id as StockId) : null }
      }),
    )
    .filter(({ number }, at, all) => all.findIndex((one) => one.number === number) === at)
}

/** The number under which a sheet that is not there would be drawn. */
function wishedNumber({ sheet }: CutRow, first: Fold | undefined): number {
  return sheet! + (first ? first.first - first.ofMaterial : 0)
}

/** The step that chooses one sheet, and its kind with it where there are several. */
function pinning(parts: readonly PartId[], chosen: Numbered | null, { from }: CutRow): [Edit, string?] {
  const edit: Edit = { kind: 'pinSheet', parts, sheet: chosen?.number ?? null }
  const stock = chosen?.stock ?? null
  if (stock === null || stock === from) return [edit]
  return [{ kind: 'several', edits: [edit, { kind: 'pin', parts, stock }] }, 'Choose one sheet for boards']
}
