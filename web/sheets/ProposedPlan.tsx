import { useEffect, useRef, useState } from 'react'
import type { Mishap } from '../../engine/index'
import { type Proposed, proposeAgain, takePlan } from '../store/planAgain'
import type { Cutting, MaterialEdit } from '../store/state'
import { Button } from '../ui/Button'
import { hirePacker } from '../workers/hire'
import styles from './Bench.module.css'
import { Sentence } from './Sentence'

/** A plan that is being worked out, one that waits for a yes, or why there is none. */
export interface Asking {
  readonly isBusy: boolean
  readonly why: string | null
  readonly proposed: Proposed | null
  readonly ask: (mishap: Mishap, edit?: MaterialEdit) => void
  readonly leave: () => void
  readonly accept: () => void
}

/** Asks what a mishap would do to the plan, and takes the plan on a yes. */
export function useAsking(cutting: Cutting, onDone?: () => void): Asking {
  const [isBusy, setBusy] = useState(false)
  const [why, setWhy] = useState<string | null>(null)
  const [proposed, setProposed] = useState<Proposed | null>(null)

  async function ask(mishap: Mishap, edit?: MaterialEdit) {
    setBusy(true)
    const answer = await proposeAgain(cutting, mishap, hirePacker, edit)
    setBusy(false)
    setWhy(answer.ok ? null : answer.message)
    setProposed(answer.ok ? answer.value : null)
  }

  function accept() {
    if (!proposed) return
    const isTaken = takePlan(proposed)
    setProposed(null)
    if (isTaken) onDone?.()
    else setWhy('The cutting has gone on since this was worked out. Nothing is changed; ask again.')
  }

  return {
    isBusy,
    why,
    proposed,
    ask: (mishap, edit) => void ask(mishap, edit),
    leave: () => setProposed(null),
    accept,
  }
}

/** What an entry will do, before it is done: nothing is changed until the yes. */
export function ProposedPlan({ asking: { proposed, accept, leave } }: { readonly asking: Asking }) {
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => heading.current?.focus(), [])
  if (!proposed) return null
  return (
    <section className={styles.proposed} aria-label="What this would do">
      <h3 ref={heading} tabIndex={-1}>
        {proposed.summary}
      </h3>
      <ul>
        {proposed.words.map((line) => (
          <li key={line}>
            <Sentence words={line} />
          </li>
        ))}
      </ul>
      <p>Nothing is changed yet. Until the next cut is ticked, the entry can be taken back.</p>
      <p className={styles.plan}>
        <Button onClick={accept}>Yes, cut by this plan</Button>
        <Button look="plain" onClick={leave}>
          No, leave the plan as it is
        </Button>
      </p>
    </section>
  )
}

/** Why nothing can be planned by what was told. */
export function AskingRefused({ why }: { readonly why: string | null }) {
  return why === null ? null : (
    <p className={styles.refusal} role="alert">
      <span aria-hidden="true">■</span> {why}
    </p>
  )
}
