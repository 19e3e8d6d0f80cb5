import type { Cabinet, Project } from './document'
import type { BuildMethod, MethodChoices } from './method'

export function withOverrides(method: BuildMethod, overrides: Partial<MethodChoices>): BuildMethod {
  return Object.keys(overrides).length === 0 ? method : { ...method, ...overrides }
}

/** Whether fronts are flush with what they stand in: the carcass, or the face frame where there is one. */
export function areFrontsInset({ faceFrame, frontMount }: Pick<MethodChoices, 'faceFrame' | 'frontMount'>): boolean {
  return faceFrame ? faceFrame.fronts.kind === 'inset' : frontMount === 'inset'
}

/** The method that a cabinet is built by, with its own choices. */
export function methodOf({ method, overrides }: Cabinet, { methods, method: usual }: Project): BuildMethod {
  return withOverrides(methods[method ?? usual]!, overrides)
}
