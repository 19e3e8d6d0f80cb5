import { describe, expect, it } from 'vitest'
import { randomFrom } from '../../../engine/basics/random'
import { listParts, RIP, type Way } from '../../../engine/sheets/cutTree'
import type { JobPart, SheetJob } from '../../../engine/sheets/job'
import type { SheetAnswer } from '../../../engine/sheets/layout'
import { lotsOf } from '../../../engine/sheets/lot'
import { checkJob, packSheets } from '../../../engine/sheets/pack'
import { goalOf } from '../../../engine/sheets/settledSheets'
import { sheetCount } from '../../../engine/sheets/tally'
import { verify } from '../../../engine/sheets/verify'
import { aJob, aSheet, boards } from './yard'

/** `1 door, 2 side side`: which sheet, counted from 1, each part lies on. */
function show({ sheets }: SheetAnswer): string {
  let number = 0
  const lines = sheets.flatMap(({ copies, placements }) =>
    Array.from(
      { length: copies },
      () =>
        `${++number} ${placements
          .map(({ part }) => part)
          .sort()
          .join(' ')}`,
    ),
  )
  return lines.join(', ')
}

const door: JobPart = { id: 'door', material: 'ply', length: 700, width: 500, quantity: 1, sheet: 2 }
const sides: JobPart = { ...boards('2400 x 1200 x 3'), id: 'side' }

describe('a part that asks for one sheet by its number', () => {
  it('lies on the sheet of that number, between others that are cut alike', () => {
    const job = aJob([sides, door])
    const answer = packSheets(job)
    expect(show(answer)).toBe('1 side, 2 door, 3 side, 4 side')
    expect(answer.proved).toBe(true)
    expect(verify(job, answer)).toEqual([])
  })

  it('shares it with what else asks for it, and with nothing that asks for another', () => {
    const job = aJob([door, { ...door, id: 'drawer' }, { ...door, id: 'flap', sheet: 1 }, boards('300 x 200 x 1')])
    const answer = packSheets(job)
    expect(show(answer)).toMatch(/^1 (300 x 200 x 1 )?flap, 2 (300 x 200 x 1 )?door drawer$/)
    // By area one sheet would do; two that are asked for are two.
    expect(answer).toMatchObject({ bounds: { ply: 2 }, proved: true })
  })

  it('lies on the last sheet where there are not as many', () => {
    expect(show(packSheets(aJob([sides, { ...door, sheet: 9 }])))).toBe('1 side, 2 side, 3 side, 4 door')
    const two = aJob([
      { ...door, sheet: 2 },
      { ...door, id: 'flap', sheet: 9 },
    ])
    expect(show(packSheets(two))).toBe('1 flap, 2 door')
  })

  it('is told where it does not go on beside what else must, and the rest is laid out', () => {
    const wide = { ...door, length: 1300, width: 1200, quantity: 2 }
    const job = aJob([wide, sides])
    const answer = packSheets(job)
    expect(verify(job, answer)).toEqual([])
    expect(answer.unplaced).toEqual([
      {
        part: 'door',
        quantity: 1,
        reason:
          'sheet 2 of ply has no room for 1300 x 1200 beside what else must come from it, or there is none left to open',
      },
    ])
    expect(show(answer)).toBe('1 side, 2 door, 3 side, 4 side')
    expect(answer.proved).toBe(false)
  })

  it('is told where that sheet is locked without it', () => {
    const first = packSheets(aJob([sides, door]))
    const locked = first.sheets.filter(({ placements }) => placements.some(({ part }) => part === 'door'))
    const job = aJob([sides, { ...door, quantity: 2 }], { locked, lockedAt: [1] })
    const answer = packSheets(job)
    expect(show(answer)).toBe('1 side, 2 door, 3 side, 4 side')
    expect(answer.unplaced).toEqual([
      { part: 'door', quantity: 1, reason: 'sheet 2 of ply, which it must come from, is locked without it' },
    ])
    expect(verify(job, answer)).toEqual([])
  })

  it('lies on the next sheet where a locked one stands at its number', () => {
    const locked = [{ ...packSheets(aJob([sides])).sheets[0]!, copies: 1 }]
    const job = aJob([sides, door], { locked, lockedAt: [1] })
    expect(show(packSheets(job))).toBe('1 side, 2 side, 3 door, 4 side')
  })

  it('is of a whole sheet where there is one, and of one that has room for all that ask for it', () => {
    const offcut = aSheet({ id: 'rest', length: 800, width: 600, offcut: true, quantity: 1 })
    const small = aSheet({ id: 'small', length: 1000, width: 800, price: 1 })
    const parts = [door, { ...door, id: 'drawer' }]
    const large = aSheet({ price: 9 })
    const answer = packSheets(aJob(parts, { stock: [offcut, small, large] }))
    expect(answer.sheets.map(({ stock }) => stock)).toEqual(['sheet'])
    expect(answer.unplaced).toEqual([])
  })

  it('holds through a search by programmes, and does not cost a sheet where one sheet holds them', () => {
    const random = randomFrom(11)
    const size = (least: number, most: number) => Math.round((least + random() * (most - least)) / 10) * 10
    const parts = Array.from({ length: 30 }, (_, at): JobPart => {
      const [length, width, quantity] = [size(300, 1100), size(150, 590), 1 + Math.floor(random() * 3)]
      return {
        id: `p${at}`,
        material: 'ply',
        length,
        width,
        quantity,
        ...(at % 10 === 0 ? { sheet: 1 + at / 10 } : {}),
      }
    })
    const job: SheetJob = { ...aJob(parts), effort: 'thorough' }
    const answer = packSheets(job)
    const free = packSheets({ ...job, parts: parts.map(({ sheet: _, ...part }) => part) })
    expect(verify(job, answer)).toEqual([])
    expect(answer.unplaced).toEqual([])
    expect(sheetCount(answer)).toBeLessThanOrEqual(sheetCount(free) + 1)
    expect(answer.bounds.ply).toBeLessThanOrEqual(sheetCount(answer))
  })
})

describe('a job with parts that ask for sheets', () => {
  it.each([
    ['sheet', 0, 'parts[0].sheet is 0; it must be a whole number from 1 to 10000'],
    ['sheet', 2.5, 'parts[0].sheet is 2.5; it must be a whole number from 1 to 10000'],
  ])('is refused whose %s is %j', (field, value, words) => {
    const read = checkJob(aJob([{ ...door, [field]: value }]))
    expect(read.ok ? 'read' : read.message).toBe(words)
  })

  it('is refused where boards of one bank ask for different ones', () => {
    const bank = { id: 'fronts', along: 'length' as const }
    const read = checkJob(
      aJob([
        { ...door, bank },
        { ...door, id: 'b', bank, sheet: 3 },
      ]),
    )
    expect(read.ok ? 'read' : read.message).toContain('must agree in along, material, rotate, from, sheet and width')
  })

  it('is refused where a locked sheet has parts of two', () => {
    const { sheets } = packSheets(aJob([door, { ...door, id: 'flap' }]))
    const asked = aJob([door, { ...door, id: 'flap', sheet: 3 }], { locked: sheets })
    const read = checkJob(asked)
    expect(read.ok ? 'read' : read.message).toBe('parts of sheets 2 and 3 of ply lie on one sheet')
  })

  it('is judged by the verifier: one sheet for one number, and the number that it has', () => {
    const two = aJob([{ ...door, quantity: 2 }, sides])
    const loose = packSheets(aJob([{ ...sides, id: 'door', length: 700, width: 500, quantity: 2 }, sides]))
    const split = packSheets(
      aJob([
        { ...door, sheet: 1 },
        { ...door, id: 'flap', sheet: 2 },
      ]),
    )
    const named = JSON.parse(JSON.stringify(split).replaceAll('flap', 'door')) as SheetAnswer
    expect(verify(aJob([{ ...door, quantity: 2 }]), named).join()).toContain('lie on more than one sheet')
    expect(verify(two, { ...loose, sheets: [...loose.sheets].reverse() }).join()).toMatch(
      /sheet 2 of ply is sheet \d of 4/,
    )
  })
})

describe('sheets of a programme that a search sets out from', () => {
  it('are those that parts ask for, without what asks for another, and leave room for those to come', () => {
    // Two strips of 600 across a sheet of 1220, each with three boards of 800.
    const third = { ...boards('800 x 600 x 6'), id: 'plain' }
    const [lot] = lotsOf(aJob([third, { ...third, id: 'one', sheet: 1 }, { ...third, id: 'two', sheet: 2 }]))
    const { length: along, width: across } = lot!.kinds[0]!
    const strip = (...kinds: number[]) => ({
      across,
      sections: kinds.map((kind) => ({ along, kinds: [{ kind, across, turned: false }] })),
    })
    const way = RIP as Way
    const plain = { way, worth: 1, strips: [strip(0, 0, 0), strip(0, 0, 0)] }
    const mixed = { way, worth: 1, strips: [strip(1, 1, 1), strip(2, 1, 1)] }
    const { boards: set, pool } = goalOf(lot!, [plain, mixed, mixed], 3)
    const on = set.map(({ root, sheet }) => {
      const parts: number[] = []
      listParts(root, parts)
      return `sheet ${sheet}: ${parts.join(' ')}`
    })
    expect(on).toEqual(['sheet undefined: 0 0 0 0 0 0', 'sheet 1: 1 1 1 1 1', 'sheet 2: '])
    expect(pool).toEqual([1, 2, 2, 2, 2, 2, 2])
  })
})
