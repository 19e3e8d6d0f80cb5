import styles from './Fields.module.css'

interface SegmentsProps<Value extends string> {
  readonly label: string
  readonly value: Value
  readonly options: readonly (readonly [Value, string])[]
  readonly onChoice: (value: Value) => void
}

/** Two or three words side by side, one of them on. */
export function Segments<Value extends string>({ label, value, options, onChoice }: SegmentsProps<Value>) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset brings a frame and a legend that have no place in a bar.
    <div className={styles.segments} role="group" aria-label={label}>
      {options.map(([key, words]) => (
        <button key={key} type="button" aria-pressed={key === value} onClick={() => onChoice(key)}>
          {words}
        </button>
      ))}
    </div>
  )
}
