import { useMemo } from 'react'
import { type Derived, sawnOutOf } from '../../engine/index'
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
        {sawn.map(({ text }) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </section>
  )
}
