import { describe, expect, it } from 'vitest'
import { type MaterialId, type StockId, valuesOf } from '../../../engine/basics/id'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { Cabinet, Material, Project } from '../../../engine/project/document'
import { ownTopEdit } from '../../../engine/project/topOver'
import { settle } from '../../../engine/units/length'
import { aCorner, aWall, cabinet, idOf, OTHER_WALL, type Said, the } from '../../helpers/wall'
import { figureOf, findingIn, remedied } from '../checks/findings'

const FRONT = 'front' as MaterialId
const SEATED = 1300
const GIVES = /its seat board .* would give/

/** Benches side by side, with fixed tops or stretchers, under boards of the fronts where they are asked for. */
function benches(widths: readonly number[], said: Said = {}): Project {
  let left = 300
  const all = widths.map(settle).map((width, at): Cabinet => {
    const one = cabinet(`B${at + 1}`, {
      ...{ left, width, height: 432, depth: 450, front: { kind: 'falseFront' } },
      ...{ overrides: { baseTop: { kind: 'full' } }, top: { isOver: true, own: { material: FRONT } } },
      ...said,
    })
    left += width
    return one
  })
  return aWall(...all)
}
const seatBoards = (project: Project) =>
  derive(project).runs.flatMap(({ parts }) => parts.map(({ mark, length, width }) => `${mark} ${length} x ${width}`))
const T = 18

describe('a seat board over benches', () => {
  it('is one board over all of them, past the fronts and free ends, where the project has no countertop', () => {
    const project = benches([800, 700])
    expect(project.between.countertop).toBeNull()
    expect(seatBoards(project)).toEqual([`BS1-SB1 ${15 + 800 + 700 + 15} x ${450 + T + 20}`])
    const [run] = derive(project).runs
    expect(run!.place).toMatchObject({ left: 300 - 15, bottom: 432, height: T })
    const row = derive(project).cutList.rows.find(({ name }) => name === 'seat board')!
    expect(row.quantity).toBe(1)
    const parts = derive(project).sheetJob.parts.filter(({ material }) => material === FRONT)
    expect(parts.some(({ length }) => length === 1530)).toBe(true)
  })
  it('is spliced over a side where no sheet is as long', () => {
    const project = benches([1000, 1000, 1000])
    const longest = 2440 - 2 * project.shop.trim
    expect(15 + 3000 + 15).toBeGreaterThan(longest)
    expect(seatBoards(project)).toEqual([
      `BS1-SB1 ${15 + 2000} x ${450 + T + 20}`,
      `BS1-SB2 ${1000 + 15} x ${450 + T + 20}`,
    ])
  })
  it('is not there where nobody asks for it, nor over a lid', () => {
    expect(seatBoards(benches([800, 700], { top: {} }))).toEqual([])
    expect(seatBoards(benches([800, 700], { overrides: { baseTop: { kind: 'lid', width: 60 } } }))).toEqual([])
  })
  it('has no splash where the countertops have one, unless it is its own', () => {
    const countertop = { material: 'carcass' as MaterialId, overhang: 20, ends: 15, splash: 80, banding: 0 }
    const project = applyEdit(benches([800]), { kind: 'editBetween', change: { countertop } })
    expect(seatBoards(project)).toEqual([`BS1-SB1 ${15 + 800 + 15} x ${450 + T + 20}`])
    const own = applyEdit(project, ownTopEdit([the(project, 'B1')], { splash: 100 }))
    expect(seatBoards(own)).toContain(`BS1-SP1 ${15 + 800 + 15} x 100`)
  })
})

describe('a seat board under somebody who sits on it', () => {
  const stretchers: Said = { overrides: { baseTop: { kind: 'stretchersFlat', width: 80 } } }
  const inertia = (width: number, thickness = T) => (width * thickness ** 3) / 12
  /** Boards of fronts and carcasses give alike. */
  const E = valuesOf<Material>(benches([800]).materials).find(({ id }) => id === 'carcass')!.stiffness
  const flat = (thickness = T) => E * (inertia(450 + T + 20, thickness) + 2 * inertia(80))
  const resting = (span: number, stiff: number) => (SEATED * span ** 3) / (48 * stiff)

  it('gives P L^3 / (48 E I) between the sides of one bench, with the stretchers under it', () => {
    const project = benches([1100], stretchers)
    const finding = findingIn(project, GIVES)!
    expect(finding.weight).toBe('mind')
    expect(figureOf(finding.measure)).toBeCloseTo(resting(1100 - 2 * T, flat()), 1)
    expect(figureOf(finding.limit)).toBeCloseTo((1100 - 2 * T) / 144, 1)
    expect(finding.about).toEqual({ kind: 'cabinet', cabinet: idOf('B1') })
    const greatest = Math.sqrt((48 * flat()) / (144 * SEATED))
    expect(findingIn(benches([greatest + 2 * T - 1], stretchers), GIVES)).toBeNull()
    expect(findingIn(benches([greatest + 2 * T + 1], stretchers), GIVES)).not.toBeNull()
  })
  it('is held half way between P L^3 / (48 E I) and P L^3 / (192 E I) where it goes on past both ends', () => {
    const half = (1 + 1 / 4) / 2
    const greatest = Math.sqrt((48 * flat()) / (144 * SEATED))
    const middle = greatest / Math.sqrt(half)
    const three = (clear: number) => benches([400, clear + 2 * T, 400], stretchers)
    expect(findingIn(three(middle - 1), GIVES)).toBeNull()
    const finding = findingIn(three(middle + 1), GIVES)!
    expect(finding.about).toEqual({ kind: 'cabinet', cabinet: idOf('B2') })
    expect(figureOf(finding.measure)).toBeCloseTo(half * resting(middle + 1, flat()), 1)
    expect(finding.message).toContain('going on past both ends, so judged half way between resting and clamped')
    // At an end of the run it only rests there.
    expect(findingIn(benches([middle - 1 + 2 * T, 400], stretchers), GIVES)).not.toBeNull()
  })
  it('bears together with a fixed top, which is then not judged alone', () => {
    const bare = benches([1200], { top: {} })
    expect(findingIn(bare, /its top of .* would give/)).not.toBeNull()
    const covered = benches([1200])
    expect(findingIn(covered, /its top of .* would give/)).toBeNull()
    const top = derive(covered).cabinets[0]!.parts.find(({ role }) => role === 'top')!
    const stiff = E * (inertia(450 + T + 20) + inertia(top.width))
    const gives = resting(1200 - 2 * T, stiff)
    const finding = findingIn(covered, GIVES)
    expect(finding === null).toBe(gives <= (1200 - 2 * T) / 144)
    const wide = findingIn(benches([1600]), GIVES)!
    expect(figureOf(wide.measure)).toBeCloseTo(resting(1600 - 2 * T, stiff), 1)
  })
  it('holds on a partition, and else of the thinnest thicker board that holds, in one step', () => {
    const parted = { interior: { fixedShelves: 0, adjustableShelves: 0, partition: { at: 0.5 } } }
    expect(findingIn(benches([1100], { ...stretchers, ...parted }), GIVES)).toBeNull()
    const whole = benches([1100], stretchers)
    expect(findingIn(whole, GIVES)!.remedy!.label).toBe('Put a partition into B1')
    expect(findingIn(remedied(whole, findingIn(whole, GIVES)!), GIVES)).toBeNull()
    // Parted in its middle already, it has two spans that are too wide.
    const project = benches([2250], { ...stretchers, ...parted })
    const span = (2250 - 3 * T) / 2
    const like = project.materials['carcass' as MaterialId]!
    const stock = Object.values(project.stock).find(({ material }) => material === 'carcass')!
    const thick = [22, 40].reduce(
      (before, thickness, at) =>
        applyEdit(before, {
          ...{ kind: 'addMaterial' },
          material: {
            ...like,
            id: `t${thickness}` as MaterialId,
            name: `${thickness} mm`,
            nominal: thickness,
            thickness,
          },
          stock: { ...stock, id: `s${7 + at}` as StockId, material: `t${thickness}` as MaterialId },
        }),
      project,
    )
    const holds = [22, 40].find((t) => resting(span, flat(t)) <= span / 144)!
    const finding = findingIn(thick, GIVES)!
    expect(finding.remedy!.label).toBe(`Make the seat board BS1 of ${holds} mm`)
    expect(findingIn(remedied(thick, finding), GIVES)).toBeNull()
  })
})

describe('a seat board over a bench through a corner', () => {
  const DEEP = 450
  const E = valuesOf<Material>(benches([800]).materials).find(({ id }) => id === 'carcass')!.stiffness
  const inertia = (width: number) => (width * T ** 3) / 12
  const low: Said = {
    ...{ height: 432, depth: DEEP, overrides: { baseTop: { kind: 'full' }, back: { kind: 'none' } } },
    top: { isOver: true, own: { material: FRONT } },
  }
  const ofCorner = (width: number, other: number, hand: 'left' | 'right' = 'right', more: Said = {}): Cabinet =>
    cabinet('B1', {
      ...{
        ...low,
        width,
        left: hand === 'right' ? 3600 - width : 0,
        corner: { kind: 'L', hand, other, otherDepth: DEEP },
      },
      ...more,
    })
  const both = (span: number, over: number) =>
    (SEATED * span ** 3) / (48 * E * ((over > 0 ? inertia(over) : 0) + inertia(DEEP)))
  const tell = (project: Project) =>
    derive(project).problems.flatMap(({ message }) => (/would give/.test(message) ? [message] : []))

  it('gives along the wall that it goes on along with the leg of the top under it, from the post to the side', () => {
    // The post takes 60 along its own wall, the side is 18.
    const span = 1100 - 60 - T
    const finding = findingIn(aCorner(ofCorner(1100, 700)), GIVES)!
    expect(finding.weight).toBe('mind')
    expect(figureOf(finding.measure)).toBeCloseTo(both(span, DEEP + 20), 1)
    expect(figureOf(finding.limit)).toBeCloseTo(span / 144, 1)
    expect(finding.message).toContain('BS1')
    expect(finding.message).toContain(
      'with the leg of the top under it, taken to be borne by the side and the corner post',
    )
    // The top alone, 822 long, gives too much, and with the board over it no more.
    expect(both(900 - 60 - T, 0)).toBeGreaterThan((900 - 60 - T) / 144)
    expect(both(900 - 60 - T, DEEP + 20)).toBeLessThan((900 - 60 - T) / 144)
    expect(tell(aCorner(ofCorner(900, 700)))).toEqual([])
  })

  it.each(['left', 'right'] as const)('counts for nothing over the leg that it begins on, corner at the %s', (hand) => {
    const wall = hand === 'left' ? { wall: OTHER_WALL } : {}
    const project = aCorner(ofCorner(hand === 'right' ? 900 : 1000, hand === 'right' ? 1000 : 900, hand, wall))
    // The wall before has the board that goes on into the corner, whichever of them the bench is at; its post takes 18 of the other leg.
    const span = 1000 - (hand === 'right' ? T : 60) - T
    const finding = findingIn(project, /under the seam of its seat board/)!
    // The other leg, of 900, would give too much as well if nothing lay over all of it.
    expect(tell(project)).toEqual([finding.message])
    expect(both(900 - 60 - T, 0)).toBeGreaterThan((900 - 60 - T) / 144)
    expect(figureOf(finding.measure)).toBeCloseTo(both(span, 0), 1)
    expect(finding.about).toEqual({ kind: 'cabinet', cabinet: idOf('B1') })
  })

  it('is made of a thicker board all round the corner, or the carcass of one under a seam', () => {
    const thicker = (project: Project): Project => {
      const made = { ...project.materials[FRONT]!, id: 'm30' as MaterialId, name: '30 mm', nominal: 30, thickness: 30 }
      return { ...project, materials: { ...project.materials, [made.id]: made } }
    }
    const round = cabinet('B2', { ...low, wall: OTHER_WALL, left: 700, width: 500 })
    const whole = thicker(aCorner(ofCorner(1100, 700), round))
    const finding = findingIn(whole, GIVES)!
    expect(finding.remedy!.label).toBe('Make the seat board BS1 of 30 mm')
    const made = remedied(whole, finding)
    expect(tell(made)).toEqual([])
    expect(the(made, 'B2').top!.own!.material).toBe('m30')
    const seam = thicker(aCorner(ofCorner(700, 1000)))
    const under = findingIn(seam, /under the seam/)!
    expect(under.remedy!.label).toBe('Make the carcass of B1 of 30 mm')
    expect(tell(remedied(seam, under))).toEqual([])
  })

  it('lets the bench beside the corner go on under it past both of its ends', () => {
    const beside = (clear: number) =>
      aCorner(
        ofCorner(700, 700),
        cabinet('B2', { ...low, left: 3600 - 700 - clear - 2 * T, width: clear + 2 * T }),
        cabinet('B3', { ...low, left: 3600 - 700 - clear - 2 * T - 300, width: 300 }),
      )
    // Longer than holds at the end of a run, and shorter than holds between two others.
    expect(findingIn(beside(1100), GIVES)).toBeNull()
    expect(findingIn(benches([300, 1100 + 2 * T]), GIVES)).not.toBeNull()
    const wide = findingIn(beside(1300), GIVES)!
    expect(wide.about).toEqual({ kind: 'cabinet', cabinet: idOf('B2') })
    expect(wide.message).toContain('going on past both ends')
  })
})
