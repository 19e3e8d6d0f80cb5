import type { ButtonHTMLAttributes } from 'react'
import styles from './Fields.module.css'

interface ButtonProps extends ButtonHTMLAttributes<HTMLButtonElement> {
  /** Plain buttons have no border until they are pointed at; square ones hold an icon only. */
  readonly look?: 'plain' | 'square' | 'plainSquare'
}

const LOOKS = {
  plain: styles.plain,
  square: styles.square,
  plainSquare: `${styles.plain} ${styles.square}`,
} as const

export function Button({ look, className, ...rest }: ButtonProps) {
  const looks = [styles.button, look && LOOKS[look], className].filter(Boolean).join(' ')
  return <button type="button" className={looks} {...rest} />
}
