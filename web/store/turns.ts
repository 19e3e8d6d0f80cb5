import { useEffect, useState } from 'react'
import { useStore as useStoreOf } from 'zustand'
import { createStore, type StoreApi } from 'zustand/vanilla'
import type { State } from './state'
import { useStore } from './store'

/** The views that follow the wall while something is dragged along it. */
export type Follower = 'scene' | 'lists' | 'card' | 'sheets' | 'findings' | 'pictures'
/** In this order; pictures of the sheets and lists are never open together, so they share a turn. */
const TURNS = ['scene', 'sheets', 'findings', 'lists', 'card'] as const
type Taker = (typeof TURNS)[number]

/** Brings a follower up to the state, or as near to it as it can come now, and says whether it has caught up. */
export type Turn = (state: State, isHandResting: boolean) => boolean

/** The state as each follower sees it: whole and of one moment, a few moves late while something is under the hand. */
export const seenBy: Readonly<Record<Follower, StoreApi<State>>> = {
  scene: seenFirst(),
  lists: seenFirst(),
  card: seenFirst(),
  sheets: seenFirst(),
  findings: seenFirst(),
  pictures: seenFirst(),
}

const turns: Record<Taker, Turn> = {
  scene: seeing('scene'),
  lists(state, isHandResting) {
    // What the sheets have seen is drawn in another frame than that in which they see it.
    seenBy.pictures.setState(seenBy.sheets.getState(), true)
    return seeing('lists')(state, isHandResting) && caughtUp.sheets === state
  },
  card: seeing('card'),
  sheets: seeing('sheets'),
  findings(state, isHandResting) {
    // What the sheets have seen is listed already, and need only be judged.
    const seen = isHandResting ? state : seenBy.sheets.getState()
    seenBy.findings.setState(seen, true)
    return seen === state
  },
}

/** The state with which each follower has caught up. */
const caughtUp: Partial<Record<Taker, State>> = {}

function seenFirst() {
  return createStore<State>()(() => useStore.getState())
}

function seeing(follower: Follower): Turn {
  return (state) => {
    seenBy[follower].setState(state, true)
    return true
  }
}

/**
 * Reads the state for a view that follows the wall. Under the hand the followers take turns, one at each move, so that
 * no single move has to draw them all; at rest they see every change at once.
 */
export function useFollowing<T>(follower: Follower, select: (state: State) => T): T {
  return useStoreOf(seenBy[follower], select)
}

/** What is caught up so soon is not called late: it would only flicker. */
const LATE_MS = 250

/** Whether a follower sees the wall as it is now, or did a moment ago. */
export function useCurrency(follower: Follower): 'now' | 'soon' | 'late' {
  const derived = useFollowing(follower, (state) => state.derived)
  const isNow = useStore((state) => state.derived === derived)
  const [isLate, setIsLate] = useState(false)
  useEffect(() => {
    if (isNow) return
    const timer = setTimeout(() => setIsLate(true), LATE_MS)
    return () => {
      clearTimeout(timer)
      setIsLate(false)
    }
  }, [isNow])
  return isNow ? 'now' : isLate ? 'late' : 'soon'
}

/** Lets a follower take its turns in a way of its own. */
export function followBy(follower: Taker, turn: Turn): () => void {
  turns[follower] = turn
  return () => {
    turns[follower] = seeing(follower)
  }
}

/**
 * A hand rests when it has not moved for so long, or for half as long again as it took from move to move where the page
 * draws slowly.
 */
const RESTING_MS = { least: 40, most: 90 }

/** A follower that holds up the page, as 3D does where the processor draws it, leaves three times as long to the others. */
const PATIENCE = 3
/** Under a moving hand nothing that follows it changes faster than can be read. */
const LEAST_WAIT_MS: Record<Taker, number> = { scene: 60, sheets: 250, findings: 250, lists: 250, card: 150 }

let last = 0
/** The last move: what it came to, and when that was. */
let move: { readonly derived: State['derived']; readonly at: number; readonly restsAfter: number } | null = null
/** Whether the hand has not moved since for long enough. */
let isResting = false
/** When the hand will have rested, unless it moves again. A timer looks at it, since setting one at every move costs much. */
let restsAt = 0
let rest: ReturnType<typeof setTimeout> | undefined
/** When a follower may take its next turn under a moving hand. */
const mayFollowAt: Record<Taker, number> = { scene: 0, sheets: 0, findings: 0, lists: 0, card: 0 }

useStore.subscribe((state) => {
  if (!state.preview) {
    clearTimeout(rest)
    rest = undefined
    move = null
    for (const follower of TURNS) {
      takeTurn(follower, state, true)
      mayFollowAt[follower] = 0
    }
    seenBy.pictures.setState(seenBy.sheets.getState(), true)
  } else if (state.derived !== move?.derived) {
    const at = performance.now()
    const slow = move ? Math.min(1.5 * (at - move.at), RESTING_MS.most) : 0
    isResting = false
    move = { derived: state.derived, at, restsAfter: Math.max(slow, RESTING_MS.least) }
    takeTurnOfMove(state, at)
    watchRest(at + move.restsAfter)
  } else if (isResting) catchUp()
})

/** The next in order that may; the time until the page has drawn a frame with it tells how long it then waits. */
function takeTurnOfMove(state: State, at: number) {
  const order = TURNS.map((_, after) => TURNS[(last + 1 + after) % TURNS.length]!)
  const next = order.find((follower) => at >= mayFollowAt[follower])
  if (!next) return
  last = TURNS.indexOf(next)
  mayFollowAt[next] = Number.POSITIVE_INFINITY
  afterFrames(2, () => {
    const now = performance.now()
    mayFollowAt[next] = now + Math.max(PATIENCE * (now - at), LEAST_WAIT_MS[next])
  })
  takeTurn(next, state, false)
}

function afterFrames(count: number, deed: () => void) {
  requestAnimationFrame(() => (count > 1 ? afterFrames(count - 1, deed) : deed()))
}

function watchRest(at: number) {
  restsAt = at
  rest ??= setTimeout(lookForRest, at - performance.now())
}

/** Where frames come slowly, moves wait for the next of them: a hand rests only when that has brought none. */
function lookForRest() {
  rest = undefined
  if (performance.now() < restsAt) return watchRest(restsAt)
  if (isResting) return catchUp()
  const seen = move
  afterFrames(1, () =>
    setTimeout(() => {
      if (move !== seen) return
      isResting = true
      catchUp()
    }),
  )
}

/** The hand rests: there is time for every turn, but for one that holds up the page only when its wait is over. */
function catchUp() {
  const state = useStore.getState()
  const now = performance.now()
  for (const follower of TURNS) {
    if (caughtUp[follower] === state) continue
    if (follower !== 'scene' || now >= mayFollowAt.scene) takeTurn(follower, state, true)
    else watchRest(Math.min(mayFollowAt.scene, now + RESTING_MS.most))
  }
}

function takeTurn(follower: Taker, state: State, isHandResting: boolean) {
  if (turns[follower](state, isHandResting)) caughtUp[follower] = state
}
