import type { Countertop, MaterialId, Project } from '../../engine/index'
import { useStore } from '../store/store'
import { Choice } from '../ui/Choice'
import { LengthField } from '../ui/LengthField'
import { NO_BOARD, optionalBoards } from './boardOptions'
import styles from './Panels.module.css'
import { TrimRows } from './TrimRows'

/** What a countertop begins with. Common practice, no source. */
const USUAL = { overhang: 20, ends: 15, splash: 0, banding: 0 } as const

const OVERHANG = { spoken: 'The overhang', least: 0, most: 300 } as const
const SPLASH = { spoken: 'The splash', least: 0, most: 1000 } as const

const BAND = { spoken: 'The band', least: 0, most: 10 } as const

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
  const fields = [
    ['overhang', 'Past the fronts', OVERHANG],
    ['ends', 'Past free ends', OVERHANG],
    ['splash', 'Splash, or 0', SPLASH],
    ['banding', 'Edge band, or 0', BAND],
  ] as const
  return fields.map(([field, label, limits]) => (
    <LengthField
      key={field}
      label={label}
      value={countertop[field]}
      display={project.display}
      field={limits}
      onLength={(length) => {
        actions.commit({ kind: 'editBetween', change: { countertop: { ...countertop, [field]: length } } })
        return null
      }}
    />
  ))
}

function ofBoard(before: Countertop | null, board: string): Countertop | null {
  return board === NO_BOARD ? null : { ...(before ?? USUAL), material: board as MaterialId }
}
