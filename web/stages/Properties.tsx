import { ChevronDown, ChevronRight, ChevronUp, Copy, Move, Trash2 } from 'lucide-react'
import { memo, useMemo } from 'react'
import {
  type Cabinet,
  cabinetWords,
  gapsBeside,
  installCautions,
  isHung,
  markOf,
  methodOf,
  type Project,
  wallsOf,
} from '../../engine/index'
import { duplicated, movedToWall, removed } from '../input/commands'
import { OpeningRows } from '../sheets/OpeningRows'
import { chosenCabinets } from '../store/selection'
import { useStore } from '../store/store'
import { useFollowing } from '../store/turns'
import { Button } from '../ui/Button'
import { Choice } from '../ui/Choice'
import { Fold } from '../ui/Fold'
import { LengthField } from '../ui/LengthField'
import { useIsNarrow } from '../ui/wide'
import { BesideRows } from './BesideRows'
import { BuildRows } from './BuildRows'
import { CornerRows } from './CornerRows'
import { CutoutRows } from './CutoutRows'
import { doDeed } from './deeds'
import { FrontRows } from './FrontRows'
import styles from './Properties.module.css'
import { SpaceRows } from './SpaceRows'
import { common, type ShapeField, setGap, shapeCabinets } from './shaping'
import { TopRows } from './TopRows'

const SIZES: readonly (readonly [ShapeField, string])[] = [
  ['width', 'Width'],
  ['height', 'Height'],
  ['depth', 'Depth'],
]

interface PropertiesProps {
  /** Folded, it is the name and what can be done with it. */
  readonly isFolded?: boolean
  /** Left out where it cannot be folded. */
  readonly onFold?: () => void
}

/** Everything about what is selected, to be typed. */
export function Properties({ isFolded = false, onFold }: PropertiesProps) {
  const project = useStore((state) => state.history.present)
  const selection = useStore((state) => state.selection)
  const cabinets = useMemo(
    () => chosenCabinets(selection).flatMap((id): Cabinet[] => (project.cabinets[id] ? [project.cabinets[id]] : [])),
    [selection, project],
  )
  const [first] = cabinets
  if (!first) return null
  return (
    <section className={styles.card} aria-label="Properties" data-folded={isFolded || undefined}>
      <h2>
        <span>
          {cabinets.length === 1 ? markOf(first) : `${cabinets.length} cabinets`}{' '}
          <small>{common(cabinets, cabinetWords) ?? 'mixed'}</small>
        </span>
        <Tools project={project} cabinets={cabinets} isFolded={isFolded} onFold={onFold} />
      </h2>
      {!isFolded && <Sections project={project} cabinets={cabinets} />}
    </section>
  )
}

interface ChosenProps {
  readonly project: Project
  readonly cabinets: readonly Cabinet[]
}

const Sections = memo(function Sections(chosen: ChosenProps) {
  return (
    <div className={styles.sections}>
      <Fold name="sizes" title="Size and place" className={styles.sizes} startsOpen>
        <Sizes {...chosen} />
      </Fold>
      <Fold name="front" title="Front and inside" startsOpen>
        <Inside {...chosen} />
      </Fold>
      <Fold name="beside" title="Beside it" startsOpen>
        <BesideRows {...chosen} />
        <CutoutRows {...chosen} />
        <TopRows {...chosen} />
      </Fold>
      <Fold name="build" title="How it is built" startsOpen>
        <BuildRows {...chosen} />
        <HowFixed {...chosen} />
      </Fold>
    </div>
  )
})

/** What is chosen as the hand has it now: sizes and fronts can be dragged, and what is typed of them follows. */
function useUnderHand({ project, cabinets }: ChosenProps): ChosenProps {
  const shown = useFollowing('card', (state) => (state.gesture ? state.shown : null))
  if (!shown) return { project, cabinets }
  return { project: shown, cabinets: cabinets.map((cabinet) => shown.cabinets[cabinet.id] ?? cabinet) }
}

function Inside(chosen: ChosenProps) {
  const { project, cabinets } = useUnderHand(chosen)
  const single = cabinets.length === 1 ? cabinets[0]! : null
  return (
    <>
      {cabinets.every(({ space }) => space) ? (
        <SpaceRows project={project} cabinets={cabinets} />
      ) : cabinets.some(({ space }) => space) ? (
        <p>Cabinets and spaces for appliances have nothing in common here.</p>
      ) : cabinets.every(({ corner }) => corner) ? (
        <CornerRows project={project} cabinets={cabinets} />
      ) : (
        <FrontRows project={project} cabinets={cabinets} display={project.display} />
      )}
      {single && !single.corner && !single.space && <AsBuilt cabinet={single} />}
    </>
  )
}

/** What its fronts and boxes are made to, folded away until the carcass stands. */
function AsBuilt({ cabinet }: { readonly cabinet: Cabinet }) {
  // As it stands: it need not follow the hand.
  const built = useStore(({ before, derived }) => (before ?? derived).cabinetOf[cabinet.id])
  const display = useStore((state) => state.shown.display)
  if (!built || built.openings.length === 0) return null
  const count = built.openings.filter(({ measured }) => measured).length
  return (
    <Fold
      name="as built"
      className={styles.fixing}
      title={`Openings as built${count > 0 ? `: ${count} measured` : ''}`}
    >
      <p>
        Clear, from board to board on the carcass that stands; where no board parts two fronts, to the middle of their
        gap. Fronts and drawer boxes follow.
      </p>
      <OpeningRows built={built} display={display} />
    </Fold>
  )
}

/** What to mind when the selected cabinets are fixed to the wall. */
function HowFixed({ cabinets, project }: ChosenProps) {
  const { display, house } = project
  const cautions = installCautions(cabinets, display, house).filter(({ cabinets: marks }) => marks.length > 0)
  if (cautions.length === 0) return null
  return (
    <Fold name="fixing" className={styles.fixing} title={FIXING}>
      <ul>
        {cautions.map(({ text }) => (
          <li key={text}>{text}</li>
        ))}
        <li>Local codes and the makers’ instructions come first.</li>
      </ul>
    </Fold>
  )
}

/** Where the card unfolds to: above its line on a phone, beside the wall elsewhere. */
const UP = <ChevronUp size={16} aria-hidden />
const RIGHT = <ChevronRight size={16} aria-hidden />

const FIXING = (
  <>
    <span aria-hidden="true">▲</span> Fixing it to the wall
  </>
)

type ToolsProps = ChosenProps & PropertiesProps

function Tools({ project, cabinets, isFolded, onFold }: ToolsProps) {
  const actions = useStore((state) => state.actions)
  const isNarrow = useIsNarrow()
  const ids = cabinets.map(({ id }) => id)
  const name = cabinets.length === 1 ? markOf(cabinets[0]!) : 'them'
  return (
    <span className={styles.tools}>
      <Button look="plainSquare" aria-label={`Duplicate ${name}`} onClick={() => doDeed(duplicated(project, ids))}>
        <Copy size={14} aria-hidden />
      </Button>
      {cabinets.length === 1 && (
        <Button
          look="plainSquare"
          aria-label={`Move ${name} to another place`}
          title="Move to…"
          onClick={() => actions.place({ kind: 'move', id: ids[0]! })}
        >
          <Move size={14} aria-hidden />
        </Button>
      )}
      <Button look="plainSquare" aria-label={`Delete ${name}`} onClick={() => doDeed(removed(project, ids))}>
        <Trash2 size={14} aria-hidden />
      </Button>
      {onFold && (
        <Button
          look="plainSquare"
          aria-expanded={!isFolded}
          aria-label={isFolded ? `Show the sizes of ${name}` : 'Fold'}
          onClick={onFold}
        >
          {!isFolded ? <ChevronDown size={16} aria-hidden /> : isNarrow ? UP : RIGHT}
        </Button>
      )}
    </span>
  )
}

const GAP_FIELDS = { left: 'gapLeft', right: 'gapRight' } as const

function Sizes(chosen: ChosenProps) {
  const { project, cabinets } = useUnderHand(chosen)
  const { display } = project
  const [first] = cabinets
  const single = cabinets.length === 1 ? first! : null
  const walls = wallsOf(project)
  const gaps = single && gapsBeside(project, single)
  const canAllHang = cabinets.every((cabinet) => isHung(cabinet) || methodOf(cabinet, project).floor.kind === 'none')
  const names = single ? { W: single.width, H: single.height, D: single.depth } : undefined
  return (
    <>
      {SIZES.map(([field, label]) => (
        <LengthField
          key={field}
          label={label}
          value={common(cabinets, (cabinet) => cabinet[field])}
          display={display}
          field={field as 'width' | 'height' | 'depth'}
          names={names}
          onLength={(length) => shapeCabinets(cabinets, field, length)}
        />
      ))}
      {single && walls.length > 1 && (
        <Choice
          label="On wall"
          value={single.wall}
          options={walls.map(({ id, name }) => [id, name] as const)}
          onChoice={(wall) => doDeed(movedToWall(project, single, wall))}
        />
      )}
      {single && gaps && (
        <>
          <LengthField
            label="From left"
            value={single.left}
            display={display}
            field="left"
            names={names}
            onLength={(length) => shapeCabinets(cabinets, 'left', length)}
          />
          {(['left', 'right'] as const).map((side) => (
            <LengthField
              key={side}
              label={`Gap ${side}`}
              value={gaps[side].gap}
              display={display}
              field={GAP_FIELDS[side]}
              names={names}
              onLength={(length) => setGap(project, single, side, length)}
            />
          ))}
        </>
      )}
      {canAllHang && (
        <LengthField
          label="Above floor"
          value={common(cabinets, ({ bottom }) => bottom)}
          display={display}
          field="bottom"
          onLength={(length) => shapeCabinets(cabinets, 'bottom', length)}
        />
      )}
    </>
  )
}
