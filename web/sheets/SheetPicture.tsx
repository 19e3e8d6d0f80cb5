import type { KeyboardEvent } from 'react'
import type { Drawing, DrawingMark } from '../../engine/index'
import styles from './Sheets.module.css'

export interface SheetPictureProps {
  readonly drawing: Drawing
  /** What the picture is called: `Sheet 1 and 2`. */
  readonly label: string
  /** Numbers of the lit places, apart by spaces. */
  readonly lit: string
  /** For each place: its words, and the row and the first part that lie there. */
  readonly places: readonly { readonly words: string; readonly row: string; readonly part: string }[]
  /** Null for a layout that is only remembered: nothing on it can be picked. */
  readonly onPick: ((place: number) => void) | null
}

type Part = Extract<DrawingMark, { kind: 'rect' }> & { readonly placement: number }

/** The drawing of a sheet on screen, true to scale. One stop of the tab key; the arrows go from part to part. */
export function SheetPicture({ drawing, label, lit, places, onPick }: SheetPictureProps) {
  const { bounds, marks } = drawing
  const litPlaces = new Set(lit === '' ? [] : lit.split(' ').map(Number))
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
      // Drawings have y up.
      style={{ aspectRatio: `${bounds.width} / ${bounds.height}` }}
    >
      <g transform={`translate(${-bounds.left} ${bounds.bottom + bounds.height}) scale(1 -1)`}>
        {marks.map((mark, at) => {
          if (!isPart(mark)) return <Mark key={at} mark={mark} isLit={isLit(mark)} />
          const { left: x, bottom: y, width, height } = mark.rect
          const place = places[mark.placement]
          const outline = <rect x={x} y={y} width={width} height={height} />
          const className = `${styles.partShape} ${isLit(mark) ? styles.lit : ''}`
          if (!onPick)
            return (
              <g key={at} className={className}>
                {outline}
              </g>
            )
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
            </g>
          )
        })}
      </g>
    </svg>
  )
}

function isPart(mark: DrawingMark): mark is Part {
  return mark.kind === 'rect' && mark.placement !== undefined
}

function Mark({ mark, isLit }: { readonly mark: DrawingMark; readonly isLit: boolean }) {
  switch (mark.kind) {
    case 'line':
      return <line className={styles[mark.layer]} x1={mark.from.x} y1={mark.from.y} x2={mark.to.x} y2={mark.to.y} />
    case 'rect': {
      const { left, bottom, width, height } = mark.rect
      return <rect className={styles[mark.layer]} x={left} y={bottom} width={width} height={height} />
    }
    case 'text': {
      const turn = mark.isUpright ? ' rotate(-90)' : ''
      return (
        <text
          className={`frac ${styles[mark.layer]} ${isLit ? styles.litText : ''}`}
          fontSize={mark.size}
          transform={`translate(${mark.at.x} ${mark.at.y}) scale(1 -1)${turn}`}
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
