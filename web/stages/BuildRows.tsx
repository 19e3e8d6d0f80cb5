import { useId, useState } from 'react'
import {
  type BuildMethod,
  type Cabinet,
  type MethodChoices,
  type MethodId,
  type Project,
  valuesOf,
} from '../../engine/index'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import { Choice } from '../ui/Choice'
import { ChoiceRows } from './ChoiceRows'
import { ownChoices } from './choices'
import styles from './Properties.module.css'
import { common } from './shaping'

interface BuildRowsProps {
  readonly project: Project
  readonly cabinets: readonly Cabinet[]
}

const USUAL = 'usual'

/** The build method of the selected cabinets, and what they do differently from it. */
export function BuildRows({ project, cabinets }: BuildRowsProps) {
  const actions = useStore((state) => state.actions)
  const [isOpen, setOpen] = useState(false)
  const id = useId()
  const ids = cabinets.map((cabinet) => cabinet.id)
  const usual = project.methods[project.method]!
  const options = [
    [USUAL, `as the project (${usual.name})`],
    ...valuesOf<BuildMethod>(project.methods).map((method) => [method.id, method.name] as const),
  ] as readonly (readonly [string, string])[]
  // A choice that several of them make is one choice.
  const made: Partial<MethodChoices> = Object.assign({}, ...cabinets.map(({ overrides }) => overrides))
  const own = Object.keys(made).length
  const choices = cabinets.map(({ method, overrides }) => ({
    ...project.methods[method ?? project.method]!,
    ...overrides,
  }))
  const override = (change: Partial<MethodChoices>) => actions.commit({ kind: 'override', ids, choices: change })
  return (
    <>
      <Choice
        label="Build"
        value={common(cabinets, ({ method }) => method ?? USUAL)}
        options={options}
        onChoice={(method) =>
          actions.commit({ kind: 'setCabinetMethod', ids, method: method === USUAL ? null : (method as MethodId) })
        }
      />
      <Button
        look="plain"
        className={styles.more}
        aria-expanded={isOpen}
        aria-controls={id}
        onClick={() => setOpen(!isOpen)}
      >
        {isOpen ? '▾' : '▸'} Built differently{own > 0 ? `: ${own} *` : ''}
      </Button>
      {own > 0 && <p className={styles.own}>{ownChoices(made)}</p>}
      <div id={id} hidden={!isOpen}>
        {isOpen && (
          <>
            <ChoiceRows
              choices={choices}
              own={cabinets.map(({ overrides }) => overrides)}
              materials={project.materials}
              display={project.display}
              onChoice={override}
              onReset={(name) => override({ [name]: undefined })}
            />
            {own > 0 && (
              <Button onClick={() => override(nothingOf(made))} className={styles.resetAll}>
                All as the build method
              </Button>
            )}
          </>
        )}
      </div>
    </>
  )
}

/** The same choices, taken back. */
function nothingOf(made: Partial<MethodChoices>): Partial<MethodChoices> {
  return Object.fromEntries(Object.keys(made).map((name) => [name, undefined]))
}
