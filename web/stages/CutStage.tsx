import { SheetsView } from '../sheets/SheetsView'
import { StepsView } from '../sheets/StepsView'
import { MaterialRows } from './MaterialRows'
import panels from './Panels.module.css'
import { ShopRows } from './ShopRows'
import styles from './Stages.module.css'

/** Sheets to buy, the cuts in their order, and the shop they are made for. */
export function CutStage() {
  return (
    <div className={styles.cut}>
      <section className={styles.filled} aria-label="Sheets">
        <h2>Sheets</h2>
        <SheetsView />
      </section>
      <section className={styles.filled} aria-label="Steps">
        <h2>Steps</h2>
        <StepsView />
      </section>
      <section aria-label="Shop and boards">
        <h2>Shop and boards</h2>
        <div className={panels.panel}>
          <ShopRows />
          <MaterialRows />
        </div>
      </section>
    </div>
  )
}
