import { useEffect, useMemo, useRef, useState } from 'react'
import {
  counted,
  type Dimension,
  dimensionsOf,
  formatMoney,
  formatWithUnit,
  inch,
  type LengthDisplay,
  type Mm,
  type Project,
  type Saving,
  type Thrift,
  type ThriftProgress,
} from '../../engine/index'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import fields from '../ui/Fields.module.css'
import { LengthField } from '../ui/LengthField'
import { hireSaver } from '../workers/hire'
import styles from './Sheets.module.css'
import { takenWords } from './words'

/** So much a dimension may change at most until the maker says otherwise. */
const USUAL: Readonly<Record<LengthDisplay['unit'], Mm>> = { mm: 10, in: inch(3 / 8) }

/** Less makes no difference to a saw; more is another design. */
const LIMITS = { least: 0.5, most: 100 } as const

type State =
  | { readonly kind: 'open' }
  | { readonly kind: 'looking'; readonly progress: ThriftProgress | null }
  | { readonly kind: 'found'; readonly thrift: Thrift }
  | { readonly kind: 'failed'; readonly why: string }

/** Asks which small changes would save a sheet. It looks only when it is told to, and changes nothing by itself. */
export function ThriftForm({ project }: { readonly project: Project }) {
  const [isOpen, setIsOpen] = useState(false)
  return (
    <details className={styles.thrift} onToggle={(event) => setIsOpen(event.currentTarget.open)}>
      <summary>Could a sheet be saved?</summary>
      {isOpen && <Looking key={project.id} project={project} />}
    </details>
  )
}

function Looking({ project }: { readonly project: Project }) {
  const { display } = project
  const dimensions = useMemo(() => dimensionsOf(project), [project])
  const [open, setOpen] = useState<ReadonlyMap<string, Mm>>(new Map())
  const [state, setState] = useState<State>({ kind: 'open' })
  const stop = useRef<(() => void) | null>(null)
  // What was found holds for the design that was looked at, and for no other.
  useEffect(() => {
    setState({ kind: 'open' })
    return () => {
      stop.current?.()
      stop.current = null
    }
  }, [project])

  const freedoms = dimensions.flatMap((dimension) => {
    const most = open.get(dimension.key)
    return most === undefined ? [] : [{ dimension, most }]
  })

  function look() {
    setState({ kind: 'looking', progress: null })
    stop.current = hireSaver(
      { project, freedoms },
      (letter) =>
        setState(
          letter.kind === 'found'
            ? { kind: 'found', thrift: letter.thrift }
            : { kind: 'looking', progress: letter.progress },
        ),
      (why) => setState({ kind: 'failed', why }),
    )
  }

  function leave() {
    stop.current?.()
    setState({ kind: 'open' })
  }

  function put(key: string, most: Mm | null) {
    const next = new Map(open)
    if (most === null) next.delete(key)
    else next.set(key, most)
    setOpen(next)
  }

  return (
    <>
      <p>Mark what may change a little, and by how much at most. Nothing is changed before you say so.</p>
      <ul className={styles.freedoms}>
        {dimensions.map((dimension) => (
          <FreedomRow
            key={dimension.key}
            {...{ dimension, display }}
            most={open.get(dimension.key) ?? null}
            onMost={(most) => put(dimension.key, most)}
          />
        ))}
      </ul>
      {state.kind === 'looking' ? (
        <p role="status">
          <Button onClick={leave}>Stop looking</Button> {progressWords(state.progress)}
        </p>
      ) : (
        <p>
          <Button disabled={freedoms.length === 0} onClick={look}>
            Look for savings
          </Button>
        </p>
      )}
      {state.kind === 'found' && <Found thrift={state.thrift} project={project} />}
      {state.kind === 'failed' && (
        <p className={styles.failed} role="alert">
          <span aria-hidden="true">■</span> The search stopped: {state.why}. Nothing is changed.
        </p>
      )}
    </>
  )
}

interface FreedomRowProps {
  readonly dimension: Dimension
  readonly display: LengthDisplay
  readonly most: Mm | null
  readonly onMost: (most: Mm | null) => void
}

function FreedomRow({ dimension, display, most, onMost }: FreedomRowProps) {
  const name = `${dimension.name}, now ${formatWithUnit(dimension.size, display)}`
  return (
    <li>
      <label className={fields.check}>
        <input
          type="checkbox"
          checked={most !== null}
          onChange={(event) => onMost(event.currentTarget.checked ? USUAL[display.unit] : null)}
        />
        <span className="frac">{name}</span>
      </label>
      {most !== null && (
        <LengthField
          label="by at most"
          value={most}
          display={display}
          field="small"
          onLength={(length) => {
            const isSmall = length >= LIMITS.least && length <= LIMITS.most
            if (isSmall) onMost(length)
            const [least, most] = [LIMITS.least, LIMITS.most].map((limit) => formatWithUnit(limit, display))
            return isSmall ? null : `A change is between ${least} and ${most}.`
          }}
        />
      )}
    </li>
  )
}

function progressWords(progress: ThriftProgress | null): string {
  return progress ? `Layout ${progress.tried} of at most ${progress.of}` : 'Setting out'
}

function Found({ thrift: { savings, taken }, project }: { readonly thrift: Thrift; readonly project: Project }) {
  const actions = useStore((state) => state.actions)
  if (savings.length === 0) {
    return (
      <p role="status">
        Nothing within these limits was found that saves a sheet; it takes {takenWords(taken)} as it is.
      </p>
    )
  }
  return (
    <ul className={styles.savings} aria-label="Savings found">
      {savings.map((saving) => (
        <li key={saving.changes.map(({ dimension }) => dimension.key).join()}>
          <span>
            {changeWords(saving, project.display)}: <strong>{savedWords(saving, project.shop.currency)}</strong>
            {addedWords(saving)}
            {lostWords(saving)}
          </span>
          <Button onClick={() => actions.commit(saving.edit, `Save sheets: ${changeWords(saving, project.display)}`)}>
            Do it
          </Button>
        </li>
      ))}
    </ul>
  )
}

function changeWords({ changes }: Saving, display: LengthDisplay): string {
  return changes
    .map(({ dimension, to }) => {
      return `${dimension.name} ${formatWithUnit(dimension.size, display)} to ${formatWithUnit(to, display)}`
    })
    .join(', ')
}

function savedWords({ sheets, sheetsSaved, moneySaved }: Saving, currency: string): string {
  const less = sheetsSaved === 1 ? '1 sheet less' : `${sheetsSaved} sheets less`
  return `${sheetsSaved > 0 ? `${less} (${sheets})` : 'as many sheets'}, ${formatMoney(moneySaved, currency)} less`
}

/** A change of a few millimetres may make other parts of a cabinet, which its sizes do not tell. */
function addedWords({ added: { parts, hardware } }: Saving): string {
  const counts = [
    ...(parts === 0 ? [] : [`${counted(Math.abs(parts), 'part')} ${parts > 0 ? 'more' : 'fewer'}`]),
    ...(hardware === 0
      ? []
      : [`${counted(Math.abs(hardware), 'piece')} of hardware ${hardware > 0 ? 'more' : 'fewer'}`]),
  ]
  return counts.length === 0 ? '' : `. It is made otherwise then: ${counts.join(' and ')}`
}

/** What the maker wished of sheets and has no longer. */
function lostWords({ released, outOfRuns }: Saving): string {
  const kept = `${counted(released, 'kept sheet')} no longer ${released === 1 ? 'fits and is' : 'fit and are'} laid out anew`
  const runs = `${counted(outOfRuns, 'board')} ${outOfRuns === 1 ? 'is' : 'are'} in no run of grain any more`
  return [...(released > 0 ? [`. ${kept}`] : []), ...(outOfRuns > 0 ? [`. ${runs}`] : [])].join('')
}
