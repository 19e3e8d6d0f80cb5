import type { Cabinet, Project } from './document'
import type { BuildMethod, MethodChoices } from './method'
import { withOwn } from './overrides'

/** A method with a cabinet's own choices. What hangs has nothing under it, whatever its kind. */
export function withOverrides(
  method: BuildMethod,
  { kind, bottom, overrides }: Pick<Cabinet, 'kind' | 'bottom' | 'overrides'>,
): BuildMethod {
  const own = withOwn(method, overrides)
  return kind !== 'upper' && bottom > 0 && own.floor.kind !== 'none' ? { ...own, floor: { kind: 'none' } } : own
}

/** Whether fronts are flush with what they stand in: the carcass, or the face frame where there is one. */
export function areFrontsInset({ faceFrame, frontMount }: Pick<MethodChoices, 'faceFrame' | 'frontMount'>): boolean {
  return faceFrame ? faceFrame.fronts.kind === 'inset' : frontMount === 'inset'
}

/** What a cabinet was last built by, and from which method: asked for again and again while something is dragged. */
const lastOf = new WeakMap<Cabinet, { readonly from: BuildMethod; readonly method: BuildMethod }>()

/** The method that a cabinet is built by, with its own choices. */
export function methodOf(cabinet: Cabinet, { methods, method: usual }: Project): BuildMethod {
  const from = methods[cabinet.method ?? usual]!
  const before = lastOf.get(cabinet)
  if (before?.from === from) return before.method
  const method = withOverrides(from, cabinet)
  lastOf.set(cabinet, { from, method })
  return method
}

/** Whether it is finished behind too, of the boards that fronts are of, to be seen from there. */
export function hasFinishedBack({ back, backMaterial, frontMaterial }: BuildMethod): boolean {
  return back.kind === 'applied' && backMaterial === frontMaterial
}

/** Whether it stands away from the walls, as an island does: finished behind, and with nothing to fix it to a wall by. */
export function standsFree(method: BuildMethod): boolean {
  return hasFinishedBack(method) && !method.nailers.top && !method.nailers.bottom
}

/** Uppers, and what is made to stand but was put higher than the floor. */
export function isHung({ kind, bottom }: Pick<Cabinet, 'kind' | 'bottom'>): boolean {
  return kind === 'upper' || bottom > 0
}
