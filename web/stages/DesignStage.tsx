import { Maximize2, Minimize2 } from 'lucide-react'
import { lazy, Suspense, useState } from 'react'
import { Elevation } from '../elevation/Elevation'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import { Split } from '../ui/Split'
import { useIsNarrow } from '../ui/wide'
import styles from './DesignStage.module.css'
import { Dock } from './Dock'
import { MethodChange } from './MethodChange'
import { FoldedProjectPanel, ProjectPanel } from './ProjectPanel'
import { Properties } from './Properties'

const Scene = lazy(() => import('../scene/Scene'))

type Pane = 'wall' | 'scene' | 'lists'

/** The home: the wall, the same run in 3D, and the live tables. */
export function DesignStage() {
  const isNarrow = useIsNarrow()
  return (
    <>
      {isNarrow ? <Pages /> : <Panes />}
      <MethodChange />
    </>
  )
}

function Panes() {
  const [across, setAcross] = useState(0.61)
  const [down, setDown] = useState(0.66)
  const [full, setFull] = useState<Pane | null>(null)
  const hidden = (pane: Pane) => full !== null && full !== pane
  const columns = full ? '1fr' : `minmax(0, ${across}fr) 1px minmax(0, ${1 - across}fr)`
  const rows =
    full === 'lists' ? 'minmax(0, 1fr)' : full ? 'minmax(0, 1fr)' : `minmax(0, ${down}fr) 1px minmax(0, ${1 - down}fr)`
  return (
    <div className={styles.panes} style={{ gridTemplateRows: rows }}>
      <div className={styles.upper} style={{ gridTemplateColumns: columns }} hidden={full === 'lists'}>
        <div className={styles.pane} hidden={hidden('wall')}>
          <Wall />
          <Full pane="wall" full={full} onFull={setFull} />
        </div>
        {!full && <Split label="Between the wall and 3D" way="beside" share={across} onShare={setAcross} />}
        <div className={styles.pane} hidden={hidden('scene')}>
          <Suspense fallback={<p className={styles.wait}>3D is being set up</p>}>
            <Scene />
          </Suspense>
          <Full pane="scene" full={full} onFull={setFull} />
        </div>
      </div>
      {!full && <Split label="Between the drawings and the lists" way="over" share={down} onShare={setDown} />}
      <div className={styles.pane} hidden={hidden('lists')}>
        <Dock tools={<Full pane="lists" full={full} onFull={setFull} />} />
      </div>
    </div>
  )
}

function Wall() {
  const isNothing = useStore((state) => state.selection.kind === 'nothing' || state.selection.kind === 'row')
  return (
    <>
      <Elevation beside={<Properties />} />
      {isNothing && <FoldedProjectPanel />}
    </>
  )
}

const NAMES: Readonly<Record<Pane, string>> = { wall: 'the wall', scene: '3D', lists: 'the lists' }

interface FullProps {
  readonly pane: Pane
  readonly full: Pane | null
  readonly onFull: (pane: Pane | null) => void
}

function Full({ pane, full, onFull }: FullProps) {
  const isFull = full === pane
  return (
    <Button
      look="plainSquare"
      className={styles[`full-${pane}`]}
      aria-pressed={isFull}
      aria-label={isFull ? `Show all panes again` : `Let ${NAMES[pane]} fill the window`}
      onClick={() => onFull(isFull ? null : pane)}
    >
      {isFull ? <Minimize2 size={14} aria-hidden /> : <Maximize2 size={14} aria-hidden />}
    </Button>
  )
}

const PAGES = [
  ['wall', 'Wall'],
  ['scene', '3D'],
  ['lists', 'Lists'],
  ['properties', 'Properties'],
] as const
type PageName = (typeof PAGES)[number][0]

/** On a narrow screen one pane at a time. */
function Pages() {
  const [page, setPage] = useState<PageName>('wall')
  const isNothing = useStore((state) => state.selection.kind === 'nothing' || state.selection.kind === 'row')
  return (
    <div className={styles.pages}>
      <div className={styles.page}>
        {page === 'wall' && <Elevation />}
        {page === 'scene' && (
          <Suspense fallback={<p className={styles.wait}>3D is being set up</p>}>
            <Scene />
          </Suspense>
        )}
        {page === 'lists' && <Dock />}
        {page === 'properties' && <div className={styles.scrolls}>{isNothing ? <ProjectPanel /> : <Properties />}</div>}
      </div>
      <nav className={styles.tabs} aria-label="Pages of the design">
        {PAGES.map(([name, words]) => (
          <button
            key={name}
            type="button"
            aria-current={name === page ? 'page' : undefined}
            onClick={() => setPage(name)}
          >
            {words}
          </button>
        ))}
      </nav>
    </div>
  )
}
