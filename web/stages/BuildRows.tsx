import { useId, useState } from 'react'
import {
  type BuildMethod,
  type Cabinet,
  labelOf,
  type MethodId,
  type Overrides,
  ownNames,
  type Project,
  type RuleSet,
  valuesOf,
  withOwn,
} from '../../engine/index'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import { Choice } from '../ui/Choice'
import { Fold } from '../ui/Fold'
import { ChoiceRows } from './ChoiceRows'
import { ownChoices } from './choices'
import styles from './Properties.module.css'
import { RuleRows } from './RuleRows'
import { RULES } from './rules'
import { common } from './shaping'

interface BuildRowsProps {
  readonly project: Project
  readonly cabinets: readonly Cabinet[]
}

const USUAL = 'usual'
const RULE_NAMES = Object.keys(RULES) as RuleSet[]

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
  const owns = cabinets.map(({ overrides }) => overrides)
  // A choice that several of them make is one choice.
  const made = [...new Set(owns.flatMap(ownNames))]
  const own = made.length
  const choices = cabinets.map(({ method, overrides }) =>
    withOwn(project.methods[method ?? project.method]!, overrides),
  )
  const override = (change: Overrides) => actions.commit({ kind: 'override', ids, choices: change })
  const overrideEach = (changeOf: (method: BuildMethod) => Overrides) => {
    const edits = ids.map((one, at) => ({ kind: 'override', ids: [one], choices: changeOf(choices[at]!) }) as const)
    const label = labelOf(project, { kind: 'override', ids, choices: {} })
    if (edits.length > 0) actions.commit(edits.length === 1 ? edits[0]! : { kind: 'several', edits }, label)
  }
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
              own={owns}
              materials={project.materials}
              display={project.display}
              onChoice={override}
              onReset={(name) => override({ [name]: undefined })}
            />
            {RULE_NAMES.map((set) => {
              const count = made.filter((name) => name.startsWith(`${set}.`)).length
              return (
                <Fold
                  key={set}
                  name={`own ${set}`}
                  title={`${RULES[set].title}${count > 0 ? `: ${count} *` : ''}`}
                  className={styles.fixing}
                >
                  <RuleRows
                    set={set}
                    methods={choices}
                    own={owns}
                    display={project.display}
                    onRules={override}
                    onEach={overrideEach}
                    onReset={override}
                  />
                </Fold>
              )
            })}
            {own > 0 && (
              <Button onClick={() => override(nothingOf(owns))} className={styles.resetAll}>
                All as the build method
              </Button>
            )}
          </>
        )}
      </div>
    </>
  )
}

/** All that is own of any of them, taken back. */
function nothingOf(owns: readonly Overrides[]): Overrides {
  return Object.fromEntries(owns.flatMap((own) => Object.keys(own).map((name) => [name, undefined])))
}
