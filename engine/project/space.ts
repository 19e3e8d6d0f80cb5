import type { Mm } from '../units/length'

/** What stands free in a run, between cabinets. */
export type Appliance = 'dishwasher' | 'washingMachine' | 'fridge' | 'range'

/**
 * A place that is left free along the wall for an appliance. It is as wide, high and deep as it is drawn, like a cabinet,
 * and has no boards but the panels beside it.
 */
export interface ApplianceSpace {
  readonly of: Appliance
  /** The least that its maker asks for, clear, with the room for air; what the space is more stays as play. */
  readonly width: Mm
  readonly height: Mm
  /** From the wall, with hoses and plugs, without the door. */
  readonly depth: Mm
  /** Whether the countertop goes on over it. Of no effect where none is made, and on what is tall. */
  readonly isTopOver: boolean
  /** Whether the kick board goes on before it. */
  readonly isKickBefore: boolean
}

export const APPLIANCES: readonly (readonly [Appliance, string])[] = [
  ['dishwasher', 'dishwasher'],
  ['washingMachine', 'washing machine'],
  ['fridge', 'fridge'],
  ['range', 'range'],
]

export function applianceName(of: Appliance): string {
  return APPLIANCES.find(([one]) => one === of)![1]
}

/** What a cabinet is called besides its mark: `base`, or `space for a dishwasher`. */
export function cabinetWords({ kind, space }: { readonly kind: string; readonly space?: ApplianceSpace }): string {
  return space ? `space for a ${applianceName(space.of)}` : kind
}
