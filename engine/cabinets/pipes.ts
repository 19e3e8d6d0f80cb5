import type { PipeWindow } from '../project/document'
import { type Mm, settle } from '../units/length'
import type { Board } from './board'
import { backFront, type Carcass } from './carcass'
import { inBoard, notchOf } from './joinery'
import { BACK_LEFT } from './niche'
import type { Notch } from './operation'
import { room } from './piece'
import type { Report } from './report'

/** The left edge of a window that stands in the middle of the cabinet. */
export function pipesLeft(width: Mm, carcass: Carcass): Mm {
  return settle((carcass.width - width) / 2)
}

/** The window in the back for pipes; none where too little of the back would be left around it. */
export function pipesIn(back: Board, pipes: PipeWindow, carcass: Carcass, report: Report): Notch[] {
  const left = pipesLeft(pipes.width, carcass)
  const x = [left, left + pipes.width] as const
  const y = [pipes.bottom, pipes.bottom + pipes.height] as const
  const window = notchOf(inBoard(back, room(x, y, [backFront(carcass) - carcass.backThickness, backFront(carcass)])))
  if (!(window.length > 0 && window.width > 0)) return []
  const least = Math.min(
    window.x,
    window.y,
    settle(back.length - window.x - window.length),
    settle(back.width - window.y - window.width),
  )
  if (least >= BACK_LEFT) return [window]
  report.stop(
    `the window for pipes would leave ${report.say(least)} of the back beside it; ${report.say(BACK_LEFT)} is the least, so it is left out.`,
  )
  return []
}
