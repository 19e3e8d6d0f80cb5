import { lazy, Suspense } from 'react'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import styles from './Stages.module.css'

const Scene = lazy(() => import('../scene/Scene'))

/** What the client sees: the run in 3D, and its size in words. */
export function ShowStage() {
  const { name, walls } = useStore((state) => state.shown)
  const cabinets = useStore((state) => state.derived.cabinets)
  const [wall] = Object.values(walls)
  return (
    <div className={styles.show}>
      <section aria-label="What the client sees">
        <Suspense fallback={<p className={styles.quiet}>3D is being set up</p>}>
          <Scene />
        </Suspense>
      </section>
      <div className={styles.showWords}>
        <h2>{name}</h2>
        <p>
          {cabinets.length} {cabinets.length === 1 ? 'cabinet' : 'cabinets'} on {wall?.name ?? 'the wall'}.
        </p>
        <p className={styles.quiet}>
          Papers for the client, plan, elevation and quote, will be made here. They are not made yet; the wall in Design
          can be printed.
        </p>
        <Button onClick={() => window.print()}>Print this page</Button>
      </div>
    </div>
  )
}
