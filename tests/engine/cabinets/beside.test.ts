import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../../engine/basics/id'
import { boxOf } from '../../../engine/cabinets/boardBox'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { partsOf } from '../../../engine/parts/partsOf'
import { type Beside, type CabinetKind, NOTHING_BESIDE } from '../../../engine/project/document'
import { aCabinet, type MethodChanges, rulesWith } from '../../helpers/cabinets'

const FRONT = 'front' as MaterialId
const BACK = 'back' as MaterialId
const NOTCHED: MethodChanges = { floor: { kind: 'notched', height: 100, setback: 75 } }

function partsBeside(left: Beside, changes: MethodChanges = {}, kind: CabinetKind = 'base') {
  const cabinet = aCabinet(kind, { front: { kind: 'pair' }, beside: { ...NOTHING_BESIDE, left } })
  const rules = rulesWith(changes)
  return partsOf(buildCabinet(cabinet, rules), rules)
}

function the(parts: ReturnType<typeof partsBeside>, role: string) {
  const part = parts.find((one) => one.role === role)
  if (!part) throw new Error(`no ${role} among ${parts.map((one) => one.role).join(', ')}`)
  return part
}

describe('a filler', () => {
  const filler: Beside = { kind: 'filler', width: 42, scribe: 12 }

  it('closes its gap from the kick to the top, flush with the fronts', () => {
    const part = the(partsBeside(filler, NOTCHED), 'filler')
    expect([part.length, part.width, part.thickness]).toEqual([720 - 100, 42, 19])
    expect(boxOf(part)).toEqual({ min: { x: -42, y: 100, z: 580 }, max: { x: 0, y: 720, z: 580 + 19 } })
  })
  it('is cut wider by what is scribed on site', () => {
    const { cutLength, cutWidth, material, mark } = the(partsBeside(filler, NOTCHED), 'filler')
    expect([cutLength, cutWidth, material, mark]).toEqual([720 - 100, 42 + 12, 'front', 'B1-FR'])
  })
  it('is banded as fronts are, but not along the edge that is scribed to the wall, and cut smaller by that', () => {
    const banding = { carcass: 1, fronts: 2, isInFinishedSize: true }
    const scribed = the(partsBeside(filler, { ...NOTCHED, banding }), 'filler')
    // Beside the left of a carcass the wall is at its own left.
    expect(scribed.banding).toEqual({ low: 0, high: 2, start: 2, end: 2 })
    expect([scribed.cutLength, scribed.cutWidth]).toEqual([720 - 100 - 2 - 2, 42 - 2 + 12])
    const between = the(partsBeside({ ...filler, scribe: 0 }, { ...NOTCHED, banding }), 'filler')
    expect([between.cutLength, between.cutWidth]).toEqual([720 - 100 - 2 - 2, 42 - 2 - 2])
  })
  it('has a return behind it, on the side of the carcass', () => {
    const part = the(partsBeside(filler), 'fillerReturn')
    expect(boxOf(part)).toEqual({ min: { x: -18, y: 0, z: 580 - 60 }, max: { x: 0, y: 720, z: 580 } })
  })
  it('that is narrower than the carcass board has no return, and one narrower than its own board is told', () => {
    const cabinet = aCabinet('base', { beside: { ...NOTHING_BESIDE, right: { kind: 'filler', width: 16, scribe: 0 } } })
    const { boards, problems } = buildCabinet(cabinet, rulesWith())
    expect(boards.map(({ role }) => role)).not.toContain('fillerReturn')
    expect(problems.map(({ message }) => message)).toContain(
      'B1: the filler at its right is 16 mm wide; its board is 19 mm thick.',
    )
  })
  it('stands within the carcass beside inset fronts', () => {
    const { min, max } = boxOf(the(partsBeside(filler, { frontMount: 'inset' }), 'filler'))
    expect([min.z, max.z]).toEqual([580 - 19, 580])
  })
})

describe('a finished end', () => {
  it('that is a skin is as large as the side, with its notch', () => {
    const skin = the(partsBeside({ kind: 'skin', material: BACK }, NOTCHED), 'leftEnd')
    expect([skin.length, skin.width, skin.thickness, skin.mark]).toEqual([720, 580, 6, 'B1-LE'])
    expect(skin.operations).toEqual([{ kind: 'notch', x: 0, y: 580 - 75, length: 100, width: 75 }])
  })
  it('that is a panel covers the edges of the fronts and stands on the floor', () => {
    const panel = the(partsBeside({ kind: 'panel', material: FRONT, foot: 'floor' }, NOTCHED), 'leftEnd')
    expect([panel.length, panel.width, panel.thickness]).toEqual([720, 580 + 19, 19])
    expect(panel.operations).toEqual([])
    expect(boxOf(panel).max.x).toBe(0)
  })
  it('has the kick cut out of it so that the kick can run on before it', () => {
    const panel = the(partsBeside({ kind: 'panel', material: FRONT, foot: 'notched' }, NOTCHED), 'leftEnd')
    expect(panel.operations).toEqual([{ kind: 'notch', x: 0, y: 580 - 75, length: 100, width: 75 + 19 }])
  })
  it('of an upper is as high as its box', () => {
    const panel = the(partsBeside({ kind: 'panel', material: FRONT, foot: 'notched' }, NOTCHED, 'upper'), 'leftEnd')
    expect([panel.length, panel.width, panel.operations]).toEqual([720, 330 + 19, []])
  })
  it('at the right lies beyond the width and is another part', () => {
    const beside = { ...NOTHING_BESIDE, right: { kind: 'skin', material: BACK } } as const
    const rules = rulesWith()
    const [part] = partsOf(buildCabinet(aCabinet('base', { beside }), rules), rules).filter(
      ({ role }) => role === 'rightEnd',
    )
    expect([part?.mark, part && boxOf(part).min.x]).toEqual(['B1-RE', 600])
  })
})
