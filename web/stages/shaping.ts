import { type Cabinet, type CabinetShape, fitOf, gapsBeside, type Mm, type Project, settle } from '../../engine/index'
import { movedBy } from '../input/move'
import { reshaped } from '../input/stretch'
import { useStore } from '../store/store'

export type ShapeField = 'left' | 'bottom' | 'width' | 'height' | 'depth'

/** Gives cabinets another place or size if they fit; otherwise answers why not. One alone may push its neighbours. */
export function shapeCabinets(cabinets: readonly Cabinet[], field: ShapeField, length: Mm): string | null {
  const { history, actions } = useStore.getState()
  const project = history.present
  const [first] = cabinets
  if (!first) return null
  if (cabinets.length === 1) {
    const { edit, words } = reshaped(project, first, { ...first, [field]: length })
    if (!edit || !words?.fits) return `${words?.text}.`
    actions.commit(edit)
    return null
  }
  const proposed = cabinets.map((cabinet) => ({ ...cabinet, [field]: length }))
  const fit = fitOf(project, proposed)
  if (!fit.fits) return `${fit.why}.`
  actions.commit({ kind: 'shapeCabinets', shapes: proposed.map(({ id }): CabinetShape => ({ id, [field]: length })) })
  return null
}

/** Moves a cabinet so that the gap on one side of it has a length. */
export function setGap(project: Project, cabinet: Cabinet, side: 'left' | 'right', length: Mm): string | null {
  const { gap } = gapsBeside(project, cabinet)[side]
  const dx = settle(side === 'left' ? length - gap : gap - length)
  const { edit, words } = movedBy(project, [cabinet.id], dx, 0, false)
  if (!edit || !words?.fits) return `${words?.text}.`
  useStore.getState().actions.commit(edit)
  return null
}

/** What all have in common, or null. */
export function common<Thing, Value>(things: readonly Thing[], of: (thing: Thing) => Value): Value | null {
  const [first, ...others] = things.map(of)
  return first !== undefined && others.every((other) => other === first) ? first : null
}
