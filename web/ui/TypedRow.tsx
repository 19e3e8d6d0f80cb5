import { useId } from 'react'
import styles from './Fields.module.css'
import { type Own, ownTitle, Reset } from './Reset'

interface TypedRowProps extends Own {
  readonly label: string
  /** Whether the label is only for those who cannot see the table head above. */
  readonly isBare?: boolean | undefined
  /** What stands in the field: what is being typed, or what is kept. */
  readonly text: string
  readonly placeholder?: string | undefined
  readonly inputMode: 'text' | 'numeric' | 'decimal'
  /** Why what stands there is not taken. */
  readonly why: string | null
  /** Told at every key; with Enter or on leaving that it counts, with Escape that it does not. */
  readonly onText: (text: string) => void
  readonly onSettle: () => void
  /** Nothing where nothing is being typed, so that Escape goes on to what is around the field. */
  readonly onForget: (() => void) | null
}

/** A label, a field that is typed in, what takes it back to the build method, and the reason under it where it is not taken. */
export function TypedRow(props: TypedRowProps) {
  const { label, isBare, text, placeholder, inputMode, why, onText, onSettle, onForget, isOwn, onReset, usual } = props
  const id = useId()
  return (
    <div className={isBare ? styles.bare : isOwn ? `${styles.row} ${styles.own}` : styles.row}>
      <label htmlFor={id} className={isBare ? 'unseen' : undefined}>
        {label}
      </label>
      <span className={isBare ? styles.bareControl : styles.control}>
        <input
          id={id}
          title={isOwn ? ownTitle(usual) : undefined}
          className={styles.field}
          value={text}
          placeholder={placeholder}
          inputMode={inputMode}
          autoComplete="off"
          spellCheck={false}
          aria-invalid={why !== null}
          aria-describedby={why === null ? undefined : `${id}-why`}
          onFocus={(event) => event.currentTarget.select()}
          onChange={(event) => onText(event.currentTarget.value)}
          onBlur={onSettle}
          onKeyDown={(event) => {
            if (event.key === 'Enter') onSettle()
            if (event.key === 'Escape' && onForget) {
              event.stopPropagation()
              onForget()
            }
          }}
        />
        <Reset label={label} isOwn={isOwn} onReset={onReset} usual={usual} />
      </span>
      {why !== null && (
        <p id={`${id}-why`} className={styles.why} role="alert">
          {why}
        </p>
      )}
    </div>
  )
}
