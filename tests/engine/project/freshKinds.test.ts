import { describe, expect, it } from 'vitest'
import type { CabinetId } from '../../../engine/basics/id'
import type { Problem } from '../../../engine/basics/problem'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import { newProject } from '../../../engine/project/defaults'
import type { Cabinet, CabinetKind, Project } from '../../../engine/project/document'
import { kindOf, type NewKind, READY, SPACES } from '../../../engine/project/readyKinds'
import { readProject, writeProject } from '../../../engine/project/schema'
import { newCabinetAt } from '../../../engine/runs/place'
import type { LengthDisplay } from '../../../engine/units/length'

const PLAIN: readonly CabinetKind[] = ['base', 'upper', 'tall']
const KINDS: readonly NewKind[] = [...PLAIN, ...[...READY, ...SPACES].map(([name]) => name)]

/** Clear of both ends of a wall of 3600, where its doors and what burns have room. */
const AWAY = 1400

/**
 * One of a kind as the tray puts it: a corner in the corner of the wall, anything else in the middle of it between two open
 * cabinets as high as it is, so that what is high or has drawers has something to be screwed to.
 */
function putUp(what: NewKind, unit: LengthDisplay['unit']): { readonly project: Project; readonly own: Cabinet } {
  const plain = newProject(unit)
  const isInCorner = /^(corner|diagonal|blind)/.test(what)
  const own = newCabinetAt(plain, what, isInCorner ? null : AWAY)!
  const alone = applyEdit(plain, { kind: 'addCabinet', cabinet: own })
  if (isInCorner) return { project: alone, own }
  const beside = newCabinetAt(plain, kindOf(what), AWAY)!
  const among = ['left', 'right'].reduce((project, side, at) => {
    const left = side === 'left' ? own.left - 500 : own.left + own.width
    const said = { id: `n${at}` as CabinetId, number: 8 + at, left, width: 500, front: { kind: 'open' } as const }
    const { space: _, ...neighbour } = { ...beside, ...said, overrides: {}, corner: null }
    return applyEdit(project, { kind: 'addCabinet', cabinet: neighbour })
  }, alone)
  return { project: among, own }
}

/** What is found about it that is more than good to know. */
function grave(project: Project, own: Cabinet): string[] {
  const isOwn = ({ about }: Problem) => 'cabinet' in about && about.cabinet === own.id
  return derive(project)
    .problems.filter((one) => one.weight !== 'know' && isOwn(one))
    .map(({ message }) => message)
}

describe.each(['mm', 'in'] as const)('a new cabinet in %s', (unit) => {
  it.each(KINDS.filter((what) => what !== 'islandBase'))(
    'comes with nothing to mind and nothing to stop at: %s',
    (what) => {
      const { project, own } = putUp(what, unit)
      expect(grave(project, own)).toEqual([])
    },
  )

  it('that stands at no wall has only to be screwed down', () => {
    const { project, own } = putUp('islandBase', unit)
    expect(grave(project, own)).toEqual([expect.stringContaining('stands at no wall: screw it to cleats')])
  })

  it.each(PLAIN)('with doors is saved and read back as it was: %s', (what) => {
    const { project } = putUp(what, unit)
    expect(readProject(writeProject(project))).toEqual({ ok: true, value: project })
  })
})

describe('a new upper', () => {
  it('has two doors as wide as it begins, one when it is made narrower, and two again when it is made wide', () => {
    const { project, own } = putUp('upper', 'mm')
    const doorsAt = (width: number) => {
      const shaped = applyEdit(project, { kind: 'shapeCabinets', shapes: [{ id: own.id, width }] })
      return derive(shaped).cabinetOf[own.id]!.parts.filter(({ role }) => role === 'door').length
    }
    expect([own.width, 400, own.width].map(doorsAt)).toEqual([2, 1, 2])
  })
})
