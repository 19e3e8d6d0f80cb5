import type { MaterialId } from '../basics/id'
import type { Problem } from '../basics/problem'
import type { Cabinet, Material } from '../project/document'
import type { BuildMethod, MethodChoices } from '../project/method'
import type { LengthDisplay } from '../units/length'
import type { Board, FrontFace } from './board'

/** A cabinet resolved against its build method. */
export interface CabinetBuild {
  readonly cabinet: Cabinet
  /** `B3`. */
  readonly mark: string
  readonly boards: readonly Board[]
  readonly fronts: readonly FrontFace[]
  readonly problems: readonly Problem[]
}

/** What a cabinet is built from, besides itself: its method with its own overrides, and the boards at hand. */
export interface Rules {
  readonly method: BuildMethod
  readonly materials: Readonly<Record<MaterialId, Material>>
  /** How messages say a length; in millimetres when it is not given. */
  readonly display?: LengthDisplay
}

export function withOverrides(method: BuildMethod, overrides: Partial<MethodChoices>): BuildMethod {
  return Object.keys(overrides).length === 0 ? method : { ...method, ...overrides }
}
