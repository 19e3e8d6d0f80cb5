import { type Cabinet, type Mm, methodOf, type Project, standsFree, type TopHere } from '../../engine/index'
import { useStore } from '../store/store'
import { Choice } from '../ui/Choice'
import { LengthField } from '../ui/LengthField'
import { common } from './shaping'

interface TopRowsProps {
  readonly project: Project
  readonly cabinets: readonly Cabinet[]
}

/** What is chosen; undefined is as the others. */
interface Chosen {
  readonly rear?: Mm
  readonly hasSplash?: boolean | undefined
}

const SPLASHES = [
  ['usual', 'as the others'],
  ['yes', 'on it here'],
  ['no', 'none here'],
] as const

const REAR = { spoken: 'Past the back, the countertop', least: 0, most: 1000 } as const

/** How the countertop is over bases, where that is not as over all: its splash, and what stands out behind an island. */
export function TopRows({ project, cabinets }: TopRowsProps) {
  const actions = useStore((state) => state.actions)
  const { countertop } = project.between
  if (countertop === null || cabinets.some(({ kind, space }) => kind !== 'base' || space?.isTopOver === false))
    return null
  const put = (change: Chosen) => {
    const edits = cabinets.map(
      ({ id, top }) => ({ kind: 'setTop', ids: [id], top: cleared({ ...top, ...change }) }) as const,
    )
    actions.commit(edits.length === 1 ? edits[0]! : { kind: 'several', edits })
    return null
  }
  const areFree = cabinets.every((cabinet) => !cabinet.space && standsFree(methodOf(cabinet, project)))
  return (
    <>
      {countertop.splash > 0 && (
        <Choice
          label="Splash"
          value={common(cabinets, ({ top }) => wayOf(top))}
          options={SPLASHES}
          onChoice={(way) => put({ hasSplash: way === 'usual' ? undefined : way === 'yes' })}
        />
      )}
      {areFree && (
        <LengthField
          label="Past the back"
          value={common(cabinets, ({ top }) => top?.rear ?? 0)}
          display={project.display}
          field={REAR}
          onLength={(rear) => put({ rear })}
        />
      )}
    </>
  )
}

function wayOf(top: TopHere | undefined): (typeof SPLASHES)[number][0] {
  if (top?.hasSplash === undefined) return 'usual'
  return top.hasSplash ? 'yes' : 'no'
}

/** What is as usual is left out. */
function cleared({ rear = 0, hasSplash }: Chosen): TopHere {
  return { ...(rear > 0 && { rear }), ...(hasSplash !== undefined && { hasSplash }) }
}
