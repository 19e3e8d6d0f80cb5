import { VERSION } from './document'
import { withFixings } from './fixingMigration'
import { withNoFrames } from './frames'
import { NOTHING_LATE } from './late'
import { withMachining } from './machining'

/** From version n (at n - 1) to version n + 1. A saved document is a plain object here, checked only afterwards. */
export const MIGRATIONS: readonly ((saved: Record<string, unknown>) => Record<string, unknown>)[] = [
  withTools,
  withNothingExcluded,
  withNoWishes,
  withColumnsToCome,
  (saved) => withEachMethod(withNothingBetween(saved), withMachining),
  withTheRestOfAKitchen,
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
  return isFields(shop) ? { ...saved, shop: { ...tools, ...shop } } : saved
}

/** 2 to 3: sheets and offcuts can be set aside. None was. */
function withNothingExcluded(saved: Record<string, unknown>): Record<string, unknown> {
  return withEach(saved, 'stock', { isExcluded: false })
}

/**
 * 3 to 4: sheets can be kept, boards wished from one kind of sheet, and grain can run on; none was. What is looked for
 * besides few sheets can be left out; all of it was looked for. Boards are as stiff as birch ply, and the house is as houses are.
 */
function withNoWishes(saved: Record<string, unknown>): Record<string, unknown> {
  const { shop } = saved
  const goals = { isOffcutLarge: true, areSettingsFew: true }
  const wishing = isFields(shop) ? { ...saved, shop: { goals, ...shop } } : saved
  const house = { shelfLoad: 'kitchen', doorway: null, studSpacing: 406.4 }
  const stiff = withEach({ kept: {}, house, ...wishing }, 'materials', { stiffness: 9000 })
  return withEach(stiff, 'cabinets', { isGrainRunning: false, pins: {} })
}

/** 4 to 5: a front may be divided into columns, and more may be inside; none was, so that nothing is different. */
function withColumnsToCome(saved: Record<string, unknown>): Record<string, unknown> {
  return saved
}

/** 5 to 6: what stands between cabinets and over them can be chosen; nothing was, and each had its own kick board. */
function withNothingBetween(saved: Record<string, unknown>): Record<string, unknown> {
  const nothing = { beside: { left: { kind: 'none' }, right: { kind: 'none' } }, cutout: null }
  const between = { kick: 'perCabinet', countertop: null }
  return withEach({ between, ...saved }, 'cabinets', nothing)
}

/**
 * 6 to 7: uppers and talls can have light rails, crowns and valances, and countertops a banded edge; none had. No
 * board of a run was pinned.
 */
function withNoTrims(saved: Record<string, unknown>): Record<string, unknown> {
  const { between } = saved
  if (!isFields(between)) return saved
  const { countertop } = between
  const plain = isFields(countertop) ? { ...between, countertop: { banding: 0, ...countertop } } : between
  return { ...saved, between: { lightRail: null, crown: null, valance: null, pins: {}, ...plain } }
}

/** 6 to 7: corners, walls that meet, trims, face frames, fixings and what is cut last can be chosen; nothing of it was. */
function withTheRestOfAKitchen(saved: Record<string, unknown>): Record<string, unknown> {
  const document = withNothingLate(withWallsApart(withoutCorners(withNoTrims(saved))))
  return withEachMethod(document, (method) => withFixings(withNoFrames(method)))
}

/** 6 to 7: parts can be cut when the carcasses stand; all were cut at once. */
function withNothingLate(saved: Record<string, unknown>): Record<string, unknown> {
  const { shop } = saved
  return isFields(shop) ? { ...saved, shop: { late: NOTHING_LATE, ...shop } } : saved
}

/** Every build method as it is after `more`. */
function withEachMethod(
  saved: Record<string, unknown>,
  more: (method: Record<string, unknown>) => Record<string, unknown>,
): Record<string, unknown> {
  const { methods } = saved
  if (!isFields(methods)) return saved
  const all = Object.entries(methods).map(([id, method]) => [id, isFields(method) ? more(method) : method])
  return { ...saved, methods: Object.fromEntries(all) }
}

/** 6 to 7: a cabinet may go on along another wall; none did. */
function withoutCorners(saved: Record<string, unknown>): Record<string, unknown> {
  return withEach(saved, 'cabinets', { corner: null })
}

/** 6 to 7: a wall may meet the one before it; none did. */
function withWallsApart(saved: Record<string, unknown>): Record<string, unknown> {
  return withEach(saved, 'walls', { meets: false })
}

/** Every thing of a map with more fields than it had. */
function withEach(saved: Record<string, unknown>, room: string, more: object): Record<string, unknown> {
  const things = saved[room]
  if (!isFields(things)) return saved
  const all = Object.entries(things).map(([id, thing]) => [id, isFields(thing) ? { ...thing, ...more } : thing])
  return { ...saved, [room]: Object.fromEntries(all) }
}

function isFields(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}
