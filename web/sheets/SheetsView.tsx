import { useDeferredValue, useMemo, useRef } from 'react'
import type { Derived, PartId } from '../../engine/index'
import { formatLength, numberList, yieldOfSheet } from '../../engine/index'
import { currentLayout, type Layout, type Selection } from '../store/state'
import { useStore } from '../store/store'
import { chosenParts, selectionOf } from '../tables/chosen'
import { BuyTable } from './BuyTable'
import { type Fold, foldsOf, litPlaces, nextPart } from './folds'
import { SheetPicture } from './SheetPicture'
import styles from './Sheets.module.css'

/**
 * The sheets of the shown design. While the packer works, the last layout stays in sight, dimmed and named as what it
 * is: the layout of the design before this change.
 */
export function SheetsView() {
  const derived = useDeferredValue(useStore((state) => state.derived))
  const layout = useStore((state) => state.layout)
  const packing = useStore((state) => state.packing)
  const current = currentLayout({ layout, derived })
  const madeFor = useLastFit(current, derived)
  if (derived.cutList.rows.length === 0) {
    return (
      <div className={styles.empty}>
        <strong>No sheets to cut yet.</strong>
        <p>
          Put a cabinet on the wall: its boards are laid out on sheets as you draw, and what to buy is counted here.
        </p>
      </div>
    )
  }
  return (
    <div className={styles.view} data-layout={current ? 'current' : 'old'}>
      {!current && packing === 'thinking' && <p className={styles.thinking}>Laying the boards out on sheets…</p>}
      {packing === 'failed' && (
        <p className={styles.failed} role="alert">
          <span aria-hidden="true">■</span> The sheets could not be laid out. Change anything to try again; nothing is
          lost.
        </p>
      )}
      {current ? (
        <Sheets layout={current} derived={derived} isCurrent />
      ) : (
        madeFor && (
          <>
            <p className={styles.old}>For the design before this change:</p>
            <div className={styles.dimmed} data-old>
              <Sheets layout={madeFor.layout} derived={madeFor.derived} isCurrent={false} />
            </div>
          </>
        )
      )}
    </div>
  )
}

/** The last layout that fitted, with the design that it fitted: row marks of a later design would tell lies on it. */
function useLastFit(
  current: Layout | null,
  derived: Derived,
): { readonly layout: Layout; readonly derived: Derived } | null {
  const last = useRef<{ readonly layout: Layout; readonly derived: Derived } | null>(null)
  if (current) last.current = { layout: current, derived }
  return last.current
}

interface SheetsProps {
  readonly layout: Layout
  readonly derived: Derived
  readonly isCurrent: boolean
}

function Sheets({ layout, derived, isCurrent }: SheetsProps) {
  const selection = useStore((state) => state.selection)
  const { cutList } = derived
  const { display, materials } = derived.project
  const folds = useMemo(() => foldsOf(layout, cutList, { display, materials }), [layout, cutList, display, materials])
  const chosen = useMemo(() => chosenParts(selection, derived), [selection, derived])
  const { unplaced } = layout.answer
  return (
    <>
      <p className={layout.answer.proved ? styles.proved : styles.words}>{countWords(layout)}</p>
      {unplaced.length > 0 && (
        <ul className={styles.failed}>
          {unplaced.map(({ part, quantity, reason }) => (
            <li key={part}>
              <span aria-hidden="true">■</span> {quantity} of {rowName(part, derived)} on no sheet: {reason}
            </li>
          ))}
        </ul>
      )}
      <div className={styles.sheets}>
        {folds.map((fold) => (
          <SheetFigure key={fold.first} {...{ fold, derived, selection, chosen, isCurrent }} />
        ))}
      </div>
      <BuyTable layout={layout} derived={derived} />
    </>
  )
}

function SheetFigure({
  fold,
  derived,
  selection,
  chosen,
  isCurrent,
}: {
  readonly fold: Fold
  readonly derived: Derived
  readonly selection: Selection
  readonly chosen: ReadonlySet<PartId>
  readonly isCurrent: boolean
}) {
  const actions = useStore((state) => state.actions)
  const { layout, stock, first, drawing } = fold
  const places = useMemo(() => placesOf(fold, derived), [fold, derived])
  // The selection is read when a part is picked, so that a picture is drawn again only when its own light changes.
  const latest = useRef({ selection, derived })
  latest.current = { selection, derived }
  const onPick = useMemo(() => {
    if (!isCurrent) return null
    return (place: number) => {
      const part = nextPart(fold.parts[place] ?? [], latest.current.selection)
      if (part) actions.select(selectionOf(part, latest.current.derived))
    }
  }, [fold, actions, isCurrent])
  const numbers = numberList(Array.from({ length: layout.copies }, (_, copy) => first + copy))
  const name = `${layout.copies > 1 ? 'Sheets' : 'Sheet'} ${numbers}`
  const material =
    Object.values(derived.project.materials).find(({ id }) => id === stock.material)?.name ?? stock.material
  const { display } = derived.project
  return (
    <figure className={styles.sheetFigure} data-sheet={first}>
      <SheetPicture {...{ drawing, places, onPick }} label={name} lit={litPlaces(fold, chosen)} />
      <figcaption>
        <strong>{name}</strong>
        <span>
          {layout.copies > 1 ? `${layout.copies} alike, ` : ''}
          {Math.round(yieldOfSheet(layout, stock) * 100)} % used
        </span>
        <span className={styles.from}>
          {stock.offcut ? 'Offcut of ' : ''}
          {material},{' '}
          <span className="frac">
            {formatLength(stock.length, display)} × {formatLength(stock.width, display)}
          </span>{' '}
          {display.unit}
        </span>
      </figcaption>
    </figure>
  )
}

function placesOf(fold: Fold, { cutList, partOf, project }: Derived) {
  return fold.parts.map((parts) => {
    const { row = '', part = '', length = 0, width = 0, rotated = false } = parts[0] ?? {}
    const mark = cutList.rows.find(({ key }) => key === row)?.mark ?? ''
    const size = `${formatLength(length, project.display)} × ${formatLength(width, project.display)}`
    const marks = parts.map((each) => partOf.get(each.part)?.mark ?? each.part).join(', ')
    return { words: `${mark} ${size}${rotated ? ', turned' : ''}: ${marks}`, row, part }
  })
}

/** Counts, and says whether fewer are possible. */
export function countWords({ answer, isSettled }: Pick<Layout, 'answer' | 'isSettled'>): string {
  const count = answer.sheets.reduce((sum, { copies }) => sum + copies, 0)
  const sheets = `${count} ${count === 1 ? 'sheet' : 'sheets'}`
  if (answer.proved) return `${sheets}, and no layout of these parts needs fewer.`
  const bound = Object.values(answer.bounds).reduce((sum, least) => sum + least, 0)
  const search = isSettled ? 'None with fewer was found' : 'Still looking for fewer'
  return `${sheets}; any layout of these parts needs at least ${bound}. ${search}.`
}

function rowName(part: string, { cutList }: Derived): string {
  const row = cutList.rows.find(({ key }) => key === part)
  return row ? `${row.mark} (${row.name})` : part
}
