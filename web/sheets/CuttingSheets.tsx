import { useMemo, useState } from 'react'
import {
  type CutNumbers,
  type CutRow,
  cutNumbersOf,
  isSheetName,
  type LayoutNow,
  layoutsNow,
  type MaterialId,
  sheetDrawing,
} from '../../engine/index'
import type { Cutting } from '../store/state'
import { useStore } from '../store/store'
import { chosenParts, selectionOf } from '../tables/chosen'
import { KeepOffcuts } from './KeepOffcuts'
import { SheetPicture, scaleFor } from './SheetPicture'
import styles from './Sheets.module.css'
import { SheetsView } from './SheetsView'
import { cuttingWords, roughWords, sizeWords } from './words'

/** The layouts that are being cut, with what is cut of them already; those of the design are another matter. */
export function CuttingSheets({ cutting }: { readonly cutting: Cutting }) {
  const { input, done, cutBefore } = cutting
  const now = useMemo(() => {
    const layouts = layoutsNow(input, { done: new Set(done) })
    return layouts.ok ? layouts.value : []
  }, [input, done])
  const turns = useMemo(() => cutNumbersOf(input), [input])
  return (
    <div className={styles.view} data-layout="cutting">
      <p className={styles.words}>{cuttingWords(now, cutBefore.length)}</p>
      <div className={styles.sheets} style={scaleFor(now.map(({ stock }) => stock.length))}>
        {now.map((one) => (
          <CuttingFigure key={one.sheet} one={one} input={input} numbers={turns.get(one.sheet)} />
        ))}
      </div>
      {now.every(({ state }) => state === 'cut') && <KeepOffcuts cutting={cutting} />}
      <OfTheDesign />
    </div>
  )
}

/** Small letters on a sheet that is drawn a hand wide: 2440 mm on 300 px. */
const TEXT_SIZE = 78

interface CuttingFigureProps {
  readonly one: LayoutNow
  readonly input: Cutting['input']
  readonly numbers: CutNumbers | undefined
}

function CuttingFigure({ one, input, numbers }: CuttingFigureProps) {
  const { name, layout, stock, length, width, places, state, isToBuy } = one
  const isWhole = isSheetName(name, one.sheet)
  const { job, cutList, materials, display = { unit: 'mm', step: 0.1 } as const } = input
  const actions = useStore((store) => store.actions)
  const derived = useStore((store) => store.derived)
  const selection = useStore((store) => store.selection)
  const material = materials[stock.material as MaterialId]
  const drawing = useMemo(() => {
    const rowOf = new Map<string, CutRow>(cutList.rows.map((row) => [row.key, row]))
    return sheetDrawing({
      ...{ layout, stock, kerf: job.kerf, display, textSize: TEXT_SIZE, isMeasured: false, numbers },
      markOf: (part) => rowOf.get(part)?.mark ?? part,
      runOf: (part) => rowOf.get(part)?.bank?.id ?? null,
      hasGrain: material?.hasGrain ?? false,
    })
  }, [layout, stock, job, cutList, display, material, numbers])
  const chosen = useMemo(() => chosenParts(selection, derived), [selection, derived])
  const at = (isThere: (place: LayoutNow['places'][number]) => boolean) =>
    places.flatMap((place, index) => (isThere(place) ? [index] : [])).join(' ')
  const title = `${name[0]!.toUpperCase()}${name.slice(1)}`
  return (
    <figure className={styles.sheetFigure} data-state={state}>
      <SheetPicture
        drawing={drawing}
        label={title}
        lit={at(({ part }) => part !== null && chosen.has(part))}
        cut={at(({ isCut }) => isCut)}
        places={places.map(({ part, mark, isCut }, index) => {
          const { part: row, length, width } = layout.placements[index]!
          const words = `${mark} ${sizeWords(length, width, display)}${isCut ? ', cut' : ''}`
          return { words, row, part: part ?? '' }
        })}
        onPick={(index) => {
          const part = places[index]?.part
          if (part && derived.partOf.has(part)) actions.select(selectionOf(part, derived))
        }}
      />
      <figcaption>
        <strong>{title}</strong>
        <span>{isToBuy ? 'to be bought' : STATES[state]}</span>
        <span className={styles.from}>
          {material?.name ?? stock.material},{' '}
          <span className="frac">{roughWords({ width: length, height: width }, stock, isWhole, display)}</span>
        </span>
      </figcaption>
    </figure>
  )
}

const STATES: Readonly<Record<LayoutNow['state'], string>> = { 'to come': 'not begun', begun: 'begun', cut: 'cut' }

/** What the design would be cut from if it was begun now; laid out only where it is asked for. */
function OfTheDesign() {
  const [isOpen, setOpen] = useState(false)
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Layouts of the design as it is now, which are not being cut</summary>
      {isOpen && <SheetsView />}
    </details>
  )
}
