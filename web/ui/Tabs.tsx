import { type KeyboardEvent, type ReactNode, useId, useRef } from 'react'
import styles from './Tabs.module.css'

interface TabsProps<Name extends string> {
  readonly label: string
  readonly tabs: readonly (readonly [Name, ReactNode])[]
  readonly chosen: Name
  readonly onChosen: (name: Name) => void
  /** What stands at the end of the row of tabs. */
  readonly tools?: ReactNode
  readonly children: ReactNode
}

/** One of several panels, with arrow keys along its tabs. */
export function Tabs<Name extends string>({ label, tabs, chosen, onChosen, tools, children }: TabsProps<Name>) {
  const id = useId()
  const list = useRef<HTMLDivElement>(null)

  function onKeyDown(event: KeyboardEvent) {
    const at = tabs.findIndex(([name]) => name === chosen)
    const next = nextTab(event.key, at, tabs.length)
    const name = next === null ? undefined : tabs[next]?.[0]
    if (name === undefined) return
    event.preventDefault()
    onChosen(name)
    list.current?.querySelectorAll<HTMLElement>('[role=tab]')[next!]?.focus()
  }

  return (
    <div className={styles.frame}>
      <div className={styles.bar}>
        <div ref={list} className={styles.tabs} role="tablist" aria-label={label} onKeyDown={onKeyDown}>
          {tabs.map(([name, words]) => (
            <button
              key={name}
              type="button"
              role="tab"
              id={`${id}-${name}`}
              aria-selected={name === chosen}
              aria-controls={name === chosen ? `${id}-panel` : undefined}
              tabIndex={name === chosen ? 0 : -1}
              className={styles.tab}
              onClick={() => onChosen(name)}
            >
              {words}
            </button>
          ))}
        </div>
        {tools}
      </div>
      {/* The panel scrolls, so it takes the focus, or it could not be scrolled by keys. */}
      <div
        id={`${id}-panel`}
        key={chosen}
        className={styles.panel}
        role="tabpanel"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: see above.
        tabIndex={0}
        aria-labelledby={`${id}-${chosen}`}
      >
        {children}
      </div>
    </div>
  )
}

function nextTab(key: string, at: number, count: number): number | null {
  switch (key) {
    case 'ArrowRight':
      return (at + 1) % count
    case 'ArrowLeft':
      return (at + count - 1) % count
    case 'Home':
      return 0
    case 'End':
      return count - 1
    default:
      return null
  }
}
