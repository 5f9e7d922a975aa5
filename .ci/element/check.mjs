// Uses the element for shops as shoppers do, in Chromium: every state, four languages, light and dark, phone and laptop.
// Usage: node check.mjs <directory for screenshots> <first of three ports> <command that starts the service...>
import assert from 'node:assert/strict';
import { mkdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { ORIGIN, api, close, end, faults, goods, open, start } from './stage.mjs';

const shots = process.argv[2];
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const HARD = { hardness: '17', people: '3' };
const WELL = { hardness: '17', well: true, people: '3' };

async function fill(page, entries) {
  for (const [id, value] of Object.entries(entries)) {
    const field = page.locator(`#${id}`);
    if (id === 'class') { await page.locator('form summary').click(); }
    if (value === true) { await field.check(); } else if (await field.evaluate(each => each.tagName) === 'SELECT') { await field.selectOption(value); } else { await field.fill(value); }
  }
}
const submit = page => page.locator('form button').click();
const headline = page => page.locator('[role=status] h3');
async function answered(page, entries) {
  await fill(page, entries);
  await submit(page);
  await headline(page).waitFor();
  await page.waitForFunction(() => document.querySelector('brinebook-advice').shadowRoot.querySelector('.answer').ariaBusy !== 'true');
}
const events = (page, name) => page.evaluate(wanted => window.events.filter(([each]) => each === wanted).map(([, detail]) => detail), name);

/** Each state: the shop's goods and attributes, what the console may say, and how a shopper comes there. */
const STATES = {
  empty: { act: async () => {} },
  unknown: { act: page => page.locator('form summary').click() },
  classed: { act: page => answered(page, { class: 'hard', people: '3' }), state: 'fits' },
  working: { act: async page => {
    await answered(page, HARD);
    const before = await page.evaluate(() => ['form button', '.answer'].map(each => document.querySelector('brinebook-advice').shadowRoot.querySelector(each).getBoundingClientRect()).map(box => [box.width, box.height]));
    await page.route('**/v1/**', () => {});
    await submit(page);
    await page.locator('.answer[aria-busy=true]').waitFor();
    const during = await page.evaluate(() => ['form button', '.answer'].map(each => document.querySelector('brinebook-advice').shadowRoot.querySelector(each).getBoundingClientRect()).map(box => [box.width, box.height]));
    assert.deepEqual(during, before, 'button and answer keep their size');
  } },
  notNeeded: { act: async page => {
    await answered(page, { hardness: '2', people: '3' });
    assert.equal(await page.locator('.card').count(), 0, 'no goods above it');
  }, state: 'notNeeded' },
  anyway: { act: async page => {
    await answered(page, { hardness: '2', people: '3' });
    await page.locator('.answer button').click();
    assert.equal(await page.locator('.card').count(), 2);
  } },
  fits: { act: page => answered(page, HARD), state: 'fits' },
  well: { act: page => answered(page, WELL), state: 'fits' },
  noneFits: { litres: [3, 5], attributes: 'contact="/contact"', act: page => answered(page, { hardness: '30', people: '9' }), state: 'noneFits' },
  treatFirst: { act: page => answered(page, { ...WELL, iron: '12' }), state: 'treatFirst' },
  fault: { act: async page => {
    await fill(page, { hardness: 'hard', people: '300' });
    await submit(page);
    await page.locator('.box a').first().waitFor();
  } },
  stale: { act: async page => { await answered(page, HARD); await fill(page, { people: '5' }); await page.locator('.stale').waitFor(); } },
  listedWrongly: { litres: [0], expected: /listed wrongly|422/, act: page => answered(page, HARD) },
  away: { expected: /ERR_FAILED/, act: async page => { await page.route('**/v1/**', route => route.abort()); await answered(page, HARD); } },
  off: { attributes: 'off', act: page => page.locator('.fallback').waitFor() },
};

async function look(page, name, rules = true) {
  if (rules) { await page.evaluate(axe); }
  const { violations } = rules ? await page.evaluate(() => globalThis.axe.run()) : { violations: [] };
  violations.forEach(each => faults.push(`${name}: ${each.id}: ${each.nodes.slice(0, 3).map(node => node.target + ' ' + node.failureSummary).join(' | ')}`));
  const wide = await page.evaluate(() => {
    const inside = document.querySelector('brinebook-advice').shadowRoot;
    const cut = [...inside.querySelectorAll('*')].filter(each => each.checkVisibility() && each.scrollWidth > each.clientWidth + 1 && getComputedStyle(each).display !== 'inline')
      .map(each => each.outerHTML.slice(0, 60));
    return [...cut, ...document.documentElement.scrollWidth > innerWidth ? [`${document.documentElement.scrollWidth} wide on ${innerWidth}`] : []];
  });
  wide.forEach(each => faults.push(`${name}: cut: ${each}`));
  const small = await page.evaluate(() => [...document.querySelector('brinebook-advice').shadowRoot.querySelectorAll('button, input:not([type=checkbox]), label.tick, select, summary')]
    .filter(each => each.checkVisibility() && each.getBoundingClientRect().height < 44).map(each => each.outerHTML.slice(0, 60)));
  small.forEach(each => faults.push(`${name}: a target below 44 px: ${each}`));
  await page.screenshot({ path: join(shots, `${name}.png`), fullPage: true });
}

/** A state in one language, on the displays one after another; gives its fixed words. */
async function shown(name, language, displays) {
  const { act, attributes = '', litres, expected, state } = STATES[name];
  const page = await open({ attributes: `lang="${language}" country="DE" ${attributes}`, list: goods('EUR', litres) }, { expected });
  await act(page);
  if (state) {
    const [answer] = await events(page, 'answer');
    assert.equal(answer?.state, state, `${name}: ${await headline(page).textContent()}`);
  }
  for (const { scheme = 'light', width = 390, rules = false, text = false } of displays) {
    await page.emulateMedia({ colorScheme: scheme });
    await page.setViewportSize({ width, height: width < 500 ? 844 : 800 });
    const style = text ? await page.addStyleTag({ content: 'brinebook-advice { --brinebook-font: 32px/1.5 system-ui; }' }) : null;
    await look(page, [name, language, scheme, width, ...text ? ['text'] : []].join('-'), rules);
    await style?.evaluate(each => each.remove());
  }
  const words = await page.locator('brinebook-advice').evaluate(each => [...each.shadowRoot.querySelectorAll('h2, h3, h4, label, button, dt, summary, p.soft, .box li, option')]
    .filter(one => one.children.length === 0 && !/^(gpg|mg\/L \(ppm\)|°[df]H|mmol\/L)$/.test(one.textContent)).map(one => one.textContent));
  await close(page);
  return words;
}

async function states() {
  const displays = [{ rules: true }, { scheme: 'dark', rules: true }, { width: 1280, rules: true }, { width: 1280, scheme: 'dark' }, { width: 320 }, { text: true }];
  const names = Object.keys(STATES).filter(one => !process.env.STATES || process.env.STATES.split(',').includes(one));
  for (const name of names) {
    const english = await shown(name, 'en', displays);
    for (const language of ['de', 'es', 'fr', 'es-MX']) {
      const words = await shown(name, language, [{ width: 360 }]);
      assert.equal(words.length, english.length, `${name} says something in each place in ${language}`);
      words.forEach((word, i) => assert.notEqual(word, english[i], `${name} in ${language}`));
    }
  }
  return `${names.length} states, on ${displays.length} displays and in four more languages`;
}

/** Whether a text is a number to some step. */
function near(text, exact, step) {
  const number = Number(text.replace(/[^\d.]/g, ''));
  assert.ok(Math.abs(number - exact) <= step / 2 + 1e-9, `${text} for ${exact}`);
}

/** Random numbers with a fixed seed (Park and Miller, minimal standard). */
let seed = 20261129;
const between = (least, most) => least + (seed = (seed * 48271) % 2147483647) / 2147483647 * (most - least);

const SHOPS = [
  { country: 'US', currency: 'USD', unit: 'gpg', contract: 'unitedStates', money: true },
  { country: 'DE', currency: 'EUR', unit: 'dH', contract: 'germany', money: true },
  { country: 'EU', currency: 'EUR', unit: 'mg/L', contract: 'europeanUnion', money: true },
  { country: 'GB', currency: 'GBP', unit: 'mg/L', contract: 'unitedKingdom', money: true },
  { country: 'EU', currency: 'CHF', unit: 'mg/L', contract: 'europeanUnion', money: false },
  { country: 'EU', currency: 'CHF', unit: 'mg/L', contract: 'europeanUnion', money: true, prices: {
    saltBag: { price: { value: 14, unit: 'CHF' }, mass: { value: 25, unit: 'kg' } }, water: { price: { value: 2, unit: 'CHF' }, per: { value: 1, unit: 'm3' } },
    sewer: { price: { value: 2.2, unit: 'CHF' }, per: { value: 1, unit: 'm3' } } } },
];

/** The figures are those that the service answers to the same request, in the money of the shop or without money. */
async function numbers() {
  let compared = 0;
  for (let i = 0; i < 18; i++) {
    const { country, currency, unit, contract, money, prices } = SHOPS[i % SHOPS.length];
    const list = goods(currency);
    const page = await open({ attributes: `lang="en" country="${country}"`, list, prices }, { width: 1280 });
    const hardness = unit === 'gpg' ? between(5, 25) : unit === 'dH' ? between(5, 25) : between(90, 450);
    const entries = { hardness: hardness.toFixed(1), people: String(Math.round(between(1, 5))) };
    await answered(page, entries);
    const answer = await api({ water: { hardness: { value: Number(entries.hardness), unit }, supply: 'publicSupply' }, prices,
      household: { people: Number(entries.people), country: contract },
      candidates: list.map(({ name, link, price, ...rest }) => ({ ...rest, ...money ? { price } : {} })) });
    const [report] = await events(page, 'answer');
    assert.equal(report.choice, answer.choice ?? null);
    const wanted = [report.choice, report.neighbour].map(sku => answer.candidates.find(each => each.sku === sku)).filter(one => one?.fits)
      .flatMap(one => [one.daysBetweenRegenerations, one.saltPerYear.value, one.waterPerYear.value, ...money ? [one.runningCostPerYear.value] : []]);
    const read = await page.locator('data').evaluateAll(all => all.map(each => [Number(each.value), each.textContent, each.closest('dd').previousSibling.textContent]));
    assert.deepEqual(read.map(([value]) => value), wanted, `case ${i}`);
    for (const [value, text, label] of read) {
      const us = country === 'US';
      if (label.startsWith('Days')) { near(text, value, 0.5); } else if (label.startsWith('Salt per')) { near(text, value, us ? 10 : 1); } else if (label.startsWith('Regeneration')) {
        near(text.replace('m³', ''), us ? value : value / 1000, us ? 100 : 0.1);
      } else { near(text, value, value < 100 ? 1 : 5); assert.match(text, { USD: /\$/, EUR: /€/, GBP: /£/, CHF: /CHF/ }[currency]); }
    }
    const prices_ = await page.locator('.name span').allTextContents();
    assert.ok(prices_.some(text => /\.50$/.test(text)), `the shop's price is shown to the cent: ${prices_}`);
    compared += read.length;
    await close(page);
  }
  return `${compared} numbers are those of the service, in 18 cases`;
}

/** By keyboard alone: a fault, its summary, the field, the answer, the goods; and what the shop gets to know of it. */
async function keyboard() {
  const page = await open({ attributes: 'lang="en"', list: goods('USD') }, { expected: /422/ });
  const own = () => page.evaluate(() => document.querySelector('brinebook-advice').shadowRoot.activeElement?.id || document.querySelector('brinebook-advice').shadowRoot.activeElement?.tagName);
  const reach = async id => {
    for (let i = 0; i < 30 && await own() !== id; i++) { await page.keyboard.press('Tab'); }
    assert.equal(await own(), id);
    const outline = await page.evaluate(() => parseFloat(getComputedStyle(document.querySelector('brinebook-advice').shadowRoot.activeElement).outlineWidth));
    assert.ok(outline >= 3, `the focus shows on ${id}`);
  };
  assert.deepEqual(page.asked.filter(each => each.startsWith('POST') || each.includes('answer.js')), [], 'nothing is sent before the button');
  await reach('hardness');
  await page.keyboard.type('22 gpg');
  await reach('people');
  await page.keyboard.type('99');
  await page.keyboard.press('Enter');
  await page.locator('.box a').waitFor();
  assert.equal(await own(), 'DIV', 'the summary has the focus');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  assert.equal(await own(), 'people', 'a line of the summary leads to its field');
  assert.match(await page.locator('#people-fault').textContent(), /1 to 15/);
  assert.equal(await page.locator('#hardness').inputValue(), '22 gpg', 'what was typed stays');
  await page.keyboard.press('Control+A');
  await page.keyboard.type('4');
  await page.keyboard.press('Enter');
  await headline(page).waitFor();
  assert.equal(await own(), 'people', 'an answer does not move the focus');
  for (let i = 0; i < 20 && await own() !== 'A'; i++) { await page.keyboard.press('Tab'); }
  assert.equal(await own(), 'A', 'the goods are reached by Tab');
  const log = await page.evaluate(() => window.events.filter(([name]) => name !== 'height').map(([name, detail]) => [name, detail.kind ?? detail.state]));
  assert.deepEqual(log, [['fault', 'fields'], ['answer', 'fits']]);
  const heights = (await events(page, 'height')).map(each => each.height);
  assert.ok(heights.length >= 3 && heights.at(-1) > heights[0], `heights ${heights}`);
  const [{ request }] = await events(page, 'answer');
  assert.ok(request.candidates.every(each => !('name' in each) && !('link' in each)), 'only what the contract knows is sent');
  await close(page);
}

/** What goes wrong is said to whom it concerns; the entries stay, and the service can come back. */
async function failures() {
  for (const [list, message] of [[[], 'no list'], [[...goods('EUR'), ...goods('USD', [30]).map(each => ({ ...each, sku: 'other' }))], 'EUR and USD'],
    [[...goods('EUR'), ...goods('EUR')], 'twice'], [[{ sku: 'a', resinVolume: { value: 1, unit: 'pint' } }], '']]) {
    const page = await open({ attributes: 'lang="en" country="DE"', list }, { expected: /listed wrongly|422/ });
    await answered(page, HARD);
    assert.equal(await headline(page).textContent(), 'Advice is not available here just now.');
    const [fault] = await events(page, 'fault');
    assert.equal(fault.kind, 'goods');
    assert.ok(fault.errors[0].message.includes(message), fault.errors[0].message);
    await close(page);
  }
  const page = await open({ attributes: 'lang="en" country="DE"', list: goods('EUR') }, { expected: /ERR_FAILED/ });
  await page.route('**/v1/**', route => route.abort());
  await answered(page, HARD);
  assert.match(await headline(page).textContent(), /Cannot reach/);
  assert.equal(await page.locator('#hardness').inputValue(), '17');
  await page.unroute('**/v1/**');
  await page.locator('.answer button').click();
  await page.locator('.card').first().waitFor();
  assert.deepEqual((await page.evaluate(() => window.events.filter(([name]) => name !== 'height').map(([, detail]) => detail.kind ?? detail.state))), ['away', 'fits']);
  await close(page);
}

/** A page whose own style reaches for everything does not change the element; custom properties and parts do. */
async function styles() {
  const styleOf = page => page.locator('brinebook-advice').evaluate(each => ['h2', 'label', '#hardness', 'button', 'dd', '.card', 'a'].map(one => {
    const { fontSize, fontFamily, color, letterSpacing, textTransform, textAlign, lineHeight, fontStyle, visibility, direction, padding } = getComputedStyle(each.shadowRoot.querySelector(one));
    return { one, fontSize, fontFamily, color, letterSpacing, textTransform, textAlign, lineHeight, fontStyle, visibility, direction, padding };
  }));
  const list = goods('EUR');
  const attributes = 'lang="en" country="DE"';
  const plain = await open({ attributes, list }, { width: 1280 });
  await answered(plain, HARD);
  const hostile = await open({ attributes, list, css: `* { font: italic 5px/3 serif !important; color: red !important; letter-spacing: 9px !important; text-transform: uppercase !important;
    text-align: right !important; padding: 30px !important; float: left; direction: rtl; visibility: hidden; } input { display: none !important; } .card { position: fixed; }
    h2, label, dd, a, p { display: none !important; } main, brinebook-advice { width: 36rem; }` }, { width: 1280 });
  await fill(hostile, HARD);
  await submit(hostile);
  await headline(hostile).waitFor();
  assert.deepEqual(await styleOf(hostile), await styleOf(plain));
  await hostile.screenshot({ path: join(shots, 'hostile.png'), fullPage: true });
  await close(hostile);
  await close(plain);
  const themed = await open({ attributes, list, css: `brinebook-advice { --brinebook-accent: #7a1f5c; --brinebook-radius: 0; --brinebook-paper: #fff8e7; --brinebook-font: 1.1rem/1.5 Georgia, serif; }
    brinebook-advice::part(button) { text-transform: uppercase; } brinebook-advice::part(verdict) { border-left: 4px solid #7a1f5c; padding-left: 1rem; }` }, { width: 1280 });
  await answered(themed, HARD);
  const button = await themed.locator('form button').evaluate(each => getComputedStyle(each).backgroundColor + getComputedStyle(each).textTransform);
  assert.equal(button, 'rgb(122, 31, 92)uppercase');
  await look(themed, 'themed');
  await close(themed);
}

/** Country, class and written units as shoppers give them. */
async function readings() {
  for (const [attributes, typed, wanted] of [
    ['lang="de"', '17,2', { value: 17.2, unit: 'dH' }], ['lang="en"', '22', { value: 22, unit: 'gpg' }],
    ['lang="fr" country="FR"', '30', { value: 30, unit: 'fH' }], ['lang="en" country="GB"', '300 ppm', { value: 300, unit: 'mg/L' }],
    ['lang="en" country="US"', '380 mg/l', { value: 380, unit: 'mg/L' }], ['lang="de" country="de"', '17°dH', { value: 17, unit: 'dH' }],
    ['lang="en"', '２２', { value: 22, unit: 'gpg' }]]) {
    const page = await open({ attributes, list: goods('EUR') });
    await answered(page, { hardness: typed, people: '2' });
    const [{ request }] = await events(page, 'answer');
    assert.deepEqual(request.water.hardness, wanted, typed);
    await close(page);
  }
  for (const typed of ['1,250', '22 pints', 'hard', '', '-3']) {
    const page = await open({ attributes: 'lang="en" country="GB"', list: goods('GBP') }, { expected: /422/ });
    await fill(page, { hardness: typed, people: '2' });
    await submit(page);
    await page.locator('#hardness[aria-invalid]').waitFor();
    await close(page);
  }
  for (const [country, name, state, value] of [['US', 'soft', 'notNeeded', 3.5], ['DE', 'soft', 'notNeeded', 3.3], ['FR', 'soft', 'notNeeded', 6], ['GB', 'soft', 'notNeeded', 60],
    ['DE', 'medium', 'fits', 14], ['US', 'veryHard', 'fits', 17.5]]) {
    const page = await open({ attributes: `lang="en" country="${country}"`, list: goods('EUR') });
    await answered(page, { class: name, people: '2' });
    const [answer] = await events(page, 'answer');
    assert.deepEqual([answer.state, answer.request.water.hardness.value], [state, value], `${country} ${name}`);
    assert.ok((await page.locator('.answer').textContent()).includes(String(value)), 'what was taken is said');
    await close(page);
  }
}

/** Another language or country keeps what was typed, with its unit; a list inside the element serves as well. */
async function changes() {
  const page = await open({ attributes: 'lang="en"', list: goods('EUR') });
  await fill(page, { hardness: '22', people: '4', well: true, iron: '0.5' });
  await page.locator('#unit').selectOption('fH');
  await page.locator('brinebook-advice').evaluate(each => { each.lang = 'de'; each.setAttribute('country', 'DE'); });
  assert.equal(await page.locator('h2').textContent(), 'Welcher Enthärter eignet sich für Ihr Wasser?');
  assert.deepEqual(await Promise.all(['hardness', 'unit', 'people', 'iron'].map(id => page.locator(`#${id}`).inputValue())), ['22', 'fH', '4', '0.5']);
  assert.equal(await page.locator('#country').count(), 0, 'a country that is given is not asked for');
  await page.locator('brinebook-advice').evaluate(each => {
    const script = Object.assign(document.createElement('script'), { type: 'application/json', textContent: JSON.stringify(each.candidates) });
    delete each.candidates;
    each.append(script);
  });
  await submit(page);
  await page.locator('.card').first().waitFor();
  await close(page);
}

/** The picture that the README shows. */
async function picture() {
  const page = await open({ attributes: 'lang="de" country="DE"', list: goods('EUR').map(each => ({ ...each, name: each.name.replace('Invented', 'Erfunden') })) },
    { width: 480, locale: 'de-DE' });
  await answered(page, { hardness: '17,2', people: '2' });
  await page.locator('brinebook-advice').screenshot({ path: join(shots, 'kept-element.png') });
  await close(page);
}

async function sizes() {
  const [element, answer] = await Promise.all(['brinebook', 'answer'].map(async name =>
    gzipSync(Buffer.from(await (await fetch(`${ORIGIN}/element/${name}.js`)).arrayBuffer())).length));
  assert.ok(element <= 8_000, `the element has ${element} bytes`);
  assert.ok(answer <= 8_000, `what it shows of an answer has ${answer} bytes`);
  return `the element has ${element} bytes gzipped, and loads ${answer} more with the first answer`;
}

mkdirSync(shots, { recursive: true });
try {
  await start();
  const chosen = process.env.ONLY?.split(',');
  for (const part of [sizes, keyboard, failures, changes, readings, numbers, styles, picture, states]) {
    if (!chosen || chosen.includes(part.name)) { console.log(`${part.name}: ${await part() ?? 'held'}`); }
  }
  assert.deepEqual(faults, []);
} finally {
  faults.forEach(each => console.error(each));
  await end();
}
