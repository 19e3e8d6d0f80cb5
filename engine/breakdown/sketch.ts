import type { Rect } from '../geometry/rect'
import { type Mm, settle } from '../units/length'
import type { Sketch } from './step'
import type { Left, Work } from './work'

/** The piece that a work takes, with the lines of its cuts and what falls on either side of them. */
export function sketchOf(work: Work, kerf: Mm): Sketch {
  const { takes, task, leaves } = work
  return {
    length: takes.length,
    width: takes.width,
    cuts: cutsOf(work, kerf),
    pieces: leaves.map(({ kind, name, ...left }) => ({ kind, name, rect: rectOn(left, takes) })),
    measuredFrom: task.direction === 'rip' ? 'edge' : 'end',
    edgeAt: isPreparing(work) ? work.size : 0,
  }
}

function rectOn({ x, y, length, width }: Pick<Left, 'x' | 'y' | 'length' | 'width'>, from: Work['takes']): Rect {
  return { left: settle(x - from.x), bottom: settle(y - from.y), width: length, height: width }
}

/** Whether it makes the edge or the end that all is measured from. */
function isPreparing({ kind }: Work): boolean {
  return kind === 'trim' || kind === 'square'
}

function cutsOf(work: Work, kerf: Mm): Rect[] {
  const { kind, takes, task, size, cuts, leaves } = work
  const isPrepared = isPreparing(work)
  const isRip = task.direction === 'rip'
  const whole = isRip ? takes.width : takes.length
  const isBeyond = kind === 'away' && !(isRip ? leaves[0]!.y === takes.y : leaves[0]!.x === takes.x)
  return Array.from({ length: cuts }, (_, at): Rect => {
    const from = isPrepared || isBeyond ? Math.max(0, settle(size - kerf)) : settle(at * (size + kerf) + size)
    const wide = settle(Math.min(isPrepared ? Math.min(kerf, size) : kerf, whole - from))
    return isRip
      ? { left: 0, bottom: from, width: takes.length, height: wide }
      : { left: from, bottom: 0, width: wide, height: takes.width }
  })
}
