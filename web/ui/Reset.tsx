import { RotateCcw } from 'lucide-react'
import styles from './Fields.module.css'

/** Told of a value that can be chosen differently from the build method. */
export interface Own {
  /** Whether this was chosen differently from the build method. */
  readonly isOwn?: boolean | undefined
  readonly onReset?: (() => void) | undefined
}

/** Takes back what was chosen differently, beside its field; nothing where nothing was. */
export function Reset({ label, isOwn, onReset }: Own & { readonly label: string }) {
  if (!isOwn || !onReset) return null
  return (
    <button
      type="button"
      className={styles.reset}
      onClick={onReset}
      aria-label={`${label}: as the build method has it`}
    >
      <RotateCcw size={14} aria-hidden />
    </button>
  )
}

export const OWN_TITLE = 'Chosen differently from the build method'
