import {
  bankAt,
  type Cabinet,
  type Front,
  frontGap,
  frontPlaces,
  graduatedHeights,
  type Interior,
  type LengthDisplay,
  type PipeWindow,
  type Project,
} from '../../engine/index'
import { useStore } from '../store/store'
import { Choice } from '../ui/Choice'
import { Fold } from '../ui/Fold'
import { LengthField } from '../ui/LengthField'
import { NumberField } from '../ui/NumberField'
import { BayRows, PipeRows } from './BayRows'
import { isMeasured } from './FrontLeaf'
import { FrontTree } from './FrontTree'
import { frontEdits } from './frontEdit'
import {
  bankOf,
  DRAWER_OVER,
  FEWEST_DRAWERS,
  FRONT_WORDS,
  type FrontName,
  frontName,
  frontOf,
  MOST_DRAWERS,
  overDoor,
} from './fronts'
import styles from './Properties.module.css'
import { ShelfRows } from './ShelfRows'
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
    actions.commit(frontEdits(cabinets, ({ width }) => frontOf(next, width)))
  }
  return (
    <>
      <Choice
        label="Front"
        value={name}
        options={name === 'other' ? [...FRONT_WORDS, OTHER] : FRONT_WORDS}
        onChoice={choose}
      />
      {name === 'bank' && <Bank cabinets={cabinets} />}
      {name === 'bank' && <Step project={project} cabinets={cabinets} />}
      {(name === 'overDoor' || name === 'sink') && <OverDoor over={name} cabinets={cabinets} display={display} />}
      {cabinets.length === 1 && <Divided project={project} cabinet={cabinets[0]!} />}
      {cabinets.every(({ front }) => hasSeveralFronts(front)) && <Grain cabinets={cabinets} />}
      <Inside cabinets={cabinets} display={display} />
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

/** By how much each drawer of a bank is taller than the one above it. */
function Step({ project, cabinets }: { readonly project: Project; readonly cabinets: readonly Cabinet[] }) {
  const actions = useStore((state) => state.actions)
  const heightsOf = (cabinet: Cabinet) => frontPlaces(project, cabinet).map(({ rect }) => rect.height)
  const stepOf = (cabinet: Cabinet) => {
    const [, first, second] = heightsOf(cabinet)
    return Math.round(((second ?? 0) - (first ?? 0)) * 100) / 100
  }
  return (
    <LengthField
      label="· Each taller by"
      value={common(cabinets, stepOf)}
      display={project.display}
      field="small"
      onLength={(step) => {
        const edits = cabinets.map((cabinet) => {
          const [height, ...rows] = heightsOf(cabinet)
          const heights = graduatedHeights(rows.length, height ?? 0, frontGap(project, cabinet), step)
          const front = step === 0 ? bankOf(rows.length) : bankAt(heights)
          return {
            fits: heights.every((one) => one > 0),
            edit: { kind: 'setFront', ids: [cabinet.id], front } as const,
          }
        })
        if (edits.some(({ fits }) => !fits)) return 'The step is too large: the topmost drawer would have no height.'
        actions.commit({ kind: 'several', edits: edits.map(({ edit }) => edit) })
        return null
      }}
    />
  )
}

function hasSeveralFronts({ kind }: Front): boolean {
  return kind === 'pair' || kind === 'rows' || kind === 'columns'
}

/** Whether the figure of the wood goes on from one front to the next. */
function Grain({ cabinets }: { readonly cabinets: readonly Cabinet[] }) {
  const actions = useStore((state) => state.actions)
  const isRunning = common(cabinets, ({ isGrainRunning }) => isGrainRunning)
  return (
    <Choice
      label="Grain"
      value={isRunning === null ? null : isRunning ? 'running' : 'single'}
      options={[
        ['single', 'each front by itself'],
        ['running', 'runs on from front to front'],
      ]}
      onChoice={(choice) =>
        actions.commit({ kind: 'letGrainRun', ids: cabinets.map(({ id }) => id), isRunning: choice === 'running' })
      }
    />
  )
}

function Bank({ cabinets }: { readonly cabinets: readonly Cabinet[] }) {
  const actions = useStore((state) => state.actions)
  return (
    <NumberField
      label="Drawers"
      value={common(cabinets, ({ front }) => (front.kind === 'rows' ? front.rows.length : 0))}
      least={FEWEST_DRAWERS}
      most={MOST_DRAWERS}
      isWhole
      onNumber={(count) =>
        actions.commit({ kind: 'setFront', ids: cabinets.map(({ id }) => id), front: bankOf(count) })
      }
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

function Inside({ cabinets, display }: FrontRowsProps) {
  const actions = useStore((state) => state.actions)
  function change(part: Partial<Interior>) {
    const edits = cabinets.map(
      ({ id, interior }) => ({ kind: 'setInterior', ids: [id], interior: { ...interior, ...part } }) as const,
    )
    actions.commit(edits.length === 1 ? edits[0]! : { kind: 'several', edits })
  }
  function setPipes(pipes: PipeWindow | null) {
    const edits = cabinets.map(({ id, interior: { pipes: _, ...rest } }) => {
      return { kind: 'setInterior', ids: [id], interior: pipes ? { ...rest, pipes } : rest } as const
    })
    actions.commit(edits.length === 1 ? edits[0]! : { kind: 'several', edits })
  }
  const single = cabinets.length === 1 ? cabinets[0]!.interior : null
  // Their boards part them already.
  const areColumns = cabinets.every(({ front }) => front.kind === 'columns')
  const partition = common(cabinets, ({ interior }) => interior.partition?.at ?? 0)
  return (
    <>
      <ShelfRows cabinets={cabinets} />
      {!areColumns && (
        <Choice
          label="Partition"
          value={partition === null ? null : partition === 0 ? 'none' : 'one'}
          options={[
            ['none', 'none'],
            ['one', 'one upright'],
          ]}
          onChoice={(choice) => change({ partition: choice === 'none' ? null : { at: 0.5 } })}
        />
      )}
      {!areColumns && partition !== null && partition > 0 && (
        <NumberField
          label="· At % of width"
          value={Math.round(partition * 1000) / 10}
          least={5}
          most={95}
          onNumber={(percent) => change({ partition: { at: percent / 100 } })}
        />
      )}
      {single && (
        <Fold name="roll-outs" title="Roll-outs, trays, pipes" className={styles.fixing}>
          <BayRows name="" bay={single} display={display} onBay={change} />
          <PipeRows pipes={single.pipes} display={display} onPipes={setPipes} />
        </Fold>
      )}
    </>
  )
}
