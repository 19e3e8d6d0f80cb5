import {
  densityUnit,
  freeId,
  freshBoard,
  isMaterialFree,
  type Material,
  materialsInOrder,
  type Stock,
  type StockId,
  stiffnessUnit,
  stockOf,
} from '../../engine/index'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import fields from '../ui/Fields.module.css'
import { LengthField } from '../ui/LengthField'
import { NumberField } from '../ui/NumberField'
import { TextField } from '../ui/TextField'
import styles from './Panels.module.css'

/** Boards as they measure, and the sheets of each that can be bought or are there. */
export function MaterialRows() {
  const project = useStore((state) => state.shown)
  const actions = useStore((state) => state.actions)
  return (
    <>
      {materialsInOrder(project.materials).map((material) => (
        <MaterialRow key={material.id} material={material} />
      ))}
      <p className={styles.actions}>
        <Button onClick={() => actions.commit({ kind: 'addMaterial', ...freshBoard(project) })}>Add a board</Button>
      </p>
    </>
  )
}

function MaterialRow({ material }: { readonly material: Material }) {
  const project = useStore((state) => state.shown)
  const { stock, display } = project
  const actions = useStore((state) => state.actions)
  const change = (what: Partial<Omit<Material, 'id'>>) => {
    actions.commit({ kind: 'editMaterial', id: material.id, change: what })
    return null
  }
  const sheets = stockOf(stock, material.id)
  return (
    <fieldset className={styles.set} data-material={material.id}>
      <legend>{material.name}</legend>
      <TextField label="Name" value={material.name} onText={(name) => change({ name })} />
      <LengthField
        label="Sold as"
        value={material.nominal}
        isMeasure
        display={display}
        field="thickness"
        onLength={(nominal) => change({ nominal })}
      />
      <LengthField
        label="Measures"
        value={material.thickness}
        isMeasure
        display={display}
        field="thickness"
        onLength={(thickness) => change({ thickness })}
      />
      <NumberField
        label={`Density, ${densityUnit(display).name}`}
        per={densityUnit(display).kg}
        value={material.density}
        least={10}
        most={10_000}
        onNumber={(density) => change({ density })}
      />
      <NumberField
        label={`Stiffness, ${stiffnessUnit(display).name}`}
        per={stiffnessUnit(display).newtons}
        value={material.stiffness}
        least={100}
        most={250_000}
        // A typed psi is no whole N/mm², and nobody knows a board so well.
        onNumber={(stiffness) => change({ stiffness: Math.round(stiffness) })}
      />
      <NumberField
        label={`Stiffness across the grain, ${stiffnessUnit(display).name}`}
        per={stiffnessUnit(display).newtons}
        value={material.stiffnessAcross ?? material.stiffness}
        least={100}
        most={250_000}
        onNumber={(stiffness) => change({ stiffnessAcross: Math.round(stiffness) })}
      />
      <label className={fields.check}>
        <input
          type="checkbox"
          checked={material.hasGrain}
          onChange={(event) => change({ hasGrain: event.currentTarget.checked })}
        />
        Has grain: parts are not turned
      </label>
      {sheets.map((sheet) => (
        <StockRow key={sheet.id} sheet={sheet} of={material.name} />
      ))}
      {isNoneBought(sheets) && (
        <p className={styles.note}>
          No more sheets are cut than are on hand. To buy more, add a sheet size, which begins with the first one's, and
          leave its On hand empty.
        </p>
      )}
      <p className={styles.actions}>
        <Button
          aria-label={`Add a sheet size of ${material.name}`}
          onClick={() => actions.commit({ kind: 'putStock', stock: freshStock(stock, material, sheets, false) })}
        >
          Add a sheet size
        </Button>
        <Button
          aria-label={`Add an offcut of ${material.name}`}
          onClick={() => actions.commit({ kind: 'putStock', stock: freshStock(stock, material, sheets, true) })}
        >
          Add an offcut
        </Button>
        {isMaterialFree(project, material.id) && (
          <Button
            aria-label={`Remove the board ${material.name}`}
            onClick={() => actions.commit({ kind: 'removeMaterial', id: material.id })}
          >
            Remove this board
          </Button>
        )}
      </p>
    </fieldset>
  )
}

/** Whether there are whole sheets, and as many of each as are on hand. */
function isNoneBought(sheets: readonly Stock[]): boolean {
  const whole = sheets.filter(({ isOffcut }) => !isOffcut)
  return whole.length > 0 && whole.every(({ quantity }) => quantity !== null)
}

function freshStock(
  all: Readonly<Record<StockId, Stock>>,
  { id: material }: Material,
  [like]: readonly Stock[],
  isOffcut: boolean,
): Stock {
  const size = { length: like?.length ?? 2440, width: like?.width ?? 1220 }
  const id = freeId<StockId>('s', all)
  if (!isOffcut) return { id, material, ...size, price: like?.price ?? 0, quantity: null, isOffcut, isExcluded: false }
  return {
    id,
    material,
    length: size.length / 2,
    width: size.width / 2,
    price: 0,
    quantity: 1,
    isOffcut,
    isExcluded: false,
  }
}

function StockRow({ sheet, of }: { readonly sheet: Stock; readonly of: string }) {
  const { display, shop } = useStore((state) => state.shown)
  const actions = useStore((state) => state.actions)
  const put = (change: Partial<Stock>) => {
    actions.commit({ kind: 'putStock', stock: { ...sheet, ...change } })
    return null
  }
  const what = sheet.isOffcut ? 'Offcut' : 'Sheet'
  return (
    <div className={styles.stock}>
      <LengthField
        label={`${what} length`}
        value={sheet.length}
        display={display}
        field="sheetLength"
        onLength={(length) => put({ length })}
      />
      <LengthField
        label={`${what} width`}
        value={sheet.width}
        display={display}
        field="sheetWidth"
        onLength={(width) => put({ width })}
      />
      <NumberField
        label={`Price, ${shop.currency}`}
        value={sheet.price}
        least={0}
        most={1_000_000}
        onNumber={(price) => put({ price })}
      />
      <NumberField
        label="On hand"
        value={sheet.quantity}
        least={0}
        most={10_000}
        isWhole
        placeholder="as needed"
        onNumber={(quantity) => put({ quantity })}
        onEmpty={() => put({ quantity: null })}
      />
      <label className={fields.check}>
        <input
          type="checkbox"
          checked={sheet.isExcluded}
          onChange={(event) => put({ isExcluded: event.currentTarget.checked })}
        />{' '}
        set aside, not to be cut now
      </label>
      <Button
        look="plain"
        aria-label={`Remove this ${what.toLowerCase()} of ${of}`}
        onClick={() => actions.commit({ kind: 'removeStock', id: sheet.id })}
      >
        Remove
      </Button>
    </div>
  )
}
