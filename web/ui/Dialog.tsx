import { type ReactNode, useEffect, useRef } from 'react'
import styles from './Dialog.module.css'

interface DialogProps {
  readonly title: string
  readonly onClose: () => void
  readonly children: ReactNode
}

/** The browser's own modal dialog: it keeps the focus, closes on Escape and gives the focus back. */
export function Dialog({ title, onClose, children }: DialogProps) {
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => {
    const element = dialog.current
    if (element && !element.open) element.showModal()
  }, [])
  return (
    <dialog ref={dialog} className={styles.dialog} aria-label={title} onClose={onClose}>
      <h2>{title}</h2>
      {children}
    </dialog>
  )
}
