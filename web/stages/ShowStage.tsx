import { lazy, Suspense, useEffect } from 'react'
import { type Derived, wallsOf } from '../../engine/index'
import { standingWords } from '../scene/standing'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import styles from './Stages.module.css'

const Scene = lazy(() => import('../scene/Scene'))

/** What the client sees: the run in 3D, and its size in words. */
export function ShowStage() {
  const derived = useStore((state) => state.derived)
  const actions = useStore((state) => state.actions)
  // What the maker had picked is nothing to the client.
  useEffect(() => actions.select({ kind: 'nothing' }), [actions])
  return (
    <div className={styles.show}>
      <section aria-label="What the client sees">
        <Suspense fallback={<p className={styles.quiet}>3D is being set up</p>}>
          <Scene isForPaper />
        </Suspense>
      </section>
      <div className={styles.showWords}>
        <h2>{derived.project.name}</h2>
        <p>{wallsWords(derived)}</p>
        <Button onClick={() => window.print()}>Print this page</Button>
      </div>
    </div>
  )
}

/** `12 cabinets on 2 walls: 10 on Window wall, 2 on Wall 2.` A wall where nothing stands is not spoken of. */
export function wallsWords({ project, cabinets }: Pick<Derived, 'project' | 'cabinets'>): string {
  const counted = wallsOf(project).map(({ id, name }) => {
    return { name, count: cabinets.filter(({ cabinet }) => cabinet.wall === id).length }
  })
  const standing = counted.filter(({ count }) => count > 0)
  if (standing.length === 0) return 'No cabinets yet.'
  const all = standingWords(cabinets)
  if (standing.length === 1) return `${all} on ${standing[0]!.name}.`
  return `${all} on ${standing.length} walls: ${standing.map(({ name, count }) => `${count} on ${name}`).join(', ')}.`
}
