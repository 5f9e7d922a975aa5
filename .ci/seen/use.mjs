// Uses the pages by keyboard alone, in large text, without motion.
import assert from 'node:assert/strict';
import { LAPTOP, ORIGIN, PHONE, QUESTIONS, close, example, begin, faults, open, settled, toAnswer } from './stage.mjs';

/** Goes on by Tab until what has the focus is of a selector. */
async function reach(page, selector) {
  for (let i = 0; i < 150; i++) {
    if (await page.evaluate(wanted => document.activeElement.matches(wanted), selector)) { return; }
    await page.keyboard.press('Tab');
  }
  assert.fail(`${selector} is not reached by Tab`);
}

/** From the front page to the answer and its parts, without a mouse. */
export async function keyboard() {
  const page = await open(ORIGIN);
  await reach(page, 'a[href="#/ask/worth"]');
  await page.keyboard.press('Enter');
  for (const [selector, text] of QUESTIONS.worth.fields) {
    await reach(page, selector);
    await page.keyboard.type(text);
  }
  await settled(page);
  assert.equal(await page.evaluate(() => document.activeElement.id), 'f-softener-control-everyDays', 'an answer moved the focus');
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => document.activeElement.id === 'answer');
  await reach(page, '.verdict .primary');
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => document.activeElement.id === 'result-settings');
  const fold = '.result details:not([open]) > summary';
  await reach(page, fold);
  await page.keyboard.press('Enter');
  assert.equal(await page.evaluate(() => document.activeElement.parentElement.open), true);
  await reach(page, '.demand > summary');
  await page.keyboard.press('Enter');
  await page.locator('.demand[open] .chart').first().waitFor();
  await page.goto(`${ORIGIN}/#/country`);
  await reach(page, 'input[name=look]:checked');
  const worn = () => page.evaluate(() => [document.documentElement.dataset.look ?? 'system', matchMedia('(prefers-color-scheme: dark)').matches, getComputedStyle(document.documentElement).colorScheme]);
  for (const look of ['light', 'dark', 'system']) {
    await page.keyboard.press('ArrowDown');
    assert.equal((await worn())[0], look, 'the appearance is not chosen by the arrow keys');
    await page.reload();
    await page.locator('input[name=look]:checked').waitFor();
    assert.equal((await worn())[0], look, 'the appearance is not kept');
    await reach(page, 'input[name=look]:checked');
  }
  await close(page);
}

/** Words of a drawing grow as all others do: none lies on another, none is cut off. */
async function drawings(page, name) {
  await page.evaluate(() => document.querySelectorAll('.drawing').forEach(each => { for (let around = each.closest('details'); around; around = around.parentElement.closest('details')) { around.open = true; } }));
  await page.evaluate(() => document.querySelectorAll('.part:has(#result-charts) .demand').forEach(each => { each.open = true; for (let around = each.parentElement.closest('details'); around; around = around.parentElement.closest('details')) { around.open = true; } }));
  await page.waitForFunction(() => [...document.querySelectorAll('.part:has(#result-charts) .demand')].every(each => each.querySelector('.drawing')));
  const found = await page.evaluate(() => [...document.querySelectorAll('.drawing')].flatMap(drawing => {
    const around = drawing.getBoundingClientRect();
    const words = [...drawing.querySelectorAll('text, .line > span, .ends > span')].filter(each => each.textContent.trim() && each.checkVisibility()).map(each => [each.textContent, each.getBoundingClientRect()]);
    const size = parseFloat(getComputedStyle(document.documentElement).fontSize);
    const small = [...drawing.querySelectorAll('text, .line > span, .ends > span')].filter(each => parseFloat(getComputedStyle(each).fontSize) < 0.8 * size).map(each => `small: ${each.textContent}`);
    const cut = words.filter(([, box]) => box.left < around.left - 1 || box.right > around.right + 1).map(([text]) => `cut: ${text}`);
    const over = words.flatMap(([text, one], i) => words.slice(i + 1).filter(([, two]) => one.left < two.right - 1 && two.left < one.right - 1 && one.top < two.bottom - 1 && two.top < one.bottom - 1).map(([other]) => `${text} on ${other}`));
    return [...small, ...cut, ...over];
  }));
  found.forEach(each => faults.push(`${name}, drawing: ${each}`));
}

/** Text of twice the size and a width of 320 pixels: nothing is lost, nothing scrolls sideways. Motion that is not wanted is none. */
export async function enlarged() {
  for (const size of [{ width: 320, height: 640 }, PHONE, LAPTOP]) {
    const page = await open(ORIGIN, { size, reducedMotion: 'reduce' });
    if (size.width > 320) { await page.evaluate(() => { document.documentElement.style.fontSize = '200%'; }); }
    for (const question of Object.keys(QUESTIONS)) {
      await page.goto(`${ORIGIN}/#/`);
      await begin(page, question);
      await example(page);
      await toAnswer(page);
      const wide = await page.evaluate(() => Math.max(...[document.documentElement, ...document.querySelectorAll('main, .readings, .answer')].map(each => each.scrollWidth - each.clientWidth)));
      if (wide > 0) { faults.push(`${question} is ${wide} pixels too wide in large text on ${size.width}`); }
      await drawings(page, `${question} on ${size.width}`);
      const moves = await page.evaluate(() => document.getAnimations().filter(each => each.effect.getComputedTiming().activeDuration > 10).length);
      if (moves) { faults.push(`${question}: ${moves} motions though none are wanted`); }
    }
    await close(page);
  }
}
