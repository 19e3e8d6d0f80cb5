import { valuesOf } from '../basics/id'
import type { Rect } from '../geometry/rect'
import type { Cabinet, Opening, Project, Wall } from '../project/document'
import { markOf } from '../project/mark'
import { MOST_BESIDE } from '../project/ranges'
import { find } from '../project/references'
import { formatLength, formatWithUnit } from '../units/format'
import { type Mm, settle } from '../units/length'
import { footprintOf } from './footprint'
import { doOverlap, rightEdge, topEdge } from './lane'
import { gapsBeside } from './neighbours'
import { bodiesOf, meetingsOf, sharedRoom, turnedIn } from './reach'

/** Whether a cabinet can be where it is asked to be, in words for the maker. */
export type Fit = { readonly fits: true; readonly says: string } | { readonly fits: false; readonly why: string }

/**
 * Whether cabinets fit as proposed, each in the place of the cabinet of its own id: on the wall, under the ceiling, clear
 * of doors, windows and every other cabinet. The words are of the first that does not fit, or of the first proposed:
 * `B3 to 780: fits, 20 left to the wall end`, `B3 would overlap B4 by 35 mm`.
 */
export function fitOf(project: Project, proposed: Cabinet | readonly Cabinet[]): Fit {
  const list = isList(proposed) ? proposed : [proposed]
  const replaced = new Set(list.map(({ id }) => id))
  const standing = valuesOf<Cabinet>(project.cabinets).filter(({ id }) => !replaced.has(id))
  for (const [at, cabinet] of list.entries()) {
    const why = whyNot(project, cabinet, [...standing, ...list.slice(0, at)])
    if (why) return { fits: false, why: `${markOf(cabinet)} ${why.why}` }
  }
  const first = list[0]
  return { fits: true, says: first ? saysOf(project, first, list) : 'fits' }
}

/** Why a cabinet cannot stand where it stands, as a finding says it: the words, the number and what it is held against. */
export interface Misfit extends Why {
  readonly cabinet: Cabinet
}

interface Why {
  readonly why: string
  readonly is: string
  readonly limit: string
}

/** Every cabinet that cannot stand where it stands, with the reason. */
export function misfits(project: Project): Misfit[] {
  const all = valuesOf<Cabinet>(project.cabinets)
  return all.flatMap((cabinet) => {
    const why = whyNot(project, cabinet, all)
    return why ? [{ ...why, cabinet, why: `${markOf(cabinet)} ${why.why}` }] : []
  })
}

function isList(proposed: Cabinet | readonly Cabinet[]): proposed is readonly Cabinet[] {
  return Array.isArray(proposed)
}

/** The words go behind the mark; nothing when the cabinet fits. */
function whyNot(project: Project, cabinet: Cabinet, others: readonly Cabinet[]): Why | null {
  const wall = find(project.walls, cabinet.wall)
  if (!wall) return { why: 'has no wall', is: 'no wall', limit: 'a wall' }
  const face = footprintOf(cabinet, project)
  const show = (length: Mm) => formatWithUnit(length, project.display)
  if (![...Object.values(face), cabinet.depth].every(Number.isFinite)) {
    return { why: 'has a size or place that is not a number', is: 'not a number', limit: 'a number' }
  }
  if (Math.min(face.width, face.height) <= 0) {
    const is = `${show(face.width)} x ${show(face.height)}`
    return { why: `would be ${is}`, is, limit: `over ${show(0)}` }
  }
  return (
    beyondTheWall(wall, face, show) ??
    somethingInTheWay(project, wall, cabinet, others, show) ??
    roundTheCorner(project, wall, cabinet, others, show)
  )
}

function beyondTheWall(wall: Wall, face: Rect, show: (length: Mm) => string): Why | null {
  const past = settle(rightEdge(face) - wall.length)
  const above = settle(topEdge(face) - wall.height)
  const by = byWords(show)
  if (face.width > wall.length) {
    const [is, limit] = [show(face.width), show(wall.length)]
    return { why: `is ${is} wide; the wall is ${limit} long`, is, limit }
  }
  if (face.left < 0) return by(-face.left, (is) => `would stand ${is} past the left end of the wall`)
  if (past > 0) return by(past, (is) => `would stand ${is} past the right end of the wall (${show(wall.length)})`)
  if (face.bottom < 0) return by(-face.bottom, (is) => `would reach ${is} into the floor`)
  if (above > 0) return by(above, (is) => `would reach ${is} above the ceiling (${show(wall.height)})`)
  return null
}

/** By how much something is where it must not be at all. */
function byWords(show: (length: Mm) => string) {
  return (by: Mm, words: (is: string) => string): Why => ({ why: words(show(by)), is: show(by), limit: show(0) })
}

function somethingInTheWay(
  project: Project,
  wall: Wall,
  cabinet: Cabinet,
  others: readonly Cabinet[],
  show: (length: Mm) => string,
): Why | null {
  const by = byWords(show)
  const face = footprintOf(cabinet, project)
  const beyond = MOST_BESIDE + 1
  const placeOf = (other: Cabinet) => footprintOf(other, project)
  const blockers = others.filter(
    (other) =>
      other !== cabinet &&
      other.wall === cabinet.wall &&
      // Most stand far away, and that is seen without settling a sum.
      other.left < face.left + face.width + beyond &&
      other.left + other.width + beyond > face.left &&
      doOverlap(face, placeOf(other)),
  )
  if (blockers.length > 0) {
    const worst = blockers.reduce((a, b) => (clearingWay(face, placeOf(b)) > clearingWay(face, placeOf(a)) ? b : a))
    return by(clearingWay(face, placeOf(worst)), (is) => `would overlap ${markOf(worst)} by ${is}`)
  }
  const opening = valuesOf<Opening>(wall.openings).find((one) => doOverlap(face, one))
  return opening ? by(clearingWay(face, opening), (is) => `would cover the ${opening.kind} by ${is}`) : null
}

/** What it meets of the walls that meet its own: the cabinets there, their doors and windows, their other ends. */
function roundTheCorner(
  project: Project,
  wall: Wall,
  cabinet: Cabinet,
  others: readonly Cabinet[],
  show: (length: Mm) => string,
): Why | null {
  const by = byWords(show)
  for (const meeting of meetingsOf(project, wall)) {
    const own = bodiesOf(cabinet, project)
    const at = `in the corner with ${meeting.wall.name}`
    for (const other of others) {
      if (other.wall !== meeting.wall.id) continue
      const theirs = bodiesOf(other, project).map((body) => turnedIn(body, meeting))
      const shared = Math.max(...own.flatMap((a) => theirs.map((b) => sharedRoom(a, b))))
      if (shared > 0) return by(shared, (is) => `would overlap ${markOf(other)} by ${is} ${at}`)
    }
    const back = meetingsOf(project, meeting.wall).find((one) => one.wall.id === wall.id && one.side !== meeting.side)
    const there = back ? own.map((body) => turnedIn(body, back)).filter(({ rear }) => rear < AT_WALL) : []
    const opening = valuesOf<Opening>(meeting.wall.openings).find((one) => there.some((body) => doOverlap(body, one)))
    if (opening) {
      return {
        why: `would stand before the ${opening.kind} of ${meeting.wall.name}`,
        is: 'before it',
        limit: 'clear of it',
      }
    }
    const past = Math.max(
      0,
      ...there.map((body) => settle(rightEdge(body) - meeting.wall.length)),
      ...there.map(({ left }) => -left),
    )
    if (past > 0) return by(past, (is) => `would reach ${is} past the other end of ${meeting.wall.name}`)
  }
  return null
}

/** What is nearer to a wall than this covers what is in it. Walls are out of square by as much. Common practice, no source. */
const AT_WALL: Mm = 30

/** How far one must go, the shortest way of four, to clear the other. */
function clearingWay(a: Rect, b: Rect): Mm {
  const ways = [rightEdge(a) - b.left, rightEdge(b) - a.left, topEdge(a) - b.bottom, topEdge(b) - a.bottom]
  return settle(Math.min(...ways))
}

/** What has changed, and the room that is left: `B3 to 780: fits, 20 left to the wall end`. */
function saysOf(project: Project, cabinet: Cabinet, proposed: readonly Cabinet[]): string {
  const show = (length: Mm) => formatLength(length, project.display)
  const after = {
    ...project,
    cabinets: { ...project.cabinets, ...Object.fromEntries(proposed.map((one) => [one.id, one])) },
  }
  const { left, right } = gapsBeside(after, cabinet)
  return `${markOf(cabinet)}${changeIn(find(project.cabinets, cabinet.id), cabinet, show)}: ${roomIn(left, right, show)}`
}

function changeIn(before: Cabinet | undefined, after: Cabinet, show: (length: Mm) => string): string {
  if (!before) return ` at ${show(after.left)}`
  if (before.width !== after.width) return ` to ${show(after.width)}`
  if (before.height !== after.height) return ` to ${show(after.height)} high`
  if (before.depth !== after.depth) return ` to ${show(after.depth)} deep`
  if (before.left !== after.left) return ` at ${show(after.left)}`
  return before.bottom === after.bottom ? '' : ` at ${show(after.bottom)} above the floor`
}

function roomIn(
  left: { readonly gap: Mm; readonly to: string },
  right: { readonly gap: Mm; readonly to: string },
  show: (length: Mm) => string,
): string {
  if (left.gap === 0 && right.gap === 0) return `fits exactly between ${left.to} and ${right.to}`
  if (left.gap === 0) return `fits, ${show(right.gap)} left to ${right.to}`
  if (right.gap === 0) return `fits, ${show(left.gap)} left to ${left.to}`
  return `fits, ${show(left.gap)} left to ${left.to} and ${show(right.gap)} to ${right.to}`
}
