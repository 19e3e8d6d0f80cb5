import { type Mm, type Rect, rectsOverlap, rightOf, topOf } from '../../engine/index'

/** Height of the letters of a mark. */
export const MARK_PX = 12.5
/** Width of a letter of a mark, on average. */
const LETTER_PX = 8
/** Height of its capitals and figures. */
const CAPITAL_PX = 9.5
/** Between a mark and the left edge of its cabinet, and under it. */
const ASIDE_PX = 6
const OVER_PX = 7
/** The same where a pull is in the way of the usual place. */
const CLOSE_PX = 3
/** What is kept free between a mark and a pull. */
const CLEAR_PX = 2

interface MarkRoom {
  /** With the star of a cabinet that is built differently. */
  readonly letters: number
  readonly width: Mm
  readonly height: Mm
  readonly kick: Mm
  readonly mmPerPx: number
}

/** From the lower left corner of a cabinet to where its mark begins, on the line that its letters stand on. */
export interface MarkPlace {
  readonly x: Mm
  readonly y: Mm
}

/**
 * Where a mark is written: low at the left, over the kick. Letters keep their size while the drawing shrinks, so on a small
 * one pulls come in their way; the mark then stands lower, right of such a pull or over it, where it is clear of all of
 * them and still before its cabinet. Where no such place is left it stays, and its halo parts it from what is behind.
 */
export function markPlace(room: MarkRoom, pulls: readonly Rect[]): MarkPlace {
  const { kick, mmPerPx } = room
  const usual = { x: ASIDE_PX * mmPerPx, y: kick + OVER_PX * mmPerPx }
  const low = { ...usual, y: kick + CLOSE_PX * mmPerPx }
  const beside = pulls.map((pull) => ({ ...usual, x: rightOf(pull) + (CLEAR_PX + 1) * mmPerPx }))
  const over = pulls.map((pull) => ({ ...usual, y: topOf(pull) + (CLEAR_PX + 1) * mmPerPx }))
  const inTurn = [usual, low, ...beside, ...over]
  return inTurn.find((place) => isClear(boundsAt(place, room), room, pulls, mmPerPx)) ?? usual
}

function boundsAt({ x, y }: MarkPlace, { letters, mmPerPx }: MarkRoom): Rect {
  return { left: x, bottom: y, width: letters * LETTER_PX * mmPerPx, height: CAPITAL_PX * mmPerPx }
}

function isClear(mark: Rect, { width, height }: MarkRoom, pulls: readonly Rect[], mmPerPx: number): boolean {
  const clear = CLEAR_PX * mmPerPx
  const kept = {
    left: mark.left - clear,
    bottom: mark.bottom - clear,
    width: mark.width + 2 * clear,
    height: mark.height + 2 * clear,
  }
  return rightOf(mark) <= width && topOf(mark) <= height && !pulls.some((pull) => rectsOverlap(kept, pull))
}
