import { describe, expect, it } from 'vitest'
import { derive } from '../../../engine/pipeline'
import { demonstrationKitchen } from '../../../engine/samples/kitchen'
import type { JobStock, SheetJob } from '../../../engine/sheets/job'
import type { Piece, SheetAnswer } from '../../../engine/sheets/layout'
import { packing, packSheets } from '../../../engine/sheets/pack'
import { sheetCount } from '../../../engine/sheets/tally'
import { verify } from '../../../engine/sheets/verify'
import { aJob, aSheet, boards } from './yard'

/** The tree as a sawyer would say it: `rip(720 x 560 | waste 1700 x 560)`. */
function said(piece: Piece): string {
  if (piece.kind === 'cut') return `${piece.direction}(${piece.pieces.map(said).join(' | ')})`
  const size = `${piece.length} x ${piece.width}`
  return piece.kind === 'part' ? size : `${piece.kind} ${size}`
}

function sound(job: SheetJob): SheetAnswer {
  const answer = packSheets(job)
  expect(verify(job, answer)).toEqual([])
  return answer
}

describe('a layout', () => {
  it('is a rip and then crosscuts, with a kerf between the pieces and the rest kept or not by its size', () => {
    const job = aJob([boards('1000 x 600 x 2')], { offcutLeast: { length: 500, width: 600 } })
    const root = sound(job).sheets[0]!.root
    expect(said(root)).toBe(
      `rip(crosscut(1000 x 600 | 1000 x 600 | waste ${2440 - 2 * (1000 + 3)} x 600) | offcut 2440 x ${1220 - 600 - 3})`,
    )
  })

  it('is no cut at all for a part as large as the sheet less its trim', () => {
    const job = aJob([boards('2420 x 1200 x 1')], { stock: [aSheet({ trim: { length: 10, width: 10 } })] })
    expect(sound(job).sheets[0]!.root).toMatchObject({ kind: 'part', x: 10, y: 10 })
  })

  it('folds sheets that are cut alike into one with copies', () => {
    const answer = sound(aJob([boards('2440 x 1220 x 7')]))
    expect(answer.sheets.map(({ copies }) => copies)).toEqual([7])
  })

  it('loses a strip to a rest narrower than the kerf: 1220 - 2 x 608.5 is 3, one kerf', () => {
    const answer = sound(aJob([boards('2440 x 608.5 x 2')]))
    expect(said(answer.sheets[0]!.root)).toBe('rip(2440 x 608.5 | 2440 x 608.5)')
  })

  it('takes a second sheet when the kerf is all that is missing', () => {
    expect(sheetCount(sound(aJob([boards('2440 x 610 x 2')])))).toBe(2)
    expect(sheetCount(sound(aJob([boards('2440 x 610 x 2')], { kerf: 0 })))).toBe(1)
  })
})

describe('the directions of cut', () => {
  // Two sections of unequal width in one strip need a re-rip below the narrower one.
  const stacked = [boards('1500 x 1200 x 1'), boards('900 x 590 x 2')]

  it('are three at most unless the shop says otherwise', () => {
    expect(sheetCount(sound(aJob(stacked)))).toBe(1)
  })

  it('are two in a shop that does not re-rip, and the stack takes a sheet more', () => {
    expect(sheetCount(sound(aJob(stacked, { stages: 2 })))).toBe(2)
  })

  it('may begin with a crosscut where the shop says so: crosscut, rip', () => {
    const answer = sound(aJob(stacked, { stages: 2, firstCut: 'crosscut' }))
    expect(answer.sheets.map(({ root }) => root.kind === 'cut' && root.direction)).toContain('crosscut')
  })
})

describe('grain', () => {
  it('keeps a part from being turned, and names the size that would fit', () => {
    const { sheets, unplaced } = sound(aJob([boards('1300 x 2000 x 1')]))
    expect(sheets).toEqual([])
    expect(unplaced).toEqual([
      {
        part: '1300 x 2000 x 1',
        quantity: 1,
        reason: '1300 x 2000 is larger than 2440 x 1220, what sheet sheet gives less its trim; 1300 x 1220 would fit',
      },
    ])
  })

  it('is no matter to a part that may be turned', () => {
    const { sheets } = sound(aJob([boards('1200 x 2000 x 1', { rotate: true })]))
    expect(sheets[0]!.placements[0]).toMatchObject({ length: 1200, width: 2000, rotated: true })
  })
})

describe('the stock', () => {
  it('gives its offcuts before a new sheet is opened', () => {
    const stock = [aSheet(), aSheet({ id: 'piece', length: 900, width: 600, offcut: true, quantity: 1 })]
    expect(sound(aJob([boards('800 x 500 x 1')], { stock })).sheets.map((sheet) => sheet.stock)).toEqual(['piece'])
  })

  it.each([[[]], [['settings']], [['leftover']], [['leftover', 'settings']]] as const)(
    'keeps an offcut in use that spares a new sheet a piece, whatever is looked for: %j',
    (goals) => {
      // One of three boards goes on the offcut; all three on the new sheet would save its rip.
      const stock = [aSheet({ price: 50 }), aSheet({ id: 'piece', length: 600, width: 400, offcut: true, quantity: 1 })]
      const { sheets } = sound(aJob([boards('500 x 300 x 3')], { stock, goals: [...goals] }))
      expect(sheets.map(({ stock, placements }) => [stock, placements.length]).sort()).toEqual([
        ['piece', 1],
        ['sheet', 2],
      ])
    },
  )

  it('is bought where it costs least: two halves at 25 instead of a whole sheet at 60', () => {
    const stock = [aSheet({ price: 60 }), aSheet({ id: 'half', length: 1220, price: 25 })]
    const answer = sound(aJob([boards('1200 x 1200 x 2')], { stock }))
    expect(answer.sheets.map(({ stock, copies }) => [stock, copies])).toEqual([['half', 2]])
  })

  it('is bought where it is fewest if that comes first, whatever it costs, and then where it costs least', () => {
    const stock = [aSheet({ price: 60 }), aSheet({ id: 'half', length: 1220, price: 25 })]
    const taken = (parts: string) => {
      const { sheets } = sound(aJob([boards(parts)], { stock, isCountFirst: true }))
      return sheets.map(({ stock, copies }) => [stock, copies])
    }
    expect(taken('1200 x 1200 x 2')).toEqual([['sheet', 1]])
    expect(taken('1200 x 1200 x 1')).toEqual([['half', 1]])
  })

  it('of a kitchen costs no more than sheets of either size alone, at any price of the larger', () => {
    const { sheetJob } = derive(demonstrationKitchen())
    const [small] = sheetJob.stock.filter(({ material }) => material === 'carcass')
    const parts = sheetJob.parts.filter(({ material }) => material === 'carcass')
    const taken = (stock: SheetJob['stock']) => {
      const answer = packSheets({ ...sheetJob, stock, parts, effort: 'quick', goals: [] })
      expect(verify({ ...sheetJob, stock, parts }, answer)).toEqual([])
      return answer.sheets.reduce((sum, { stock: id, copies }) => {
        return sum + copies * stock.find((one) => one.id === id)!.price!
      }, 0)
    }
    for (const price of [68, 95, 110, 150]) {
      const large = { ...small!, id: 'large', length: 3050, width: 1525, price }
      const alone = [[small!], [large]].map(taken)
      expect(taken([small!, large])).toBeLessThanOrEqual(Math.min(...alone))
    }
  })

  it('is proved by the number alone, and says apart that it may cost less', () => {
    // The long board needs the large sheet whatever it costs, and the two others a second one.
    const stock = [aSheet({ id: 'small', price: 40 }), aSheet({ id: 'large', length: 3000, width: 1220, price: 150 })]
    const long = sound(aJob([boards('2900 x 1200 x 1'), boards('1400 x 600 x 2')], { stock }))
    expect(long.sheets.map(({ stock, copies }) => [stock, copies]).sort()).toEqual([
      ['large', 1],
      ['small', 1],
    ])
    expect(long).toMatchObject({ bounds: { ply: 2 }, proved: true, mayCostLess: true })
    const alike = sound(aJob([boards('2000 x 1000 x 2')], { stock: [aSheet({ price: 40 })] }))
    expect(alike.proved).toBe(true)
    expect(alike.mayCostLess).toBeUndefined()
  })

  it('is taken from what is on hand before more like it is bought', () => {
    const stock = [aSheet({ id: 'bought', price: 60 }), aSheet({ id: 'there', price: 60, quantity: 2 })]
    const answer = sound(aJob([boards('2000 x 1000 x 5')], { stock, effort: 'glance' }))
    expect(answer.sheets.map(({ stock, copies }) => [stock, copies]).sort()).toEqual([
      ['bought', 3],
      ['there', 2],
    ])
  })

  it('runs out, and what is left is named with its number', () => {
    const answer = sound(aJob([boards('2000 x 1000 x 5')], { stock: [aSheet({ quantity: 2 })] }))
    expect(answer.unplaced).toEqual([
      { part: '2000 x 1000 x 5', quantity: 3, reason: 'all 2 sheets of ply on hand are used up' },
    ])
    expect(answer.proved).toBe(false)
  })

  it('names what is on hand by what it is: sheets, offcuts, or nothing at all', () => {
    const reasons = (...stock: SheetJob['stock']) =>
      sound(aJob([boards('2000 x 1000 x 9')], { stock, effort: 'glance' })).unplaced.map(({ reason }) => reason)
    const offcut = aSheet({ id: 'rest', length: 2100, width: 1100, offcut: true, quantity: 1 })
    expect(reasons(aSheet({ quantity: 3 }), offcut)).toEqual(['all 3 sheets and 1 offcut of ply on hand are used up'])
    expect(reasons(offcut)).toEqual(['the one offcut of ply on hand is used up'])
    expect(reasons(aSheet({ quantity: 0 }))).toEqual(['there are 0 sheets of ply on hand'])
  })

  it('is told by the sheets that are there, and then by the one that would do', () => {
    const side = boards('2052 x 579 x 3')
    const small = aSheet({ id: 'small', length: 1900 })
    const reasons = (large: Partial<JobStock>, more: Partial<SheetJob> = {}) =>
      sound(aJob([side], { stock: [small, aSheet({ id: 'large', ...large })], effort: 'glance', ...more })).unplaced
    const larger = '2052 x 579 is larger than 1900 x 1220, what sheet small gives less its trim; 1900 x 579 would fit'
    expect(reasons({ quantity: 0 })).toEqual([
      {
        ...{ part: side.id, quantity: 3 },
        reason: `${larger}; sheet large would give 2052 x 579, but there are 0 of it on hand`,
      },
    ])
    expect(reasons({ excluded: true })[0]?.reason).toBe(
      `${larger}; sheet large would give 2052 x 579, but it is excluded`,
    )
    expect(reasons({ quantity: 1 })).toEqual([
      {
        ...{ part: side.id, quantity: 1 },
        reason: 'the one sheet of ply on hand that 2052 x 579 fits on (large) is used up',
      },
    ])
    const pair = packSheets(aJob([boards('2052 x 579 x 2', { id: side.id })], { stock: [aSheet({ id: 'large' })] }))
    expect(reasons({ quantity: 1 }, { locked: pair.sheets })[0]?.reason).toBe(
      `${larger}; sheet large would give 2052 x 579, but locked sheets take all 1 of it on hand`,
    )
  })

  it('is too small although none of it is on hand: more of it would be of no use', () => {
    const stock = [aSheet({ length: 1900, quantity: 0 })]
    expect(sound(aJob([boards('2052 x 579 x 2')], { stock })).unplaced[0]?.reason).toBe(
      '2052 x 579 is larger than 1900 x 1220, what sheet sheet gives less its trim; 1900 x 579 would fit',
    )
  })

  it('says so where a part would fit if it was turned', () => {
    const answer = sound(aJob([boards('500 x 1000 x 1')], { stock: [aSheet({ length: 1000, width: 500 })] }))
    expect(answer.unplaced[0]?.reason).toBe(
      '500 x 1000 is larger than 1000 x 500, what sheet sheet gives less its trim; it would fit if it may be turned (rotate: true)',
    )
  })

  it('leaves out as few parts as it can when it runs out, however large they are', () => {
    // One sheet of 1000 x 500 holds the large part alone, or five of 200 x 500.
    const stock = [aSheet({ length: 1000, width: 500, quantity: 1 })]
    const answer = sound({ ...aJob([boards('1000 x 500 x 1'), boards('200 x 500 x 5')], { stock }), kerf: 0 })
    expect(answer.unplaced.map(({ part, quantity }) => [part, quantity])).toEqual([['1000 x 500 x 1', 1]])
  })

  it('leaves out no more parts when an offcut lies there too', () => {
    const { stock, parts, ...shop } = derive(demonstrationKitchen()).sheetJob
    const [sheet] = stock.filter(({ material }) => material === 'carcass')
    const asked = (more: SheetJob['stock']): SheetJob => ({
      ...{ ...shop, effort: 'glance', stock: [{ ...sheet!, quantity: 3 }, ...more] },
      parts: parts.filter(({ material }) => material === 'carcass'),
    })
    const leftWith = (...more: SheetJob['stock']) =>
      sound(asked(more)).unplaced.reduce((sum, { quantity }) => sum + quantity, 0)
    const offcut = aSheet({ id: 'rest', material: 'carcass', length: 800, width: 600, offcut: true, quantity: 1 })
    const alone = leftWith()
    expect(alone).toBeLessThanOrEqual(20)
    expect(leftWith(offcut)).toBeLessThanOrEqual(alone)
    expect(leftWith(offcut, { ...offcut, id: 'small', length: 400, width: 300 })).toBeLessThanOrEqual(alone)
  })

  it('is packed material by material', () => {
    const stock = [aSheet(), aSheet({ id: 'thin', material: 'hardboard' })]
    const parts = [boards('700 x 500 x 2'), { ...boards('600 x 400 x 3'), material: 'hardboard' }]
    const answer = sound(aJob(parts, { stock }))
    expect(answer.bounds).toEqual({ ply: 1, hardboard: 1 })
    expect(answer.sheets.map((sheet) => sheet.stock)).toEqual(['sheet', 'thin'])
  })
})

describe('the search', () => {
  const kitchen = aJob([
    boards('720 x 560 x 18'),
    boards('764 x 560 x 9'),
    boards('764 x 100 x 18', { rotate: true }),
    boards('760 x 540 x 9'),
    boards('720 x 300 x 14'),
    boards('564 x 300 x 14'),
  ])

  it('gives a whole answer first, and never a worse one after it', () => {
    let last = Number.POSITIVE_INFINITY
    for (const answer of packing(kitchen)) {
      if (!answer) continue
      expect(verify(kitchen, answer)).toEqual([])
      expect(sheetCount(answer)).toBeLessThanOrEqual(last)
      last = sheetCount(answer)
    }
    expect(last).toBeLessThan(Number.POSITIVE_INFINITY)
  })

  it('comes to the same bytes for the same job and seed', () => {
    const once = JSON.stringify(packSheets({ ...kitchen, seed: 7 }))
    expect(JSON.stringify(packSheets(structuredClone({ ...kitchen, seed: 7 })))).toBe(once)
  })

  it('ends early when the caller has waited long enough, with a sound answer', () => {
    const answer = packSheets(kitchen, () => true)
    expect(verify(kitchen, answer)).toEqual([])
  })

  it('draws the parts of the last sheet together, so that what is left is one long piece', () => {
    const job = aJob([boards('2440 x 1220 x 1'), boards('600 x 300 x 4'), boards('1200 x 300 x 2')])
    const last = sound(job).sheets.find(({ placements }) => placements.length > 1)!.root
    expect(last.kind === 'cut' && said(last.pieces.at(-1)!)).toBe(`offcut 2440 x ${1220 - 2 * (300 + 3)}`)
  })
})
