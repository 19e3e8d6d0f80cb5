import { VERSION } from './document'

/** From version n (at n - 1) to version n + 1. A saved document is a plain object here, checked only afterwards. */
export const MIGRATIONS: readonly ((saved: Record<string, unknown>) => Record<string, unknown>)[] = []

/** A saved document brought to this version, step by step. */
export function migrate(saved: Record<string, unknown>, from: number): Record<string, unknown> {
  let document = saved
  for (let version = from; version < VERSION; version++) {
    document = { ...MIGRATIONS[version - 1]!(document), version: version + 1 }
  }
  return document
}
