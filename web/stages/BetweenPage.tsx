import {
  type Countertop,
  type LengthDisplay,
  type MaterialId,
  type Project,
  USUAL_SEAM_BOLTS,
  USUAL_TOP,
} from '../../engine/index'
import { useStore } from '../store/store'
import { Choice } from '../ui/Choice'
import { LengthField } from '../ui/LengthField'
import { NO_BOARD, optionalBoards } from './boardOptions'
import styles from './Panels.module.css'
import { TrimRows } from './TrimRows'
import { TOP_FIELDS } from './topFields'

const KICKS = [
  ['perCabinet', 'one in each cabinet'],
  ['inLengths', 'in lengths, before each run'],
] as const

/** What goes over several cabinets at once. */
export function BetweenPage() {
  const project = useStore((state) => state.shown)
  const actions = useStore((state) => state.actions)
  const { kick, countertop } = project.between
  return (
    <>
      <fieldset className={styles.set}>
        <legend>Kick boards</legend>
        <Choice
          label="Made"
          value={kick}
          options={KICKS}
          onChoice={(way) => actions.commit({ kind: 'editBetween', change: { kick: way } })}
        />
      </fieldset>
      <fieldset className={styles.set}>
        <legend>Countertop</legend>
        <Choice
          label="Board"
          value={countertop?.material ?? NO_BOARD}
          options={optionalBoards(project.materials)}
          onChoice={(board) =>
            actions.commit({ kind: 'editBetween', change: { countertop: ofBoard(countertop, board) } })
          }
        />
        {countertop && <TopFields project={project} countertop={countertop} />}
      </fieldset>
      <fieldset className={styles.set}>
        <legend>Along the uppers</legend>
        <TrimRows project={project} />
      </fieldset>
    </>
  )
}

function TopFields({ project, countertop }: { readonly project: Project; readonly countertop: Countertop }) {
  const actions = useStore((state) => state.actions)
  const put = (change: Countertop) => actions.commit({ kind: 'editBetween', change: { countertop: change } })
  return (
    <>
      {TOP_FIELDS.map(([field, label, limits]) => (
        <LengthField
          key={field}
          label={label}
          value={countertop[field]}
          display={project.display}
          field={limits}
          onLength={(length) => {
            put({ ...countertop, [field]: length })
            return null
          }}
        />
      ))}
      <SeamRows countertop={countertop} display={project.display} onTop={put} />
    </>
  )
}

const SEAMS = [
  ['none', 'nothing let in'],
  ['bolts', 'bolts from below'],
] as const

const BOLT_FIELDS = [
  ['bore', 'Bore for a nut'],
  ['slot', 'Slot'],
  ['depth', 'Deep'],
  ['fromSeam', 'Bore from the seam'],
  ['length', 'Bolt length'],
  ['fromEdge', 'First from the edges'],
  ['spacing', 'Apart at most'],
] as const

interface SeamRowsProps {
  readonly countertop: Countertop
  readonly display: LengthDisplay
  readonly onTop: (change: Countertop) => void
}

/** What draws the boards of a top together where they meet. */
function SeamRows({ countertop, display, onTop }: SeamRowsProps) {
  const { seamBolts, ...plain } = countertop
  return (
    <>
      <Choice
        label="At seams"
        value={seamBolts ? 'bolts' : 'none'}
        options={SEAMS}
        onChoice={(way) => onTop(way === 'bolts' ? { ...countertop, seamBolts: USUAL_SEAM_BOLTS } : plain)}
      />
      {seamBolts &&
        BOLT_FIELDS.map(([field, label]) => (
          <LengthField
            key={field}
            label={`· ${label}`}
            value={seamBolts[field]}
            display={display}
            isMeasure
            field="small"
            onLength={(length) => {
              onTop({ ...countertop, seamBolts: { ...seamBolts, [field]: length } })
              return null
            }}
          />
        ))}
    </>
  )
}

function ofBoard(before: Countertop | null, board: string): Countertop | null {
  return board === NO_BOARD ? null : { ...(before ?? USUAL_TOP), material: board as MaterialId }
}
