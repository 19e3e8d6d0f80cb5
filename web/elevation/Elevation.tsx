import { type FocusEvent, memo, useCallback, useEffect, useMemo, useRef, useState } from 'react'
import {
  type CabinetId,
  formatLength,
  type NewKind,
  newCabinetAt,
  newKindName,
  type Project,
  placesFor,
  type Rect,
  startOf,
  type WallId,
} from '../../engine/index'
import { placesToMove } from '../input/commands'
import { added } from '../input/create'
import { movedBy } from '../input/move'
import { chosenCabinets } from '../store/selection'
import type { Placing } from '../store/state'
import { useStore } from '../store/store'
import { useWallInSight } from '../store/wall'
import { Cabinets } from './Cabinets'
import { Dimensions } from './Dimensions'
import { Dividers } from './Dividers'
import styles from './Elevation.module.css'
import { Guides, Handles, Slots, WrongHatch } from './Overlay'
import { ReachingIn } from './ReachingIn'
import { Tray } from './Tray'
import { Typing } from './Typing'
import { useHand } from './useHand'
import { useInSight } from './useInSight'
import { focusCabinet, useKeys } from './useKeys'
import { useView, type ViewHands } from './useView'
import { FirstWords, WallDrawing } from './WallDrawing'
import { WallTabs } from './WallTabs'

interface ElevationProps {
  /** Where there is room for little, the drawing stands alone, without the tray, the walls and the buttons of its view. */
  readonly isBare?: boolean
}

const NO_GUIDES = [] as const

/** The wall seen from the room, to scale: cabinets are pulled onto it, moved, stretched and measured here. */
export function Elevation({ isBare = false }: ElevationProps) {
  const shown = useStore((state) => state.shown)
  const selection = useStore((state) => state.selection)
  const gesture = useStore((state) => state.gesture)
  const placing = useStore((state) => state.placing)
  const actions = useStore((state) => state.actions)
  const wall = useWallInSight()!
  const host = useRef<HTMLElement>(null)
  const isSpaceDown = useRef(false)
  const [said, announce] = useState('')
  const [typing, setTyping] = useState<string | null>(null)
  const areSeveral = Object.keys(shown.walls).length > 1
  const views = useView(host, wall, { isBare, areSeveral })
  const { view } = views
  const mmPerPx = 1 / view.zoom
  const chosen = chosenCabinets(selection)
  const typeWidth = useCallback((id: CabinetId) => setTyping(`width ${id}`), [])
  const hand = useHand(host, views, isSpaceDown, announce)
  const keys = useKeys(host, views, isSpaceDown, announce, typeWidth)
  const slots = useMemo(() => (placing ? slotsFor(shown, placing, wall.id) : []), [shown, placing, wall.id])
  // Who asked for the places by keys has the keys on the first of them.
  useEffect(() => {
    if (placing && document.activeElement?.matches(':focus-visible')) {
      host.current?.querySelector<SVGElement>('[data-slot]')?.focus({ preventScroll: true })
    }
  }, [placing])
  useInSight(views, wall)
  const single = chosen.length === 1 ? shown.cabinets[chosen[0]!] : undefined

  const onFocus = useCallback(
    (event: FocusEvent) => {
      const drawn = event.target instanceof SVGElement && event.target.closest<SVGElement>('[data-cabinet]')
      const id = drawn && (drawn.dataset.cabinet as CabinetId)
      const { selection: before } = useStore.getState()
      if (!id || !drawn.matches(':focus-visible') || chosenCabinets(before).includes(id)) return
      actions.select({ kind: 'cabinets', ids: [id] })
    },
    [actions],
  )

  const pick = useCallback((cabinet: NewKind) => actions.place({ kind: 'new', cabinet }), [actions])

  const typeNext = useCallback((key: string | null) => {
    setTyping(key)
    if (key === null) host.current?.focus({ preventScroll: true })
  }, [])

  function place(slot: Rect) {
    if (!placing) return
    const outcome = placedAt(shown, placing, slot, wall.id)
    if (!outcome?.edit || !outcome.words?.fits) return actions.say('stop', `${outcome?.words?.text ?? 'No place'}.`)
    actions.commit(outcome.edit)
    actions.select({ kind: 'cabinets', ids: outcome.about })
    actions.place(null)
    announce(outcome.words.text)
    requestAnimationFrame(() => focusCabinet(host.current, outcome.about[0] ?? null))
  }

  return (
    <section
      ref={host}
      className={styles.host}
      aria-label={`Elevation of ${wall.name}`}
      tabIndex={-1}
      data-gesture={gesture ? (gesture.fits ? 'fits' : 'wrong') : undefined}
      onFocus={onFocus}
      {...hand}
      {...keys}
    >
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be a drawing. */}
      <svg className={styles.drawing} aria-label={`${wall.name} seen from the room`} role="group">
        <g transform={`translate(${view.x} ${view.y}) scale(${view.zoom})`}>
          <WrongHatch mmPerPx={mmPerPx} />
          <WallDrawing wall={wall} display={shown.display} mmPerPx={mmPerPx} />
          {isEmpty(shown) && !placing && <FirstWords wall={wall} mmPerPx={mmPerPx} />}
          <ReachingIn project={shown} wall={wall} mmPerPx={mmPerPx} />
          <Cabinets wall={wall.id} mmPerPx={mmPerPx} />
          {gesture?.guides && <Guides guides={gesture.guides ?? NO_GUIDES} wall={wall} mmPerPx={mmPerPx} />}
          <Dimensions project={shown} wall={wall} chosen={chosen} mmPerPx={mmPerPx} onType={setTyping} />
          {single && <Dividers project={shown} cabinet={single} mmPerPx={mmPerPx} />}
          {single && <Handles cabinet={single} mmPerPx={mmPerPx} />}
          {placing && (
            <Slots
              slots={slots}
              verb={placing.kind === 'new' ? `Put a new ${newKindName(placing.cabinet)}` : 'Move it'}
              show={(length) => formatLength(length, shown.display)}
              mmPerPx={mmPerPx}
              onPlace={place}
            />
          )}
        </g>
      </svg>
      {!isBare && (
        <div className={styles.walls}>
          <WallTabs />
        </div>
      )}
      {!isBare && <Tray placing={placing} onPlace={pick} />}
      {placing && <PlacingWords placing={placing} count={slots.length} onStop={() => actions.place(null)} />}
      {typing !== null && (
        <Typing key={typing} dimension={typing} view={view} onDimension={typeNext} announce={announce} />
      )}
      {!isBare && <ViewButtons zoomMiddle={views.zoomMiddle} fit={views.fit} />}
      <p className="unseen" aria-live="polite">
        {said}
      </p>
    </section>
  )
}

function isEmpty({ cabinets }: Project): boolean {
  return Object.keys(cabinets).length === 0
}

function slotsFor(project: Project, placing: Placing, wall: WallId): Rect[] {
  if (placing.kind === 'move') return placesToMove(project, placing.id)
  return placesFor(project, placing.cabinet, startOf(project, placing.cabinet).width, wall)
}

function placedAt(project: Project, placing: Placing, slot: Rect, wall: WallId) {
  if (placing.kind === 'move') {
    const cabinet = project.cabinets[placing.id]
    return cabinet ? movedBy(project, [placing.id], slot.left - cabinet.left, 0, false) : null
  }
  const cabinet = newCabinetAt(project, placing.cabinet, slot.left, slot.width, wall)
  return cabinet && added(project, cabinet)
}

interface PlacingWordsProps {
  readonly placing: Placing
  readonly count: number
  readonly onStop: () => void
}

function PlacingWords({ placing, count, onStop }: PlacingWordsProps) {
  const what = placing.kind === 'new' ? newWords(placing.cabinet) : 'it'
  const words = count > 0 ? `Pick where to put ${what}` : `There is no free place for ${what}`
  return (
    <div className={styles.placing} role="status" data-nohand>
      {words}
      <button type="button" onClick={onStop}>
        Leave it
      </button>
    </div>
  )
}

/** `an end shelf` */
function newWords(what: NewKind): string {
  const name = newKindName(what)
  return `${/^[aeiou]/.test(name) ? 'an' : 'a'} ${name}`
}

const ViewButtons = memo(function ViewButtons({ zoomMiddle, fit }: Pick<ViewHands, 'zoomMiddle' | 'fit'>) {
  return (
    <div className={styles.views} role="toolbar" aria-label="View of the wall" data-nohand>
      <button type="button" aria-label="Farther" onClick={() => zoomMiddle(0.8)}>
        −
      </button>
      <button type="button" onClick={fit}>
        Fit
      </button>
      <button type="button" aria-label="Nearer" onClick={() => zoomMiddle(1.25)}>
        +
      </button>
    </div>
  )
})
