import type { CabinetKind } from './document'

/** Ordinary cabinets that stand ready to be put on the wall: choices that the maker could make one by one. */
export type ReadyName =
  | 'drawerBase'
  | 'sinkBase'
  | 'vanityBase'
  | 'blindBase'
  | 'islandBase'
  | 'benchBox'
  | 'openShelves'
  | 'blindUpper'
  | 'endShelf'
  | 'pantry'
  | 'applianceHousing'
  | 'cornerBase'
  | 'cornerUpper'
  | 'diagonalBase'
  | 'diagonalUpper'

/** Places that are left free for an appliance. */
export type SpaceName = 'dishwasherSpace' | 'washerSpace' | 'rangeSpace' | 'fridgeSpace' | 'tallFridgeSpace'

/** What is put on the wall as new: a plain box, one that stands ready, or a space for an appliance. */
export type NewKind = CabinetKind | ReadyName | SpaceName

export const READY: readonly (readonly [ReadyName, string])[] = [
  ['drawerBase', 'drawer base'],
  ['sinkBase', 'sink base'],
  ['vanityBase', 'wall-hung vanity base'],
  ['blindBase', 'blind corner base'],
  ['islandBase', 'island base, finished back'],
  ['endShelf', 'end shelf'],
  ['benchBox', 'bench box with a lid'],
  ['openShelves', 'open shelves'],
  ['blindUpper', 'blind corner upper'],
  ['pantry', 'tall pantry'],
  ['applianceHousing', 'appliance housing'],
  ['cornerBase', 'L corner base'],
  ['cornerUpper', 'L corner upper'],
  ['diagonalBase', 'diagonal corner base'],
  ['diagonalUpper', 'diagonal corner upper'],
]

export const SPACES: readonly (readonly [SpaceName, string])[] = [
  ['dishwasherSpace', 'space for a dishwasher'],
  ['washerSpace', 'space for a washing machine'],
  ['rangeSpace', 'space for a range'],
  ['fridgeSpace', 'space for an under-counter fridge'],
  ['tallFridgeSpace', 'space for a tall fridge'],
]

/** What a new cabinet is called before it has a number. */
export function newKindName(what: NewKind): string {
  return [...READY, ...SPACES].find(([name]) => name === what)?.[1] ?? what
}

/** Which of the three heights a new cabinet stands or hangs at. */
export function kindOf(what: NewKind): CabinetKind {
  switch (what) {
    case 'base':
    case 'drawerBase':
    case 'sinkBase':
    case 'vanityBase':
    case 'blindBase':
    case 'islandBase':
    case 'endShelf':
    case 'benchBox':
    case 'cornerBase':
    case 'diagonalBase':
    case 'dishwasherSpace':
    case 'washerSpace':
    case 'rangeSpace':
    case 'fridgeSpace':
      return 'base'
    case 'upper':
    case 'openShelves':
    case 'blindUpper':
    case 'cornerUpper':
    case 'diagonalUpper':
      return 'upper'
    case 'tall':
    case 'pantry':
    case 'applianceHousing':
    case 'tallFridgeSpace':
      return 'tall'
  }
}
