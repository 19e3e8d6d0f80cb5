import {
  type Cabinet,
  type CabinetKind,
  fitOf,
  formatLength,
  freeStretches,
  type Mm,
  type NewKind,
  newCabinetAt,
  type Project,
  snapEdge,
  snapMove,
  startOf,
  type Wall,
  wallAt,
} from '../../engine/index'
import { type Desk, type Held, NO_OUTCOME, type Outcome, type Spot } from './hand'

/** A gap narrower than this takes no box. */
const NARROWEST: Mm = 150
/** So far past the wall the hand still means the wall. */
const NEAR: Mm = 400

/** A new cabinet pulled out of the tray onto the wall, under the pointer. In a gap that is a little small it gets narrower. */
export function pulled(kind: NewKind, at: Spot, held: Held, { project, reach, wall: on }: Desk): Outcome {
  const wall = wallAt(project, on)
  const isOver = wall && at.x > -NEAR && at.x < wall.length + NEAR && at.y > -NEAR && at.y < wall.height + NEAR
  if (!isOver) return { ...NO_OUTCOME, words: { fits: false, text: 'Let go over the wall to put it there' } }
  const usual = startOf(project, kind)
  const asked = newCabinetAt(project, kind, at.x - usual.width / 2, undefined, on)
  if (!asked) return NO_OUTCOME
  const place = held.isFree
    ? { left: asked.left, guides: [] }
    : snapMove(project, asked, { left: asked.left, bottom: asked.bottom }, reach)
  const whole = { ...asked, left: place.left }
  if (fitOf(project, whole).fits) return { ...added(project, whole), guides: along(place.guides) }
  const narrow = narrowed(project, wall, kind, at.x)
  return narrow ? added(project, narrow) : { ...added(project, whole), guides: along(place.guides) }
}

/** A box drawn on the free wall: as wide as it is drawn, of the kind that stands or hangs at that height. */
export function drawn(from: Spot, at: Spot, held: Held, { project, reach, wall: on }: Desk): Outcome {
  const kind = kindDrawn(project, Math.min(from.y, at.y), Math.max(from.y, at.y))
  const seed = newCabinetAt(project, kind, Math.min(from.x, at.x), Math.max(1, Math.abs(at.x - from.x)), on)
  if (!seed) return NO_OUTCOME
  const isRightward = at.x >= from.x
  const start = held.isFree
    ? from.x
    : snapMove(project, { ...seed, width: 0 }, { left: from.x, bottom: seed.bottom }, reach).left
  const sized: Cabinet = isRightward
    ? { ...seed, left: start, width: Math.max(1, at.x - start) }
    : { ...seed, left: at.x, width: Math.max(1, start - at.x) }
  const edge = isRightward ? 'right' : 'left'
  const end = held.isFree ? { at: at.x, guides: [] } : snapEdge(project, sized, edge, at.x, reach)
  const [left, right] = [Math.min(start, end.at), Math.max(start, end.at)]
  if (right - left < NARROWEST) {
    const least = formatLength(NARROWEST, project.display)
    return { ...NO_OUTCOME, words: { fits: false, text: `A new ${kind}: drawn at least ${least} wide` } }
  }
  const cabinet = newCabinetAt(project, kind, left, right - left, on)
  return cabinet ? { ...added(project, cabinet), guides: along(end.guides) } : NO_OUTCOME
}

/** A new cabinet: the edit, and whether it fits. */
export function added(project: Project, cabinet: Cabinet): Outcome {
  const fit = fitOf(project, cabinet)
  const words = { fits: fit.fits, text: fit.fits ? fit.says : fit.why }
  return { edit: { kind: 'addCabinet', cabinet }, words, guides: [], about: [cabinet.id] }
}

/** A box that reaches from among the bases to among the uppers is tall; otherwise its middle decides. */
function kindDrawn({ newCabinets: { base, upper } }: Project, low: Mm, high: Mm): CabinetKind {
  if (low < base.height && high > upper.bottom) return 'tall'
  return (low + high) / 2 > (base.height + upper.bottom) / 2 ? 'upper' : 'base'
}

function narrowed(project: Project, wall: Wall, what: NewKind, x: Mm): Cabinet | null {
  const { kind, width } = startOf(project, what)
  const gap = freeStretches(project, wall, kind).find(({ from, to }) => from <= x && x <= to)
  if (!gap || gap.to - gap.from < NARROWEST || gap.to - gap.from >= width) return null
  return newCabinetAt(project, what, gap.from, gap.to - gap.from, wall.id)
}

function along<Line extends { readonly axis: 'x' | 'y' }>(guides: readonly Line[]): readonly Line[] {
  return guides.filter(({ axis }) => axis === 'x')
}
