import { expectRows, putReady, size } from './cutlist'
import { cabinet, expect, openTab, startProject, test, type } from './shop'

test.use({ looksOn: false, draws3D: false })

test('a single measure of a set of rules is settled by one cabinet, shown, and taken back in one click', async ({
  shop,
}) => {
  await startProject(shop, 'Millimetres')
  await putReady(shop, 'open shelves')
  const card = shop.getByRole('region', { name: 'Properties' })
  await cabinet(shop, 'U1').click()
  // 600 wide, 330 deep: between sides of 18 with 3 of play, before a back of 6 at 10, and 10 back; 1 of banding.
  const loose = (setback: number) => ({ 'adjustable shelf': size(600 - 2 * 18 - 3, 330 - 10 - 6 - setback - 1) })
  await expectRows(shop, 'U1', loose(10))

  await card.getByRole('button', { name: /Built differently/ }).click()
  await card.getByText('Loose shelves', { exact: true }).last().click()
  await type(card.getByLabel('Setback', { exact: true }), '40/2')
  await expectRows(shop, 'U1', loose(20))
  await expect(card.getByRole('button', { name: 'Built differently: 1 *' })).toBeVisible()
  await expect(card.getByText('Loose shelves: Setback', { exact: true })).toBeVisible()
  await expect(cabinet(shop, 'U1')).toContainText('*')
  await openTab(shop, 'Schedule')
  await expect(shop.getByText('built differently: Loose shelves: Setback')).toHaveCount(1)

  await card.getByRole('button', { name: 'Setback: as the build method has it' }).click()
  await expectRows(shop, 'U1', loose(10))
  await expect(cabinet(shop, 'U1')).not.toContainText('*')
})

test('cabinets with charts of hinges of their own keep them, but for the row that is changed on all', async ({
  shop,
}) => {
  await startProject(shop, 'Millimetres')
  await putReady(shop, 'open shelves')
  await putReady(shop, 'open shelves')
  const card = shop.getByRole('region', { name: 'Properties' })
  const height = (hinges: number) => card.getByLabel(`${hinges} hinges up to a height of`, { exact: true })
  const open = async () => {
    const built = card.getByRole('button', { name: /Built differently/ })
    if ((await built.getAttribute('aria-expanded')) === 'false') await built.click()
    if (!(await height(2).isVisible()))
      await card
        .getByText(/^Hinges/)
        .last()
        .click()
  }
  await cabinet(shop, 'U1').click()
  await open()
  await type(height(3), '1400')
  await cabinet(shop, 'U2').click()
  await open()
  await expect(height(3)).toHaveValue('1524')
  await cabinet(shop, 'U1').click({ modifiers: ['Shift'] })
  await open()
  await expect(height(3)).toHaveValue('')
  await type(height(2), '900')
  await cabinet(shop, 'U1').click()
  await open()
  await expect(height(2)).toHaveValue('900')
  await expect(height(3)).toHaveValue('1400')
  await cabinet(shop, 'U2').click()
  await open()
  await expect(height(2)).toHaveValue('900')
  await expect(height(3)).toHaveValue('1524')
})
