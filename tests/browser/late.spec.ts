import { button, expect, goTo, test, type } from './shop'

test('fronts wait until the carcasses are measured, and are cut to what was typed in', async ({ shop }) => {
  test.setTimeout(120_000)
  await goTo(shop, 'Cut')
  await shop.getByLabel('Doors and drawer fronts').check()
  await button(shop, 'Start cutting').click({ timeout: 40_000 })
  const bench = shop.getByRole('dialog', { name: 'At the bench' })
  const done = bench.getByRole('button', { name: 'Done', exact: true })
  const pause = bench.getByText('the saw rests')
  for (let step = 0; step < 200 && !(await pause.isVisible()); step++) await done.click()
  await expect(pause).toBeVisible()
  const change = bench.getByRole('region', { name: 'What would change' })
  await expect(change).toContainText('Nothing that is measured changes what is left to cut.')

  await bench.locator('summary', { hasText: /^U1/ }).click()
  const width = bench
    .getByRole('region', { name: /^Opening of the .* of U1$/ })
    .first()
    .getByLabel('Measured width')
  const drawn = Number(await width.inputValue())
  await type(width, String(drawn + 50))
  await expect(bench).toContainText(`it can be at most ${drawn + 20} mm`)
  await type(width, String(drawn + 2))
  await expect(bench).toContainText('measured 2 mm more')
  const told = change.getByText(/^U1-DR1? is cut .* and not/)
  await expect(told).toBeVisible()
  const sentence = (await told.textContent())!
  await change.getByRole('button', { name: 'Plan the rest by what was measured' }).click()
  await bench.getByRole('button', { name: 'Yes, cut by this plan' }).click({ timeout: 30_000 })

  const changed = bench.getByRole('region', { name: 'What has changed' })
  await expect(changed).toContainText(sentence, { timeout: 40_000 })
  await expect(changed).toContainText('All else stays as it was')
  // What is left is measured already: the saw does not rest again.
  await expect(pause).toBeHidden()
  await bench.getByRole('button', { name: 'Leave the bench' }).click()

  await goTo(shop, 'Design')
  await expect(shop.getByText('· measured').first()).toBeVisible()
  await expect(shop.getByText('· cut late').first()).toBeVisible()
  await button(shop, /^Undo/).click()
  await expect(shop.getByText('· measured')).toHaveCount(0)
})

test('each cabinet is told after the saw, its fronts last', async ({ shop }) => {
  await goTo(shop, 'Build')
  const steps = shop.getByRole('list', { name: 'After the saw: B1' }).getByRole('listitem')
  await expect(steps.first()).toContainText('Band the edges')
  await expect(steps.last()).toContainText('Fronts last')
})
