// The modules of the workbench that touch no page, as tables: input, what is expected, and its source.
// Run at the top of the repository: node --test target/checks/seen/modules.test.mjs
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { pathToFileURL } from 'node:url';

const load = name => import(pathToFileURL(`src/main/resources/dev/brinebook/http/screen/${name}.js`));
const [cases, calculators, contracts, countries, pastes, tables, questions, rounding, texts, units] = await Promise.all(
  ['case', 'calculator', 'contract', 'country', 'paste', 'paste-table', 'questions', 'rounding', 'texts', 'units'].map(load));
await load('afterwards');
const whole = JSON.parse(readFileSync('openapi/openapi.json', 'utf8'));
const example = name => JSON.parse(readFileSync(`openapi/examples/${name}.request.json`, 'utf8'));
const contractOf = id => {
  const [path, methods] = Object.entries(whole.paths).find(([, each]) => each.post?.operationId === id);
  return { ...whole, paths: { [path]: { post: methods.post } } };
};
/** Factors as `/v1/units` gives them. Sources: NIST SP 811, appendix B; DIN 38409-6 for the degrees. */
const factors = units.factorsOf({ kinds: [
  { schema: 'HardnessQuantity', units: [{ symbol: 'mg/L', factor: 1 }, { symbol: 'gpg', factor: 17.11806104527095 }, { symbol: 'dH', factor: 17.84795905629759 },
    { symbol: 'fH', factor: 10 }, { symbol: 'mmol/L', factor: 100.086 }] },
  { schema: 'VolumeQuantity', units: [{ symbol: 'L', factor: 1 }, { symbol: 'gal', factor: 3.785411784 }, { symbol: 'm3', factor: 1000 }] },
  { schema: 'CapacityQuantity', units: [{ symbol: 'g', factor: 1 }, { symbol: 'gr', factor: 0.06479891 }] },
  { schema: 'TemperatureQuantity', units: [{ symbol: 'C', factor: 1 }, { symbol: 'F', factor: 5 / 9, zero: 32 }] },
] });
const convert = (value, from, to) => units.converted(value, from, to, factors);
const table = (name, rows, check) => test(name, async t => { for (const row of rows) { await t.test(JSON.stringify(row[0]), () => check(...row)); } });

// Source of the readings of one text: GOV.UK Design System, Text input; which number is meant: our own.
table('what is typed is a number, two, or none', [
  ['22', { value: 22 }], ['22,5', { value: 22.5 }], ['22.5 gpg', { value: 22.5, unit: 'gpg' }], ['1 250', { value: 1250 }], ['380 ppm', { value: 380, unit: 'mg/L' }],
  ['17,5 °dH', { value: 17.5, unit: 'dH' }], ['２２', { value: 22 }], ['1,250', { readings: [1.25, 1250] }], ['1.250 mg/L', { readings: [1.25, 1250], unit: 'mg/L' }],
  ['1.250,5', { value: 1250.5 }], ['1,234,567', { value: 1234567 }], ['0.125', { value: 0.125 }], ['0,750', { value: 0.75 }], ['', {}], ['abc', null], ['22 lb', null], ['1.2.3', null], ['-3', { value: -3 }],
], (text, expected) => assert.deepEqual(units.parsed(text, ['mg/L', 'gpg', 'dH', 'fH']), expected));
table('a length may be in centimetres', [['25 cm', { value: 250, unit: 'mm' }], ['10"', { value: 10, unit: 'in' }], ['1.2 m', { value: 1.2, unit: 'm' }]],
  (text, expected) => assert.deepEqual(units.parsed(text, ['mm', 'm', 'in']), expected));
table('units change', [[[22, 'gpg', 'mg/L'], 376.597], [[17.2, 'dH', 'mg/L'], 306.985], [[52, 'F', 'C'], 11.1111], [[11, 'C', 'F'], 51.8], [[5, 'lb', 'gpg'], 5]],
  ([value, from, to], expected) => assert.equal(convert(value, from, to), expected));

const US = countries.countryOf('US');
const DE = countries.countryOf('DE');
// Steps of rounding for people; half up, range and settings by the same rule. Source: ONS style guide, rounding; JCGM 100:2008, 7.2.6.
table('numbers have the digits of people', [
  ['year of money', { value: 630.4, unit: 'USD' }, 'money', US, 'en-US', '630 USD'], ['small money', { value: 83.4, unit: 'USD' }, 'money', US, 'en-US', '83 USD'],
  ['a price as typed', { value: 12.5, unit: 'EUR' }, 'price', DE, 'de-DE', '12,50 EUR'], ['salt of a year', { value: 2716, unit: 'lb' }, 'saltYear', US, 'en-US', '2,720 lb'],
  ['salt of a year', { value: 68.4, unit: 'kg' }, 'saltYear', DE, 'de-DE', '68 kg'], ['water of a year', { value: 11484.1, unit: 'L' }, 'waterYear', DE, 'de-DE', '11,5 m3'],
  ['water of a year', { value: 10234, unit: 'gal' }, 'waterYear', US, 'en-US', '10,200 gal'], ['hardness', { value: 306.985, unit: 'mg/L' }, 'hardness', DE, 'de-DE', '17,2 dH'],
  ['hardness in words', { value: 462.1, unit: 'mg/L' }, 'hardnessInWords', US, 'en-US', '27 gpg'], ['iron', { value: 0.08, unit: 'mg/L' }, 'iron', US, 'en-US', '0.08 mg/L'],
  ['iron', { value: 1.24, unit: 'mg/L' }, 'iron', US, 'en-US', '1.2 mg/L'], ['capacity, down', { value: 33290, unit: 'gr' }, 'capacity', US, 'en-US', '33,200 gr'],
  ['years', 1.371, 'years', US, 'en-US', '1.4'], ['years', 3.97, 'years', US, 'en-US', '4'], ['days', 4.137, 'days', US, 'en-US', '4'], ['days', 11.34, 'days', US, 'en-US', '11.5'],
  ['minutes, up', 9.2, 'minutes', US, 'en-US', '10'], ['half up', 2.5, 'hardDays', US, 'en-US', '3'], ['no sign of nothing', { value: -0.2, unit: 'USD' }, 'money', US, 'en-US', '0 USD'],
  ['a setting is never rounded', { value: 14.25, unit: 'lb' }, 'setting', US, 'en-US', '14.25 lb'],
], (name, value, kind, country, language, expected) => assert.equal(rounding.shown(value, kind, country, language, convert).replaceAll('\u00a0', ' '), expected));

// Unicode CLDR likely subtags give the region of a language without one.
table('a country comes from the languages', [[['de-AT', 'en'], 'AT'], [['en'], 'US'], [['de'], 'DE'], [['fr-CH'], 'CH'], [['fr'], 'FR'], [['es-MX'], 'MX'], [['es'], 'ES'], [['en', 'de-DE'], 'DE'],
  [['it-IT'], 'EU'], [['ja-JP'], 'EU'], [[], 'US']], (languages, expected) => assert.equal(countries.likelyCountry(languages), expected));
table('a language is found', [[['de-AT'], 'de'], [['es-AR'], 'es-419'], [['es-MX'], 'es-MX'], [['es-ES'], 'es'], [['it', 'fr-CA'], 'fr'], [['ja'], 'en']],
  (languages, expected) => assert.equal(texts.tagOf(languages), expected));
// ICU MessageFormat, plural and select; CLDR plural rules.
table('texts are filled', [
  ['{0} of {1}', ['a', 'b'], 'a of b'], ['{0, plural, one {# day} other {# days}} read.', [1], '1 day read.'], ['{0, plural, one {# day} other {# days}} read.', [1200], '1,200 days read.'],
  ['{0, plural, =0 {none} one {one {1}} other {# {1}}}', [0, 'x'], 'none'], ['{0, plural, =0 {none} one {one {1}} other {# {1}}}', [3, 'x'], '3 x'], ['{0, select, a {first} other {second}}', ['b'], 'second'],
  ["it''s {0}", ['so'], "it's so"], ['{0} stays', [], '{0} stays'],
], (pattern, values, expected) => assert.equal(texts.filled(pattern, values, 'en-US'), expected));

const now = new Date('2026-03-05T10:00:00Z');
const blank = () => cases.emptyCase('a', 'worth', 'US', now);
// RFC 6901 for pointers.
table('a value is put at a pointer', [
  ['/water/hardness', { value: 1, unit: 'gpg' }, {}, { water: { hardness: { value: 1, unit: 'gpg' } } }], ['/water/hardness', undefined, { water: { hardness: 1 } }, {}],
  ['/water/iron', undefined, { water: { hardness: 1, iron: 2 } }, { water: { hardness: 1 } }], ['/candidates/0/sku', 'x', {}, { candidates: [{ sku: 'x' }] }],
  ['/list/1', undefined, { list: [1, 2, 3] }, { list: [1, 3] }], ['/a/b', undefined, {}, {}],
], (pointer, value, given, expected) => assert.deepEqual(cases.put(given, pointer, value), expected));

test('undo and redo', () => {
  let open = { case: blank(), steps: cases.noSteps() };
  const set = (value, seconds) => { open = cases.changed(open.case, open.steps, { ...open.case, readings: { value } }, '/value', new Date(now.getTime() + seconds * 1000)); };
  set(2, 0); set(22, 1); // typed in one go: one step
  set(23, 60);
  assert.equal(open.steps.past.length, 2);
  open = cases.undo(open.case, open.steps, now);
  assert.deepEqual(open.case.readings, { value: 22 });
  open = cases.undo(open.case, open.steps, now);
  assert.deepEqual(open.case.readings, {});
  assert.equal(cases.undo(open.case, open.steps, now), null);
  open = cases.redo(open.case, open.steps, now);
  open = cases.redo(open.case, open.steps, now);
  assert.deepEqual(open.case.readings, { value: 23 });
  for (let i = 0; i < 80; i++) { set(i, 100 + i * 10); }
  assert.equal(open.steps.past.length, 50);
  const taken = cases.takenOver(open.case, cases.noSteps());
  assert.deepEqual(cases.undo(blank(), taken, now).case.readings, { value: 79 });
});

test('a link holds the readings and neither name nor notes', () => {
  const given = { ...blank(), name: 'Müller', notes: 'secret', readings: { water: { hardness: { value: 17.2, unit: 'dH' } }, note: 'ü€' } };
  const link = cases.toLink(given);
  assert.match(link, /^[\w-]+$/);
  const sent = cases.fromLink(link);
  assert.deepEqual(sent.readings, given.readings);
  assert.ok(!JSON.stringify(sent).includes('Müller') && !JSON.stringify(sent).includes('secret'));
  for (const broken of ['', 'a b', link.slice(0, -3), '%%%', 'abc']) { assert.equal(cases.fromLink(broken), null, broken); }
});

const ids = questions.QUESTION_IDS;
table('cases of older pages are opened, of newer ones refused', [
  ['a plain request, as the first pages saved it', { ...example('assess.well-family') }, opened => {
    assert.equal(opened.case.question, 'worth');
    assert.equal(opened.case.readings.household.people, 5);
    assert.equal(opened.case.readings.units, undefined);
  }],
  ['a shape without drafts and guesses', { shape: 1, id: 'x', name: 'n', readings: { water: {} }, question: 'fits' }, opened => {
    assert.deepEqual([opened.case.drafts, opened.case.guesses, opened.case.name, opened.case.question], [{}, {}, 'n', 'fits']);
  }],
  ['an unknown question', { shape: 2, readings: {}, question: 'gone' }, opened => assert.equal(opened.case.question, 'worth')],
  ['a newer shape', { shape: 3, readings: {} }, opened => assert.equal(opened.refused, 'newer')],
  ['a list', [], opened => assert.equal(opened.refused, 'unreadable')], ['anything', { a: 1 }, opened => assert.equal(opened.refused, 'unreadable')],
], (name, raw, check) => check(cases.opened(raw, ids, blank())));

test('a file is the same bytes after a round trip', () => {
  const some = [{ ...blank(), id: 'b', name: 'Zwei', readings: example('assess.apartment'), drafts: { '/water/iron': 'abc' }, photo: { type: 'image/png', base64: 'AAAA' } }, blank()]
    .map(each => ({ ...each, readings: cases.opened({ ...each }, ids, blank()).case.readings }));
  const file = cases.toFile(some);
  const back = cases.fromFile(file).map(entry => cases.opened(entry, ids, blank()).case);
  assert.equal(cases.toFile(back), file);
  assert.equal(cases.fromFile('no JSON'), null);
  assert.equal(cases.fromFile('[]'), null);
});

// At most once a month, a month being thirty days: our own.
table('a reminder to export', [
  ['no case', [], null, null, false], ['a new case, and nothing before', [{ changed: '2026-03-01' }], null, null, false], ['the month has just begun', [{ changed: '2026-03-01' }], null, '2026-03-01', false],
  ['a month later', [{ changed: '2026-03-01' }], null, '2026-02-03', true], ['later was said', [{ changed: '2026-03-01' }], '2026-01-01', '2026-03-01', false],
  ['changed since a month-old export', [{ changed: '2026-03-01' }], '2026-02-01', '2026-01-01', true], ['exported, and not changed since', [{ changed: '2026-01-01' }], '2026-01-02', '2026-01-01', false],
  ['exported this month', [{ changed: '2026-03-04' }], '2026-03-01', '2026-01-01', false], ['only a deleted one was changed', [{ changed: '2026-03-01', deleted: '2026-03-02' }], '2026-01-02', '2026-01-01', false],
], (name, book, exported, reminded, expected) => assert.equal(cases.isToExport(book, exported, reminded, now.getTime()), expected));

test('an import says what it does', () => {
  const mine = [{ id: 'a', changed: '2026-01-02' }, { id: 'b', changed: '2026-01-02' }, { id: 'c', changed: '2026-01-02' }];
  const plan = cases.importPlan(mine, [{ id: 'a', changed: '2026-01-03' }, { id: 'b', changed: '2026-01-01' }, { id: 'c', changed: '2026-01-02' }, { id: 'd', changed: '2026-01-01' }]);
  assert.deepEqual(plan.map(({ does }) => does), ['replace', 'older', 'same', 'add']);
});

// RFC 3339 for dates; that slashes begin with the month in the United States: common practice.
table('lines of a meter are read', [
  ['2026-03-01 238', false, [['2026-03-01', 238]], 0], ['1.3.2026; 238,5', false, [['2026-03-01', 238.5]], 0], ['3/1/2026,238', true, [['2026-03-01', 238]], 0],
  ['1/3/2026\t238', false, [['2026-03-01', 238]], 0], ['date;use\n2026-03-02;1.238,5\n2026-03-01;2', false, [['2026-03-01', 2], ['2026-03-02', 1238.5]], 0],
  ['2026-03-01 238\nnothing', false, [['2026-03-01', 238]], 1], ['2026-02-30 1', false, [], 1], ['2026-03-01T07:00 99100.0 gal', false, [['2026-03-01', 99100]], 0],
], (text, monthFirst, rows, faults) => {
  const read = pastes.rowsOf(text, monthFirst);
  assert.deepEqual(read.rows.map(({ date, value }) => [date, value]), rows);
  assert.equal(read.faults.length, faults);
});
test('a date without a number is a day that is not known, never 0', () => {
  const read = pastes.daysOf({ text: '2026-03-01 1\n2026-03-02\n2026-03-03; \n2026-03-04;-\n2026-03-05 0\n2026-03-07 4\n2026-03-08,', unit: 'L', kind: 'volume' });
  assert.deepEqual([read.ready, read.unknown, read.faults], [true, 5, []]);
  assert.deepEqual(read.series, { firstDate: '2026-03-01', unit: 'L', values: [1, 0, 4], missing: ['2026-03-02', '2026-03-03', '2026-03-04', '2026-03-06'] });
});
test('days that were not given are missing', () => {
  assert.deepEqual(pastes.daysOf({ text: '2026-03-01 1\n2026-03-04 4', unit: 'L', kind: 'volume' }).series,
    { firstDate: '2026-03-01', unit: 'L', values: [1, 4], missing: ['2026-03-02', '2026-03-03'] });
  assert.equal(pastes.daysOf({ text: '2026-03-01 1\n2026-03-01 4', unit: 'L', kind: 'volume' }).ready, false);
  assert.equal(pastes.daysOf({ text: '2026-03-01 1\n2026-03-02 4', unit: 'L', kind: 'register' }).meter.readings.length, 2);
});

const assess = contractOf('assess');
table('fields are what the contract says', [
  ['/water/hardness', {}, { kind: 'quantity', range: { minimum: 0, maximum: 10000, unit: 'mg/L' } }], ['/household/people', {}, { kind: 'whole', range: { minimum: 1, maximum: 15 } }],
  ['/softener/control/kind', {}, { kind: 'choice', options: ['clock', 'meteredDelayed', 'meteredImmediate', 'twinAlternating'] }],
  ['/softener/control/everyDays', { softener: { control: { kind: 'clock' } } }, { kind: 'whole', unit: 'days' }], ['/softener/control/everyDays', { softener: { control: { kind: 'meteredDelayed' } } }, null],
  ['/water/bacteriaTested', {}, { kind: 'flag', usual: false }], ['/water/temperature', {}, { usual: { value: 12, unit: 'C' } }], ['/retrofit/cost', {}, { kind: 'quantity', units: [] }],
  ['/preferences/startDate', {}, { kind: 'date' }], ['/water/none', {}, null],
], (pointer, readings, expected) => {
  const field = contracts.fieldOf(assess, pointer, readings);
  if (expected === null) { assert.equal(field, null); return; }
  for (const [name, value] of Object.entries(expected)) { assert.deepEqual(JSON.parse(JSON.stringify(field[name])), value, name); }
});
test('ranges are in the unit of the field', () => {
  const range = contracts.rangeIn(contracts.fieldOf(assess, '/water/temperature').range, 'F', convert);
  assert.deepEqual([range.minimum, range.maximum], [33.8, 95]);
  assert.ok(contracts.isWithin(50, range) && !contracts.isWithin(20, range));
  assert.ok(!contracts.isWithin(0, { exclusiveMinimum: 0 }));
});

test('every field of every question is in the contract of its operation', () => {
  const kinds = { '/softener/control': { softener: { control: { kind: 'clock' } } } };
  for (const id of ids) {
    const { operation } = questions.QUESTIONS[id];
    for (const name of [...questions.firstOf(id), ...questions.moreOf(id)]) {
      const { pointer, as, rules, of } = questions.FIELDS[name];
      if (as !== 'use') { assert.ok(contracts.fieldOf(contractOf(of ?? operation), rules ?? pointer, kinds[pointer] ?? {}), `${id}: ${pointer}`); }
    }
    assert.ok(questions.QUESTIONS[id].needed.length <= 6, id);
  }
});
test('the front page, which is drawn before the rest has come, has every question in its order', () => {
  const front = readFileSync('src/main/resources/dev/brinebook/http/screen/front.js', 'utf8');
  const lists = [/QUESTION_IDS = \[([^\]]*)\]/, /VISIT_IDS = \[([^\]]*)\]/].map(each => each.exec(front)[1].split(',').map(name => name.trim().replaceAll("'", '')));
  assert.deepEqual(lists.flat(), ids);
  assert.deepEqual(lists[1], ids.filter(id => questions.QUESTIONS[id].visit));
});
test('every field and every choice has its words', () => {
  const english = new Set(readFileSync('src/main/resources/text/en.properties', 'utf8').split('\n').map(line => line.split(' = ')[0]));
  const missing = [];
  const needs = id => { if (!english.has(id)) { missing.push(id); } };
  const inside = ['everyDays', 'dayOverride', 'regenerationHour', 'hardnessSetting', 'capacitySetting', 'reserve', 'dailyUse', 'tankDiameter', 'tankHeight', 'nameplateCapacity', 'resinVolume', 'price', 'sku'];
  [...Object.keys(questions.FIELDS), ...inside].forEach(name => needs(questions.labelId(name)));
  for (const id of ids) {
    [`screen.question.${id}`, `screen.questionHint.${id}`, ...questions.QUESTIONS[id].needed.map(questions.enterId),
      ...Object.keys({ ...questions.QUESTIONS[id].first, ...questions.QUESTIONS[id].more }).map(questions.groupId)].forEach(needs);
    for (const name of [...questions.firstOf(id), ...questions.moreOf(id)]) {
      const { of, rules, pointer } = questions.FIELDS[name];
      const field = contracts.fieldOf(contractOf(of ?? questions.QUESTIONS[id].operation), rules ?? pointer);
      if (field?.kind === 'choice') { field.options.forEach(each => needs(questions.optionId(name, each))); }
    }
  }
  for (const name of ['form', 'qualifier', 'method', 'tap', 'parameter']) { // of each result of a report
    const { options } = contracts.fieldOf(contractOf('readWaterReport'), `/results/0/${name}`);
    options.forEach(each => needs(name === 'parameter' ? `waterParameter.${each}` : `visit.option.${each}`));
  }
  assert.deepEqual(missing, []);
});
const family = { water: { hardness: { value: 22, unit: 'gpg' } }, household: { people: 5 }, softener: { resinVolume: { value: 1.5, unit: 'ft3' }, control: { kind: 'clock', everyDays: 3 } },
  days: { text: '2026-03-01 1\n2026-03-02 4', unit: 'gal', kind: 'volume' } };
table('a question becomes a request', [
  ['worth', family, 'assess', ['household', 'softener', 'units', 'water']], ['hard', family, 'reviewSettings', ['household', 'softener', 'units', 'water']],
  ['fits', family, 'sizeSoftener', ['household', 'units', 'water']], ['need', family, 'sizeSoftener', ['household', 'units', 'water']], ['need', { water: family.water }, 'convertHardness', ['hardness']],
  ['setup', { ...family, softener: { resinVolume: family.softener.resinVolume } }, 'assess', ['household', 'softener', 'units', 'water']],
  ['readings', family, 'backtestSettings', ['days', 'household', 'softener', 'units', 'water']],
], (id, readings, operation, parts) => {
  const job = questions.requestOf(id, readings, US);
  assert.equal(job.operation, operation);
  assert.deepEqual(Object.keys(job.request).sort(), parts);
  assert.equal(questions.requestOf(id, {}, US), null);
});
// Degrees by country: common practice. The contract's own countries have their steps by themselves.
table('settings are in the degrees of the reader', [['US', undefined], ['DE', undefined], ['AT', undefined], ['FR', undefined], ['GB', undefined], ['CH', { value: 1, unit: 'fH' }], ['ES', { value: 1, unit: 'fH' }],
  ['MX', { value: 10, unit: 'mg/L' }], ['CA', { value: 10, unit: 'mg/L' }], ['IE', { value: 10, unit: 'mg/L' }]], (code, expected) => {
  const country = countries.countryOf(code);
  assert.deepEqual(questions.requestOf('hard', family, country).request.preferences?.controller.hardnessStep, expected);
  const control = { kind: 'meteredDelayed', hardnessSetting: { value: 20, unit: 'dH' } };
  assert.equal(questions.requestOf('hard', { ...family, softener: { ...family.softener, control } }, country).request.preferences, undefined);
});
test('what a meter showed has no days before the service made them', () => {
  const { request } = questions.requestOf('readings', { ...family, days: { ...family.days, kind: 'register' } }, US);
  assert.equal('days' in request, false);
});
table('what waits for the people in the house', [[{}, []], [{ iron: { value: 0.5, unit: 'mg/L' } }, ['people']]],
  (more, expected) => assert.deepEqual(questions.missingOf('need', { water: { ...family.water, ...more } }), expected));
test('half a price is none', () => {
  const { request } = questions.requestOf('worth', { ...family, prices: { saltBag: { mass: { value: 40, unit: 'lb' } } }, retrofit: { horizonYears: 5 }, }, US);
  assert.deepEqual([request.prices?.saltBag, request.retrofit], [undefined, undefined]);
});

test('an uncertainty of what is not given is none', () => {
  const uncertainty = { resinVolume: { value: 0.1, unit: 'ft3' }, saltPerRegeneration: { value: 0.4, unit: 'lb' } };
  const asked = softener => questions.requestOf('worth', { ...family, softener: { control: family.softener.control, uncertainty, ...softener } }, US).request.softener.uncertainty;
  assert.deepEqual(asked({ nameplateCapacity: { value: 48000, unit: 'gr' }, saltPerRegeneration: { value: 9, unit: 'lb' } }), { saltPerRegeneration: uncertainty.saltPerRegeneration });
  assert.deepEqual(asked({ resinVolume: { value: 1.5, unit: 'ft3' } }), { resinVolume: uncertainty.resinVolume });
});
test('money of a country without usual prices needs all three', () => {
  const CA = countries.countryOf('CA');
  const price = value => ({ price: { value, unit: 'CAD' }, per: { value: 1, unit: 'm3' } });
  const some = { ...family, retrofit: { cost: { value: 500, unit: 'CAD' } }, prices: { saltBag: { price: { value: 9, unit: 'CAD' }, mass: { value: 20, unit: 'kg' } } } };
  const partly = questions.requestOf('worth', some, CA).request;
  assert.deepEqual([partly.retrofit, partly.prices], [undefined, undefined]);
  const whole = questions.requestOf('worth', { ...some, prices: { ...some.prices, water: price(2), sewer: price(2) } }, CA).request;
  assert.deepEqual([whole.retrofit, Object.keys(whole.prices)], [some.retrofit, ['saltBag', 'water', 'sewer']]);
});

/** A clock that a test moves. */
function clockOf() {
  let time = 0;
  let waiting = [];
  return {
    setTimeout: (does, after) => { const entry = { does, at: time + after }; waiting.push(entry); return entry; },
    clearTimeout: entry => { waiting = waiting.filter(each => each !== entry); },
    async to(moment) {
      for (;;) {
        const next = waiting.filter(each => each.at <= moment).sort((one, other) => one.at - other.at)[0];
        if (!next) { break; }
        time = next.at;
        waiting = waiting.filter(each => each !== next);
        next.does();
        await settle();
      }
      time = moment;
    },
  };
}
const settle = () => new Promise(done => { setImmediate(done); });

/** A calculator with a service that answers when the test says so. */
function played() {
  const clock = clockOf();
  const calls = [];
  const states = [];
  const answers = [];
  const calculator = calculators.createCalculator({ clock, answered: (job, answer) => answers.push([job.key, answer]), shows: each => states.push(each.state),
    run: (job, signal) => new Promise((answer, refuse) => { calls.push({ key: job.key, signal, answer, refuse }); }) });
  return { clock, calls, states, answers, calculator };
}

test('the service is asked 250 ms after the last key', async () => {
  const { clock, calls, calculator } = played();
  calculator.want({ key: 'a' }, [], null);
  await clock.to(200);
  calculator.want({ key: 'b' }, [], null);
  await clock.to(449);
  assert.equal(calls.length, 0);
  await clock.to(450);
  assert.deepEqual(calls.map(each => each.key), ['b']);
});
test('one request is in the air, and a late answer is dropped', async () => {
  const { clock, calls, answers, states, calculator } = played();
  calculator.want({ key: 'a' }, [], null);
  await clock.to(250);
  calculator.want({ key: 'b' }, [], null);
  assert.equal(calls[0].signal.aborted, true);
  await clock.to(500);
  calls[0].answer('old');
  await settle();
  assert.deepEqual(answers, []);
  calls[1].answer('new');
  await settle();
  assert.deepEqual(answers, [['b', 'new']]);
  assert.equal(states.at(-1), 'fresh');
});
test('a service that is away is asked again after 1, 3, 10 and 30 s', async () => {
  const { clock, calls, states, calculator } = played();
  const away = async () => { calls.at(-1).refuse(new calculators.Refused(0, null, true)); await settle(); };
  calculator.want({ key: 'a' }, [], null);
  await clock.to(250);
  await away();
  assert.equal(states.at(-1), 'offline');
  for (const [moment, count] of [[1249, 1], [1250, 2], [4249, 2], [4250, 3], [14249, 3], [14250, 4], [44249, 4], [44250, 5], [74250, 6]]) {
    await clock.to(moment);
    if (calls.length === count && !calls.at(-1).refused) { calls.at(-1).refused = true; await away(); }
    assert.equal(calls.length, count, `${moment} ms`);
  }
  calculator.again();
  assert.equal(calls.length, 7, 'at once when the page comes back');
});
test('a refusal is not asked again', async () => {
  const { clock, calls, states, calculator } = played();
  calculator.want({ key: 'a' }, [], null);
  await clock.to(250);
  calls[0].refuse(new calculators.Refused(422, { detail: 'x', errors: [{ pointer: '/a', message: 'b' }] }, false));
  await settle();
  await clock.to(100000);
  assert.deepEqual([states.at(-1), calls.length], ['failed', 1]);
});
test('what is known is not asked, and what is missing waits', async () => {
  const { clock, calls, states, calculator } = played();
  calculator.want({ key: 'a' }, [], 'a');
  calculator.want(null, ['/water/hardness'], 'a');
  await clock.to(1000);
  assert.deepEqual([states, calls.length], [['fresh', 'waiting'], 0]);
});

// Tables as laboratories print them; names and units: common practice.
const WORDS = { en: [['hardness', 'hardness'], ['alkalinity', 'alkalinity'], ['calcium', 'calcium'], ['nitrate', 'nitrate'], ['coliform', 'coliform bacteria']],
  de: [['calcium', 'Calcium'], ['nitrate', 'Nitrat'], ['iron', 'Eisen'], ['hardness', 'Härte'], ['conductivity', 'Leitfähigkeit']] };
table('a pasted table fills rows', [
  ['Parameter\tResult\tUnit\tLimit\nTotal Hardness\t300\tmg/L as CaCO3\t\nNitrate as N\t3.1\tmg/L\t10', 'en', [{ parameter: 'hardness', value: 300, unit: 'mg/L', form: 'asCalciumCarbonate' }, { parameter: 'nitrate', value: 3.1, unit: 'mg/L', form: 'asNitrogen' }], []],
  ['Iron\t<0.05\tmg/L\npH\t7.3\t\nTotal coliform\tAbsent\nFoo\t1\tmg/L', 'en', [{ parameter: 'iron', value: 0.05, qualifier: 'below', unit: 'mg/L' }, { parameter: 'ph', value: 7.3 }, { parameter: 'coliform', qualifier: 'absent' }], ['Foo\t1\tmg/L']],
  ['Parameter;Einheit;Grenzwert;Messwert\nCalcium;mg/l;;94,2\nEisen, gesamt;mg/l;0,2;< 0,02\nLeitfähigkeit bei 20 °C;µS/cm;2790;560\nGesamthärte;°dH;;17,4', 'de', [{ parameter: 'calcium', value: 94.2, unit: 'mg/L' }, { parameter: 'iron', value: 0.02, qualifier: 'below', unit: 'mg/L' },
    { parameter: 'conductivity', value: 560, unit: 'uS/cm', form: 'at20Celsius' }, { parameter: 'hardness', value: 17.4, unit: 'dH' }], []],
  ['Calcium 96 mg/L\nIron 1,200 ug/L\nMg: 31 ppm\nhello world', 'en', [{ parameter: 'calcium', value: 96, unit: 'mg/L' }, { parameter: 'iron', value: 1200, unit: 'ug/L' }, { parameter: 'magnesium', value: 31, unit: 'ppm' }], ['hello world']],
  ['Calcium,96,mg/L\nSulfate,"1,200",mg/L', 'en', [{ parameter: 'calcium', value: 96, unit: 'mg/L' }, { parameter: 'sulfate', value: 1200, unit: 'mg/L' }], []],
  ['parameter,value,unit,form,qualifier,method\nnitrate,5.2,mg/L,asNitrogen,,laboratory\niron,0.05,mg/L,,below,', 'en', [{ parameter: 'nitrate', value: 5.2, unit: 'mg/L', form: 'asNitrogen', method: 'laboratory' }, { parameter: 'iron', value: 0.05, unit: 'mg/L', qualifier: 'below' }], []],
  ['', 'en', [], []],
], (text, language, results, left) => assert.deepEqual(tables.resultsOf(text, WORDS[language], language), { results, left }));
test('forms are those that the service knows of a parameter', () => {
  const rows = readFileSync('src/main/resources/water/report-forms.csv', 'utf8').split('\n').filter(line => line && !line.startsWith('#')).slice(1).map(line => line.split('|'));
  const known = {};
  rows.forEach(([parameter, form]) => { (known[parameter] ??= []).push(form); });
  const several = Object.fromEntries(Object.entries(known).filter(([, forms]) => forms.length > 1));
  assert.deepEqual(Object.fromEntries(Object.entries(tables.FORMS_OF).sort()), Object.fromEntries(Object.entries(several).sort()));
});
test('a report says of each result what was said of the sample', () => {
  const readings = { results: [{ parameter: 'hardness', value: 20, unit: 'gpg' }, { parameter: 'lead', value: 3, unit: 'ug/L', firstDraw: true }, { qualifier: 'equal' }], sample: { tap: 'raw', method: 'laboratory', firstDraw: false }, water: { supply: 'privateWell' } };
  const { operation, request } = questions.requestOf('report', readings, US);
  assert.equal(operation, 'readWaterReport');
  assert.deepEqual(request, { results: [{ tap: 'raw', method: 'laboratory', firstDraw: false, parameter: 'hardness', value: 20, unit: 'gpg' }, { tap: 'raw', method: 'laboratory', firstDraw: true, parameter: 'lead', value: 3, unit: 'ug/L' }],
    supply: 'privateWell', country: 'unitedStates', units: 'us' });
  assert.equal(questions.requestOf('report', { results: [{}] }, US), null);
});
test('what was measured is asked, what was seen beside it, and either alone', () => {
  const drain = { volume: { value: 5, unit: 'gal' }, seconds: [118, 121] };
  const both = questions.requestOf('visit', { drain, saltTank: true, site: { bypass: false } }, US);
  assert.deepEqual([both.operation, both.beside.operation], ['reduceFieldMeasurements', 'checkInstallation']);
  assert.deepEqual(both.beside.request, { saltTank: true, site: { bypass: false }, country: 'unitedStates', units: 'us' });
  assert.equal(questions.requestOf('visit', { drain }, US).beside, undefined);
  assert.equal(questions.requestOf('visit', { saltTank: true }, US).operation, 'checkInstallation');
  for (const nothing of [{ softener: { resinAgeYears: 4 } }, { waterTemperature: { value: 52, unit: 'F' } }, { site: { wasteWater: 'sewer' } }]) { assert.equal(questions.requestOf('visit', nothing, US), null); }
  assert.deepEqual(questions.halvesOf('visit', { drain: { volume: drain.volume }, resinTank: { height: { value: 54, unit: 'in' } } }, contractOf('reduceFieldMeasurements'), contracts.fieldOf),
    ['/resinTank/outerDiameter', '/drain/seconds', '/resinTank/freeboard']);
});
test('what a measurement filled in is no witness of the same measurement', () => {
  const readings = { drain: { volume: { value: 5, unit: 'gal' }, seconds: [120] }, softener: { nameplateCapacity: { value: 48000, unit: 'gr' }, resinAgeYears: 9 } };
  const answered = { softener: { ...readings.softener, resinVolume: { value: 1.4954, unit: 'ft3' }, uncertainty: { resinVolume: { value: 0.07, unit: 'ft3' } } } };
  const taken = questions.withParts(readings, answered);
  assert.deepEqual(taken.softener, answered.softener);
  assert.deepEqual(questions.requestOf('visit', taken, US).request.softener, readings.softener);
  const changed = { ...taken, softener: { ...taken.softener, resinAgeYears: 4 } };
  assert.deepEqual(questions.requestOf('visit', changed, US).request.softener, { ...readings.softener, resinAgeYears: 4 });
  assert.deepEqual(questions.requestOf('visit', questions.withParts(taken, answered), US).request.softener, readings.softener);
});
test('a saving is asked with both readings of a meter as one series, and without a later period with the control that is planned', () => {
  const before = { from: '2026-01-05', to: '2026-04-05', control: 'clock', regenerations: 30, saltPerRegeneration: { value: 15, unit: 'lb' }, meterStart: { value: 48210, unit: 'gal' }, meterEnd: { value: 70890, unit: 'gal' } };
  const { operation, request } = questions.requestOf('savings', { before, plannedControl: 'meteredDelayed', household: { people: 4 } }, US);
  const { meterStart, meterEnd, ...rest } = before;
  assert.equal(operation, 'verifySavings');
  assert.deepEqual(request, { before: { ...rest, meter: { meter: { unit: 'gal' }, kind: 'register', readings: [{ at: '2026-01-05', value: 48210 }, { at: '2026-04-05', value: 70890 }] } },
    plannedControl: 'meteredDelayed', people: 4, country: 'unitedStates', units: 'us' });
  assert.equal(questions.requestOf('savings', { before: { ...before, saltPerRegeneration: undefined } }, US), null, 'the salt is not known');
  assert.deepEqual(questions.halvesOf('savings', { before: { ...before, meterEnd: undefined }, after: { from: '2026-05-01', bags: 3, saltAtStart: { value: 20, unit: 'lb' } } }),
    ['/before/meterEnd', '/after/to', '/after/control', '/after/saltAtEnd']);
});
test('a start is asked without the settings that are to come, with the readings that were made, on the day of the case', () => {
  const readings = { water: { hardness: { value: 22, unit: 'gpg' } }, household: { people: 5 }, softener: { resinVolume: { value: 1.5, unit: 'ft3' }, control: { kind: 'clock', everyDays: 3 }, saltDose: { value: 15, unit: 'lb/ft3' } },
    brineTank: { levelBefore: { value: 10, unit: 'in' } }, checks: { airOut: { yes: true }, refillFlow: { value: 0.41, unit: 'gpm' }, noLeak: {} } };
  const { request } = questions.requestOf('start', readings, US, '2026-03-02');
  assert.deepEqual([request.softener, request.brineTank, request.preferences.startDate], [{ resinVolume: { value: 1.5, unit: 'ft3' } }, undefined, '2026-03-02']);
  assert.deepEqual(request.readings, [{ check: 'airOut', yes: true }, { check: 'refillFlow', value: 0.41, unit: 'gpm' }]);
  assert.equal(questions.requestOf('start', { ...readings, preferences: { startDate: '2026-04-01' } }, US, '2026-03-02').request.preferences.startDate, '2026-04-01');
});
test('a complaint needs the cold tap beside the hot one, and the time of a bucket', () => {
  const given = { hotHardness: { value: 9, unit: 'gpg' }, drain: { volume: { value: 5, unit: 'gal' } } };
  assert.deepEqual(questions.halvesOf('complaint', given, contractOf('diagnoseComplaint'), contracts.fieldOf), ['/drain/seconds', '/hardness/tap']);
});
