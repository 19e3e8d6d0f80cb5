import { VERSION } from './document'

/** From version n (at n - 1) to version n + 1. A saved document is a plain object here, checked only afterwards. */
export const MIGRATIONS: readonly ((saved: Record<string, unknown>) => Record<string, unknown>)[] = [
  withTools,
  withNothingExcluded,
]

/** A saved document brought to this version, step by step. */
export function migrate(saved: Record<string, unknown>, from: number): Record<string, unknown> {
  let document = saved
  for (let version = from; version < VERSION; version++) {
    document = { ...MIGRATIONS[version - 1]!(document), version: version + 1 }
  }
  return document
}

/** 1 to 2: what the shop's tools can do beyond rail and guides. A rail could always be joined to another. */
function withTools(saved: Record<string, unknown>): Record<string, unknown> {
  const tools = {
    canJoinRails: true,
    narrowRips: { least: 0, greatest: 230 },
    roughLength: 10,
    blades: { rip: { teeth: 18 }, crosscut: { teeth: 48 } },
    cutOrder: null,
  }
  const { shop } = saved
  const isShop = typeof shop === 'object' && shop !== null && !Array.isArray(shop)
  return isShop ? { ...saved, shop: { ...tools, ...shop } } : saved
}

/** 2 to 3: sheets and offcuts can be set aside. None was. */
function withNothingExcluded(saved: Record<string, unknown>): Record<string, unknown> {
  const { stock } = saved
  if (typeof stock !== 'object' || stock === null || Array.isArray(stock)) return saved
  const sheets = Object.entries(stock as Record<string, unknown>).map(([id, sheet]) => {
    const isSheet = typeof sheet === 'object' && sheet !== null && !Array.isArray(sheet)
    return [id, isSheet ? { ...sheet, isExcluded: false } : sheet]
  })
  return { ...saved, stock: Object.fromEntries(sheets) }
}
