import { memo } from 'react'
import {
  type Cabinet,
  type CabinetId,
  type CabinetKind,
  cabinetWords,
  fitOf,
  type LengthDisplay,
  markOf,
  newCabinetAt,
  ownNames,
  ownTopNames,
  valuesOf,
} from '../../engine/index'
import { addedFirst, duplicated, removed } from '../input/commands'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import { Choice } from '../ui/Choice'
import { LengthField } from '../ui/LengthField'
import { ownChoices } from './choices'
import { doDeed } from './deeds'
import styles from './Stages.module.css'
import { type ShapeField, shapeCabinets } from './shaping'

const FIELDS: readonly (readonly [ShapeField, string])[] = [
  ['left', 'From left'],
  ['bottom', 'Above floor'],
  ['width', 'Width'],
  ['height', 'Height'],
  ['depth', 'Depth'],
]

const KINDS: readonly (readonly [CabinetKind, string])[] = [
  ['base', 'base'],
  ['upper', 'upper'],
  ['tall', 'tall'],
]

/** Every cabinet a row: all that a drag can do can be typed here. */
export function Schedule() {
  const cabinets = useStore((state) => state.history.present.cabinets)
  const display = useStore((state) => state.history.present.display)
  const selection = useStore((state) => state.selection)
  const rows = valuesOf<Cabinet>(cabinets).sort((a, b) => a.left - b.left || a.bottom - b.bottom)
  const chosen = selection.kind === 'cabinets' ? selection.ids : []
  return (
    <div className={styles.tableFrame}>
      <table className={styles.table} aria-label="Schedule of cabinets">
        <thead>
          <tr>
            <th scope="col">Mark</th>
            <th scope="col">Kind</th>
            {FIELDS.map(([field, words]) => (
              <th key={field} scope="col" className={styles.figure}>
                {words}, {display.unit}
              </th>
            ))}
            <th scope="col">
              <span className="unseen">Duplicate or delete</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((cabinet) => (
            <ScheduleRow key={cabinet.id} cabinet={cabinet} display={display} isChosen={chosen.includes(cabinet.id)} />
          ))}
        </tbody>
      </table>
      <p className={styles.actions}>
        {KINDS.map(([kind, words]) => (
          <Button
            key={kind}
            onClick={() => doDeed(addedFirst(useStore.getState().history.present, kind, useStore.getState().wall))}
          >
            Add {words}
          </Button>
        ))}
        <Button
          onClick={() =>
            doDeed(addedFirst(useStore.getState().history.present, 'dishwasherSpace', useStore.getState().wall))
          }
        >
          Add appliance space
        </Button>
        {rows.length === 0 && <span>Nothing stands on the wall yet. Add a cabinet, or pull one out of the tray.</span>}
      </p>
    </div>
  )
}

interface ScheduleRowProps {
  readonly cabinet: Cabinet
  readonly display: LengthDisplay
  readonly isChosen: boolean
}

const ScheduleRow = memo(function ScheduleRow({ cabinet, display, isChosen }: ScheduleRowProps) {
  const actions = useStore((state) => state.actions)
  const mark = markOf(cabinet)
  const { id } = cabinet
  const hasOwnTop = ownTopNames(cabinet).length > 0
  const own = [ownChoices(ownNames(cabinet.overrides)), hasOwnTop && 'countertop'].filter(Boolean).join(', ')
  return (
    <tr data-row={id} className={isChosen ? styles.chosen : undefined}>
      <th scope="row">
        <button
          type="button"
          className={styles.mark}
          aria-pressed={isChosen}
          onClick={() => actions.select({ kind: 'cabinets', ids: [id] })}
        >
          {mark}
        </button>
        {own && (
          <span title={`Built differently: ${own}`}>
            <span aria-hidden="true">*</span>
            <span className="unseen">built differently: {own}</span>
          </span>
        )}
      </th>
      <td>
        {cabinet.space ? (
          cabinetWords(cabinet)
        ) : (
          <Choice
            label={`Kind of ${mark}`}
            value={cabinet.kind}
            options={KINDS}
            onChoice={(kind) => changeKind(id, kind)}
            isBare
          />
        )}
      </td>
      {FIELDS.map(([field, words]) => (
        <td key={field} className={styles.figure}>
          <LengthField
            label={`${words} of ${mark}`}
            value={cabinet[field]}
            display={display}
            field={field}
            isBare
            onLength={(length) => shapeCabinets([cabinet], field, length)}
          />
        </td>
      ))}
      <td className={styles.rowTools}>
        <Button
          look="plain"
          aria-label={`Duplicate ${mark}`}
          onClick={() => doDeed(duplicated(useStore.getState().history.present, [id]))}
        >
          Duplicate
        </Button>
        <Button
          look="plain"
          aria-label={`Delete ${mark}`}
          onClick={() => doDeed(removed(useStore.getState().history.present, [id]))}
        >
          Delete
        </Button>
      </td>
    </tr>
  )
})

/**
 * A cabinet of another kind is a new one in the same place: it stands or hangs at its own kind's height and has a mark
 * of its own kind. Its width and front stay.
 */
function changeKind(id: CabinetId, kind: CabinetKind): void {
  const { history, actions } = useStore.getState()
  const project = history.present
  const before = project.cabinets[id]
  const usual = project.newCabinets[kind]
  const fresh = before && newCabinetAt(project, kind, before.left, before.width, before.wall)
  if (!before || !fresh || before.kind === kind) return
  const { height, depth, bottom } = usual
  const after: Cabinet = { ...before, kind, number: fresh.number, height, depth, bottom }
  const fit = fitOf(project, after)
  if (fit.fits) actions.commit({ kind: 'addCabinet', cabinet: after }, `Make ${markOf(before)} ${markOf(after)}`)
  else actions.say('stop', `${fit.why}.`)
}
