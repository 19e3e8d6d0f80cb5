import {
  applyEdit,
  type Cabinet,
  type CabinetId,
  type Edit,
  fitOf,
  formatWithUnit,
  freeNumber,
  handStep,
  labelOf,
  type Mm,
  markOf,
  type NewKind,
  newCabinetAt,
  newKindName,
  type Project,
  placesFor,
  type Rect,
  type WallId,
} from '../../engine/index'
import { added } from './create'
import type { Outcome } from './hand'
import { movedBy } from './move'

/** What a command comes to: an edit with what is selected afterwards, or the reason why not. */
export type Deed =
  | {
      readonly kind: 'make'
      readonly edit: Edit
      readonly label: string
      readonly select: readonly CabinetId[]
      readonly said: string
    }
  | { readonly kind: 'refuse'; readonly why: string }

/** A nudge is 1 mm or 1/16 in, and ten times that with Shift. */
export function nudgeOf(project: Project, isLarge: boolean): Mm {
  return handStep(project) * (isLarge ? 10 : 1)
}

/** Cabinets nudged by a distance; what stands on the floor does not go up. */
export function nudged(project: Project, ids: readonly CabinetId[], dx: Mm, dy: Mm): Outcome {
  const standing =
    dy === 0 ? undefined : ids.map((id) => project.cabinets[id]).find((one) => one && one.kind !== 'upper')
  if (!standing) return movedBy(project, ids, dx, dy, false)
  const text = `${markOf(standing)} stands on the floor and moves along the wall only`
  return { edit: null, guides: [], about: ids, words: { fits: false, text } }
}

export function removed(project: Project, ids: readonly CabinetId[]): Deed {
  if (ids.length === 0) return { kind: 'refuse', why: 'Nothing is selected' }
  const edit: Edit = { kind: 'removeCabinets', ids }
  const label = labelOf(project, edit)
  return { kind: 'make', edit, label, select: [], said: `${label.replace('Delete', 'Deleted')}. Undo brings it back` }
}

/** A new cabinet in the first free place. */
export function addedFirst(project: Project, what: NewKind, on: WallId | null): Deed {
  const cabinet = newCabinetAt(project, what, null, undefined, on)
  const outcome = cabinet && added(project, cabinet)
  if (!outcome?.edit || !outcome.words?.fits) {
    return {
      kind: 'refuse',
      why: outcome?.words?.text ?? `There is no free place on the wall for another ${newKindName(what)}`,
    }
  }
  const { edit, about: select, words } = outcome
  return { kind: 'make', edit, label: labelOf(project, edit), select, said: `Added ${words.text}` }
}

/** A copy of each, in the next place that is free for it. */
export function duplicated(project: Project, ids: readonly CabinetId[]): Deed {
  const edits: Edit[] = []
  const copies: Cabinet[] = []
  let after = project
  for (const id of ids) {
    const source = project.cabinets[id]
    if (!source) continue
    const copy = copyOf(after, source)
    if (!copy) {
      const width = formatWithUnit(source.width, project.display)
      return { kind: 'refuse', why: `There is no free place ${width} wide for a copy of ${markOf(source)}` }
    }
    const edit: Edit = { kind: 'addCabinet', cabinet: copy }
    after = applyEdit(after, edit)
    edits.push(edit)
    copies.push(copy)
  }
  const [first] = copies
  if (!first) return { kind: 'refuse', why: 'Nothing is selected' }
  const marks = ids.flatMap((id) => (project.cabinets[id] ? [markOf(project.cabinets[id])] : [])).join(' and ')
  return {
    kind: 'make',
    edit: { kind: 'several', edits },
    label: `Duplicate ${marks}`,
    select: copies.map(({ id }) => id),
    said: `Copied ${marks} to ${copies.map(markOf).join(' and ')}`,
  }
}

function copyOf(project: Project, source: Cabinet): Cabinet | null {
  const fresh = newCabinetAt(project, source.kind, source.left + source.width, source.width, source.wall)
  if (!fresh) return null
  // A sheet that was chosen has room for one of them, and no opening of the copy was measured.
  const { sheets: _, ...own } = source
  const copy = { ...own, id: fresh.id, number: freeNumber(project, source), pins: {}, asBuilt: {} }
  const places = [source.left + source.width, source.left - source.width, ...lefts(project, source)]
  return places.map((left) => ({ ...copy, left })).find((there) => fitOf(project, there).fits) ?? null
}

function lefts(project: Project, { kind, width, wall }: Cabinet): Mm[] {
  return placesFor(project, kind, width, wall).map(({ left }) => left)
}

/** A cabinet on another wall, in the first place that is free for it there. */
export function movedToWall(project: Project, cabinet: Cabinet, on: WallId): Deed {
  const there = { ...cabinet, wall: on }
  const left = lefts(project, there).find((at) => fitOf(project, { ...there, left: at }).fits)
  const wall = project.walls[on]
  if (left === undefined || !wall) {
    const width = formatWithUnit(cabinet.width, project.display)
    return { kind: 'refuse', why: `There is no free place ${width} wide for ${markOf(cabinet)} on ${wall?.name ?? on}` }
  }
  const label = `Move ${markOf(cabinet)} to ${wall.name}`
  const edit: Edit = { kind: 'shapeCabinets', shapes: [{ id: cabinet.id, wall: on, left }] }
  return { kind: 'make', edit, label, select: [cabinet.id], said: label.replace('Move', 'Moved') }
}

/** The free places that a cabinet could be moved to, at its own height and size. */
export function placesToMove(project: Project, id: CabinetId): Rect[] {
  const cabinet = project.cabinets[id]
  if (!cabinet) return []
  const without = applyEdit(project, { kind: 'removeCabinets', ids: [id] })
  const { bottom, width, height } = cabinet
  return lefts(without, cabinet)
    .filter((left) => left !== cabinet.left && fitOf(project, { ...cabinet, left }).fits)
    .map((left) => ({ left, bottom, width, height }))
}
