import {
  type Cabinet,
  type CabinetId,
  formatLength,
  type LengthDisplay,
  type Mm,
  markOf,
  type Project,
  roomBeside,
  type Side,
  settle,
  valuesOf,
  type Wall,
} from '../../engine/index'

/** What is measured, and so what a typed length changes. */
export type Measures =
  | { readonly kind: 'width'; readonly id: CabinetId }
  /** The free space before a cabinet, or after the last one. */
  | { readonly kind: 'gap'; readonly before: CabinetId | null; readonly after: CabinetId | null }
  | { readonly kind: 'filler'; readonly id: CabinetId; readonly side: Side }
  | { readonly kind: 'wallLength' }
  | { readonly kind: 'wallHeight' }
  | { readonly kind: 'height'; readonly ids: readonly CabinetId[] }
  | { readonly kind: 'bottom'; readonly ids: readonly CabinetId[] }
  | { readonly kind: 'nothing' }

export interface Dimension {
  readonly key: string
  readonly measures: Measures
  /** Along the wall for widths, up it for heights. */
  readonly from: Mm
  readonly to: Mm
  readonly text: string
  /** `Width of B3`. */
  readonly name: string
}

/** The widths and gaps of what stands on the floor, from the left wall end to the right. */
export function lowChain(project: Project, wall: Wall): Dimension[] {
  return chainOf(project, wall, ({ kind }) => kind !== 'upper', true)
}

/** The same of what hangs; talls are measured below and only bound the gaps. */
export function highChain(project: Project, wall: Wall): Dimension[] {
  const hasUppers = valuesOf<Cabinet>(project.cabinets).some(({ kind, wall: on }) => kind === 'upper' && on === wall.id)
  return hasUppers ? chainOf(project, wall, ({ kind }) => kind !== 'base', false) : []
}

function chainOf(
  project: Project,
  wall: Wall,
  isIn: (cabinet: Cabinet) => boolean,
  areTallsMeasured: boolean,
): Dimension[] {
  const { cabinets, display } = project
  const row = valuesOf<Cabinet>(cabinets)
    .filter((cabinet) => cabinet.wall === wall.id && isIn(cabinet))
    .sort((a, b) => a.left - b.left || (a.id < b.id ? -1 : 1))
  const chain: Dimension[] = []
  let at: Mm = 0
  let before: Cabinet | null = null
  for (const cabinet of row) {
    const { id, left, width, kind } = cabinet
    const [start, end] = [roomBeside(cabinet, 'left', project), roomBeside(cabinet, 'right', project)]
    const from = settle(left - start)
    if (from > at) chain.push(gap(at, from, before, cabinet, display))
    if (start > 0) chain.push(besideSpan(cabinet, 'left', from, left, display))
    if (kind !== 'tall' || areTallsMeasured) {
      const name = `Width of ${markOf(cabinet)}`
      chain.push({ ...span(`width ${id}`, left, settle(left + width), display), measures: { kind: 'width', id }, name })
    }
    const to = settle(left + width + end)
    if (end > 0) chain.push(besideSpan(cabinet, 'right', settle(left + width), to, display))
    at = Math.max(at, to)
    before = cabinet
  }
  if (wall.length > at && before) chain.push(gap(at, wall.length, before, null, display))
  return chain
}

/** A filler's width is typed here as its cabinet's is; a finished end is as thick as its board. */
function besideSpan(cabinet: Cabinet, side: Side, from: Mm, to: Mm, display: LengthDisplay): Dimension {
  const { kind } = cabinet.beside[side]
  return {
    ...span(`${kind} ${side} ${cabinet.id}`, from, to, display),
    measures: kind === 'filler' ? { kind: 'filler', id: cabinet.id, side } : { kind: 'nothing' },
    name: `${kind === 'filler' ? 'Filler' : 'Finished end'} at the ${side} of ${markOf(cabinet)}`,
  }
}

function gap(from: Mm, to: Mm, before: Cabinet | null, after: Cabinet | null, display: LengthDisplay): Dimension {
  const ends = [before ? markOf(before) : 'the left wall end', after ? markOf(after) : 'the right wall end']
  return {
    ...span(`gap ${before?.id ?? ''} ${after?.id ?? ''}`, from, to, display),
    measures: { kind: 'gap', before: before?.id ?? null, after: after?.id ?? null },
    name: `Gap between ${ends[0]} and ${ends[1]}`,
  }
}

export function wallLength(project: Project, wall: Wall): Dimension {
  return {
    ...span('wall length', 0, wall.length, project.display),
    measures: { kind: 'wallLength' },
    name: `Length of ${wall.name}`,
  }
}

export function wallHeight(project: Project, wall: Wall): Dimension {
  return {
    ...span('wall height', 0, wall.height, project.display),
    measures: { kind: 'wallHeight' },
    name: `Height of ${wall.name}`,
  }
}

/** More ordinates than this would not be read. */
const MOST_HEIGHTS = 7

/**
 * The heights at which something begins or ends, from the floor to the ceiling. With something selected only its own
 * heights and the usual ones beside it are drawn, so that the chain is about what is worked on.
 */
export function heightChain(project: Project, wall: Wall, chosen: readonly CabinetId[]): Dimension[] {
  const all = valuesOf<Cabinet>(project.cabinets).filter((cabinet) => cabinet.wall === wall.id)
  const selected = all.filter(({ id }) => chosen.includes(id))
  const measured = selected.length > 0 ? selected : all.filter(({ kind }) => kind !== 'tall')
  if (measured.length === 0) return []
  const ends = [0, wall.height, ...measured.flatMap(({ bottom, height }) => [bottom, settle(bottom + height)])]
  const ordinates = [...new Set(ends)].filter((y) => y >= 0 && y <= wall.height).sort((a, b) => a - b)
  if (ordinates.length > MOST_HEIGHTS) return []
  return ordinates.slice(1).map((to, at) => {
    const from = ordinates[at]!
    return { ...span(`height ${from}`, from, to, project.display), ...heightMeasured(measured, from, to) }
  })
}

function heightMeasured(measured: readonly Cabinet[], from: Mm, to: Mm): Pick<Dimension, 'measures' | 'name'> {
  const filling = measured.filter(({ bottom, height }) => bottom === from && settle(bottom + height) === to)
  if (filling.length > 0) {
    return { measures: { kind: 'height', ids: filling.map(({ id }) => id) }, name: `Height of ${marks(filling)}` }
  }
  const hanging = measured.filter(({ kind, bottom }) => kind === 'upper' && bottom === to)
  if (hanging.length > 0) {
    return { measures: { kind: 'bottom', ids: hanging.map(({ id }) => id) }, name: `Space below ${marks(hanging)}` }
  }
  return { measures: { kind: 'nothing' }, name: 'Space' }
}

function marks(cabinets: readonly Cabinet[]): string {
  return cabinets.map(markOf).join(' and ')
}

function span(key: string, from: Mm, to: Mm, display: LengthDisplay): Omit<Dimension, 'measures' | 'name'> {
  return { key, from, to, text: formatLength(settle(to - from), display) }
}
