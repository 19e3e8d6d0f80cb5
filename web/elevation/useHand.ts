import { type PointerEvent, type RefObject, type TouchEvent, useCallback, useEffect, useRef } from 'react'
import { type Desk, type Hand, type HandEvent, type Held, IDLE, type Pick, type Reply, type Spot } from '../input/hand'
import { replyTo } from '../input/reply'
import { onWall } from '../input/view'
import { chosenCabinets } from '../store/selection'
import { useStore } from '../store/store'
import { heldIn, targetOf } from './target'
import type { ViewHands } from './useView'

/** Within so many pixels a line catches an edge, at any zoom. */
const REACH_PX = 8
const TOUCH_REACH_PX = 16
/** Below this a press is a click. Fingers roll, so they have more. */
const SLOP_PX = 4
const TOUCH_SLOP_PX = 10

interface Last {
  readonly event: PointerPlace
  readonly held: Held
}

interface PointerPlace {
  readonly clientX: number
  readonly clientY: number
}

interface Doing {
  hand: Hand
  /** The pointers that are down, where they were last. */
  readonly pointers: Map<number, { x: number; y: number }>
  mode: 'rest' | 'hand' | 'pan' | 'pinch'
  isTouch: boolean
  waiting: Last | null
  frame: number
  /** Where the drawing is on the page, from the first move to the last: to ask anew would lay out the page at every move. */
  box: DOMRect | null
}

/** Leads pointers to the hand or the view. Moves are looked at once for each frame that is drawn. */
export function useHand(
  host: RefObject<HTMLElement | null>,
  views: ViewHands,
  isSpaceDown: RefObject<boolean>,
  announce: (text: string) => void,
) {
  const doing = useRef<Doing>({
    hand: IDLE,
    pointers: new Map(),
    mode: 'rest',
    isTouch: false,
    waiting: null,
    frame: 0,
    box: null,
  })
  const { now, pan, zoom } = views

  const spotOf = useCallback(
    ({ clientX, clientY }: PointerPlace): Spot => {
      const box = doing.current.box ?? host.current!.getBoundingClientRect()
      const [px, py] = [clientX - box.left, clientY - box.top]
      return { ...onWall(now.current, px, py), px, py }
    },
    [host, now],
  )

  const send = useCallback(
    (event: HandEvent) => {
      const { hand, isTouch } = doing.current
      const { history, selection, wall } = useStore.getState()
      const desk: Desk = {
        project: history.present,
        wall,
        selected: chosenCabinets(selection),
        reach: (isTouch ? TOUCH_REACH_PX : REACH_PX) / now.current.zoom,
        slopPx: isTouch ? TOUCH_SLOP_PX : SLOP_PX,
      }
      const reply = replyTo(hand, event, desk)
      doing.current.hand = reply.hand
      perform(reply, hand, announce, host.current)
    },
    [announce, host, now],
  )

  const flush = useCallback(() => {
    const { waiting } = doing.current
    cancelAnimationFrame(doing.current.frame)
    doing.current.frame = 0
    doing.current.waiting = null
    if (!waiting) return
    doing.current.box ??= host.current!.getBoundingClientRect()
    send({ kind: 'move', at: spotOf(waiting.event), held: waiting.held })
  }, [host, send, spotOf])

  const drop = useCallback(() => {
    const isBusy = doing.current.hand.kind !== 'idle'
    cancelAnimationFrame(doing.current.frame)
    doing.current.frame = 0
    doing.current.waiting = null
    send({ kind: 'cancel' })
    return isBusy
  }, [send])

  const onPointerDown = useCallback(
    (event: PointerEvent<HTMLElement>) => {
      const me = doing.current
      const target = targetOf(event.target)
      // A finger on a figure of the drawing is a press of that figure, but it may also be one of the two that zoom.
      const isFigure = !target && event.pointerType === 'touch' && isDrawn(event.target)
      if (!target && !isFigure) return
      me.pointers.set(event.pointerId, { x: event.clientX, y: event.clientY })
      if (target || me.pointers.size > 1) host.current?.setPointerCapture(event.pointerId)
      me.isTouch = event.pointerType === 'touch'
      if (me.pointers.size === 2) {
        drop()
        me.mode = 'pinch'
        return
      }
      if (!target || me.pointers.size > 2 || me.mode !== 'rest') return
      if (event.button === 1 || isSpaceDown.current) {
        event.preventDefault()
        me.mode = 'pan'
        return
      }
      if (event.button !== 0) return
      me.mode = 'hand'
      me.box = null
      send({ kind: 'press', on: target, at: spotOf(event), held: heldIn(event) })
    },
    [drop, host, isSpaceDown, send, spotOf],
  )

  const onPointerMove = useCallback(
    (event: PointerEvent<HTMLElement>) => {
      const me = doing.current
      const before = me.pointers.get(event.pointerId)
      if (!before) return
      const at = { x: event.clientX, y: event.clientY }
      if (me.mode === 'pinch') pinch(me.pointers, event.pointerId, at, host.current!, pan, zoom)
      else if (me.mode === 'pan') pan(at.x - before.x, at.y - before.y)
      else if (me.mode === 'hand') {
        if (me.isTouch && pans(me.hand)) me.mode = movedFar(me.hand, spotOf(event)) ? 'pan' : 'hand'
        me.waiting = { event: { clientX: at.x, clientY: at.y }, held: heldIn(event) }
        if (me.mode === 'pan') drop()
        else if (me.frame === 0) me.frame = requestAnimationFrame(flush)
      }
      me.pointers.set(event.pointerId, at)
    },
    [drop, flush, host, pan, spotOf, zoom],
  )

  const onPointerUp = useCallback(
    (event: PointerEvent<HTMLElement>) => {
      const me = doing.current
      if (!me.pointers.delete(event.pointerId)) return
      if (me.mode === 'hand') {
        flush()
        send({ kind: 'release', at: spotOf(event), held: heldIn(event) })
      }
      if (me.pointers.size === 0) me.mode = 'rest'
    },
    [flush, send, spotOf],
  )

  const onPointerCancel = useCallback(
    (event: PointerEvent<HTMLElement>) => {
      doing.current.pointers.delete(event.pointerId)
      if (doing.current.mode === 'hand') drop()
      if (doing.current.pointers.size === 0) doing.current.mode = 'rest'
    },
    [drop],
  )

  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key === 'Escape' && drop()) event.stopPropagation()
    }
    const onBlur = () => drop()
    addEventListener('keydown', onKey, { capture: true })
    addEventListener('blur', onBlur)
    return () => {
      removeEventListener('keydown', onKey, { capture: true })
      removeEventListener('blur', onBlur)
      cancelAnimationFrame(doing.current.frame)
    }
  }, [drop])

  return { onPointerDown, onPointerMove, onPointerUp, onPointerCancel, onTouchEnd }
}

/** A tap that the hand answers is no click on what comes to lie under the finger by it, as the card does on a phone. */
function onTouchEnd(event: TouchEvent<HTMLElement>) {
  if (event.cancelable && isDrawn(event.target) && targetOf(event.target)) event.preventDefault()
}

/** Carries out what the hand replied. */
function perform(reply: Reply, before: Hand, announce: (text: string) => void, host: HTMLElement | null) {
  const { actions, gesture } = useStore.getState()
  const { outcome, commit, label, hand, pick, said } = reply
  if (commit) actions.commit(commit, label)
  else if (hand.kind === 'idle' || hand.kind === 'pressed') {
    if (gesture) actions.preview(null)
  } else {
    const { guides, about } = outcome
    actions.preview(outcome.edit, outcome.words && { ...outcome.words, guides, about })
  }
  if (pick) choose(pick, before, host)
  if (said === null) return
  if (commit) announce(said)
  else actions.say('stop', said)
}

function choose(pick: Pick, before: Hand, host: HTMLElement | null) {
  const { actions, placing } = useStore.getState()
  switch (pick.kind) {
    case 'one':
      actions.select({ kind: 'cabinets', ids: [pick.id] })
      break
    case 'toggle':
      actions.toggleCabinet(pick.id)
      break
    case 'many':
      actions.select({ kind: 'cabinets', ids: pick.ids })
      break
    case 'nothing':
      actions.select({ kind: 'nothing' })
      host?.focus({ preventScroll: true })
      break
    case 'place':
      actions.place(
        placing?.kind === 'new' && placing.cabinet === pick.cabinet ? null : { kind: 'new', cabinet: pick.cabinet },
      )
      return
  }
  if (placing && before.kind === 'pressed') actions.place(null)
}

function isDrawn(element: EventTarget): boolean {
  return element instanceof SVGElement
}

/** A finger on the bare wall, or on a box that is not selected, moves the view. */
function pans(hand: Hand): boolean {
  if (hand.kind !== 'pressed') return false
  const chosen = chosenCabinets(useStore.getState().selection)
  return hand.on.kind === 'wall' || (hand.on.kind === 'cabinet' && !chosen.includes(hand.on.id))
}

function movedFar(hand: Hand, at: Spot): boolean {
  return hand.kind === 'pressed' && Math.hypot(at.px - hand.from.px, at.py - hand.from.py) >= TOUCH_SLOP_PX
}

/** Two fingers: what was under their middle stays under it. */
function pinch(
  pointers: ReadonlyMap<number, { x: number; y: number }>,
  moved: number,
  at: { x: number; y: number },
  host: HTMLElement,
  pan: ViewHands['pan'],
  zoom: ViewHands['zoom'],
) {
  const before = pointers.get(moved)!
  const other = [...pointers].find(([id]) => id !== moved)?.[1]
  if (!other) return
  const box = host.getBoundingClientRect()
  const apart = (one: { x: number; y: number }) => Math.max(10, Math.hypot(one.x - other.x, one.y - other.y))
  pan((at.x - before.x) / 2, (at.y - before.y) / 2)
  zoom((at.x + other.x) / 2 - box.left, (at.y + other.y) / 2 - box.top, apart(at) / apart(before))
}
