// How pages look: axe-core, layout, size of what is tapped, each control in its turn.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { LAPTOP, PHONE, asked, close, example, faults, open, sheetOf } from './stage.mjs';

const WIDTHS = [360, 768, 1440];
const shots = process.argv[2];
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const CASE = { water: { hardness: { value: 22, unit: 'gpg' }, iron: { value: 1.2, unit: 'mg/L' }, supply: 'privateWell' }, household: { people: 5 },
  softener: { resinVolume: { value: 1.5, unit: 'ft3' }, saltDose: { value: 15, unit: 'lb/ft3' }, control: { kind: 'clock', everyDays: 3 } },
  retrofit: { cost: { value: 420, unit: 'USD' } } };

/** axe-core finds nothing, nothing is wider than the screen, nothing lies on anything else. */
export async function look(page, name) {
  await page.evaluate(axe);
  const { violations } = await page.evaluate(() => globalThis.axe.run());
  violations.forEach(each => faults.push(`${name}: ${each.id}: ${each.nodes.slice(0, 3).map(node => node.target + ' ' + node.failureSummary).join(' | ')}`));
  const problems = await page.evaluate(() => {
    const wide = document.documentElement.scrollWidth;
    const found = wide > innerWidth ? [`${wide} wide on ${innerWidth}`] : [];
    const roots = [document, ...[...document.querySelectorAll('*')].map(each => each.shadowRoot).filter(Boolean)];
    const boxes = roots.flatMap(root => [...root.querySelectorAll('input:not([hidden]), select, button, a, h1, h2, h3, dt, dd, th, td, figcaption')])
      .filter(each => each.checkVisibility() && !each.closest('.spoken, .bar, .hidden-file')
        && (!each.closest('thead') || getComputedStyle(each.closest('thead')).clipPath === 'none'))
      .map(element => [element, element.getBoundingClientRect()]).filter(([, box]) => box.width);
    boxes.forEach(([a, one], i) => boxes.slice(i + 1).forEach(([b, two]) => {
      if (!a.contains(b) && !b.contains(a) && one.left < two.right - 1 && two.left < one.right - 1 && one.top < two.bottom - 1 && two.top < one.bottom - 1) {
        found.push(`${a.id || a.className || a.tagName} on ${b.id || b.className || b.tagName}`);
      }
    }));
    const least = matchMedia('(pointer: coarse), (max-width: 480px)').matches ? 44 : 24;
    roots.flatMap(root => [...root.querySelectorAll('#app button, #app summary, #app select, #app input:not([type=checkbox], [type=radio], [type=file])')]).filter(each => each.checkVisibility())
      .map(element => [element, element.getBoundingClientRect()]).filter(([, box]) => box.width && Math.min(box.height, box.width) < least - 0.5)
      .forEach(([element, box]) => found.push(`${element.id || element.className || element.tagName} "${element.textContent.trim().slice(0, 20)}" is ${Math.round(box.width)} by ${Math.round(box.height)}`));
    return found;
  });
  problems.forEach(each => faults.push(`${name}: ${each}`));
  await page.screenshot({ path: join(shots, `${name}.png`), fullPage: true });
}

/** Goes round by Tab: each control has its turn, and shows it in a colour with a contrast of 3 to 1 (WCAG 2.2, 1.4.11 and 2.4.7). */
async function turns(page, name) {
  const wanted = await page.evaluate(() => {
    const roots = [document, ...[...document.querySelectorAll('*')].map(each => each.shadowRoot).filter(Boolean)];
    const controls = roots.flatMap(root => [...root.querySelectorAll('a[href], button:enabled, input:not([hidden]), select, textarea, summary, [tabindex="0"]')])
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
      const [a, b] = [light(style.outlineColor), light(getComputedStyle(getComputedStyle(document.body).backgroundColor === 'rgba(0, 0, 0, 0)' ? document.documentElement : document.body).backgroundColor)];
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

/** Each control has its turn by Tab, on the workbench and on the sheets. */
export async function looks() {
  let reached = 0;
  for (const scheme of ['light', 'dark']) {
    for (const size of [PHONE, LAPTOP]) {
      for (const sheet of ['letter', 'card', 'checklist']) {
        const page = await open(sheetOf(CASE, sheet), { scheme, size });
        await look(page, `${sheet}-${scheme}-${size.width}`);
        reached += await turns(page, `${sheet}-${scheme}-${size.width}`);
        await close(page);
      }
      const bench = await asked('worth', { scheme, size });
      await example(bench);
      reached += await turns(bench, `workbench-${scheme}-${size.width}`);
      await close(bench);
    }
  }
  return `${reached} turns of a control by Tab, each to be seen`;
}

/** Those that the README shows. */
export async function kept() {
  const bench = await asked('worth', { size: LAPTOP });
  await example(bench);
  await bench.screenshot({ path: join(shots, 'kept-workbench.png') });
  await close(bench);
  const phone = await asked('worth', { size: PHONE, scheme: 'dark' });
  await example(phone);
  await phone.screenshot({ path: join(shots, 'kept-phone.png') });
  await close(phone);
  const charts = await asked('worth', { size: LAPTOP, scheme: 'dark' });
  await example(charts);
  await charts.locator('#result-charts').evaluate(element => element.scrollIntoView());
  await charts.screenshot({ path: join(shots, 'kept-charts.png') });
  await close(charts);
}
