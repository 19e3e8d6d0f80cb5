import type { CabinetId, Edit, Guide, Mm, NewKind, Project, WallId } from '../../engine/index'
import type { GestureWords } from '../store/state'

/** Where the pointer is: on the wall in mm, and in the window in pixels. */
export interface Spot {
  readonly x: Mm
  readonly y: Mm
  readonly px: number
  readonly py: number
}

/** What held keys ask for. */
export interface Held {
  /** Ctrl or the command key: no snapping. */
  readonly isFree: boolean
  /** Alt: neighbours are pushed out of the way. */
  readonly isPushing: boolean
  /** Shift: adds to what is selected. */
  readonly isAdding: boolean
}

export const NOTHING_HELD: Held = { isFree: false, isPushing: false, isAdding: false }

export type Edge = 'left' | 'right' | 'top' | 'bottom'

/** What the pointer was put on. */
export type Target =
  | { readonly kind: 'cabinet'; readonly id: CabinetId }
  | { readonly kind: 'handle'; readonly id: CabinetId; readonly edge: Edge }
  /** A dividing line of its front, by the path of the row or column before it: `1,0`. */
  | { readonly kind: 'divider'; readonly id: CabinetId; readonly path: string }
  | { readonly kind: 'wall' }
  | { readonly kind: 'tray'; readonly cabinet: NewKind }

export type HandEvent =
  | { readonly kind: 'press'; readonly on: Target; readonly at: Spot; readonly held: Held }
  | { readonly kind: 'move'; readonly at: Spot; readonly held: Held }
  | { readonly kind: 'release'; readonly at: Spot; readonly held: Held }
  | { readonly kind: 'cancel' }

/** What the hand has to do with. The project is the present one: a gesture measures from where it began. */
export interface Desk {
  readonly project: Project
  /** The wall in sight; null for the first. */
  readonly wall: WallId | null
  readonly selected: readonly CabinetId[]
  /** How near a line catches an edge. */
  readonly reach: Mm
  /** Below so many pixels a press is a click. */
  readonly slopPx: number
}

/** What the hand is doing. */
export type Hand =
  | { readonly kind: 'idle' }
  | { readonly kind: 'pressed'; readonly on: Target; readonly from: Spot }
  | { readonly kind: 'moving'; readonly grabbed: CabinetId; readonly ids: readonly CabinetId[]; readonly from: Spot }
  | { readonly kind: 'stretching'; readonly id: CabinetId; readonly edge: Edge; readonly from: Spot }
  | { readonly kind: 'dividing'; readonly id: CabinetId; readonly path: string; readonly from: Spot }
  | { readonly kind: 'drawing'; readonly from: Spot }
  | { readonly kind: 'pulling'; readonly cabinet: NewKind }

/** What a gesture would come to if it ended here. */
export interface Outcome {
  /** The edit as the hand asks for it, whether it fits or not; null when there is none. */
  readonly edit: Edit | null
  readonly words: GestureWords | null
  readonly guides: readonly Guide[]
  /** What it is about: the cabinets that are selected when it is made. */
  readonly about: readonly CabinetId[]
  /** What the undo step is called, where the edit alone does not say what the hand did. */
  readonly label?: string
}

/** Why something does not fit, as the words of a gesture: these end without a stop, since more may be said after them. */
export function unfit(mark: string, message: string): GestureWords {
  return { fits: false, text: `${mark}: ${message.replace(/\.$/, '')}` }
}

export const NO_OUTCOME: Outcome = { edit: null, words: null, guides: [], about: [] }

/** What is picked by a click. */
export type Pick =
  | { readonly kind: 'one'; readonly id: CabinetId }
  | { readonly kind: 'toggle'; readonly id: CabinetId }
  | { readonly kind: 'many'; readonly ids: readonly CabinetId[] }
  | { readonly kind: 'nothing' }
  /** A thing of the tray was clicked: free places are offered. */
  | { readonly kind: 'place'; readonly cabinet: NewKind }

export interface Reply {
  readonly hand: Hand
  readonly outcome: Outcome
  /** The edit to make now. */
  readonly commit: Edit | null
  /** What its undo step is called; as the edit is called where it is left out. */
  readonly label?: string
  readonly pick: Pick | null
  /** What to say now that it is over. */
  readonly said: string | null
}

export const IDLE: Hand = { kind: 'idle' }
