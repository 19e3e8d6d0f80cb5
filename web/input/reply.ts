import { drawn, pulled } from './create'
import { divided } from './divide'
import {
  type Desk,
  type Hand,
  type HandEvent,
  type Held,
  IDLE,
  NO_OUTCOME,
  type Outcome,
  type Pick,
  type Reply,
  type Spot,
  type Target,
} from './hand'
import { moved } from './move'
import { stretched } from './stretch'

/** What the hand does next. A pure function: the same hand, event and desk always get the same reply. */
export function replyTo(hand: Hand, event: HandEvent, desk: Desk): Reply {
  switch (event.kind) {
    case 'press':
      return just({ kind: 'pressed', on: event.on, from: event.at })
    case 'move':
      return replyToMove(hand, event.at, event.held, desk)
    case 'release':
      return replyToRelease(hand, event.at, event.held, desk)
    case 'cancel':
      return just(IDLE)
  }
}

function replyToMove(hand: Hand, at: Spot, held: Held, desk: Desk): Reply {
  if (hand.kind === 'idle') return just(hand)
  if (hand.kind !== 'pressed') return { ...just(hand), outcome: outcomeOf(hand, at, held, desk) }
  if (Math.hypot(at.px - hand.from.px, at.py - hand.from.py) < desk.slopPx) return just(hand)
  const begun = begunWith(hand.on, hand.from, desk)
  const pick: Pick | null = begun.kind === 'moving' ? { kind: 'many', ids: begun.ids } : null
  return { ...just(begun), outcome: outcomeOf(begun, at, held, desk), pick }
}

/** A press that has moved far enough becomes the gesture that its target stands for. */
function begunWith(on: Target, from: Spot, { selected }: Desk): Hand {
  switch (on.kind) {
    case 'cabinet':
      return { kind: 'moving', grabbed: on.id, ids: selected.includes(on.id) ? selected : [on.id], from }
    case 'handle':
      return { kind: 'stretching', id: on.id, edge: on.edge, from }
    case 'divider':
      return { kind: 'dividing', id: on.id, path: on.path, from }
    case 'wall':
      return { kind: 'drawing', from }
    case 'tray':
      return { kind: 'pulling', cabinet: on.cabinet }
  }
}

function outcomeOf(hand: Hand, at: Spot, held: Held, desk: Desk): Outcome {
  switch (hand.kind) {
    case 'idle':
    case 'pressed':
      return NO_OUTCOME
    case 'moving':
      return moved(hand, at, held, desk)
    case 'stretching':
      return stretched(hand, at, held, desk)
    case 'dividing':
      return divided(hand, at, held, desk)
    case 'drawing':
      return drawn(hand.from, at, held, desk)
    case 'pulling':
      return pulled(hand.cabinet, at, held, desk)
  }
}

/** What fits is made; what does not fit drops back, and it is said why. */
function replyToRelease(hand: Hand, at: Spot, held: Held, desk: Desk): Reply {
  if (hand.kind === 'idle') return just(IDLE)
  if (hand.kind === 'pressed') return { ...just(IDLE), pick: clicked(hand.on, held) }
  const { edit, words, about, label } = outcomeOf(hand, at, held, desk)
  if (!edit || !words?.fits) return { ...just(IDLE), said: words ? `${words.text}. Nothing was changed.` : null }
  const made = { ...just(IDLE), commit: edit, pick: { kind: 'many', ids: about }, said: words.text } as const
  return label === undefined ? made : { ...made, label }
}

function clicked(on: Target, held: Held): Pick | null {
  switch (on.kind) {
    case 'cabinet':
      return held.isAdding ? { kind: 'toggle', id: on.id } : { kind: 'one', id: on.id }
    case 'handle':
    case 'divider':
      return null
    case 'wall':
      return held.isAdding ? null : { kind: 'nothing' }
    case 'tray':
      return { kind: 'place', cabinet: on.cabinet }
  }
}

function just(hand: Hand): Reply {
  return { hand, outcome: NO_OUTCOME, commit: null, pick: null, said: null }
}
