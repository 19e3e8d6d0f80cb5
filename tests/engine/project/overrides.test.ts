import { describe, expect, it } from 'vitest'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { Project } from '../../../engine/project/document'
import { USUAL_POCKETS } from '../../../engine/project/fixing'
import { type Overrides, overridden, ownNames, RULE_SETS, withOwn } from '../../../engine/project/overrides'
import { readProject, writeProject } from '../../../engine/project/schema'
import { PLAIN } from '../../helpers/cabinets'
import { aWall, cabinet, idOf, the } from '../../helpers/wall'

const SHELF = { fixedShelves: 0, adjustableShelves: 1, partition: null }
const two = aWall(cabinet('U1', { interior: SHELF }), cabinet('U2', { left: 700, interior: SHELF }))
const override = (project: Project, choices: Overrides) =>
  applyEdit(project, { kind: 'override', ids: [idOf('U1')], choices })
const shelfOf = (project: Project, mark: string) =>
  derive(project)
    .cabinets.find((one) => one.mark === mark)!
    .parts.find(({ role }) => role === 'adjustableShelf')!

describe('a single measure that a cabinet settles itself', () => {
  const setback = the(two, 'U1') && two.methods[two.method]!.shelves.setback
  const own = override(two, { shelves: { setback: setback + 25 } })

  it('changes that cabinet alone, and nothing else of its set', () => {
    expect(shelfOf(two, 'U1').width - shelfOf(own, 'U1').width).toBe(25)
    expect(shelfOf(own, 'U2')).toEqual(shelfOf(two, 'U2'))
    const method = withOwn(two.methods[two.method]!, the(own, 'U1').overrides)
    expect(method.shelves).toEqual({ ...two.methods[two.method]!.shelves, setback: setback + 25 })
  })

  it('stays when the method changes otherwise, and the other measures follow the method', () => {
    const { id, shelves } = two.methods[two.method]!
    const changed = applyEdit(own, {
      kind: 'editMethod',
      id,
      change: { shelves: { ...shelves, setback: setback + 5, sideClearance: shelves.sideClearance + 2 } },
    })
    expect(shelfOf(changed, 'U1').width).toBe(shelfOf(own, 'U1').width)
    expect(shelfOf(changed, 'U1').length).toBe(shelfOf(own, 'U1').length - 2)
    expect(shelfOf(changed, 'U2').width).toBe(shelfOf(own, 'U2').width - 5)
  })

  it('goes back to the method alone, and the set with the last of it', () => {
    const both = override(own, { shelves: { pitch: 50 }, back: { kind: 'none' } })
    expect(ownNames(the(both, 'U1').overrides)).toEqual(['shelves.setback', 'shelves.pitch', 'back'])
    const one = override(both, { shelves: { pitch: undefined } })
    expect(the(one, 'U1').overrides).toEqual({ shelves: { setback: setback + 25 }, back: { kind: 'none' } })
    expect(the(override(one, { shelves: { setback: undefined } }), 'U1').overrides).toEqual({ back: { kind: 'none' } })
    // All at once, as one click has it.
    expect(the(override(both, { shelves: undefined, back: undefined }), 'U1').overrides).toEqual({})
  })

  it('is in the file, and one that is out of its range is refused by its name', () => {
    const text = writeProject(own)
    const read = readProject(text)
    expect(read.ok && read.value).toEqual(own)
    const wrong = readProject(text.replace(`"setback": ${setback + 25}`, '"setback": -4'))
    expect(!wrong.ok && wrong.message).toMatch(/cabinets\.\w+\.overrides\.shelves\.setback is -4; it must be between 0/)
  })
})

describe('what a cabinet settles of every set of rules', () => {
  it('is merged into what its method says, and what a method may lack is left out by null', () => {
    const balanced = {
      ...PLAIN,
      shelves: { ...PLAIN.shelves, balance: { rows: 'asLeft', arePlatesOn: true } },
    } as const
    expect(withOwn(balanced, { shelves: { balance: null } }).shelves).toEqual(PLAIN.shelves)
    expect(withOwn(PLAIN, { pockets: { angle: 12 } }).pockets).toEqual({ ...USUAL_POCKETS, angle: 12 })
    for (const set of RULE_SETS) {
      const before = { ...PLAIN, pockets: USUAL_POCKETS }[set] as unknown as Record<string, number>
      const measure = Object.keys(before).find((name) => typeof before[name] === 'number')!
      const method = withOwn(PLAIN, { [set]: { [measure]: before[measure]! + 1 } } as Overrides)
      expect(method[set], set).toEqual({ ...before, [measure]: before[measure]! + 1 })
    }
  })

  it('is the very same method where nothing is', () => {
    expect(withOwn(PLAIN, {})).toBe(PLAIN)
    expect(overridden({}, { hinge: { cupDepth: undefined } })).toEqual({})
  })
})
