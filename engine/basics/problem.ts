import type { CabinetId, KeptId, MaterialId, OpeningId, PartId, WallId } from './id'

/** What a problem points at, so that a view can jump there. */
export type About =
  | { readonly kind: 'cabinet'; readonly cabinet: CabinetId }
  | { readonly kind: 'part'; readonly cabinet: CabinetId; readonly part: PartId }
  | { readonly kind: 'wall'; readonly wall: WallId }
  | { readonly kind: 'opening'; readonly wall: WallId; readonly opening: OpeningId }
  | { readonly kind: 'material'; readonly material: MaterialId }
  | { readonly kind: 'kept'; readonly sheet: KeptId }
  | { readonly kind: 'shop' }

/**
 * Something about the design that the maker should know. It stands beside a result and never replaces it.
 * `message` names the thing, its value and the limit: "B2: the bottom would be 54 mm wide; 60 mm is the least that
 * can be cut."
 */
export interface Problem {
  readonly weight: 'know' | 'mind' | 'stop'
  readonly about: About
  readonly message: string
  /** What was worked out, in words: `9.4 mm`. The message says it too, but not in a column of its own. */
  readonly measure?: string
  /** What it is held against, in words. */
  readonly limit?: string
  /** Who says so: a publication, or `common practice, no source`. */
  readonly source?: string
  /**
   * What is to be changed for a way out, where the checks know one: loose shelves that find no room or no pin holes; the length of a corner's leg; a frame past
   * a finished end; tenons that would meet; shelves where drawers take all of the height.
   */
  readonly way?: 'looseShelves' | 'ownLeg' | 'otherLeg' | 'flushFrame' | 'shorterTenon' | 'noShelves'
}
