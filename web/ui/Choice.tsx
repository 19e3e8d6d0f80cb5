import { useId } from 'react'
import styles from './Fields.module.css'
import { type Own, ownTitle, Reset } from './Reset'

interface ChoiceProps<Value extends string> extends Own {
  readonly label: string
  /** Null where several things differ. */
  readonly value: Value | null
  readonly options: readonly (readonly [Value, string])[]
  readonly onChoice: (value: Value) => void
  readonly isBare?: boolean
}

/** One of several words. What is chosen is written over its field by hand: a field of words cuts them off, and so they go on. */
export function Choice<Value extends string>(props: ChoiceProps<Value>) {
  const { label, value, options, onChoice, isOwn, onReset, usual, isBare } = props
  const id = useId()
  const chosen = value === null ? 'mixed' : options.find(([key]) => key === value)?.[1]
  const row = isBare ? styles.bare : isOwn ? `${styles.row} ${styles.own}` : styles.row
  return (
    <div className={row}>
      <label htmlFor={id} className={isBare ? 'unseen' : undefined}>
        {label}
      </label>
      <span className={styles.control}>
        <span className={styles.chosen} data-picked={chosen}>
          <select
            id={id}
            className={styles.field}
            value={value ?? ''}
            title={isOwn ? ownTitle(usual) : undefined}
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
        </span>
        <Reset label={label} isOwn={isOwn} onReset={onReset} usual={usual} />
      </span>
    </div>
  )
}
