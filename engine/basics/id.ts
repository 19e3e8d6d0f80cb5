declare const brand: unique symbol
type Branded<Name extends string> = string & { readonly [brand]: Name }

export type ProjectId = Branded<'ProjectId'>
export type WallId = Branded<'WallId'>
export type OpeningId = Branded<'OpeningId'>
export type CabinetId = Branded<'CabinetId'>
export type MethodId = Branded<'MethodId'>
export type MaterialId = Branded<'MaterialId'>
export type StockId = Branded<'StockId'>
export type KeptId = Branded<'KeptId'>
export type SequenceId = Branded<'SequenceId'>
/** Boards that go over several cabinets, named after the first of them: `Kick-k3`, with a capital as no saved id has. */
export type RunId = Branded<'RunId'>
/** What a part belongs to. */
export type OwnerId = CabinetId | RunId
/** A part is named after its owner and its place in it: `k3/left-side`. */
export type PartId = Branded<'PartId'>
/** What makes boards equal to the saw: rows with the same key are the same row, whatever their mark. */
export type RowKey = Branded<'RowKey'>

export function isRunId(id: OwnerId): id is RunId {
  return /^[A-Z]/.test(id)
}

/** Things by their id. Order is never the order of keys: a thing that has an order carries it. */
export type ById<Id extends string, Thing> = { readonly [id in Id]: Thing }

/** The things of a map with their ids, in a frame the compiler believes. */
export function entriesOf<Id extends string, Thing>(things: ById<Id, Thing>): [Id, Thing][] {
  return Object.entries(things) as [Id, Thing][]
}

export function valuesOf<Thing>(things: ById<string, Thing>): Thing[] {
  return Object.values(things)
}

/**
 * The first free name `k1`, `k2`... in a map. Names are counted, never drawn by lot, so that the same edits give the
 * same document.
 */
export function freeId<Id extends string>(prefix: string, taken: ById<Id, unknown>): Id {
  let number = 1
  while (Object.hasOwn(taken, `${prefix}${number}`)) number++
  return `${prefix}${number}` as Id
}
