import { useState } from 'react'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import { LengthField } from '../ui/LengthField'
import { BetweenPage } from './BetweenPage'
import { MaterialRows } from './MaterialRows'
import { MethodPage } from './MethodPage'
import styles from './Panels.module.css'
import { ShopRows } from './ShopRows'

const PAGES = [
  ['method', 'Build method'],
  ['boards', 'Boards and sheets'],
  ['between', 'Kick, top, trims'],
  ['shop', 'Shop'],
  ['sizes', 'New cabinets'],
] as const
type PageName = (typeof PAGES)[number][0]

/** What holds for the whole project: how it is built, from what, and in which shop. */
export function ProjectPanel() {
  const [page, setPage] = useState<PageName>('method')
  return (
    <section className={styles.panel} aria-label="Project">
      <div className={styles.pages}>
        {PAGES.map(([name, words]) => (
          <Button key={name} aria-pressed={name === page} onClick={() => setPage(name)}>
            {words}
          </Button>
        ))}
      </div>
      {page === 'method' && <MethodPage />}
      {page === 'boards' && <MaterialRows />}
      {page === 'between' && <BetweenPage />}
      {page === 'shop' && <ShopRows />}
      {page === 'sizes' && <NewSizes />}
    </section>
  )
}

const KINDS = ['base', 'upper', 'tall'] as const
const FIELDS = [
  ['width', 'Width'],
  ['height', 'Height'],
  ['depth', 'Depth'],
] as const

/** The sizes that a new box starts with. */
function NewSizes() {
  const { newCabinets, display, grid } = useStore((state) => state.shown)
  const actions = useStore((state) => state.actions)
  return KINDS.map((kind) => (
    <fieldset key={kind} className={styles.set}>
      <legend>New {kind}</legend>
      {FIELDS.map(([field, label]) => (
        <LengthField
          key={field}
          label={label}
          value={newCabinets[kind][field]}
          display={display}
          field={field}
          onLength={(length) => {
            actions.commit({ kind: 'editNewCabinet', cabinet: kind, change: { [field]: length } })
            return null
          }}
        />
      ))}
      {kind === 'upper' && (
        <LengthField
          label="Above floor"
          value={newCabinets.upper.bottom}
          display={display}
          field="bottom"
          names={{ grid }}
          onLength={(bottom) => {
            actions.commit({ kind: 'editNewCabinet', cabinet: 'upper', change: { bottom } })
            return null
          }}
        />
      )}
    </fieldset>
  ))
}
