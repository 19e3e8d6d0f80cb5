import type { MaterialId } from '../basics/id'
import type { Problem } from '../basics/problem'
import type { Between, Cabinet, Material, Project } from '../project/document'
import type { BuildMethod, MethodChoices } from '../project/method'
import type { LengthDisplay } from '../units/length'
import type { Board, FrontFace } from './board'
import type { FrontOpening } from './frontOpening'

/** A cabinet resolved against its build method. */
export interface CabinetBuild {
  readonly cabinet: Cabinet
  /** `B3`. */
  readonly mark: string
  readonly boards: readonly Board[]
  readonly fronts: readonly FrontFace[]
  /** What its fronts are made to, as drawn and as measured. */
  readonly openings: readonly FrontOpening[]
  readonly problems: readonly Problem[]
}

/** What a cabinet is built from, besides itself: its method with its own overrides, and the boards at hand. */
export interface Rules {
  readonly method: BuildMethod
  readonly materials: Readonly<Record<MaterialId, Material>>
  /** A kick board in each cabinet unless said otherwise; in lengths they are made for runs. */
  readonly kick?: Between['kick']
  /** How messages say a length; in millimetres when it is not given. */
  readonly display?: LengthDisplay
}

/** A method with a cabinet's own choices. What hangs has nothing under it, whatever its kind. */
export function withOverrides(
  method: BuildMethod,
  { kind, bottom, overrides }: Pick<Cabinet, 'kind' | 'bottom' | 'overrides'>,
): BuildMethod {
  const own = Object.keys(overrides).length === 0 ? method : { ...method, ...overrides }
  return kind !== 'upper' && bottom > 0 && own.floor.kind !== 'none' ? { ...own, floor: { kind: 'none' } } : own
}

/** Whether fronts are flush with what they stand in: the carcass, or the face frame where there is one. */
export function areFrontsInset({ faceFrame, frontMount }: Pick<MethodChoices, 'faceFrame' | 'frontMount'>): boolean {
  return faceFrame ? faceFrame.fronts.kind === 'inset' : frontMount === 'inset'
}

/** The method that a cabinet is built by, with its own choices. */
export function methodOf(cabinet: Cabinet, { methods, method: usual }: Project): BuildMethod {
  return withOverrides(methods[cabinet.method ?? usual]!, cabinet)
}

/** Uppers, and what is made to stand but was put higher than the floor. */
export function isHung({ kind, bottom }: Pick<Cabinet, 'kind' | 'bottom'>): boolean {
  return kind === 'upper' || bottom > 0
}
