/** The workbench: fields into a case, the case to the service, its answer onto the page. */
import { INVENTED, at, converted, fromAddress, put, toAddress, toCurl, toSheet } from './case.js';
import * as charts from './charts.js';
import { label, language } from './labels.js';
import { FIELDS, facts, make, number, shown, table } from './parts.js';
import { Refused, ask } from './service.js';

const PAUSE_MS = 250;
const EIGHT_WEEKS = 56;
/** The units that an empty field begins with, where it has one of them; else with its first. */
const METRIC = ['mg/L', 'L', 'm3', 'm', 'g/L', 'C', 'kg'];
const $ = id => document.getElementById(id);
let given = fromAddress(location.hash) ?? INVENTED;
let running = null;
let timer = 0;

/** Writes into an element only what changed, so that nothing flickers. */
function fill(element, ...children) {
  const fresh = make('div', {}, ...children);
  if (element.innerHTML !== fresh.innerHTML) { element.replaceChildren(...fresh.childNodes); }
}

function field([name, pointer, units, choices]) {
  const id = `f${pointer.replaceAll('/', '-')}`;
  const input = choices ? make('select', { id }, ...choices.map(each => make('option', { value: each }, label(each))))
    : make('input', { id, inputmode: 'decimal', autocomplete: 'off' });
  input.dataset.pointer = units ? `${pointer}/value` : pointer;
  input.dataset.of = pointer;
  input.setAttribute('aria-describedby', `${id}-fault`);
  input.addEventListener('input', () => { read(input, pointer, units); changed(); });
  const parts = [make('label', { for: id }, label(name)), make('div', { class: 'with-unit' }, input)];
  if (units) {
    const unit = make('select', { 'aria-label': `${label(name)}: ${label('unit')}` }, ...units.map(each => make('option', { value: each }, each)));
    unit.dataset.pointer = `${pointer}/unit`;
    unit.addEventListener('input', () => { if (at(given, pointer)) { given = put(given, `${pointer}/unit`, unit.value); changed(); } });
    parts[1].append(unit);
  }
  return make('div', { class: 'field' }, ...parts, make('p', { class: 'fault', id: `${id}-fault` }));
}

/** What was typed, into the case. Text that is no number goes as it is: the service says what is wrong with it. */
function read(input, pointer, units) {
  const text = input.value.trim();
  const typed = Number(text.replace(',', '.'));
  const value = text === '' ? undefined : input.tagName === 'SELECT' || !Number.isFinite(typed) ? text : typed;
  if (pointer === '/softener/control/kind') {
    given = put(given, '/softener/control', value === 'clock' ? { kind: value, everyDays: 3 } : { kind: value });
    show(input);
  } else if (units && value === undefined) {
    given = put(given, pointer, undefined);
  } else {
    given = put(given, units ? `${pointer}/value` : pointer, value);
    if (units) { given = put(given, `${pointer}/unit`, document.querySelector(`[data-pointer="${pointer}/unit"]`).value); }
  }
}

/** The case into the fields, but not into the one that is typed in. */
function show(except) {
  const units = given.units ?? 'us';
  const currency = at(given, '/retrofit/cost/unit') ?? (units === 'metric' ? 'EUR' : 'USD');
  const usual = units === 'metric' ? [...METRIC, currency] : [currency];
  for (const input of document.querySelectorAll('[data-pointer]')) {
    if (input === except) { continue; }
    const value = at(given, input.dataset.pointer);
    if (value !== undefined) { input.value = value; } else if (input.dataset.pointer.endsWith('/unit')) {
      const choices = [...input.options].map(each => each.value);
      input.value = choices.find(each => usual.includes(each)) ?? choices[0];
    } else if (input.tagName !== 'SELECT') { input.value = ''; }
  }
  document.querySelector(`[name=units][value=${units === 'metric' ? 'metric' : 'us'}]`).checked = true;
  $('f-softener-control-everyDays').closest('.field').hidden = at(given, '/softener/control/kind') !== 'clock';
}

function changed() {
  history.replaceState(null, '', toAddress(given));
  clearTimeout(timer);
  timer = setTimeout(calculate, PAUSE_MS);
}

async function calculate() {
  running?.abort();
  const mine = running = new AbortController();
  document.body.setAttribute('aria-busy', 'true');
  try {
    const asked = given;
    const answer = await ask('/v1/assessment?detail=full', asked, mine.signal, language);
    trouble([]);
    write(answer);
    $('sheet').href = toSheet(asked);
    await drawCharts(answer, mine.signal);
    performance.mark('answered');
  } catch (fault) {
    if (fault.name === 'AbortError') { return; }
    if (!(fault instanceof Refused)) { throw fault; }
    trouble(fault.errors, fault);
  } finally {
    if (running === mine) { document.body.removeAttribute('aria-busy'); }
  }
}

/** Each fault at the field that its pointer leads to; the others above. */
function trouble(errors, fault) {
  document.querySelectorAll('[aria-invalid]').forEach(each => each.removeAttribute('aria-invalid'));
  document.querySelectorAll('.fault').forEach(each => { each.textContent = ''; });
  const elsewhere = [];
  for (const { pointer, message } of errors) {
    const input = [...document.querySelectorAll('[data-of]')].find(each => pointer === each.dataset.of || pointer.startsWith(`${each.dataset.of}/`));
    if (!input) { elsewhere.push(make('li', {}, `${pointer}: ${message}`)); continue; }
    input.setAttribute('aria-invalid', 'true');
    $(`${input.id}-fault`).textContent ||= message;
  }
  if (!fault) { fill($('trouble')); return; }
  const again = make('button', { type: 'button', id: 'again' }, label('again'));
  again.addEventListener('click', calculate);
  $('trouble').replaceChildren(...(fault.away ? [make('p', {}, label('away')), again]
    : [make('p', {}, errors.length ? label('fix') : fault.message), make('ul', {}, ...elsewhere)]));
}

function write(answer) {
  const { hardness, demand, fit, settings, year, retrofit } = answer;
  fill($('summary'), answer.summary);
  const from = index => `/verdict/ladder/${index}`;
  fill($('ladder'), table(label('ladder'), ['step', 'hardDays', 'perYear', 'costNow', 'overBelow'].map(label), answer.verdict.ladder
    .map((rung, index) => [rung, index]).filter(([rung]) => rung.settings).map(([rung, index]) => [rung.step === answer.verdict.step ? make('strong', {}, rung.name) : rung.name,
      shown(rung.hardDays, `${from(index)}/hardDays`), shown(rung.costPerYear, `${from(index)}/costPerYear`),
      rung.firstCost && shown(rung.firstCost, `${from(index)}/firstCost`), rung.overBelow && shown(rung.overBelow.savedPerYear, `${from(index)}/overBelow/savedPerYear`)])));
  const caution = each => make('li', { class: each.severity }, each.message);
  fill($('warnings'), ...answer.cautions.filter(each => each.inFront).map(caution));
  fill($('cautions'), ...answer.cautions.map(caution));
  fill($('out-water'), facts([['compensated', hardness.compensated, '/hardness/compensated'], ['iron', hardness.iron, '/hardness/iron'],
    ['manganese', hardness.manganese, '/hardness/manganese'], ['hardnessToSet', hardness.controllerSetting, '/hardness/controllerSetting']]));
  fill($('out-household'), facts([['use', demand.dailyUse, '/demand/dailyUse'], ['load', demand.dailyLoad, '/demand/dailyLoad'],
    ['peak', demand.peakFlow, '/demand/peakFlow']]));
  fill($('out-found'), facts([['fits', make('strong', {}, label(fit.fits ? 'yes' : 'no'))], ['capacity', fit.capacity, '/fit/capacity'],
    ['days', fit.daysBetweenRegenerations, '/fit/daysBetweenRegenerations'], ['efficiency', fit.saltEfficiency, '/fit/saltEfficiency']]),
  make('ul', {}, ...fit.reasons.map(each => make('li', {}, each)),
    ...answer.findings.map(each => make('li', {}, `${each.set} → ${each.shouldBe}. ${each.why}`)),
    ...answer.questions.map(each => make('li', {}, `${each.question} ${each.why}`))));
  const why = new Map((settings?.reasons ?? []).map(each => [each.setting, each.reason]));
  fill($('out-set'), !settings ? make('p', {}, answer.verdict.action) : make('dl', { class: 'settings' }, ...['hardness', 'capacity', 'meterVolume', 'reserve', 'saltDose', 'saltPerRegeneration',
    'dayOverride', 'regenerationHour', 'refillMinutes'].filter(name => settings[name] !== undefined).map(name => make('div', {}, make('dt', {}, label(name === 'hardness' ? 'hardnessToSet' : name)),
    make('dd', {}, make('strong', {}, shown(settings[name], `/settings/${name}`)), make('span', { class: 'reason' }, why.get(name) ?? ''))))));
  const payback = retrofit?.payback;
  fill($('out-saves'), facts([['saltSaved', year?.saltSaved, '/year/saltSaved'], ['waterSaved', year?.waterSaved, '/year/waterSaved'],
    ['saving', retrofit?.firstYearSaving?.total, '/retrofit/firstYearSaving/total'],
    ['payback', payback?.simplePaybackYears?.value, '/retrofit/payback/simplePaybackYears/value']]),
  payback?.simplePaybackYears?.why ? make('p', {}, payback.simplePaybackYears.why) : '');
  fill($('why').querySelector('ul'), ...answer.basis.map(each => make('li', {}, make('code', {}, each.pointer), ` ${each.formula}. `, make('cite', {}, each.source))));
}

async function drawCharts(answer, signal) {
  const { water, household, softener, prices, preferences, units, seed } = given;
  const shared = { water, household, softener, prices, preferences, units, seed };
  const cost = given.retrofit?.cost;
  const optional = promise => promise.catch(fault => { if (fault instanceof Refused) { return null; } throw fault; });
  const [doses, schedule, worth] = await Promise.all([
    optional(ask('/v1/resin-capacity', { water, salt: softener.salt, units }, signal, language)),
    optional(ask('/v1/regeneration-schedule', { ...shared, days: household.dailySeries ? undefined : EIGHT_WEEKS, policies: [
      { name: label('asFound'), control: softener.control }, { name: label('meteredDelayed'), control: { kind: 'meteredDelayed' } },
      { name: label('meteredImmediate'), control: { kind: 'meteredImmediate' } }] }, signal, language)),
    cost ? optional(ask('/v1/alternatives', { ...shared, uncertainty: {}, horizonYears: given.retrofit.horizonYears,
      alternatives: [{ name: label('now'), kind: 'asFound' }, { name: label('after'), kind: 'metered', cost, rebate: given.retrofit.rebate }] }, signal, language)) : null,
  ]);
  $('c-year').hidden = !answer.year;
  if (answer.year) { charts.year($('c-year'), answer.year); }
  $('c-doses').hidden = !answer.settings;
  if (doses && answer.settings) { charts.doses($('c-doses'), doses, answer.settings.saltDose); }
  if (schedule) { charts.charge($('c-charge'), schedule); }
  const flows = answer.retrofit?.payback?.cashFlows;
  $('c-money').hidden = !flows;
  if (flows) { charts.money($('c-money'), flows, worth?.alternatives[1].uncertain?.paybackYears); }
}

function download(blob, name) {
  const anchor = make('a', { href: URL.createObjectURL(blob), download: name });
  anchor.click();
  setTimeout(() => URL.revokeObjectURL(anchor.href), 1000);
}

async function copy(text) {
  try {
    await navigator.clipboard.writeText(text);
    $('done').textContent = label('copied');
  } catch { // no clipboard where the page comes over plain HTTP
    $('done').textContent = text;
  }
}

function take(fresh) {
  given = fresh;
  show();
  changed();
}

function begin() {
  document.documentElement.lang = language;
  document.querySelectorAll('[data-label]').forEach(each => { each.textContent = label(each.dataset.label); });
  document.querySelectorAll('[data-name]').forEach(each => each.setAttribute('aria-label', label(each.dataset.name)));
  Object.entries(FIELDS).forEach(([step, fields]) => $(`in-${step}`).append(...fields.map(field)));
  document.querySelectorAll('[name=units]').forEach(each => each.addEventListener('change', () => take({ ...converted(given, each.value), units: each.value })));
  $('link').addEventListener('click', () => copy(location.origin + location.pathname + toAddress(given)));
  $('curl').addEventListener('click', () => copy(toCurl(given)));
  $('save').addEventListener('click', () => download(new Blob([JSON.stringify(given, null, 2)], { type: 'application/json' }), 'case.json'));
  $('open').addEventListener('click', () => $('file').click());
  $('file').addEventListener('change', async () => {
    try { take(JSON.parse(await $('file').files[0].text())); } catch { $('done').textContent = label('badFile'); }
  });
  $('pdf').addEventListener('click', async () => {
    try { download(await ask('/v1/assessment', given, undefined, language, 'application/pdf'), 'sheet.pdf'); } catch (fault) { $('done').textContent = fault.message; }
  });
  addEventListener('hashchange', () => { const fresh = fromAddress(location.hash); if (fresh) { take(fresh); } });
  addEventListener('resize', () => charts.fitAll());
  matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => calculate());
  show();
  calculate();
  performance.mark('interactive');
}

begin();
