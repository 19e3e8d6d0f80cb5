import { describe, expect, it } from 'vitest'
import { applyEdit, labelOf } from '../../../engine/index'
import { besideOutcome } from '../../../web/input/beside'
import { aWall, base, idOf } from './wall'

const FILLER = { kind: 'filler', width: 40, scribe: 10 } as const

describe('a filler that is put beside a cabinet', () => {
  it('at the end of the wall moves it away by its width and pushes its neighbours, in one step', () => {
    const wall = aWall(base('B1'), base('B2', { left: 600 }))
    const outcome = besideOutcome(wall, [wall.cabinets[idOf('B1')]!], 'left', FILLER)
    expect(outcome.words).toEqual({ fits: true, text: 'B1 moved 40 mm to the right for it, and so does B2' })
    const after = applyEdit(wall, outcome.edit!)
    expect([after.cabinets[idOf('B1')]!.left, after.cabinets[idOf('B2')]!.left]).toEqual([40, 640])
    expect(after.cabinets[idOf('B1')]!.beside.left).toEqual(FILLER)
    expect(outcome.label).toBe(labelOf(wall, { kind: 'setBeside', ids: [idOf('B1')], side: 'left', beside: FILLER }))
  })

  it('takes what is free beside it first', () => {
    const wall = aWall(base('B1', { left: 15 }))
    const { edit, words } = besideOutcome(wall, [wall.cabinets[idOf('B1')]!], 'left', FILLER)
    expect(words?.text).toBe('B1 moved 25 mm to the right for it')
    expect(applyEdit(wall, edit!).cabinets[idOf('B1')]!.left).toBe(15 + 25)
  })

  it('moves nothing where its width is free, or says why where nothing can be moved', () => {
    const free = aWall(base('B1', { left: 100 }))
    expect(besideOutcome(free, [free.cabinets[idOf('B1')]!], 'left', FILLER).edit?.kind).toBe('setBeside')
    const full = aWall(
      base('B1', { width: 1200 }),
      base('B2', { left: 1200, width: 1200 }),
      base('B3', { left: 2400, width: 1200 }),
    )
    const { words } = besideOutcome(full, [full.cabinets[idOf('B1')]!], 'left', FILLER)
    expect(words).toEqual({ fits: false, text: 'B1 would stand 40 mm past the left end of the wall' })
  })
})
