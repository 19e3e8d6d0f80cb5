import { inch, type Mm, settle } from '../units/length'
import type { CabinetKind, Project } from './document'
import type { Appliance, ApplianceSpace } from './space'

/** How a space begins: as wide, high and deep as it is put on the wall, and what goes on over and before it. */
export interface SpaceStart {
  readonly width: Mm
  readonly height: Mm
  readonly depth: Mm
  readonly space: ApplianceSpace
}

/**
 * A space of a usual size: under a top as high as a base, so that the top goes on level; a range as high as the top lies.
 * The sizes that its maker asks for begin a little less, and are to be typed from the maker's drawing. Common practice, no
 * source.
 */
export function usualSpace({ display, newCabinets, between, materials }: Project, of: Appliance, kind: CabinetKind) {
  const size = (mm: Mm, inches: number) => settle(display.unit === 'mm' ? mm : inch(inches))
  const { height: baseHeight, depth } = newCabinets.base
  if (kind === 'tall') {
    const [width, height] = [size(600, 36), size(1850, 70)]
    const space = { of, width, height, depth: Math.min(depth, size(560, 24)), isTopOver: false, isKickBefore: false }
    return { width, height, depth, space } satisfies SpaceStart
  }
  const top = between.countertop && materials[between.countertop.material]?.thickness
  const height = of === 'range' ? settle(baseHeight + (top ?? size(32, 1.5))) : baseHeight
  const width = of === 'range' ? size(600, 30) : of === 'washingMachine' ? size(600, 27) : size(600, 24)
  const asked = of === 'range' ? height : Math.min(height, of === 'washingMachine' ? size(850, 34) : size(820, 34))
  const space = { of, width, height: asked, depth: Math.min(depth, size(560, 24)) }
  return {
    ...{ width, height, depth },
    space: { ...space, isTopOver: of !== 'range', isKickBefore: of === 'dishwasher' },
  } satisfies SpaceStart
}
