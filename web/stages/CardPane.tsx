import { ChevronDown, ChevronRight } from 'lucide-react'
import { useId } from 'react'
import { Button } from '../ui/Button'
import styles from './CardPane.module.css'
import { ProjectPanel } from './ProjectPanel'
import { Properties } from './Properties'
import type { CardState } from './useCard'

interface CardPaneProps {
  readonly card: CardState
}

/** The card in its own room beside the wall, or below it: what is selected, or how the project is built. */
export function CardPane({ card: { open, toggle } }: CardPaneProps) {
  const id = useId()
  if (open === 'cabinets') return <Properties onFold={toggle} />
  return (
    <div className={styles.project}>
      <Button look="plain" aria-expanded aria-controls={id} onClick={toggle}>
        <ChevronDown size={16} aria-hidden /> Build and boards
      </Button>
      <div id={id}>
        <ProjectPanel />
      </div>
    </div>
  )
}

/** What is left of the card while it is folded. */
export function FoldedCard({ card: { about, toggle } }: CardPaneProps) {
  if (about === 'cabinets') return <Properties isFolded onFold={toggle} />
  return (
    <Button look="plain" className={styles.name} aria-expanded={false} onClick={toggle}>
      <ChevronRight size={16} aria-hidden /> Build and boards
    </Button>
  )
}
