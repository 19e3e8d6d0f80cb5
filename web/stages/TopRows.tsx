import {
  type BuildMethod,
  type Cabinet,
  countertopOver,
  eachTop,
  hasLid,
  isSeatHigh,
  isUnderTop,
  isWorktopHigh,
  methodOf,
  type OwnTop,
  type Project,
  standsFree,
  type TopHere,
} from '../../engine/index'
import { useStore } from '../store/store'
import { Choice } from '../ui/Choice'
import { LengthField } from '../ui/LengthField'
import { OwnTopRows, useTopsOver } from './OwnTopRows'
import styles from './Properties.module.css'
import { common } from './shaping'

interface TopRowsProps {
  readonly project: Project
  readonly cabinets: readonly Cabinet[]
}

/** What is chosen; undefined is as the others. */
interface Chosen {
  readonly hasSplash?: boolean | undefined
  readonly isOver?: boolean | undefined
  readonly own?: OwnTop
}

const SPLASHES = [
  ['usual', 'as the others'],
  ['yes', 'on it here'],
  ['no', 'none here'],
] as const

const OVERS = [
  ['usual', 'as its height says'],
  ['yes', 'goes over it'],
  ['no', 'none here'],
] as const

/** What is low enough to be sat on has a seat board where it is asked for. */
const SEATS = [OVERS[0], ['yes', 'a seat board over it'], OVERS[2]] as const

const REAR = { spoken: 'Past the back, the countertop', least: 0, most: 1000 } as const

/** How the countertop is over bases, where that is not as over all: whether it is, its splash, and what stands out behind an island. */
export function TopRows({ project, cabinets }: TopRowsProps) {
  const actions = useStore((state) => state.actions)
  if (cabinets.some((one) => !mayHaveTop(one, project))) return null
  const areSeats = cabinets.every(isSeatHigh)
  const areNone = cabinets.every((one) => countertopOver(one, project) === null)
  const put = (change: Chosen) => {
    const edits = cabinets.map(
      ({ id, top }) => ({ kind: 'setTop', ids: [id], top: cleared({ ...top, ...change }) }) as const,
    )
    actions.commit(edits.length === 1 ? edits[0]! : { kind: 'several', edits })
    return null
  }
  const areUnder = cabinets.every((one) => isUnderTop(one, project))
  // Where the project has no countertop, a seat board begins as a board of the fronts.
  const boardHere = ({ frontMaterial }: BuildMethod) => (areNone ? { own: { material: frontMaterial } } : {})
  const putOver = (isOver: boolean | undefined) =>
    put({ isOver, ...(isOver && boardHere(methodOf(cabinets[0]!, project))) })
  const areBoxes = cabinets.every(({ space }) => !space)
  return (
    <>
      {areBoxes && (areSeats || !areNone) && (
        <Choice
          label="Countertop"
          value={common(cabinets, ({ top }) => wayOf(top?.isOver))}
          options={areSeats ? SEATS : OVERS}
          onChoice={(way) => putOver(chosenBy(way))}
        />
      )}
      {areBoxes && !areNone && cabinets.every((one) => one.top?.isOver === undefined && !isWorktopHigh(one)) && (
        <p className={styles.note}>It is too low to work at, so the countertop leaves it out.</p>
      )}
      {areUnder && cabinets.some((one) => (countertopOver(one, project)?.splash ?? 0) > 0) && (
        <Choice
          label="Splash"
          value={common(cabinets, ({ top }) => wayOf(top?.hasSplash))}
          options={SPLASHES}
          onChoice={(way) => put({ hasSplash: chosenBy(way) })}
        />
      )}
      {areUnder && !areNone && cabinets.every((one) => isFree(one, project)) && (
        <RearField project={project} cabinets={cabinets} />
      )}
      {areUnder && <OwnTopRows project={project} cabinets={cabinets} />}
    </>
  )
}

/** How far the top stands out behind: as one board, over all that it lies on. */
function RearField({ project, cabinets }: TopRowsProps) {
  const actions = useStore((state) => state.actions)
  const { tops, under } = useTopsOver(project, cabinets)
  const rears = tops.map((top) => Math.max(0, ...top.cabinets.map((id) => project.cabinets[id]?.top?.rear ?? 0)))
  return (
    <LengthField
      label="Past the back"
      value={common(rears, (rear) => rear)}
      display={project.display}
      field={REAR}
      onLength={(rear) => {
        const free = under.filter((one) => isFree(one, project))
        actions.commit(eachTop(free, (top) => cleared({ ...top, rear })))
        return null
      }}
    />
  )
}

function isFree(cabinet: Cabinet, project: Project): boolean {
  return !cabinet.space && standsFree(methodOf(cabinet, project))
}

/** Bases but those with a lid, and spaces that say themselves that it goes on over them. */
function mayHaveTop(cabinet: Cabinet, project: Project): boolean {
  return cabinet.space ? isUnderTop(cabinet, project) : cabinet.kind === 'base' && !hasLid(cabinet, project)
}

type Way = 'usual' | 'yes' | 'no'

function wayOf(said: boolean | undefined): Way {
  if (said === undefined) return 'usual'
  return said ? 'yes' : 'no'
}

function chosenBy(way: Way): boolean | undefined {
  return way === 'usual' ? undefined : way === 'yes'
}

/** What is as usual is left out. */
function cleared({ rear = 0, hasSplash, isOver, ...others }: TopHere & Chosen): TopHere {
  return {
    ...others,
    ...(rear > 0 && { rear }),
    ...(hasSplash !== undefined && { hasSplash }),
    ...(isOver !== undefined && { isOver }),
  }
}
