import {
  type DerivedCabinet,
  type Front,
  type FrontOpening,
  formatBetween,
  formatWithUnit,
  type LengthDisplay,
  type Mm,
  MOST_OFF,
  placeWords,
  settle,
} from '../../engine/index'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import { LengthField } from '../ui/LengthField'
import styles from './Openings.module.css'

interface OpeningRowsProps {
  readonly built: Pick<DerivedCabinet, 'cabinet' | 'mark' | 'openings'>
  readonly display: LengthDisplay
}

const SIDES = ['width', 'height'] as const

/** The openings of a cabinet as drawn, with fields for what the tape says on the carcass that stands. */
export function OpeningRows({ built: { cabinet, mark, openings }, display }: OpeningRowsProps) {
  const actions = useStore((state) => state.actions)
  const names = openings.map((opening) => openingName(cabinet.front, opening))
  return openings.map((opening, at) => {
    const { key, drawn, measured, off } = opening
    const put = (what: Partial<NonNullable<FrontOpening['measured']>>) => {
      const next = { width: null, height: null, ...measured, ...what }
      actions.commit({ kind: 'measureOpening', id: cabinet.id, at: key, measured: next })
      return null
    }
    return (
      <section key={key} className={styles.opening} aria-label={`Opening of the ${names[at]} of ${mark}`}>
        <h4>
          <span>{names[at]}</span>
          {!isWhole(measured) && (
            <Button look="plain" onClick={() => put(openSides(measured, drawn))}>
              Measured as drawn
            </Button>
          )}
          {measured && (
            <Button
              look="plain"
              onClick={() => actions.commit({ kind: 'measureOpening', id: cabinet.id, at: key, measured: null })}
            >
              Make it as drawn
            </Button>
          )}
        </h4>
        {SIDES.map((side) => (
          <div key={side} className={styles.side}>
            <LengthField
              label={`Measured ${side}`}
              value={measured?.[side] ?? drawn[side]}
              display={display}
              field={{
                spoken: `The measured ${side}`,
                least: Math.max(1, drawn[side] - MOST_OFF),
                most: drawn[side] + MOST_OFF,
              }}
              onLength={(length) => put({ [side]: length })}
            />
            <p className={styles.drawn}>
              drawn <span className="frac">{formatWithUnit(drawn[side], display)}</span>
              {(measured?.[side] ?? null) !== null && (
                <strong>, {differenceWords(settle(drawn[side] + off[side]), drawn[side], display)}</strong>
              )}
            </p>
          </div>
        ))}
      </section>
    )
  })
}

type Measured = FrontOpening['measured']

function isWhole(measured: Measured): boolean {
  return measured !== null && SIDES.every((side) => measured[side] !== null)
}

/** What was not measured yet, as it is drawn. */
function openSides(measured: Measured, drawn: FrontOpening['drawn']): Partial<NonNullable<Measured>> {
  return { width: measured?.width ?? drawn.width, height: measured?.height ?? drawn.height }
}

/** `measured 2 mm more`, of both as they are read; nothing between them is told too, since it was measured. */
export function differenceWords(measured: Mm, drawn: Mm, display: LengthDisplay): string {
  if (measured === drawn) return 'measured as drawn'
  return `measured ${formatBetween(measured, drawn, display)} ${measured > drawn ? 'more' : 'less'}`
}

const WORDS: Partial<Readonly<Record<FrontOpening['front']['kind'], string>>> = {
  door: 'door',
  pair: 'pair of doors',
  drawer: 'drawer',
  pullOut: 'pull-out',
  falseFront: 'false front',
}

/** `row 1, drawer`: counted from the top and from the left, as rows and columns are where they are chosen. */
export function openingName(whole: Front, { path, front }: Pick<FrontOpening, 'path' | 'front'>): string {
  const word = WORDS[front.kind] ?? 'front'
  return path.length === 0 ? word : `${placeWords(whole, path)}, ${word}`
}
