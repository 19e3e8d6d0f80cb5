import { describe, expect, it, vi } from 'vitest'
import { demonstrationKitchen, derive, type SheetAnswer, type SheetJob } from '../../../engine/index'
import { packSheets } from '../../../engine/sheets/pack'
import { createBench } from '../../../web/workers/bench'
import { createReader } from '../../../web/workers/hire'
import { type AnswerLetter, type JobLetter, written } from '../../../web/workers/letters'
import { createPacker, type Hand } from '../../../web/workers/packer'

function aJob(kerf: number): SheetJob {
  return { kerf, stock: [], parts: [] }
}

function anAnswer(bound: number): SheetAnswer {
  return { sheets: [], unplaced: [], bounds: { ply: bound }, proved: true }
}

class FakeHand implements Hand {
  readonly letters: JobLetter[] = []
  isGone = false
  onmessage: Hand['onmessage'] = null
  onerror: Hand['onerror'] = null
  postMessage(letter: JobLetter) {
    this.letters.push(letter)
  }
  terminate() {
    this.isGone = true
  }
  answers(at: number, answer: SheetAnswer) {
    this.onmessage?.({ data: { kind: 'answer', number: this.letters[at]!.number, answer, isSettled: true } })
  }
}

function aShop() {
  const hands: FakeHand[] = []
  const heard: { kerf: number; bound: number }[] = []
  const failed: string[] = []
  const packer = createPacker(
    () => {
      hands.push(new FakeHand())
      return hands.at(-1)!
    },
    {
      onAnswer: (job, answer) => heard.push({ kerf: job.kerf, bound: answer.bounds.ply! }),
      onFailed: (_job, why) => failed.push(why),
    },
    50,
  )
  return { hands, heard, failed, packer }
}

describe('the packer', () => {
  it('gives the answer of the newest job only', () => {
    const { hands, heard, packer } = aShop()
    packer.ask(aJob(1))
    packer.ask(aJob(2))
    hands[0]!.answers(0, anAnswer(11))
    hands[0]!.answers(1, anAnswer(22))
    packer.stop()
    expect(heard).toEqual([{ kerf: 2, bound: 22 }])
  })

  it('replaces a worker that fails and asks again', () => {
    const { hands, heard, failed, packer } = aShop()
    packer.ask(aJob(1))
    hands[0]!.onerror?.({ message: 'out of memory' })
    expect(hands[0]!.isGone).toBe(true)
    hands[1]!.answers(0, anAnswer(11))
    packer.stop()
    expect(heard).toEqual([{ kerf: 1, bound: 11 }])
    expect(failed).toEqual([])
  })

  it('gives a job up when the second worker fails at it too, and tries the next job afresh', () => {
    const { hands, heard, failed, packer } = aShop()
    packer.ask(aJob(1))
    hands[0]!.onerror?.({ message: 'out of memory' })
    hands[1]!.onerror?.({ message: 'out of memory' })
    expect(failed).toEqual(['out of memory'])
    packer.ask(aJob(2))
    hands[2]!.answers(0, anAnswer(22))
    packer.stop()
    expect(heard).toEqual([{ kerf: 2, bound: 22 }])
  })

  it('replaces a worker that says nothing', () => {
    vi.useFakeTimers()
    const { hands, packer } = aShop()
    packer.ask(aJob(1))
    vi.advanceTimersByTime(51)
    expect(hands.map(({ isGone }) => isGone)).toEqual([true, false])
    packer.stop()
    vi.useRealTimers()
  })
})

describe('the bench of the worker', () => {
  const atOnce = () => Promise.resolve()

  it('drops a job for a newer one between two chunks', async () => {
    const posted: AnswerLetter[] = []
    let clock = 0
    function* search(job: SheetJob): Generator<SheetAnswer | null, SheetAnswer> {
      for (let at = 0; at < 100; at++) yield null
      return anAnswer(job.kerf * 11)
    }
    const work = createBench({
      search,
      post: (letter) => posted.push(letter),
      now: () => clock++,
      breathe: atOnce,
      pause: atOnce,
    })
    await Promise.all([work({ number: 1, job: aJob(1) }), work({ number: 2, job: aJob(2) })])
    expect(posted).toEqual([{ kind: 'answer', number: 2, answer: anAnswer(22), isSettled: true }])
  })

  it('tells how many rounds of work are done while there is no better answer', async () => {
    const posted: AnswerLetter[] = []
    let [clock, rounds] = [0, 0]
    function* search(): Generator<SheetAnswer | null, SheetAnswer> {
      yield anAnswer(1)
      for (let at = 0; at < 2000; at++) {
        rounds++
        yield null
      }
      return anAnswer(1)
    }
    const told: number[] = []
    const post = (letter: AnswerLetter) => {
      posted.push(letter)
      // The first step brought the first answer.
      if (letter.kind === 'atWork') told.push(letter.rounds - 1 - rounds)
    }
    const work = createBench({ search, post, now: () => clock++, breathe: atOnce, pause: atOnce })
    await work({ number: 1, job: aJob(1) })
    expect(posted.filter(({ kind }) => kind === 'answer')).toHaveLength(2)
    expect(told.length).toBeGreaterThan(1)
    expect(new Set(told)).toEqual(new Set([0]))
  })

  it('rests after its first answer, and takes a newer job up meanwhile', async () => {
    const said: string[] = []
    let clock = 0
    let wake = () => {}
    function* search(job: SheetJob): Generator<SheetAnswer | null, SheetAnswer> {
      yield anAnswer(job.kerf)
      said.push(`looks for better of ${job.kerf}`)
      return anAnswer(job.kerf)
    }
    const work = createBench({
      search,
      post: ({ number }) => said.push(`answers ${number}`),
      now: () => clock++,
      breathe: atOnce,
      pause: () =>
        new Promise((resolve) => {
          said.push('rests')
          wake = resolve
        }),
    })
    const first = work({ number: 1, job: aJob(1) })
    await vi.waitFor(() => expect(said).toEqual(['answers 1', 'rests']))
    const wakeFirst = wake
    const second = work({ number: 2, job: aJob(2) })
    await vi.waitFor(() => expect(said).toHaveLength(4))
    wakeFirst()
    wake()
    await Promise.all([first, second])
    expect(said).toEqual(['answers 1', 'rests', 'answers 2', 'rests', 'looks for better of 2', 'answers 2'])
  })

  it('posts a first answer at once and a better one later', async () => {
    const posted: AnswerLetter[] = []
    let clock = 0
    function* search(): Generator<SheetAnswer | null, SheetAnswer> {
      yield anAnswer(1)
      for (let at = 0; at < 200; at++) yield anAnswer(2)
      return anAnswer(3)
    }
    const work = createBench({
      search,
      post: (letter) => posted.push(letter),
      now: () => clock++,
      breathe: atOnce,
      pause: atOnce,
    })
    await work({ number: 1, job: aJob(1) })
    const bounds = posted.map((letter) => (letter.kind === 'answer' ? letter.answer.bounds.ply : 0))
    expect(bounds[0]).toBe(1)
    expect(bounds).toContain(2)
    expect(bounds.at(-1)).toBe(3)
  })
})

describe('a letter', () => {
  it('is the same after it was written and read, placements and all', () => {
    const answer = packSheets({ ...derive(demonstrationKitchen()).sheetJob, effort: 'glance' })
    const letter: AnswerLetter = { kind: 'answer', number: 3, answer, isSettled: true }
    expect(answer.sheets.length).toBeGreaterThan(5)
    expect(structuredClone(createReader()(written(letter)))).toEqual(letter)
  })

  it('has the very sheets of the letter before where they are cut as they were', () => {
    const answer = packSheets({ ...derive(demonstrationKitchen()).sheetJob, effort: 'glance' })
    const [first, ...others] = answer.sheets
    const changed = { ...answer, sheets: [{ ...first!, copies: first!.copies + 1 }, ...others.toReversed()] }
    const read = createReader()
    const [before, after] = [answer, changed].map((of) => {
      const letter = read(written({ kind: 'answer', number: 1, answer: of, isSettled: true }))
      return letter.kind === 'answer' ? letter.answer.sheets : []
    })
    expect(after!.map((sheet) => before!.includes(sheet))).toEqual([false, ...others.map(() => true)])
    expect(structuredClone(after)).toEqual(changed.sheets)
  })
})
