import { type ReactNode, useDeferredValue, useMemo, useRef } from 'react'
import { type Derived, takenBy } from '../../engine/index'
import { SheetsView } from '../sheets/SheetsView'
import { StepsView } from '../sheets/StepsView'
import { breakdownFor } from '../store/cutting'
import { currentLayout, type State, type TableName } from '../store/state'
import { useStore } from '../store/store'
import { useFollowing } from '../store/turns'
import { CutListTable } from '../tables/CutListTable'
import { FindingsTable } from '../tables/FindingsTable'
import { findingsWords, findingsWordsUnderHand } from '../tables/findingLines'
import { HardwareTable } from '../tables/HardwareTable'
import { Tabs } from '../ui/Tabs'
import styles from './Dock.module.css'
import { Schedule } from './Schedule'

const TABS: readonly (readonly [TableName, string])[] = [
  ['cutList', 'Cut list'],
  ['sheets', 'Sheets'],
  ['steps', 'Steps'],
  ['hardware', 'Hardware'],
  ['schedule', 'Schedule'],
  ['findings', 'Findings'],
]

/** The live tables, one at a time, each with how much is in it. */
export function Dock({ tools }: { readonly tools?: ReactNode }) {
  const table = useStore((state) => state.table)
  const actions = useStore((state) => state.actions)
  return (
    <Tabs label="Lists" tabs={LABELS} chosen={table} onChosen={actions.setTable} tools={tools}>
      <TableOf table={table} />
    </Tabs>
  )
}

const LABELS = TABS.map(
  ([name, words]) =>
    [
      name,
      <span key={name}>
        {words} <Count table={name} />
      </span>,
    ] as const,
)

function TableOf({ table }: { readonly table: TableName }) {
  switch (table) {
    case 'cutList':
      return <CutListTable />
    case 'sheets':
      return <SheetsView />
    case 'steps':
      return <StepsView />
    case 'hardware':
      return <HardwareTable />
    case 'schedule':
      return <Schedule />
    case 'findings':
      return <FindingsTable />
  }
}

/** How much is in a table. */
function Count({ table }: { readonly table: TableName }) {
  if (table === 'steps') return <StepCount />
  return table === 'findings' ? <FindingsCount /> : <QuickCount table={table} />
}

type Quick = Exclude<TableName, 'steps' | 'findings'>

function QuickCount({ table }: { readonly table: Quick }) {
  const count = useFollowing('sheets', (state) => countOf(table, state))
  return count === null ? null : <span className={styles.count}>{count}</span>
}

/** Counted as they are listed once nothing is under the hand, and nearly so until then. */
function FindingsCount() {
  const near = useFollowing('findings', ({ preview, derived }) => (preview ? findingsWordsUnderHand(derived) : null))
  const derived = useDeferredValue(useFollowing('findings', (state) => (state.preview ? null : state.derived)))
  const isWarning = useFollowing('findings', (state) => state.derived.problems.some(({ weight }) => weight !== 'know'))
  const last = useRef('')
  last.current = near ?? (derived ? findingsWords(derived) : last.current)
  return <span className={isWarning ? styles.warning : styles.count}>{last.current}</span>
}

function countOf(table: Quick, state: State): string | null {
  const { derived } = state
  switch (table) {
    case 'cutList':
      return String(derived.cutList.rows.length)
    case 'sheets': {
      const layout = currentLayout(state)
      return layout && String(takenBy(layout.job, layout.answer).sheets)
    }
    case 'hardware':
      return String(hardwareCount(derived))
    case 'schedule':
      return String(derived.cabinets.length)
  }
}

/** Pieces to buy besides boards. */
function hardwareCount({ cabinets }: Derived): number {
  return cabinets.reduce(
    (sum, { hardware }) => sum + hardware.reduce((pieces, { quantity }) => pieces + quantity, 0),
    0,
  )
}

/** Steps are worked out once nothing is under the hand and the sheets are settled. */
function StepCount() {
  const isReady = useFollowing('sheets', (state) => state.preview === null && currentLayout(state)?.isSettled === true)
  return isReady ? <ReadyStepCount /> : null
}

function ReadyStepCount() {
  const derived = useDeferredValue(useFollowing('sheets', (state) => state.derived))
  const layout = useDeferredValue(useFollowing('sheets', (state) => state.layout))
  const isKnown = layout?.job === derived.sheetJob
  const count = useMemo(() => (isKnown ? breakdownFor(derived, layout).steps.length : null), [isKnown, derived, layout])
  return count === null ? null : <span className={styles.count}>{count}</span>
}
