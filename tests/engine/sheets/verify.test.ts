import { describe, expect, it } from 'vitest'
import type { CutPiece, SheetAnswer } from '../../../engine/sheets/layout'
import { packSheets } from '../../../engine/sheets/pack'
import { tallyOf } from '../../../engine/sheets/tally'
import { verify } from '../../../engine/sheets/verify'
import { ticks } from '../../../engine/units/length'
import { aJob, aSheet, boards } from './yard'

const job = aJob([boards('1000 x 600 x 2'), boards('700 x 300 x 3')], {
  offcutLeast: { length: 300, width: 150 },
  stock: [aSheet({ quantity: 2, trim: { length: 10, width: 10 } })],
})
const answer = packSheets(job)

/** The answer with something changed in a copy of it. */
function spoiled(spoil: (copy: SheetAnswer) => void): string {
  const copy = structuredClone(answer)
  spoil(copy)
  return verify(job, copy).join('; ')
}

type Loose<Thing> = { -readonly [Key in keyof Thing]: Thing[Key] }
const loose = <Thing>(thing: Thing) => thing as Loose<Thing>
const rootOf = (copy: SheetAnswer) => copy.sheets[0]!.root as CutPiece

describe('the verifier', () => {
  it('finds nothing wrong with a sound answer', () => {
    expect(verify(job, answer)).toEqual([])
  })

  it('misses a part that was dropped', () => {
    expect(spoiled((copy) => (loose(copy).sheets = []))).toContain('is there 0 times')
  })

  it('sees a piece moved by the hundredth part of a millimetre', () => {
    expect(
      spoiled((copy) => {
        loose(rootOf(copy).pieces[0]!).y += 0.01
      }),
    ).toContain('edge to edge')
  })

  it('sees a piece that grew into the kerf', () => {
    expect(
      spoiled((copy) => {
        loose(rootOf(copy).pieces[0]!).width += 1
      }),
    ).not.toBe('')
  })

  it('sees a root that takes the trim for sheet', () => {
    expect(
      spoiled((copy) => {
        loose(copy.sheets[0]!.root).x = 0
      }),
    ).toContain('less its trim')
  })

  it('sees placements that are not the tree', () => {
    expect(
      spoiled((copy) => {
        loose(copy.sheets[0]!.placements[0]!).x += 1
      }),
    ).toContain('not the parts of its tree')
  })

  it('sees more sheets than there are', () => {
    expect(
      spoiled((copy) => {
        loose(copy.sheets[0]!).copies = 3
      }),
    ).toContain('there are 2')
  })

  it('sees a part turned against its grain', () => {
    const turned = { ...job, parts: job.parts.map((part) => ({ ...part, rotate: true })) }
    const free = packSheets({ ...turned, parts: [{ ...turned.parts[0]!, length: 600, width: 1300, quantity: 1 }] })
    const strict = { ...job, parts: [{ ...job.parts[0]!, length: 600, width: 1300, quantity: 1 }] }
    expect(verify(strict, free).join()).toContain('may not be')
  })

  it('sees a direction too many, and the wrong first one', () => {
    const three = packSheets(aJob([boards('1500 x 1200 x 1'), boards('900 x 590 x 2')]))
    const parts = [boards('1500 x 1200 x 1'), boards('900 x 590 x 2')]
    expect(three.sheets).toHaveLength(1)
    expect(verify(aJob(parts, { stages: 2, firstCut: 'rip' }), three).join()).not.toBe('')
  })

  it('sees waste called an offcut', () => {
    expect(verify({ ...job, offcutLeast: { length: 5000, width: 5000 } }, answer).join()).toContain('is called offcut')
  })

  it('sees a proof that does not hold', () => {
    expect(
      spoiled((copy) => {
        loose(copy).bounds = { ply: 5 }
      }),
    ).toContain('5')
  })
})

describe('where the area of a sheet goes', () => {
  it('adds up to the sheet: parts, kerf, trim, offcuts and waste', () => {
    for (const layout of answer.sheets) {
      const { parts, kerf, trim, offcuts, waste } = tallyOf(job, layout)
      expect(parts + kerf + trim + offcuts + waste).toBe(ticks(2440) * ticks(1220))
      expect(trim).toBe(ticks(2440) * ticks(1220) - ticks(2440 - 2 * 10) * ticks(1220 - 2 * 10))
    }
  })
})
