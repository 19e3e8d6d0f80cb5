import { useEffect, useId, useState } from 'react'
import styles from './Fields.module.css'

interface TextFieldProps {
  readonly label: string
  readonly value: string
  readonly onText: (text: string) => void
  readonly isBare?: boolean
}

/** As many characters as a name in a project file may have. */
const LONGEST = 80

/** A name. An empty one is not taken. */
export function TextField({ label, value, onText, isBare }: TextFieldProps) {
  const id = useId()
  const [typed, setTyped] = useState(value)
  useEffect(() => setTyped(value), [value])
  function settleText() {
    const text = typed.trim()
    if (text === '') setTyped(value)
    else if (text !== value) onText(text)
  }
  return (
    <div className={isBare ? styles.bare : styles.row}>
      <label htmlFor={id} className={isBare ? 'unseen' : undefined}>
        {label}
      </label>
      <input
        id={id}
        className={`${styles.field} ${styles.words}`}
        value={typed}
        maxLength={LONGEST}
        autoComplete="off"
        onChange={(event) => setTyped(event.currentTarget.value)}
        onBlur={settleText}
        onKeyDown={(event) => {
          if (event.key === 'Enter') event.currentTarget.blur()
          if (event.key === 'Escape' && typed !== value) {
            event.stopPropagation()
            setTyped(value)
          }
        }}
      />
    </div>
  )
}
