import { describe, expect, it } from 'vitest'
import type { CabinetId } from '../../../engine/basics/id'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import { newProject } from '../../../engine/project/defaults'
import type { Cabinet, Project } from '../../../engine/project/document'
import type { ReadyName } from '../../../engine/project/readyKinds'
import { misfits } from '../../../engine/runs/fit'
import { newCabinetAt } from '../../../engine/runs/place'
import { firstWall } from '../../../engine/site/wall'
import { cabinet } from '../../helpers/wall'

function holding(name: ReadyName, left = 0): { readonly project: Project; readonly cabinet: Cabinet } {
  const project = newProject('mm')
  const cabinet = newCabinetAt(project, name, left)!
  return { project: applyEdit(project, { kind: 'addCabinet', cabinet }), cabinet }
}

function movedTo(left: number, { project, cabinet }: ReturnType<typeof holding>): Cabinet {
  const moved = applyEdit(project, { kind: 'shapeCabinets', shapes: [{ id: cabinet.id, left }] })
  return moved.cabinets[cabinet.id]!
}

const atRightEnd = ({ project, cabinet }: ReturnType<typeof holding>) => firstWall(project)!.length - cabinet.width

describe('moving a corner to the other end of its wall', () => {
  it('turns an L and a diagonal to the corner there, and back', () => {
    for (const name of ['cornerBase', 'diagonalUpper'] as const) {
      const held = holding(name)
      expect(held.cabinet.corner!.hand).toBe('left')
      const there = movedTo(atRightEnd(held), held)
      expect(there.corner!.hand).toBe('right')
      const project = { ...held.project, cabinets: { [there.id]: there } as Record<CabinetId, Cabinet> }
      expect(movedTo(0, { project, cabinet: there })).toEqual(held.cabinet)
    }
  })

  it('mirrors a blind corner: its blind part stays at the end of the wall', () => {
    const held = holding('blindBase')
    const there = movedTo(atRightEnd(held), held)
    const doorsOf = ({ front }: Cabinet) => (front.kind === 'rows' ? front.rows.at(-1)!.front : front)
    expect(doorsOf(held.cabinet)).toMatchObject({
      columns: [{ front: { kind: 'blind' } }, { front: { hinge: 'right' } }],
    })
    expect(doorsOf(there)).toMatchObject({ columns: [{ front: { hinge: 'left' } }, { front: { kind: 'blind' } }] })
  })

  it('mirrors what stands in a blind corner: its bays change places', () => {
    const held = holding('blindBase')
    const narrow = { size: { kind: 'fixed', width: 200 }, shelves: null } as const
    const rest = { size: { kind: 'share', share: 1 }, shelves: null } as const
    const interior = { ...held.cabinet.interior, bays: [narrow, rest] }
    const project = applyEdit(held.project, { kind: 'setInterior', ids: [held.cabinet.id], interior })
    const there = movedTo(atRightEnd(held), { project, cabinet: held.cabinet })
    expect(there.interior.bays).toEqual([rest, narrow])
  })

  it('leaves it as it is within its half of the wall, and leaves plain cabinets alone', () => {
    const held = holding('cornerBase')
    expect(movedTo(100, held)).toEqual({ ...held.cabinet, left: 100 })
    const plain = holding('sinkBase')
    expect(movedTo(atRightEnd(plain), plain)).toEqual({ ...plain.cabinet, left: atRightEnd(plain) })
  })
})

describe('a corner cabinet that does not stand in its corner', () => {
  const found = (project: Project) =>
    derive(project).problems.filter(({ message }) => message.includes('its corner is'))

  it('is told with a way back into it that is one step', () => {
    const { project, cabinet } = holding('cornerBase')
    const away = applyEdit(project, { kind: 'shapeCabinets', shapes: [{ id: cabinet.id, left: 300 }] })
    const [finding] = found(away)
    expect(finding!.message).toBe(
      'B1: its corner is 300 mm from the left end of the wall, so its other leg would stand in the room.',
    )
    expect(finding!.remedy!.label).toBe('Move B1 into its corner')
    expect(found(applyEdit(away, finding!.remedy!.edit))).toEqual([])
  })

  it('is turned and moved into the other corner where something stands in its own, which is said', () => {
    const { project, cabinet: corner } = holding('cornerBase')
    const away = applyEdit(project, { kind: 'shapeCabinets', shapes: [{ id: corner.id, left: 800 }] })
    const inWay = cabinet('B7', { left: 0, width: 400, wall: corner.wall })
    const filled = applyEdit(away, { kind: 'addCabinet', cabinet: inWay })
    const [finding] = found(filled)
    expect(finding!.message).toMatch(/In its corner B1 would overlap B7 by 400 mm\.$/)
    expect(finding!.remedy!.label).toBe('Turn B1 and move it into the right corner')
    const mended = applyEdit(filled, finding!.remedy!.edit)
    expect(found(mended)).toEqual([])
    expect(misfits(mended)).toEqual([])
  })

  it('only says what is in the way where both corners are taken', () => {
    const { project, cabinet: corner } = holding('cornerBase')
    const { length } = project.walls[corner.wall]!
    const away = applyEdit(project, { kind: 'shapeCabinets', shapes: [{ id: corner.id, left: 800 }] })
    const taken = [cabinet('B7', { left: 0, width: 400 }), cabinet('B8', { left: length - 400, width: 400 })].reduce(
      (to: Project, one) => applyEdit(to, { kind: 'addCabinet', cabinet: { ...one, wall: corner.wall } }),
      away,
    )
    const [finding] = found(taken)
    expect(finding!.message).toContain('In its corner B1 would overlap B7')
    expect(finding!.remedy).toBeUndefined()
  })

  it('is turned round where it stands in the corner at the other end', () => {
    const held = holding('cornerBase')
    const { corner, id } = held.cabinet
    const there = applyEdit(held.project, { kind: 'shapeCabinets', shapes: [{ id, left: atRightEnd(held) }] })
    const wrong = applyEdit(there, { kind: 'setCorner', ids: [id], corner })
    const [finding] = found(wrong)
    expect(finding!.remedy!.label).toBe('Turn B1 to the right corner')
    expect(found(applyEdit(wrong, finding!.remedy!.edit))).toEqual([])
  })

  it('says what it takes of the other wall', () => {
    const { project } = holding('cornerBase')
    expect(derive(project).problems.map(({ message }) => message)).toContain(
      'B1: in its left corner it takes 900 mm of the other wall, 580 mm deep: what stands there begins 900 mm from the corner.',
    )
  })
})

describe('what is bought for a corner', () => {
  it('is hinges that fold back and hinges between the leaves, and a fifth pin for each shelf', () => {
    const { project, cabinet } = holding('cornerBase')
    const interior = { fixedShelves: 0, adjustableShelves: 1, partition: null }
    const loose = applyEdit(project, { kind: 'setInterior', ids: [cabinet.id], interior })
    const { hardware } = derive(loose).cabinets[0]!
    expect(hardware).toEqual([
      { name: 'wide-angle hinge for folding doors', quantity: 2, length: null },
      { name: 'hinge between folding leaves', quantity: 2, length: null },
      { name: 'hinge plate, 0 mm high', quantity: 2 + 2, length: null },
      { name: 'shelf pin', quantity: 5, length: null },
    ])
  })

  it('is hinges for a door that hangs aslant', () => {
    const { hardware } = derive(holding('diagonalUpper').project).cabinets[0]!
    expect(hardware[0]).toEqual({ name: 'hinge for a diagonal door', quantity: 2, length: null })
  })
})
