import { type ReactNode, useState } from 'react'
import { keep, kept } from './kept'

interface FoldProps {
  /** Under this it is remembered whether it is open, on this machine. */
  readonly name: string
  readonly title: ReactNode
  /** How it is until it is opened or folded by hand. */
  readonly startsOpen?: boolean
  readonly className?: string
  readonly children: ReactNode
}

/** A section that can be folded away, and stays so from one cabinet to the next and until the next visit. */
export function Fold({ name, title, startsOpen = false, className, children }: FoldProps) {
  const [isOpen, setOpen] = useState(() => isOpenBefore(name) ?? startsOpen)
  function toggled(next: boolean) {
    if (next === isOpen) return
    setOpen(next)
    keep(`open ${name}`, String(next))
  }
  return (
    <details className={className} open={isOpen} onToggle={(event) => toggled(event.currentTarget.open)}>
      <summary>{title}</summary>
      {isOpen && <div>{children}</div>}
    </details>
  )
}

/** Whether something that folds was left open; null where it was never touched. */
export function isOpenBefore(name: string): boolean | null {
  const open = kept(`open ${name}`)
  return open === null ? null : open === 'true'
}
