import {
  bankOf,
  type Cabinet,
  childrenOf,
  type Edit,
  type Front,
  frontPlaces,
  type LengthDisplay,
  type Project,
  stepOf,
} from '../../engine/index'
import { useStore } from '../store/store'
import { Choice } from '../ui/Choice'
import { Fold } from '../ui/Fold'
import { LengthField } from '../ui/LengthField'
import { NumberField } from '../ui/NumberField'
import { isMeasured } from './FrontLeaf'
import { FrontTree } from './FrontTree'
import { frontEdits } from './frontEdit'
import {
  DRAWER_OVER,
  FEWEST_DRAWERS,
  FRONT_WORDS,
  type FrontName,
  frontName,
  frontOf,
  MOST_DRAWERS,
  overDoor,
} from './fronts'
import { InsideRows } from './InsideRows'
import styles from './Properties.module.css'
import { common } from './shaping'

interface FrontRowsProps {
  readonly cabinets: readonly Cabinet[]
  readonly display: LengthDisplay
}

const OTHER = ['other', 'divided otherwise'] as const

/** What closes the cabinets, and what is inside. */
export function FrontRows({ project, cabinets, display }: FrontRowsProps & { readonly project: Project }) {
  const actions = useStore((state) => state.actions)
  const name = common(cabinets, ({ front }) => frontName(front))
  function choose(next: FrontName) {
    actions.commit(frontEdits(cabinets, () => frontOf(next)))
  }
  return (
    <>
      <Choice
        label="Front"
        value={name}
        options={name === 'other' ? [...FRONT_WORDS, OTHER] : FRONT_WORDS}
        onChoice={choose}
      />
      {name === 'bank' && <Bank project={project} cabinets={cabinets} />}
      {name === 'bank' && <Step project={project} cabinets={cabinets} />}
      {(name === 'overDoor' || name === 'sink') && <OverDoor over={name} cabinets={cabinets} display={display} />}
      {cabinets.length === 1 && <Divided project={project} cabinet={cabinets[0]!} />}
      {cabinets.every(({ front }) => isClosed(front)) && <Grain cabinets={cabinets} />}
      <InsideRows project={project} cabinets={cabinets} />
    </>
  )
}

/** Row by row and column by column, folded away until it is wanted. */
function Divided({ project, cabinet }: { readonly project: Project; readonly cabinet: Cabinet }) {
  if (!['rows', 'columns', 'drawer'].includes(cabinet.front.kind) && !isMeasured(cabinet.front)) return null
  return (
    <Fold
      name="rows and columns"
      title={cabinet.front.kind === 'drawer' ? 'In the drawer' : 'Rows and columns'}
      className={styles.fixing}
    >
      <FrontTree project={project} cabinet={cabinet} />
    </Fold>
  )
}

const heightsOf = (project: Project, cabinet: Cabinet) =>
  frontPlaces(project, cabinet)
    .filter(({ path }) => path.length === 1)
    .map(({ rect }) => rect.height)

/** Equal banks of so many drawers, each so much taller than the one above it; null where one has no room for that. */
function banksOf(project: Project, cabinets: readonly Cabinet[], sized: (cabinet: Cabinet) => Front): Edit | null {
  const fronts = cabinets.map((cabinet) => ({ cabinet, front: sized(cabinet) }))
  const fits = fronts.every(({ cabinet, front }) => heightsOf(project, { ...cabinet, front }).every((one) => one > 0))
  if (!fits) return null
  const edits = fronts.map(({ cabinet: { id }, front }) => ({ kind: 'setFront', ids: [id], front }) as const)
  return edits.length === 1 ? edits[0]! : { kind: 'several', edits }
}

/** By how much each drawer of a bank is taller than the one above it: mixed where they do not grow evenly. */
function Step({ project, cabinets }: { readonly project: Project; readonly cabinets: readonly Cabinet[] }) {
  const actions = useStore((state) => state.actions)
  return (
    <LengthField
      label="· Each taller by"
      value={common(cabinets, (cabinet) => stepOf(heightsOf(project, cabinet)))}
      display={project.display}
      field="small"
      onLength={(step) => {
        const edit = banksOf(project, cabinets, ({ front }) => bankOf(childrenOf(front).length, step))
        if (!edit) return 'The step is too large: the topmost drawer would have no height.'
        actions.commit(edit)
        return null
      }}
    />
  )
}

function isClosed({ kind }: Front): boolean {
  return kind !== 'open' && kind !== 'appliance'
}

function hasSeveralFronts(front: Front): boolean {
  const mayBePair = front.kind === 'door' && front.orPair === true
  return mayBePair || front.kind === 'pair' || front.kind === 'rows' || front.kind === 'columns'
}

/** Whether the figure of the wood goes on from one front to the next. */
function Grain({ cabinets }: { readonly cabinets: readonly Cabinet[] }) {
  const actions = useStore((state) => state.actions)
  const way = common(cabinets, ({ isGrainRunning, isGrainAcross }) =>
    isGrainAcross ? 'across' : isGrainRunning ? 'running' : 'none',
  )
  const mayRun = way === 'running' || cabinets.every(({ front }) => hasSeveralFronts(front))
  return (
    <>
      <Choice
        label="Grain"
        value={way}
        options={[
          ['none', 'each front by itself'],
          ...(mayRun ? [['running', 'runs on from front to front'] as const] : []),
          ['across', 'runs on to the cabinets beside it'],
        ]}
        onChoice={(choice) => actions.commit({ kind: 'letGrainRun', ids: cabinets.map(({ id }) => id), way: choice })}
      />
      {way === 'across' && (
        <p className={styles.note}>
          Fronts of one height are cut side by side from one sheet, as far as it reaches, where cabinets touch that are
          all set so.
        </p>
      )}
    </>
  )
}

/** How many drawers: a step that they have is kept where there is room for it. */
function Bank({ project, cabinets }: { readonly project: Project; readonly cabinets: readonly Cabinet[] }) {
  const actions = useStore((state) => state.actions)
  return (
    <NumberField
      label="Drawers"
      value={common(cabinets, ({ front }) => childrenOf(front).length)}
      least={FEWEST_DRAWERS}
      most={MOST_DRAWERS}
      isWhole
      onNumber={(count) => {
        const stepped = (cabinet: Cabinet) => bankOf(count, stepOf(heightsOf(project, cabinet)) ?? 0)
        const equal = { kind: 'setFront', ids: cabinets.map(({ id }) => id), front: bankOf(count) } as const
        actions.commit(banksOf(project, cabinets, stepped) ?? equal)
      }}
    />
  )
}

/** How high the front over the doors is. */
function OverDoor({ over, cabinets, display }: FrontRowsProps & { readonly over: 'overDoor' | 'sink' }) {
  const kind = over === 'sink' ? 'falseFront' : 'drawer'
  const actions = useStore((state) => state.actions)
  const heightOf = ({ front }: Cabinet) => {
    const size = front.kind === 'rows' ? front.rows[0]?.size : null
    return size?.kind === 'fixed' ? size.height : DRAWER_OVER
  }
  return (
    <LengthField
      label={over === 'sink' ? 'False front' : 'Drawer front'}
      value={common(cabinets, heightOf)}
      display={display}
      field="height"
      onLength={(height) => {
        const edits = cabinets.flatMap(({ id, front }) =>
          front.kind === 'rows'
            ? [{ kind: 'setFront', ids: [id], front: overDoor(kind, height, front.rows[1]!.front) } as const]
            : [],
        )
        actions.commit({ kind: 'several', edits })
        return null
      }}
    />
  )
}
