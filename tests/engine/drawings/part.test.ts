import { describe, expect, it } from 'vitest'
import type { Board } from '../../../engine/cabinets/board'
import { datumOf } from '../../../engine/drawings/datum'
import { partDrawing } from '../../../engine/drawings/part'
import { apart } from '../../../engine/drawings/running'
import { legend } from '../../../engine/drawings/worked'
import { svgOf } from '../../../engine/export/svg'
import type { Front } from '../../../engine/project/document'
import type { LengthDisplay } from '../../../engine/units/length'
import { aCabinet, boardIn, boardsOf, rulesWith } from '../../helpers/cabinets'

const PAIR: Front = { kind: 'pair' }
const interior = { fixedShelves: 0, adjustableShelves: 1, partition: null }
const boards = boardsOf(aCabinet('upper', { height: 720, depth: 330, front: PAIR, interior }), rulesWith())
const left = boardIn(boards, 'leftSide')
const right = boardIn(boards, 'rightSide')

function drawn(part: Board) {
  return partDrawing({ part, display: { unit: 'mm', step: 0.1 } }).marks
}

function circles(part: Board) {
  return drawn(part).flatMap((mark) =>
    mark.kind === 'circle' ? [`${mark.diameter} at ${mark.at.x},${mark.at.y}`] : [],
  )
}

function texts(part: Board) {
  return drawn(part).flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []))
}

describe('the drawing of a part', () => {
  it('shows every hole where it is bored, to scale', () => {
    // Pins from 18 + 96 up, 37 from both edges of a side of 330; plates 76.2 from the ends of a door of 717.
    expect(circles(left)).toContain(`5 at ${18 + 96},${330 - 37}`)
    expect(circles(left)).toContain(`5 at ${18 + 96},37`)
    const holes = left.operations.reduce((sum, one) => sum + (one.kind === 'holeRow' ? one.count : 0), 0)
    expect(circles(left)).toHaveLength(holes)
  })

  it('measures from the front edge and the lower end, the same figures for a left side and a right side', () => {
    expect(datumOf(left)).toEqual({ edge: 'front edge', isEdgeAtZero: false, end: 'lower end' })
    expect(datumOf(right)).toEqual({ edge: 'front edge', isEdgeAtZero: true, end: 'lower end' })
    expect(texts(left)).toEqual(texts(right))
    expect(texts(left)).toEqual(expect.arrayContaining(['37', String(330 - 37), '330', '114', '720']))
  })

  it('shows the line that a corner is cut off along, measured from the datum edge and end', () => {
    const corner = { kind: 'diagonal', hand: 'left', other: 620, otherDepth: 320 } as const
    const upper = aCabinet('upper', { width: 620, depth: 320, corner, front: { kind: 'open' } })
    const bottom = boardIn(boardsOf(upper, rulesWith()), 'bottom')
    // Both legs go on 300 past the other; behind each side the line has come 18 nearer: 300 - 2 x 18 go.
    const cut = 300 - 2 * 18
    const lines = drawn(bottom).flatMap((mark) => (mark.kind === 'line' && mark.layer === 'part' ? [mark] : []))
    expect(lines).toEqual([{ kind: 'line', layer: 'part', from: { x: 602 - cut, y: 0 }, to: { x: 602, y: cut } }])
    expect(texts(bottom)).toContain(`1 × corner cut off, ${cut} mm along and ${cut} mm across`)
    expect(texts(bottom)).toEqual(expect.arrayContaining([String(602 - cut), String(cut), '602']))
  })

  it('shows a right side as the mirrored board that it is', () => {
    const mirrored = circles(right).map((circle) => {
      const [size, at] = circle.split(' at ') as [string, string]
      const [x, y] = at.split(',') as [string, string]
      return `${size} at ${x},${330 - Number(y)}`
    })
    expect(mirrored.sort()).toEqual(circles(left).sort())
  })

  it('measures a door from the edge that its cups are at', () => {
    expect(datumOf(boardIn(boards, 'door', 1))).toMatchObject({ edge: 'hinge edge', isEdgeAtZero: true })
    expect(datumOf(boardIn(boards, 'door', 2))).toMatchObject({ edge: 'hinge edge', isEdgeAtZero: false })
    expect(texts(boardIn(boards, 'door', 2))).toEqual(expect.arrayContaining(['22.5', '32', '76.2']))
  })

  it('shows both faces of a partition, the outside turned over its length', () => {
    const parted = { fixedShelves: 0, adjustableShelves: 1, partition: { at: 0.5 } }
    const partition = boardIn(boardsOf(aCabinet('upper', { interior: parted }), rulesWith()), 'partition')
    const titles = texts(partition).filter((text) => text.includes('face'))
    expect(titles.map((text) => text.split(' · ')[0])).toEqual(['inside face', 'outside face'])
    const [inside, outside] = drawn(partition).flatMap((mark) =>
      mark.kind === 'line' && mark.layer === 'datum' && mark.from.y === mark.to.y ? [mark.from.y] : [],
    )
    const [first, second] = drawn(partition).flatMap((mark) =>
      mark.kind === 'rect' && mark.layer === 'part' ? [mark.rect] : [],
    )
    expect(inside).toBe(first!.bottom + partition.width)
    expect(outside).toBe(second!.bottom)
  })

  it('has its title clear of the measures beside a narrow board, and all words on the paper', () => {
    const narrow = boardIn(boardsOf(aCabinet('base', { width: 300, depth: 580 }), rulesWith()), 'bottom')
    const { bounds, marks } = partDrawing({ part: narrow, display: { unit: 'mm', step: 0.1 } })
    const words = marks.flatMap((mark) => (mark.kind === 'text' && !mark.isUpright ? [mark] : []))
    expect(words.slice(0, 3).map(({ text }) => text)).toEqual([
      'inside face',
      `measured from the ${datumOf(narrow).edge}`,
      `and the ${datumOf(narrow).end}`,
    ])
    // A letter is about 0.55 as wide as it is high.
    const boxes = words.map(({ text, size, at: { x, y } }) => ({
      text,
      left: x - (text.length * size * 0.55) / 2,
      right: x + (text.length * size * 0.55) / 2,
      low: y - size / 2,
      high: y + size / 2,
    }))
    const met = boxes.flatMap((a, at) =>
      boxes
        .slice(at + 1)
        .filter((b) => a.left < b.right && b.left < a.right && a.low < b.high && b.low < a.high)
        .map((b) => `${a.text} over ${b.text}`),
    )
    expect(met).toEqual([])
    for (const { left, right, low, high } of boxes) {
      expect(left).toBeGreaterThanOrEqual(bounds.left)
      expect(right).toBeLessThanOrEqual(bounds.left + bounds.width)
      expect(low).toBeGreaterThanOrEqual(bounds.bottom)
      expect(high).toBeLessThanOrEqual(bounds.bottom + bounds.height)
    }
  })

  it('says how many holes of which size and depth, and is a file that holds them as circles', () => {
    expect(texts(boardIn(boards, 'door', 1))).toContain('2 × hole of 35 mm for hinge cups, 13 mm deep')
    const svg = svgOf(partDrawing({ part: left, display: { unit: 'mm', step: 1 } }))
    expect(svg.match(/<circle /g)).toHaveLength(circles(left).length)
  })
})

describe('what is worked on a part', () => {
  const worked = (part: Board, display: LengthDisplay = { unit: 'mm', step: 0.1 }) => legend(part, display)

  it('is told in the unit of the project, in steps that a joint needs', () => {
    const rules = rulesWith({ back: { kind: 'rabbet', depth: 6.35 } })
    const side = boardIn(boardsOf(aCabinet('upper', { interior }), rules), 'leftSide')
    const rabbet = (display: LengthDisplay) => worked(side, display).filter((line) => line.includes('rabbet'))
    expect(rabbet({ unit: 'mm', step: 1 })).toEqual(['1 × rabbet 6.4 mm deep'])
    expect(rabbet({ unit: 'in', step: 16 })).toEqual(['1 × rabbet 1/4 in deep'])
    // Bits are bought by the millimetre: 11 mm are 0.433 in, nearest to 14 of 32 parts.
    const pins = worked(side, { unit: 'in', step: 16 }).find((line) => line.includes('shelf pins'))
    expect(pins).toMatch(/hole of 5 mm for shelf pins, 7\/16 in deep/)
  })

  it('is an opening where there is wood all round it, and a notch at an edge', () => {
    const pipes = { width: 300, height: 200, bottom: 300 }
    const sink = aCabinet('base', { interior: { ...interior, pipes } })
    const back = { kind: 'rabbet', depth: 9 } as const
    const rules = rulesWith({ back, floor: { kind: 'notched', height: 100, setback: 75 } })
    const made = boardsOf(sink, rules)
    expect(worked(boardIn(made, 'back'))).toContain('1 × opening for pipes, right through')
    expect(worked(boardIn(made, 'leftSide'))).toContain('1 × notch, right through')
  })
})

describe('figures that would meet', () => {
  it('are moved apart, and none farther than one step past the last place', () => {
    expect(apart([10, 50, 90], 20)).toEqual([10, 50, 90])
    expect(apart([10, 15, 90], 20)).toEqual([10, 10 + 20, 90])
    expect(apart([80, 85, 90], 20)).toEqual([90 + 20 - 2 * 20, 90 + 20 - 20, 90 + 20])
  })
})
