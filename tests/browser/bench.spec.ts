import { button, expect, goTo, test } from './shop'

test('cutting begins, goes on after a reload and is planned anew when a part is spoiled', async ({ shop }) => {
  await goTo(shop, 'Cut')
  await button(shop, 'Start cutting').click({ timeout: 30_000 })
  const bench = shop.getByRole('dialog', { name: 'At the bench' })
  await expect(bench).toContainText('Put the rip blade in')
  await expect(bench.getByRole('img', { name: /before the cut/ })).toBeVisible()
  const done = bench.getByRole('button', { name: 'Done', exact: true })
  await done.click()
  await done.click()
  await bench.getByRole('button', { name: 'Back' }).click()
  await bench.getByRole('button', { name: 'Not done after all' }).click()
  await expect(bench).toContainText(/1 of \d+ done/)
  await shop.keyboard.press('Escape')

  // The design goes on; what is being cut does not change with it.
  await goTo(shop, 'Design')
  await button(shop, /^Width of B1: 500/).click()
  await shop.keyboard.type('450')
  await shop.keyboard.press('Enter')
  await expect(button(shop, /^Undo/)).toBeEnabled()
  await shop.waitForFunction(() => /saved/.test(document.querySelector('header')?.textContent ?? ''))
  await shop.reload()
  await goTo(shop, 'Cut')
  await button(shop, /^Go on cutting \(1 of \d+ steps done\)/).click()
  await expect(bench).toContainText('Step 2 of')

  // On to the first step that frees a part.
  const writes = bench.locator('[data-step]')
  for (let step = 0; step < 80; step++) {
    if (await writes.filter({ hasText: /\d+ parts? / }).count()) break
    await done.click()
  }
  const mark = (await writes.locator('strong').last().textContent())!.trim().split(/\s+/)[0]!
  await done.click()
  await bench.getByRole('button', { name: 'Something went wrong' }).click()
  await bench.getByRole('button', { name: mark, exact: true }).click()
  await bench.getByRole('button', { name: 'Plan the rest anew' }).click()
  await expect(bench.getByRole('region', { name: 'What has changed' })).toContainText(mark, { timeout: 30_000 })
  // What is cut still counts.
  await expect(bench).not.toContainText(/\b0 of \d+ done/)
})

test('a damage that is off its sheet is refused, and nothing is changed', async ({ shop }) => {
  await goTo(shop, 'Cut')
  await button(shop, 'Start cutting').click({ timeout: 30_000 })
  const bench = shop.getByRole('dialog', { name: 'At the bench' })
  await bench.getByRole('button', { name: 'Something went wrong' }).click()
  await expect(bench).toContainText('No part is cut yet')
  await bench.getByRole('button', { name: 'A board is damaged' }).click()
  await bench.getByLabel('From its first edge').fill('50000')
  await bench.getByLabel('From its first edge').press('Enter')
  await expect(bench).toContainText(/The distance from the first edge is 50000 mm; it can be at most \d+ mm\./)
  await bench.getByRole('button', { name: 'Leave the plan as it is' }).click()
  await expect(bench).toContainText('Step 1 of')
  await bench.getByRole('button', { name: 'Leave the bench' }).click()
  await button(shop, 'Put this cutting away').click()
  await button(shop, /^Forget what is done/).click()
  await expect(button(shop, 'Start cutting')).toBeVisible()
})

test('every step is printed, upright or across the page', async ({ shop }) => {
  await goTo(shop, 'Cut')
  await expect(button(shop, 'Start cutting')).toBeEnabled({ timeout: 30_000 })
  for (const landscape of [false, true]) {
    const pdf = await shop.pdf({ format: 'A4', landscape })
    const pages = pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []
    // A page takes about seven steps, and there are more than a hundred.
    expect(pages.length).toBeGreaterThan(10)
  }
})
