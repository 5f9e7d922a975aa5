// How the pages look: axe-core, layout at three widths, light and dark, each control in its turn, four languages.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { ORIGIN, SHOP, api, caseOf, close, faults, open, settled, sheetOf } from './stage.mjs';

const WIDTHS = [360, 768, 1440];
const shots = process.argv[2];
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const CASE = { water: { hardness: { value: 22, unit: 'gpg' }, iron: { value: 1.2, unit: 'mg/L' }, supply: 'privateWell' }, household: { people: 5 },
  softener: { resinVolume: { value: 1.5, unit: 'ft3' }, saltDose: { value: 15, unit: 'lb/ft3' }, control: { kind: 'clock', everyDays: 3 } },
  retrofit: { cost: { value: 420, unit: 'USD' } } };

/** axe-core finds nothing, nothing is wider than the screen, nothing lies on anything else. */
async function look(page, name) {
  await page.evaluate(axe);
  const { violations } = await page.evaluate(() => globalThis.axe.run());
  violations.forEach(each => faults.push(`${name}: ${each.id}: ${each.nodes.slice(0, 3).map(node => node.target + ' ' + node.failureSummary).join(' | ')}`));
  const problems = await page.evaluate(() => {
    const wide = document.documentElement.scrollWidth;
    const found = wide > innerWidth ? [`${wide} wide on ${innerWidth}`] : [];
    const roots = [document, ...[...document.querySelectorAll('*')].map(each => each.shadowRoot).filter(Boolean)];
    const boxes = roots.flatMap(root => [...root.querySelectorAll('input:not([hidden]), select, button, a, h1, h2, h3, dt, dd, th, td, figcaption, .plot')])
      .filter(each => each.checkVisibility()).map(element => [element, element.getBoundingClientRect()]).filter(([, box]) => box.width);
    boxes.forEach(([a, one], i) => boxes.slice(i + 1).forEach(([b, two]) => {
      if (!a.contains(b) && !b.contains(a) && one.left < two.right - 1 && two.left < one.right - 1 && one.top < two.bottom - 1 && two.top < one.bottom - 1) {
        found.push(`${a.id || a.className || a.tagName} on ${b.id || b.className || b.tagName}`);
      }
    }));
    return found;
  });
  problems.forEach(each => faults.push(`${name}: ${each}`));
  await page.screenshot({ path: join(shots, `${name}.png`), fullPage: true });
}

/** Goes round by Tab: each control has its turn, and shows it in a colour with a contrast of 3 to 1 (WCAG 2.2, 1.4.11 and 2.4.7). */
async function turns(page, name) {
  const wanted = await page.evaluate(() => {
    const roots = [document, ...[...document.querySelectorAll('*')].map(each => each.shadowRoot).filter(Boolean)];
    const controls = roots.flatMap(root => [...root.querySelectorAll('a[href], button, input:not([hidden]), select, summary, [tabindex="0"]')])
      .filter(each => each.checkVisibility() && (each.type !== 'radio' || each.checked));
    controls.forEach((each, i) => { each.dataset.turn = i; });
    document.activeElement.blur();
    return controls.length;
  });
  const had = new Set();
  for (let i = 0; i < wanted + 5 && had.size < wanted; i++) {
    await page.keyboard.press('Tab');
    const [turn, outline, ratio] = await page.evaluate(() => {
      let one = document.activeElement;
      while (one.shadowRoot?.activeElement) { one = one.shadowRoot.activeElement; }
      const style = getComputedStyle(one);
      const light = colour => {
        const canvas = document.createElement('canvas').getContext('2d');
        canvas.fillStyle = colour;
        canvas.fillRect(0, 0, 1, 1);
        const [r, g, b] = [...canvas.getImageData(0, 0, 1, 1).data].map(each => each / 255).map(each => each <= 0.04045 ? each / 12.92 : ((each + 0.055) / 1.055) ** 2.4);
        return 0.2126 * r + 0.7152 * g + 0.0722 * b + 0.05;
      };
      const [a, b] = [light(style.outlineColor), light(getComputedStyle(document.body).backgroundColor)];
      return [one.dataset.turn, style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2, Math.max(a, b) / Math.min(a, b)];
    });
    if (turn !== undefined) {
      had.add(turn);
      if (!outline || ratio < 3) { faults.push(`${name}: the focus on control ${turn} does not show (${ratio.toFixed(1)} to 1)`); }
    }
  }
  if (had.size < wanted) { faults.push(`${name}: ${had.size} of ${wanted} controls are reached by Tab`); }
  return had.size;
}

async function shopping(page) {
  await page.getByLabel('Water hardness').fill('22');
  await page.getByLabel('People in your home').fill('4');
  await page.getByRole('button').click();
  await page.locator('.choice').waitFor();
}

/** The widths at once, but one page after another asks the service, which refuses a caller that asks too much at a time. */
export async function looks() {
  let reached = 0;
  let ready = Promise.resolve();
  const shown = (url, display, act) => {
    ready = ready.then(async () => {
      const page = await open(url, display);
      await act(page);
      return page;
    });
    return ready;
  };
  for (const scheme of ['light', 'dark']) {
    await Promise.all(WIDTHS.map(async width => {
      for (const [name, url, act] of [['workbench', ORIGIN, settled], ['shop', `${ORIGIN}/example-shop`, shopping], ['sheet', sheetOf(CASE), async () => {}]]) {
        const page = await shown(url, { scheme, width }, act);
        await look(page, `${name}-${scheme}-${width}`);
        const had = await turns(page, `${name}-${scheme}-${width}`);
        reached += had;
        await close(page);
      }
    }));
  }
  return `${reached} turns of a control by Tab, each to be seen`;
}

/** All that is said is of the reader's language, by the pages as by the service. */
export async function languages() {
  const fixed = page => page.locator('brinebook-advice').evaluate(each => [...each.shadowRoot.querySelectorAll('h2, h3, label, button, dt, summary, .label')].map(one => one.textContent));
  let english;
  for (const [language, locale] of [['en', 'en-US'], ['es', 'es-MX'], ['fr', 'fr-CA'], ['de', 'de-CH']]) {
    const shop = await open(`${ORIGIN}/example-shop`, { locale });
    await shop.locator('brinebook-advice').evaluate((each, lang) => { each.lang = lang; }, language);
    await shop.locator('#hardness').fill('22');
    await shop.locator('#people').fill('4');
    await shop.locator('form button').click();
    await shop.locator('.choice').waitFor();
    assert.equal(await shop.locator('brinebook-advice section').getAttribute('lang'), language);
    const words = await fixed(shop);
    assert.ok(words.length > 10 && words.every(Boolean), 'it says something in each place');
    if (language === 'en') { english = words; } else { words.forEach((word, i) => assert.notEqual(word, english[i], language)); }
    const answered = await api('/v1/softener-sizing', { water: { hardness: { value: 22, unit: 'gpg' } }, household: { people: 4 },
      candidates: JSON.parse(await shop.locator('brinebook-advice script').textContent()), units: 'us' }, language);
    assert.equal(await shop.locator('details p').textContent(), answered.summary, `the service's words in ${language}`);
    await look(shop, `element-${language}`);
    await close(shop);

    const bench = await open(`${ORIGIN}/#`, { locale, width: 768 });
    await settled(bench);
    await bench.check('[name=units][value=metric]');
    await bench.waitForTimeout(350);
    await settled(bench);
    assert.equal(await bench.evaluate(() => document.documentElement.lang), language);
    assert.equal(await bench.textContent('#summary'), (await api('/v1/assessment', await caseOf(bench), language)).summary);
    await look(bench, `workbench-${language}`);
    await close(bench);
  }
}

/** The three that the README shows. */
export async function kept() {
  const clip = { x: 0, y: 0, width: 1000, height: 760 };
  const bench = await open(ORIGIN, { width: 1000 });
  await settled(bench);
  await bench.screenshot({ path: join(shots, 'kept-workbench.png'), clip });
  await close(bench);
  const charts = await open(ORIGIN, { width: 1000, scheme: 'dark' });
  await settled(charts);
  await charts.locator('#h-saves').evaluate(element => element.scrollIntoView());
  await charts.screenshot({ path: join(shots, 'kept-charts.png'), clip });
  await close(charts);
  const element = await open(SHOP, { width: 480 });
  await element.getByLabel('Wasserhärte', { exact: true }).fill('17,2');
  await element.getByLabel('Personen in Ihrem Haushalt').fill('2');
  await element.getByRole('button').click();
  await element.locator('.choice').waitFor();
  await element.screenshot({ path: join(shots, 'kept-element.png'), clip: { ...clip, width: 480 } });
  await close(element);
}
