import { memo, useMemo } from 'react'
import { alikeParts, type Drawing, type LengthDisplay, type Part, partDrawing, svgOf } from '../../engine/index'
import styles from './Tables.module.css'

interface PartFiguresProps {
  readonly parts: readonly Part[]
  readonly display: LengthDisplay
}

/** Smaller letters are not read on a phone. */
const LEAST_LETTERS_PX = 11

/** How wide a drawing is at least shown: where there is less room it is moved aside in its own frame. */
function leastWidthPx({ bounds, marks }: Drawing): number {
  const letters = Math.min(...marks.flatMap((mark) => (mark.kind === 'text' ? [mark.size] : [])))
  return Number.isFinite(letters) && letters > 0 ? Math.ceil((LEAST_LETTERS_PX * bounds.width) / letters) : 0
}

/** The drawings of the parts of a row that are worked at all, once for all that are alike: ink on paper, as they are printed. */
export const PartFigures = memo(function PartFigures({ parts, display }: PartFiguresProps) {
  const figures = useMemo(
    () =>
      alikeParts(parts)
        .filter(([part]) => part.operations.length > 0)
        .map((alike) => {
          const marks = alike.map(({ mark }) => mark).join(' ')
          const drawing = partDrawing({ part: alike[0], display })
          const source = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svgOf(drawing, marks))}`
          const { width, height } = drawing.bounds
          return { marks, name: alike[0].name, source, minWidth: leastWidthPx(drawing), shape: `${width} / ${height}` }
        }),
    [parts, display],
  )
  return (
    <div className={styles.figures}>
      {figures.map(({ marks, name, source, minWidth, shape }) => (
        <figure key={marks}>
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys */}
          <section className={styles.drawn} aria-label={`Frame of the drawing of ${marks}`} tabIndex={0}>
            <img
              src={source}
              style={{ minWidth, aspectRatio: shape }}
              alt={`Drawing of ${marks}, ${name}, with what is worked on it`}
            />
          </section>
          <figcaption>
            <strong>{marks}</strong> {name}
          </figcaption>
        </figure>
      ))}
    </div>
  )
}, isSame)

/** Under the hand the list is made anew at every move, of the same parts but for those that change. */
function isSame(before: PartFiguresProps, after: PartFiguresProps): boolean {
  const { parts, display } = after
  return (
    display === before.display &&
    parts.length === before.parts.length &&
    parts.every((part, at) => part === before.parts[at])
  )
}
