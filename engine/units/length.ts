/** A length in millimetres. The engine knows no other. */
export type Mm = number

/** The grid that lengths settle on: 1/128 in is exactly 635 ticks of it, 0.01 mm exactly 32. */
export const TICKS_PER_MM = 3200

/** One inch is 25.4 mm. Written as x 254 / 10 because 0.75 * 25.4 is 19.049999999999997. */
export function inch(inches: number): Mm {
  return settle((inches * 254) / 10)
}

/** The nearest length on the 1/3200 mm grid, so that equal boards are equal to `===`. Adding 0 makes -0 plain 0. */
export function settle(length: Mm): Mm {
  return Math.round(length * TICKS_PER_MM) / TICKS_PER_MM + 0
}

/** Lengths that were settled each by itself may differ by less though they are meant to be equal. */
export const AS_SETTLED: Mm = 0.002

export function ticks(length: Mm): number {
  return Math.round(length * TICKS_PER_MM)
}

export function fromTicks(count: number): Mm {
  return count / TICKS_PER_MM
}

/** How lengths are shown and which unit a bare number in an entry field means. Never touches the geometry. */
export type LengthDisplay =
  | { readonly unit: 'mm' /** Shown to whole, half or tenth millimetres. */; readonly step: 1 | 0.5 | 0.1 }
  | { readonly unit: 'in' /** Shown to 1/16, 1/32 or 1/64 of an inch. */; readonly step: 16 | 32 | 64 }
