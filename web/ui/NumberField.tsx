import { useEffect, useState } from 'react'
import type { Own } from './Reset'
import { TypedRow } from './TypedRow'

interface NumberFieldProps extends Own {
  readonly label: string
  /** Null where several things differ, or where there is no number. */
  readonly value: number | null
  readonly least: number
  readonly most: number
  readonly isWhole?: boolean
  /** How much of what is kept one is of what is shown and typed; shown to a tenth then. */
  readonly per?: number
  readonly placeholder?: string
  /** Told null only where an empty field means something. */
  readonly onNumber: (value: number) => void
  readonly onEmpty?: () => void
  readonly isBare?: boolean
}

/** A plain number between two limits, which are of what is kept. What is not one stays in the field with the reason under it. */
export function NumberField(props: NumberFieldProps) {
  const {
    label,
    value,
    least,
    most,
    isWhole,
    per: given,
    placeholder = 'mixed',
    onNumber,
    onEmpty,
    isBare,
    isOwn,
    onReset,
  } = props
  const per = given ?? 1
  const inUnit = (kept: number) => (given === undefined ? kept : Math.round((kept / per) * 10) / 10)
  const shown = value === null ? '' : String(inUnit(value))
  const [typed, setTyped] = useState<string | null>(null)
  const [why, setWhy] = useState<string | null>(null)
  useEffect(() => {
    setTyped(null)
    setWhy(null)
  }, [value])

  function settleText() {
    if (typed === null || typed === shown) return forget()
    const number = Number(typed.trim().replace(',', '.'))
    if (typed.trim() === '') {
      forget()
      return onEmpty?.()
    }
    const refusal = refusalOf(number, props)
    if (refusal) return setWhy(refusal)
    forget()
    onNumber(number * per)
  }

  function forget() {
    setTyped(null)
    setWhy(null)
  }

  return (
    <TypedRow
      label={label}
      isBare={isBare}
      text={typed ?? shown}
      placeholder={value === null ? placeholder : undefined}
      inputMode={isWhole ? 'numeric' : 'decimal'}
      why={why}
      onText={setTyped}
      onSettle={settleText}
      onForget={typed === null ? null : forget}
      isOwn={isOwn}
      onReset={onReset}
    />
  )

  function refusalOf(number: number, { isWhole: whole }: NumberFieldProps): string | null {
    if (!Number.isFinite(number)) return `"${typed}" is not a number.`
    if (whole && !Number.isInteger(number)) return `${label} is ${number}; it must be a whole number.`
    if (number * per < least) return `${label} is ${number}; it must be at least ${inUnit(least)}.`
    return number * per > most ? `${label} is ${number}; it can be at most ${inUnit(most)}.` : null
  }
}
