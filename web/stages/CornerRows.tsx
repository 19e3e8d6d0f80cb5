import { type Cabinet, type Corner, cornerShelfPlaces, type Front, type Project } from '../../engine/index'
import { useStore } from '../store/store'
import { Choice } from '../ui/Choice'
import { LengthField } from '../ui/LengthField'
import { ShelfRows } from './ShelfRows'
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

/** How corner cabinets go on along the other wall, and the little that is before and in them. */
export function CornerRows({ project, cabinets }: CornerRowsProps) {
  const actions = useStore((state) => state.actions)
  const corners = cabinets.map(({ corner }) => corner).filter((corner) => corner !== null)
  const kind = common(corners, (corner) => corner.kind)
  const single = cabinets.length === 1 ? cabinets[0]! : null
  const places = single?.corner ? cornerShelfPlaces(project, single, single.corner) : []
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
      <Choice
        label="Front"
        value={common(cabinets, ({ front }) => frontWay(front, kind))}
        options={kind === 'diagonal' ? SLANT_FRONTS : LEAF_FRONTS}
        onChoice={(way) => actions.commit({ kind: 'setFront', ids: cabinets.map(({ id }) => id), front: FRONTS[way] })}
      />
      <ShelfRows cabinets={cabinets} places={places} display={project.display} />
    </>
  )
}

const LEAF_FRONTS = [
  ['left', 'folding door'],
  ['open', 'open'],
] as const

const SLANT_FRONTS = [
  ['left', 'door, hinged left'],
  ['right', 'door, hinged right'],
  ['open', 'open'],
] as const

type Way = 'left' | 'right' | 'open'

const FRONTS: Readonly<Record<Way, Front>> = {
  left: { kind: 'door', hinge: 'left' },
  right: { kind: 'door', hinge: 'right' },
  open: { kind: 'open' },
}

/** Two leaves hang on the free end, whichever way a single door would. */
function frontWay(front: Front, kind: Corner['kind'] | null): Way {
  if (front.kind === 'open') return 'open'
  return kind !== 'L' && front.kind === 'door' && front.hinge === 'right' ? 'right' : 'left'
}
