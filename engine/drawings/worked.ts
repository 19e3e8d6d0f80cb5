import type { Board } from '../cabinets/board'
import {
  type EdgeSlot,
  isEdgeSlot,
  isMitre,
  isOpening,
  type Notch,
  type Operation,
  tiltOf,
} from '../cabinets/operation'
import { formatFine } from '../units/format'
import type { LengthDisplay, Mm } from '../units/length'
import { datumOf, otherEnd } from './datum'
import { holeWords } from './hole'

/** What is worked on a board, a line each, in the unit of the project. */
export function legend(part: Board, display: LengthDisplay): string[] {
  const lines = new Map<string, number>()
  for (const one of part.operations) {
    const words = workWords(one, part, display)
    lines.set(words, (lines.get(words) ?? 0) + (one.kind === 'holeRow' ? one.count : 1))
  }
  return [...lines].map(([words, count]) => `${count} × ${words}`)
}

function workWords(one: Operation, part: Board, display: LengthDisplay): string {
  const say = (length: Mm) => formatFine(length, display)
  if (one.kind === 'holeRow') return holeWords(one, part.thickness, display)
  if (one.kind === 'notch') return one.for === 'band' ? LEFT_OFF : `${cutWord(one, part)}, right through`
  if (one.kind === 'clip') return `corner cut off, ${say(one.length)} along and ${say(one.width)} across`
  if (one.kind === 'bevel') {
    const tilt = tiltOf(one, part.thickness).toFixed(1)
    if (!isMitre(one)) return `edge bevelled ${tilt}°, the ${one.face} face ${say(one.by)} narrower`
    const { end } = datumOf(part)
    const which = one.edge === 'start' ? end : otherEnd({ end })
    return `${which} mitred ${tilt}°, its short point on the ${one.face} face, ${say(one.by)} before its long point`
  }
  return isEdgeSlot(one) ? slotWords(one, say) : `${one.kind} ${say(one.depth)} deep`
}

/** There a board goes into a dado whose end is banded over. */
const LEFT_OFF = 'end without its band, which stops at the shoulder'

/** A notch is cut in from an edge or a corner; what has wood all round it is an opening. */
function cutWord(cut: Notch, part: Board): string {
  if (!isOpening(cut, part)) return 'notch'
  return cut.for ? `opening for ${cut.for}` : 'opening'
}

function slotWords({ kind, edge, up, width, depth }: EdgeSlot, say: (length: Mm) => string): string {
  const what = kind === 'edgeGroove' ? 'groove' : 'mortise'
  return `${what} in the ${edge === 'low' ? 'first' : 'second'} edge, ${say(width)} wide, ${say(up)} from the outside face, ${say(depth)} deep`
}
