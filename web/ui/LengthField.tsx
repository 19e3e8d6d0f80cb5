import { useEffect, useState } from 'react'
import {
  checkLength,
  formatLength,
  formatMeasure,
  type LengthDisplay,
  type Mm,
  parseLength,
  type Result,
} from '../../engine/index'
import type { Own } from './Reset'
import { TypedRow } from './TypedRow'

/** A field of the project, or limits of its own. */
export type LimitedField = Parameters<typeof checkLength>[0]

export interface LengthFieldProps extends Own {
  readonly label: string
  /** Null where several things have different lengths. */
  readonly value: Mm | null
  readonly display: LengthDisplay
  readonly field: LimitedField
  /** Answers why a length cannot be, or nothing. */
  readonly onLength: (length: Mm) => string | null
  /** Told why what stands in the field is not taken, and null when nothing is wrong with it any more. */
  readonly onRefusal?: (why: string | null) => void
  /** Told at every key what the text would give; null while it gives nothing. */
  readonly onTyped?: (length: Mm | null) => void
  /** Names that may be used in sums, such as W for the width. */
  readonly names?: Readonly<Record<string, Mm>>
  /** Whether the label is only for those who cannot see the table head above. */
  readonly isBare?: boolean
  /** Whether it is of a bit or of hardware, and told in mm where inches would round it. */
  readonly isMeasure?: boolean
}

/** Reads a length that a person typed and checks it against what the field can take. */
export function readLength(
  text: string,
  display: LengthDisplay,
  field: LimitedField,
  names: Readonly<Record<string, Mm>> = {},
): Result<Mm> {
  const read = parseLength(text, display, names)
  return read.ok ? checkLength(field, read.value, display) : read
}

/**
 * Takes what people write: `30 1/4`, `600/2 + 18`, `76.8cm`. What is not understood stays in the field with the reason
 * under it.
 */
export function LengthField(props: LengthFieldProps) {
  const { label, value, display, field, onLength, onRefusal, onTyped, names, isBare, isMeasure } = props
  const { isOwn, onReset, usual } = props
  const shown = value === null ? '' : isMeasure ? formatMeasure(value, display) : formatLength(value, display)
  const [typed, setTyped] = useState<string | null>(null)
  const [why, setWhy] = useState<string | null>(null)
  useEffect(forget, [value, display])

  function settleText() {
    if (typed === null || typed.trim() === '' || (typed === shown && isMeasure)) return forget()
    const read = readLength(typed, display, field, names)
    // What was typed counts, also where the length that was there before only looked like it.
    if (read.ok && read.value === value) return forget()
    const refusal = read.ok ? onLength(read.value) : read.message
    if (refusal === null) forget()
    else {
      setWhy(refusal)
      onRefusal?.(refusal)
    }
  }

  function forget() {
    if (typed !== null) onTyped?.(null)
    setTyped(null)
    setWhy(null)
    if (why !== null) onRefusal?.(null)
  }

  return (
    <TypedRow
      label={label}
      isBare={isBare}
      text={typed ?? shown}
      placeholder={value === null ? 'mixed' : undefined}
      inputMode="text"
      why={why}
      onText={(text) => {
        setTyped(text)
        const read = onTyped && readLength(text, display, field, names)
        if (read) onTyped(read.ok ? read.value : null)
      }}
      onSettle={settleText}
      onForget={typed === null ? null : forget}
      isOwn={isOwn}
      onReset={onReset}
      usual={usual}
    />
  )
}
