import {
  type BayPlace,
  bayPlaces,
  baysOf,
  type Cabinet,
  type Interior,
  type InteriorBay,
  LEAST_BAY,
  type LengthDisplay,
  type PipeWindow,
  type Project,
  withBayShelves,
  withBayWidth,
  withPartitions,
} from '../../engine/index'
import { useStore } from '../store/store'
import { Choice } from '../ui/Choice'
import { Fold } from '../ui/Fold'
import { LengthField } from '../ui/LengthField'
import { NumberField } from '../ui/NumberField'
import { BayRows, PipeRows } from './BayRows'
import styles from './Properties.module.css'
import { ShelfRows } from './ShelfRows'
import { ShelvesRows } from './ShelvesRows'
import { common } from './shaping'

const MOST_PARTITIONS = 9

interface InsideRowsProps {
  readonly project: Project
  readonly cabinets: readonly Cabinet[]
}

/** What stands in cabinets: shelves and partitions, and of one alone what is in each of its bays. */
export function InsideRows({ project, cabinets }: InsideRowsProps) {
  const actions = useStore((state) => state.actions)
  const { display } = project
  function put(made: (interior: Interior) => Interior) {
    const edits = cabinets.map(
      ({ id, interior }) => ({ kind: 'setInterior', ids: [id], interior: made(interior) }) as const,
    )
    actions.commit(edits.length === 1 ? edits[0]! : { kind: 'several', edits })
  }
  const setPipes = (pipes: PipeWindow | null) => put(({ pipes: _, ...rest }) => (pipes ? { ...rest, pipes } : rest))
  const single = cabinets.length === 1 ? cabinets[0]! : null
  // Their boards part them already.
  const areColumns = cabinets.every(({ front }) => front.kind === 'columns')
  const isParted = single !== null && !areColumns && baysOf(single.interior).length > 1
  const places = single && !areColumns ? bayPlaces(project, single) : []
  return (
    <>
      <ShelfRows cabinets={cabinets} places={isParted ? [] : (places[0]?.fixed ?? [])} display={display} />
      {!areColumns && (
        <NumberField
          label="Partitions"
          value={common(cabinets, ({ interior }) => Math.max(0, baysOf(interior).length - 1))}
          least={0}
          most={MOST_PARTITIONS}
          isWhole
          onNumber={(count) => put((interior) => withPartitions(interior, count))}
        />
      )}
      {isParted && (
        <Fold name="bays" title="Bays" className={styles.fixing} startsOpen>
          {baysOf(single.interior).map((bay, at) => (
            <Bay
              key={at}
              at={at}
              bay={bay}
              place={places[at]}
              cabinet={single}
              display={display}
              onInterior={(interior) => put(() => interior)}
            />
          ))}
        </Fold>
      )}
      {single && (
        <Fold name="roll-outs" title="Roll-outs, trays, pipes" className={styles.fixing}>
          <BayRows
            name=""
            bay={single.interior}
            display={display}
            onBay={(part) => put((interior) => ({ ...interior, ...part }))}
          />
          <PipeRows pipes={single.interior.pipes} display={display} onPipes={setPipes} />
        </Fold>
      )}
    </>
  )
}

interface BayProps {
  readonly at: number
  readonly bay: InteriorBay
  readonly place: BayPlace | undefined
  readonly cabinet: Cabinet
  readonly display: LengthDisplay
  readonly onInterior: (interior: Interior) => void
}

/** One bay: how wide it is, and what stands in it where that is its own. */
function Bay({ at, bay, place, cabinet, display, onInterior }: BayProps) {
  const { interior, width: W, height: H, depth: D } = cabinet
  const name = `Bay ${at + 1}`
  const setWidth = (width: number | null) => onInterior(withBayWidth(interior, at, width))
  const { fixedShelves, adjustableShelves, fixedAt, rollOuts, dividers } = interior
  const asCabinet = {
    ...{ fixedShelves, adjustableShelves },
    ...(fixedAt && { fixedAt }),
    ...(rollOuts && { rollOuts }),
    ...(dividers !== undefined && { dividers }),
  }
  return (
    <>
      {place && (
        <LengthField
          label={`${name} width`}
          value={place.width}
          display={display}
          names={{ W, H, D }}
          field={{ spoken: `The width of bay ${at + 1}`, least: LEAST_BAY, most: place.widest ?? W }}
          onLength={(length) => {
            if (place.widest === null) return `${name} takes what the others leave; let one of those take it first.`
            setWidth(length)
            return null
          }}
        />
      )}
      {place && place.widest !== null && (
        <Choice
          label="· Size"
          value={bay.size.kind}
          options={[
            ['share', 'a share of what is left'],
            ['fixed', 'fixed'],
          ]}
          onChoice={(choice) => setWidth(choice === 'share' ? null : place.width)}
        />
      )}
      <Choice
        label={`· ${name} holds`}
        value={bay.shelves ? 'own' : 'cabinet'}
        options={[
          ['cabinet', 'as the cabinet'],
          ['own', 'its own shelves'],
        ]}
        onChoice={(choice) => onInterior(withBayShelves(interior, at, choice === 'own' ? asCabinet : null))}
      />
      {bay.shelves && (
        <ShelvesRows
          name={name}
          shelves={bay.shelves}
          place={place}
          display={display}
          onShelves={(shelves) => onInterior(withBayShelves(interior, at, shelves))}
        />
      )}
    </>
  )
}
