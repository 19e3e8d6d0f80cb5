import type { SheetAnswer, SheetJob, SheetLayout } from '../../engine/index'
import type { AnswerLetter, JobLetter } from './letters'

/** The part of a browser's worker that the packer uses. */
export interface Hand {
  postMessage(letter: JobLetter): void
  terminate(): void
  onmessage: ((event: { readonly data: AnswerLetter }) => void) | null
  onerror: ((event: { readonly message?: string; preventDefault?(): void }) => void) | null
}

export interface PackerListener {
  onAnswer(job: SheetJob, answer: SheetAnswer, isSettled: boolean): void
  /** So many rounds of work were done on a job that is not settled yet. */
  onProgress?(job: SheetJob, rounds: number): void
  /** The worker failed twice at the same job. */
  onFailed(job: SheetJob, why: string): void
}

export interface Packer {
  /**
   * Sends a job to be packed; whatever was being packed before is dropped. With a layout that it should stay near, the
   * answer is no better than it must be to save a sheet.
   */
  ask(job: SheetJob, near?: readonly SheetLayout[]): void
  stop(): void
}

/** A worker that says nothing for so long is taken to hang. */
const SILENCE_MS = 10_000
const TRIES = 2

/** Keeps one worker at the newest job, and replaces it when it fails or hangs. */
export function createPacker(hire: () => Hand, listener: PackerListener, silenceMs = SILENCE_MS): Packer {
  let hand: Hand | null = null
  let number = 0
  let asked: SheetJob | null = null
  let near: readonly SheetLayout[] | undefined
  let tries = 0
  let watch: ReturnType<typeof setTimeout> | undefined

  function send() {
    if (!asked) return
    tries++
    number++
    try {
      hand ??= hired()
      hand.postMessage({ number, job: near ? { ...asked, near, goals: [] } : asked })
      watchHand()
    } catch (reason) {
      replace(reason instanceof Error ? reason.message : String(reason))
    }
  }

  function hired(): Hand {
    const fresh = hire()
    fresh.onmessage = ({ data }) => heard(fresh, data)
    fresh.onerror = (event) => {
      event.preventDefault?.()
      if (fresh === hand) replace(event.message ?? 'the packer stopped')
    }
    return fresh
  }

  function heard(from: Hand, letter: AnswerLetter) {
    if (from !== hand || letter.number !== number || !asked) return
    watchHand()
    if (letter.kind === 'atWork') return listener.onProgress?.(asked, letter.rounds)
    if (letter.isSettled) clearTimeout(watch)
    listener.onAnswer(asked, letter.answer, letter.isSettled)
  }

  function replace(why: string) {
    hand?.terminate()
    hand = null
    clearTimeout(watch)
    if (!asked) return
    if (tries < TRIES) send()
    else listener.onFailed(asked, why)
  }

  function watchHand() {
    clearTimeout(watch)
    watch = setTimeout(() => replace(`the packer has said nothing for ${silenceMs / 1000} s`), silenceMs)
  }

  return {
    ask(job, stayingNear) {
      asked = job
      near = stayingNear
      tries = 0
      send()
    },
    stop() {
      asked = null
      clearTimeout(watch)
      hand?.terminate()
      hand = null
    },
  }
}
