import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../../engine/basics/id'
import { weightOf } from '../../../engine/breakdown/lift'
import {
  buyList,
  costOfLines,
  inOrderOf,
  materialCosts,
  onHandList,
  sheetCost,
  takenLines,
  yieldOfSheet,
} from '../../../engine/estimate/price'
import type { Material } from '../../../engine/project/document'
import type { SheetJob } from '../../../engine/sheets/job'
import type { SheetAnswer, SheetLayout } from '../../../engine/sheets/layout'

const JOB: SheetJob = {
  kerf: 3,
  stock: [
    { id: 's1', material: 'ply', length: 2440, width: 1220, price: 68.1 },
    { id: 's2', material: 'ply', length: 900, width: 400, price: 0, offcut: true, quantity: 1 },
    { id: 's3', material: 'back', length: 2440, width: 1220, price: 31 },
    { id: 's4', material: 'front', length: 2440, width: 1220, price: 84 },
  ],
  parts: [],
}

function sheet(stock: string, copies: number): SheetLayout {
  const root = { kind: 'part', part: 'A', rotated: false, x: 0, y: 0, length: 1220, width: 610 } as const
  return { stock, copies, root, placements: [] }
}

const ANSWER: SheetAnswer = {
  sheets: [sheet('s3', 1), sheet('s1', 2), sheet('s2', 1), sheet('s1', 1)],
  unplaced: [],
  bounds: {},
  proved: false,
}

describe('what the sheets cost', () => {
  it('counts copies and gathers equal sheets on one line', () => {
    const lines = takenLines(JOB, ANSWER).map(({ stock, sheets, cost, isOffcut }) => [stock.id, sheets, cost, isOffcut])
    expect(lines).toEqual([
      ['s1', 2 + 1, 204.3, false],
      ['s2', 1, 0, true],
      ['s3', 1, 31, false],
    ])
  })

  it('tells what is to be bought from what is on hand: counted sheets and offcuts', () => {
    const [ply, ...others] = JOB.stock
    const job = { ...JOB, stock: [{ ...ply!, quantity: 7 }, ...others] }
    expect(buyList(job, ANSWER).map(({ stock }) => stock.id)).toEqual(['s3'])
    expect(onHandList(job, ANSWER).map(({ stock }) => stock.id)).toEqual(['s1', 's2'])
    // Three sheets at 68.10 lie there already; one at 31 is to be bought.
    expect(costOfLines(onHandList(job, ANSWER))).toBe(204.3)
    expect(costOfLines(buyList(job, ANSWER))).toBe(31)
  })

  it('is listed in the order of the materials, also where one of them is bought in two sizes', () => {
    const stock = [...JOB.stock, { id: 's9', material: 'front', length: 3050, width: 1220, price: 99 }]
    const answer = { ...ANSWER, sheets: [...ANSWER.sheets, sheet('s9', 1), sheet('s4', 2)] }
    // The thickest by name first: a stock of the front that came last stands beside the other.
    const boards = [
      ['back', 6],
      ['ply', 18],
      ['front', 19],
    ] as const
    const materials = Object.fromEntries(boards.map(([id, nominal]) => [id, { id, nominal } as unknown as Material]))
    const lines = inOrderOf(materials, takenLines({ ...JOB, stock }, answer))
    expect(lines.map((line) => line.stock.id)).toEqual(['s4', 's9', 's1', 's2', 's3'])
  })

  it('is the sum of its lines, without float dust', () => {
    expect(sheetCost(JOB, ANSWER)).toBe(235.3)
    expect(materialCosts(JOB, ANSWER)).toEqual({ ply: 204.3, back: 31 })
  })
})

describe('the yield of a sheet', () => {
  it('is the share that becomes parts: half the length and half the width make a quarter', () => {
    expect(yieldOfSheet(sheet('s1', 2), JOB.stock[0]!)).toBe(0.25)
  })
})

describe('the weight of boards', () => {
  it('is 36.7 kg for a sheet of 18 mm birch ply', () => {
    // Source: a birch plywood datasheet: 18 mm, 1220 x 2440, 36.7 kg.
    const materials = { ply: { density: 685 } as Material } as Readonly<Record<MaterialId, Material>>
    const board = { material: 'ply' as MaterialId, length: 2440, width: 1220, thickness: 18 }
    expect(weightOf([board], materials)).toBeCloseTo(36.7, 1)
    expect(weightOf([board, board], materials)).toBeCloseTo(2 * 36.7, 1)
  })
})
