import { USUAL_LEGS } from './fixing'
import { USUAL_SLIDES } from './machining'

/** A saved build method that says nothing yet of fixings, pulls and legs: nothing was bored for them. Slides were of the least class. */
export function withFixings(method: Record<string, unknown>): Record<string, unknown> {
  const nothing = { fixing: { kind: 'none' }, doorPull: { kind: 'none' }, drawerPull: { kind: 'none' } }
  const { slides } = method
  const { setback, loadClass } = USUAL_SLIDES
  const all = typeof slides === 'object' && slides !== null ? { slides: { setback, loadClass, ...slides } } : {}
  return { ...nothing, legs: { ...USUAL_LEGS }, ...method, ...all }
}
