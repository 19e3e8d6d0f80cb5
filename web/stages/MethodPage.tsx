import { type KeyboardEvent, useId, useState } from 'react'
import {
  type BuildMethod,
  freeMethodId,
  isMethodFree,
  type MethodId,
  markOf,
  namersOf,
  type Project,
  valuesOf,
} from '../../engine/index'
import { applyProposal, proposalOf, propose } from '../store/proposing'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import { Choice } from '../ui/Choice'
import { TextField } from '../ui/TextField'
import { ChoiceRows } from './ChoiceRows'
import { MethodRules } from './MethodRules'
import { type Arrival, bringInMethod, saveMethod } from './methodFiles'
import styles from './Panels.module.css'

/** The build methods of the project: each can be named, copied, changed, and taken to another project. */
export function MethodPage() {
  const project = useStore((state) => state.shown)
  const [chosen, setChosen] = useState<MethodId>(project.method)
  const method = project.methods[chosen] ?? project.methods[project.method]!
  const change = (what: Partial<Omit<BuildMethod, 'id'>>) =>
    propose({ kind: 'editMethod', id: method.id, change: what })
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the keys are those of the fields inside.
    <div onKeyDown={useSecondEnter()}>
      <div className={styles.named}>
        <Choice
          label="Method"
          value={method.id}
          options={valuesOf<BuildMethod>(project.methods).map((one) => [
            one.id,
            one.id === project.method ? `${one.name} (used)` : one.name,
          ])}
          onChoice={setChosen}
        />
        <TextField label="Name" value={method.name} onText={(name) => change({ name })} />
      </div>
      <Deeds method={method} onChoose={setChosen} />
      <ChoiceRows
        choices={[method]}
        own={[]}
        materials={project.materials}
        display={project.display}
        onChoice={change}
      />
      <MethodRules method={method} display={project.display} onChange={change} />
    </div>
  )
}

/** Enter settles a figure, and Enter once more applies what it would change. */
function useSecondEnter() {
  const waiting = useStore(proposalOf)
  return (event: KeyboardEvent) => {
    const isField = event.target instanceof HTMLInputElement && event.target.type === 'text'
    if (event.key === 'Enter' && isField && waiting && waiting === proposalOf(useStore.getState())) applyProposal()
  }
}

interface DeedsProps {
  readonly method: BuildMethod
  readonly onChoose: (id: MethodId) => void
}

/** What is done with a method as a whole. */
function Deeds({ method, onChoose }: DeedsProps) {
  const project = useStore((state) => state.history.present)
  const actions = useStore((state) => state.actions)
  // What waits for a yes would be lost by these, or left out of the copy and the file.
  const isWaiting = useStore((state) => proposalOf(state) !== null)
  const [arrival, setArrival] = useState<Arrival | null>(null)
  const why = useId()
  const { id } = method
  async function bringIn() {
    const arrived = await bringInMethod()
    if (arrived) onChoose(arrived.id)
    setArrival(arrived)
  }
  return (
    <>
      <p className={styles.actions}>
        <Button
          disabled={isWaiting}
          onClick={() => {
            onChoose(freeMethodId(project.methods))
            actions.commit({ kind: 'copyMethod', id })
          }}
        >
          Copy
        </Button>
        <Button
          disabled={isWaiting || !isMethodFree(project, id)}
          aria-describedby={why}
          onClick={() => {
            onChoose(project.method)
            actions.commit({ kind: 'removeMethod', id })
          }}
        >
          Remove
        </Button>
        <Button disabled={project.method === id} onClick={() => propose({ kind: 'useMethod', id })}>
          Use for the project
        </Button>
        <Button disabled={isWaiting} onClick={() => saveMethod(id)}>
          Save as file
        </Button>
        <Button disabled={isWaiting} onClick={() => void bringIn()}>
          Bring in a file
        </Button>
      </p>
      <p id={why} className={styles.users}>
        {isWaiting ? 'A change waits: apply it or leave it first.' : usersOf(project, id)}
      </p>
      {arrival && arrival.id === id && arrival.told.length > 0 && (
        <ul className={styles.told} aria-label="Boards of the method that was brought in">
          {arrival.told.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      )}
    </>
  )
}

/** Who is built by a method, and so why it cannot be removed. */
function usersOf(project: Project, id: MethodId): string {
  const namers = namersOf(project, id).map(markOf).join(', ')
  if (project.method === id) {
    return `The project is built by it${namers ? `, and ${namers} in any case` : ''}; it cannot be removed.`
  }
  return namers ? `Built by it: ${namers}. It cannot be removed.` : 'Nothing is built by it.'
}
