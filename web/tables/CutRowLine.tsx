import { type KeyboardEvent, memo } from 'react'
import { type CutRow, formatLength, type LengthDisplay, type Part, type PartId, rowName } from '../../engine/index'
import { Bands } from './Bands'
import { markStretches, type RowChange } from './changes'
import { PartFigures } from './PartFigures'
import styles from './Tables.module.css'

export interface CutRowLineProps {
  readonly row: CutRow
  /** From 1, the head being the first. */
  readonly index: number
  readonly display: LengthDisplay
  readonly change: RowChange
  readonly sheets: string
  readonly isChosen: boolean
  readonly isOpen: boolean
  readonly isTabStop: boolean
  readonly onChoose: (row: CutRow) => void
  readonly onToggle: (row: CutRow) => void
}

export const COLUMNS = 9

/** One row of the cut list. Up and down go to the next row, right and left open and close it, Enter selects it. */
export const CutRowLine = memo(function CutRowLine(props: CutRowLineProps) {
  const { row, index, display, change, sheets, isChosen, isOpen, isTabStop, onChoose, onToggle } = props
  return (
    <tr
      data-row={row.key}
      aria-rowindex={index}
      className={isChosen ? styles.chosen : undefined}
      aria-selected={isChosen}
      tabIndex={isTabStop ? 0 : -1}
      onClick={() => onChoose(row)}
      onKeyDown={(event) => onKey(event, props)}
    >
      <th scope="row" className={styles.mark}>
        <button
          type="button"
          className={styles.open}
          aria-expanded={isOpen}
          aria-label={`Parts of ${row.mark}`}
          tabIndex={-1}
          onClick={(event) => {
            event.stopPropagation()
            onToggle(row)
          }}
        >
          {isOpen ? '▾' : '▸'}
        </button>
        {row.mark}
      </th>
      <td className={styles.name}>
        {rowName(row)}
        {row.bank && (
          <span className={styles.note}>
            {' '}
            · grain runs on, {row.bank.id}, place {row.bank.place}
          </span>
        )}
        {(row.from || row.sheet !== undefined) && <span className={styles.note}> · from its own sheet</span>}
        {row.isLate && <span className={styles.note}> · cut late</span>}
        {row.measured.length > 0 && <span className={styles.note}> · {measuredWords(row)}</span>}
        {change.isNew && <span className={styles.changed}> new</span>}
      </td>
      <Figure
        value={String(row.quantity)}
        was={change.quantity === null ? null : String(change.quantity)}
        isMore={row.quantity > (change.quantity ?? 0)}
      />
      <Figure
        value={formatLength(row.length, display)}
        was={wasOf(change.length, display)}
        isMore={row.length > (change.length ?? 0)}
      />
      <Figure
        value={formatLength(row.width, display)}
        was={wasOf(change.width, display)}
        isMore={row.width > (change.width ?? 0)}
      />
      <Figure value={formatLength(row.thickness, display)} was={null} isMore={false} />
      <td>
        <Bands row={row} />
      </td>
      <td>{markStretches(row.cabinets)}</td>
      <td className={styles.figure}>{sheets}</td>
    </tr>
  )
})

/** Of a row with both, how many are made to what was measured. */
function measuredWords({ measured, quantity }: CutRow): string {
  return measured.length === quantity ? 'measured' : `${measured.length} measured`
}

function onKey(event: KeyboardEvent<HTMLTableRowElement>, { row, isOpen, onChoose, onToggle }: CutRowLineProps): void {
  if (event.target !== event.currentTarget) return
  switch (event.key) {
    case 'Enter':
    case ' ':
      onChoose(row)
      break
    case 'ArrowDown':
      nextRow(event.currentTarget, 'nextElementSibling')?.focus()
      break
    case 'ArrowUp':
      nextRow(event.currentTarget, 'previousElementSibling')?.focus()
      break
    case 'ArrowRight':
      if (!isOpen) onToggle(row)
      break
    case 'ArrowLeft':
      if (isOpen) onToggle(row)
      break
    default:
      return
  }
  event.preventDefault()
  // The arrows would otherwise nudge what is selected on the wall.
  event.stopPropagation()
}

function nextRow(from: HTMLElement, way: 'nextElementSibling' | 'previousElementSibling'): HTMLElement | null {
  let row = from[way]
  while (row && !(row instanceof HTMLElement && row.dataset.row !== undefined)) row = row[way]
  return row as HTMLElement | null
}

function wasOf(length: number | null, display: LengthDisplay): string | null {
  return length === null ? null : formatLength(length, display)
}

/** A figure, and while a drag changes it, in crayon with an arrow and what it was. */
function Figure({
  value,
  was,
  isMore,
}: {
  readonly value: string
  readonly was: string | null
  readonly isMore: boolean
}) {
  if (was === null || was === value) {
    return (
      <td className={styles.figure}>
        <span className="frac">{value}</span>
      </td>
    )
  }
  return (
    <td className={`${styles.figure} ${styles.changed}`} title={`was ${was}`}>
      <span aria-hidden="true" className={styles.arrow}>
        {isMore ? '↑' : '↓'}
      </span>
      <span className="frac">{value}</span>
      <span className={styles.unseen}>, was {was}</span>
    </td>
  )
}

/** The parts of an opened row by their marks, and the drawings of what is worked on them. */
export const PartsLine = memo(function PartsLine({
  parts,
  display,
  chosen,
  onPart,
}: {
  readonly parts: readonly Part[]
  readonly display: LengthDisplay
  readonly chosen: ReadonlySet<PartId>
  readonly onPart: (part: PartId) => void
}) {
  return (
    <tr className={styles.parts}>
      <td colSpan={COLUMNS}>
        <div className={styles.inSight}>
          {parts.map(({ id, mark }) => (
            <button
              key={id}
              type="button"
              data-part={id}
              aria-pressed={chosen.has(id)}
              className={styles.part}
              onClick={() => onPart(id)}
            >
              {mark}
            </button>
          ))}
          <PartFigures parts={parts} display={display} />
        </div>
      </td>
    </tr>
  )
})
