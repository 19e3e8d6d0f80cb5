import { type Edit, gapFilled, type Project } from '../../engine/index'
import type { View } from '../input/view'
import { chosenCabinets } from '../store/selection'
import { useStore } from '../store/store'
import { useWallInSight } from '../store/wall'
import type { Dimension } from './chains'
import { DimensionEntry } from './DimensionEntry'
import { dimensionsOf } from './Dimensions'
import { fieldOf, typedOver } from './typed'

interface TypingProps {
  /** The key of the dimension that is typed over. */
  readonly dimension: string
  readonly view: View
  readonly onDimension: (key: string | null) => void
  readonly announce: (text: string) => void
}

/** The field over one of the dimensions; Tab goes to the next one along the chains. */
export function Typing({ dimension: key, view, onDimension, announce }: TypingProps) {
  const project = useStore((state) => state.history.present)
  const selection = useStore((state) => state.selection)
  const actions = useStore((state) => state.actions)
  const wall = useWallInSight()
  if (!wall) return null
  const all = dimensionsOf(project, wall, chosenCabinets(selection), 1 / view.zoom).filter(
    ({ measures }) => measures.kind !== 'nothing',
  )
  const at = all.findIndex((one) => one.key === key)
  const dimension = all[at]
  if (!dimension) return null
  const middle = (dimension.from + dimension.to) / 2
  const [x, y] = dimension.way === 'along' ? [middle, dimension.at] : [dimension.at, -middle]

  function onLength(length: number): string | null {
    const { edit, words } = typedOver(project, wall!, dimension!, length)
    if (!edit || !words?.fits) return words?.text ?? 'This is not measured.'
    actions.commit(edit)
    announce(words.text)
    return null
  }

  const fill = fillingOf(project, dimension)
  return (
    <DimensionEntry
      name={dimension.name}
      length={dimension.to - dimension.from}
      field={fieldOf(dimension)}
      display={project.display}
      x={view.x + x * view.zoom}
      y={view.y + y * view.zoom}
      onLength={onLength}
      {...(fill
        ? {
            onFill() {
              actions.commit(fill)
              onDimension(null)
            },
          }
        : {})}
      onDone={(step) => onDimension(step === 0 ? null : (all[at + step]?.key ?? null))}
    />
  )
}

/** The edit that fills the gap of a dimension, on the side of the cabinet after it or else before it. */
function fillingOf(project: Project, { measures }: Dimension): Edit | null {
  if (measures.kind !== 'gap') return null
  const after = measures.after && project.cabinets[measures.after]
  const before = measures.before && project.cabinets[measures.before]
  return (after && gapFilled(project, after, 'left')) || (before && gapFilled(project, before, 'right')) || null
}
