import {
  type Cabinet,
  canClose,
  type Edit,
  formatLength,
  formatWithUnit,
  freeId,
  freshWall,
  inch,
  type LengthDisplay,
  type Mm,
  type Opening,
  type OpeningId,
  type Project,
  rowsOfWalls,
  settle,
  valuesOf,
  type Wall,
  wallsOf,
} from '../../engine/index'
import { WallTabs } from '../elevation/WallTabs'
import { useStore } from '../store/store'
import { useWallInSight } from '../store/wall'
import { Button } from '../ui/Button'
import { Choice } from '../ui/Choice'
import fields from '../ui/Fields.module.css'
import { LengthField } from '../ui/LengthField'
import { TextField } from '../ui/TextField'
import { HouseFields } from './HouseFields'
import styles from './Stages.module.css'

/** The wall as it was measured, with its doors and windows. */
export function SiteStage() {
  const project = useStore((state) => state.shown)
  const wall = useWallInSight()
  return (
    <div className={styles.stage}>
      <div className={styles.column}>
        <Walls project={project} wall={wall} />
        {wall && <WallFields project={project} wall={wall} />}
        {wall && <Openings project={project} wall={wall} />}
        <HouseFields project={project} />
      </div>
    </div>
  )
}

/** Which wall is looked at, here and in the elevation; another one, or one less. */
function Walls({ project, wall }: { readonly project: Project; readonly wall: Wall | null }) {
  const actions = useStore((state) => state.actions)
  const add = () => {
    const fresh = freshWall(project)
    actions.commit({ kind: 'addWall', wall: fresh })
    actions.lookAt(fresh.id)
  }
  const standing = valuesOf<Cabinet>(project.cabinets).filter((one) => one.wall === wall?.id).length
  const all = standing === 1 ? ' and the cabinet on it' : standing > 1 ? ` and the ${standing} cabinets on it` : ''
  return (
    <div className={styles.walls}>
      <WallTabs />
      <Button onClick={add}>Add a wall</Button>
      {wall && Object.keys(project.walls).length > 1 && (
        <Button look="plain" onClick={() => actions.commit({ kind: 'removeWall', id: wall.id })}>
          {`Remove ${wall.name}${all}`}
        </Button>
      )}
    </div>
  )
}

interface WallProps {
  readonly project: Project
  readonly wall: Wall
}

function WallFields({ project, wall }: WallProps) {
  const actions = useStore((state) => state.actions)
  const walls = wallsOf(project)
  const before = walls[walls.indexOf(wall) - 1]
  const row = rowsOfWalls(project).find((one) => one.at(-1)?.id === wall.id)
  const first = row && canClose(row) ? row[0] : undefined
  const change = (what: Extract<Edit, { kind: 'editWall' }>['change']) => {
    actions.commit({ kind: 'editWall', id: wall.id, change: what })
    return null
  }
  return (
    <section aria-label="Wall">
      <h2>Wall</h2>
      <p>
        Measured from its left end and from the finished floor, seen from the room. An island gets a wall of its own, as
        long as the floor is free for it, that meets no other: island bases stand along it, and nothing is fixed to it.
      </p>
      <div className={styles.fields}>
        <TextField label="Name" value={wall.name} onText={(name) => change({ name })} />
        <LengthField
          label="Length"
          value={wall.length}
          display={project.display}
          field="wallLength"
          onLength={(length) => change({ length })}
        />
        <LengthField
          label="Height"
          value={wall.height}
          display={project.display}
          field="wallHeight"
          onLength={(height) => change({ height })}
        />
        {before && (
          <label className={fields.check}>
            <input
              type="checkbox"
              checked={wall.meets}
              onChange={(event) => change({ meets: event.currentTarget.checked })}
            />
            {`Its left end meets the right end of ${before.name} in a corner`}
          </label>
        )}
        {first && (
          <label className={fields.check}>
            <input
              type="checkbox"
              checked={wall.closes ?? false}
              onChange={(event) => change({ closes: event.currentTarget.checked })}
            />
            {`Its right end meets the left end of ${first.name}: the room is closed`}
          </label>
        )}
      </div>
      {first && wall.closes && <Squareness row={row!} display={project.display} />}
      {before && wall.meets && (
        <p>{`A square inside corner: what stands there at ${before.name} takes its room of this wall too, and the other way round.`}</p>
      )}
    </section>
  )
}

/** Walls that face each other and differ in length. A measured room is never quite square. */
function Squareness({ row, display }: { readonly row: readonly Wall[]; readonly display: LengthDisplay }) {
  const show = (length: Mm) => formatLength(length, display)
  const unequal = [0, 1].flatMap((at) => {
    const [one, other] = [row[at]!, row[at + 2]!]
    return one.length === other.length
      ? []
      : `${one.name} is ${show(one.length)} and ${other.name}, opposite, ${show(other.length)}`
  })
  if (unequal.length === 0) return null
  return <p>{`${unequal.join('; ')}: the room is not square, and 3D shows the difference at its last corner.`}</p>
}

const KINDS: readonly (readonly [Opening['kind'], string])[] = [
  ['window', 'window'],
  ['door', 'door'],
]
const FIELDS = [
  ['left', 'From left'],
  ['bottom', 'Above floor'],
  ['width', 'Width'],
  ['height', 'Height'],
] as const

function Openings({ project, wall }: WallProps) {
  const actions = useStore((state) => state.actions)
  const { unit } = project.display
  const openings = valuesOf<Opening>(wall.openings).sort((a, b) => a.left - b.left)
  const put = (opening: Opening) => actions.commit({ kind: 'putOpening', wall: wall.id, opening })
  return (
    <section aria-label="Openings">
      <h2>Doors and windows</h2>
      {openings.length === 0 && <p>None yet. Cabinets keep clear of every opening that is listed here.</p>}
      {openings.length > 0 && (
        <div className={styles.tableFrame}>
          <table className={styles.table} aria-label="Openings">
            <thead>
              <tr>
                <th scope="col">Kind</th>
                {FIELDS.map(([field, words]) => (
                  <th key={field} scope="col" className={styles.figure}>
                    {words}, {unit}
                  </th>
                ))}
                <th scope="col">
                  <span className="unseen">Delete</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {openings.map((opening, at) => (
                <OpeningRow
                  key={opening.id}
                  opening={opening}
                  name={`${opening.kind} ${at + 1}`}
                  project={project}
                  wall={wall}
                  onPut={put}
                  onDelete={() => actions.commit({ kind: 'removeOpening', wall: wall.id, id: opening.id })}
                />
              ))}
            </tbody>
          </table>
        </div>
      )}
      <p className={styles.actions}>
        {KINDS.map(([kind, words]) => (
          <Button key={kind} onClick={() => put(freshOpening(wall, kind, project.display))}>
            Add {words}
          </Button>
        ))}
      </p>
    </section>
  )
}

interface OpeningRowProps extends WallProps {
  readonly opening: Opening
  readonly name: string
  readonly onPut: (opening: Opening) => void
  readonly onDelete: () => void
}

function OpeningRow({ opening, name, project, wall, onPut, onDelete }: OpeningRowProps) {
  return (
    <tr data-row={opening.id}>
      <td>
        <Choice
          label={`Kind of ${name}`}
          value={opening.kind}
          options={KINDS}
          onChoice={(kind) => onPut({ ...opening, kind })}
          isBare
        />
      </td>
      {FIELDS.map(([field, words]) => (
        <td key={field} className={styles.figure}>
          <LengthField
            label={`${words} of ${name}`}
            value={opening[field]}
            display={project.display}
            field={field}
            isBare
            onLength={(length) => {
              const after = { ...opening, [field]: settle(length) }
              const why = outside(after, wall, project.display)
              if (!why) onPut(after)
              return why
            }}
          />
        </td>
      ))}
      <td className={styles.rowTools}>
        <Button look="plain" aria-label={`Delete ${name}`} onClick={onDelete}>
          Delete
        </Button>
      </td>
    </tr>
  )
}

/** Why an opening cannot be so on the wall, or nothing. */
function outside({ kind, left, bottom, width, height }: Opening, wall: Wall, display: LengthDisplay): string | null {
  const show = (length: Mm) => formatWithUnit(length, display)
  const past = settle(left + width - wall.length)
  const above = settle(bottom + height - wall.height)
  if (past > 0) return `The ${kind} would reach ${show(past)} past the right end of the wall (${show(wall.length)}).`
  return above > 0 ? `The ${kind} would reach ${show(above)} above the ceiling (${show(wall.height)}).` : null
}

interface OpeningSize {
  readonly bottom: Mm
  readonly width: Mm
  readonly height: Mm
}

/** A window over a counter, or a door, in round figures of the unit (common practice, no source). */
const USUAL: Readonly<Record<LengthDisplay['unit'], Readonly<Record<Opening['kind'], OpeningSize>>>> = {
  mm: {
    window: { bottom: 1100, width: 900, height: 950 },
    door: { bottom: 0, width: 900, height: 2040 },
  },
  in: {
    window: { bottom: inch(42), width: inch(36), height: inch(36) },
    door: { bottom: 0, width: inch(36), height: inch(80) },
  },
}

/** An opening in the middle of the wall; of a low or short wall it is as large as the wall lets it be. */
function freshOpening(wall: Wall, kind: Opening['kind'], { unit }: LengthDisplay): Opening {
  const usual = USUAL[unit][kind]
  const width = Math.min(usual.width, wall.length)
  const height = Math.min(usual.height, wall.height)
  const left = settle((wall.length - width) / 2)
  const bottom = Math.min(usual.bottom, settle(wall.height - height))
  return { id: freeId<OpeningId>('o', wall.openings), kind, left, bottom, width, height }
}
