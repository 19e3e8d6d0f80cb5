import { button, cabinet, cabinets, expect, test, type } from './shop'

test.use({ looksOn: false })

test('a second wall is added, built on and removed with all on it', async ({ shop }) => {
  await button(shop, 'Site').click()
  await button(shop, 'Add a wall').click()
  await expect(shop.getByRole('group', { name: 'Walls' }).getByRole('button', { pressed: true })).toHaveText('Wall 2')
  await button(shop, 'Design').click()
  await expect(cabinets(shop)).toHaveCount(0)
  await button(shop, 'Base').click()
  await shop.locator('[data-slot]').first().click()
  await expect(cabinet(shop, 'B6')).toBeVisible()
  await expect(shop.getByRole('grid', { name: 'Cut list' })).toContainText('B6')

  // Whatever is chosen on another wall is brought into sight.
  await button(shop, 'Window wall').click()
  await expect(cabinets(shop)).toHaveCount(10)
  await cabinet(shop, 'B1').click()
  await shop.getByLabel('On wall').selectOption('Wall 2')
  await expect(button(shop, 'Undo move B1 to Wall 2')).toBeVisible()
  await expect(cabinets(shop)).toHaveCount(2)

  await button(shop, 'Site').click()
  await button(shop, 'Remove Wall 2 and the 2 cabinets on it').click()
  await button(shop, 'Design').click()
  await expect(cabinets(shop)).toHaveCount(9)
  await button(shop, /^Undo delete Wall 2/).click()
  await expect(button(shop, 'Wall 2')).toBeVisible()
})

test('the names of the walls stand free of all else over a low drawing, and on a phone', async ({ shop }) => {
  await button(shop, 'Site').click()
  for (const name of ['North wall', 'Island']) {
    await button(shop, 'Add a wall').click()
    await type(shop.getByLabel('Name', { exact: true }), name)
  }
  await button(shop, 'Design').click()
  const walls = shop.getByRole('group', { name: 'Walls' }).getByRole('button')
  await expect(walls).toHaveText(['Window wall', 'North wall', 'Island'])
  for (const size of [
    { width: 1440, height: 900 },
    { width: 1024, height: 768 },
    { width: 390, height: 844 },
  ]) {
    await shop.setViewportSize(size)
    // What is under the middle and either end of a name is its own button, and nothing that lies over it.
    for (const wall of await walls.all()) {
      const { x, y, width, height } = (await wall.boundingBox())!
      for (const at of [4, width / 2, width - 4]) {
        const isOwn = await wall.evaluate((own, { x, y }) => own.contains(document.elementFromPoint(x, y)), {
          x: x + at,
          y: y + height / 2,
        })
        expect(isOwn, `${await wall.textContent()} at ${size.width}`).toBe(true)
      }
    }
  }
})

test('a room of four walls is closed, and the client is told of every wall that has cabinets', async ({ shop }) => {
  await button(shop, 'Site').click()
  for (const number of [2, 3, 4]) {
    await button(shop, 'Add a wall').click()
    const before = number === 2 ? 'Window wall' : `Wall ${number - 1}`
    await shop.getByLabel(`Its left end meets the right end of ${before} in a corner`).check()
  }
  await type(shop.getByLabel('Length', { exact: true }), '3400')
  await shop.getByLabel('Its right end meets the left end of Window wall: the room is closed').check()
  await expect(shop.getByRole('main')).toContainText(
    'Wall 2 is 3600 and Wall 4, opposite, 3400: the room is not square',
  )
  await type(shop.getByLabel('Length', { exact: true }), '3600')
  await expect(shop.getByRole('main')).not.toContainText('not square')

  // T1 stands in the corner that was closed: what comes along the fourth wall keeps clear of it.
  await button(shop, 'Design').click()
  await button(shop, 'Base').click()
  await shop.locator('[data-slot]').first().click()
  await expect(cabinet(shop, 'B6')).toBeVisible()
  await expect(shop.locator('[data-reaching]')).toContainText('T1')
  const card = shop.getByRole('region', { name: 'Properties' })
  // T1 is 580 deep with a door of 18, and B6 600 wide.
  const overlap = 2500 + 600 - (3600 - 580 - 18)
  await type(card.getByLabel('From left', { exact: true }), '2500')
  await expect(card).toContainText(`B6 would overlap T1 by ${overlap} mm in the corner with Window wall`)
  await button(shop, 'Show').click()
  await expect(shop.getByRole('main')).toContainText('11 cabinets on 2 walls: 10 on Window wall, 1 on Wall 4.')
})
