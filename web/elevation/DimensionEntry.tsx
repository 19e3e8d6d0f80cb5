import { type KeyboardEvent, useEffect, useRef, useState } from 'react'
import { formatLength, type LengthDisplay, type Mm } from '../../engine/index'
import { type LimitedField, readLength } from '../ui/LengthField'
import styles from './Elevation.module.css'

interface DimensionEntryProps {
  readonly name: string
  readonly length: Mm
  readonly field: LimitedField
  readonly display: LengthDisplay
  /** In pixels of the pane: the middle of the figure. */
  readonly x: number
  readonly y: number
  /** Answers why a length cannot be, or nothing. */
  readonly onLength: (length: Mm) => string | null
  /** Done here: to the next dimension, the one before, or none. */
  readonly onDone: (step: -1 | 0 | 1) => void
  /** Fills the gap that is measured, where it can be filled. */
  readonly onFill?: () => void
}

/** A field over the figure of a dimension. Tab goes on to the next one; Escape leaves the length as it was. */
export function DimensionEntry({ name, length, field, display, x, y, onLength, onDone, onFill }: DimensionEntryProps) {
  const input = useRef<HTMLInputElement>(null)
  const shown = formatLength(length, display)
  const [text, setText] = useState(shown)
  // What was typed counts, also where the length only looked like it.
  const [isTyped, setIsTyped] = useState(false)
  const [why, setWhy] = useState<string | null>(null)
  const isOver = useRef(false)
  useEffect(() => input.current?.select(), [])

  function finish(step: -1 | 0 | 1) {
    if (isOver.current) return
    if (isTyped) {
      const read = readLength(text, display, field)
      const refusal = !read.ok ? read.message : read.value === length ? null : onLength(read.value)
      if (refusal !== null) return setWhy(refusal)
    }
    isOver.current = true
    onDone(step)
  }

  function onKeyDown(event: KeyboardEvent) {
    event.stopPropagation()
    if (event.key === 'Escape') {
      isOver.current = true
      onDone(0)
    }
    if (event.key === 'Enter') finish(0)
    if (event.key === 'Tab') {
      event.preventDefault()
      finish(event.shiftKey ? -1 : 1)
    }
  }

  return (
    <div className={styles.entry} style={{ left: x, top: y }} data-nohand>
      <input
        ref={input}
        // biome-ignore lint/a11y/noAutofocus: it was opened to be typed into.
        autoFocus
        aria-label={name}
        aria-invalid={why !== null}
        aria-describedby={why === null ? undefined : 'dimension-why'}
        value={text}
        autoComplete="off"
        spellCheck={false}
        onChange={(event) => {
          setText(event.currentTarget.value)
          setIsTyped(true)
        }}
        onKeyDown={onKeyDown}
        onBlur={() => (why === null ? finish(0) : onDone(0))}
      />
      {onFill && (
        // Taken on the press: the field gives way when it loses the keys.
        <button
          type="button"
          onPointerDown={(event) => {
            event.preventDefault()
            isOver.current = true
            onFill()
          }}
        >
          Fill the gap
        </button>
      )}
      {why !== null && (
        <p id="dimension-why" role="alert">
          {why}
        </p>
      )}
    </div>
  )
}
