import { describe, expect, it } from 'vitest'
import type { PartId } from '../../../engine/basics/id'
import { assignParts } from '../../../engine/breakdown/assign'
import { breakdownOf } from '../../../engine/breakdown/steps'
import { inch } from '../../../engine/units/length'
import { crosscut, inputOf, OFFCUT, part, rip, SHEET, type Sizes, sheets, showStep, WASTE } from './sawyer'

const TWO_STRIPS = rip(crosscut(part('A'), part('A'), OFFCUT), crosscut(part('B'), WASTE), OFFCUT)
const SIZES: Sizes = { A: [768, 580], B: [1000, 320] }

describe('the breakdown of a sheet', () => {
  it('straightens an edge, rips from the clean edge, squares an end and crosscuts to the stop', () => {
    const { steps } = breakdownOf(inputOf(sheets(SIZES, [[1, TWO_STRIPS]])))
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
      inputOf(sheets(SIZES, [[3, TWO_STRIPS]]), { minutes: { perSetting: 9, perCut: 1, perSheet: 1 } }),
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
      inputOf(
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
    const plan = breakdownOf(inputOf(sheets(SIZES, [[4, TWO_STRIPS]]), heavy))
    expect(plan.order).toBe('sheet by sheet')
    expect(plan.minutes).toBeLessThan(plan.minutesOtherwise)
    // The guides stand at 320 after the first sheet, so the second begins there: 580 320, 320 580, 580 320, 320 580.
    expect(plan.steps.filter(({ kind }) => kind === 'rip').map(({ setting }) => setting)).toEqual([
      580, 320, 320, 580, 580, 320, 320, 580,
    ])
  })

  it('adds up its minutes from cuts, settings and the share of a sheet that is laid down', () => {
    const plan = breakdownOf(
      inputOf(sheets(SIZES, [[1, TWO_STRIPS]]), { minutes: { perSetting: 2, perCut: 1.5, perSheet: 6 } }),
    )
    // one trim, two rips, two ends squared, one B and two As; guides 580 and 320, stop 1000 and 768; one blade change; one sheet
    expect(plan.minutes).toBe((1 + 2 + 2 + 3) * 1.5 + (4 + 1) * 2 + 6)
  })

  it('changes the blade once for rips and crosscuts, and once more for re-rips', () => {
    const rerip = rip(crosscut(part('A'), rip(part('B'), part('B'), WASTE)), OFFCUT)
    const sizes: Sizes = { A: [768, 580], B: [500, 200] }
    expect(breakdownOf(inputOf(sheets(SIZES, [[2, TWO_STRIPS]]))).bladeChanges).toBe(1)
    const plan = breakdownOf(
      inputOf(
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
    const plan = breakdownOf(inputOf(sheets({ A: [768, 580] }, [[1, crosscut(rip(part('A'), WASTE), OFFCUT)]])))
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
    const { steps } = breakdownOf(inputOf(given, { guides: { least: 190, greatest: 1300 } }))
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
    const { steps } = breakdownOf(inputOf(given))
    expect(steps.map(showStep)).toEqual([
      `rip ${inch(12)}: 1 of ${inch(96)} x ${inch(48)} | 3 part ${inch(96)} x ${inch(12)} | 1 offcut ${inch(96)} x ${inch(11.625)}`,
    ])
  })

  it('leaves two halves of 14 15/16 in of a 30 in stick cut in the middle', () => {
    // Source: a blade maker's blog: both halves of a 30 in stick are 14-15/16 in after a 1/8 in kerf.
    const half = inch(14 + 15 / 16)
    const stock = { ...SHEET, length: inch(30), width: 100, trim: { length: 0, width: 0 } }
    const given = sheets({ A: [half, 100] }, [[1, crosscut(part('A'), part('A'))]], inch(0.125), stock)
    expect(breakdownOf(inputOf(given)).steps.map(showStep)).toEqual([
      `crosscut ${half}: 1 of ${inch(30)} x 100 | 2 part ${half} x 100`,
    ])
  })

  it('minds what is heavy, narrow, wide or longer than the rail', () => {
    const narrow = rip(crosscut(part('K'), WASTE), crosscut(part('W'), WASTE), OFFCUT)
    const given = sheets({ K: [1000, 75], W: [900, 700] }, [[1, narrow]])
    const { steps } = breakdownOf(inputOf(given, { railLength: 1400 }))
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
    const { steps, cautions } = breakdownOf(inputOf(sheets(SIZES, [[1, TWO_STRIPS]])))
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
    expect(breakdownOf(inputOf(sheets({}, [])))).toMatchObject({ steps: [], settings: 0, minutes: 0, cautions: [] })
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
    const given = inputOf(sheets(SIZES, [[1, TWO_STRIPS]]))
    const marks = new Map([
      ['A-1', 'B1-LS'],
      ['A-2', 'B1-RS'],
      ['B-1', 'B1-BT'],
    ] as [PartId, string][])
    const { steps } = breakdownOf({ ...given, marks })
    expect(steps.slice(-2).map(({ write }) => write)).toEqual([['B1-BT'], ['B1-LS', 'B1-RS', '1a3']])
  })
})
