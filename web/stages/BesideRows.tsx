import { useState } from 'react'
import {
  type Beside,
  type Cabinet,
  formatWithUnit,
  gapFilled,
  gapsBeside,
  type Project,
  type Side,
} from '../../engine/index'
import { besideOutcome, FILLER_WIDTH, SCRIBE } from '../input/beside'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import { Choice } from '../ui/Choice'
import { LengthField } from '../ui/LengthField'
import { type BesideWay, changedBeside, wayBeside, waysBeside } from './besideWays'
import { boardOptions } from './boardOptions'
import styles from './Properties.module.css'
import { common } from './shaping'

interface BesideRowsProps {
  readonly project: Project
  readonly cabinets: readonly Cabinet[]
}

/** What stands beside the selected cabinets: fillers and finished ends, left and right. */
export function BesideRows(props: BesideRowsProps) {
  return (
    <>
      <SideRows side="left" {...props} />
      <SideRows side="right" {...props} />
    </>
  )
}

/** What was told of a cabinet that made room: no more once it stands elsewhere, or another is chosen. */
interface Moved {
  readonly text: string
  readonly id: Cabinet['id']
  readonly left: Cabinet['left']
}

function SideRows({ project, cabinets, side }: BesideRowsProps & { readonly side: Side }) {
  const [why, setWhy] = useState<string | null>(null)
  const [moved, setMoved] = useState<Moved | null>(null)
  const all = cabinets.map(({ beside }) => beside[side])
  const single = cabinets.length === 1 ? cabinets[0]! : null
  const one = all.every((beside) => JSON.stringify(beside) === JSON.stringify(all[0])) ? all[0]! : null
  const label = side === 'left' ? 'Left' : 'Right'

  function put(beside: Beside): string | null {
    const { edit, words, label: step } = besideOutcome(project, cabinets, side, beside)
    setWhy(null)
    setMoved(null)
    if (!edit || !words?.fits) return `${words?.text}.`
    useStore.getState().actions.commit(edit, step)
    const after = single && useStore.getState().history.present.cabinets[single.id]
    if (edit.kind === 'several' && after) setMoved({ text: `${words.text}.`, id: after.id, left: after.left })
    return null
  }
  return (
    <>
      <Choice
        label={`Beside ${side}`}
        value={common(all, wayBeside)}
        options={waysBeside(cabinets)}
        onChoice={(way) => setWhy(put(changedBeside(way as BesideWay, project, cabinets, side)))}
      />
      {why !== null && (
        <p className={styles.refused} role="alert">
          {why}
        </p>
      )}
      {moved !== null && single?.id === moved.id && single.left === moved.left && (
        <p className={styles.note} role="status">
          {moved.text}
        </p>
      )}
      {one?.kind === 'filler' && (
        <>
          <LengthField
            label={`· ${label} filler`}
            value={one.width}
            display={project.display}
            field={FILLER_WIDTH}
            onLength={(width) => put({ ...one, width })}
          />
          <LengthField
            label={`· ${label} scribe`}
            value={one.scribe}
            display={project.display}
            field={SCRIBE}
            onLength={(scribe) => put({ ...one, scribe })}
          />
        </>
      )}
      {(one?.kind === 'skin' || one?.kind === 'panel') && (
        <Choice
          label={`· ${label} board`}
          value={one.material}
          options={boardOptions(project.materials)}
          onChoice={(material) => setWhy(put({ ...one, material }))}
        />
      )}
      {single && <FillGap project={project} cabinet={single} side={side} />}
    </>
  )
}

/** The one action that closes a gap. */
function FillGap({ project, cabinet, side }: { project: Project; cabinet: Cabinet; side: Side }) {
  const actions = useStore((state) => state.actions)
  const edit = gapFilled(project, cabinet, side)
  if (!edit) return null
  const { gap, to } = gapsBeside(project, cabinet)[side]
  return (
    <Button look="plain" className={styles.more} onClick={() => actions.commit(edit)}>
      Fill the gap {side}: {formatWithUnit(gap, project.display)} to {to}
    </Button>
  )
}
