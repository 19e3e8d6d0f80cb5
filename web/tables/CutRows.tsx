import { useVirtualizer } from '@tanstack/react-virtual'
import { Fragment, type RefObject, useCallback, useEffect, useMemo, useRef, useState } from 'react'
import type { CutRow, Derived, Part, PartId, RowKey } from '../../engine/index'
import { useStore } from '../store/store'
import { useFollowing } from '../store/turns'
import { COLUMNS, CutRowLine, PartsLine } from './CutRowLine'
import { type RowChange, UNCHANGED } from './changes'
import { chosenParts, isRowChosen, selectionOf } from './chosen'

interface CutRowsProps {
  readonly rows: readonly CutRow[]
  readonly derived: Derived
  /** Only of rows that have changed since the gesture began. */
  readonly changes: ReadonlyMap<RowKey, RowChange>
  /** The numbers of the sheets that each row is cut from. */
  readonly sheets: ReadonlyMap<string, string>
  readonly scroller: RefObject<HTMLElement | null>
}

/** The height of a row at rest, in pixels. */
const ROW = 31

/**
 * The rows of the cut list. All of them stand there to be searched and printed; only while something is under the hand
 * those out of sight are left out, since every move may number all rows anew.
 */
export function CutRows({ rows, derived, changes, sheets, scroller }: CutRowsProps) {
  const selection = useFollowing('lists', (state) => state.selection)
  const isLive = useFollowing('lists', (state) => state.preview !== null)
  const actions = useStore((state) => state.actions)
  const [open, setOpen] = useState<ReadonlySet<RowKey>>(new Set())
  const { cabinetOf, cutList } = derived
  const chosen = useMemo(() => chosenParts(selection, { cabinetOf, cutList }), [selection, cabinetOf, cutList])
  const latest = useRef(derived)
  latest.current = derived

  const choose = useCallback((row: CutRow) => actions.select({ kind: 'row', row: row.key }), [actions])
  const choosePart = useCallback((part: PartId) => actions.select(selectionOf(part, latest.current)), [actions])
  const justToggled = useRef<RowKey | null>(null)
  const toggle = useCallback((row: CutRow) => {
    justToggled.current = row.key
    setOpen((was) => toggled(was, row.key))
  }, [])

  // What is picked in any view comes into sight, but not under the hand: that would have every move wait for a layout.
  const body = useRef<HTMLTableSectionElement>(null)
  useEffect(() => {
    if (!isLive) body.current?.querySelector('[aria-selected=true]')?.scrollIntoView({ block: 'nearest' })
  }, [selection, isLive])

  // The drawings of a row that is opened low in its pane are brought up with it.
  useEffect(() => {
    const row = [...(body.current?.rows ?? [])].find(({ dataset }) => dataset.row === justToggled.current)
    justToggled.current = null
    if (row && open.has(row.dataset.row as RowKey)) bringUp(row, scroller.current)
  }, [open, scroller])

  const view = useVirtualizer({
    count: rows.length,
    getScrollElement: () => scroller.current,
    estimateSize: () => ROW,
    // Nobody scrolls under the hand.
    overscan: 0,
    enabled: isLive,
  })
  const seen = isLive ? view.getVirtualItems() : []
  const first = seen[0]?.index ?? 0
  const last = seen.at(-1)?.index ?? rows.length - 1
  const inSight = rows.slice(first, last + 1)
  const tabStop = (rows.find((row) => isRowChosen(row, selection, chosen)) ?? rows[0])?.key
  return (
    <tbody ref={body}>
      <Space rows={first} />
      {inSight.map((row, at) => (
        <Fragment key={row.key}>
          <CutRowLine
            row={row}
            index={first + at + 2}
            display={derived.project.display}
            change={changes.get(row.key) ?? UNCHANGED}
            sheets={sheets.get(row.key) ?? ''}
            isChosen={isRowChosen(row, selection, chosen)}
            isOpen={open.has(row.key)}
            isTabStop={row.key === tabStop}
            onChoose={choose}
            onToggle={toggle}
          />
          {open.has(row.key) && (
            <PartsLine
              parts={partsIn(row, derived)}
              display={derived.project.display}
              chosen={chosen}
              onPart={choosePart}
            />
          )}
        </Fragment>
      ))}
      <Space rows={rows.length - 1 - last} />
    </tbody>
  )
}

/** Where what is under a row goes on below the pane, the row goes to its top. */
function bringUp(row: HTMLElement, pane: HTMLElement | null): void {
  const below = row.nextElementSibling?.getBoundingClientRect().bottom ?? 0
  if (pane && below > pane.getBoundingClientRect().bottom) row.scrollIntoView({ block: 'start' })
}

/** Stands for rows that are out of sight. */
function Space({ rows }: { readonly rows: number }) {
  if (rows <= 0) return null
  return (
    <tr>
      <td colSpan={COLUMNS} style={{ height: rows * ROW, padding: 0, border: 0 }} />
    </tr>
  )
}

function toggled(keys: ReadonlySet<RowKey>, key: RowKey): ReadonlySet<RowKey> {
  return keys.has(key) ? new Set([...keys].filter((each) => each !== key)) : new Set([...keys, key])
}

function partsIn(row: CutRow, { partOf }: Derived): Part[] {
  return row.parts.flatMap((id) => partOf.get(id) ?? [])
}
