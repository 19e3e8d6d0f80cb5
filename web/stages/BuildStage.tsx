import { type ReactNode, useMemo } from 'react'
import type { BoardRole, DerivedCabinet } from '../../engine/index'
import { ASSEMBLY_CAUTIONS, formatLength, installCautions } from '../../engine/index'
import { useStore } from '../store/store'
import { markStretches } from '../tables/changes'
import { AfterTheSaw, AfterTheSawOfRun } from './AfterTheSaw'
import styles from './Stages.module.css'

/** Cabinet by cabinet, the boards that go into it. */
export function BuildStage() {
  const cabinets = useStore((state) => state.derived.cabinets)
  const runs = useStore((state) => state.derived.runs)
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and there is nothing else in it that takes the keys.
    <div className={styles.stage} tabIndex={0}>
      <div className={styles.column}>
        <p>
          After the saw: each cabinet in numbered steps, with the marks of the boards. Drawings of the assembly and the
          order of installation are not made yet.
        </p>
        {cabinets.length > 0 && <Cautions title="Before you build" lines={ASSEMBLY_CAUTIONS} />}
        <InstallCautions />
        {cabinets.length === 0 && <p>There is nothing to build yet: draw a cabinet in Design.</p>}
        {cabinets.filter(hasBoards).map((built) => (
          <BoardList key={built.cabinet.id} built={built}>
            <AfterTheSaw built={built} />
          </BoardList>
        ))}
        {runs.map((run) => (
          <BoardList key={run.id} built={run}>
            <AfterTheSawOfRun run={run} />
          </BoardList>
        ))}
      </div>
    </div>
  )
}

/** A space for an appliance has none but the panels beside it. */
function hasBoards({ parts, cabinet }: DerivedCabinet): boolean {
  return parts.length > 0 || !cabinet.space
}

function Cautions({ title, lines }: { readonly title: string; readonly lines: readonly string[] }) {
  return (
    <section aria-label={title}>
      <h2>{title}</h2>
      <ul className={styles.cautions}>
        {lines.map((line) => (
          <li key={line}>
            <span aria-hidden="true">▲</span> {line}
          </li>
        ))}
      </ul>
    </section>
  )
}

function InstallCautions() {
  const { cabinets, project } = useStore((state) => state.derived)
  const cautions = useMemo(() => {
    const standing = cabinets.map(({ cabinet }) => cabinet)
    return installCautions(standing, project.display, project.house)
  }, [cabinets, project.display, project.house])
  if (cautions.length === 0) return null
  return (
    <section aria-label="Before they are fixed">
      <h2>Before they are fixed</h2>
      <ul className={styles.cautions}>
        {cautions.map(({ text, cabinets: marks }) => (
          <li key={text}>
            <span aria-hidden="true">▲</span> {marks.length > 0 && <strong>{markStretches(marks)} </strong>}
            {text}
          </li>
        ))}
      </ul>
    </section>
  )
}

/** From the carcass outwards, as it is put together. */
const ORDER: readonly BoardRole[] = [
  'leftSide',
  'bottom',
  'fixedShelf',
  'partition',
  'divider',
  'frontStretcher',
  'backStretcher',
  'top',
  'topNailer',
  'middleNailer',
  'bottomNailer',
  'back',
  'rightSide',
  'lidStrip',
  'lid',
]

interface BoardListProps {
  readonly built: Pick<DerivedCabinet, 'mark' | 'parts'>
  readonly children?: ReactNode
}

function BoardList({ built, children }: BoardListProps) {
  const display = useStore((state) => state.shown.display)
  const materials = useStore((state) => state.shown.materials)
  const parts = useMemo(() => [...built.parts].sort((a, b) => rank(a.role) - rank(b.role)), [built])
  return (
    <section aria-label={built.mark}>
      <h2>{built.mark}</h2>
      {children}
      <div className={styles.tableFrame}>
        <table className={styles.table} aria-label={`Boards of ${built.mark}`}>
          <thead>
            <tr>
              <th scope="col">Mark</th>
              <th scope="col">Board</th>
              <th scope="col" className={styles.figure}>
                Length, {display.unit}
              </th>
              <th scope="col" className={styles.figure}>
                Width, {display.unit}
              </th>
              <th scope="col">Material</th>
            </tr>
          </thead>
          <tbody>
            {parts.map(({ id, mark, name, length, width, material }) => (
              <tr key={id} data-part={id}>
                <th scope="row">{mark}</th>
                <td>{name}</td>
                <td className={styles.figure}>{formatLength(length, display)}</td>
                <td className={styles.figure}>{formatLength(width, display)}</td>
                <td>{materials[material]?.name}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  )
}

function rank(role: BoardRole): number {
  const at = ORDER.indexOf(role)
  return at < 0 ? ORDER.length : at
}
