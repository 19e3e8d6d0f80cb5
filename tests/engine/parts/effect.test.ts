import { describe, expect, it } from 'vitest'
import type { MaterialId, MethodId } from '../../../engine/basics/id'
import { type Effect, effectOf, effectWords } from '../../../engine/parts/effect'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { Edit } from '../../../engine/project/edit'
import type { BuildMethod } from '../../../engine/project/method'
import { aWall, cabinet, idOf } from '../../helpers/wall'

const m1 = 'm1' as MethodId
const m2 = 'm2' as MethodId
// Each box of the shop standard: sides, bottom, back and a nailer at the top; bases two stretchers, uppers a top.
const project = aWall(
  cabinet('B1', { overrides: { floor: { kind: 'none' } } }),
  cabinet('B2', { left: 700, method: m2 }),
  cabinet('U1', { overrides: { bottom: 'under' } }),
)

function after(...edits: readonly Edit[]): Effect {
  const changed = applyEdit(project, { kind: 'several', edits })
  return effectOf(derive(project).cabinets, derive(changed).cabinets)
}

function changing(change: Partial<BuildMethod>): Edit {
  return { kind: 'editMethod', id: m1, change }
}

describe('what a change does to the boards', () => {
  it('is nothing for another name', () => {
    expect(effectWords(after(changing({ name: 'House standard' })))).toBe('')
    expect(after(changing({ name: 'House standard' })).marks).toEqual([])
  })

  it('leaves out cabinets of another method, and those that make this choice themselves', () => {
    // The bottom of B1 goes under its sides: it grows by two sides less two dados, and both sides lose it.
    expect(after(changing({ bottom: 'under' })).marks).toEqual(['B1'])
  })

  it('tells new boards from those that are gone', () => {
    const { marks, added, gone } = after(changing({ baseTop: { kind: 'full' } }))
    expect({ marks, added, gone }).toEqual({ marks: ['B1'], added: 1, gone: 2 })
  })

  it('counts boards of another size: a wider nailer in each of two cabinets', () => {
    const effect = after(changing({ nailers: { where: 'inside', top: true, bottom: false, width: 110 } }))
    expect(effect).toMatchObject({ resized: 2, ofOtherBoard: 0, added: 0, gone: 0, marks: ['B1', 'U1'] })
  })

  it('counts boards of another material apart from those that only change their size', () => {
    const effect = after(changing({ backMaterial: 'drawer' as MaterialId }))
    expect(effect.ofOtherBoard).toBe(2)
  })

  it('counts a board that keeps its size but is grooved otherwise', () => {
    const groove = { kind: 'groove', inset: 14, depth: 6, clearance: 1.5 } as const
    const effect = after(changing({ back: groove }))
    expect(effect.reworked).toBeGreaterThan(0)
    expect(effect.added + effect.gone).toBe(0)
  })

  it('counts every board of a cabinet that comes or goes', () => {
    const count = derive(project).cabinetOf[idOf('B2')]!.parts.length
    const effect = after({ kind: 'removeCabinets', ids: [idOf('B2')] })
    expect(effect).toMatchObject({ gone: count, added: 0, marks: ['B2'] })
  })

  it('is nothing for cabinets that are only moved', () => {
    expect(effectWords(after({ kind: 'shapeCabinets', shapes: [{ id: idOf('B1'), left: 1400 }] }))).toBe('')
  })

  it('is the same the other way round, with what is new gone', () => {
    const changed = applyEdit(project, changing({ baseTop: { kind: 'full' }, top: 'over' }))
    const there = effectOf(derive(project).cabinets, derive(changed).cabinets)
    const back = effectOf(derive(changed).cabinets, derive(project).cabinets)
    expect({ ...back, added: back.gone, gone: back.added, findings: 0 }).toEqual({ ...there, findings: 0 })
  })
})

describe('the words for a change', () => {
  const none: Effect = { marks: [], ofOtherBoard: 0, resized: 0, reworked: 0, added: 0, gone: 0, findings: 0 }

  it.each<[string, Partial<Effect>]>([
    ['', {}],
    [
      'Changes B1, B2, T1: 34 parts of other sizes, 6 new, 2 gone.',
      { marks: ['B1', 'B2', 'T1'], resized: 34, added: 6, gone: 2 },
    ],
    ['Changes B1: 1 part gone.', { marks: ['B1'], gone: 1 }],
    [
      'Changes 7 cabinets: 9 parts of another board, 5 placed or worked otherwise. 2 new findings.',
      { marks: ['B1', 'B2', 'B3', 'B4', 'U1', 'U2', 'T1'], ofOtherBoard: 9, reworked: 5, findings: 2 },
    ],
  ])('are "%s"', (words, effect) => {
    expect(effectWords({ ...none, ...effect })).toBe(words)
  })
})
