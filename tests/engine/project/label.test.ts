import { describe, expect, it } from 'vitest'
import type { MaterialId, MethodId, SequenceId, StockId } from '../../../engine/basics/id'
import type { Stock } from '../../../engine/project/document'
import type { Edit } from '../../../engine/project/edit'
import { labelOf } from '../../../engine/project/label'
import { freeNumber, markOf } from '../../../engine/project/mark'
import { aWall, cabinet, idOf } from '../../helpers/wall'

const project = aWall(cabinet('B1'), cabinet('B3', { left: 700 }), cabinet('U2'), cabinet('T1', { left: 3000 }))
const [b1, b3, u2, t1] = ['B1', 'B3', 'U2', 'T1'].map(idOf) as [never, never, never, never]

const m1 = 'm1' as MethodId
const [sheet] = Object.values(project.stock) as [Stock]

describe('the name of a step', () => {
  it.each<[string, Edit]>([
    ['Widen B3', { kind: 'shapeCabinets', shapes: [{ id: b3, width: 780 }] }],
    ['Narrow B3', { kind: 'shapeCabinets', shapes: [{ id: b3, left: 800, width: 500 }] }],
    [
      'Widen B1',
      {
        kind: 'shapeCabinets',
        shapes: [
          { id: b1, width: 780 },
          { id: b3, left: 780 },
        ],
      },
    ],
    ['Move B3', { kind: 'shapeCabinets', shapes: [{ id: b3, left: 900 }] }],
    [
      'Move B1 and B3',
      {
        kind: 'shapeCabinets',
        shapes: [
          { id: b1, left: 9 },
          { id: b3, left: 900 },
        ],
      },
    ],
    ['Let the grain run on over the fronts of B1', { kind: 'letGrainRun', ids: [b1], way: 'running' }],
    ['Let the grain run across B1', { kind: 'letGrainRun', ids: [b1], way: 'across' }],
    ['Cut apart the fronts of B1', { kind: 'letGrainRun', ids: [b1], way: 'none' }],
    ['Take boards from any sheet', { kind: 'pin', parts: [], stock: null }],
    ['Take boards from any sheet', { kind: 'pinSheet', parts: [], sheet: null }],
    ['Choose one sheet for boards', { kind: 'pinSheet', parts: [], sheet: 3 }],
    ['Cut boards by themselves', { kind: 'putInSequence', parts: [], sequence: null }],
    [
      'Cut boards in sequence',
      { kind: 'putInSequence', parts: [], sequence: { id: 'g1' as SequenceId, along: 'width' } },
    ],
    ['Set sheets aside', { kind: 'putStock', stock: { ...sheet, isExcluded: true } }],
    ['Change sheets', { kind: 'putStock', stock: { ...sheet, price: 17 } }],
    ['Add offcuts', { kind: 'putStock', stock: { ...sheet, id: 's77' as StockId, isOffcut: true } }],
    ['Raise U2', { kind: 'shapeCabinets', shapes: [{ id: u2, bottom: 1500 }] }],
    ['Heighten T1', { kind: 'shapeCabinets', shapes: [{ id: t1, height: 2300 }] }],
    ['Delete B1', { kind: 'removeCabinets', ids: [b1] }],
    ['Delete B1 and U2', { kind: 'removeCabinets', ids: [b1, u2] }],
    ['Delete B1, B3 and U2', { kind: 'removeCabinets', ids: [b1, b3, u2] }],
    ['Add U4', { kind: 'addCabinet', cabinet: cabinet('U4') }],
    ['Change front of B1', { kind: 'setFront', ids: [b1], front: { kind: 'pair' } }],
    [
      'Change thickness of 18 mm birch ply',
      { kind: 'editMaterial', id: 'carcass' as MaterialId, change: { thickness: 17.7 } },
    ],
    ['Copy Shop standard', { kind: 'copyMethod', id: m1 }],
    ['Remove Shop standard', { kind: 'removeMethod', id: m1 }],
    ['Build by Shop standard', { kind: 'useMethod', id: m1 }],
    [
      'Bring in Boat lockers',
      {
        kind: 'putMethod',
        method: { ...project.methods[m1]!, id: 'm9' as MethodId, name: 'Boat lockers' },
        materials: [],
      },
    ],
    ['Change Shop standard', { kind: 'putMethod', method: project.methods[m1]!, materials: [] }],
    ['Remove build method', { kind: 'removeMethod', id: 'constructor' as MethodId }],
    ['Show inches', { kind: 'setDisplay', display: { unit: 'in', step: 32 } }],
  ])('is "%s"', (label, edit) => {
    expect(labelOf(project, edit)).toBe(label)
  })

  it('names all cabinets that get a front in one step, each once', () => {
    const front = { kind: 'open' } as const
    const interior = { fixedShelves: 0, adjustableShelves: 0, partition: null }
    const both: Edit = {
      kind: 'several',
      edits: [
        { kind: 'setFront', ids: [b1], front },
        { kind: 'setInterior', ids: [b1], interior },
      ],
    }
    const edits: Edit[] = [both, { kind: 'setFront', ids: [b3], front }]
    expect(labelOf(project, { kind: 'several', edits })).toBe('Change front of B1 and B3')
  })

  it('is that of its first edit when it is made of several', () => {
    expect(labelOf(project, { kind: 'several', edits: [{ kind: 'removeCabinets', ids: [t1] }] })).toBe('Delete T1')
  })
})

describe('the mark of a cabinet', () => {
  it('is a letter for its kind and its number', () => {
    expect(['B3', 'U2', 'T1'].map((mark) => markOf(cabinet(mark)))).toEqual(['B3', 'U2', 'T1'])
  })

  it('fills the first free number of its kind', () => {
    expect(freeNumber(project, { kind: 'base' })).toBe(2)
    expect(freeNumber(project, { kind: 'upper' })).toBe(1)
    expect(freeNumber(project, { kind: 'tall' })).toBe(2)
  })
})
