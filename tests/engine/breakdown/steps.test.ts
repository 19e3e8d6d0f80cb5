import { describe, expect, it } from 'vitest'
import type { PartId } from '../../../engine/basics/id'
import { randomFrom } from '../../../engine/basics/random'
import { assignParts } from '../../../engine/breakdown/assign'
import { type BreakdownInput, breakdownOf } from '../../../engine/breakdown/steps'
import type { Piece } from '../../../engine/sheets/layout'
import { inch } from '../../../engine/units/length'
import {
  type Cutting,
  countsOf,
  crosscut,
  OFFCUT,
  PLY,
  part,
  placementsOf,
  replay,
  rip,
  SHEET,
  SHOP,
  type Sizes,
  sheets,
  showStep,
  WASTE,
} from './sawyer'

function input(given: ReturnType<typeof sheets>, shop: Partial<BreakdownInput['shop']> = {}): BreakdownInput {
  const materials = { m1: PLY } as unknown as BreakdownInput['materials']
  return { ...given, shop: { ...SHOP, ...shop }, marks: new Map(), materials }
}

const TWO_STRIPS = rip(crosscut(part('A'), part('A'), OFFCUT), crosscut(part('B'), WASTE), OFFCUT)
const SIZES: Sizes = { A: [768, 580], B: [1000, 320] }

describe('the breakdown of a sheet', () => {
  it('straightens an edge, rips from the clean edge, squares an end and crosscuts to the stop', () => {
    const { steps } = breakdownOf(input(sheets(SIZES, [[1, TWO_STRIPS]])))
    expect(steps.map(showStep)).toEqual([
      // 10 off, of which the blade takes 3
      'trim rail: 1 of 2440 x 1220 | 1 piece 2440 x 1210 | 1 waste 2440 x 7',
      // 1210 - 580 - 3
      'rip 580: 1 of 2440 x 1210 | 1 strip 2440 x 580 | 1 piece 2440 x 627',
      // 627 - 320 - 3, with the far factory edge still on it
      'rip 320: 1 of 2440 x 627 | 1 strip 2440 x 320 | 1 offcut 2440 x 304',
      'square null: 1 of 2440 x 580 | 1 piece 2430 x 580 | 1 waste 7 x 580'.replace('null', 'bench'),
      'square bench: 1 of 2440 x 320 | 1 piece 2430 x 320 | 1 waste 7 x 320',
      'crosscut 1000: 1 of 2430 x 320 | 1 part 1000 x 320 | 1 waste 1427 x 320',
      // 2430 - 2 x (768 + 3)
      'crosscut 768: 1 of 2430 x 580 | 2 part 768 x 580 | 1 offcut 888 x 580',
    ])
  })

  it('counts copies out and takes equal pieces at one setting in one step', () => {
    const { steps } = breakdownOf(
      input(sheets(SIZES, [[3, TWO_STRIPS]]), { minutes: { perSetting: 9, perCut: 1, perSheet: 1 } }),
    )
    expect(steps.filter(({ kind }) => kind === 'rip').map((step) => [step.setting, step.count, step.sheets])).toEqual([
      [580, 3, [1, 2, 3]],
      [320, 3, [1, 2, 3]],
    ])
    // A sheet is numbered as soon as it lies there, so that it is known again.
    expect(steps[0]!.write).toEqual(['sheet 1', 'sheet 2', 'sheet 3'])
    expect(steps[1]!.takes.name).toBe('sheets 1 to 3')
    expect(steps[1]!.write).toEqual(['1a', '2a', '3a'])
  })

  it('makes each setting once for all sheets, whatever order they are drawn in', () => {
    const upsideDown = rip(crosscut(part('B'), WASTE), crosscut(part('A'), part('A'), OFFCUT), OFFCUT)
    const shop = { minutes: { perSetting: 30, perCut: 1, perSheet: 1 } }
    const plan = breakdownOf(
      input(
        sheets(SIZES, [
          [1, TWO_STRIPS],
          [1, upsideDown],
        ]),
        shop,
      ),
    )
    expect(plan.order).toBe('setting by setting')
    // guides at 580 and 320; stop at 1000 and 768
    expect(plan.settings).toBe(2 + 2)
  })

  it('proposes the quicker order: sheet by sheet where sheets are tedious to lift', () => {
    const heavy = { minutes: { perSetting: 1, perCut: 1, perSheet: 60 } }
    const plan = breakdownOf(input(sheets(SIZES, [[4, TWO_STRIPS]]), heavy))
    expect(plan.order).toBe('sheet by sheet')
    expect(plan.minutes).toBeLessThan(plan.minutesOtherwise)
    // The guides stand at 320 after the first sheet, so the second begins there: 580 320, 320 580, 580 320, 320 580.
    expect(plan.steps.filter(({ kind }) => kind === 'rip').map(({ setting }) => setting)).toEqual([
      580, 320, 320, 580, 580, 320, 320, 580,
    ])
  })

  it('adds up its minutes from cuts, settings and the share of a sheet that is laid down', () => {
    const plan = breakdownOf(
      input(sheets(SIZES, [[1, TWO_STRIPS]]), { minutes: { perSetting: 2, perCut: 1.5, perSheet: 6 } }),
    )
    // one trim, two rips, two ends squared, one B and two As; guides 580 and 320, stop 1000 and 768; one blade change; one sheet
    expect(plan.minutes).toBe((1 + 2 + 2 + 3) * 1.5 + (4 + 1) * 2 + 6)
  })

  it('changes the blade once for rips and crosscuts, and once more for re-rips', () => {
    const rerip = rip(crosscut(part('A'), rip(part('B'), part('B'), WASTE)), OFFCUT)
    const sizes: Sizes = { A: [768, 580], B: [500, 200] }
    expect(breakdownOf(input(sheets(SIZES, [[2, TWO_STRIPS]]))).bladeChanges).toBe(1)
    const plan = breakdownOf(
      input(
        sheets(sizes, [
          [1, rerip],
          [1, rerip],
        ]),
      ),
    )
    expect(plan.bladeChanges).toBe(2)
    expect(plan.steps.at(-1)).toMatchObject({ kind: 'rerip', setting: 200, count: 2, cuts: 4 })
  })

  it('starts with the crosscut blade when every sheet is crosscut first', () => {
    const plan = breakdownOf(input(sheets({ A: [768, 580] }, [[1, crosscut(rip(part('A'), WASTE), OFFCUT)]])))
    expect(plan.steps.map(({ kind, blade }) => `${kind} with the ${blade} blade`)).toEqual([
      'trim with the crosscut blade',
      'square with the crosscut blade',
      'crosscut with the crosscut blade',
      'rip with the rip blade',
    ])
    expect(plan.steps.map(({ write }) => write.join())).toEqual(['sheet 1', '', '1a,1b', 'A'])
  })

  it('takes the factory edges off a part that fills its sheet', () => {
    const given = sheets({ A: [2420, 1200] }, [[1, part('A')]])
    const { steps } = breakdownOf(input(given, { guides: { least: 190, greatest: 1300 } }))
    expect(steps.map(showStep)).toEqual([
      'trim rail: 1 of 2440 x 1220 | 1 piece 2440 x 1210 | 1 waste 2440 x 7',
      'rip 1200: 1 of 2440 x 1210 | 1 strip 2440 x 1200 | 1 waste 2440 x 7',
      'square rail: 1 of 2440 x 1200 | 1 piece 2430 x 1200 | 1 waste 7 x 1200',
      'crosscut rail: 1 of 2430 x 1200 | 1 part 2420 x 1200 | 1 waste 7 x 1200',
    ])
  })

  it('leaves three 12 in strips and 11 5/8 in of a 48 in sheet ripped with a 1/8 in blade', () => {
    // Source: a blade maker's blog on kerf: 48 in gives three of 12 in and one of 11 5/8 in.
    const stock = { ...SHEET, length: inch(96), width: inch(48), trim: { length: 0, width: 0 } }
    const given = sheets(
      { A: [inch(96), inch(12)] },
      [[1, rip(part('A'), part('A'), part('A'), OFFCUT)]],
      inch(0.125),
      stock,
    )
    const { steps } = breakdownOf(input(given))
    expect(steps.map(showStep)).toEqual([
      `rip ${inch(12)}: 1 of ${inch(96)} x ${inch(48)} | 3 part ${inch(96)} x ${inch(12)} | 1 offcut ${inch(96)} x ${inch(11.625)}`,
    ])
  })

  it('leaves two halves of 14 15/16 in of a 30 in stick cut in the middle', () => {
    // Source: a blade maker's blog: both halves of a 30 in stick are 14-15/16 in after a 1/8 in kerf.
    const half = inch(14 + 15 / 16)
    const stock = { ...SHEET, length: inch(30), width: 100, trim: { length: 0, width: 0 } }
    const given = sheets({ A: [half, 100] }, [[1, crosscut(part('A'), part('A'))]], inch(0.125), stock)
    expect(breakdownOf(input(given)).steps.map(showStep)).toEqual([
      `crosscut ${half}: 1 of ${inch(30)} x 100 | 2 part ${half} x 100`,
    ])
  })

  it('minds what is heavy, narrow, wide or longer than the rail', () => {
    const narrow = rip(crosscut(part('K'), WASTE), crosscut(part('W'), WASTE), OFFCUT)
    const given = sheets({ K: [1000, 75], W: [900, 700] }, [[1, narrow]])
    const { steps } = breakdownOf(input(given, { railLength: 1400 }))
    const said = (kind: string) =>
      steps.filter((step) => step.kind === kind).map(({ tool, setting, cautions }) => ({ tool, setting, cautions }))
    // 2.44 m x 1.22 m x 0.018 m x 685 kg/m3 = 36.7 kg
    expect(said('trim')[0]!.cautions).toEqual([
      'Weighs 36.7 kg; one person lifts 25 kg. Two people, or a carrier.',
      'The cut is 2440 mm long and the rail 1400 mm: join a rail before you cut.',
    ])
    expect(said('rip').map(({ tool, setting }) => [tool, setting])).toEqual([
      ['rail', null],
      ['guides', 75],
    ])
    // 1210 wide less 10 at the far edge less 700 less the kerf of 3
    expect(said('rip')[0]!.cautions).toContain(
      '700 mm is wider than the guides reach (650 mm): follow a line, with the piece held down; or, from the other side, straighten the far edge by 10 mm and set the guides to 497 mm.',
    )
    expect(said('rip')[1]!.cautions).toContain(
      '75 mm is narrower than the guides reach (190 mm): put their attachment on.',
    )
    expect(said('crosscut').map(({ tool }) => tool)).toEqual(['bench', 'rail'])
  })

  it('says what to do in plain words', () => {
    const { steps, cautions } = breakdownOf(input(sheets(SIZES, [[1, TWO_STRIPS]])))
    expect(steps.map(({ text }) => text)).toEqual([
      'Straighten one long edge of sheet 1 along the rail: take 10 mm off. Mark this edge and measure from no other.',
      'Set both guides to 580 mm and rip sheet 1, once.',
      'Set both guides to 320 mm and rip rest of sheet 1, once.',
      'Square one end of 1a: take 10 mm off. Mark this end and measure from no other.',
      'Square one end of 1b: take 10 mm off. Mark this end and measure from no other.',
      'Set the stop to 1000 mm and crosscut 1b, once.',
      'Set the stop to 768 mm and crosscut 1a, 2 times.',
    ])
    expect(cautions[0]).toMatch(/^The instructions of the makers/)
  })

  it('is nothing for no sheets', () => {
    expect(breakdownOf(input(sheets({}, [])))).toMatchObject({ steps: [], settings: 0, minutes: 0, cautions: [] })
  })
})

describe('the parts on the sheets', () => {
  it('are dealt out in the order of their row, sheet after sheet', () => {
    const { cutList, answer } = sheets(SIZES, [[2, TWO_STRIPS]])
    const placed = assignParts(cutList, answer)
    expect(placed.map(({ part, sheet, x, y }) => `${part} on ${sheet} at ${x}, ${y}`)).toEqual([
      'A-1 on 1 at 10, 10',
      // 10 + 768 + 3
      'A-2 on 1 at 781, 10',
      // 10 + 580 + 3
      'B-1 on 1 at 10, 593',
      'A-3 on 2 at 10, 10',
      'A-4 on 2 at 781, 10',
      'B-2 on 2 at 10, 593',
    ])
  })

  it('are marked by the step that frees them, with the mark of the cabinet', () => {
    const given = input(sheets(SIZES, [[1, TWO_STRIPS]]))
    const marks = new Map([
      ['A-1', 'B1-LS'],
      ['A-2', 'B1-RS'],
      ['B-1', 'B1-BT'],
    ] as [PartId, string][])
    const { steps } = breakdownOf({ ...given, marks })
    expect(steps.slice(-2).map(({ write }) => write)).toEqual([['B1-BT'], ['B1-LS', 'B1-RS', '1a3']])
  })
})

describe('a replay of the steps', () => {
  it.each(Array.from({ length: 60 }, (_, seed) => seed))(
    'leaves exactly the parts, offcuts and waste of layout %i',
    (seed) => {
      const given = randomSheets(seed)
      for (const minutes of [
        { perSetting: 99, perCut: 1, perSheet: 0 },
        { perSetting: 0, perCut: 1, perSheet: 99 },
      ]) {
        const floor = replay(breakdownOf(input(given, { minutes })), given.job, given.answer)
        expect(floor.filter(({ kind }) => ['sheet', 'strip', 'piece'].includes(kind))).toEqual([])
        const tree = given.answer.sheets.flatMap(({ root, copies }) =>
          Array.from({ length: copies }, () => leavesOf(root)).flat(),
        )
        expect(countsOf(floor.filter(({ kind }) => kind === 'part'))).toEqual(
          countsOf(tree.filter(({ kind }) => kind === 'part')),
        )
        // An offcut that reaches the far edges of the sheet still has its factory edges; what is trimmed is waste besides.
        expect(countsOf(floor.filter(({ kind }) => kind === 'offcut'))).toEqual(
          countsOf(tree.filter(({ kind }) => kind === 'offcut')),
        )
        const strays = countsOf(tree.filter(({ kind }) => kind === 'waste'))
        expect(
          strays.filter(
            (waste) => !countsOf(floor.filter(({ kind }) => kind === 'waste')).some((there) => covers(there, waste)),
          ),
        ).toEqual([])
      }
    },
  )

  it('fails when a step is left out', () => {
    const given = sheets(SIZES, [[1, TWO_STRIPS]])
    const plan = breakdownOf(input(given))
    expect(() => replay({ ...plan, steps: plan.steps.slice(1) }, given.job, given.answer)).toThrow('there is none')
  })
})

/** `4 of 7 x 580` covers `3 of 7 x 580`. */
function covers(there: string, wanted: string): boolean {
  const [have, size] = there.split(' of ')
  const [need, same] = wanted.split(' of ')
  return size === same && Number(have) >= Number(need)
}

/** Leaves of a tree as they really come off the saw: at the far edges, the factory edge is still on what is left over. */
function leavesOf(root: Piece): { kind: Piece['kind']; length: number; width: number }[] {
  const far = { x: root.x + root.length, y: root.y + root.width }
  function walk(piece: Piece, hasEnds: boolean): ReturnType<typeof leavesOf> {
    if (piece.kind === 'cut') return piece.pieces.flatMap((child) => walk(child, hasEnds && piece.direction === 'rip'))
    if (piece.kind === 'part') return [piece]
    const { kind, x, y, length, width } = piece
    const ends = (hasEnds ? 10 : 0) + (x + length === far.x ? 10 : 0)
    return [{ kind, length: length + ends, width: width + (y + width === far.y ? 10 : 0) }]
  }
  return walk(root, true)
}

/** Sheets of strips of equal or smaller parts, some of them ripped again: rips, crosscuts, re-rips. */
function randomSheets(seed: number) {
  const random = randomFrom(seed)
  const between = (least: number, most: number) => least + Math.floor(random() * (most - least) * 4) / 4
  const sizes: Record<string, readonly [number, number]> = {}
  const name = (length: number, width: number) => {
    const id = `P${length}x${width}`
    sizes[id] = [length, width]
    return part(id)
  }
  const strip = (width: number): Cutting => {
    const pieces: Cutting[] = []
    for (let room = 2420 - 153; room > 500; ) {
      const length = between(200, Math.min(900, room - 50))
      const isRipped = random() < 0.3 && width > 200
      pieces.push(isRipped ? rip(name(length, between(60, width / 2)), WASTE) : name(length, width))
      room -= length + 3
    }
    // The widest piece of a strip sets its width.
    return crosscut(name(between(100, 150), width), ...pieces, random() < 0.5 ? OFFCUT : WASTE)
  }
  const layout = (): Cutting => {
    const strips: Cutting[] = []
    for (let room = 1200; room > 260; ) {
      const width = between(80, Math.min(600, room - 20))
      strips.push(strip(width))
      room -= width + 3
    }
    return rip(...strips, OFFCUT)
  }
  const layouts = Array.from({ length: 1 + (seed % 3) }, (_, at) => [1 + ((seed + at) % 3), layout()] as const)
  const given = sheets(sizes, layouts)
  expect(
    given.answer.sheets.flatMap(({ root }) => placementsOf(root)).every(({ x, length }) => x + length <= 2430),
  ).toBe(true)
  return given
}
