import type { MaterialId } from '../../engine/basics/id'
import { applyEdit } from '../../engine/project/apply'
import type { Countertop, Cutout, Project } from '../../engine/project/document'
import { cabinet, type Said } from '../helpers/wall'

const TOP: Countertop = { material: 'carcass' as MaterialId, overhang: 20, ends: 0, splash: 0, banding: 0 }
export const SINK: Cutout = { of: 'sink', width: 480, depth: 400, fromFront: 70 }
export const HOB: Cutout = { of: 'hob', width: 560, depth: 490, fromFront: 55 }

export function topped(project: Project, change: Partial<Countertop> = {}): Project {
  return applyEdit(project, { kind: 'editBetween', change: { countertop: { ...TOP, ...change } } })
}
export const base = (mark: string, left: number, width: number, said: Said = {}) =>
  cabinet(mark, { left, width, ...said })
