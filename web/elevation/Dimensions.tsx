import { memo } from 'react'
import type { CabinetId, Project, Wall } from '../../engine/index'
import { type Dimension, heightChain, highChain, lowChain, wallHeight, wallLength } from './chains'
import { DimensionDrawing } from './DimensionDrawing'

interface DimensionsProps {
  readonly project: Project
  readonly wall: Wall
  readonly chosen: readonly CabinetId[]
  readonly mmPerPx: number
  readonly onType: (key: string) => void
}

/** How far from the wall the lines stand, in pixels. */
const NEAR_PX = 34
const FAR_PX = 60
const ABOVE_PX = 12

export interface PlacedDimension extends Dimension {
  readonly way: 'along' | 'up'
  readonly at: number
}

/** Every dimension of the wall in the order in which Tab goes through them. */
export function dimensionsOf(
  project: Project,
  wall: Wall,
  chosen: readonly CabinetId[],
  mmPerPx: number,
): PlacedDimension[] {
  const along = (at: number) => (dimension: Dimension) => ({ ...dimension, way: 'along' as const, at })
  const up = (at: number) => (dimension: Dimension) => ({ ...dimension, way: 'up' as const, at })
  return [
    ...lowChain(project, wall).map(along(NEAR_PX * mmPerPx)),
    along(FAR_PX * mmPerPx)(wallLength(project, wall)),
    ...highChain(project, wall).map(along(-wall.height - ABOVE_PX * mmPerPx)),
    ...heightChain(project, wall, chosen).map(up(wall.length + NEAR_PX * mmPerPx)),
    up(wall.length + FAR_PX * mmPerPx)(wallHeight(project, wall)),
  ]
}

export const Dimensions = memo(function Dimensions({ project, wall, chosen, mmPerPx, onType }: DimensionsProps) {
  return dimensionsOf(project, wall, chosen, mmPerPx).map(({ key, measures, ...dimension }) => (
    <DimensionDrawing
      key={`${dimension.way} ${dimension.at < 0 ? 'high ' : ''}${key}`}
      {...dimension}
      dimensionKey={key}
      isLive={isAbout(measures, chosen)}
      canType={measures.kind !== 'nothing'}
      mmPerPx={mmPerPx}
      onType={onType}
    />
  ))
})

function isAbout(measures: Dimension['measures'], chosen: readonly CabinetId[]): boolean {
  switch (measures.kind) {
    case 'width':
    case 'filler':
      return chosen.includes(measures.id)
    case 'height':
    case 'bottom':
      return measures.ids.some((id) => chosen.includes(id))
    // A narrow gap is written, and can be filled, once a cabinet beside it is chosen.
    case 'gap':
      return [measures.before, measures.after].some((id) => id !== null && chosen.includes(id))
    default:
      return false
  }
}
