import { type CutRow, counted, type MaterialId, type SheetAnswer } from '../../engine/index'
import type { Cutting } from '../store/state'
import styles from './Bench.module.css'
import { KeepOffcuts } from './KeepOffcuts'
import { leftCount, onNoSheetWords } from './words'

interface AllCutProps {
  readonly cutting: Cutting
  readonly steps: number
  readonly open: number
}

/** The end of the steps: what is cut, and what was never laid out. */
export function AllCut({ cutting, steps, open }: AllCutProps) {
  const { cutList, answer, materials } = cutting.input
  const left = leftCount(answer)
  const parts = cutting.cutBefore.length + cutList.rows.reduce((sum, { quantity }) => sum + quantity, 0) - left
  return (
    <article className={styles.card}>
      <p className={styles.setting}>
        <b>{open > 0 ? `${open} left out` : left > 0 ? `${left} not cut` : 'All cut'}</b>
      </p>
      <p className={styles.text}>
        {open === 0
          ? `${counted(parts, 'part')} ${parts === 1 ? 'is' : 'are'} cut, in ${counted(steps, 'step')}. Count them against the cut list before the blade comes out.`
          : 'Go back to the steps that are not done yet.'}
      </p>
      {left > 0 && (
        <p className={styles.caution}>
          <span aria-hidden="true">▲</span> {onNoSheetWords(left)} and {left === 1 ? 'is' : 'are'} not cut:{' '}
          {ofEach(answer.unplaced, cutList.rows, materials)}.
        </p>
      )}
      {open === 0 && <KeepOffcuts cutting={cutting} />}
    </article>
  )
}

/** `40 of 18 mm birch ply, 3 of 6 mm birch ply`. */
function ofEach(
  unplaced: SheetAnswer['unplaced'],
  rows: readonly CutRow[],
  materials: Cutting['input']['materials'],
): string {
  const of = new Map<string, MaterialId>(rows.map(({ key, material }) => [key, material]))
  const counts = new Map<string, number>()
  for (const { part, quantity } of unplaced) {
    const name = materials[of.get(part)!]?.name ?? part
    counts.set(name, (counts.get(name) ?? 0) + quantity)
  }
  return [...counts].map(([name, count]) => `${count} of ${name}`).join(', ')
}
