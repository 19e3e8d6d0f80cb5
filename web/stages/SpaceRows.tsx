import { APPLIANCES, type ApplianceSpace, type Cabinet, type Edit, type Project, usualSpace } from '../../engine/index'
import { useStore } from '../store/store'
import { Choice } from '../ui/Choice'
import { LengthField } from '../ui/LengthField'
import styles from './Properties.module.css'
import { common } from './shaping'

interface SpaceRowsProps {
  readonly project: Project
  /** Spaces for appliances, all of them. */
  readonly cabinets: readonly Cabinet[]
}

const FIELDS = [
  ['width', '· Asks width', { spoken: 'The width that the appliance asks for', least: 100, most: 3000 }],
  ['height', '· Asks height', { spoken: 'The height that the appliance asks for', least: 100, most: 3000 }],
  ['depth', '· Asks depth', { spoken: 'The depth that the appliance asks for', least: 100, most: 1500 }],
] as const

const TOPS = [
  ['over', 'goes over it'],
  ['parted', 'stops at it'],
] as const

const KICKS = [
  ['before', 'goes on before it'],
  ['parted', 'stops at it'],
] as const

/** What stands in spaces for appliances, what it asks for, and whether countertop and kick go on. */
export function SpaceRows({ project, cabinets }: SpaceRowsProps) {
  const actions = useStore((state) => state.actions)
  const spaces = cabinets.flatMap(({ space }) => (space ? [space] : []))
  const commit = (edits: readonly Edit[]) => {
    actions.commit(edits.length === 1 ? edits[0]! : { kind: 'several', edits })
    return null
  }
  const put = (change: Partial<ApplianceSpace>) =>
    commit(cabinets.map(({ id, space }) => ({ kind: 'setSpace', ids: [id], space: { ...space!, ...change } })))
  const areLow = cabinets.every(({ kind }) => kind === 'base')
  return (
    <>
      <Choice
        label="Appliance"
        value={common(spaces, ({ of }) => of)}
        options={APPLIANCES}
        onChoice={(of) => commit(cabinets.flatMap((cabinet) => madeFor(of, cabinet, project)))}
      />
      {FIELDS.map(([field, label, limits]) => (
        <LengthField
          key={field}
          label={label}
          value={common(spaces, (space) => space[field])}
          display={project.display}
          field={limits}
          onLength={(length) => put({ [field]: length })}
        />
      ))}
      <p className={styles.note}>As its maker asks for, with the room for air. What the space is more stays as play.</p>
      {areLow && (
        <Choice
          label="Countertop"
          value={common(spaces, ({ isTopOver }) => (isTopOver ? 'over' : 'parted'))}
          options={TOPS}
          onChoice={(way) => put({ isTopOver: way === 'over' })}
        />
      )}
      <Choice
        label="Kick board"
        value={common(spaces, ({ isKickBefore }) => (isKickBefore ? 'before' : 'parted'))}
        options={KICKS}
        onChoice={(way) => put({ isKickBefore: way === 'before' })}
      />
    </>
  )
}

/** Another appliance begins with its usual sizes and ways, in the place there is; it is as high as it must be for its top. */
function madeFor(of: ApplianceSpace['of'], { id, kind, height }: Cabinet, project: Project): Edit[] {
  const usual = usualSpace(project, of, kind)
  const setSpace = { kind: 'setSpace', ids: [id], space: usual.space } as const
  if (kind === 'tall' || usual.height === height) return [setSpace]
  return [setSpace, { kind: 'shapeCabinets', shapes: [{ id, height: usual.height }] }]
}
