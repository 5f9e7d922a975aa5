// Each of the six questions on a phone and on a laptop in four languages, half of them dark: what it takes, and how it looks.
import assert from 'node:assert/strict';
import { look } from './looks.mjs';
import { LAPTOP, LOCALES, ORIGIN, PHONE, QUESTIONS, answer, asked, begin, close, example, faults, inSight, open, settled, toAnswer, verdictOf } from './stage.mjs';

const SIZES = { phone: PHONE, laptop: LAPTOP };
/** Fields before the first useful answer, and keys for them: 20 seconds at two keys a second. */
const MOST_FIELDS = 6;
const MOST_KEYS = 40;

/** Typed as people do, in English: how much it takes, and that the verdict is in sight while it is typed. */
export async function effort() {
  const lines = [];
  for (const [device, size] of Object.entries(SIZES)) {
    for (const [question, { fields, pasted }] of Object.entries(QUESTIONS)) {
      const page = await asked(question, { size, touch: device === 'phone' });
      await answer(page, question);
      const keys = fields.reduce((sum, [, text]) => sum + text.length, 0);
      const taps = 1 + fields.length + (pasted ? 1 : 0); // the question, then each field
      assert.ok(fields.length + (pasted ? 1 : 0) <= MOST_FIELDS && keys <= MOST_KEYS, `${question}: ${fields.length} fields, ${keys} keys`);
      if (!await inSight(page, verdictOf(page))) { faults.push(`${question} on a ${device}: the verdict is out of sight`); }
      assert.equal(await page.evaluate(() => document.activeElement.id), fields.at(-1)[0].slice(1), `${question}: the answer moved the focus`);
      await page.locator('#f-water-hardness').fill('23');
      if (!await inSight(page, device === 'phone' ? '.bar p' : '.verdict h2')) { faults.push(`${question} on a ${device}: nothing in sight while it is typed`); }
      await settled(page);
      if (device === 'phone') { lines.push(`${question}: ${fields.length + (pasted ? 1 : 0)} fields, ${keys} keys, ${taps} taps`); }
      await close(page);
    }
  }
  return `before the first answer: ${lines.join('; ')}`;
}

/** The invented household through every question: every device with every language, and every scheme with each of both. */
export async function everywhere() {
  let views = 0;
  for (const [row, [language, locale]] of Object.entries(LOCALES).entries()) {
    for (const [column, [device, size]] of Object.entries(SIZES).entries()) {
      const scheme = (row + column) % 2 ? 'dark' : 'light';
      const page = await open(ORIGIN, { size, scheme, locale });
      await look(page, `front-${device}-${scheme}-${language}`);
      for (const question of Object.keys(QUESTIONS)) {
        await page.goto(`${ORIGIN}/#/`);
        await begin(page, question);
        await example(page);
        assert.equal(await page.evaluate(() => document.documentElement.lang), language);
        await look(page, `${question}-${device}-${scheme}-${language}`);
        await toAnswer(page);
        if (device === 'phone') { await look(page, `${question}-answer-${device}-${scheme}-${language}`); }
        if (!await inSight(page, '.verdict h2')) { faults.push(`${question} on a ${device} in ${language}: the verdict is out of sight`); }
        views++;
      }
      await close(page);
    }
  }
  return `${views} questions asked and looked at`;
}
