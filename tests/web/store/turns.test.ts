import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { type CabinetId, demonstrationKitchen, type Edit, type SheetAnswer } from '../../../engine/index'
import { packSheets } from '../../../engine/sheets/pack'
import { connectPacker } from '../../../web/store/layouts'
import { useStore } from '../../../web/store/store'
import { seenBy } from '../../../web/store/turns'
import type { JobLetter } from '../../../web/workers/letters'
import type { Hand } from '../../../web/workers/packer'

const { actions } = useStore.getState()
/** Longer than a hand rests between two moves. */
const A_REST = 100

beforeEach(() => {
  vi.useFakeTimers()
  vi.stubGlobal('requestAnimationFrame', (deed: () => void) => setTimeout(deed, 16))
  actions.open(demonstrationKitchen())
})

afterEach(() => {
  actions.preview(null)
  vi.unstubAllGlobals()
  vi.useRealTimers()
})

function widened(width: number): Edit {
  const cabinet = useStore.getState().derived.cabinets.find(({ mark }) => mark === 'B1')!.cabinet
  return { kind: 'shapeCabinets', shapes: [{ id: cabinet.id as CabinetId, width }] }
}

function widthSeenBy(follower: keyof typeof seenBy): number {
  return seenBy[follower].getState().derived.cabinets.find(({ mark }) => mark === 'B1')!.cabinet.width
}

/** Moves the hand sixty times a second. */
function dragTo(...widths: number[]) {
  for (const width of widths) {
    actions.preview(widened(width), { fits: true, text: 'fits' })
    vi.advanceTimersByTime(16)
  }
}

/** A packer that answers when it is told to. */
class SlowHand implements Hand {
  readonly letters: JobLetter[] = []
  onmessage: Hand['onmessage'] = null
  onerror: Hand['onerror'] = null
  postMessage(letter: JobLetter) {
    this.letters.push(letter)
  }
  terminate() {}
  answer(answer: SheetAnswer = { sheets: [], unplaced: [], bounds: {}, proved: true }) {
    this.onmessage?.({ data: { kind: 'answer', number: this.letters.at(-1)!.number, answer, isSettled: true } })
  }
}

describe('the views that follow the wall', () => {
  it('see every change at once while nothing is under the hand', () => {
    actions.commit(widened(700))
    expect(widthSeenBy('scene')).toBe(700)
    expect(widthSeenBy('lists')).toBe(700)
    expect(widthSeenBy('pictures')).toBe(700)
  })

  it('are brought up one at each move of the hand', () => {
    const followers = ['scene', 'sheets', 'findings', 'lists', 'card'] as const
    const seen = () => followers.map(widthSeenBy)
    dragTo(510)
    expect(seen()).toEqual([500, 510, 500, 500, 500])
    // Findings are of what the sheets have seen, which is listed already.
    dragTo(520)
    expect(seen()).toEqual([500, 510, 510, 500, 500])
    dragTo(530)
    expect(seen()).toEqual([500, 510, 510, 530, 500])
    dragTo(540)
    expect(seen()).toEqual([500, 510, 510, 530, 540])
    dragTo(550)
    expect(seen()).toEqual([550, 510, 510, 530, 540])
  })

  it('leave time to the others where they hold up the page', () => {
    vi.stubGlobal('requestAnimationFrame', (deed: () => void) => setTimeout(deed, 200))
    dragTo(510, 520, 530, 540, 550)
    expect(widthSeenBy('scene')).not.toBe(500)
    const seen = widthSeenBy('scene')
    dragTo(...Array.from({ length: 50 }, (_, at) => 600 + at))
    expect(widthSeenBy('scene')).toBe(seen)
    vi.advanceTimersByTime(2000)
    expect(widthSeenBy('scene')).toBe(649)
  })

  it('do not take a page whose frames come slowly for a hand that rests', () => {
    const everyFrame = 120
    vi.stubGlobal('requestAnimationFrame', (deed: () => void) => setTimeout(deed, everyFrame))
    const followers = ['scene', 'sheets', 'findings', 'lists'] as const
    for (const width of [510, 520]) {
      actions.preview(widened(width), { fits: true, text: 'fits' })
      vi.advanceTimersByTime(everyFrame - 10)
    }
    expect(followers.filter((follower) => widthSeenBy(follower) === 500)).toHaveLength(2)
    vi.advanceTimersByTime(2000)
    expect(followers.map(widthSeenBy)).toEqual(followers.map(() => 520))
  })

  it('catch up when the hand rests, and when it lets go', () => {
    dragTo(510, 520, 530)
    vi.advanceTimersByTime(A_REST)
    expect(widthSeenBy('scene')).toBe(530)
    expect(widthSeenBy('lists')).toBe(530)
    expect(widthSeenBy('findings')).toBe(530)
    expect(widthSeenBy('pictures')).toBe(530)
    dragTo(540)
    actions.commit(widened(540))
    expect(widthSeenBy('scene')).toBe(540)
    expect(widthSeenBy('pictures')).toBe(540)
  })
})

/** Longer than the sheets wait from one layout to the next. */
const LONG_DRAG = Array.from({ length: 30 }, (_, at) => 600 + at)

describe('the sheets under a moving hand', () => {
  it('see a design together with its own layout, and ask for the next when it has come', () => {
    const hand = new SlowHand()
    const stop = connectPacker(() => hand)
    hand.answer()
    dragTo(510, 520, 530, 540, 550, 560)
    expect(hand.letters).toHaveLength(2)
    expect(widthSeenBy('sheets')).toBe(500)
    const asked = hand.letters[1]!.job
    hand.answer()
    dragTo(...LONG_DRAG)
    const seen = seenBy.sheets.getState()
    expect(seen.derived.sheetJob).toBe(asked)
    expect(seen.layout?.job).toBe(asked)
    dragTo(...LONG_DRAG)
    expect(hand.letters).toHaveLength(3)
    stop()
  })

  it('ask for what is shown as soon as the hand rests, whatever was asked before', () => {
    const hand = new SlowHand()
    const stop = connectPacker(() => hand)
    hand.answer()
    dragTo(510, 520, 530, 540, 550, 560)
    vi.advanceTimersByTime(A_REST)
    expect(hand.letters).toHaveLength(3)
    expect(hand.letters[2]!.job).toBe(useStore.getState().derived.sheetJob)
    hand.answer()
    expect(widthSeenBy('pictures')).toBe(560)
    expect(seenBy.pictures.getState().layout?.job).toBe(useStore.getState().derived.sheetJob)
    stop()
  })

  it('ask once for a design that is let go while a layout from under the hand is in sight', () => {
    actions.setTable('sheets')
    const hand = new SlowHand()
    const stop = connectPacker(() => hand)
    hand.answer(packSheets({ ...useStore.getState().derived.sheetJob, effort: 'glance', goals: [] }))
    dragTo(510)
    expect(hand.letters.at(-1)!.job.near).toBeDefined()
    hand.answer()
    expect(useStore.getState().layout?.isPassing).toBe(true)
    const asked = hand.letters.length
    actions.commit(widened(520))
    expect(hand.letters).toHaveLength(asked + 1)
    expect(useStore.getState().packing).toBe('thinking')
    stop()
  })
})
