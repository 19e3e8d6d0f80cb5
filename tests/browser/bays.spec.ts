import { expectRows, putReady, size } from './cutlist'
import { button, cabinet, expect, startProject, test, type } from './shop'

test.use({ looksOn: false })

/*
 * Open shelves of 1236 by 720 by 330 of 18 mm boards: 1200 clear inside. Partitions sink 6 into the bottom and are butted to the top, where they are notched round the nailer; tongues of shelves sink 6 into the sides and 4.5, a quarter, into partitions. The banding of 1 on
 * front edges comes off, the back of 6 stands in a groove 10 from the rear, and shelves keep 10 behind the front edge.
 */
const T = 18
const CLEAR = 1236 - 2 * T
const HIGH = 720 - 2 * T
const DEEP = 330 - 10 - 6 - 10 - 1

test('partitions at typed places, a bay with its own shelves, and a fixed shelf at a height', async ({ shop }) => {
  await startProject(shop, 'Millimetres')
  await putReady(shop, 'open shelves')
  const card = shop.getByRole('region', { name: 'Properties' })
  const field = (name: string) => card.getByLabel(name, { exact: true })
  await cabinet(shop, 'U1').click()
  await type(field('Width'), '600*2+36')
  await type(field('Loose shelves'), '0')
  await type(field('Partitions'), '2')
  await expect(field('Bay 1 width')).toHaveValue(String((CLEAR - 2 * T) / 3))

  // Sums and names are taken, a length that leaves nothing is refused with the limit.
  await type(field('Bay 1 width'), '(W-36)/4')
  await expect(field('Bay 1 width')).toHaveValue('300')
  await type(field('Bay 1 width'), '1200')
  await expect(card.getByRole('alert')).toHaveText(
    `The width of bay 1 is 1200 mm; it can be at most ${CLEAR - 2 * T - 2 * 30} mm.`,
  )
  await field('Bay 1 width').press('Escape')
  const rest = (CLEAR - 2 * T - 300) / 2
  await expect(field('Bay 2 width')).toHaveValue(String(rest))

  await field('· Bay 1 holds').selectOption('own')
  await type(field('· Bay 1 loose shelves'), '3')
  await field('· Bay 2 holds').selectOption('own')
  await type(field('· Bay 2 fixed shelves'), '2')
  await type(field('· Bay 2 shelf 1 over bottom'), '200')
  // The other parts what is left over the first.
  await expect(field('· Bay 2 shelf 2 over bottom')).toHaveValue(String(200 + T + (HIGH - 200 - 2 * T) / 2))
  await expectRows(shop, 'U1', {
    partition: size(HIGH + 6, 330 - 10 - 6 - 1),
    'adjustable shelf': size(300 - 3, DEEP),
    'fixed shelf': size(rest + 2 * (T / 4), DEEP),
  })

  // One step back each.
  await expect(button(shop, /Undo .*U1/)).toBeEnabled()
  await button(shop, /Undo .*U1/).click()
  await expect(field('· Its place').first()).toHaveValue('even')
  await type(field('Partitions'), '0')
  await expect(field('Bay 1 width')).toHaveCount(0)
  await expectRows(shop, 'U1', { partition: [], 'fixed shelf': [] })
})
