import { Lock, LockOpen } from 'lucide-react'
import { memo, type RefObject, useCallback, useEffect, useMemo, useRef, useState } from 'react'
import type { CutNumbers, Derived, LengthDisplay, Material, PlacedPart, Rect, Shop } from '../../engine/index'
import { formatLength, freedIn, numberList, sheetDrawing, yieldOfSheet } from '../../engine/index'
import { areCutAlike, type Fold, isSameFold } from './folds'
import { SheetPicture, toScale } from './SheetPicture'
import styles from './Sheets.module.css'

interface SheetFigureProps {
  readonly fold: Fold
  readonly display: LengthDisplay
  readonly material: Material | undefined
  /** In which turn each of its cuts is made; not known under the hand. */
  readonly numbers: CutNumbers | undefined
  /** For the marks of the parts that lie on the sheet. */
  readonly partMarks: Derived['partOf']
  readonly shop: Shop
  /** Numbers of the lit places, apart by spaces; null where they are as they were. */
  readonly lit: string | null
  readonly onPick: (parts: readonly PlacedPart[]) => void
  /** Keeps the sheet as it is, or lets it go. */
  readonly onKeep: (fold: Fold) => void
  /** Leaves one of the sheets on hand aside. */
  readonly onAside: (fold: Fold) => void
  /** Something is under the hand. */
  readonly isLive: boolean
}

/**
 * A sheet with its name and yield. While something is under the hand it is drawn again only where it is in sight, and
 * one that changes is drawn without its words until the hand lets go.
 */
export const SheetFigure = memo(function SheetFigure(props: SheetFigureProps) {
  const frame = useRef<HTMLElement>(null)
  const isInSight = useIsInSight(frame)
  const { isLive } = props
  const fold = useRef(props.fold)
  // Under the hand a row may get another letter; it is written when the hand lets go.
  const isSame = isLive ? areCutAlike(fold.current, props.fold) : isSameFold(fold.current, props.fold)
  if ((isInSight || !isLive) && !isSame) fold.current = props.fold
  const lit = useRef('')
  if (props.lit !== null) lit.current = props.lit
  const atRest = useRef(isLive ? null : fold.current)
  if (!isLive) atRest.current = fold.current
  // One that has changed stays plain until the hand lets go, whatever it changes to.
  const isPlain = useRef(false)
  isPlain.current = isLive && (isPlain.current || atRest.current !== fold.current)
  return (
    <figure ref={frame} className={styles.sheetFigure} data-sheet={props.fold.first}>
      {isPlain.current ? (
        <PlainSheet fold={fold.current} />
      ) : (
        <Sheet {...props} fold={fold.current} lit={lit.current} />
      )}
    </figure>
  )
}, isAsItWas)

/** Under the hand nothing but the cuts of a sheet changes. */
function isAsItWas(a: SheetFigureProps, b: SheetFigureProps): boolean {
  return a.isLive && b.isLive && a.fold === b.fold && a.lit === b.lit && a.onPick === b.onPick
}

/** Its shapes alone, few enough to be drawn at every move. */
const PlainSheet = memo(function PlainSheet({ fold: { layout, stock, first } }: { readonly fold: Fold }) {
  const parts = layout.placements.map(({ x, y, length, width, rotated }) => {
    const [along, across] = rotated ? [width, length] : [length, width]
    return `M${x} ${stock.width - y}h${along}v${-across}h${-along}z`
  })
  return (
    <>
      <svg
        viewBox={`0 0 ${stock.length} ${stock.width}`}
        className={styles.picture}
        style={toScale(stock.length, stock.width)}
        aria-hidden="true"
      >
        <rect className={styles.sheet} width={stock.length} height={stock.width} />
        <path className={styles.plainParts} d={parts.join('')} />
      </svg>
      <figcaption>
        <strong>Sheet {first}</strong>
        <span className={styles.from}>changes under the hand</span>
      </figcaption>
    </>
  )
})

/** Small letters on a sheet that is drawn a hand wide: 2440 mm on 300 px. */
const TEXT_SIZE = 78

const Sheet = memo(function Sheet({
  fold,
  display,
  material,
  numbers: turns,
  partMarks,
  shop,
  lit,
  onPick,
  onKeep,
  onAside,
}: SheetFigureProps) {
  const { layout, stock, first, kerf, marks, runs, kept } = fold
  const freed = useMemo(() => freedOf(fold, partMarks, shop), [fold, partMarks, shop])
  const drawing = useMemo(() => {
    const markOf = new Map(layout.placements.map(({ part }, at) => [part, marks[at]!]))
    const runOf = new Map(layout.placements.map(({ part }, at) => [part, runs[at]!]))
    return sheetDrawing({
      ...{ layout, stock, kerf, display, textSize: TEXT_SIZE, isMeasured: false, numbers: turns, freed },
      markOf: (part) => markOf.get(part) ?? part,
      runOf: (part) => runOf.get(part) ?? null,
      hasGrain: material?.hasGrain ?? false,
    })
  }, [layout, stock, kerf, marks, runs, display, material, turns, freed])
  const places = useMemo(() => placesOf(fold, partMarks, freed, display), [fold, partMarks, freed, display])
  const key = useMemo(() => keyWords(fold, partMarks), [fold, partMarks])
  const onPlace = useCallback((place: number) => onPick(fold.parts[place] ?? []), [fold, onPick])
  const numbers = numberList(Array.from({ length: layout.copies }, (_, copy) => first + copy))
  const name = `${layout.copies > 1 ? 'Sheets' : 'Sheet'} ${numbers}`
  return (
    <>
      <SheetPicture {...{ drawing, places }} lit={lit ?? ''} label={name} onPick={onPlace} />
      <figcaption>
        <strong>{name}</strong>
        <span>
          {layout.copies > 1 ? `${layout.copies} alike, ` : ''}
          {Math.round(yieldOfSheet(layout, stock) * 100)} % used
        </span>
        <button
          type="button"
          className={styles.keep}
          aria-pressed={kept !== null}
          aria-label={`Keep ${name.toLowerCase()} as ${layout.copies > 1 ? 'they are' : 'it is'}`}
          title={
            kept
              ? 'Kept as it is. Press to let it be laid out anew.'
              : 'Keep as it is while the others are laid out anew'
          }
          onClick={() => onKeep(fold)}
        >
          {kept ? <Lock size={12} aria-hidden /> : <LockOpen size={12} aria-hidden />} {kept ? 'kept' : 'keep'}
        </button>
        <span className={styles.from}>
          <span>
            {stock.offcut ? 'Offcut of ' : ''}
            {material?.name ?? stock.material},{' '}
            <span className="frac">
              {formatLength(stock.length, display)} × {formatLength(stock.width, display)}
            </span>{' '}
            {display.unit}
          </span>
          {stock.quantity !== undefined && (
            <button
              type="button"
              className={styles.aside}
              title={`Of the ${stock.quantity} on hand one is not cut, as a spoiled one. The number on hand stands under Shop and boards, on the Cut page.`}
              aria-label={`Leave one of ${name.toLowerCase()} aside`}
              onClick={() => onAside(fold)}
            >
              {stock.quantity === 1 ? 'leave it aside' : `leave one of ${stock.quantity} aside`}
            </button>
          )}
        </span>
      </figcaption>
      <p className={styles.paperKey} data-key={key} />
    </>
  )
}, isSameSheet)

/** `A4: B1-LS, B1-RS; A8: U1-LS`: what lies on the sheet, by the marks that the steps and labels have. */
export function keyWords({ marks, parts }: Pick<Fold, 'marks' | 'parts'>, partMarks: Derived['partOf']): string {
  const named = new Map<string, string[]>()
  for (const [place, mark] of marks.entries()) {
    named.set(mark, [...(named.get(mark) ?? []), ...namesOf(parts[place] ?? [], partMarks)])
  }
  const order = [...named.keys()].sort((a, b) => a.localeCompare(b, 'en', { numeric: true }))
  return order.map((mark) => `${mark}: ${named.get(mark)!.join(', ')}`).join('; ')
}

function namesOf(parts: readonly PlacedPart[], partMarks: Derived['partOf']): string[] {
  return parts.map(({ part }) => partMarks.get(part)?.mark ?? part)
}

/** A drag makes a new design at every move; a sheet on which nothing changed is not drawn again. */
function isSameSheet(a: SheetFigureProps, b: SheetFigureProps): boolean {
  return (
    a.lit === b.lit &&
    a.onPick === b.onPick &&
    a.display === b.display &&
    a.material === b.material &&
    a.fold === b.fold &&
    (b.isLive || (a.numbers === b.numbers && a.shop === b.shop)) &&
    // Nothing under the hand gives a part another mark, and a sheet that is cut alike is looked at again when it lets go.
    (b.isLive || a.partMarks === b.partMarks || areMarkedAlike(a, b))
  )
}

function areMarkedAlike(a: SheetFigureProps, b: SheetFigureProps): boolean {
  return a.fold.parts.every((parts) =>
    parts.every(({ part }) => {
      const [was, is] = [a.partMarks.get(part), b.partMarks.get(part)]
      return was?.mark === is?.mark && was?.operations === is?.operations
    }),
  )
}

/** What is kept of what is sawn out later, for each place; of sheets that are cut alike, of the first. */
function freedOf({ parts }: Fold, partOf: Derived['partOf'], shop: Shop): (readonly Rect[])[] {
  return parts.map(([first]) => {
    const part = first && partOf.get(first.part)
    return part ? freedIn(part, shop) : []
  })
}

type Freed = ReturnType<typeof freedOf>

function placesOf({ parts, marks, runs }: Fold, partMarks: Derived['partOf'], freed: Freed, display: LengthDisplay) {
  const frees = (rects: readonly Rect[] = []) =>
    rects.map((rect) => `, frees ${formatLength(rect.width, display)} × ${formatLength(rect.height, display)} later`)
  return parts.map((alike, place) => {
    const { row = '', part = '', length = 0, width = 0, rotated = false } = alike[0] ?? {}
    const size = `${formatLength(length, display)} × ${formatLength(width, display)}`
    const names = namesOf(alike, partMarks).join(', ')
    const isPinned = alike.some((each) => partMarks.get(each.part)?.sheet !== undefined)
    const pinned = isPinned ? ', pinned to its sheet' : ''
    const run = runs[place] ? ', in a run of grain' : ''
    const words = `${marks[place]} ${size}${rotated ? ', turned' : ''}${frees(freed[place]).join('')}${run}${pinned}: ${names}`
    return { words, row, part, isPinned }
  })
}

/** Whether any of it can be seen; true until the browser says otherwise. */
function useIsInSight(frame: RefObject<HTMLElement | null>): boolean {
  const [isInSight, setIsInSight] = useState(true)
  useEffect(() => {
    const watch = new IntersectionObserver((entries) => setIsInSight(entries.at(-1)!.isIntersecting))
    watch.observe(frame.current!)
    return () => watch.disconnect()
  }, [frame])
  return isInSight
}
