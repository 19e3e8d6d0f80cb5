import { beforeEach, describe, expect, it } from 'vitest'
import { demonstrationKitchen, type MethodId } from '../../../engine/index'
import { applyProposal, leaveProposal, proposalOf, propose } from '../../../web/store/proposing'
import { useStore } from '../../../web/store/store'

const m1 = 'm1' as MethodId
const m2 = 'm2' as MethodId
const { actions } = useStore.getState()

function waiting(): string | null {
  return proposalOf(useStore.getState())?.words ?? null
}

function steps(): number {
  return useStore.getState().history.past.length
}

beforeEach(() => actions.open(demonstrationKitchen()))

describe('a change of a build method', () => {
  it('is made at once while it changes no board', () => {
    propose({ kind: 'editMethod', id: m1, change: { name: 'House standard' } })
    expect([waiting(), steps()]).toEqual([null, 1])
    propose({ kind: 'editMethod', id: m2, change: { bottom: 'under' } })
    expect([waiting(), steps()]).toEqual([null, 2])
  })

  it('waits where boards change, shown and not yet made', () => {
    const before = useStore.getState().history.present
    propose({ kind: 'editMethod', id: m1, change: { bottom: 'under' } })
    // The bottom and both sides of each.
    expect(waiting()).toBe(`Changes 10 cabinets: ${10 * 3} parts of other sizes.`)
    expect(useStore.getState().history.present).toBe(before)
    expect(useStore.getState().shown.methods[m1]!.bottom).toBe('under')
  })

  it('is one step with the changes that follow before it is applied', () => {
    propose({ kind: 'editMethod', id: m1, change: { bottom: 'under' } })
    propose({ kind: 'editMethod', id: m1, change: { top: 'over' } })
    propose({ kind: 'editMethod', id: m2, change: { top: 'over' } })
    applyProposal()
    const { methods } = useStore.getState().history.present
    expect([methods[m1]!.bottom, methods[m1]!.top, methods[m2]!.top]).toEqual(['under', 'over', 'over'])
    expect([waiting(), steps()]).toEqual([null, 1])
    actions.undo()
    expect(useStore.getState().history.present.methods[m1]!.bottom).toBe('between')
  })

  it('that is left, or turned back to what it was, leaves the very same project', () => {
    const before = useStore.getState().history.present
    propose({ kind: 'editMethod', id: m1, change: { bottom: 'under' } })
    leaveProposal()
    expect([waiting(), useStore.getState().shown]).toEqual([null, before])
    propose({ kind: 'editMethod', id: m1, change: { bottom: 'under' } })
    propose({ kind: 'editMethod', id: m1, change: { bottom: 'between' } })
    expect([waiting(), steps()]).toEqual([null, 0])
    expect(useStore.getState().shown).toBe(before)
  })

  it('to another method for the project waits as well', () => {
    propose({ kind: 'useMethod', id: m2 })
    expect(waiting()).toMatch(/^Changes 10 cabinets: /)
  })

  it('is no drag: a drag under the hand is not taken for one', () => {
    actions.preview({ kind: 'several', edits: [] })
    expect(waiting()).toBeNull()
    actions.preview({ kind: 'rename', name: 'Lock cottage' })
    applyProposal()
    expect(steps()).toBe(0)
  })
})
