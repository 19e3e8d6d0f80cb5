import { Fragment } from 'react'
import type { MaterialId, Project, Trim, TrimKind } from '../../engine/index'
import { useStore } from '../store/store'
import { Choice } from '../ui/Choice'
import { LengthField } from '../ui/LengthField'
import { NO_BOARD, optionalBoards } from './boardOptions'

/** What each begins with. Common practice, no source. */
const TRIMS = [
  { kind: 'lightRail', label: 'Light rail', usual: { height: 40, forward: 0 } },
  { kind: 'crown', label: 'Crown', usual: { height: 80, forward: 20 } },
  { kind: 'valance', label: 'Valance over windows', usual: { height: 100, forward: 0 } },
] as const

const FIELDS = [
  ['height', '· Height', { spoken: 'The trim', least: 10, most: 600 }],
  ['forward', '· Before carcass', { spoken: 'The face', least: -300, most: 300 }],
] as const

/** The boards along the lower and upper edges of what hangs, each of a board of its own. */
export function TrimRows({ project }: { readonly project: Project }) {
  const actions = useStore((state) => state.actions)
  const put = (kind: TrimKind, trim: Trim | null) => {
    actions.commit({ kind: 'editBetween', change: { [kind]: trim } })
    return null
  }
  return TRIMS.map(({ kind, label, usual }) => {
    const trim = project.between[kind]
    return (
      <Fragment key={kind}>
        <Choice
          label={label}
          value={trim?.material ?? NO_BOARD}
          options={optionalBoards(project.materials)}
          onChoice={(board) =>
            put(kind, board === NO_BOARD ? null : { ...(trim ?? usual), material: board as MaterialId })
          }
        />
        {trim &&
          FIELDS.map(([field, words, limits]) => (
            <LengthField
              key={field}
              label={words}
              value={trim[field]}
              display={project.display}
              field={limits}
              onLength={(length) => put(kind, { ...trim, [field]: length })}
            />
          ))}
      </Fragment>
    )
  })
}
