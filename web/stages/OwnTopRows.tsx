import { useState } from 'react'
import {
  type Cabinet,
  countertopOver,
  type MaterialId,
  type OwnTop,
  type OwnTopChange,
  ownTopEdit,
  ownTopNames,
  type Project,
} from '../../engine/index'
import { useStore } from '../store/store'
import { Choice } from '../ui/Choice'
import { Fold } from '../ui/Fold'
import { LengthField } from '../ui/LengthField'
import { boardOptions, NO_BOARD, optionalBoards } from './boardOptions'
import styles from './Properties.module.css'
import { common } from './shaping'
import { TOP_FIELDS } from './topFields'

interface OwnTopRowsProps {
  readonly project: Project
  readonly cabinets: readonly Cabinet[]
}

type Reach = 'run' | 'chosen'

/** What a countertop over bases has otherwise than the project's: over all that one top lies on, or over what is chosen alone. */
export function OwnTopRows({ project, cabinets }: OwnTopRowsProps) {
  const actions = useStore((state) => state.actions)
  const [reach, setReach] = useState<Reach>('run')
  const { tops, under } = useTopsOver(project, cabinets)
  const isPart = under.length > cabinets.length
  const meant = isPart && reach === 'run' ? under : cabinets
  const names = [...new Set(meant.flatMap(ownTopNames))]
  const put = (change: OwnTopChange) => {
    actions.commit(ownTopEdit(meant, change))
    return null
  }
  const own = (name: keyof OwnTop) => ({
    isOwn: names.includes(name),
    usual: 'the project' as const,
    onReset: () => put({ [name]: undefined }),
  })
  const isUsual = project.between.countertop !== null
  const isMade = meant.every((one) => countertopOver(one, project))
  const count = names.length > 0 ? `: ${names.length} *` : ''
  return (
    <Fold name="own top" title={`Another top here${count}`} className={styles.fixing}>
      {isPart && (
        <Choice
          label="Over"
          value={reach}
          options={[
            ['run', `all of ${tops.map(({ mark }) => mark).join(', ')}`],
            ['chosen', 'what is chosen alone'],
          ]}
          onChoice={setReach}
        />
      )}
      <Choice
        label="Top of"
        value={common(meant, (one) => countertopOver(one, project)?.material ?? NO_BOARD)}
        options={isUsual ? boardOptions(project.materials) : optionalBoards(project.materials)}
        onChoice={(board) => put({ material: board === NO_BOARD ? undefined : (board as MaterialId) })}
        {...own('material')}
      />
      {isMade &&
        TOP_FIELDS.map(([name, label, limits]) => (
          <LengthField
            key={name}
            label={label}
            value={common(meant, (one) => countertopOver(one, project)?.[name] ?? null)}
            display={project.display}
            field={limits}
            onLength={(length) => put({ [name]: length })}
            {...own(name)}
          />
        ))}
    </Fold>
  )
}

/** The countertops that go over any of some cabinets, and all that these lie on. */
export function useTopsOver(project: Project, cabinets: readonly Cabinet[]) {
  const runs = useStore(({ before, derived }) => (before ?? derived).runs)
  const ids = cabinets.map(({ id }) => id)
  const tops = runs.filter(({ kind, cabinets: below }) => kind === 'countertop' && below.some((id) => ids.includes(id)))
  return { tops, under: tops.flatMap((top) => top.cabinets.flatMap((id) => project.cabinets[id] ?? [])) }
}
