import { describe, expect, it } from 'vitest'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { hingesFor } from '../../../engine/cabinets/hinge'
import { hardwareOf } from '../../../engine/hardware/hardwareOf'
import { partsOf } from '../../../engine/parts/partsOf'
import type { Cabinet } from '../../../engine/project/document'
import { USUAL_FIXINGS } from '../../../engine/project/fixing'
import type { HingeChart } from '../../../engine/project/hingeRules'
import { USUAL_HINGE, USUAL_SLIDES } from '../../../engine/project/machining'
import { inch } from '../../../engine/units/length'
import { aCabinet, type MethodChanges, rulesWith } from '../../helpers/cabinets'
import { FRAME } from '../../helpers/frames'

function told(cabinet: Cabinet, changes: MethodChanges = {}): string[] {
  const rules = rulesWith(changes)
  const build = buildCabinet(cabinet, rules)
  return hardwareOf(build, partsOf(build, rules), rules).map(({ name, quantity, length }) => {
    return `${quantity} ${name}${length === null ? '' : ` ${length}`}`
  })
}

describe('the hinges of a door', () => {
  // Source: a hinge maker's chart: to 40 in or under 15 lb two, 60 in or 30 lb three, 80 in or 45 lb four, 100 in or 60 lb five.
  it('are counted by its height or its weight, whichever asks for more', () => {
    expect([39, 41, 79, 99].map((height) => hingesFor(inch(height), 3, USUAL_HINGE))).toEqual([2, 3, 4, 5])
    expect([6, 7, 14, 21].map((kg) => hingesFor(inch(30), kg, USUAL_HINGE))).toEqual([2, 3, 4, 5])
    // 15, 30, 45 and 60 lb, 0.45359237 kg each, are no longer under themselves; 40 in and so on still carry.
    expect([15, 30, 45, 60].map((lb) => hingesFor(inch(30), lb * 0.45359237, USUAL_HINGE))).toEqual([3, 4, 5, 6])
    expect([40, 60, 80, 100].map((height) => hingesFor(inch(height), 3, USUAL_HINGE))).toEqual([2, 3, 4, 5])
  })

  it('are as many as the chart of the method asks for, bored and bought', () => {
    const chart: HingeChart = [
      { height: 500, weight: 9 },
      { height: 600, weight: 11 },
      { height: 1900, weight: 13 },
      { height: 2400, weight: 30 },
    ]
    const hinge = { ...USUAL_HINGE, chart }
    expect([500, 501, 601, 1901, 2401].map((height) => hingesFor(height, 3, hinge))).toEqual([2, 3, 4, 5, 6])
    expect([8.9, 9, 11, 13, 30].map((kg) => hingesFor(400, kg, hinge))).toEqual([2, 3, 4, 5, 6])

    const cabinet = aCabinet('base', { front: { kind: 'door', hinge: 'left' } })
    const bored = (changes: MethodChanges) => {
      const rules = rulesWith(changes)
      return partsOf(buildCabinet(cabinet, rules), rules)
        .flatMap(({ operations }) => operations)
        .filter((one) => one.kind === 'holeRow' && one.purpose === 'hingeCup').length
    }
    // Its door is over 600 high, and by the usual chart under 40 in and 15 lb.
    expect([bored({}), bored({ hinge })]).toEqual([2, 4])
    expect(told(cabinet)[0]).toBe('2 full overlay hinge')
    expect(told(cabinet, { hinge }).slice(0, 2)).toEqual(['4 full overlay hinge', '4 hinge plate, 0 mm high'])
  })

  it('are as many on lids, flaps and both leaves of a corner by the same chart', () => {
    const chart: HingeChart = [
      { height: 100, weight: 100 },
      { height: 200, weight: 110 },
      { height: 300, weight: 120 },
      { height: 3000, weight: 130 },
    ]
    const hinge = { ...USUAL_HINGE, chart }
    const lid = aCabinet('base', { height: 450 })
    expect(told(lid, { hinge, baseTop: { kind: 'lid', width: 60 } })).toContain('5 lid hinge')
    const flap = aCabinet('upper', { front: { kind: 'door', hinge: 'top' }, width: 900, height: 400 })
    expect(told(flap, { hinge })[0]).toBe('5 full overlay hinge')
    const corner = { kind: 'L', hand: 'left', other: 860, otherDepth: 560 } as const
    const folding = aCabinet('base', { width: 920, corner, front: { kind: 'door', hinge: 'left' } })
    expect(told(folding, { hinge }).slice(0, 2)).toEqual([
      '5 wide-angle hinge for folding doors',
      '5 hinge between folding leaves',
    ])
  })
})

describe('the hardware of a cabinet', () => {
  it('is hinges, pins for adjustable shelves and legs', () => {
    const interior = { fixedShelves: 0, adjustableShelves: 2, partition: null }
    const cabinet = aCabinet('base', { front: { kind: 'pair' }, interior })
    expect(told(cabinet, { floor: { kind: 'legs', height: 100, setback: 50 } })).toEqual([
      `${2 * 2} full overlay hinge`,
      `${2 * 2} hinge plate, 0 mm high`,
      `${2 * 4} shelf pin`,
      '4 leg',
      '2 kick clip',
    ])
  })
  it('is legs along both walls of a corner and behind its kicks, with a clip on those', () => {
    const corner = { kind: 'L', hand: 'left', other: 860, otherDepth: 560 } as const
    const floor = { kind: 'legs', height: 100, setback: 50 } as const
    const cabinet = aCabinet('base', { width: 920, corner })
    // Along 920 three, along 860 two, the one in the corner counted once; before them one more in the inside corner.
    expect(told(cabinet, { floor })).toEqual([`${3 + 2 - 1 + 3} leg`, '3 kick clip'])
    expect(told({ ...cabinet, corner: { ...corner, kind: 'diagonal' } }, { floor })[0]).toBe(`${3 + 2 - 1 + 2} leg`)
  })
  it('is a packing strip beside each roll-out, at the side where the door hangs', () => {
    const interior = { fixedShelves: 0, adjustableShelves: 0, partition: null, rollOuts: { count: 2, height: 100 } }
    const cabinet = aCabinet('base', { front: { kind: 'door', hinge: 'left' }, interior })
    // 580 deep, 10 behind the door and 10 before its rear: boxes, slides and strips of 550.
    expect(told(cabinet).filter((row) => /strip|slides/.test(row))).toEqual([
      '2 pair of side slides, carries 22.7 kg (50 lb) 550',
      `${2 * 1} packing strip 550`,
    ])
  })
  it('is hinges along the width of a flap, and stays that hold it open', () => {
    const cabinet = aCabinet('upper', { front: { kind: 'door', hinge: 'top' }, width: 1100, height: 400 })
    // 1100 wide is over 40 in (1016 mm), so by its length along the hinges it takes three.
    expect(told(cabinet)).toEqual(['3 full overlay hinge', '3 hinge plate, 0 mm high', '1 pair of flap stays'])
  })
  it('tells hinges on the sides, on a partition and of inset doors apart', () => {
    const column = (hinge: 'left' | 'right') =>
      ({ size: { kind: 'share', share: 1 }, front: { kind: 'door', hinge }, shelves: null }) as const
    const PLATES = `${3 * 2} hinge plate, 0 mm high`
    const columns = [column('left'), column('left'), column('right')]
    const cabinet = aCabinet('base', { width: 1100, front: { kind: 'columns', columns } })
    // The first hangs on the left side, the second on a partition, the third on the right side.
    expect(told(cabinet)).toEqual([`${2 + 2} full overlay hinge`, '2 half overlay hinge', PLATES])
    expect(told(cabinet, { frontMount: 'halfOverlay' })).toEqual([`${3 * 2} half overlay hinge`, PLATES])
    expect(told(cabinet, { frontMount: 'inset' })).toEqual([`${3 * 2} inset hinge`, PLATES])
  })
  it('has half overlay hinges for a flap under another front', () => {
    const flap = { size: { kind: 'share', share: 1 }, front: { kind: 'door', hinge: 'top' } } as const
    const cabinet = aCabinet('upper', { front: { kind: 'rows', rows: [flap, flap] } })
    expect(told(cabinet)).toEqual([
      '2 half overlay hinge',
      '2 full overlay hinge',
      '4 hinge plate, 0 mm high',
      '2 pair of flap stays',
    ])
  })
  it('has plates for all hinges of an L, on its side and between its leaves, as many as are bored for', () => {
    const corner = { kind: 'L', hand: 'left', other: 860, otherDepth: 560 } as const
    const cabinet = aCabinet('base', { width: 920, corner, front: { kind: 'door', hinge: 'right' } })
    const rules = rulesWith()
    const bored = buildCabinet(cabinet, rules).boards.flatMap(({ operations }) =>
      operations.filter((one) => one.kind === 'holeRow' && one.purpose === 'hingePlate'),
    )
    expect(bored).toHaveLength(2 + 2)
    expect(told(cabinet)).toEqual([
      '2 wide-angle hinge for folding doors',
      '2 hinge between folding leaves',
      `${2 + 2} hinge plate, 0 mm high`,
    ])
  })
  it('has hinges that are screwed to a face frame, by how far they cover it, and no plates besides', () => {
    const cabinet = aCabinet('base', { front: { kind: 'pair' } })
    const faceFrame = { ...FRAME, fronts: { kind: 'overlay', by: 12.7 } } as const
    const hinges = told(cabinet, { faceFrame }).filter((row) => /hinge/.test(row))
    expect(hinges).toEqual(['4 face frame overlay hinge of 12.7 mm, screwed to the frame'])
  })
  it('names the class of slides in the unit of the project', () => {
    const cabinet = aCabinet('base', { front: { kind: 'drawer' } })
    const rules = rulesWith({ slides: { ...USUAL_SLIDES, loadClass: 100 } })
    const namesIn = (unit: 'mm' | 'in') => {
      const display = unit === 'mm' ? ({ unit, step: 0.1 } as const) : ({ unit, step: 32 } as const)
      const build = buildCabinet(cabinet, rules)
      return hardwareOf(build, partsOf(build, rules), { ...rules, display }).map(({ name }) => name)
    }
    expect(namesIn('mm')).toEqual(['pair of side slides, carries 45.4 kg (100 lb)'])
    expect(namesIn('in')).toEqual(['pair of side slides, carries 100 lb'])
  })
  it('names screws, plates and pulls by inches in a project of inches', () => {
    const rules = {
      ...rulesWith({
        fixing: { ...USUAL_FIXINGS.screws, diameter: inch(3 / 16) },
        hinge: { ...USUAL_HINGE, plateHeight: 3 },
      }),
      display: { unit: 'in', step: 32 } as const,
    }
    const build = buildCabinet(aCabinet('base', { front: { kind: 'door', hinge: 'left' } }), rules)
    const names = hardwareOf(build, partsOf(build, rules), rules).map(({ name }) => name)
    expect(names).toContain('screw of 3/16 in')
    expect(names).toContain('hinge plate, 3 mm (about 1/8 in) high')
  })
  it('says of slides that they do not come out all the way', () => {
    const slides = { ...USUAL_SLIDES, extension: 'standard' } as const
    expect(told(aCabinet('base', { front: { kind: 'drawer' } }), { slides })).toEqual([
      '1 pair of standard side slides, carries 22.7 kg (50 lb) 550',
    ])
  })
  it('is a pair of slides for every drawer, as long as its box', () => {
    const share = { size: { kind: 'share', share: 1 }, front: { kind: 'drawer' } } as const
    expect(told(aCabinet('base', { front: { kind: 'rows', rows: [share, share, share] } }))).toEqual([
      '3 pair of side slides, carries 22.7 kg (50 lb) 550',
    ])
  })
})
