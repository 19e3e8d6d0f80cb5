import { memo, type ReactNode, useCallback, useDeferredValue, useMemo, useRef } from 'react'
import {
  cutNumbersOf,
  type Derived,
  leftOut,
  type MaterialId,
  onOtherSheets,
  type PlacedPart,
} from '../../engine/index'
import { inputOf } from '../store/cutting'
import { currentLayout, type Layout } from '../store/state'
import { useStore } from '../store/store'
import { useCurrency, useFollowing } from '../store/turns'
import { chosenParts, selectionOf } from '../tables/chosen'
import { Button } from '../ui/Button'
import { leavingAside } from './aside'
import { BoardBar } from './BoardBar'
import { BuyTable } from './BuyTable'
import { areCutAlike, type Fold, foldsOf, litPlaces, nextPart } from './folds'
import { keepingOf } from './keep'
import { LookingBar } from './LookingBar'
import { SawnOutList } from './SawnOutList'
import { SheetFigure } from './SheetFigure'
import { scaleFor } from './SheetPicture'
import styles from './Sheets.module.css'
import { ThriftForm } from './ThriftForm'
import { countWords } from './words'

/**
 * The sheets of the shown design. While the packer works, the last layout stays in sight, dimmed and named as what it
 * is: the layout of the design before this change.
 */
export function SheetsView() {
  const seen = usePictured()
  const later = useDeferredValue(seen)
  // At rest many sheets may have to be drawn, which waits for what is more pressing; under the hand few are.
  const { derived, layout } = seen.isLive ? seen : later
  const packing = useStore((state) => state.packing)
  const current = currentLayout({ layout, derived })
  const shown = useLastFit(current, derived)
  if (derived.cutList.rows.length === 0) {
    return (
      <div className={styles.empty}>
        <strong>No sheets to cut yet.</strong>
        <p>
          Put a cabinet on the wall: its boards are laid out on sheets as you draw, and what to buy is counted here.
        </p>
      </div>
    )
  }
  return (
    <View isCurrent={current !== null && layout === seen.layout}>
      {shown && <Standing layout={currentLayout(seen)} isLive={seen.isLive} />}
      {!shown && packing === 'thinking' && <p className={styles.thinking}>Laying the boards out on sheets…</p>}
      {packing === 'failed' && (
        <p className={styles.failed} role="alert">
          <span aria-hidden="true">■</span> The sheets could not be laid out. Change anything to try again; nothing is
          lost.
        </p>
      )}
      {shown && (
        <div className={current ? undefined : styles.dimmed} data-old={current ? undefined : true}>
          <Sheets {...shown} isCurrent={current !== null} />
        </div>
      )}
    </View>
  )
}

/** How many sheets it takes and how far the search is: told at once, while the pictures may follow a moment later. */
function Standing({ layout, isLive }: { readonly layout: Layout | null; readonly isLive: boolean }) {
  if (!layout)
    return <p className={styles.words}>Being laid out anew. These are the sheets of the design before this change.</p>
  return (
    <p className={layout.answer.proved && !layout.answer.mayCostLess ? styles.proved : styles.words}>
      {countWords(layout)}
      {!isLive && <LookingBar layout={layout} />}
    </p>
  )
}

/** The design whose sheets are drawn, and their layout. */
function usePictured() {
  const derived = useFollowing('pictures', (state) => state.derived)
  const layout = useFollowing('pictures', (state) => state.layout)
  const isLive = useFollowing('pictures', (state) => state.preview !== null)
  return useMemo(() => ({ derived, layout, isLive }), [derived, layout, isLive])
}

/** A layout is current when it is that of the wall as it is now; one that falls behind the hand is dimmed. */
function View({ isCurrent, children }: { readonly isCurrent: boolean; readonly children: ReactNode }) {
  const currency = useCurrency('pictures')
  return (
    <div className={styles.view} data-layout={isCurrent && currency === 'now' ? 'current' : 'old'}>
      <div className={currency === 'late' ? styles.late : undefined}>{children}</div>
    </div>
  )
}

/** The last layout that fitted, with the design that it fitted: row marks of a later design would tell lies on it. */
function useLastFit(
  current: Layout | null,
  derived: Derived,
): { readonly layout: Layout; readonly derived: Derived } | null {
  const last = useRef<{ readonly layout: Layout; readonly derived: Derived } | null>(null)
  if (current) last.current = { layout: current, derived }
  return last.current
}

interface SheetsProps {
  readonly layout: Layout
  readonly derived: Derived
  readonly isCurrent: boolean
}

const Sheets = memo(function Sheets({ layout, derived, isCurrent }: SheetsProps) {
  const selection = useFollowing('pictures', (state) => state.selection)
  const { display, materials } = derived.project
  const isLive = useFollowing('pictures', (state) => state.preview !== null)
  const folds = useFolds(layout, derived, isLive)
  const chosen = useMemo(() => (isLive ? null : chosenParts(selection, derived)), [isLive, selection, derived])
  // The selection is read when a part is picked, so that a picture is drawn again only when its own light changes.
  const latest = useRef({ selection, derived, isCurrent })
  latest.current = { selection, derived, isCurrent }
  const actions = useStore((state) => state.actions)
  const onPick = useCallback(
    (parts: readonly PlacedPart[]) => {
      const part = nextPart(parts, latest.current.selection)
      if (part && latest.current.isCurrent) actions.select(selectionOf(part, latest.current.derived))
    },
    [actions],
  )
  const onKeep = useCallback(
    (fold: Fold) => {
      const edit = keepingOf(fold, latest.current.derived.project)
      if (!edit) actions.say('stop', 'This sheet is cut too finely to be kept as it is.')
      else if (latest.current.isCurrent) actions.commit(edit)
    },
    [actions],
  )
  const onAside = useCallback(
    (fold: Fold) => {
      const leaving = leavingAside(fold, latest.current.derived.project)
      if (leaving && latest.current.isCurrent) actions.commit(leaving.edit, leaving.label)
    },
    [actions],
  )
  const turns = useMemo(
    () => (isLive || !layout.isSettled ? null : cutNumbersOf(inputOf(derived, layout.job, layout.answer))),
    [derived, layout, isLive],
  )
  return (
    <>
      <LeftOut layout={layout} derived={derived} isCurrent={isCurrent} />
      {!isLive && <Outgrown derived={derived} />}
      {!isLive && isCurrent && <BoardBar {...{ selection, derived, folds }} />}
      {!isLive && <ThriftForm project={derived.project} />}
      <div className={styles.sheets} style={scaleFor(folds.map(({ stock }) => stock.length))}>
        {folds.map((fold) => (
          <SheetFigure
            key={fold.first}
            {...{ fold, display, isLive }}
            numbers={turns?.get(fold.first)}
            material={materials[fold.stock.material as MaterialId]}
            partMarks={derived.partOf}
            shop={derived.project.shop}
            lit={chosen && litPlaces(fold, chosen)}
            onPick={onPick}
            onKeep={onKeep}
            onAside={onAside}
          />
        ))}
      </div>
      <BuyTable layout={layout} derived={derived} />
      {!isLive && isCurrent && <SawnOutList derived={derived} />}
    </>
  )
})

/** Boards on no sheet, or on another than was chosen for them, why, and a way out where one is known. */
function LeftOut({ layout: { job, answer }, derived: { project, cutList }, isCurrent }: SheetsProps) {
  const actions = useStore((state) => state.actions)
  const told = useMemo(() => {
    const asked = { project, rows: cutList.rows, job }
    return [...leftOut(asked, answer), ...onOtherSheets(asked, answer.sheets)]
  }, [project, cutList, job, answer])
  if (told.length === 0) return null
  return (
    <ul className={styles.failed}>
      {told.map(({ weight, message, remedy }) => (
        <li key={message} className={weight === 'stop' ? undefined : styles.minded}>
          <span aria-hidden="true">{weight === 'stop' ? '■' : '▲'}</span> {message}{' '}
          {remedy && isCurrent && (
            <Button onClick={() => actions.commit(remedy.edit, remedy.label)}>{remedy.label}</Button>
          )}
        </li>
      ))}
    </ul>
  )
}

/** Sheets that were kept and do not fit the design any more. */
function Outgrown({ derived }: { readonly derived: Derived }) {
  const actions = useStore((state) => state.actions)
  // The findings are not worked out while there is nothing to be found.
  if (derived.heldSheets.length === Object.keys(derived.project.kept).length) return null
  const outgrown = derived.problems.flatMap(({ about, message }) =>
    about.kind === 'kept' ? [{ id: about.sheet, message }] : [],
  )
  return (
    <ul className={styles.outgrown}>
      {outgrown.map(({ id, message }) => (
        <li key={id}>
          <span aria-hidden="true">▲</span> {message} It is held again when the design is as it was.{' '}
          <Button look="plain" onClick={() => actions.commit({ kind: 'releaseSheet', id })}>
            Let it go
          </Button>
        </li>
      ))}
    </ul>
  )
}

/** Under the hand a sheet that is cut as it was stays the same object, so that it is not looked at again. */
function useFolds(layout: Layout, { cutList, heldSheets }: Derived, isLive: boolean): readonly Fold[] {
  const last = useRef<readonly Fold[]>([])
  return useMemo(() => {
    const before = last.current
    const fresh = foldsOf(layout, { cutList, heldSheets })
    last.current = isLive ? fresh.map((fold, at) => keptWhereAlike(before[at], fold)) : fresh
    return last.current
  }, [layout, cutList, heldSheets, isLive])
}

function keptWhereAlike(before: Fold | undefined, fold: Fold): Fold {
  return before && areCutAlike(before, fold) ? before : fold
}
