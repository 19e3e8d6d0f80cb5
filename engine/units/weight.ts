import type { LengthDisplay } from './length'

/** A pound in kg, exactly. */
export const KG_PER_POUND = 0.45359237

/** A weight in kg with its unit, in the one that goes with the lengths of a project: `28.2 kg`, `62.2 lb`. */
export function formatWeight(kg: number, { unit }: Pick<LengthDisplay, 'unit'>): string {
  return unit === 'mm' ? `${inTenths(kg)} kg` : `${inTenths(kg / KG_PER_POUND)} lb`
}

/** The unit of weights that goes with the lengths of a project, and how many kg it is. */
export function weightUnit({ unit }: Pick<LengthDisplay, 'unit'>): { readonly name: string; readonly kg: number } {
  return unit === 'mm' ? { name: 'kg', kg: 1 } : { name: 'lb', kg: KG_PER_POUND }
}

/** The unit of densities, and how many kg per cubic metre it is. */
export function densityUnit({ unit }: Pick<LengthDisplay, 'unit'>): { readonly name: string; readonly kg: number } {
  return unit === 'mm' ? { name: 'kg/m³', kg: 1 } : { name: 'lb/ft³', kg: KG_PER_POUND / CUBIC_FOOT }
}

/** The unit of stiffness, and how many newtons per square millimetre it is. */
export function stiffnessUnit({ unit }: Pick<LengthDisplay, 'unit'>): {
  readonly name: string
  readonly newtons: number
} {
  return unit === 'mm' ? { name: 'N/mm²', newtons: 1 } : { name: '1000 psi', newtons: 1000 * PSI }
}

/** What a kg weighs, in newtons. */
export const NEWTON_PER_KG = 9.80665

/** One pound per square inch in newtons per square millimetre. */
export const PSI = (KG_PER_POUND * NEWTON_PER_KG) / 25.4 ** 2

/** In cubic metres. */
const CUBIC_FOOT = 0.3048 ** 3

/** What a pair of slides carries, as its class is called, in pounds: `22.7 kg (50 lb)` where weights are in kg. */
export function slideClass(pounds: number, display: Pick<LengthDisplay, 'unit'>): string {
  const called = `${pounds} lb`
  return display.unit === 'in' ? called : `${formatWeight(pounds * KG_PER_POUND, display)} (${called})`
}

function inTenths(weight: number): number {
  return Math.round(weight * 10) / 10
}
