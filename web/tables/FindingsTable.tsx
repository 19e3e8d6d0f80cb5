import { useDeferredValue } from 'react'
import type { About, Called, Derived, Finding, Remedy } from '../../engine/index'
import type { Actions } from '../store/state'
import { useStore } from '../store/store'
import { useFollowing } from '../store/turns'
import { unbroken } from '../ui/unbroken'
import { findingLines } from './findingLines'
import styles from './Tables.module.css'

const WEIGHTS = {
  stop: { word: 'Stop', mark: '■' },
  mind: { word: 'Mind this', mark: '▲' },
  know: { word: 'Good to know', mark: '●' },
} as const satisfies Record<Finding['weight'], object>

/** What the maker should know about the design, the gravest first. */
export function FindingsTable() {
  const derived = useDeferredValue(useFollowing('findings', (state) => state.derived))
  const lines = findingLines(derived)
  if (lines.length === 0) {
    return (
      <div className={styles.empty}>
        <strong>Nothing to mind.</strong>
        <p>
          Boxes that overlap, boards too small to cut, shelves that sag, doors that meet a wall and what else does not
          hold are listed here as you draw.
        </p>
      </div>
    )
  }
  return (
    <div className={styles.table}>
      <table className={styles.findings} aria-label="Findings">
        <thead>
          <tr>
            <th scope="col">Weight</th>
            <th scope="col">About</th>
            <th scope="col">Finding</th>
            <th scope="col" className={styles.figure}>
              Is
            </th>
            <th scope="col" className={styles.figure}>
              Limit
            </th>
            <th scope="col">
              <span className={styles.unseen}>What to do</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {lines.map(({ finding, cabinets }, at) => (
            <FindingRow
              key={`${at} ${finding.message}`}
              finding={finding}
              cabinets={cabinets}
              name={nameOf(finding.about, derived)}
            />
          ))}
        </tbody>
      </table>
      <p className={styles.footnote}>
        None of this replaces local codes, the instructions of the makers or a licensed trade.
      </p>
    </div>
  )
}

interface FindingRowProps {
  readonly finding: Finding
  /** Those that it is told of together. */
  readonly cabinets: readonly Called[]
  readonly name: string
}

function FindingRow({ finding, cabinets, name }: FindingRowProps) {
  const actions = useStore((state) => state.actions)
  const isLive = useFollowing('findings', (state) => state.preview !== null)
  const { weight, about, message, measure, limit, source } = finding
  const areSeveral = cabinets.length > 0
  return (
    <tr data-weight={weight}>
      <td className={styles[weight]}>
        <span aria-hidden="true">{WEIGHTS[weight].mark}</span> {WEIGHTS[weight].word}
      </td>
      <td>{areSeveral ? <Marks cabinets={cabinets} /> : name}</td>
      <td className={styles.wide}>
        {unbroken(message)}
        {source && <span className={styles.source}>Source: {source}.</span>}
        <WayOutWords finding={finding} isLive={isLive} />
      </td>
      <td className={styles.figure} data-head="Is">
        {measure && unbroken(measure)}
      </td>
      <td className={styles.figure} data-head="Limit">
        {limit && unbroken(limit)}
      </td>
      <td className={styles.ways}>
        <button
          type="button"
          className={styles.tool}
          aria-label={areSeveral ? `Show all ${cabinets.length}` : `Show ${name}`}
          onClick={() =>
            areSeveral ? actions.select({ kind: 'cabinets', ids: cabinets.map(({ id }) => id) }) : show(about, actions)
          }
        >
          {areSeveral ? 'Show all' : 'Show'}
        </button>{' '}
        <WayOut finding={finding} isLive={isLive} onTake={({ edit, label }) => actions.commit(edit, label)} />
      </td>
    </tr>
  )
}

/** Each of the cabinets that a line is about, to jump to. */
function Marks({ cabinets }: Pick<FindingRowProps, 'cabinets'>) {
  const actions = useStore((state) => state.actions)
  return (
    <span className={styles.jumps}>
      {cabinets.map(({ id, mark }) => (
        <button
          key={id}
          type="button"
          className={styles.jump}
          aria-label={`Show ${mark}`}
          onClick={() => actions.select({ kind: 'cabinets', ids: [id] })}
        >
          {mark}
        </button>
      ))}
    </span>
  )
}

interface WayOutWordsProps {
  readonly finding: Finding
  /** While something is under the hand no way out is tried, which takes longer than all else: its place is kept. */
  readonly isLive: boolean
}

/** What the button beside it would do. */
export function WayOutWords({ finding, isLive }: WayOutWordsProps) {
  if (isLive) return 'remedy' in finding ? <span className={styles.way}>{'\u00a0'}</span> : null
  return finding.remedy ? <span className={styles.way}>▸ {unbroken(finding.remedy.label)}</span> : null
}

interface WayOutProps extends WayOutWordsProps {
  readonly onTake: (remedy: Remedy) => void
}

export function WayOut({ finding, isLive, onTake }: WayOutProps) {
  if (isLive) {
    return 'remedy' in finding ? (
      <span className={`${styles.tool} ${styles.kept}`} aria-hidden="true">
        Do it
      </span>
    ) : null
  }
  const { remedy } = finding
  if (!remedy) return null
  return (
    <button type="button" className={styles.tool} aria-label={`Do it: ${remedy.label}`} onClick={() => onTake(remedy)}>
      Do it
    </button>
  )
}

function nameOf(about: About, { cabinetOf, partOf, project }: Derived): string {
  switch (about.kind) {
    case 'cabinet':
      return cabinetOf[about.cabinet]?.mark ?? about.cabinet
    case 'part':
      return partOf.get(about.part)?.mark ?? about.part
    case 'wall':
      return project.walls[about.wall]?.name ?? about.wall
    case 'opening':
      return project.walls[about.wall]?.openings[about.opening]?.kind ?? 'opening'
    case 'material':
      return project.materials[about.material]?.name ?? about.material
    case 'kept':
      return 'a kept sheet'
    case 'shop':
      return 'the shop'
  }
}

/** Selects what can be selected, and goes where the rest is set. */
function show(about: About, actions: Actions): void {
  switch (about.kind) {
    case 'cabinet':
      actions.select({ kind: 'cabinets', ids: [about.cabinet] })
      break
    case 'part':
      actions.select({ kind: 'part', owner: about.cabinet, part: about.part })
      break
    case 'wall':
    case 'opening':
      actions.setStage('site')
      break
    case 'material':
    case 'kept':
      actions.setTable('sheets')
      break
    case 'shop':
      actions.setStage('cut')
      break
  }
}
