import {
  areTopsMade,
  type Cabinet,
  type Cutout,
  fromLeftOf,
  hasTopOver,
  isSeatHigh,
  LEAST_CUTOUT,
  movedFromLeft,
  type Project,
  usualCutout,
  withAside,
} from '../../engine/index'
import { useStore } from '../store/store'
import { Choice } from '../ui/Choice'
import { LengthField } from '../ui/LengthField'
import { common } from './shaping'

interface CutoutRowsProps {
  readonly project: Project
  readonly cabinets: readonly Cabinet[]
}

const WAYS = [
  ['none', 'nothing'],
  ['sink', 'sink'],
  ['hob', 'hob'],
] as const

const SIZE = { spoken: 'The cut-out', least: LEAST_CUTOUT, most: 3000 } as const

/** From the left side of its cabinet; and from the middle, to the right or, below 0, to the left. */
const FROM_LEFT = { spoken: 'From the left, the cut-out', least: -3000, most: 3000 } as const
const ASIDE = { spoken: 'Off the middle, the cut-out', least: -3000, most: 3000 } as const

const FIELDS = [
  ['width', '· Cut width'],
  ['depth', '· Cut depth'],
  ['fromFront', '· From front'],
] as const

/** What is under a countertop takes one, a seat none; one that lost its countertop shows it, to be taken out. */
function takesCutout(cabinet: Cabinet, project: Project): boolean {
  const isUnder = hasTopOver(cabinet, project) && !isSeatHigh(cabinet)
  return !cabinet.space && (isUnder || cabinet.cutout !== null)
}

/** The cut-out in the countertop over bases; only where a countertop is made. */
export function CutoutRows({ project, cabinets }: CutoutRowsProps) {
  const actions = useStore((state) => state.actions)
  if (!areTopsMade(project) || cabinets.some((one) => !takesCutout(one, project))) return null
  const ids = cabinets.map(({ id }) => id)
  const put = (cutout: Cutout | null) => {
    actions.commit({ kind: 'setCutout', ids, cutout })
    return null
  }
  const [first] = cabinets
  const single = cabinets.length === 1 ? first! : null
  const all = cabinets.map(({ cutout }) => cutout)
  const one = all.every((cutout) => JSON.stringify(cutout) === JSON.stringify(all[0])) ? all[0] : null
  return (
    <>
      <Choice
        label="Let into top"
        value={common(all, (cutout) => cutout?.of ?? 'none')}
        options={WAYS}
        onChoice={(way) => put(way === 'none' ? null : usualCutout(way, first!))}
      />
      {one &&
        FIELDS.map(([field, label]) => (
          <LengthField
            key={field}
            label={label}
            value={one[field]}
            display={project.display}
            field={SIZE}
            onLength={(length) => put({ ...one, [field]: length })}
          />
        ))}
      {one && single && (
        <LengthField
          label="· From left"
          value={fromLeftOf(single, one)}
          display={project.display}
          field={FROM_LEFT}
          onLength={(length) => put(movedFromLeft(single, one, length))}
        />
      )}
      {one && (
        <LengthField
          label="· Off middle"
          value={one.aside ?? 0}
          display={project.display}
          field={ASIDE}
          onLength={(length) => put(withAside(one, length))}
        />
      )}
    </>
  )
}
