import { valuesOf } from '../basics/id'
import type { Mm } from '../units/length'
import type { Countertop, OwnTop, TopHere } from './between'
import type { Cabinet, Project } from './document'
import type { Edit } from './edit'
import { find } from './references'
import { isSame } from './settled'
import { isSeatHigh, isUnderTop } from './underTop'

/** What a countertop begins with. Common practice, no source. */
export const USUAL_TOP = { overhang: 20, ends: 15, splash: 0, banding: 0 } as const satisfies Partial<Countertop>

/** What is asked of a base to know what lies on it. */
type Topped = Pick<Cabinet, 'top' | 'bottom' | 'height'>

/**
 * The countertop over a base: the project's, with what is settled otherwise there. Where the project has none, one of the
 * usual measures is made of a board of its own. Null where none is made; a seat board has no splash but its own.
 */
export function countertopOver(cabinet: Topped, { between }: Pick<Project, 'between'>): Countertop | null {
  const { countertop } = between
  const own = cabinet.top?.own
  const isSeat = cabinet.top !== undefined && isSeatHigh(cabinet)
  if (!own && !isSeat) return countertop
  const material = own?.material ?? countertop?.material
  if (material === undefined) return null
  return { ...(countertop ?? USUAL_TOP), ...(isSeat && { splash: 0 }), ...own, material }
}

/** Whether any countertop is made. */
export function areTopsMade({ between, cabinets }: Pick<Project, 'between' | 'cabinets'>): boolean {
  return between.countertop !== null || valuesOf<Cabinet>(cabinets).some(({ top }) => top?.own?.material !== undefined)
}

/** Whether a countertop or a seat board goes over a cabinet, and is made. */
export function hasTopOver(cabinet: Cabinet, project: Project): boolean {
  return countertopOver(cabinet, project) !== null && isUnderTop(cabinet, project)
}

/** Whether two bases have a countertop of one board, edge and splash over them. */
export function isSameTop(a: Topped, b: Topped, project: Project): boolean {
  return isSame(countertopOver(a, project), countertopOver(b, project))
}

/** What the top over a base has of its own, by name. */
export function ownTopNames({ top }: Pick<Cabinet, 'top'>): (keyof OwnTop)[] {
  return Object.keys(top?.own ?? {}) as (keyof OwnTop)[]
}

/** What is undefined is as the project's again. */
export type OwnTopChange = { readonly [Name in keyof OwnTop]?: OwnTop[Name] | undefined }

/** How a countertop is over a base after a change of what is its own. */
export function withOwnTop(before: TopHere | undefined, change: OwnTopChange): TopHere {
  const { own, ...others } = before ?? {}
  const left = Object.entries({ ...own, ...change }).filter(([, value]) => value !== undefined)
  return left.length > 0 ? { ...others, own: Object.fromEntries(left) } : others
}

/** A change of what the tops over bases have of their own, as one edit. */
export function ownTopEdit(cabinets: readonly Pick<Cabinet, 'id' | 'top'>[], change: OwnTopChange): Edit {
  return eachTop(cabinets, (top) => withOwnTop(top, change))
}

/** How the countertop is over each of some bases, from how it was, as one edit. */
export function eachTop(
  cabinets: readonly Pick<Cabinet, 'id' | 'top'>[],
  changed: (before: TopHere | undefined) => TopHere,
): Edit {
  const edits = cabinets.map(({ id, top }): Edit => ({ kind: 'setTop', ids: [id], top: changed(top) }))
  return edits.length === 1 ? edits[0]! : { kind: 'several', edits }
}

/** A change of one measure of a top, made where that is settled: over its own bases, or for the project. */
export function topEdit(project: Project, cabinets: readonly Cabinet[], change: OwnTop): Edit {
  const isOwn = cabinets.some((one) =>
    Object.keys(change).some((name) => ownTopNames(one).includes(name as keyof OwnTop)),
  )
  if (isOwn) return ownTopEdit(cabinets, change)
  return { kind: 'editBetween', change: { countertop: { ...project.between.countertop!, ...change } } }
}

/** How thick the countertop over a base is; 0 where none is made, or of a board that is not there. */
export function topThickness(cabinet: Topped, project: Pick<Project, 'between' | 'materials'>): Mm {
  const countertop = countertopOver(cabinet, project)
  return countertop ? (find(project.materials, countertop.material)?.thickness ?? 0) : 0
}
