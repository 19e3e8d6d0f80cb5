import { PRACTICE } from '../basics/source'
import type { Interval } from '../geometry/interval'
import { type Mm, settle } from '../units/length'
import { type Bay, rearAt } from './bay'
import { type Carcass, clearBottom, clearTop, insideFront } from './carcass'
import { type Piece, room } from './piece'
import type { Report } from './report'
import { shelfWidth } from './shelf'

/** Narrower than this nothing is stood between two of them. Common practice, no source. */
const NARROWEST: Mm = 30

/** Between each divider and the next, and beside the outermost: what they leave of the bay, in equal rooms. */
export function dividerRoom(count: number, bay: Interval, thickness: Mm): Mm {
  return (bay.to - bay.from - count * thickness) / (count + 1)
}

/**
 * Uprights that stand close together in a height of a bay, between trays. They are screwed to what lies under and over
 * them while the carcass is put together, as partitions are, so they fill the height; `held` are the boards that may be
 * there besides the bottom and the top.
 */
export function dividersOf(
  count: number,
  y: Interval,
  bay: Bay,
  { obstacles, held }: { readonly obstacles: readonly Piece[]; readonly held: readonly Piece[] },
  carcass: Carcass,
  report: Report,
): Piece[] {
  if (count === 0) return []
  const clear = dividerRoom(count, bay, carcass.thickness)
  if (clear < NARROWEST || !(y.to > y.from)) {
    report.stop(
      `${count} tray dividers would leave ${report.left(settle(clear))} between them; ${report.say(NARROWEST)} is the least, so they are left out.`,
      { is: Math.max(0, clear), limit: NARROWEST, source: PRACTICE },
    )
    return []
  }
  tellLoose(y, held, carcass, report)
  const rear = rearAt(y, obstacles, carcass)
  const front = Math.min(insideFront(carcass), rear + shelfWidth(rear, carcass))
  return Array.from({ length: count }, (_, at): Piece => {
    const left = settle(bay.from + (at + 1) * clear + at * carcass.thickness)
    return {
      role: 'divider',
      number: 1,
      material: carcass.method.carcassMaterial,
      box: room([left, left + carcass.thickness], [y.from, y.to], [rear, front]),
      lie: 'uprightLookingRight',
      banded: { edges: 'front', thickness: carcass.method.banding.carcass },
      explode: bay.apart,
    }
  })
}

function tellLoose(y: Interval, held: readonly Piece[], carcass: Carcass, report: Report): void {
  const isUnder = y.from === clearBottom(carcass) || held.some(({ box }) => box.max.y === y.from)
  const isOver = y.to === clearTop(carcass) || held.some(({ box }) => box.min.y === y.to)
  if (isUnder && isOver) return
  const where = [...(isUnder ? [] : ['under']), ...(isOver ? [] : ['over'])].join(' and ')
  report.mind(`no board lies ${where} its tray dividers to screw them to. Put a fixed one there, or leave them out.`, {
    is: 'no board',
    limit: 'one under and one over',
  })
}
