import { Redo2, Undo2 } from 'lucide-react'
import { useEffect, useState } from 'react'
import { type LengthDisplay, redoLabel, undoLabel } from '../../engine/index'
import { saveFile } from '../store/keeping'
import type { StageName } from '../store/state'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import { Segments } from '../ui/Segments'
import styles from './Header.module.css'
import { ProjectMenu } from './ProjectMenu'

const STAGES: readonly (readonly [StageName, string])[] = [
  ['site', 'Site'],
  ['design', 'Design'],
  ['show', 'Show'],
  ['cut', 'Cut'],
  ['build', 'Build'],
]

const DISPLAYS: Readonly<Record<'mm' | 'in', LengthDisplay>> = {
  mm: { unit: 'mm', step: 0.1 },
  in: { unit: 'in', step: 32 },
}

/** The project, the stages of the work on their steel rule, and the way back. */
export function Header() {
  const unit = useStore((state) => state.shown.display.unit)
  const actions = useStore((state) => state.actions)
  return (
    <header className={styles.header}>
      <div className={styles.left}>
        <div className={styles.brand}>
          <svg viewBox="0 0 24 24" aria-hidden="true">
            <path d="M3 3h7v7h4V3h7v18h-7v-6h-4v6H3z" />
          </svg>
          <h1>Casewright</h1>
        </div>
        <ProjectName />
        <ProjectMenu />
        <Saved />
      </div>
      <StageNav />
      <div className={styles.right}>
        <UndoRedo />
        <Segments
          label="Unit of lengths"
          value={unit}
          options={[
            ['mm', 'mm'],
            ['in', 'in'],
          ]}
          onChoice={(chosen) => chosen !== unit && actions.setDisplay(DISPLAYS[chosen])}
        />
      </div>
    </header>
  )
}

function StageNav() {
  const stage = useStore((state) => state.stage)
  const actions = useStore((state) => state.actions)
  return (
    <nav className={styles.stages} aria-label="Stages of the work">
      {STAGES.map(([name, words]) => (
        <button
          key={name}
          type="button"
          aria-current={name === stage ? 'page' : undefined}
          onClick={() => actions.setStage(name)}
        >
          {words}
        </button>
      ))}
    </nav>
  )
}

function UndoRedo() {
  const history = useStore((state) => state.history)
  const actions = useStore((state) => state.actions)
  const [undoes, redoes] = [undoLabel(history), redoLabel(history)]
  return (
    <>
      <Button
        className={undoes === null ? undefined : styles.undo}
        disabled={undoes === null}
        onClick={actions.undo}
        title={undoes === null ? 'Nothing to undo' : `Undo ${lower(undoes)} (Ctrl+Z)`}
        aria-label={undoes === null ? 'Undo' : `Undo ${lower(undoes)}`}
      >
        <Undo2 size={14} aria-hidden />
        <span className={styles.undoWords}>Undo{undoes === null ? '' : ` ${lower(undoes)}`}</span>
      </Button>
      <Button
        disabled={redoes === null}
        onClick={actions.redo}
        title={redoes === null ? 'Nothing to redo' : `Redo ${lower(redoes)} (Ctrl+Shift+Z)`}
        aria-label={redoes === null ? 'Redo' : `Redo ${lower(redoes)}`}
      >
        <Redo2 size={14} aria-hidden />
        <span className={styles.undoWords}>Redo</span>
      </Button>
    </>
  )
}

/** `Widen B3` within a sentence. */
function lower(label: string): string {
  return label.charAt(0).toLowerCase() + label.slice(1)
}

/** On as many lines as it takes: a name has one line, so Enter is the end of it. */
function ProjectName() {
  const name = useStore((state) => state.shown.name)
  const actions = useStore((state) => state.actions)
  const [typed, setTyped] = useState(name)
  useEffect(() => setTyped(name), [name])
  function settleName() {
    const text = typed.trim()
    if (text === '') setTyped(name)
    else if (text !== name) actions.commit({ kind: 'rename', name: text })
  }
  return (
    <span className={styles.nameFrame} data-typed={typed}>
      <textarea
        className={styles.name}
        aria-label="Name of the project"
        value={typed}
        title={name}
        maxLength={80}
        rows={1}
        autoComplete="off"
        spellCheck={false}
        onChange={(event) => setTyped(event.currentTarget.value.replace(/\s*\n\s*/g, ' '))}
        onBlur={(event) => {
          settleName()
          // A long name is read from its beginning.
          event.currentTarget.scrollTop = 0
        }}
        onKeyDown={(event) => {
          if (event.key === 'Enter') {
            event.preventDefault()
            event.currentTarget.blur()
          }
          if (event.key === 'Escape' && typed !== name) {
            event.stopPropagation()
            setTyped(name)
          }
        }}
      />
    </span>
  )
}

function Saved() {
  const { state, at, why } = useStore((all) => all.saving)
  const isElsewhere = useStore((all) => all.isElsewhere)
  if (isElsewhere) return <span className={`${styles.saved} ${styles.saving}`}>open in another tab</span>
  if (state === 'failed') {
    return (
      <span className={`${styles.saved} ${styles.failed}`} role="alert" title={why ?? undefined}>
        Not saved
        <button type="button" onClick={saveFile}>
          Download now
        </button>
      </span>
    )
  }
  if (state === 'saving') return <span className={`${styles.saved} ${styles.saving}`}>saving</span>
  return (
    <span className={styles.saved} title="In this browser, on this machine">
      <span aria-hidden="true">●</span> saved{at !== null && <span className={styles.clock}>{at}</span>}
    </span>
  )
}
