import { useState } from 'react'
import { chosenCabinets } from '../store/selection'
import { useStore } from '../store/store'
import { isOpenBefore } from '../ui/Fold'
import { keep } from '../ui/kept'

/** What the card beside the wall is about. */
export type Card = 'cabinets' | 'project'

export interface CardState {
  /** What it stands open for; null while it is folded or there is nothing to show. */
  readonly open: Card | null
  /** What it could show now. */
  readonly about: Card
  /** Opens or folds it for what it could show. */
  toggle(): void
}

/**
 * The card takes its own room beside the wall and never lies over it. Picking a cabinet opens it unless it was folded by
 * hand; a board that is picked in 3D or in a list opens nothing and closes nothing. Under a hand it stays as it is, so
 * that nothing moves below the pointer.
 */
export function useCard(): CardState {
  const selection = useStore((state) => state.selection)
  const isHeld = useStore((state) => state.gesture !== null)
  const [isWanted, setWanted] = useState(() => isOpenBefore('card') ?? true)
  const [isProjectOpen, setProjectOpen] = useState(false)
  const [open, setOpen] = useState<Card | null>(null)
  const about = chosenCabinets(selection).length > 0 ? 'cabinets' : 'project'
  const now = openFor(about, selection.kind === 'part')
  if (!isHeld && now !== open) setOpen(now)

  function openFor(card: Card, isBoard: boolean): Card | null {
    if (card === 'project') return isProjectOpen ? card : null
    return isWanted && (!isBoard || open !== null) ? card : null
  }

  function toggle() {
    if (about === 'project') return setProjectOpen(!isProjectOpen)
    const next = open === null
    setWanted(next)
    setOpen(next ? about : null)
    keep('open card', String(next))
  }

  return { open, about, toggle }
}
