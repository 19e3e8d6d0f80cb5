import { describe, expect, it } from 'vitest'
import type { CutRow, Derived } from '../../../engine/index'
import type { Selection } from '../../../web/store/state'
import { chosenParts, isRowChosen, selectionOf } from '../../../web/tables/chosen'

const SIDES = { key: 'sides', parts: ['k1/left', 'k1/right', 'k2/left'] } as unknown as CutRow
const BACKS = { key: 'backs', parts: ['k1/back'] } as unknown as CutRow
const DESIGN = {
  cabinetOf: {
    k1: { parts: [{ id: 'k1/left' }, { id: 'k1/right' }, { id: 'k1/back' }] },
    k2: { parts: [{ id: 'k2/left' }] },
  },
  partOf: new Map([['k1/back', { id: 'k1/back', owner: 'k1' }]]),
  cutList: { rows: [SIDES, BACKS], totals: [] },
} as unknown as Derived

function lit(selection: unknown): string[] {
  const chosen = chosenParts(selection as Selection, DESIGN)
  return [SIDES, BACKS].filter((row) => isRowChosen(row, selection as Selection, chosen)).map(({ key }) => key)
}

describe('the rows that light up', () => {
  it('are none for nothing', () => {
    expect(lit({ kind: 'nothing' })).toEqual([])
  })

  it('are all that have a board of a selected cabinet', () => {
    expect(lit({ kind: 'cabinets', ids: ['k1'] })).toEqual(['sides', 'backs'])
    expect(lit({ kind: 'cabinets', ids: ['k2'] })).toEqual(['sides'])
  })

  it('are the one of a selected part, and the selected one itself', () => {
    expect(lit({ kind: 'part', owner: 'k1', part: 'k1/back' })).toEqual(['backs'])
    expect(lit({ kind: 'row', row: 'sides' })).toEqual(['sides'])
  })
})

describe('picking a part', () => {
  it('selects it in its cabinet, and nothing when it is gone', () => {
    expect(selectionOf('k1/back' as never, DESIGN)).toEqual({ kind: 'part', owner: 'k1', part: 'k1/back' })
    expect(selectionOf('k7/back' as never, DESIGN)).toEqual({ kind: 'nothing' })
  })
})
