import {
  type Cabinet,
  checkLength,
  childrenOf,
  type Front,
  type FrontPath,
  type FrontPlace,
  formatLength,
  frontAt,
  frontPlaces,
  type Guide,
  handStep,
  inLanesOf,
  type Mm,
  markOf,
  type Project,
  settle,
  withSizeAt,
} from '../../engine/index'
import { type Desk, type Hand, type Held, NO_OUTCOME, type Outcome, type Spot, unfit } from './hand'

/** A line between two rows or two columns: what is above it or to its left is at the path. */
export interface Divider {
  readonly path: FrontPath
  readonly axis: 'x' | 'y'
  readonly before: FrontPlace
  readonly after: FrontPlace
}

/** The dividing lines of a cabinet's front. */
export function dividersOf(project: Project, cabinet: Cabinet): Divider[] {
  const places = frontPlaces(project, cabinet)
  const placeAt = (path: FrontPath) => places.find((one) => one.path.join() === path.join())
  return places.flatMap((before): Divider[] => {
    const { path } = before
    const after = path.length > 0 ? placeAt(nextTo(path)) : undefined
    const parent = frontAt(cabinet.front, path.slice(0, -1))
    return after && parent ? [{ path, axis: parent.kind === 'rows' ? 'y' : 'x', before, after }] : []
  })
}

/** How large the two sides of a dividing line are, across it. */
export function partedBy({ axis, before, after }: Divider): readonly [Mm, Mm] {
  return axis === 'x' ? [before.rect.width, after.rect.width] : [before.rect.height, after.rect.height]
}

function nextTo(path: FrontPath): FrontPath {
  return [...path.slice(0, -1), path.at(-1)! + 1]
}

/** A dividing line moved: one side grows by what the other loses, and every other row and column stays. */
export function divided(hand: Extract<Hand, { kind: 'dividing' }>, at: Spot, held: Held, desk: Desk): Outcome {
  const { project, reach } = desk
  const cabinet = project.cabinets[hand.id]
  const divider = cabinet && dividersOf(project, cabinet).find(({ path }) => path.join() === hand.path)
  if (!divider) return NO_OUTCOME
  const { axis } = divider
  const [first, second] = partedBy(divider)
  const moved = axis === 'x' ? at.x - hand.from.x : hand.from.y - at.y
  const { to, guides } = held.isFree
    ? { to: settle(first + moved), guides: [] }
    : atRest(project, cabinet, divider, first + moved, reach)
  const rest = settle(first + second - to)
  const about = [cabinet.id]
  for (const length of [to, rest]) {
    const checked = checkLength('frontSize', length, project.display)
    if (!checked.ok) {
      return { ...NO_OUTCOME, about, words: unfit(markOf(cabinet), checked.message) }
    }
  }
  const front = withDivision(cabinet.front, divider.path, to, rest)
  const say = (length: Mm) => formatLength(length, project.display)
  const text = `${markOf(cabinet)}: ${axis === 'x' ? 'columns' : 'rows'} of ${say(to)} and ${say(rest)}`
  const label = `Move a dividing line of ${markOf(cabinet)}`
  return { edit: { kind: 'setFront', ids: [cabinet.id], front }, guides, about, label, words: { fits: true, text } }
}

/** Both sides are fixed, but one that alone takes what is left goes on taking it. */
function withDivision(front: Front, path: FrontPath, to: Mm, rest: Mm): Front {
  const parent = frontAt(front, path.slice(0, -1))!
  const at = path.at(-1)!
  const shares = childrenOf(parent).flatMap(({ size }, index) => (size.kind === 'share' ? [index] : []))
  const stays = shares.some((index) => index !== at && index !== at + 1) ? null : (shares.at(-1) ?? null)
  const one = stays === at ? front : withSizeAt(front, path, to)
  return stays === at + 1 ? one : withSizeAt(one, nextTo(path), rest)
}

/** On a neighbour's line or a size of the grid within reach; else at a size that a tape can find. */
function atRest(project: Project, cabinet: Cabinet, { axis, before }: Divider, wanted: Mm, reach: Mm) {
  const { rect } = before
  const top = cabinet.bottom + rect.bottom + rect.height
  const lines = axis === 'x' ? [] : neighbourLines(project, cabinet)
  const near = lines
    .map((guide) => ({ guide, to: settle(top - guide.at) }))
    .filter(({ to }) => Math.abs(to - wanted) <= reach)
    .sort((a, b) => Math.abs(a.to - wanted) - Math.abs(b.to - wanted))[0]
  if (near) return { to: near.to, guides: [near.guide] }
  const stepped = (step: Mm) => settle(Math.round(wanted / step) * step)
  const onGrid = stepped(project.grid)
  return { to: Math.abs(onGrid - wanted) <= reach ? onGrid : stepped(handStep(project)), guides: [] }
}

/** The lower edges of the fronts over the dividing lines of the cabinets in its lane. */
function neighbourLines(project: Project, cabinet: Cabinet): Guide[] {
  return inLanesOf(project, cabinet).flatMap((other) =>
    dividersOf(project, other)
      .filter(({ axis }) => axis === 'y')
      .map(({ before }): Guide => {
        return { axis: 'y', at: settle(other.bottom + before.rect.bottom), to: `a dividing line of ${markOf(other)}` }
      }),
  )
}
