import { memo, useMemo } from 'react'
import { alikeParts, type LengthDisplay, type Part, partDrawing, svgOf } from '../../engine/index'
import styles from './Tables.module.css'

interface PartFiguresProps {
  readonly parts: readonly Part[]
  readonly display: LengthDisplay
}

/** The drawings of the parts of a row that are worked at all, once for all that are alike: ink on paper, as they are printed. */
export const PartFigures = memo(function PartFigures({ parts, display }: PartFiguresProps) {
  const figures = useMemo(
    () =>
      alikeParts(parts)
        .filter(([part]) => part.operations.length > 0)
        .map((alike) => {
          const marks = alike.map(({ mark }) => mark).join(' ')
          const svg = svgOf(partDrawing({ part: alike[0], display }), marks)
          return { marks, name: alike[0].name, source: `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}` }
        }),
    [parts, display],
  )
  return (
    <div className={styles.figures}>
      {figures.map(({ marks, name, source }) => (
        <figure key={marks}>
          <img src={source} alt={`Drawing of ${marks}, ${name}, with what is worked on it`} />
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
