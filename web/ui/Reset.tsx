import { RotateCcw } from 'lucide-react'
import styles from './Fields.module.css'

/** Told of a value that can be chosen differently from the build method, or from the project. */
export interface Own {
  /** Whether this was chosen differently. */
  readonly isOwn?: boolean | undefined
  readonly onReset?: (() => void) | undefined
  /** What has the usual value; the build method where it is left out. */
  readonly usual?: 'the project' | undefined
}

/** Takes back what was chosen differently, beside its field; nothing where nothing was. */
export function Reset({ label, isOwn, onReset, usual }: Own & { readonly label: string }) {
  if (!isOwn || !onReset) return null
  return (
    <button
      type="button"
      className={styles.reset}
      onClick={onReset}
      aria-label={`${label}: as ${usual ?? 'the build method'} has it`}
    >
      <RotateCcw size={14} aria-hidden />
    </button>
  )
}

export function ownTitle(usual: Own['usual'] = undefined): string {
  return `Chosen differently from ${usual ?? 'the build method'}`
}
