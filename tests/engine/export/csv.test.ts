import { describe, expect, it } from 'vitest'
import type { MaterialId, PartId, RowKey } from '../../../engine/basics/id'
import type { CutList } from '../../../engine/cutlist/row'
import { csvOf, cutListCsv } from '../../../engine/export/csv'
import type { Material } from '../../../engine/project/document'
import { inch } from '../../../engine/units/length'

describe('a table of comma-separated values', () => {
  it('ends every line with CRLF and quotes what holds a comma, a quote or a line end', () => {
    expect(
      csvOf([
        ['a', 'b'],
        ['1,5', 'say "hi"'],
        ['two\nlines', 3],
      ]),
    ).toBe('a,b\r\n"1,5","say ""hi"""\r\n"two\nlines",3\r\n')
  })

  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\tx', '\rx', '\nx', '\uFEFF=1', ' =1', '＝1', '＋1', '－1', '＠a'])(
    'keeps %j from being a formula',
    (text) => {
      expect(
        csvOf([[text]])
          .replace(/^"/, '')
          .startsWith("'"),
      ).toBe(true)
    },
  )

  it('leaves numbers numbers, also below zero', () => {
    expect(csvOf([[-1.5, -0, Number.NaN]])).toBe('-1.5,0,\r\n')
  })

  it('leaves text alone that is no formula', () => {
    expect(csvOf([['B3-LS', '30 1/4', 'a=b']])).toBe('B3-LS,30 1/4,a=b\r\n')
  })
})

describe('the cut list as a file', () => {
  const materials = { m1: { name: '18 mm ply, birch' } as Material } as Readonly<Record<MaterialId, Material>>
  const list: CutList = {
    rows: [
      {
        key: 'k' as RowKey,
        mark: 'A1',
        name: '=side',
        material: 'm1' as MaterialId,
        length: inch(30.25),
        width: inch(0.75),
        thickness: 18,
        quantity: 4,
        isGrainBound: true,
        bank: null,
        from: null,
        outline: null,
        insideBand: 0,
        bandedEdges: { long: 1, ends: 0, thickness: 1 },
        isLate: false,
        parts: [],
        measured: [],
        cabinets: ['B1', 'B2'],
      },
    ],
    totals: [],
  }

  it('gives millimetres as numbers', () => {
    // 30.25 x 25.4 = 768.35, 0.75 x 25.4 = 19.05: shown to half a millimetre
    const line = cutListCsv(list, materials, { unit: 'mm', step: 0.5 }).split('\r\n')[1]
    expect(line).toBe(`A1,'=side,4,768.5,19,18,"18 mm ply, birch",along the length,1,0,no,1,B1 B2,first,drawn size`)
  })

  it('tells which boards are cut late, and how many of a row are made to what was measured', () => {
    const late = { ...list.rows[0]!, isLate: true, measured: ['k1/door-1' as PartId] }
    const line = cutListCsv({ ...list, rows: [late] }, materials, { unit: 'mm', step: 0.5 }).split('\r\n')[1]
    expect(line).toMatch(/,late,measured opening: 1$/)
  })

  it('tells the run of grain that a board lies in, and its place there', () => {
    const run = { ...list.rows[0]!, bank: { id: 'B1 to B3 fronts', along: 'length', place: 2 } as const }
    const line = cutListCsv({ ...list, rows: [run] }, materials, { unit: 'mm', step: 0.5 }).split('\r\n')[1]
    expect(line).toContain('"along the length, runs on: B1 to B3 fronts, place 2"')
  })

  it('gives inches as fractions that a spreadsheet does not take for dates', () => {
    const [head, line] = cutListCsv(list, materials, { unit: 'in', step: 32 }).split('\r\n')
    expect(head).toContain('Length (in),Width (in)')
    expect(line).toContain(',30 1/4,0 3/4,0 23/32,')
  })
})
