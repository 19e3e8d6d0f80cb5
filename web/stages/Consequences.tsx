import { type ReactNode, useMemo } from 'react'
import { isSignBefore } from '../../engine/index'
import { takenWords } from '../sheets/words'
import { currentLayout, type Layout } from '../store/state'
import { useStore } from '../store/store'
import { useCurrency, useFollowing } from '../store/turns'
import styles from './Consequences.module.css'
import { figuresOf, proofOf } from './figures'

/** What the design comes to, live, each figure with its change since the drag began. */
export function Consequences() {
  const derived = useFollowing('sheets', (state) => state.derived)
  const before = useFollowing('sheets', (state) => state.before)
  const layout = useFollowing('sheets', currentLayout)
  const latest = useFollowing('sheets', (state) => state.layout)
  const layoutBefore = useFollowing('sheets', (state) => state.layoutBefore)
  const packing = useFollowing('sheets', (state) => state.packing)
  const currency = useFollowing('sheets', (state) => state.shown.shop.currency)
  const now = useMemo(() => figuresOf(derived, layout), [derived, layout])
  // Until the sheets are laid out anew the last figures stay, greyed and with a mark that they are being worked out.
  const last = useMemo(() => (layout ? now : figuresOf(derived, latest)), [layout, now, derived, latest])
  const isSettled = layout?.isSettled ?? false
  // What stays near a layout that was looked for long enough is as good as looked for itself.
  const isSought = isSettled || layout?.isPassing === true
  const then = useMemo(
    () => (before ? figuresOf(before, comparable(layoutBefore, isSought)) : null),
    [before, layoutBefore, isSought],
  )
  // A change is told between layouts that were looked for equally long.
  const fair = useMemo(
    () => (before && !isSought ? figuresOf(derived, asFirst(layout)) : now),
    [before, isSought, derived, layout, now],
  )
  const isThinking = layout === null
  const shown = isThinking ? last : now
  const proof = proofOf(layout)
  const since = (value: number | null, past: number | null | undefined) =>
    isThinking || value === null || past === null || past === undefined ? null : value - past
  return (
    <Strip isThinking={isThinking} isSettled={isSettled} isLong={shown.offcuts > 0 || shown.onHand > 0}>
      <Figure
        words={shown.offcuts > 0 ? `sheets, ${takenWords({ sheets: 0, offcuts: shown.offcuts })}` : 'sheets'}
        value={shown.sheets}
        change={since(fair.sheets, then?.sheets)}
        isThinking={isThinking}
        isLessBetter
      />
      <Figure
        words="yield"
        value={shown.yield}
        unit="%"
        change={since(fair.yield, then?.yield)}
        isThinking={isThinking}
      />
      <Figure words="parts" value={now.parts} change={then ? now.parts - then.parts : null} isLessBetter />
      <Figure
        words={`material${isSignBefore(currency) ? '' : `, ${currency}`}${shown.onHand > 0 ? `, ${round(shown.onHand)} of it on hand` : ''}`}
        value={shown.cost}
        sign={isSignBefore(currency) ? currency : ''}
        change={since(fair.cost, then?.cost)}
        isThinking={isThinking}
        isLessBetter
      />
      {packing === 'failed' && isThinking ? (
        <span className={styles.wrong}>✕ the sheets could not be laid out</span>
      ) : (
        proof && <span className={`${styles.proof} ${proof.isProved ? styles.proved : ''}`}>{proof.text}</span>
      )}
      <GestureLine />
    </Strip>
  )
}

interface StripProps {
  readonly isThinking: boolean
  readonly isSettled: boolean
  /** Whether its figures take two lines on a phone. */
  readonly isLong: boolean
  readonly children: ReactNode
}

/** Figures that have fallen behind the hand are greyed until they catch up. */
function Strip({ isThinking, isSettled, isLong, children }: StripProps) {
  const currency = useCurrency('sheets')
  return (
    <section
      className={currency === 'late' ? `${styles.strip} ${styles.late}` : styles.strip}
      aria-label="Consequences"
      aria-busy={isThinking || currency !== 'now'}
      data-long={isLong || undefined}
      data-settled={isSettled && currency === 'now'}
    >
      {children}
    </section>
  )
}

/** Like is compared with like: settled layouts with settled ones, first answers with first answers. */
function comparable(before: Layout | null, isSettled: boolean): Layout | null {
  if (!before || (isSettled && before.isSettled)) return before
  return isSettled ? null : asFirst(before)
}

/** The layout as it was first answered; nothing where that is not known. */
function asFirst(layout: Layout | null): Layout | null {
  return layout?.first ? { ...layout, answer: layout.first } : null
}

interface FigureProps {
  readonly words: string
  readonly value: number | null
  readonly unit?: string
  /** Before the number. */
  readonly sign?: string
  readonly change: number | null
  readonly isThinking?: boolean
  readonly isLessBetter?: boolean
}

function Figure({ words, value, unit = '', sign = '', change, isThinking, isLessBetter }: FigureProps) {
  const look = isThinking ? `${styles.cell} ${styles.thinking}` : styles.cell
  return (
    <p className={look} data-figure={words.split(',')[0]}>
      <b>
        {value === null ? '–' : `${sign}${round(value)}${unit}`}
        {isThinking && <span aria-hidden="true">…</span>}
      </b>
      <span>{words}</span>
      {change !== null && <em className={lookOf(change, isLessBetter ?? false)}>{changeWords(change, sign)}</em>}
    </p>
  )
}

function lookOf(change: number, isLessBetter: boolean): string | undefined {
  if (change === 0) return styles.same
  return change > 0 === isLessBetter ? styles.worse : styles.better
}

function changeWords(change: number, sign: string): string {
  if (change === 0) return 'no change'
  return change > 0 ? `+${sign}${round(change)}` : `−${sign}${round(-change)}`
}

function round(value: number): string {
  return String(Math.round(value * 100) / 100)
}

/** What the hand is told: chalk when it fits, crayon when it does not, and a mark with either. */
function GestureLine() {
  const gesture = useStore((state) => state.gesture)
  if (!gesture) return null
  return (
    <span
      className={`${styles.say} ${gesture.fits ? styles.fits : styles.wrong}`}
      data-words={gesture.fits ? 'fits' : 'wrong'}
    >
      {gesture.fits ? '✓' : '✕'} {gesture.text}
    </span>
  )
}
