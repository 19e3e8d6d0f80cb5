import { useCallback, useEffect, useState } from 'react'
import { duplicateShelved, listProjects, openShelved, type ProjectCard, removeShelved } from '../store/keeping'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import styles from './Stages.module.css'

/** The projects that this browser keeps. Deleting one is asked twice, because it cannot be undone. */
export function ProjectList({ onDone }: { readonly onDone: () => void }) {
  const current = useStore((state) => state.history.present.id)
  const [cards, setCards] = useState<readonly ProjectCard[] | null>(null)
  const [doubted, setDoubted] = useState<string | null>(null)
  const [why, setWhy] = useState<string | null>(null)
  const look = useCallback(() => {
    listProjects().then(setCards, (reason: unknown) =>
      setWhy(reason instanceof Error ? reason.message : String(reason)),
    )
  }, [])
  useEffect(look, [look])
  const then = (deed: Promise<void>) => {
    setDoubted(null)
    deed.then(look, (reason: unknown) => setWhy(reason instanceof Error ? reason.message : String(reason)))
  }
  if (why) return <p className={styles.stop}>The list could not be read: {why}</p>
  return (
    <>
      <ul className={styles.cards}>
        {(cards ?? []).map((card) => (
          <li key={card.id} data-project={card.id}>
            <span className={styles.cardName}>
              <strong>{card.name}</strong>
              <span>
                {card.cabinets} {card.cabinets === 1 ? 'cabinet' : 'cabinets'}, {new Date(card.at).toLocaleString()}
              </span>
            </span>
            {card.id === current ? (
              <span className={styles.quiet}>open</span>
            ) : doubted === card.id ? (
              <>
                <Button onClick={() => then(removeShelved(card.id))} aria-label={`Delete ${card.name} for good`}>
                  Delete for good
                </Button>
                <Button look="plain" onClick={() => setDoubted(null)}>
                  Keep it
                </Button>
              </>
            ) : (
              <>
                <Button
                  aria-label={`Open ${card.name}`}
                  onClick={() => {
                    void openShelved(card.id)
                    onDone()
                  }}
                >
                  Open
                </Button>
                <Button look="plain" aria-label={`Delete ${card.name}`} onClick={() => setDoubted(card.id)}>
                  Delete
                </Button>
              </>
            )}
            <Button look="plain" aria-label={`Duplicate ${card.name}`} onClick={() => then(duplicateShelved(card.id))}>
              Duplicate
            </Button>
          </li>
        ))}
      </ul>
      <p style={{ display: 'flex', marginTop: 14 }}>
        <Button onClick={onDone} style={{ marginLeft: 'auto' }}>
          Close
        </Button>
      </p>
    </>
  )
}
