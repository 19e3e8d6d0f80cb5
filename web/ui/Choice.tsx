import { RotateCcw } from 'lucide-react'
import { useId } from 'react'
import styles from './Fields.module.css'

interface ChoiceProps<Value extends string> {
  readonly label: string
  /** Null where several things differ. */
  readonly value: Value | null
  readonly options: readonly (readonly [Value, string])[]
  readonly onChoice: (value: Value) => void
  /** Whether this was chosen differently from the build method. */
  readonly isOwn?: boolean
  readonly onReset?: () => void
  readonly isBare?: boolean
}

/** One of several words. */
export function Choice<Value extends string>(props: ChoiceProps<Value>) {
  const { label, value, options, onChoice, isOwn, onReset, isBare } = props
  const id = useId()
  const row = isBare ? styles.bare : isOwn ? `${styles.row} ${styles.own}` : styles.row
  return (
    <div className={row}>
      <label htmlFor={id} className={isBare ? 'unseen' : undefined}>
        {label}
      </label>
      <span className={styles.control}>
        <select
          id={id}
          className={styles.field}
          value={value ?? ''}
          title={isOwn ? 'Chosen differently from the build method' : undefined}
          onChange={(event) => onChoice(event.currentTarget.value as Value)}
        >
          {value === null && (
            <option value="" disabled>
              mixed
            </option>
          )}
          {options.map(([key, words]) => (
            <option key={key} value={key}>
              {words}
            </option>
          ))}
        </select>
        {isOwn && onReset && (
          <button
            type="button"
            className={styles.reset}
            onClick={onReset}
            aria-label={`${label}: as the build method has it`}
          >
            <RotateCcw size={14} aria-hidden />
          </button>
        )}
      </span>
    </div>
  )
}
