import { Fragment } from 'react'
import {
  bayPlaces,
  type Cabinet,
  childrenOf,
  dividedInto,
  type Front,
  type FrontPath,
  type FrontPlace,
  frontPlaces,
  inLanesOf,
  linedUpWith,
  markOf,
  type Project,
  withFrontAt,
  withSizeAt,
} from '../../engine/index'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import { Choice } from '../ui/Choice'
import { LengthField } from '../ui/LengthField'
import { NumberField } from '../ui/NumberField'
import { DrawerRows } from './DrawerRows'
import { isMeasured, LeafRows } from './FrontLeaf'
import { frontEdit, isFull } from './frontEdit'
import { LEAF_WORDS, type LeafName, leafName, leafOf, placeName } from './fronts'
import styles from './Properties.module.css'
import { ShelvesRows } from './ShelvesRows'

interface FrontTreeProps {
  readonly project: Project
  readonly cabinet: Cabinet
}

/** What a front that is not divided is called before its measures. */
const WHOLE: Partial<Readonly<Record<Front['kind'], string>>> = {
  appliance: 'Niche',
  blind: 'Corner',
  pullOut: 'Pull-out',
  drawer: 'Drawer',
}

const MOST = { rows: 20, columns: 6 } as const

/** The rows and columns of one cabinet, each with its size and what closes it: what can be dragged can be typed here. */
export function FrontTree({ project, cabinet }: FrontTreeProps) {
  const actions = useStore((state) => state.actions)
  const setFront = (front: Front) => actions.commit(frontEdit(cabinet, front))
  const places = frontPlaces(project, cabinet)
  const outer = places.filter(({ path }) => path.length <= 1)
  const common = { project, cabinet, onFront: setFront }
  return (
    <>
      {outer.map((place) => {
        const inner = places.filter(({ path }) => path.length > 1 && path[0] === place.path[0])
        return (
          <Fragment key={place.path.join()}>
            <Place place={place} {...common} />
            {inner.length > 0 && (
              <details className={styles.within}>
                <summary>In {placeName(cabinet.front, place.path).toLowerCase()}</summary>
                {inner.map((one) => (
                  <Place key={one.path.join()} place={one} {...common} />
                ))}
              </details>
            )}
          </Fragment>
        )
      })}
      <LineUp project={project} cabinet={cabinet} onFront={setFront} />
    </>
  )
}

interface PlaceProps extends FrontTreeProps {
  readonly place: FrontPlace
  readonly onFront: (front: Front) => void
}

function Place({ place, project, cabinet, onFront }: PlaceProps) {
  const { path, front } = place
  const change = (node: Front) => onFront(withFrontAt(cabinet.front, path, node))
  const name = path.length === 0 ? (WHOLE[front.kind] ?? 'Front') : placeName(cabinet.front, path)
  return (
    <>
      {path.length > 0 && <Size {...{ place, project, cabinet, onFront, name }} />}
      {path.length > 0 && (
        <Choice
          label={`· ${name} is`}
          value={leafName(front)}
          options={LEAF_WORDS}
          onChoice={(leaf: LeafName) => change(leafOf(leaf, front))}
        />
      )}
      {(front.kind === 'rows' || front.kind === 'columns') && (
        <NumberField
          label={path.length === 0 ? wordOf(front.kind) : `· ${wordOf(front.kind)} in it`}
          value={childrenOf(front).length}
          least={front.kind === 'rows' ? 1 : 2}
          most={MOST[front.kind]}
          isWhole
          onNumber={(count) => change(withCount(front, count))}
        />
      )}
      {front.kind === 'drawer' && <DrawerRows front={front} display={project.display} name={name} onFront={change} />}
      {isMeasured(front) && <LeafRows front={front} display={project.display} name={name} onFront={change} />}
      {path.length === 1 && cabinet.front.kind === 'columns' && !isFull(front) && (
        <ColumnShelves front={cabinet.front} at={path[0]!} {...{ project, cabinet, onFront }} />
      )}
    </>
  )
}

interface ColumnShelvesProps extends Omit<PlaceProps, 'place'> {
  readonly front: Extract<Front, { kind: 'columns' }>
  readonly at: number
}

/** The shelves of one column; until they are typed it has as many as the cabinet says. */
function ColumnShelves({ front, at, project, cabinet, onFront }: ColumnShelvesProps) {
  const { fixedShelves, adjustableShelves, fixedAt, rollOuts, dividers } =
    front.columns[at]!.shelves ?? cabinet.interior
  const own = { ...(fixedAt && { fixedAt }), ...(rollOuts && { rollOuts }), ...(dividers && { dividers }) }
  return (
    <ShelvesRows
      name={`Column ${at + 1}`}
      shelves={{ fixedShelves, adjustableShelves, ...own }}
      place={bayPlaces(project, cabinet)[at]}
      display={project.display}
      onShelves={(shelves) =>
        onFront({ ...front, columns: front.columns.map((one, index) => (index === at ? { ...one, shelves } : one)) })
      }
    />
  )
}

function wordOf(kind: 'rows' | 'columns'): string {
  return kind === 'rows' ? 'Rows' : 'Columns'
}

/** A size that is typed is fixed from then on; a share follows the cabinet. */
function Size({ place: { path, rect }, project, cabinet, onFront, name }: PlaceProps & { readonly name: string }) {
  const { kind, size } = ownSize(cabinet.front, path)
  const length = kind === 'rows' ? rect.height : rect.width
  const setSize = (to: number | null) => onFront(withSizeAt(cabinet.front, path, to))
  return (
    <>
      <LengthField
        label={`${name} ${kind === 'rows' ? 'height' : 'width'}`}
        value={length}
        display={project.display}
        field="frontSize"
        onLength={(typed) => {
          setSize(typed)
          return null
        }}
      />
      <Choice
        label="· Size"
        value={size}
        options={[
          ['share', 'a share of what is left'],
          ['fixed', 'fixed'],
        ]}
        onChoice={(choice) => setSize(choice === 'share' ? null : length)}
      />
    </>
  )
}

function ownSize(
  front: Front,
  path: FrontPath,
): { readonly kind: 'rows' | 'columns'; readonly size: 'fixed' | 'share' } {
  const parent = path.slice(0, -1).reduce<Front>((node, at) => childrenOf(node)[at]!.front, front)
  const child = childrenOf(parent)[path.at(-1)!]!
  return { kind: parent.kind === 'rows' ? 'rows' : 'columns', size: child.size.kind }
}

/** Rows go away from the foot, columns from the right; new ones are like the last. */
function withCount(front: Front, count: number): Front {
  const more = <Child extends { readonly front: Front }>(all: readonly Child[], added: Child): Child[] =>
    Array.from({ length: count }, (_, at) => all[at] ?? added)
  const like = childrenOf(front).at(-1)?.front ?? { kind: 'open' }
  const added = dividedInto(front.kind === 'rows' ? 'rows' : 'columns', [like])
  if (front.kind === 'rows' && added.kind === 'rows') return { ...front, rows: more(front.rows, added.rows[0]!) }
  if (front.kind !== 'columns' || added.kind !== 'columns') return front
  return { ...front, columns: more(front.columns, added.columns[0]!) }
}

/** The neighbours whose rows this cabinet could take over. */
function LineUp({ project, cabinet, onFront }: FrontTreeProps & { readonly onFront: (front: Front) => void }) {
  const actions = useStore((state) => state.actions)
  if (cabinet.front.kind !== 'rows') return null
  return besideIt(project, cabinet).map((neighbour) => (
    <Button
      key={neighbour.id}
      className={styles.lineUp}
      onClick={() => {
        const lined = linedUpWith(project, cabinet, neighbour)
        if (lined.ok) onFront(lined.value)
        else actions.say('stop', lined.message)
      }}
    >
      {lineUpWords(cabinet, neighbour)}
    </Button>
  ))
}

/** Fronts of as many rows are lined up row by row, others by the line across the top. */
function lineUpWords(cabinet: Cabinet, neighbour: Cabinet): string {
  const areAsMany = childrenOf(cabinet.front).length === childrenOf(neighbour.front).length
  return `${areAsMany ? 'Line up' : 'Line up the top row'} with ${markOf(neighbour)}`
}

function besideIt(project: Project, cabinet: Cabinet): Cabinet[] {
  const others = inLanesOf(project, cabinet).filter(({ front }) => front.kind === 'rows')
  const before = others.filter(({ left }) => left < cabinet.left).slice(-1)
  return [...before, ...others.filter(({ left }) => left > cabinet.left).slice(0, 1)]
}
