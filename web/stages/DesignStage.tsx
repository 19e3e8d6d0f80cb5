import { Maximize2, Minimize2 } from 'lucide-react'
import { lazy, Suspense, useState } from 'react'
import { Elevation } from '../elevation/Elevation'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import { Split } from '../ui/Split'
import { useIsNarrow, useIsTight } from '../ui/wide'
import { CardPane, FoldedCard } from './CardPane'
import styles from './DesignStage.module.css'
import { Dock } from './Dock'
import { MethodChange } from './MethodChange'
import { ProjectPanel } from './ProjectPanel'
import { Properties } from './Properties'
import { useCard } from './useCard'

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
  const isTight = useIsTight()
  const [across, setAcross] = useState(isTight ? 0.61 : 0.56)
  const [down, setDown] = useState(0.66)
  const [full, setFull] = useState<Pane | null>(null)
  const card = useCard()
  const hasCard = card.open !== null && (full === null || full === 'wall')
  const isSceneAway = hasCard && isTight
  const hidden = (pane: Pane) => full !== null && full !== pane
  const rows = full ? 'minmax(0, 1fr)' : `minmax(0, ${down}fr) 1px minmax(0, ${1 - down}fr)`
  return (
    <div className={styles.panes} style={{ gridTemplateRows: rows }}>
      <div
        className={styles.upper}
        style={{ gridTemplateColumns: columnsFor(across, full !== null, hasCard, isTight) }}
        hidden={full === 'lists'}
      >
        <div className={styles.pane} hidden={hidden('wall')}>
          <Elevation />
          {card.open === null && (
            <div className={styles.folded}>
              <FoldedCard card={card} />
            </div>
          )}
          <Full pane="wall" full={full} onFull={setFull} />
        </div>
        {!full && <Split label="Between the wall and 3D" way="beside" share={across} onShare={setAcross} />}
        {hasCard && (
          <div className={styles.card}>
            <CardPane card={card} />
          </div>
        )}
        <div className={styles.pane} hidden={hidden('scene') || isSceneAway}>
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

/** Wide enough for the longest name of a front and for a choice of a method. */
const CARD = '284px'
const LEAST_SCENE = '240px'

/** The card takes its room of 3D, so that the wall stays as it was drawn; where that is too little, all of it. */
function columnsFor(across: number, isFull: boolean, hasCard: boolean, isTight: boolean): string {
  if (isFull) return hasCard ? `minmax(0, 1fr) ${CARD}` : 'minmax(0, 1fr)'
  const least = isTight ? CARD : `${CARD} - ${LEAST_SCENE}`
  if (!hasCard) return `minmax(0, ${across}fr) 1px minmax(0, ${1 - across}fr)`
  const wall = `min((100% - 1px) * ${across}, 100% - 1px - ${least})`
  return isTight ? `calc(${wall}) 1px minmax(0, 1fr)` : `calc(${wall}) 1px ${CARD} minmax(0, 1fr)`
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

/** On a narrow screen one pane at a time, with the card of what is selected under the wall. */
function Pages() {
  const [page, setPage] = useState<PageName>('wall')
  const isNothing = useStore((state) => state.selection.kind === 'nothing' || state.selection.kind === 'row')
  return (
    <div className={styles.pages}>
      <div className={styles.page}>
        {page === 'wall' && <WallPage />}
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

/** The card takes at most half of the height, and the wall is fitted above it; free places to choose from need the room. */
function WallPage() {
  const card = useCard()
  const isPlacing = useStore((state) => state.placing !== null)
  const isOpen = card.open === 'cabinets' && !isPlacing
  return (
    <div className={styles.wallPage}>
      <Elevation isBare={isOpen} />
      {card.about === 'cabinets' && !isPlacing && (
        <div className={styles.sheet}>{isOpen ? <CardPane card={card} /> : <FoldedCard card={card} />}</div>
      )}
    </div>
  )
}
