import { counted } from '../basics/counted'
import { isWithin } from '../breakdown/tool'
import type { BoardRole } from '../cabinets/board'
import type { Part } from '../parts/part'
import { type Mm, settle } from '../units/length'
import { about, type Checked, type Finding, PRACTICE } from './finding'
import { sayIn } from './say'

/** A narrower piece gives neither a rail nor a hand anything to hold. Common practice, no source. */
const LEAST_HELD: Mm = 40

/** What is ripped from a long board and crosscut after that may be narrower. Common practice, no source. */
const LEAST_RIPPED: Mm = 25
const RIPPED_FROM: Mm = 150
const RIPPED: ReadonlySet<BoardRole> = new Set<BoardRole>([
  ...(['stile', 'topRail', 'bottomRail', 'midRail', 'mullion'] as const),
  ...(['doorStile', 'doorRail', 'drawerStile', 'drawerRail'] as const),
])

/** How much wider a board must be sawn to be held safely; 0 where it is wide enough. */
export function lackingToHold(part: Part): Mm {
  return Math.max(0, settle(leastHeld(part) - acrossOf(part)))
}

/** Members of face frames and of five-part fronts are long for their width. */
function leastHeld({ role, cutLength }: Part): Mm {
  return RIPPED.has(role) && cutLength > RIPPED_FROM ? LEAST_RIPPED : LEAST_HELD
}

/** Boards that are too narrow for the hand, and boards too narrow for the guides: one finding of each kind. */
export function narrowFindings(checked: Checked): Finding[] {
  const held = checked.parts.filter((part) => acrossOf(part) > 0)
  const unsafe = held.filter((part) => acrossOf(part) < leastHeld(part))
  const beyond = held.filter((part) => acrossOf(part) >= leastHeld(part) && isBeyondGuides(part, checked))
  return [...unsafeFinding(unsafe, checked), ...guideFinding(beyond, checked)]
}

/** The shorter way across the board, as sawn. */
function acrossOf({ cutLength, cutWidth }: Part): Mm {
  return Math.min(cutLength, cutWidth)
}

function isBeyondGuides(part: Part, { shop: { guides, narrowRips } }: Checked): boolean {
  const across = acrossOf(part)
  return across < guides.least && !(narrowRips && isWithin(across, narrowRips))
}

function narrowest(parts: readonly Part[]): Part {
  return parts.reduce((a, b) => (acrossOf(b) < acrossOf(a) ? b : a))
}

function unsafeFinding(parts: readonly Part[], checked: Checked): Finding[] {
  if (parts.length === 0) return []
  const part = narrowest(parts)
  const [measure, limit] = sayIn(checked.display).apart(acrossOf(part), leastHeld(part))
  const message =
    `${counted(parts.length, 'board')} as narrow as ${measure} (the ${part.name}); under ${limit} neither rail nor hand holds a piece ` +
    'safely. Rip it from a wide board that stays under the rail, and crosscut it last.'
  return [about(checked, { weight: 'mind', message, measure, limit, source: PRACTICE })]
}

function guideFinding(parts: readonly Part[], checked: Checked): Finding[] {
  if (parts.length === 0) return []
  const part = narrowest(parts)
  const { guides, narrowRips } = checked.shop
  const [measure, limit] = sayIn(checked.display).apart(
    acrossOf(part),
    Math.min(guides.least, narrowRips?.least ?? guides.least),
  )
  const message =
    `${counted(parts.length, 'board')} as narrow as ${measure} (the ${part.name}); the guides reach from ${limit}. They are ripped to a ` +
    'line, with the piece held down, or to a stop of your own making.'
  return [about(checked, { weight: 'know', message, measure, limit, source: 'the tools of the shop' })]
}
