import type { MaterialId } from '../basics/id'
import type { Problem } from '../basics/problem'
import type { Box } from '../geometry/box'
import { methodOf } from '../project/builtBy'
import type { Between, Cabinet, Material, Project } from '../project/document'
import type { BuildMethod } from '../project/method'
import type { LengthDisplay } from '../units/length'
import type { Board, FrontFace } from './board'
import type { FrontOpening } from './frontOpening'

export { areFrontsInset, isHung, methodOf, withOverrides } from '../project/builtBy'

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
  /** What stands in a space that no board is of: the appliance, in the frame of its space. None in a cabinet. */
  readonly bodies?: readonly Box[]
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

/** What a cabinet of a project is built from. */
export function rulesOf(cabinet: Cabinet, project: Project): Rules {
  const { materials, display, between } = project
  return { method: methodOf(cabinet, project), materials, display, kick: between.kick }
}
