import { isHung, methodOf, standsFree } from '../project/builtBy'
import type { Cabinet, Project } from '../project/document'
import { markOf } from '../project/mark'
import { gapsBeside } from '../runs/neighbours'
import type { Mm } from '../units/length'
import { about, FIXING_DEFERS, type Finding, PRACTICE } from './finding'
import { sayIn } from './say'

/** Wider gaps than this are no neighbour to be screwed to. Common practice, no source. */
const NEAR: Mm = 5

/** An island is pushed, leant on and pulled at from all sides, and no wall holds it. */
export function freeFindings(project: Project, cabinets: readonly Cabinet[]): Finding[] {
  return cabinets
    .filter((cabinet) => !isHung(cabinet) && standsFree(methodOf(cabinet, project)))
    .map((cabinet) => {
      const message =
        'stands at no wall: screw it to cleats that are fixed to the floor, and to the cabinets beside it, before its top ' +
        'is laid and anything is put into it. Find cables, pipes and floor heating first. Local codes and licensed trades come first.'
      return about(
        { cabinet, mark: markOf(cabinet) },
        { weight: 'mind', message, measure: 'at no wall', limit: 'fixed to the floor', source: PRACTICE },
      )
    })
}

/** Talls want to be fixed to the wall, those that stand alone the more so: what is pulled open can bring one down. */
export function standingFindings(project: Project, cabinets: readonly Cabinet[]): Finding[] {
  const say = sayIn(project.display)
  return cabinets
    .filter(({ kind }) => kind === 'tall')
    .map((cabinet) => {
      const { left, right } = gapsBeside(project, cabinet)
      const isAlone = [left, right].every(({ gap, to }) => to === 'the wall end' || gap > NEAR)
      const measure = say.length(cabinet.height)
      const message =
        `${isAlone ? 'stands alone, with no cabinet beside it to be screwed to. It is' : 'is'} ${measure} high: fix it to the ` +
        `wall at its top before anything is put into it, and keep what is heavy low. ${FIXING_DEFERS}`
      const weight = isAlone ? 'mind' : 'know'
      return about(
        { cabinet, mark: markOf(cabinet) },
        { weight, message, measure, limit: 'fixed, however high', source: PRACTICE },
      )
    })
}
