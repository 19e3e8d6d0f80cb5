import { button, expect, goTo, test, type } from './shop'

test('cutting begins, goes on after a reload and is planned anew when a part is spoiled', async ({ shop }) => {
  await goTo(shop, 'Cut')
  await button(shop, 'Start cutting').click({ timeout: 30_000 })
  const bench = shop.getByRole('dialog', { name: 'At the bench' })
  await expect(bench).toContainText('Put the rip blade in')
  await expect(bench.getByRole('img', { name: /before the cut/ })).toBeVisible()
  const done = bench.getByRole('button', { name: 'Done', exact: true })
  // A double tap is one step.
  await done.dblclick()
  await expect(bench).toContainText(/\b1 of \d+ done/)
  await done.click()
  const back = bench.getByRole('button', { name: 'Back' })
  await back.click()
  await bench.getByRole('button', { name: 'Not done after all' }).click()
  await expect(bench).toContainText(/\b1 of \d+ done/)
  // What is cut from a sheet is not cut where its edge is not straight.
  await done.click()
  await back.click()
  await back.click()
  await expect(bench).toContainText('If this is not done after all, neither is 1 step that followed from it.')
  await bench.getByRole('button', { name: 'Not done after all' }).click()
  await expect(bench).toContainText(/\b0 of \d+ done/)
  await done.click()
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
  // Whoever was at the bench is at the bench again.
  await shop.reload()
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
  await bench.getByRole('button', { name: 'What would this do?' }).click()
  await bench.getByRole('button', { name: 'Yes, cut by this plan' }).click({ timeout: 30_000 })
  await expect(bench.getByRole('region', { name: 'What has changed' })).toContainText(mark, { timeout: 30_000 })
  // Sheets that were begun before are known by their pieces, and the form says so.
  await bench.getByRole('button', { name: 'Something went wrong' }).click()
  await bench.getByRole('button', { name: 'A board is damaged' }).click()
  await expect(bench).toContainText('begun before this plan')
  await bench.getByRole('button', { name: 'Leave the plan as it is' }).click()
  // What is cut still counts.
  await expect(bench).not.toContainText(/\b0 of \d+ done/)
})

test('a damage that is off its sheet is refused, and nothing is changed', async ({ shop }) => {
  await goTo(shop, 'Cut')
  await button(shop, 'Start cutting').click({ timeout: 30_000 })
  const bench = shop.getByRole('dialog', { name: 'At the bench' })
  await bench.getByRole('button', { name: 'Something went wrong' }).click()
  // With no part cut, none can be spoiled: the form opens on boards.
  await expect(bench.getByLabel('From its first edge')).toBeVisible()
  await bench.getByRole('button', { name: 'A part is spoiled' }).click()
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

test('every sheet and step is printed, upright or across the page', async ({ shop }) => {
  await goTo(shop, 'Cut')
  await expect(button(shop, 'Start cutting')).toBeEnabled({ timeout: 30_000 })
  await shop.emulateMedia({ media: 'print' })
  await expect(shop.locator('figure[data-sheet]').first()).toBeVisible()
  await expect(shop.getByText('Lengths in millimetres')).toBeVisible()
  await expect(shop.getByLabel('Material', { exact: true })).toBeHidden()
  await expect(shop.locator('li[data-step]').first()).toHaveCSS('break-inside', 'avoid')
  for (const landscape of [false, true]) {
    const pdf = await shop.pdf({ format: 'A4', landscape })
    const pages = pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []
    // A page takes about nine steps, across it about six, and there are more than a hundred; the sheets come before them.
    expect(pages.length).toBeGreaterThan(10)
    expect(pages.length).toBeLessThan(landscape ? 40 : 24)
  }
})

test('what is told of a mishap counts only as it stands: a refused length and an unchanged thickness plan nothing', async ({
  shop,
}) => {
  await goTo(shop, 'Cut')
  await button(shop, 'Start cutting').click({ timeout: 30_000 })
  const bench = shop.getByRole('dialog', { name: 'At the bench' })
  const anew = bench.getByRole('button', { name: 'What would this do?' })
  await bench.getByRole('button', { name: 'Something went wrong' }).click()

  await bench.getByRole('button', { name: 'A board is damaged' }).click()
  await expect(anew).toBeEnabled()
  for (const [label, text, words] of [
    ['From its first end', '9999', /The distance from the first end is 9999 mm; it can be at most \d+ mm\./],
    ['Across it', 'abc', '"abc" is not understood'],
    ['Along it', '0', 'The length of the damage is 0 mm; it must be more than 0 mm.'],
  ] as const) {
    const field = bench.getByLabel(label, { exact: true })
    // Pressing the button is what settles the field.
    await field.fill(text)
    await anew.click({ force: true })
    await expect(bench).toContainText(words)
    await expect(anew).toBeDisabled()
    await expect(bench).toContainText('A length above is not taken.')
    await field.fill('50')
    await field.press('Enter')
    await expect(anew).toBeEnabled()
  }

  await bench.getByRole('button', { name: 'Another thickness' }).click()
  const measures = bench.getByLabel('Measures', { exact: true })
  const before = await measures.inputValue()
  await expect(anew).toBeDisabled()
  await expect(bench).toContainText(`The plan has ${before} mm for`)
  await type(measures, '17.6')
  await expect(anew).toBeEnabled()
  await bench.getByRole('button', { name: 'Leave the plan as it is' }).click()
  await shop.keyboard.press('Escape')
  await expect(button(shop, 'Undo')).toBeDisabled()

  await button(shop, /^Go on cutting/).click()
  await bench.getByRole('button', { name: 'Something went wrong' }).click()
  await bench.getByRole('button', { name: 'Another thickness' }).click()
  await expect(measures).toHaveValue(before)
  await measures.fill('17.6')
  await bench.getByText('What does the batch measure?').click()
  await anew.click()
  await bench.getByRole('button', { name: 'Yes, cut by this plan' }).click({ timeout: 30_000 })
  await expect(bench.getByRole('region', { name: 'What has changed' })).toContainText('measures 17.6 mm', {
    timeout: 30_000,
  })
  await shop.keyboard.press('Escape')
  await button(shop, /^Undo/).click()
  await expect(button(shop, 'Undo')).toBeDisabled()
  // The design is as it was and the cutting is not, which is told until one press takes the entry back.
  const odds = /is 18 mm thick in the design, and what is being cut is planned for 17\.6 mm\./
  await expect(shop.getByText(/What is being cut stays as it was planned\./)).toContainText(odds)
  await button(shop, /^Go on cutting/).click()
  await expect(bench.getByText(odds)).toBeVisible()
  await bench.getByRole('button', { name: 'Take this entry back' }).click()
  await expect(bench.getByText(odds)).toBeHidden()
  await expect(bench.getByRole('region', { name: 'What has changed' })).toBeHidden()
})

test('a number that is put right, or taken out, leaves no refusal behind', async ({ shop }) => {
  await goTo(shop, 'Cut')
  const onHand = shop.locator('[data-material="carcass"]').getByLabel('On hand').first()
  for (const good of ['', '7']) {
    await type(onHand, '1e9')
    await expect(onHand).toHaveAttribute('aria-invalid', 'true')
    await type(onHand, good)
    await expect(onHand).toHaveAttribute('aria-invalid', 'false')
  }
})

test('however many boards are on no sheet, the question before cutting stays on the screen', async ({ shop }) => {
  await goTo(shop, 'Cut')
  const carcass = shop.locator('[data-material="carcass"]')
  await type(carcass.getByLabel('Sheet length'), '600')
  await shop.setViewportSize({ width: 390, height: 844 })
  await button(shop, 'Start cutting').click({ timeout: 30_000 })
  await expect(shop.getByRole('alert').getByText(/^\d+ boards are on no sheet and would not be cut\.$/)).toBeVisible()
  // One cause is one line, which is not folded.
  await expect(
    shop.getByRole('alert').getByText(/^\d+ boards are on no sheet \(A1, .*\): each is larger than 580 mm x 1200 mm, /),
  ).toBeVisible()
  await expect(button(shop, 'Cut the others all the same')).toBeInViewport({ ratio: 1 })
})
