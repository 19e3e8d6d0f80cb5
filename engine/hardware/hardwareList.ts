import type { HardwareRow } from './row'

/** Equal pieces of all cabinets together. */
export interface HardwareTotal extends HardwareRow {
  /** Marks of the cabinets that they go into, each once. */
  readonly cabinets: readonly string[]
}

/** What is bought in pieces for all cabinets: by name, then by length. */
export function hardwareList(
  cabinets: readonly { readonly mark: string; readonly hardware: readonly HardwareRow[] }[],
): HardwareTotal[] {
  const totals = new Map<string, HardwareTotal>()
  for (const { mark, hardware } of cabinets) {
    for (const row of hardware) {
      const key = `${row.name} ${row.length}`
      const before = totals.get(key) ?? { ...row, quantity: 0, cabinets: [] }
      const marks = before.cabinets.includes(mark) ? before.cabinets : [...before.cabinets, mark]
      totals.set(key, { ...before, quantity: before.quantity + row.quantity, cabinets: marks })
    }
  }
  return [...totals.values()].sort((a, b) =>
    a.name < b.name ? -1 : a.name > b.name ? 1 : (a.length ?? 0) - (b.length ?? 0),
  )
}
