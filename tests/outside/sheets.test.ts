import { describe, expect, it } from 'vitest'
import type { SheetJob } from '../../engine/sheets/job'
import { packSheets } from '../../engine/sheets/pack'
import { sheetCount } from '../../engine/sheets/tally'
import { inch } from '../../engine/units/length'

/** Strips as long as the sheet, ripped with a kerf of 1/8 in. */
function ripped(sheetWidth: number, strip: number, quantity: number): SheetJob {
  return {
    kerf: inch(1 / 8),
    stock: [{ id: 'sheet', material: 'ply', length: inch(96), width: inch(sheetWidth) }],
    parts: [{ id: 'strip', material: 'ply', length: inch(96), width: inch(strip), quantity }],
  }
}

function leftWidth(job: SheetJob): number {
  const { root } = packSheets(job).sheets[0]!
  return root.kind === 'cut' ? root.pieces.at(-1)!.width : Number.NaN
}

describe('strips ripped from a sheet', () => {
  it("leave 3 1/4 in after two of 22 1/4 in (source: 'Building Base Cabinets', ana-white.com, 2013-11-14)", () => {
    expect(leftWidth(ripped(48, 22.25, 2))).toBe(inch(48 - 2 * 22.25 - 2 / 8))
  })

  it("leave 11 5/8 in after three of 12 in (source: 'Shelving/storage projects, part 2', survivalblog.com)", () => {
    expect(leftWidth(ripped(48, 12, 3))).toBe(inch(48 - 3 * (12 + 1 / 8)))
    expect(sheetCount(packSheets(ripped(48, 12, 4)))).toBe(2)
  })
})

describe('a stick of 30 in cut in the middle', () => {
  it("gives two halves of 14 15/16 in (source: a blade maker's blog: 'both halves ... are 14-15/16 inches')", () => {
    const stick = (half: number) => ripped(30, half, 2)
    expect(sheetCount(packSheets(stick(14 + 15 / 16)))).toBe(1)
    expect(sheetCount(packSheets(stick(14 + 15 / 16 + 1 / 128)))).toBe(2)
  })
})
