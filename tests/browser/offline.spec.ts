import { button, cabinets, expect, goTo, test, untilSaved } from './shop'

test.use({ serviceWorkers: 'allow' })

test('after the first visit the app opens without a network, with the project and the ticks of its cutting', async ({
  shop,
  context,
}) => {
  await shop.evaluate(async () => {
    await navigator.serviceWorker.ready
  })
  await goTo(shop, 'Cut')
  await button(shop, 'Start cutting').click({ timeout: 30_000 })
  const bench = shop.getByRole('dialog', { name: 'At the bench' })
  await bench.getByRole('button', { name: 'Done', exact: true }).click()
  await expect(bench).toContainText(/1 of \d+ done/)
  await shop.keyboard.press('Escape')
  await expect(bench).toBeHidden()
  await untilSaved(shop)

  await context.setOffline(true)
  await shop.reload()
  await goTo(shop, 'Design')
  await expect(cabinets(shop)).toHaveCount(10)
  await goTo(shop, 'Cut')
  await button(shop, /^Go on cutting \(1 of \d+ steps done\)/).click()
  await expect(bench).toContainText('Step 2 of')
  await context.setOffline(false)
})
