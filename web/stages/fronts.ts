import type { Front, FrontRow, Mm } from '../../engine/index'

/** The fronts that can be picked by name; anything else was divided by hand. */
export type FrontName =
  | 'open'
  | 'doorLeft'
  | 'doorRight'
  | 'pair'
  | 'flap'
  | 'drawer'
  | 'overDoor'
  | 'sink'
  | 'bank'
  | 'other'

export const FRONT_WORDS: readonly (readonly [FrontName, string])[] = [
  ['open', 'open'],
  ['doorLeft', 'door, hinged left'],
  ['doorRight', 'door, hinged right'],
  ['pair', 'pair of doors'],
  ['flap', 'flap, hinged at its top'],
  ['drawer', 'one drawer'],
  ['overDoor', 'drawer over doors'],
  ['sink', 'false front over doors'],
  ['bank', 'bank of drawers'],
]

export function frontName(front: Front): FrontName {
  switch (front.kind) {
    case 'open':
    case 'pair':
    case 'drawer':
      return front.kind
    case 'door':
      return front.hinge === 'top' ? 'flap' : front.hinge === 'left' ? 'doorLeft' : 'doorRight'
    case 'rows':
      return rowsName(front.rows)
    case 'columns':
    case 'appliance':
    case 'falseFront':
      return 'other'
  }
}

function rowsName(rows: readonly FrontRow[]): FrontName {
  if (rows.every(({ front }) => front.kind === 'drawer')) return 'bank'
  const [over, under] = rows
  const isOver = rows.length === 2 && over!.size.kind === 'fixed'
  const isDoor = under?.front.kind === 'pair' || under?.front.kind === 'door'
  if (!isOver || !isDoor) return 'other'
  return over!.front.kind === 'drawer' ? 'overDoor' : over!.front.kind === 'falseFront' ? 'sink' : 'other'
}

/** The height of the drawer front over doors (common practice, no source). */
export const DRAWER_OVER: Mm = 160
export const FEWEST_DRAWERS = 2
export const MOST_DRAWERS = 8
/** Wider than this a pair of doors is hung (common practice, no source). */
const WIDEST_DOOR: Mm = 600

export function frontOf(name: FrontName, width: Mm): Front {
  switch (name) {
    case 'open':
    case 'pair':
    case 'drawer':
      return { kind: name }
    case 'doorLeft':
      return { kind: 'door', hinge: 'left' }
    case 'doorRight':
      return { kind: 'door', hinge: 'right' }
    case 'overDoor':
      return overDoor('drawer', DRAWER_OVER, doorsFor(width))
    case 'sink':
      return overDoor('falseFront', DRAWER_OVER, doorsFor(width))
    case 'flap':
      return { kind: 'door', hinge: 'top' }
    case 'bank':
      return bankOf(3)
    case 'other':
      return { kind: 'open' }
  }
}

function doorsFor(width: Mm): Front {
  return width > WIDEST_DOOR ? { kind: 'pair' } : { kind: 'door', hinge: 'left' }
}

export function overDoor(over: 'drawer' | 'falseFront', height: Mm, under: Front): Front {
  return {
    kind: 'rows',
    rows: [
      { size: { kind: 'fixed', height }, front: { kind: over } },
      { size: { kind: 'share', share: 1 }, front: under },
    ],
  }
}

/** Drawers of equal height. */
export function bankOf(count: number): Front {
  const drawer: FrontRow = { size: { kind: 'share', share: 1 }, front: { kind: 'drawer' } }
  return { kind: 'rows', rows: Array.from({ length: count }, () => drawer) }
}
