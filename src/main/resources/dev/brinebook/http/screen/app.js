// SPDX-License-Identifier: Apache-2.0
/** The workbench: one state, the pages drawn from it, and what people do, which makes the next state. */
import { openBook, photoFromText, photoToText } from './book.js';
import { createCalculator, post } from './calculator.js';
import { changed, duplicate, emptyCase, fromFile, fromLink, importPlan, isBegun, noSteps, opened, put, redo, takenOver, toFile, toLink, undo } from './case.js';
import { isWithin, fieldOf, rangeIn } from './contract.js';
import { countryOf } from './country.js';
import { exampleOf } from './example.js';
import { frontPage, nameOf } from './front.js';
import { html, render } from './lit-html.js';
import { bookPage, brokenPage, comparePage, countryPage, reminder, waitingPage } from './pages.js';
import { daysOf } from './paste.js';
import { FIELDS, PATHS, QUESTIONS, QUESTION_IDS, enterId, fieldAt, firstOf, halvesOf, isGiven, labelId, missingOf, moreOf, operationsOf, requestOf, withParts } from './questions.js';
import { hourOf, numeral, shown } from './rounding.js';
import { LOOKS, begun, languageOf, preload, remembered, root, wear, wordsOf } from './start.js';
import { converted, factorsOf, parsed, symbol } from './units.js';

const NARROW = matchMedia('(max-width: 59.99rem)');
const LONGEST_LINK = 2000;
const UNDO_SHOWN_MS = 10000;
/** Pages are kept for the next visit once the first one has become quiet. */
const KEEP_AFTER_MS = 1500;

let state = {
  ...begun, route: { view: 'front' }, back: '#/',
  book: [], case: null, steps: noSteps(), calculation: { state: 'none', missing: [], errors: [], since: 0 }, checked: false, notice: null,
  storage: null, persisted: null, exported: remembered.get('exported'), reminded: remembered.get('reminded'), search: '', plan: null, pair: null, photo: null, away: false, unfolded: [],
};
let text = id => id;
let factors = {};
const contracts = {};
/** What a case needs beside the front page: its form and its answers, loaded when the first one is opened. */
let parts = null;
let book = null;
let opening = null;
let known = null;
let pending = Promise.resolve();

let due = false;
let rendering = false;

/** The next state; several in a row are drawn once. */
function set(part) {
  state = { ...state, ...part };
  if (!due) {
    due = true;
    queueMicrotask(() => { if (due) { draw(); } });
  }
}

const convert = (value, from, to) => converted(value, from, to, factors);
const here = () => countryOf(state.case?.country ?? state.country);

// ---- the answer ----

const keyOf = job => JSON.stringify([job.question, job.path, job.request, job.meter ?? null, state.tag, ...(job.beside ? [job.beside.request] : [])]);

/** The answer of a job, with the request as it was sent: the days of a meter come from the service first. A visit has two answers. */
async function run(job, signal) {
  const request = job.meter ? { ...job.request, days: (await post(PATHS.readMeter, job.meter, state.tag, signal)).days } : job.request;
  const [answer, installation] = await Promise.all([post(job.path, request, state.tag, signal), job.beside && post(job.beside.path, job.beside.request, state.tag, signal)]);
  return { request, answer: installation ? { ...answer, installation } : answer };
}

const calculator = createCalculator({
  run,
  answered(job, { request, answer }) {
    if (state.case?.id !== job.of) { return; }
    const kept = { operation: job.operation, question: job.question, request, answer, at: new Date().toISOString(), key: job.key, stale: false };
    state = { ...state, case: { ...state.case, answer: kept } };
    if (state.route.view !== 'shared') { save(false); }
    performance.mark('answered');
  },
  shows(calculation) { set({ calculation: { ...calculation, at: Date.now() } }); },
});

function calculate() {
  const open = state.case;
  if (!open) { return; }
  const missing = [...new Set([...missingOf(open.question, open.readings).map(name => FIELDS[name].pointer), ...problemsOf().map(({ pointer }) => pointer)])];
  const wanted = missing.length ? null : requestOf(open.question, open.readings, here(), open.seen);
  if (!wanted) {
    if (open.answer) { state = { ...state, case: { ...open, answer: { ...open.answer, stale: true } } }; }
    calculator.want(null, missing);
    return;
  }
  const meter = open.question === 'readings' ? daysOf(open.readings.days).meter : undefined;
  const job = { ...wanted, of: open.id, question: open.question, ...(meter ? { meter: { ...meter, country: here().home, units: here().units } } : {}) };
  const key = keyOf(job);
  if (open.answer) { state = { ...state, case: { ...open, answer: { ...open.answer, stale: open.answer.key !== key } } }; }
  calculator.want({ ...job, key }, [], open.answer?.key);
}

// ---- problems in the fields ----

/** What keeps the readings from being asked about: what was typed and is no number, or out of its range. */
function problemsOf() {
  const open = state.case;
  const contract = contracts[QUESTIONS[open.question].operation];
  if (!contract || !isReady()) { return []; }
  const label = pointer => ctx.name(pointer) ?? pointer;
  const drafts = Object.entries(open.drafts).filter(([pointer, typed]) => pointer.startsWith('/') && !pointer.includes('#') && typeof typed === 'string'
    && parsed(typed, []) !== undefined && at(open.readings, pointer) === undefined && !pointer.startsWith('/household/weeklyUse/'))
    .map(([pointer]) => ({ pointer, message: text('screen.notNumber', label(pointer)) }));
  const ranges = pointersOf(open.readings).map(([pointer, value, unit]) => {
    const rules = fieldOf(contract, pointer, open.readings);
    const range = rules && rangeIn(rules.range, unit, convert);
    return rules && !isWithin(value, range) ? { pointer: FIELDS[nameAt(pointer)]?.as === 'numbers' ? FIELDS[nameAt(pointer)].pointer : pointer, message: text('screen.outOfRange', label(pointer), parts.rangeText(form(), range), unit ? symbol(unit) : '') } : null;
  }).filter(Boolean);
  const twice = open.question === 'readings' && open.readings.days?.text && !isGiven('days', open.readings)
    ? [{ pointer: '/days', message: text('screen.enter.days') }] : [];
  const clock = ['everyDays', 'weekdays'].includes(open.drafts['/softener/control#kind']) && !open.readings.softener?.control
    && QUESTIONS[open.question].assumed?.['/softener/control'] ? [{ pointer: '/softener/control', message: text('screen.enter.control') }] : [];
  const halves = halvesOf(open.question, open.readings, contract, fieldOf).map(pointer => ({ pointer, message: text('visit.enterThis', label(pointer)) }));
  return [...drafts, ...ranges, ...twice, ...clock, ...chosenOnly(open), ...halfGoods(open), ...halves.filter(({ pointer }) => !drafts.some(each => each.pointer === pointer))];
}

/** How the water is used was chosen, and nothing entered for it. */
function chosenOnly({ question, drafts, readings }) {
  const chosen = [...firstOf(question), ...moreOf(question)].includes('use') ? drafts['/household#use'] : undefined;
  const given = { dailyUse: readings.household?.dailyUse, weeklyUse: readings.household?.weeklyUse, stays: readings.household?.occupancy?.spells };
  return chosen in given && given[chosen] === undefined ? [{ pointer: FIELDS.use.pointer, message: text(`screen.enter.${chosen}`) }] : [];
}

/** Softeners to choose from that have a name and no size, or a size and no name. */
function halfGoods({ question, readings }) {
  const rows = moreOf(question).includes('candidates') ? readings.candidates ?? [] : [];
  return rows.flatMap((row, index) => {
    const sized = row?.resinVolume || row?.nameplateCapacity || (row?.tankDiameter && row?.tankHeight);
    return [...(sized ? [] : [['resinVolume', 'goodSize']]), ...(row?.sku ? [] : [['sku', 'goodName']])]
      .map(([field, id]) => ({ pointer: `/candidates/${index}/${field}`, message: text(`screen.enter.${id}`, row?.sku || String(index + 1)) }));
  });
}

const at = (part, pointer) => pointer.split('/').slice(1).reduce((inner, name) => inner?.[name], part);

/** Every number of the readings with its pointer and unit. */
function pointersOf(part, pointer = '') {
  if (pointer === '/days' || pointer === '/measured') { return []; }
  if (typeof part === 'number') { return [[pointer, part, null]]; }
  if (part === null || typeof part !== 'object') { return []; }
  if (typeof part.value === 'number' && typeof part.unit === 'string') { return [[pointer, part.value, part.unit]]; }
  return Object.entries(part).flatMap(([name, inner]) => pointersOf(inner, `${pointer}/${name}`));
}

function problems() {
  const open = state.case;
  const missing = missingOf(open.question, open.readings).map(name => ({ pointer: FIELDS[name].pointer, message: text(enterId(name)) }));
  const own = problemsOf();
  const fresh = own.concat(missing.filter(({ pointer }) => !own.some(each => each.pointer === pointer)));
  const order = [...firstOf(open.question), ...moreOf(open.question)].map(name => FIELDS[name].pointer);
  const rank = ({ pointer }) => { const found = order.findIndex(each => pointer.startsWith(each)); return found < 0 ? order.length : found; };
  const refused = state.calculation.state === 'failed' ? state.calculation.errors.map(({ pointer, message }) => {
    const field = fieldPointer(pointer);
    const label = ctx.name(field);
    return { pointer: field, message: label ? `${label}: ${message}` : message };
  }) : [];
  return [...fresh, ...refused].sort((one, other) => rank(one) - rank(other));
}

/** The pointer of the field that a pointer of the service leads to. */
function fieldPointer(pointer) {
  const contract = contracts[QUESTIONS[state.case.question].operation];
  const reading = /^\/readings\/(\d+)/.exec(pointer);
  if (reading && parts?.checkAt && state.case.question === 'start') { return parts.checkAt(Number(reading[1]), state.case.readings); }
  const trimmed = pointer.replace(/\/(value|unit)$/, '');
  return contract && fieldOf(contract, trimmed, state.case.readings) ? trimmed : fieldAt(trimmed, state.case.question)?.pointer ?? trimmed;
}

// ---- changes ----

const names = { draft: 'drafts', guess: 'guesses' };

/** Changes of a case: `[pointer, value]`, or `['draft'|'guess', key, value]`. */
function applied(given, changes) {
  return changes.reduce((next, [where, key, value]) => {
    if (names[where]) {
      const { [key]: old, ...rest } = next[names[where]];
      return { ...next, [names[where]]: value === undefined ? rest : { ...rest, [key]: value } };
    }
    const readings = put({ readings: next.readings }, where, key).readings ?? {};
    return { ...next, readings };
  }, given);
}

/** A field that goes with its page while that is drawn speaks of a case that is no longer open; what was typed is kept already. */
function edit(changes, what) { if (!rendering) { take(applied(state.case, changes), what); } }

/** The next form of the open case, as one more step; written down before anything is sent. */
function take(next, what, photoToo) {
  const { case: mine, steps } = changed(state.case, state.steps, next, what, new Date());
  state = { ...state, case: mine, steps, notice: state.notice?.act ? null : state.notice };
  if (state.route.view === 'ask') { become(mine.id); }
  calculate();
  save(true, photoToo);
  draw();
}

/** A case that something is known of has an address of its own. */
function become(id) {
  state = { ...state, route: { view: 'case', id } };
  history.replaceState(null, '', `#/case/${id}`);
}

function step(move) {
  const next = move(state.case, state.steps, new Date());
  if (!next) { return; }
  state = { ...state, case: next.case, steps: next.steps };
  loadContract();
  calculate();
  save(true);
  draw();
}

/** Writes the open case to the device, one after another. */
function save(withSteps, photoToo = false) {
  const { case: open, steps } = state;
  if (!open) { return; }
  pending = pending.then(async () => {
    try {
      await opening;
      const other = await book.save(open, withSteps ? steps : null, known, photoToo);
      known = open.changed;
      if (other && state.case?.id === open.id) {
        state = { ...state, steps: takenOver(other, state.steps) };
        announce('screen.otherTabBefore', { words: text('screen.undo'), does: () => step(undo) });
      }
      const { photo, ...row } = open;
      set({ book: [row, ...state.book.filter(each => each.id !== open.id)], storage: book.lasting ? null : 'none' });
      if (!state.reminded) { remindAfter(new Date()); } // the month begins with the first case
      keepBook();
    } catch (fault) {
      set({ storage: fault.name === 'QuotaExceededError' ? 'full' : 'none' });
    }
  });
}

async function listed() {
  const all = (await book.all()).map(each => {
    const read = opened(each, QUESTION_IDS, blank());
    return read.case ? { ...read.case, id: each.id } : { ...blank(), id: each.id, changed: each.changed ?? '', name: String(each.name ?? '') };
  });
  set({ book: all });
  keepBook();
  if (!state.reminded && all.length) { remindAfter(new Date()); }
}

/** From now on a month goes by before somebody is reminded to export. */
function remindAfter(now) {
  remembered.set('reminded', now.toISOString());
  set({ reminded: now.toISOString() });
}

/** Asks the browser to keep the book, once there are two cases in it. */
function keepBook() {
  if (state.persisted === null && state.book.filter(each => !each.deleted).length > 1) {
    state = { ...state, persisted: true };
    book.persist().then(persisted => set({ persisted }));
  }
}

async function otherTab(id) {
  await listed();
  if (state.case?.id !== id || state.route.view === 'shared') { return; }
  const there = await book.load(id);
  if (!there.case || there.case.changed <= state.case.changed) { return; }
  const mine = state.case;
  known = there.case.changed;
  state = { ...state, case: there.case, steps: takenOver(mine, there.steps ?? noSteps()) };
  showPhoto();
  announce('screen.otherTab', { words: text('screen.undo'), does: () => step(undo) });
  loadContract();
  calculate();
}

let noticeTimer = 0;
function announce(id, act) { notify(text(id), act); }

function notify(words, act) {
  clearTimeout(noticeTimer);
  set({ notice: { words, act } });
  noticeTimer = setTimeout(() => set({ notice: null }), UNDO_SHOWN_MS);
}

// ---- what pages may do ----

const freshId = () => (crypto.randomUUID ? crypto.randomUUID() : `${Date.now().toString(36)}-${Math.random().toString(36).slice(2)}`);
const go = hash => { location.hash = hash; };

function download(blob, name) {
  const anchor = Object.assign(document.createElement('a'), { href: URL.createObjectURL(blob), download: name });
  anchor.click();
  setTimeout(() => URL.revokeObjectURL(anchor.href), 10000);
}

async function exportCases(ids) {
  const cases = await book.withPhotos(state.book.filter(each => ids.includes(each.id)));
  const whole = await Promise.all(cases.map(async each => ({ ...each, photo: await photoToText(each.photo) })));
  download(new Blob([toFile(whole)], { type: 'application/json' }), 'brinebook.json');
  if (state.book.every(each => each.deleted || ids.includes(each.id))) { // one case of several is no export of the book
    const now = new Date().toISOString();
    remembered.set('exported', now);
    set({ exported: now });
  }
}

async function openFile(input) {
  const entries = fromFile(await input.files[0].text());
  input.value = '';
  if (!entries) { announce('screen.badFile'); return; }
  const read = entries.map(entry => opened(entry, QUESTION_IDS, { ...emptyCase(freshId(), QUESTION_IDS[0], state.country, new Date()), photo: null }));
  const plan = importPlan(state.book, read.filter(each => each.case).map(each => each.case));
  set({ plan: [...plan, ...read.filter(each => each.refused).map(each => ({ case: null, does: 'refused', reason: each.refused }))] });
  draw();
  document.getElementById('plan')?.focus();
}

async function importPlanned() {
  const some = state.plan.filter(({ does }) => does === 'add' || does === 'replace');
  try {
    for (const { case: each } of some) { await book.save({ ...each, photo: photoFromText(each.photo) }, noSteps(), null, true); }
    set({ plan: null });
    announce('screen.imported');
    await listed();
  } catch { set({ storage: 'full' }); }
}

async function ofCase(act, id) {
  const there = state.case?.id === id ? state.case : (await book.load(id)).case;
  if (!there) { return; }
  if (act === 'duplicate') {
    const copy = duplicate(there, freshId(), text('screen.copyOf', nameOf(there, text, state.language)), new Date());
    await book.save(copy, noSteps(), null, true);
    await listed();
    go(`#/case/${copy.id}`);
  } else if (act === 'compare') {
    go(`#/compare/${id}`);
  } else if (act === 'exportCase') {
    await exportCases([id]);
  } else {
    await book.trash(id);
    if (state.case?.id === id) { state = { ...state, case: null }; go('#/book'); }
    await listed();
    announce('screen.removed', { words: text('screen.undo'), does: async () => { await book.restore(id); await listed(); set({ notice: null }); } });
  }
}

async function share() {
  const link = `${location.origin}${location.pathname}#/shared/${toLink(state.case)}`;
  if (link.length > LONGEST_LINK) { announce('screen.linkTooLong', { words: text('screen.act.exportCase'), does: () => ofCase('exportCase', state.case.id) }); return; }
  try {
    if (navigator.share && NARROW.matches) { await navigator.share({ title: text(`screen.question.${state.case.question}`), url: link }); return; }
    await navigator.clipboard.writeText(link);
    announce('screen.linkCopied');
  } catch (fault) {
    if (fault.name !== 'AbortError') { set({ notice: { words: html`${text('screen.copyLink')} <input class="link" readonly .value=${link} aria-label=${text('screen.copyLink')} @focus=${event => event.target.select()}>` } }); }
  }
}

function showPhoto() {
  if (state.photo) { URL.revokeObjectURL(state.photo); }
  state = { ...state, photo: state.case?.photo ? URL.createObjectURL(state.case.photo) : null };
}

/** Another question of the same case begins at its top. */
function anew() {
  loadContract();
  scrollTo(0, 0);
  ['.readings', '.answer'].forEach(each => document.querySelector(each)?.scrollTo(0, 0));
}

const ofOpen = act => () => ofCase(act, state.case.id);
const acts = {
  undo: () => step(undo), redo: () => step(redo), share,
  duplicate: ofOpen('duplicate'), compare: ofOpen('compare'), exportCase: ofOpen('exportCase'), remove: ofOpen('remove'), ofCase,
  question(id) { take({ ...state.case, question: id }, '#question'); anew(); },
  about: (name, value) => take({ ...state.case, [name]: value }, `#${name}`),
  photo(file) { take({ ...state.case, photo: file ?? null }, '#photo', true); showPhoto(); draw(); },
  country(code) {
    remembered.set('country', code);
    state = { ...state, country: code };
    if (state.case && isBegun(state.case)) { take({ ...state.case, country: code }, '#country'); } else { set({ case: state.case && { ...state.case, country: code } }); }
  },
  async language(tag) {
    remembered.set('language', tag);
    await speak(tag);
    if (state.case) { calculate(); }
    draw();
  },
  look(look) {
    if (LOOKS.includes(look)) { remembered.set('look', look); wear(look); set({ look }); }
  },
  edit: pointer => ctx.edit(pointer),
  go: submit,
  async example() {
    const readings = await exampleOf(state.case.question, here().units);
    take({ ...state.case, readings, drafts: {}, guesses: {}, name: state.case.name || text('screen.exampleName') }, '#example');
  },
  async exampleCase() {
    const fresh = { ...emptyCase(freshId(), 'worth', state.country, new Date()), name: text('screen.exampleName'), readings: await exampleOf('worth', countryOf(state.country).units) };
    await book.save(fresh, noSteps(), null, false);
    await listed();
    go(`#/case/${fresh.id}`);
  },
  unfold(id, open) {
    if (open !== state.unfolded.includes(id)) { set({ unfolded: open ? [...state.unfolded, id] : state.unfolded.filter(each => each !== id) }); }
  },
  search: search => set({ search }),
  exportAll: () => exportCases(state.book.filter(each => !each.deleted).map(each => each.id)),
  later: () => remindAfter(new Date()),
  open: openFile, import: importPlanned, dismiss: () => set({ plan: null }),
  async restore(id) { await book.restore(id); await listed(); },
  other(id) { go(`#/compare/${state.pair[0].id}${id ? `/${id}` : ''}`); },
  /** The softener that was chosen becomes the one to set up. */
  setUp({ resinVolume, tankDiameter }) {
    const softener = { ...state.case.readings.softener, resinVolume, ...(tankDiameter ? { tankDiameter } : {}) };
    const { nameplateCapacity, tankHeight, ...rest } = softener;
    take({ ...state.case, question: 'setup', readings: { ...state.case.readings, softener: rest }, drafts: { ...state.case.drafts, '/softener#size': 'resin' } }, '#question');
    anew();
  },
  keep() {
    const copy = duplicate(state.case, freshId(), '', new Date());
    known = null;
    state = { ...state, case: copy, steps: noSteps() };
    become(copy.id);
    save(true);
    calculate();
    draw();
  },
};

/** Continue: to the answer, or to what is still missing for it. */
function submit() {
  const open = problems();
  state = { ...state, checked: open.length > 0 };
  draw();
  if (open.length) {
    const summary = document.getElementById('errors');
    summary.focus();
    summary.scrollIntoView({ block: 'nearest' });
  } else if (NARROW.matches) {
    go(`#/case/${state.case.id}/answer`);
  } else {
    document.getElementById('answer').focus();
  }
}

// ---- what results use ----

const ALIASES = { '/household/dailyUse': 'dailyUse', '/household/weeklyUse': 'use', '/household/occupancy': 'use', '/softener/saltDose': 'saltDose',
  '/softener/tankDiameter': 'tankDiameter', '/softener/tankHeight': 'tankHeight', '/softener/nameplateCapacity': 'nameplateCapacity',
  '/candidates': 'candidates', '/prices/saltBag/mass': 'saltBag', '/prices/saltBag': 'saltPrice', '/prices/water': 'waterPrice', '/prices/sewer': 'sewerPrice', '/retrofit/upgrades': 'replacement',
  '/softener/control/everyDays': 'everyDays', '/softener/control/hardnessSetting': 'hardnessSetting', '/softener/control/capacitySetting': 'capacitySetting',
  '/softener/control/reserve': 'reserve', '/softener/control/dayOverride': 'dayOverride', '/softener/control/regenerationHour': 'regenerationHour' };

/** The name of a field, or undefined where the question has none for it. */
function nameAt(pointer) {
  const alias = Object.keys(ALIASES).find(each => pointer === each || pointer.startsWith(`${each}/`));
  return alias ? ALIASES[alias] : Object.keys(FIELDS).find(each => FIELDS[each].pointer === pointer || (FIELDS[each].as === 'numbers' && pointer.startsWith(`${FIELDS[each].pointer}/`)));
}

/** Units of the service that are words. */
const WORDED = { '%/year': 'screen.unit.percentYear', 'days/year': 'screen.unit.daysYear', minutes: 'screen.unit.minutes', years: 'screen.unit.years' };

/** What was assumed is not known to more digits than these: a whole number is as it is. */
const digitsOf = value => (Number.isInteger(value) ? 15 : Math.abs(value) < 1 ? 2 : 3);

const ctx = {
  text: (id, ...values) => text(id, ...values),
  shown: (quantity, kind) => shown(quantity, kind, here(), state.language, convert),
  /** Both ends of a range, as numbers without a unit where both have one. */
  range: (from, to, kind) => [shown(from, kind, here(), state.language, convert), shown(to, kind, here(), state.language, convert)],
  convert,
  date: iso => new Intl.DateTimeFormat(state.language, { dateStyle: 'medium' }).format(new Date(iso.length === 10 ? `${iso}T12:00:00` : iso)),
  /** The label of the field at a pointer, or undefined where the open question has none. */
  name(pointer) {
    const row = /^\/results\/(\d+)/.exec(pointer);
    if (row) { return parts?.resultName?.(state.case?.readings.results?.[row[1]], Number(row[1]), text); }
    if (pointer.startsWith('/checks/')) { return parts?.checkName?.(pointer, state.case); }
    const name = nameAt(pointer);
    if (!name || text(labelId(name)) === labelId(name)) { return undefined; }
    const period = /^\/(before|after)\//.exec(pointer);
    return period ? `${text(`visit.group.${period[1]}`)}: ${text(labelId(name))}` : text(labelId(name));
  },
  /** What was assumed, in words. */
  value(assumption) {
    if (assumption.code !== undefined) {
      const flag = ['true', 'false'].includes(assumption.code);
      return [`screen.${flag ? 'flag' : 'option'}.${assumption.code}`, `visit.option.${assumption.code}`, `visit.symptom.${assumption.code}`].map(id => [text(id), id]).find(([words, id]) => words !== id)?.[0] ?? assumption.code;
    }
    const { pointer, origin } = assumption;
    const unit = assumption.unit === 'm' ? here().length : assumption.unit;
    const value = unit === assumption.unit ? assumption.value : convert(assumption.value, assumption.unit, unit);
    if (pointer?.endsWith('/regenerationHour')) { return hourOf(value, state.language); }
    if (unit === 'days') { return text('result.dayCount', value); }
    const number = numeral(Number(value.toPrecision(origin ? digitsOf(value) : 6)), state.language);
    return unit ? `${number}\u00a0${WORDED[unit] ? text(WORDED[unit]) : symbol(unit)}` : number;
  },
  get country() { return here(); },
  get language() { return state.language; },
  /** Goes to the field at a pointer, unfolded. */
  edit(pointer) {
    const found = fieldAt(pointer, state.case.question)?.pointer;
    if (location.hash.endsWith('/answer')) { history.back(); }
    const name = fieldAt(pointer, state.case.question)?.name;
    const group = Object.entries(QUESTIONS[state.case.question].more).find(([, names]) => names.includes(name))?.[0];
    set({ answering: false, unfolded: group && !state.unfolded.includes(group) ? [...state.unfolded, group] : state.unfolded });
    sought = [pointer, found];
    if (!location.hash.endsWith('/answer')) { setTimeout(reach, 50); }
  },
  change(pointer, value) { edit([[`/readings${pointer}`, value], ['draft', pointer, undefined]], pointer); },
  /** Another view of this case: `answer`, `readings`, or `question:` and the id of one. */
  open(view) {
    if (view.startsWith('question:')) { acts.question(view.slice(9)); go(`#/case/${state.case.id}`); } else { go(`#/case/${state.case.id}${view === 'answer' ? '/answer' : ''}`); }
  },
  /** Asks the service for something beside the answer: an answer, or with `accept` a blob. */
  ask(operation, request, query = {}) {
    const { accept, ...rest } = query;
    const parameters = new URLSearchParams(rest).toString();
    return post(`${PATHS[operation]}${parameters ? `?${parameters}` : ''}`, request, state.tag, undefined, accept);
  },
  /** Takes parts of an answer into the case, and goes to another of its questions. */
  take(some, question) {
    const roots = Object.keys(some).flatMap(name => [`/${name}/`, `/${name}#`]);
    const drafts = Object.fromEntries(Object.entries(state.case.drafts).filter(([pointer]) => !roots.some(each => pointer.startsWith(each))));
    take({ ...state.case, question, drafts, readings: withParts(state.case.readings, some) }, '#taken');
    anew();
    go(`#/case/${state.case.id}`);
    setTimeout(() => announce('visit.taken', { words: text('screen.undo'), does: () => step(undo) }), 100); // once the page is that of the question
  },
  /** The form of the open case, for readings that are asked for beside an answer; whether that answer is still the one to it. */
  get form() { return form(); },
  get fresh() { return state.calculation.state === 'fresh'; },
  applied,
  isUnfolded: name => Object.entries(QUESTIONS[state.case.question].more).some(([group, names]) => names.includes(name) && state.unfolded.includes(group)),
  notice: words => notify(words),
  redraw() { redraws += 1; draw(); },
};

/** A field that is to be gone to once its page is drawn: the way back from an answer takes as long as the browser needs for it. */
let sought = null;

function reach() {
  if (sought) { focusField(...sought); }
  sought = null;
}

function focusField(pointer, found) {
  const target = document.getElementById(parts.idOf(pointer)) ?? (found && (document.getElementById(parts.idOf(found)) ?? document.querySelector(`[data-pointer="${found}"]`)));
  if (!target) { return; }
  for (let around = target.parentElement; around; around = around.parentElement) { if (around.tagName === 'DETAILS') { around.open = true; } }
  target.focus();
  target.scrollIntoView({ block: 'center' });
}

// ---- drawing ----

const form = () => ({ case: state.case, contract: contracts[QUESTIONS[state.case.question].operation], contracts, country: here(), language: state.language, text, convert,
  problems: shownProblems(), set: edit, notice: words => notify(words), act: acts });

/** Nothing is red while it is typed: only after Continue, or where the service refused. */
function shownProblems() {
  if (!state.checked && state.calculation.state !== 'failed') { return new Map(); }
  return drawing.problems;
}

const drawing = { problems: new Map() };
let redraws = 0;
let drawn = { of: '', answer: null, template: null };

/** The answer as a template, made again only when something in it changed: typing shall not wait for charts. */
function resultOf(open, calculation) {
  const of = JSON.stringify([open.id, open.question, open.name, open.seen, open.notes, calculation.state, calculation.missing, calculation.errors, state.tag, here().code, state.unfolded, redraws]);
  if (drawn.of !== of || drawn.answer !== open.answer?.answer) { drawn = { of, answer: open.answer?.answer, template: parts.resultView(open, calculation, ctx) }; }
  return drawn.template;
}

function view() {
  const { route } = state;
  const shared = { text, acts };
  if (route.view === 'book') { return bookPage(state, shared); }
  if (route.view === 'country') { return countryPage(state, shared); }
  if (route.view === 'compare') { return comparePage(state, { ...shared, compared: state.pair?.[1] && isReady() ? parts.compareView(state.pair[0], state.pair[1], ctx) : null }); }
  if (route.view === 'broken' || route.view === 'gone') { return brokenPage(state, shared); }
  if (!state.case) { return frontPage(state, { text, reminder: reminder(state, text, acts) }); }
  if (!isReady()) { return waitingPage(state, shared); }
  const ready = operationsOf(state.case.question).every(each => contracts[each] !== undefined);
  const list = ready ? problems() : [];
  drawing.problems = new Map(list.map(({ pointer, message }) => [pointer, message]));
  return parts.casePage(state, { ...shared, form: ready ? form() : null, problems: list, answering: state.answering,
    result: resultOf(state.case, state.calculation), bar: parts.verdictBar(state.case, state.calculation, ctx) });
}

function draw() {
  due = false;
  rendering = true;
  try { render(view(), root); } finally { rendering = false; }
  const { route } = state;
  const title = state.case && ['ask', 'case', 'shared'].includes(route.view) ? text(`screen.question.${state.case.question}`)
    : { book: text('screen.cases'), country: text('screen.whichCountry'), compare: text('screen.compareTitle') }[route.view];
  document.title = `${state.checked && drawing.problems.size ? `${text('screen.error')}: ` : ''}${title ? `${title} - ` : ''}Brinebook`;
}

const PARTS = ['case-page', 'fields', 'result', 'compare', 'answers', 'charts', 'figures', 'fold', 'ladder', 'month', 'more', 'own-readings', 'set-up', 'settings', 'uncertain'];
let coming = null;

/** The form and the answers of a case, asked for once. */
function loadParts() {
  coming ??= fetchParts().catch(fault => { coming = null; throw fault; });
  return coming;
}

/** The style of answers, which no page before them needs. */
function styled() {
  return new Promise((done, failed) => {
    document.head.append(Object.assign(document.createElement('link'), { rel: 'stylesheet', href: '/workbench/result.css', onload: done, onerror: () => failed(new TypeError('no style')) }));
  });
}

/** Questions of a visit bring words and a view of their own, which nobody else waits for. */
const LATER = { readWaterReport: 'report', reduceFieldMeasurements: 'visit', checkInstallation: 'visit', diagnoseComplaint: 'complaint', planCommissioning: 'commission', verifySavings: 'savings' };
const laterOf = each => [QUESTIONS[each?.question]?.operation, each?.answer?.operation].map(operation => LATER[operation]).filter(Boolean);
const wanted = () => [state.case, ...(state.route.view === 'compare' ? state.pair ?? [] : [])].flatMap(laterOf);
const come = {};
const isReady = () => Boolean(parts && wanted().every(name => come[name] === true));
const speaksOfVisits = () => Object.keys(come).length > 0;

/** The words and the views of such questions, each asked for once. */
function loadLater(names) {
  return Promise.all([...new Set(names)].filter(name => come[name] !== true).map(name => {
    come[name] ??= fetchLater(name).then(() => { come[name] = true; }, fault => { delete come[name]; throw fault; });
    return come[name];
  }));
}

async function fetchLater(name) {
  preload([name, 'visit-parts', ...(name === 'report' ? ['paste-table'] : name === 'visit' ? [] : ['afterwards'])]);
  const [words, , view] = await Promise.all([wordsOf(state.tag, true), loadParts(), loadParts().then(() => import(`./${name}.js`))]);
  Object.assign(parts, view);
  text = words;
}

async function fetchParts() {
  preload(PARTS);
  const [, ...modules] = await Promise.all([styled(), import('./case-page.js'), import('./fields.js'), import('./result.js'), import('./compare.js')]);
  parts = Object.assign({}, ...modules);
}

/** What the open page needs: its parts, the units, and the rules of the question's operation. Tried again until it is there. */
async function loadContract() {
  const operations = state.case ? operationsOf(state.case.question) : [];
  if (!operations.length && state.route.view !== 'compare') { return; }
  if (isReady() && operations.every(each => contracts[each])) { return; }
  try {
    await Promise.all([loadParts(), loadUnits(), loadLater(wanted()), ...operations.map(fetchContract)]);
    state = { ...state, away: false };
    if (state.route.view !== 'compare') { calculate(); }
    draw();
    if (document.activeElement === document.body) { document.querySelector('h1')?.focus({ preventScroll: true }); }
    performance.mark('form');
  } catch {
    set({ away: true });
    setTimeout(loadContract, 3000);
  }
}

const asking = {};
/** The rules of an operation, asked for once. */
function fetchContract(operation) {
  if (contracts[operation]) { return Promise.resolve(); }
  asking[operation] ??= (async () => {
    const answer = await fetch(`/openapi/${operation}.json`);
    if (!answer.ok) { throw new TypeError('no contract'); }
    contracts[operation] = await answer.json();
  })().finally(() => { delete asking[operation]; });
  return asking[operation];
}

async function loadUnits() {
  if (Object.keys(factors).length === 0) { factors = factorsOf(await (await fetch('/v1/units')).json()); }
}

/** Closes the fold around a part of the page, and goes back to its name. */
function fold(target) {
  const around = target.closest?.('details[open]');
  if (around) {
    around.open = false;
    around.querySelector('summary').focus();
  }
}

// ---- where one is ----

const blank = (question = QUESTION_IDS[0]) => emptyCase(freshId(), question, state.country, new Date());

/** The state of an address. */
async function follow() {
  const [, view, one, other] = location.hash.split('/');
  const moved = { checked: false, notice: null, plan: null };
  if (location.hash.length > 1 && !location.hash.startsWith('#/')) { shared(location.hash.slice(1), moved); return; }
  if (view === 'ask' && QUESTION_IDS.includes(one)) {
    known = null;
    enter({ ...moved, route: { view: 'ask' }, case: blank(one), steps: noSteps(), answering: false, photo: null });
  } else if (view === 'case') {
    await enterCase(one, other === 'answer', moved);
  } else if (view === 'shared') {
    shared(one ?? '', moved);
  } else if (view === 'compare') {
    await opening;
    const pair = (await Promise.all([one, other].filter(Boolean).map(id => book.load(id)))).map(each => each.case).filter(Boolean);
    enter({ ...moved, route: { view: 'compare' }, pair });
  } else if (view === 'country') {
    enter({ ...moved, route: { view }, back: state.back });
  } else {
    enter({ ...moved, route: { view: view === 'book' ? 'book' : 'front' }, case: null });
  }
}

async function enterCase(id, answering, moved) {
  if (state.case?.id === id) {
    enter({ ...moved, route: { view: 'case', id }, answering });
    return;
  }
  await opening;
  await pending;
  const there = await book.load(id);
  if (!there.case) { enter({ ...moved, route: { view: 'gone' }, case: null }); return; }
  const read = opened(there.case, QUESTION_IDS, blank());
  if (read.refused) { enter({ ...moved, route: { view: 'broken', reason: read.refused }, case: null }); return; }
  known = there.case.changed;
  enter({ ...moved, route: { view: 'case', id }, case: { ...read.case, id }, steps: there.steps ?? noSteps(), answering });
  showPhoto();
}

/** A case that came by a link: a copy, until it is kept. A plain request is what the first pages put there. */
function shared(part, moved) {
  const sent = fromLink(part);
  const read = sent ? opened(sent, QUESTION_IDS, blank()) : { refused: 'unreadable' };
  if (read.refused) { enter({ ...moved, route: { view: 'broken', reason: read.refused }, case: null }); return; }
  enter({ ...moved, route: { view: 'shared' }, case: read.case, steps: noSteps(), answering: false });
}

function enter(part) {
  const before = state.route;
  if (part.route.view !== 'country') { state = { ...state, back: location.hash || '#/' }; }
  calculator.stop();
  state = { ...state, away: false, ...part, calculation: { state: 'none', missing: [], errors: [], since: 0 } };
  loadContract();
  if (state.case && part.route.view !== 'country') { calculate(); }
  draw();
  if (before.view !== state.route.view || part.answering !== undefined) {
    scrollTo(0, 0);
    (state.answering ? document.getElementById('answer') : document.querySelector('h1'))?.focus({ preventScroll: true });
  }
  reach();
}

async function speak(tag) {
  text = await wordsOf(tag, speaksOfVisits());
  state = { ...state, tag, language: languageOf(tag) };
}

async function keepPages() {
  if (!('serviceWorker' in navigator)) { return; }
  try {
    await navigator.serviceWorker.register('/service-worker.js');
    const words = () => { fetch(`/workbench/text-${state.tag}.js`); fetch(`/workbench/visit-text-${state.tag}.js`); };
    if (navigator.serviceWorker.controller) { words(); } else { navigator.serviceWorker.addEventListener('controllerchange', words, { once: true }); }
  } catch { /* private windows refuse; the pages work without */ }
}

/** Somebody is about to open a question: what it needs is fetched at once. */
function warm({ target }) {
  const id = target.closest?.('.ask a')?.hash.split('/')[2];
  if (id) { Promise.all([loadParts(), loadLater(laterOf({ question: id })), ...operationsOf(id).map(fetchContract)]).catch(() => { /* it is tried again when the question is open */ }); }
}

/** What comes after the front page: the book, its cases, and the parts of the next page, while somebody reads. */
async function goOn() {
  await opening;
  if (!book.lasting) { set({ storage: 'none' }); }
  await listed();
  await book.empty();
  const later = globalThis.requestIdleCallback ?? setTimeout;
  later(() => loadParts().catch(() => {}).finally(() => setTimeout(keepPages, KEEP_AFTER_MS)));
}

/** Begins with the words of the page: the book opens beside it. */
export async function begin(words) {
  text = words;
  opening = openBook(otherTab).then(found => { book = found; });
  loadUnits().catch(() => {});
  addEventListener('hashchange', follow);
  ['pointerdown', 'focusin'].forEach(each => root.addEventListener(each, warm));
  addEventListener('online', calculator.again);
  document.addEventListener('visibilitychange', () => { if (!document.hidden && state.calculation.state === 'offline') { calculator.again(); } });
  addEventListener('keydown', event => {
    const key = event.key.toLowerCase();
    if (key === 'escape') { fold(event.target); return; }
    if (!(event.ctrlKey || event.metaKey) || !state.case || state.route.view === 'shared') { return; }
    if (key === 'z' && !event.shiftKey) { event.preventDefault(); step(undo); } else if (key === 'y' || (key === 'z' && event.shiftKey)) { event.preventDefault(); step(redo); }
  });
  if (root.querySelector('.start')) { root.replaceChildren(); }
  await follow();
  performance.mark('interactive');
  await goOn();
}
