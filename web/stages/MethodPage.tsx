import { useMemo, useState } from 'react'
import {
  applyEdit,
  type BuildMethod,
  derive,
  type Edit,
  type MethodId,
  markOf,
  namersOf,
  valuesOf,
} from '../../engine/index'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import { Choice } from '../ui/Choice'
import { TextField } from '../ui/TextField'
import { ChoiceRows } from './ChoiceRows'
import { impactOf, impactWords } from './impact'
import { MethodRules } from './MethodRules'
import styles from './Panels.module.css'

/** The build methods. A change that reaches cabinets is shown on the wall and told before it is made. */
export function MethodPage() {
  const project = useStore((state) => state.shown)
  const present = useStore((state) => state.history.present)
  const preview = useStore((state) => state.preview)
  const actions = useStore((state) => state.actions)
  const [chosen, setChosen] = useState<MethodId>(project.method)
  const method = project.methods[chosen] ?? project.methods[project.method]!
  const isPending = preview?.kind === 'useMethod' || preview?.kind === 'editMethod'
  /** Makes an edit that changes no cabinet; one that does is shown first. */
  function propose(edit: Edit) {
    const { cabinets } = impactOf(derive(present), derive(applyEdit(present, edit)))
    if (cabinets.length === 0) actions.commit(edit)
    else actions.preview(edit)
  }
  function change(what: Partial<Omit<BuildMethod, 'id'>>) {
    const before = preview?.kind === 'editMethod' && preview.id === method.id ? preview.change : {}
    propose({ kind: 'editMethod', id: method.id, change: { ...before, ...what } })
  }
  return (
    <>
      <Choice
        label="Method"
        value={method.id}
        options={valuesOf<BuildMethod>(project.methods).map((one) => [
          one.id,
          one.id === project.method ? `${one.name} (used)` : one.name,
        ])}
        onChoice={(id) => {
          actions.preview(null)
          setChosen(id)
        }}
      />
      <MethodTools method={method} onChosen={setChosen} onUse={() => propose({ kind: 'useMethod', id: method.id })} />
      {isPending && <Pending edit={preview} />}
      <TextField
        label="Name"
        value={method.name}
        onText={(name) => actions.commit({ kind: 'editMethod', id: method.id, change: { name } })}
      />
      <ChoiceRows
        choices={[method]}
        own={[]}
        materials={project.materials}
        display={project.display}
        onChoice={change}
      />
      <MethodRules method={method} display={project.display} onChange={change} />
    </>
  )
}

/** What the change under way comes to, and whether it is made. */
function Pending({ edit }: { readonly edit: Edit }) {
  const present = useStore((state) => state.history.present)
  const derived = useStore((state) => state.derived)
  const actions = useStore((state) => state.actions)
  const words = useMemo(() => impactWords(impactOf(derive(present), derived)), [present, derived])
  return (
    <div className={styles.pending} role="status">
      <p>
        <strong>Not made yet.</strong> {words}
      </p>
      <p className={styles.actions}>
        <Button onClick={() => actions.commit(edit)}>Make the change</Button>
        <Button look="plain" onClick={() => actions.preview(null)}>
          Leave it as it was
        </Button>
      </p>
    </div>
  )
}

interface MethodToolsProps {
  readonly method: BuildMethod
  readonly onChosen: (id: MethodId) => void
  readonly onUse: () => void
}

function MethodTools({ method, onChosen, onUse }: MethodToolsProps) {
  const project = useStore((state) => state.history.present)
  const actions = useStore((state) => state.actions)
  const namers = namersOf(project, method.id).map(markOf)
  const isUsed = project.method === method.id
  const why = isUsed ? 'The project is built by it.' : namers.length > 0 ? `Built by it: ${namers.join(', ')}.` : null
  function copy() {
    const known = new Set(Object.keys(project.methods))
    actions.commit({ kind: 'copyMethod', id: method.id })
    const fresh = Object.keys(useStore.getState().history.present.methods).find((id) => !known.has(id))
    if (fresh) onChosen(fresh as MethodId)
  }
  return (
    <p className={styles.actions}>
      <Button onClick={copy}>Copy it</Button>
      <Button disabled={isUsed} onClick={onUse}>
        Use for the project
      </Button>
      <Button
        disabled={why !== null}
        title={why ?? undefined}
        onClick={() => {
          actions.commit({ kind: 'removeMethod', id: method.id })
          onChosen(project.method)
        }}
      >
        Remove
      </Button>
    </p>
  )
}
