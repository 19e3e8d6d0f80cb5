import { describe, expect, it } from 'vitest'
import { type BreakdownInput, breakdownOf } from '../../../engine/breakdown/steps'
import type { Shop } from '../../../engine/project/document'
import type { LengthDisplay } from '../../../engine/units/length'
import { type Cutting, crosscut, OFFCUT, PLY, part, rip, SHOP, type Sizes, sheets, WASTE } from './sawyer'

function stepsIn(shop: Partial<Shop>, sizes: Sizes, cutting: Cutting, display?: LengthDisplay) {
  const materials = { m1: PLY } as unknown as BreakdownInput['materials']
  const given = sheets(sizes, [[1, cutting]])
  return breakdownOf({
    ...given,
    shop: { ...SHOP, ...shop },
    marks: new Map(),
    materials,
    ...(display ? { display } : {}),
  }).steps
}

const TWO_STRIPS = rip(crosscut(part('A'), part('A'), OFFCUT), crosscut(part('B'), WASTE), OFFCUT)
const SIZES: Sizes = { A: [768, 580], B: [1000, 320] }

const TWO_A = rip(crosscut(part('A'), OFFCUT), crosscut(part('B'), WASTE), OFFCUT)

describe('a rip that is longer than the rail', () => {
  it('asks for a joined rail where rails join', () => {
    const [trim] = stepsIn({ railLength: 1900, onePersonLift: 50 }, SIZES, TWO_STRIPS)
    expect(trim!.cautions).toEqual(['The cut is 2440 mm long and the rail 1900 mm: join a rail before you cut.'])
  })

  it('is made of two halves where two of them joined are too short', () => {
    const [trim] = stepsIn({ railLength: 800, canJoinRails: true, onePersonLift: 50 }, SIZES, TWO_STRIPS)
    expect(trim!.cautions).toEqual([
      'The cut is 2440 mm long and two rails joined 1600 mm: crosscut it roughly at 1218.5 mm first, and do to both halves what follows. Each keeps 10 mm to be squared.',
    ])
  })

  it('is made of two halves where they do not, crosscut where no part is', () => {
    const shop = { railLength: 1900, canJoinRails: false, onePersonLift: 50 }
    const [trim, first] = stepsIn(shop, SIZES, TWO_STRIPS)
    // The strip of B can be cut from 10 + 1000 + 10 on, that of As from 10 + 768 + 10 to 2440 - 10 - 768 - 10 - 3: both
    // in the middle, (2440 - 3) / 2.
    expect(trim!.cautions).toEqual([
      'The cut is 2440 mm long and the rail 1900 mm: crosscut it roughly at 1218.5 mm first, and do to both halves what follows. Each keeps 10 mm to be squared.',
    ])
    expect(first!.cautions).toEqual([
      'The cut is 2440 mm long and the rail 1900 mm: cut both halves of it, crosscut at 1218.5 mm before.',
    ])
  })

  it('is crosscut beside the middle where a part lies across it', () => {
    const shop = { railLength: 1900, canJoinRails: false, onePersonLift: 50 }
    const [trim] = stepsIn(shop, { A: [1300, 580], B: [1000, 320] }, TWO_A)
    // A behind the cut, B before it: 2440 - 10 - 1300 - 10 - 3.
    expect(trim!.cautions[0]).toMatch(/crosscut it roughly at 1117 mm first/)
  })

  it('cannot be made where every place of a crosscut meets a part', () => {
    const shop = { railLength: 1900, canJoinRails: false, onePersonLift: 50 }
    const [trim] = stepsIn(shop, { A: [2420, 580], B: [1000, 320] }, rip(part('A'), crosscut(part('B'), WASTE), OFFCUT))
    expect(trim!.cautions[0]).toBe(
      'The cut is 2440 mm long and the rail 1900 mm: no crosscut leaves every part whole. Borrow a longer rail, or lay the sheets out with the crosscut first.',
    )
  })
})

describe('a length beyond the stop', () => {
  const crosscuts = (shop: object) =>
    stepsIn(shop, { A: [1600, 580], B: [1000, 320] }, TWO_A).filter(({ kind }) => kind === 'crosscut')

  it('asks for a longer fence, in a shop of its own and in one that does not say', () => {
    const words =
      '1600 mm is beyond the stop (1500 mm): clamp a straight board to the fence and a block to it as the stop, and hold up what sticks out.'
    for (const shop of [{}, { stopReach: 1500 }]) {
      const [long, short] = [1600, 1000].map((size) => crosscuts(shop).find((step) => step.setting === size)!)
      expect(long!.cautions).toContain(words)
      expect(short!.cautions.join(' ')).not.toContain('beyond the stop')
    }
  })

  it('is nothing to mind where the stop goes as far', () => {
    expect(
      crosscuts({ stopReach: 1600 })
        .flatMap(({ cautions }) => cautions)
        .join(' '),
    ).not.toContain('beyond')
  })
})

describe('a rail that is hardly longer than the cut', () => {
  const railIn = (railLength: number) => stepsIn({ railLength, onePersonLift: 50 }, SIZES, TWO_STRIPS)[0]!.cautions

  it('is to stick out at both ends', () => {
    expect(railIn(2440)).toEqual([
      'The cut is 2440 mm long and the rail 2440 mm: let it stick out as far at both ends, and see that the saw stands firm on it before it enters the wood.',
    ])
  })

  it('is long enough with 150 mm to spare', () => {
    expect(railIn(2589)).toHaveLength(1)
    expect(railIn(2590)).toEqual([])
  })
})

describe('a piece that holds no rail by itself', () => {
  const smallIn = (sizes: Sizes, cutting: Cutting) =>
    stepsIn({}, sizes, cutting).flatMap(({ kind, cautions }) =>
      cautions.filter((caution) => caution.includes('holds no rail')).map((caution) => `${kind}: ${caution}`),
    )

  it('is clamped down where it is short along the cut', () => {
    // The section of 380 is ripped to 200 and what is left, 580 - 200 - 3.
    const trimmed = rip(crosscut(part('A'), rip(part('C'), WASTE), WASTE), OFFCUT)
    expect(smallIn({ A: [768, 580], C: [380, 200] }, trimmed)).toEqual([
      'rerip: The piece is only 380 mm long along the cut, which holds no rail by itself: clamp it down, lay boards as thick under the rest of the rail, and keep both hands on the saw.',
    ])
    expect(smallIn({ A: [768, 580], C: [400, 200] }, trimmed)).toEqual([])
  })

  it('is clamped down where it is narrow, and lies on the bench as it is', () => {
    const narrow = rip(crosscut(part('W'), WASTE), crosscut(part('K'), part('S'), WASTE), WASTE)
    // 1200 - 1060 - 3 and 10 mm of factory edge are 147.
    expect(smallIn({ W: [1000, 1060], K: [1000, 90], S: [100, 90] }, narrow)).toEqual([
      'rip: The piece is only 147 mm wide, which holds no rail by itself: clamp it down, lay boards as thick under the rest of the rail, and keep both hands on the saw.',
    ])
  })
})

describe('a part that the others leave of a piece', () => {
  const restsIn = (cutting: Cutting) =>
    stepsIn({}, { A: [768, 580], B: [700, 300], C: [700, 277] }, cutting)
      .flatMap(({ kind, cautions }) => cautions.map((caution) => `${kind}: ${caution}`))
      .filter((caution) => caution.includes('no setting cuts it'))

  it('is measured before the last cut', () => {
    // 580 - 300 - 3 is 277.
    expect(restsIn(rip(crosscut(part('A'), rip(part('B'), part('C')), WASTE), OFFCUT))).toEqual([
      'rerip: What the last cut leaves is a part too, and no setting cuts it: measure before that cut, it must come to 277 mm.',
    ])
  })

  it('is not where something falls away behind it', () => {
    expect(restsIn(rip(crosscut(part('A'), rip(part('B'), WASTE), part('A')), OFFCUT))).toEqual([])
  })
})

describe('a rip that is narrower than the guides reach', () => {
  const NARROW = rip(crosscut(part('K'), WASTE), OFFCUT)

  it('is set on their attachment, which is a setting of its own', () => {
    const steps = stepsIn({}, { K: [1000, 75], L: [900, 320] }, rip(part('L'), crosscut(part('K'), WASTE), OFFCUT))
    const rips = steps.filter(({ kind }) => kind === 'rip')
    expect(rips.map(({ tool, setting, hasAttachment }) => [tool, setting, hasAttachment])).toEqual([
      ['guides', 320, false],
      ['guides', 75, true],
    ])
    expect(rips[1]!.text).toBe('Set both guides, attachment on, to 75 mm and rip rest of sheet 1, once.')
  })

  it('follows a line without it', () => {
    const [, rip] = stepsIn({ narrowRips: null }, { K: [1000, 75] }, NARROW)
    expect([rip!.tool, rip!.setting]).toEqual(['rail', null])
    expect(rip!.cautions).toContain(
      '75 mm is narrower than the guides reach (190 mm): follow a line, with the piece held down.',
    )
  })

  it('is made from the other side where what falls away is in reach', () => {
    const shop = { narrowRips: { least: 80, greatest: 230 }, guides: { least: 190, greatest: 1200 } }
    const [, rip] = stepsIn(shop, { K: [1000, 75] }, NARROW)
    // 1220 - 10 low - 10 high - 75 - 3
    expect(rip!.cautions.at(-1)).toMatch(/from the other side, straighten the far edge by 10 mm and .* to 1122 mm\.$/)
  })
})

describe('a rip that is wider than the guides reach', () => {
  const WIDE = rip(crosscut(part('W'), WASTE), OFFCUT)

  it('is made from the other side with their attachment where little falls away', () => {
    const [, rip] = stepsIn({}, { W: [1000, 1150] }, WIDE)
    // 1220 - 10 low - 10 high - 1150 - 3
    expect(rip!.cautions.at(-1)).toBe(
      '1150 mm is wider than the guides reach (650 mm): follow a line, with the piece held down; or, from the other side, straighten the far edge by 10 mm and set the guides, with their attachment on, to 47 mm.',
    )
  })

  it('follows a line where they have none', () => {
    const [, rip] = stepsIn({ narrowRips: null }, { W: [1000, 1150] }, WIDE)
    expect(rip!.cautions.at(-1)).toBe(
      '1150 mm is wider than the guides reach (650 mm): follow a line, with the piece held down.',
    )
  })
})

describe('a strip that is too heavy to be carried to the bench', () => {
  // 2.44 m x 0.64 m x 0.018 m x 685 kg/m3 = 19.3 kg
  const STRIP = rip(crosscut(part('A'), part('A'), OFFCUT), OFFCUT)

  it('is crosscut roughly first, or carried by two', () => {
    const steps = stepsIn({ onePersonLift: 15 }, { A: [900, 640] }, STRIP)
    const square = steps.find(({ kind }) => kind === 'square')!
    // Between the As, from 10 + 900 + 10 to 2440 - 10 - 900 - 10 - 3: in the middle, where both halves weigh 9.6 kg.
    expect(square.cautions).toEqual([
      'Weighs 19.3 kg; one person lifts 15 kg. Two people, or a carrier. Or crosscut it roughly at 1218.5 mm first.',
    ])
  })

  it('is carried by two where the halves would be too heavy still', () => {
    const steps = stepsIn({ onePersonLift: 9 }, { A: [900, 640] }, STRIP)
    const square = steps.find(({ kind }) => kind === 'square')!
    expect(square.cautions).toEqual(['Weighs 19.3 kg; one person lifts 9 kg. Two people, or a carrier.'])
  })

  it('weighs in pounds where lengths are in inches', () => {
    const display = { unit: 'in', step: 32 } as const
    const steps = stepsIn({ onePersonLift: 9 }, { A: [900, 640] }, STRIP, display)
    const square = steps.find(({ kind }) => kind === 'square')!
    // 2.44 x 0.64 x 0.018 x 685 is 19.25 kg; it and 9 kg are so many times 0.45359237.
    expect(square.cautions).toEqual(['Weighs 42.4 lb; one person lifts 19.8 lb. Two people, or a carrier.'])
  })
})

describe('the first edge of a sheet that is crosscut first', () => {
  const CROSS = crosscut(rip(part('A'), WASTE), rip(part('B'), WASTE), WASTE)

  it('is told to be cut along the sheet with the blade that is in, and of one that is ripped first nothing is', () => {
    const [trim] = stepsIn({ onePersonLift: 50 }, SIZES, CROSS)
    expect([trim!.kind, trim!.blade]).toEqual(['trim', 'crosscut'])
    expect(trim!.cautions.filter((caution) => caution.includes('crosscut blade that is in'))).toHaveLength(1)
    const [ripped] = stepsIn({ onePersonLift: 50 }, SIZES, TWO_STRIPS)
    expect([ripped!.kind, ripped!.cautions]).toEqual(['trim', []])
  })

  it('is straightened piece by piece where the rail is too short for all of it', () => {
    const short = { railLength: 1300, canJoinRails: false, onePersonLift: 50, firstCut: 'crosscut' } as const
    const [trim] = stepsIn(short, SIZES, CROSS)
    expect(trim!.cautions).toContain(
      'The cut is 2440 mm long and the rail 1300 mm: crosscut it where that is drawn first, and straighten one long edge of every piece instead.',
    )
    // Of one strip across the sheet with a part as long as it there is no such way, and no other layout helps.
    const [whole] = stepsIn(short, { A: [2420, 580], B: [1000, 320] }, rip(part('A'), OFFCUT))
    expect(whole!.cautions[0]).toMatch(/no crosscut leaves every part whole\. Borrow a longer rail\.$/)
  })
})

describe('an offcut with factory edges', () => {
  it('is told as it lies and clean, as the layout draws it', () => {
    const leaves = stepsIn({}, SIZES, TWO_STRIPS).flatMap((step) => step.leaves)
    // Of 1200 the strips of 580 and 320 are cut off with a kerf of 3 each; it keeps 10 at both ends and at the far edge.
    const width = 1200 - 580 - 3 - 320 - 3
    const offcut = leaves.find(({ kind, length }) => kind === 'offcut' && length === 2440)
    expect(offcut).toMatchObject({ length: 2420 + 2 * 10, width: width + 10, clean: { length: 2420, width } })
  })
})
