import type { LengthDisplay } from './length'

/** A pound in kg, exactly. */
export const KG_PER_POUND = 0.45359237

/** A weight in kg with its unit, in the one that goes with the lengths of a project: `28.2 kg`, `62.2 lb`. */
export function formatWeight(kg: number, { unit }: Pick<LengthDisplay, 'unit'>): string {
  return unit === 'mm' ? `${inTenths(kg)} kg` : `${inTenths(kg / KG_PER_POUND)} lb`
}

/** What a pair of slides carries, as its class is called, in pounds: `22.7 kg (50 lb)` where weights are in kg. */
export function slideClass(pounds: number, display: Pick<LengthDisplay, 'unit'>): string {
  const called = `${pounds} lb`
  return display.unit === 'in' ? called : `${formatWeight(pounds * KG_PER_POUND, display)} (${called})`
}

function inTenths(weight: number): number {
  return Math.round(weight * 10) / 10
}
