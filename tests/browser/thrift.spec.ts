import { button, expect, openTab, startProject, test, type } from './shop'

test('a search for savings says what it found, changes nothing, and does it when it is told to', async ({ shop }) => {
  await startProject(shop, 'Millimetres')
  await openTab(shop, 'Schedule')
  for (const mark of ['B1', 'B2', 'B3', 'B4', 'B5', 'B6']) {
    await button(shop, 'Add base').click()
    await type(shop.getByLabel(`Depth of ${mark}`, { exact: true }), '602')
  }
  await openTab(shop, 'Sheets')
  await shop.getByText('Could a sheet be saved?').click()
  await expect(button(shop, 'Look for savings')).toBeDisabled()
  await shop.getByRole('checkbox', { name: /^depth of the bases, now 602/ }).check()
  await type(shop.getByLabel('by at most'), '20')
  const undo = await button(shop, /^Undo/).textContent()
  await button(shop, 'Look for savings').click()
  const found = shop.getByRole('list', { name: 'Savings found' })
  await expect(found.getByRole('listitem')).toHaveCount(1, { timeout: 60_000 })
  await expect(found).toContainText(/depth of the bases 602 mm to \d+(\.5)? mm: \d sheets? less/)
  expect(await button(shop, /^Undo/).textContent()).toBe(undo)

  await found.getByRole('button', { name: 'Do it' }).click()
  await expect(button(shop, /^Undo/)).toContainText('ave sheets')
  await expect(found).toHaveCount(0)
  await openTab(shop, 'Schedule')
  await expect(shop.getByLabel('Depth of B1', { exact: true })).not.toHaveValue('602')
  await button(shop, /^Undo/).click()
  await expect(shop.getByLabel('Depth of B1', { exact: true })).toHaveValue('602')
})
