import { describe, expect, it } from 'vitest'
import { type Front, frontPlaces } from '../../../engine/index'
import { Desk } from './desk'
import { aWall, base, idOf } from './wall'

const DRAWER = { kind: 'drawer' } as const
const share = { size: { kind: 'share', share: 1 }, front: DRAWER } as const
const fixed = (height: number) => ({ size: { kind: 'fixed', height }, front: DRAWER }) as const
const ROWS: Front = { kind: 'rows', rows: [fixed(160), share, share] }
const COLUMNS: Front = {
  kind: 'columns',
  columns: [
    { ...share, shelves: null },
    { ...share, shelves: null },
  ],
}

function frontOf(desk: Desk, mark: string): Front {
  return desk.present.cabinets[idOf(mark)]!.front
}

function sizesIn(desk: Desk, mark: string): number[] {
  const project = desk.present
  const inner = frontPlaces(project, project.cabinets[idOf(mark)]!).slice(1)
  return inner.map(({ rect }) => (frontOf(desk, mark).kind === 'rows' ? rect.height : rect.width))
}

describe('dragging a dividing line', () => {
  it('gives one row what it takes from the next, in one undo step, and leaves the third', () => {
    const desk = new Desk(aWall(base('B1', { front: ROWS })))
    const [, second, third] = sizesIn(desk, 'B1')
    desk.pressDivider('B1', '0', 100, 700).dragTo(100, 690).dragTo(100, 660).release()
    expect(sizesIn(desk, 'B1')).toEqual([160 + 40, second! - 40, third])
    desk.expectUndoSteps('Move a dividing line of B1')
  })

  it('leaves a column that alone takes what is left a share', () => {
    const desk = new Desk(aWall(base('B1', { front: COLUMNS })))
    desk.pressDivider('B1', '0', 300).dragTo(252).release()
    const [first, second] = sizesIn(desk, 'B1')
    expect(first! % 1).toBe(0)
    const { front } = desk.present.cabinets[idOf('B1')]!
    expect(front.kind === 'columns' && front.columns.map(({ size }) => size.kind)).toEqual(['fixed', 'share'])
    expect(first! + second!).toBeLessThan(600)
  })

  it('catches on the dividing line of a neighbour, and says so', () => {
    const other: Front = { kind: 'rows', rows: [fixed(183), share, share] }
    const desk = new Desk(aWall(base('B1', { front: ROWS }), base('B2', { left: 600, front: other })), 8)
    desk
      .pressDivider('B1', '0', 100, 700)
      .dragTo(100, 600)
      .dragTo(100, 700 - 21)
      .expectGuides('a dividing line of B2')
      .release()
    expect(sizesIn(desk, 'B1')[0]).toBe(183)
  })

  it('is dropped by Escape', () => {
    const desk = new Desk(aWall(base('B1', { front: ROWS })))
    desk.pressDivider('B1', '0', 100, 700).dragTo(100, 600).escape().release()
    expect(frontOf(desk, 'B1')).toBe(ROWS)
  })

  it('is refused where a front would be less than 20 mm, with the size and the limit', () => {
    const desk = new Desk(aWall(base('B1', { front: ROWS })))
    desk.pressDivider('B1', '0', 100, 700).dragTo(100, 850)
    desk.expectWords('B1: The size of the front is 10 mm; it must be at least 20 mm', false)
    desk.release()
    desk.expectSaid('B1: The size of the front is 10 mm; it must be at least 20 mm. Nothing was changed.')
    expect(frontOf(desk, 'B1')).toEqual(ROWS)
  })
})
