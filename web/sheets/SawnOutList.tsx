import { useMemo } from 'react'
import {
  checkLength,
  type Derived,
  formatLength,
  freeId,
  type Project,
  type SawnOut,
  type Stock,
  type StockId,
  sawnOutOf,
} from '../../engine/index'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import styles from './Sheets.module.css'

/** What is sawn out of the boards when they have their sizes, and what of it is worth keeping. */
export function SawnOutList({ derived }: { readonly derived: Derived }) {
  const { project, partOf } = derived
  const sawn = useMemo(() => sawnOutOf([...partOf.values()], project.shop, project.display), [partOf, project])
  if (sawn.length === 0) return null
  return (
    <section aria-label="When the boards are cut">
      <p className={styles.words}>
        When the boards are cut: what is sawn out of them is in no layout above, and what is kept of it can be cut from
        once it is there.
      </p>
      <ul className={styles.sawn}>
        {sawn.map((one) => (
          <li key={one.text}>
            {one.text} <Keeping sawn={one} project={project} />
          </li>
        ))}
      </ul>
    </section>
  )
}

interface KeepingProps {
  readonly sawn: SawnOut
  readonly project: Project
}

/**
 * What is freed comes to be only when its board is cut, so it is kept set aside: no sheet of this plan may count on it.
 * When the boards are cut it is taken into use, for what is still to be laid out or for the next job.
 */
function Keeping({ sawn: { keeps, material, boards }, project }: KeepingProps) {
  const actions = useStore((state) => state.actions)
  const { display } = project
  if (!keeps || !isStock(keeps)) return null
  const size = `${formatLength(keeps.length, display)} × ${formatLength(keeps.width, display)}`
  const put = (stock: Stock, label: string) => actions.commit({ kind: 'putStock', stock }, label)
  const there = offcutLike(project, material, keeps)
  if (!there) {
    const id = freeId<StockId>('s', project.stock)
    const stock = { id, material, ...keeps, price: 0, quantity: boards.length, isOffcut: true, isExcluded: true }
    const label = `Keep as offcut ${size}`
    return (
      <Button aria-label={`${label}, ${boards.join(', ')}`} onClick={() => put(stock, label)}>
        {label}
      </Button>
    )
  }
  if (!there.isExcluded) return <em>Kept, and in use: boards may be laid out on it.</em>
  return (
    <>
      <em>Kept among the boards of the shop, set aside until it is there.</em>{' '}
      <Button
        look="plain"
        aria-label={`It is there: use offcut ${size}`}
        onClick={() => put({ ...there, isExcluded: false }, `Use offcut ${size}`)}
      >
        It is there: use it
      </Button>
    </>
  )
}

/** Smaller than any sheet may be in a project, it is kept in the shop and not in the list. */
function isStock({ length, width }: NonNullable<SawnOut['keeps']>): boolean {
  const say = { unit: 'mm', step: 0.1 } as const
  return checkLength('sheetLength', length, say).ok && checkLength('sheetWidth', width, say).ok
}

function offcutLike({ stock }: Project, material: string, keeps: NonNullable<SawnOut['keeps']>): Stock | undefined {
  return Object.values(stock).find(
    (one) => one.isOffcut && one.material === material && one.length === keeps.length && one.width === keeps.width,
  )
}
