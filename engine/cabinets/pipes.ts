import { PRACTICE } from '../basics/source'
import type { PipeWindow } from '../project/document'
import { type Mm, settle } from '../units/length'
import type { Board } from './board'
import { backFront, type Carcass } from './carcass'
import { inBoard, notchOf } from './frame'
import { BACK_LEFT } from './niche'
import type { Notch } from './operation'
import { type Piece, room } from './piece'
import type { Report } from './report'
import { ROLE_NAMES } from './role'

/** The left edge of a window that stands in the middle of the cabinet. */
export function pipesLeft(width: Mm, carcass: Carcass): Mm {
  return settle((carcass.width - width) / 2)
}

/** A window that a board inside cuts in two: pipes have to go round that board, or through it. */
export function tellCrossed(pipes: PipeWindow, pieces: readonly Piece[], carcass: Carcass, report: Report): void {
  const left = pipesLeft(pipes.width, carcass)
  const [low, high] = [pipes.bottom, settle(pipes.bottom + pipes.height)]
  const crossing = pieces.filter(({ role, box: { min, max } }) => {
    const isInWindow = min.y < high && max.y > low && min.x < left + pipes.width && max.x > left
    return (role === 'fixedShelf' || role === 'partition' || role === 'divider') && isInWindow
  })
  for (const { role, box } of crossing) {
    const [from, to] = role === 'fixedShelf' ? [box.min.y, box.max.y] : [box.min.x, box.max.x]
    const [start, end] = role === 'fixedShelf' ? [low, high] : [left, settle(left + pipes.width)]
    const over = role === 'fixedShelf' ? 'from the floor' : 'from the left'
    report.mind(
      `a ${ROLE_NAMES[role]} from ${report.say(from)} to ${report.say(to)} crosses the window for pipes, which goes from ${report.left(start)} to ${report.say(end)} ${over}.`,
      { is: `${report.say(from)} to ${report.say(to)}`, limit: `clear of ${report.left(start)} to ${report.say(end)}` },
    )
  }
}

/** The window in the back for pipes; none where too little of the back would be left around it. */
export function pipesIn(back: Board, pipes: PipeWindow, carcass: Carcass, report: Report): Notch[] {
  const left = pipesLeft(pipes.width, carcass)
  const x = [left, left + pipes.width] as const
  const y = [pipes.bottom, pipes.bottom + pipes.height] as const
  const cut = notchOf(inBoard(back, room(x, y, [backFront(carcass) - carcass.backThickness, backFront(carcass)])))
  if (!(cut.length > 0 && cut.width > 0)) return []
  const least = Math.min(cut.x, cut.y, settle(back.length - cut.x - cut.length), settle(back.width - cut.y - cut.width))
  if (least >= BACK_LEFT) return [{ ...cut, for: 'pipes' }]
  report.stop(
    `the window for pipes would ${least < 0 ? `reach ${report.say(-least)} past the edge of the back` : `leave ${report.say(least)} of the back beside it`}; ${report.say(BACK_LEFT)} ${least < 0 ? 'of it must be left round the window' : 'is the least'}, so it is left out.`,
    { is: report.left(least), limit: BACK_LEFT, source: PRACTICE },
  )
  return []
}
