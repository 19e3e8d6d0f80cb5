import type { Cabinet, Corner, Project } from '../../engine/index'
import { useStore } from '../store/store'
import { Choice } from '../ui/Choice'
import { LengthField } from '../ui/LengthField'
import { common } from './shaping'

interface CornerRowsProps {
  readonly project: Project
  readonly cabinets: readonly Cabinet[]
}

const KINDS = [
  ['L', 'L, folding door'],
  ['diagonal', 'diagonal door'],
] as const

const HANDS = [
  ['left', 'left end of wall'],
  ['right', 'right end of wall'],
] as const

const FIELDS = [
  ['other', '· Other leg', { spoken: 'The other leg', least: 200, most: 3000 }],
  ['otherDepth', '· Its depth', { spoken: 'The depth of the other leg', least: 100, most: 1200 }],
] as const

/** How a corner cabinet goes on along the other wall. */
export function CornerRows({ project, cabinets }: CornerRowsProps) {
  const actions = useStore((state) => state.actions)
  const corners = cabinets.map(({ corner }) => corner).filter((corner) => corner !== null)
  if (corners.length < cabinets.length) return null
  const put = (change: Partial<Corner>) => {
    const edits = cabinets.map(({ id, corner }) => {
      return { kind: 'setCorner', ids: [id], corner: { ...corner!, ...change } } as const
    })
    actions.commit(edits.length === 1 ? edits[0]! : { kind: 'several', edits })
    return null
  }
  return (
    <>
      <Choice
        label="Corner"
        value={common(corners, ({ kind }) => kind)}
        options={KINDS}
        onChoice={(kind) => put({ kind })}
      />
      <Choice
        label="Corner at"
        value={common(corners, ({ hand }) => hand)}
        options={HANDS}
        onChoice={(hand) => put({ hand })}
      />
      {FIELDS.map(([field, label, limits]) => (
        <LengthField
          key={field}
          label={label}
          value={common(corners, (corner) => corner[field])}
          display={project.display}
          field={limits}
          onLength={(length) => put({ [field]: length })}
        />
      ))}
    </>
  )
}
