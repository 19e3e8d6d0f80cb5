import {
  bankOf,
  childrenOf,
  DOORS,
  dividedInto,
  type Front,
  type FrontPath,
  type FrontRow,
  type Mm,
  placeWords,
} from '../../engine/index'

/** The fronts that can be picked by name; anything else was divided by hand. */
export type FrontName =
  | 'open'
  | 'doorLeft'
  | 'doorRight'
  | 'doorsLeft'
  | 'doorsRight'
  | 'pair'
  | 'flap'
  | 'drawer'
  | 'overDoor'
  | 'sink'
  | 'bank'
  | 'columns'
  | 'falseFront'
  | 'appliance'
  | 'pullOut'
  | 'blind'
  | 'other'

export const FRONT_WORDS: readonly (readonly [FrontName, string])[] = [
  ['open', 'open'],
  ['doorsLeft', 'door or pair, left'],
  ['doorsRight', 'door or pair, right'],
  ['doorLeft', 'door, hinged left'],
  ['doorRight', 'door, hinged right'],
  ['pair', 'pair of doors'],
  ['flap', 'flap, hinged at its top'],
  ['drawer', 'one drawer'],
  ['overDoor', 'drawer over doors'],
  ['sink', 'false front over doors'],
  ['bank', 'bank of drawers'],
  ['columns', 'columns'],
  ['falseFront', 'false front'],
  ['appliance', 'niche for an appliance'],
  ['pullOut', 'pull-out on a low box'],
  ['blind', 'blind panel'],
]

export function frontName(front: Front): FrontName {
  switch (front.kind) {
    case 'open':
    case 'pair':
    case 'drawer':
    case 'columns':
    case 'falseFront':
    case 'blind':
    case 'pullOut':
    case 'appliance':
      return front.kind
    case 'door':
      return doorName(front)
    case 'rows':
      return rowsName(front.rows)
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

export function frontOf(name: FrontName): Front {
  switch (name) {
    case 'open':
    case 'pair':
    case 'drawer':
      return { kind: name }
    case 'doorLeft':
      return { kind: 'door', hinge: 'left' }
    case 'doorRight':
      return { kind: 'door', hinge: 'right' }
    case 'doorsLeft':
      return DOORS
    case 'doorsRight':
      return { ...DOORS, hinge: 'right' }
    case 'overDoor':
      return overDoor('drawer', DRAWER_OVER, DOORS)
    case 'sink':
      return overDoor('falseFront', DRAWER_OVER, DOORS)
    case 'flap':
      return { kind: 'door', hinge: 'top' }
    case 'falseFront':
    case 'pullOut':
    case 'blind':
    case 'appliance':
      return leafOf(name, { kind: 'open' })
    case 'columns':
      return dividedInto('columns', [{ kind: 'door', hinge: 'left' }, bankOf(3)])
    case 'bank':
      return bankOf(3)
    case 'other':
      return { kind: 'open' }
  }
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

/** What a row or a column can be by itself. */
export type LeafName =
  | 'open'
  | 'doorLeft'
  | 'doorRight'
  | 'doorsLeft'
  | 'doorsRight'
  | 'pair'
  | 'flap'
  | 'drawer'
  | 'falseFront'
  | 'appliance'
  | 'pullOut'
  | 'blind'
  | 'rows'
  | 'columns'

export const LEAF_WORDS: readonly (readonly [LeafName, string])[] = [
  ['open', 'open'],
  ['doorsLeft', 'door or pair, left'],
  ['doorsRight', 'door or pair, right'],
  ['doorLeft', 'door, hinged left'],
  ['doorRight', 'door, hinged right'],
  ['pair', 'pair of doors'],
  ['flap', 'flap, hinged at its top'],
  ['drawer', 'drawer'],
  ['falseFront', 'false front'],
  ['appliance', 'niche for an appliance'],
  ['pullOut', 'pull-out on a low box'],
  ['blind', 'blind panel of a corner'],
  ['rows', 'divided into rows'],
  ['columns', 'divided into columns'],
]

export function leafName(front: Front): LeafName {
  if (front.kind !== 'door') return front.kind
  return doorName(front)
}

function doorName({ hinge, orPair }: Extract<Front, { kind: 'door' }>) {
  if (hinge === 'top') return 'flap'
  if (orPair) return hinge === 'left' ? 'doorsLeft' : 'doorsRight'
  return hinge === 'left' ? 'doorLeft' : 'doorRight'
}

/** A usual built-in oven (common practice, no source); the maker's drawing is what counts. */
const OVEN = { kind: 'appliance', width: 560, height: 590, air: 45 } as const

/** A low box that bins stand in (common practice, no source). */
const PULL_OUT = { kind: 'pullOut', box: 150 } as const
/** Behind a run of the usual depth (common practice, no source). */
const BLIND = { kind: 'blind', neighbour: 580, filler: 50, pull: 40 } as const

/** What was whole and is divided keeps what closed it, twice. */
export function leafOf(name: LeafName, before: Front): Front {
  switch (name) {
    case 'doorLeft':
      return { kind: 'door', hinge: 'left' }
    case 'doorRight':
      return { kind: 'door', hinge: 'right' }
    case 'doorsLeft':
      return DOORS
    case 'doorsRight':
      return { ...DOORS, hinge: 'right' }
    case 'flap':
      return { kind: 'door', hinge: 'top' }
    case 'appliance':
      return OVEN
    case 'pullOut':
      return PULL_OUT
    case 'blind':
      return BLIND
    case 'rows':
    case 'columns':
      if (before.kind === 'rows' || before.kind === 'columns') {
        return dividedInto(
          name,
          childrenOf(before).map(({ front }) => front),
        )
      }
      return dividedInto(name, [before, before])
    default:
      return { kind: name }
  }
}

/** `Column 2, row 1`. */
export function placeName(front: Front, path: FrontPath): string {
  const text = placeWords(front, path)
  return text.charAt(0).toUpperCase() + text.slice(1)
}
