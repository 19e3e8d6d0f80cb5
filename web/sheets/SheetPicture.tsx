import { type CSSProperties, type KeyboardEvent, useMemo } from 'react'
import type { Drawing, DrawingMark } from '../../engine/index'
import styles from './Sheets.module.css'

export interface PicturePlace {
  readonly words: string
  readonly row: string
  readonly part: string
  /** Whether the part must come from this sheet and no other: a pin is drawn on it. */
  readonly isPinned?: boolean
}

export interface SheetPictureProps {
  readonly drawing: Drawing
  /** What the picture is called: `Sheet 1 and 2`. */
  readonly label: string
  /** Numbers of the lit places, apart by spaces. */
  readonly lit: string
  /** Numbers of the places that are cut already, apart by spaces. */
  readonly cut?: string
  /** For each place: its words, and the row and the first part that lie there. */
  readonly places: readonly PicturePlace[]
  readonly onPick: (place: number) => void
}

type Point = LineMark['from']
type LineMark = Extract<DrawingMark, { kind: 'line' }>
type Part = Extract<DrawingMark, { kind: 'rect' }> & { readonly placement: number }

/** The drawing of a sheet on screen, true to scale. One stop of the tab key; the arrows go from part to part. */
export function SheetPicture({ drawing, label, lit, cut = '', places, onPick }: SheetPictureProps) {
  const { bounds } = drawing
  const marks = useMemo(() => drawing.marks.map((mark) => onScreen(mark, drawing.bounds)), [drawing])
  const litPlaces = placesIn(lit)
  const cutPlaces = placesIn(cut)
  const stop = litPlaces.size > 0 ? Math.min(...litPlaces) : 0
  const isLit = (mark: DrawingMark) =>
    'placement' in mark && mark.placement !== undefined && litPlaces.has(mark.placement)
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot stand in a drawing
    <svg
      viewBox={`0 0 ${bounds.width} ${bounds.height}`}
      className={styles.picture}
      role="group"
      aria-label={label}
      style={toScale(bounds.width, bounds.height)}
    >
      {marks.map((mark, at) => {
        if (mark.kind === 'line')
          return isFirstOfLines(marks, at) && <Lines key={at} marks={marks} layer={mark.layer} />
        if (!isPart(mark)) return <Mark key={at} mark={mark} isLit={isLit(mark)} />
        const { left: x, bottom: y, width, height } = mark.rect
        const place = places[mark.placement]
        const outline = <rect x={x} y={y} width={width} height={height} />
        const isCut = cutPlaces.has(mark.placement)
        const className = `${styles.partShape} ${isCut ? styles.isCut : ''} ${isLit(mark) ? styles.lit : ''}`
        return (
          // biome-ignore lint/a11y/useSemanticElements: a button cannot stand in a drawing
          <g
            key={at}
            role="button"
            tabIndex={mark.placement === stop ? 0 : -1}
            aria-label={place?.words}
            aria-pressed={isLit(mark)}
            data-row={place?.row}
            data-part={place?.part}
            className={`${className} ${styles.canPick}`}
            onClick={() => onPick(mark.placement)}
            onKeyDown={(event) => onKey(event, () => onPick(mark.placement))}
          >
            <title>{place?.words}</title>
            {outline}
            {isCut && <path d={`M${x} ${y + height}L${x + width} ${y}`} />}
            {place?.isPinned && <Pin rect={{ left: x, bottom: y, width, height }} />}
          </g>
        )
      })}
    </svg>
  )
}

/** The head of a pin is so large on a sheet that is drawn a hand wide, and no more than so much of a narrow board. */
const PIN_SIZE = 34
const PIN_SHARE = 0.28

/** A pin in the upper corner of a board. */
function Pin({ rect: { left, bottom: top, width, height } }: { readonly rect: Part['rect'] }) {
  const size = Math.min(PIN_SIZE, PIN_SHARE * Math.min(width, height))
  const [x, y] = [left + 1.6 * size, top + 1.6 * size]
  return (
    <g className={styles.pin}>
      <path d={`M${x} ${y}l${1.7 * size} ${1.7 * size}`} />
      <circle cx={x} cy={y} r={size} />
    </g>
  )
}

/** Of pictures in one list the longest board fills the column, and the others are drawn to its scale. */
export function scaleFor(lengths: readonly number[]): CSSProperties {
  return { '--longest': Math.max(1, ...lengths) } as CSSProperties
}

/** The size of a picture in such a list; by itself it fills the column. */
export function toScale(length: number, width: number): CSSProperties {
  return { width: `calc(100% * ${length} / var(--longest, ${length}))`, aspectRatio: `${length} / ${width}` }
}

/**
 * A drawing has y up, a screen has it down. Places are turned one by one: a frame turned as a whole would have every
 * text turned back, and each of those slows the painting.
 */
function onScreen(mark: DrawingMark, { left, bottom, height }: Drawing['bounds']): DrawingMark {
  const point = ({ x, y }: Point) => ({ x: x - left, y: bottom + height - y })
  switch (mark.kind) {
    case 'line':
      return { ...mark, from: point(mark.from), to: point(mark.to) }
    case 'rect': {
      const { rect } = mark
      return { ...mark, rect: { ...rect, left: rect.left - left, bottom: bottom + height - rect.bottom - rect.height } }
    }
    case 'circle':
    case 'text':
      return { ...mark, at: point(mark.at) }
    case 'dimension':
      return mark
  }
}

/** All lines of a layer are one shape, drawn where the first of them stands: a hatch alone has dozens. */
function Lines({ marks, layer }: { readonly marks: readonly DrawingMark[]; readonly layer: LineMark['layer'] }) {
  const lines = marks.filter((mark): mark is LineMark => mark.kind === 'line' && mark.layer === layer)
  return (
    <path className={styles[layer]} d={lines.map(({ from, to }) => `M${from.x} ${from.y}L${to.x} ${to.y}`).join('')} />
  )
}

function placesIn(words: string): ReadonlySet<number> {
  return new Set(words === '' ? [] : words.split(' ').map(Number))
}

function isFirstOfLines(marks: readonly DrawingMark[], at: number): boolean {
  const { kind, layer } = marks[at]!
  return marks.findIndex((mark) => mark.kind === kind && mark.layer === layer) === at
}

function isPart(mark: DrawingMark): mark is Part {
  return mark.kind === 'rect' && mark.placement !== undefined
}

function Mark({ mark, isLit }: { readonly mark: Exclude<DrawingMark, LineMark>; readonly isLit: boolean }) {
  switch (mark.kind) {
    case 'rect': {
      const { left, bottom, width, height } = mark.rect
      return <rect className={styles[mark.layer]} x={left} y={bottom} width={width} height={height} />
    }
    case 'circle':
      return <circle className={styles[mark.layer]} cx={mark.at.x} cy={mark.at.y} r={mark.diameter / 2} />
    case 'text': {
      const { x, y } = mark.at
      return (
        <text
          className={`frac ${styles[mark.layer]} ${isLit ? styles.litText : ''}`}
          fontSize={mark.size}
          x={x}
          y={y}
          transform={mark.isUpright ? `rotate(-90 ${x} ${y})` : undefined}
        >
          {mark.text}
        </text>
      )
    }
    case 'dimension':
      // The screen writes the size of a sheet beside its name.
      return null
  }
}

function onKey(event: KeyboardEvent<SVGGElement>, pick: () => void): void {
  const { key, currentTarget } = event
  if (key === 'Enter' || key === ' ') pick()
  else if (key === 'ArrowRight' || key === 'ArrowDown') neighbour(currentTarget, 'nextElementSibling')?.focus()
  else if (key === 'ArrowLeft' || key === 'ArrowUp') neighbour(currentTarget, 'previousElementSibling')?.focus()
  else return
  event.preventDefault()
  // The arrows would otherwise nudge what is selected on the wall.
  event.stopPropagation()
}

function neighbour(from: Element, way: 'nextElementSibling' | 'previousElementSibling'): SVGElement | null {
  let next = from[way]
  while (next && !(next instanceof SVGElement && next.dataset.part !== undefined)) next = next[way]
  return next as SVGElement | null
}
