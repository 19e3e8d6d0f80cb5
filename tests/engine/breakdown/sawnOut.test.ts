import { describe, expect, it } from 'vitest'
import { freedIn, sawnOutOf } from '../../../engine/breakdown/sawnOut'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import { newProject } from '../../../engine/project/defaults'
import type { ReadyName } from '../../../engine/project/readyKinds'
import { newCabinetAt } from '../../../engine/runs/place'
import { volumeOf } from '../../../engine/solids/volume'

function sawnOf(name: ReadyName, change: Partial<ReturnType<typeof newProject>['shop']> = {}) {
  const project = applyEdit(newProject('mm'), { kind: 'editShop', change: { kerf: 2.2, ...change } })
  const derived = derive(applyEdit(project, { kind: 'addCabinet', cabinet: newCabinetAt(project, name, 0)! }))
  const { parts } = derived.cabinets[0]!
  return { parts, sawn: sawnOutOf(parts, derived.project.shop, project.display) }
}

const LEAST = { length: 300, width: 200 }

describe('what can be kept of what is sawn out', () => {
  const freed = (name: ReadyName, mark: string, least: { length: number; width: number }) => {
    const { parts } = sawnOf(name)
    const part = parts.find((one) => one.mark === mark)!
    return { part, rects: freedIn(part, { ...newProject('mm').shop, kerf: 2.2, offcutLeast: least }) }
  }

  it('of an L lies in its far corner, a kerf from both lines', () => {
    const { part, rects } = freed('cornerBase', 'B1-BT', LEAST)
    const along = 900 - 18 + 6 - 580 + 1
    // The corner that goes is at the far end, along the first edge.
    expect(rects).toEqual([{ left: part.length - (along - 2.2), bottom: 0, width: along - 2.2, height: along - 2.2 }])
  })

  it('of a window lies a kerf inside its lines', () => {
    const { part, rects } = freed('sinkBase', 'B1-BK', { length: 200, width: 200 })
    const window = part.operations.find((one) => one.kind === 'notch')!
    expect(rects).toEqual([
      { left: window.x + 2.2, bottom: window.y + 2.2, width: 250 - 2 * 2.2, height: 300 - 2 * 2.2 },
    ])
  })
})

describe('what is sawn out of boards', () => {
  it('of an L is its corner, less a kerf on both sides that were in the board, kept where it is large enough', () => {
    const { sawn } = sawnOf('cornerBase', { offcutLeast: LEAST })
    // Both lines are sawn 1 farther in, for the banding that goes on there: with it the board ends at 580, as the sides do.
    const along = 900 - 18 + 6 - 580 + 1
    expect(sawn.find(({ boards }) => boards.includes('B1-BT'))).toEqual({
      material: 'carcass',
      boards: ['B1-BT', 'B1-TP'],
      what: 'corner',
      ...{ length: along, width: along, keeps: { length: along - 2.2, width: along - 2.2 } },
      text: 'Cut the corner out of B1-BT, B1-TP: 309 mm by 309 mm. Along the rail to just before the inside corner, the rest with the jigsaw. Keep 306.8 mm by 306.8 mm of it as an offcut.',
    })
  })

  it('is a step without an offcut where what goes is smaller than what the shop keeps', () => {
    const { sawn } = sawnOf('cornerBase', { offcutLeast: { length: 307, width: 200 } })
    expect(sawn.find(({ boards }) => boards.includes('B1-BT'))!.keeps).toBeNull()
  })

  it('of a corner cut off is half as long and half as wide, less what a kerf along the slant takes', () => {
    const { sawn } = sawnOf('diagonalBase', { offcutLeast: { length: 100, width: 100 } })
    const cut = 900 - 580 - 2 * (18 - 6)
    const { keeps, length, width } = sawn.find(({ boards }) => boards.includes('B1-BT'))!
    // Banding of 1 on the slant moves its line in by 1 square to it.
    expect(length).toBeCloseTo(cut + Math.SQRT2, 3)
    expect(width).toBe(length)
    // The slant goes through both far corners: x / cut + y / cut = 1, less the kerf square to it.
    expect(keeps!.length).toBeCloseTo(length / 2 - (2.2 * Math.SQRT2) / 2, 3)
    expect(keeps!.width).toBeCloseTo(keeps!.length, 6)
  })

  it('of a window for pipes is kept too, a kerf less on all four sides, and small notches are not told', () => {
    const { sawn } = sawnOf('sinkBase', { offcutLeast: LEAST })
    expect(sawn).toHaveLength(0)
    const small = sawnOf('sinkBase', { offcutLeast: { length: 200, width: 200 } }).sawn
    expect(small).toHaveLength(1)
    expect(small[0]).toMatchObject({ what: 'cut-out', length: 250, width: 300 })
    expect(small[0]!.keeps).toEqual({ length: 250 - 2 * 2.2, width: 300 - 2 * 2.2 })
  })

  it('is never more than what a board lost of its rectangle', () => {
    for (const name of ['cornerBase', 'cornerUpper', 'diagonalBase', 'diagonalUpper'] as const) {
      const { parts, sawn } = sawnOf(name, { offcutLeast: { length: 50, width: 50 } })
      for (const { boards, keeps } of sawn) {
        const part = parts.find(({ mark }) => mark === boards[0])!
        const bare = { ...part, operations: part.operations.slice(0, 1) }
        const lost = part.length * part.width - volumeOf(bare) / part.thickness
        expect((keeps?.length ?? 0) * (keeps?.width ?? 0), `${name} ${boards}`).toBeLessThan(lost)
      }
    }
  })
})
