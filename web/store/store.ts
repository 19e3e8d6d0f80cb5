import { create } from 'zustand'
import {
  applyEdit,
  begin,
  type Derived,
  demonstrationKitchen,
  derive,
  type Edit,
  type History,
  labelOf,
  make,
  redo,
  undo,
} from '../../engine/index'
import { prunedSelection, toggled, wallFor } from './selection'
import { type Actions, currentLayout, type GestureWords, type State } from './state'

const ELSEWHERE = 'This project is open in another tab. Take over to change it here.'
const NOTHING = { kind: 'nothing' } as const

/** The state of the whole page. Only this room writes it. */
export const useStore = create<State>()((set, get) => ({
  ...openedWith(begin(demonstrationKitchen())),
  packing: 'idle',
  stage: 'design',
  table: 'cutList',
  explode: 0,
  areFrontsHidden: false,
  saving: { state: 'saved', at: null, why: null },
  notice: null,
  isElsewhere: false,
  actions: actionsOn(get, (change) => set(change)),
}))

type Change = Partial<State> | ((state: State) => Partial<State>)

function actionsOn(get: () => State, set: (change: Change) => void): Actions {
  function change(history: History) {
    const { history: before, selection, derived: shown } = get()
    if (history === before && get().preview === null) return
    const derived = derive(history.present)
    set({ history, ...atRest(history, derived), selection: prunedSelection(selection, derived, shown) })
  }
  return {
    preview: (edit, words = null) => set((state) => previewed(state, edit, words)),
    commit(edit, label) {
      const { history, isElsewhere } = get()
      if (isElsewhere) return set({ ...atRest(history), notice: { tone: 'stop', text: ELSEWHERE } })
      change(make(history, edit, label ?? labelOf(history.present, edit)))
      if (get().notice) set({ notice: null })
    },
    undo: () => change(undo(get().history)),
    redo: () => change(redo(get().history)),
    select: (selection) => set(({ derived, wall }) => ({ selection, wall: wallFor(selection, derived, wall) })),
    lookAt: (wall) => set({ wall, selection: NOTHING, placing: null }),
    toggleCabinet: (id) => set(({ selection }) => ({ selection: toggled(selection, id) })),
    place: (placing) => set({ placing }),
    setStage: (stage) => set(({ history }) => ({ stage, placing: null, ...atRest(history) })),
    setTable: (table) => set({ table }),
    setExplode: (explode) => set({ explode: Math.min(1, Math.max(0, explode)) }),
    hideFronts: (areFrontsHidden) => set({ areFrontsHidden }),
    setDisplay: (display) => get().actions.commit({ kind: 'setDisplay', display }),
    open: (project) => set(openedWith(begin(project))),
    say: (tone, text) => set({ notice: { tone, text } }),
    hush: () => set({ notice: null }),
  }
}

/** Nothing under the hand: what is shown is the present project. */
function atRest(history: History, derived: Derived = derive(history.present)) {
  return { preview: null, shown: history.present, derived, before: null, gesture: null, layoutBefore: null }
}

function openedWith(history: History) {
  const fresh = { wall: null, selection: NOTHING, layout: null, placing: null, cutting: null, isAtBench: false }
  return { history, ...atRest(history), ...fresh }
}

function previewed(state: State, edit: Edit | null, gesture: GestureWords | null): Partial<State> {
  const { history, before, layoutBefore, isElsewhere } = state
  if (isElsewhere || (edit === null && gesture === null)) return state.preview || state.gesture ? atRest(history) : {}
  if (edit === null) return { ...atRest(history), gesture }
  const shown = applyEdit(history.present, edit)
  return {
    preview: edit,
    shown,
    derived: derive(shown),
    before: before ?? state.derived,
    gesture,
    layoutBefore: before ? layoutBefore : currentLayout(state),
  }
}
