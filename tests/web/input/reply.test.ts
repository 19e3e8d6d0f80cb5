import { describe, it } from 'vitest'
import { Desk } from './desk'
import { aWall, base, idOf, upper } from './wall'

describe('a press', () => {
  it('that moves less than 4 px is a click and selects', () => {
    new Desk(aWall(base('B1', { left: 100 })))
      .press('B1', 300)
      .dragTo(300 + 39)
      .release()
      .expectPick({ kind: 'one', id: idOf('B1') })
      .expectUndoSteps()
  })

  it('with Shift adds to what is selected', () => {
    new Desk(aWall(base('B1')))
      .hold({ isAdding: true })
      .press('B1', 300)
      .release()
      .expectPick({ kind: 'toggle', id: idOf('B1') })
  })

  it('on the bare wall selects nothing', () => {
    new Desk(aWall()).pressWall(500, 500).release().expectPick({ kind: 'nothing' }).expectCabinets(0)
  })

  it('on a thing of the tray offers free places', () => {
    new Desk(aWall()).pressTray('base').release().expectPick({ kind: 'place', cabinet: 'base' }).expectCabinets(0)
  })
})

describe('dragging a cabinet along the wall', () => {
  it('is one undo step however far the pointer wandered', () => {
    new Desk(aWall(base('B1', { left: 100 })))
      .press('B1', 130)
      .dragTo(500)
      .dragTo(37)
      .dragTo(430)
      .release()
      .expectPlace('B1', 100 + (430 - 130), 600)
      .expectUndoSteps('Move B1')
  })

  it('keeps a base on the floor', () => {
    new Desk(aWall(base('B1', { left: 100 })))
      .press('B1', 130, 300)
      .dragTo(230, 1500)
      .release()
      .expectPlace('B1', 100 + (230 - 130), 600)
      .expectBottom('B1', 0)
  })

  it('lets an upper go up and down too', () => {
    new Desk(aWall(upper('U1', { left: 100 })))
      .press('U1', 130, 1600)
      .dragTo(170, 1550)
      .release()
      .expectPlace('U1', 100 + (170 - 130), 600)
      .expectBottom('U1', 1432 - (1600 - 1550))
  })

  it('says what would be free to either side', () => {
    new Desk(aWall(base('B1'), base('B2', { left: 1000 })))
      .press('B2', 1100)
      .dragTo(1100 + 350)
      .expectWords(`B2 at ${1000 + 350}: fits, ${1350 - 600} left to B1 and ${3600 - 1350 - 600} to the wall end`)
  })

  it('drops back and says why when it would overlap', () => {
    new Desk(aWall(base('B1'), base('B2', { left: 1000 })))
      .press('B2', 1100)
      .dragTo(1100 - 550)
      .expectWords(`B2 would overlap B1 by ${600 - (1000 - 550)} mm`, false)
      .release()
      .expectSaid('B2 would overlap B1 by 150 mm. Nothing was changed.')
      .expectPlace('B2', 1000, 600)
      .expectUndoSteps()
  })

  it('pushes the neighbour with Alt', () => {
    new Desk(aWall(base('B1'), base('B2', { left: 1000 })))
      .hold({ isPushing: true })
      .press('B1', 100)
      .dragTo(100 + 500)
      .expectWords('B1 at 500: fits, pushes B2')
      .release()
      .expectPlace('B1', 500, 600)
      .expectPlace('B2', 500 + 600, 600)
  })

  it('is dropped by Escape', () => {
    new Desk(aWall(base('B1')))
      .press('B1', 100)
      .dragTo(900)
      .escape()
      .release()
      .expectPlace('B1', 0, 600)
      .expectSaid(null)
      .expectUndoSteps()
  })

  it('takes along everything that is selected, as one step', () => {
    new Desk(aWall(base('B1'), base('B2', { left: 600 }), base('B3', { left: 1500 })))
      .select('B1', 'B2')
      .press('B2', 700)
      .dragTo(700 + 250)
      .expectWords('2 cabinets by 250: all fit')
      .release()
      .expectPlace('B1', 250, 600)
      .expectPlace('B2', 600 + 250, 600)
      .expectPlace('B3', 1500, 600)
      .expectUndoSteps('Move B1 and B2')
  })

  it('snaps to a neighbour within reach and names the line', () => {
    new Desk(aWall(base('B1'), base('B2', { left: 1000 })), 80)
      .press('B2', 1100)
      .dragTo(1100 - 350)
      .expectGuides('the right side of B1')
      .release()
      .expectPlace('B2', 600, 600)
  })

  it('does not snap with Ctrl held', () => {
    new Desk(aWall(base('B1'), base('B2', { left: 1000 })), 80)
      .hold({ isFree: true })
      .press('B2', 1100)
      .dragTo(1100 - 350)
      .expectGuides()
      .release()
      .expectPlace('B2', 1000 - 350, 600)
  })
})

describe('stretching a cabinet', () => {
  it('by its right edge keeps its left side', () => {
    new Desk(aWall(base('B1', { left: 200 })))
      .pressEdge('B1', 'right', 800)
      .dragTo(800 + 130)
      .release()
      .expectPlace('B1', 200, 600 + 130)
      .expectUndoSteps('Widen B1')
  })

  it('by its left edge keeps its right side', () => {
    new Desk(aWall(base('B1', { left: 200 })))
      .pressEdge('B1', 'left', 200)
      .dragTo(200 + 130)
      .release()
      .expectPlace('B1', 200 + 130, 600 - 130)
      .expectUndoSteps('Narrow B1')
  })

  it('pushes the neighbour where there is room for it', () => {
    new Desk(aWall(base('B1'), base('B2', { left: 600 })))
      .pressEdge('B1', 'right', 600)
      .dragTo(600 + 90)
      .expectWords('B1 to 690: fits, pushes B2')
      .release()
      .expectPlace('B1', 0, 690)
      .expectPlace('B2', 690, 600)
      .expectUndoSteps('Widen B1')
  })

  it('does not fit when the neighbour has nowhere to go', () => {
    new Desk(aWall(base('B1'), base('B2', { left: 600, width: 3000 })))
      .pressEdge('B1', 'right', 600)
      .dragTo(600 + 90)
      .expectWords('B1 would overlap B2 by 90 mm', false)
      .release()
      .expectPlace('B1', 0, 600)
  })

  it('ends at the least width that can be, and says it', () => {
    new Desk(aWall(base('B1', { left: 200 })))
      .pressEdge('B1', 'right', 800)
      .dragTo(800 - 580)
      .expectWords('B1: The width is 20 mm; it must be at least 50 mm', false)
      .release()
      .expectPlace('B1', 200, 600)
  })
})

describe('a box pulled out of the tray', () => {
  it('stands under the pointer when it is let go over the wall', () => {
    new Desk(aWall())
      .pressTray('base')
      .dragTo(1000, 400)
      .expectWords(`B1 at ${1000 - 300}: fits, ${1000 - 300} left to the wall end and ${3600 - 1300} to the wall end`)
      .release()
      .expectCabinets(1)
      .expectUndoSteps('Add B1')
  })

  it('is narrowed to a gap that is a little small', () => {
    new Desk(aWall(base('B1'), base('B2', { left: 1000 })))
      .pressTray('base')
      .dragTo(800, 400)
      .expectWords('B3 at 600: fits exactly between B1 and B2')
      .release()
      .expectPlace('K1', 600, 1000 - 600)
      .expectUndoSteps('Add B3')
  })

  it('is put away when it is let go elsewhere', () => {
    new Desk(aWall())
      .pressTray('base')
      .dragTo(1000, 5000)
      .expectWords('Let go over the wall to put it there', false)
      .release()
      .expectCabinets(0)
      .expectUndoSteps()
  })
})

describe('a box drawn on the wall', () => {
  it('is a base as wide as it was drawn when it is drawn low', () => {
    new Desk(aWall())
      .pressWall(400, 700)
      .dragTo(400 + 750, 100)
      .expectWords(`B1 at 400: fits, 400 left to the wall end and ${3600 - 400 - 750} to the wall end`)
      .release()
      .expectUndoSteps('Add B1')
  })

  it('is the same drawn from right to left', () => {
    new Desk(aWall())
      .pressWall(1150, 700)
      .dragTo(400, 100)
      .expectWords(`B1 at 400: fits, 400 left to the wall end and ${3600 - 400 - 750} to the wall end`)
  })

  it('is an upper when it is drawn high, and tall from low to high', () => {
    new Desk(aWall()).pressWall(400, 1500).dragTo(1000, 2000).release().expectUndoSteps('Add U1')
    new Desk(aWall()).pressWall(400, 100).dragTo(1000, 2000).release().expectUndoSteps('Add T1')
  })

  it('is nothing when it is too narrow to be a box', () => {
    new Desk(aWall())
      .pressWall(400, 500)
      .dragTo(400 + 100, 300)
      .expectWords('A new base: drawn at least 150 wide', false)
      .release()
      .expectCabinets(0)
  })
})
