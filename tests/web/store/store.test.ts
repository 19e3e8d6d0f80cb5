import { beforeEach, describe, expect, it } from 'vitest'
import { type Edit, undoLabel } from '../../../engine/index'
import { currentLayout, type State } from '../../../web/store/state'
import { useStore } from '../../../web/store/store'
import { aWall, base, idOf } from '../input/wall'

const WIDEN: Edit = { kind: 'shapeCabinets', shapes: [{ id: idOf('B1'), width: 750 }] }
const project = aWall(base('B1'), base('B2', { left: 1000 }))

function state(): State {
  return useStore.getState()
}

beforeEach(() => {
  useStore.setState({ isElsewhere: false, notice: null })
  state().actions.open(project)
})

describe('a preview', () => {
  it('shows what the edit would make and leaves the present project alone', () => {
    state().actions.preview(WIDEN, { fits: true, text: 'fits' })
    expect(state().shown.cabinets[idOf('B1')]!.width).toBe(750)
    expect(state().derived.cabinetOf[idOf('B1')]!.cabinet.width).toBe(750)
    expect(state().before?.cabinetOf[idOf('B1')]?.cabinet.width).toBe(600)
    expect(state().history.present).toBe(project)
  })

  it('compares with where the gesture began, however many previews there were', () => {
    state().actions.preview(WIDEN)
    const { before } = state()
    state().actions.preview({ kind: 'shapeCabinets', shapes: [{ id: idOf('B1'), width: 650 }] })
    expect(state().before).toBe(before)
  })

  it('that is dropped leaves the very same project', () => {
    state().actions.preview(WIDEN, { fits: true, text: 'fits' })
    state().actions.preview(null)
    expect(state()).toMatchObject({ preview: null, before: null, gesture: null })
    expect(state().shown).toBe(project)
  })

  it('ends when it is made, as one named step', () => {
    state().actions.preview(WIDEN)
    state().actions.commit(WIDEN)
    expect(state()).toMatchObject({ preview: null, before: null })
    expect(undoLabel(state().history)).toBe('Widen B1')
    state().actions.undo()
    expect(state().shown).toBe(project)
    state().actions.redo()
    expect(state().shown.cabinets[idOf('B1')]!.width).toBe(750)
  })
})

describe('the selection', () => {
  it('loses what is deleted and keeps the rest', () => {
    state().actions.select({ kind: 'cabinets', ids: [idOf('B1'), idOf('B2')] })
    state().actions.commit({ kind: 'removeCabinets', ids: [idOf('B1')] })
    expect(state().selection).toEqual({ kind: 'cabinets', ids: [idOf('B2')] })
    state().actions.commit({ kind: 'removeCabinets', ids: [idOf('B2')] })
    expect(state().selection).toEqual({ kind: 'nothing' })
  })

  it('of a part becomes its cabinet when the part goes', () => {
    const shelved = { ...project.cabinets[idOf('B1')]!.interior, fixedShelves: 1 }
    state().actions.commit({ kind: 'setInterior', ids: [idOf('B1')], interior: shelved })
    const part = state().derived.cabinetOf[idOf('B1')]!.parts.find(({ role }) => role === 'fixedShelf')!
    state().actions.select({ kind: 'part', owner: idOf('B1'), part: part.id })
    state().actions.undo()
    expect(state().selection).toEqual({ kind: 'cabinets', ids: [idOf('B1')] })
  })

  it('is added to and taken from by toggling', () => {
    state().actions.select({ kind: 'nothing' })
    state().actions.toggleCabinet(idOf('B1'))
    state().actions.toggleCabinet(idOf('B2'))
    state().actions.toggleCabinet(idOf('B1'))
    expect(state().selection).toEqual({ kind: 'cabinets', ids: [idOf('B2')] })
  })
})

describe('a project that is open in another tab', () => {
  it('is not changed here, and it is said why', () => {
    useStore.setState({ isElsewhere: true })
    state().actions.preview(WIDEN)
    expect(state().shown).toBe(project)
    state().actions.commit(WIDEN)
    expect(state().history.present).toBe(project)
    expect(state().notice?.text).toBe('This project is open in another tab. Take over to change it here.')
  })
})

describe('the layout', () => {
  it('is current only while it answers the job of what is shown', () => {
    const answer = { sheets: [], unplaced: [], bounds: {}, proved: true }
    useStore.setState({ layout: { job: state().derived.sheetJob, answer, isSettled: true } })
    expect(currentLayout(state())?.answer).toBe(answer)
    state().actions.preview(WIDEN)
    expect(currentLayout(state())).toBeNull()
    expect(state().layoutBefore?.answer).toBe(answer)
    state().actions.preview(null)
    expect(currentLayout(state())?.answer).toBe(answer)
  })
})
