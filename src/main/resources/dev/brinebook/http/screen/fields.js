// SPDX-License-Identifier: Apache-2.0
/**
 * Fields of a case as templates, built from the rules of the contract. A form is `{ case, contract, country, language, text, convert,
 * problems, set(changes, what), notice(text) }`; a change is a pointer and a value, where `drafts` and `guesses` are parts of the
 * case too.
 */
import { at } from './case.js';
import { fieldOf, isWithin, rangeIn } from './contract.js';
import { html, nothing } from './lit-html.js';
import { daysOf } from './paste.js';
import { FIELDS, PRICED, QUESTIONS, hintId, labelId, optionId } from './questions.js';
import { formatOf, numeral, shown } from './rounding.js';
import { parsed, symbol } from './units.js';

const WEEKDAYS = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];
const RARE_MG_PER_L = 1000;

export const idOf = pointer => `f${pointer.replaceAll('/', '-')}`;

/** A weekday by its number from Monday, in a language. */
const weekday = (index, language, length) => new Intl.DateTimeFormat(language, { weekday: length, timeZone: 'UTC' }).format(Date.UTC(2024, 0, 1 + index));

/** The unit that an empty field begins with: the one of the country where it has it. */
export function usualUnit(pointer, units, country) {
  const wishes = pointer.endsWith('/resinVolume') ? [country.resin] : pointer.endsWith('/per') ? [country.waterLarge]
    : [country.hardness, country.water, country.length, country.mass, country.dose, country.flow, country.temperature, country.pressure, country.capacity];
  return wishes.find(each => units.includes(each)) ?? (units.length ? units[0] : country.money);
}

const written = (value, language) => (typeof value === 'number'
  ? formatOf(language, { useGrouping: false, maximumSignificantDigits: 6 }).format(value) : value ?? '');

const draftOf = (form, pointer) => form.case.drafts[pointer];

/** Text under a field: what is wrong with it, what is known of it, and what to do. */
function below(form, pointer, more = nothing) {
  const problem = form.problems.get(pointer);
  return html`${problem ? html`<p class="fault" id="${idOf(pointer)}-fault"><span aria-hidden="true">▲ </span>${problem}</p>` : nothing}${more}`;
}

const described = (form, pointer, hint) => [hint ? `${idOf(pointer)}-hint` : '', form.problems.get(pointer) ? `${idOf(pointer)}-fault` : ''].filter(Boolean).join(' ') || nothing;

const hintOf = (form, id, pointer) => (id && form.text(id) !== id ? html`<p class="hint" id="${idOf(pointer)}-hint">${form.text(id)}</p>` : nothing);

const labelOf = (form, name) => form.text(labelId(name));

/** The label of a field, with its unit in words and whether it may be left out. */
function label(form, name, pointer, unit, optional) {
  return html`<label for=${idOf(pointer)}>${labelOf(form, name)}${unit ? html`<span class="of">, ${unit}</span>` : nothing}${optional ? html` <span class="of">(${form.text('screen.optional')})</span>` : nothing}</label>`;
}

/** A number as typed: into the readings where it is one, else kept as it stands. */
function typed(form, pointer, text, { units, unit, whole, extra = {} }) {
  const found = parsed(text, units ?? []);
  const of = value => (units || unit ? { value, unit: found.unit ?? unit } : value);
  const value = found && found.value !== undefined && !(whole && !Number.isInteger(found.value)) ? of(found.value) : undefined;
  const plain = value !== undefined && written(found.value, form.language) === text;
  const withIt = value === undefined ? [] : Object.entries(extra).filter(([other]) => at(form.case.readings, other) === undefined)
    .map(([other, given]) => [`/readings${other}`, typeof given === 'function' ? given(form.country) : given]);
  form.set([[`/readings${pointer}`, value], ['draft', pointer, text === '' || plain ? undefined : text], ['guess', pointer, undefined], ...withIt], pointer);
}

/** "10 x 54" in one of two fields is for both of them. */
function settledPair(form, pointers, units, unit) {
  const parts = (pointers.map(each => draftOf(form, each)).find(each => each && /[x×*]/i.test(each)) ?? '').split(/[x×*]/i).map(each => parsed(each, units));
  if (parts.length !== pointers.length || parts.some(each => each?.value === undefined)) { return false; }
  const common = parts.at(-1).unit ?? parts[0].unit ?? unit;
  form.set(pointers.flatMap((each, index) => [[`/readings${each}`, { value: parts[index].value, unit: parts[index].unit ?? common }], ['draft', each, undefined]]), pointers[0]);
  return true;
}

/** On leaving a field, what was typed is written as the page writes it. */
function settled(form, pointer, { pair, units, unit } = {}) {
  if (pair && settledPair(form, pair, units, unit)) { return; }
  if (draftOf(form, pointer) !== undefined && at(form.case.readings, pointer) !== undefined) {
    form.set([['draft', pointer, undefined]], pointer);
  }
}

/** "1,250" may be two numbers: both are offered. */
function choiceOfTwo(form, pointer, units, unit) {
  const found = parsed(draftOf(form, pointer) ?? '', units ?? []);
  if (!found?.readings) { return nothing; }
  return html`<p class="hint" role="status">${form.text('screen.whichNumber')} ${found.readings.map(value => html`<button type="button" class="small" @click=${() => form.set([
    [`/readings${pointer}`, unit ? { value, unit: found.unit ?? unit } : value], ['draft', pointer, undefined]], pointer)}>${numeral(value, form.language)}</button> `)}</p>`;
}

function outside(form, pointer, rules, value, unit) {
  const range = rangeIn(rules.range, unit, form.convert);
  if (value === undefined || isWithin(value, range)) { return nothing; }
  return html`<p class="hint warn" role="status">${rangeText(form, range)}</p>`;
}

export function rangeText(form, range) {
  const show = value => numeral(Number(value.toPrecision(3)), form.language);
  const low = range.minimum ?? range.exclusiveMinimum;
  return range.maximum === undefined ? form.text('screen.atLeast', show(low)) : form.text('screen.between', show(low ?? 0), show(range.maximum));
}

/** 90 gpg is hardly ever true, 90 mg/L often. */
function rare(form, pointer, name, quantity) {
  if (name !== 'hardness' || !quantity || quantity.unit === 'mg/L' || form.convert(quantity.value, quantity.unit, 'mg/L') < RARE_MG_PER_L) { return nothing; }
  return html`<p class="hint warn" role="status">${form.text('screen.veryRare', `${numeral(quantity.value, form.language)}\u00a0${symbol(quantity.unit)}`)}
    <button type="button" class="small" @click=${() => form.set([[`/readings${pointer}`, { ...quantity, unit: 'mg/L' }]], pointer)}>${form.text('screen.itIs', 'mg/L')}</button></p>`;
}

/** "I do not know", beside the field. */
function unknown(form, pointer, spec, given) {
  if (!spec.skip || given !== undefined) { return nothing; }
  return html`<label class="tick"><input type="checkbox" .checked=${form.case.guesses[pointer] !== undefined}
    @change=${event => form.set([['guess', pointer, event.target.checked ? 'unknown' : undefined], ['draft', pointer, undefined]], pointer)}> ${form.text('screen.doNotKnow')}</label>`;
}

/** What is taken instead of what is not known. */
function instead(form, pointer, spec, rules, given) {
  if (!spec.skip || given !== undefined || form.case.guesses[pointer] === undefined) { return nothing; }
  const usual = rules?.usual === undefined ? null : rules.usual.unit ? `${numeral(rules.usual.value, form.language)}\u00a0${symbol(rules.usual.unit)}` : String(rules.usual);
  return html`<p class="hint">${usual ? form.text('screen.assumedValue', usual) : form.text('screen.assumedUsual')}</p>`;
}

/** Only the class of the hardness may be known: the middle of it is taken, and marked. */
const CLASSES = { soft: 1, medium: 2, hard: 3.2 };
function classOnly(form, pointer, spec) {
  if (spec.unknown !== 'hardnessClass') { return nothing; }
  const guessed = form.case.guesses[pointer];
  const taken = at(form.case.readings, pointer);
  const take = name => form.set(name === '' ? [['guess', pointer, undefined], [`/readings${pointer}`, undefined]] : [[`/readings${pointer}`,
    { value: Number(form.convert(CLASSES[name], 'mmol/L', form.country.hardness).toPrecision(2)), unit: form.country.hardness }], ['guess', pointer, name], ['draft', pointer, undefined]], pointer);
  return html`<details class="fold" ?open=${guessed !== undefined}><summary>${form.text('screen.noTest')}</summary>
    <p class="hint">${form.text('screen.askUtility')}</p>
    <label for="${idOf(pointer)}-class">${form.text('screen.utilityClass')}</label>
    <select id="${idOf(pointer)}-class" @change=${event => take(event.target.value)}>
      <option value="" ?selected=${guessed === undefined}>${form.text('screen.notGiven')}</option>
      ${Object.keys(CLASSES).map(name => html`<option value=${name} ?selected=${guessed === name}>${form.text(`screen.class.${name}`)}</option>`)}</select>
    ${guessed && taken ? html`<p class="hint">${form.text('screen.assumedMiddle', `${numeral(taken.value, form.language)}\u00a0${symbol(taken.unit)}`)}</p>` : nothing}</details>`;
}

/** A quantity: a number, and its unit to choose. */
function quantity(form, name, pointer, rules, spec, optional, labelled = true) {
  const given = at(form.case.readings, pointer);
  const money = rules.units.length === 0;
  const unit = given?.unit ?? draftOf(form, `${pointer}#unit`) ?? usualUnit(pointer, rules.units, form.country);
  const text = draftOf(form, pointer) ?? written(given?.value, form.language);
  const units = money ? [unit] : [unit, ...rules.units.filter(each => each !== unit)].sort((one, other) => rules.units.indexOf(one) - rules.units.indexOf(other));
  const how = { units: rules.units, unit, extra: spec.with, pair: spec.pair };
  const rename = next => {
    const value = given && Number(form.convert(given.value, given.unit, next).toPrecision(4));
    form.set([...(given ? [[`/readings${pointer}`, { value, unit: next }]] : []), ['draft', `${pointer}#unit`, given ? undefined : next], ['draft', pointer, undefined]], `${pointer}#unit`);
    if (given) { form.notice(form.text('screen.converted', `${written(given.value, form.language)}\u00a0${symbol(given.unit)}`, `${written(value, form.language)}\u00a0${symbol(next)}`)); }
  };
  const per = spec.per && at(form.case.readings, spec.per);
  return html`<div class="field">
    ${labelled ? label(form, name, pointer, money ? unit : null, optional) : nothing}
    ${hintOf(form, hintId(name), pointer)}
    <div class="with-unit"><input id=${idOf(pointer)} .value=${text} inputmode="decimal" autocomplete="off" size=${spec.short ? 4 : 7} data-pointer=${pointer}
      aria-label=${labelled ? nothing : labelOf(form, name)} aria-describedby=${described(form, pointer, form.text(hintId(name)) !== hintId(name))}
      aria-invalid=${form.problems.has(pointer) ? 'true' : nothing}
      @input=${event => typed(form, pointer, event.target.value, how)} @change=${() => settled(form, pointer, how)}>
      ${money ? html`<span class="suffix" aria-hidden="true">${unit}${per ? ` / ${numeral(per.value, form.language)} ${symbol(per.unit)}` : ''}</span>`
    : rules.units.length === 1 ? html`<span class="suffix" aria-hidden="true">${symbol(unit)}</span>`
      : html`<select aria-label=${form.text('screen.unitOf', labelOf(form, name))} @change=${event => rename(event.target.value)}>
        ${units.map(each => html`<option value=${each} ?selected=${each === unit}>${symbol(each)}</option>`)}</select>`}
      ${name === 'hardness' && given && given.unit !== form.country.beside ? html`<span class="of beside">= ${shown({ value: form.convert(given.value, given.unit, form.country.beside), unit: form.country.beside }, 'hardness', { ...form.country, hardness: form.country.beside }, form.language, form.convert)}</span>` : nothing}${unknown(form, pointer, spec, given)}</div>
    ${choiceOfTwo(form, pointer, rules.units, unit)}${outside(form, pointer, rules, given?.value, unit)}${rare(form, pointer, name, given)}
    ${below(form, pointer)}${instead(form, pointer, spec, rules, given)}${classOnly(form, pointer, spec)}</div>`;
}

const UNIT_WORDS = { s: 'seconds', days: 'days', minutes: 'minutes', years: 'years', '%': 'percent', 'percent a year': 'percentYear', 'days a year': 'daysYear' };
const unitWord = (form, unit) => (unit === null || unit === undefined ? null : UNIT_WORDS[unit] ? form.text(`screen.unit.${UNIT_WORDS[unit]}`) : unit);

/** A number without a unit to choose. */
function number(form, name, pointer, rules, spec, optional) {
  const given = at(form.case.readings, pointer);
  const text = draftOf(form, pointer) ?? written(given, form.language);
  const whole = rules.kind === 'whole';
  const step = by => form.set([[`/readings${pointer}`, Math.min(rules.range?.maximum ?? Infinity, Math.max(rules.range?.minimum ?? 0, (given ?? (by > 0 ? (rules.range?.minimum ?? 1) - 1 : 1)) + by))], ['draft', pointer, undefined]], pointer);
  return html`<div class="field">
    ${label(form, name, pointer, unitWord(form, rules.unit), optional)}
    ${hintOf(form, hintId(name), pointer)}
    <div class="with-unit"><input id=${idOf(pointer)} .value=${text} inputmode=${whole ? 'numeric' : 'decimal'} autocomplete="off" size="4" data-pointer=${pointer}
      aria-describedby=${described(form, pointer, form.text(hintId(name)) !== hintId(name))} aria-invalid=${form.problems.has(pointer) ? 'true' : nothing}
      @input=${event => typed(form, pointer, event.target.value, { whole })} @change=${() => settled(form, pointer)}>
      ${whole ? html`<button type="button" class="step" aria-label=${form.text('screen.less', labelOf(form, name))} ?disabled=${given === undefined || given <= (rules.range?.minimum ?? 0)} @click=${() => step(-1)}>−</button>
        <button type="button" class="step" aria-label=${form.text('screen.moreOf', labelOf(form, name))} ?disabled=${given >= rules.range?.maximum} @click=${() => step(1)}>+</button>` : nothing}${unknown(form, pointer, spec, given)}</div>
    ${choiceOfTwo(form, pointer)}${outside(form, pointer, rules, given, null)}${below(form, pointer)}${instead(form, pointer, spec, rules, given)}</div>`;
}

/** One of a list; a flag is yes, no or not known. */
function choice(form, name, pointer, rules, optional) {
  const flag = rules.kind === 'flag';
  const options = flag ? ['true', 'false'] : rules.options.filter(each => each !== 'unknown');
  const given = at(form.case.readings, pointer);
  const set = value => form.set([[`/readings${pointer}`, value === '' ? undefined : flag ? value === 'true' : value]], pointer);
  const words = each => form.text(flag ? `screen.flag.${each}` : optionId(name, each));
  return html`<div class="field">${label(form, name, pointer, null, optional)}${hintOf(form, hintId(name), pointer)}
    <select id=${idOf(pointer)} data-pointer=${pointer} aria-describedby=${described(form, pointer, form.text(hintId(name)) !== hintId(name))} @change=${event => set(event.target.value)}>
      <option value="" ?selected=${given === undefined}>${!optional && FIELDS[name]?.visit && !flag ? form.text('visit.choose') : rules.usual === undefined || rules.usual === 'unknown' || flag ? form.text('screen.doNotKnow') : form.text('screen.assumed', words(rules.usual))}</option>
      ${options.map(each => html`<option value=${each} ?selected=${String(given) === each}>${words(each)}</option>`)}</select>${below(form, pointer)}
    ${given === false && PRICED[pointer] && QUESTIONS[form.case.question].visit ? fieldView('priceToMeet', form, `/site/prices/${PRICED[pointer]}`) : nothing}</div>`;
}

/** A date. */
function date(form, name, pointer, optional) {
  return html`<div class="field">${label(form, name, pointer, null, optional)}${hintOf(form, hintId(name), pointer)}
    <input type="date" id=${idOf(pointer)} data-pointer=${pointer} aria-describedby=${described(form, pointer, form.text(hintId(name)) !== hintId(name))} .value=${at(form.case.readings, pointer) ?? ''}
      @change=${event => form.set([[`/readings${pointer}`, event.target.value || undefined]], pointer)}>${below(form, pointer)}</div>`;
}

/** The numbers of a text, with blanks, semicolons or commas between them; undefined where one of them is none. */
export function numbersOf(text) {
  const parts = text.split(/[;\s]+|,\s+|,$/).filter(Boolean).flatMap(part => ((part.match(/,/g) ?? []).length > 1 || /^\d+,\d{3}$/.test(part) ? part.split(',') : [part]));
  const found = parts.map(part => parsed(part)?.value);
  return parts.length && found.every(each => each !== undefined) ? found : undefined;
}

/** Several readings of one kind, as seconds of one fill after another. */
function numbers(form, name, pointer, optional) {
  const rules = fieldOf(form.contract, `${pointer}/0`, form.case.readings);
  const inWords = some => (some ?? []).map(each => written(each, form.language)).join('; ');
  const text = draftOf(form, pointer) ?? inWords(at(form.case.readings, pointer));
  const type = next => { const found = numbersOf(next); form.set([[`/readings${pointer}`, found], ['draft', pointer, next === inWords(found) ? undefined : next]], pointer); };
  return html`<div class="field">${label(form, name, pointer, unitWord(form, rules.unit), optional)}${hintOf(form, hintId(name), pointer)}
    <input id=${idOf(pointer)} .value=${text} inputmode="text" autocomplete="off" size="16" data-pointer=${pointer} aria-describedby=${described(form, pointer, form.text(hintId(name)) !== hintId(name))}
      aria-invalid=${form.problems.has(pointer) ? 'true' : nothing} @input=${event => type(event.target.value)}
      @change=${() => settled(form, pointer)}>${below(form, pointer)}</div>`;
}

/** Any of a list. */
function choices(form, name, pointer, rules) {
  const given = at(form.case.readings, pointer) ?? [];
  const options = ['toilets', 'kitchenCold', 'allCold'];
  return html`<fieldset class="field"><legend>${labelOf(form, name)} <span class="of">(${form.text('screen.optional')})</span></legend>
    ${options.map(each => html`<label class="tick"><input type="checkbox" .checked=${given.includes(each)} @change=${event => {
      const next = event.target.checked ? [...given, each] : given.filter(other => other !== each);
      form.set([[`/readings${pointer}`, next.length ? next : undefined]], pointer);
    }}> ${form.text(`screen.option.${each}`)}</label>`)}</fieldset>`;
}

/** The size of the softener, by what can be read: the tank, the plate or the resin. */
const SIZES = { tank: ['/softener/tankDiameter', '/softener/tankHeight'], plate: ['/softener/nameplateCapacity'], resin: ['/softener/resinVolume'] };
function size(form, name, pointer) {
  const holds = each => SIZES[each].some(part => at(form.case.readings, part) !== undefined);
  const given = ['resin', 'plate', 'tank'].find(holds);
  const chosen = draftOf(form, '/softener#size') ?? given ?? 'tank';
  const choose = each => form.set([['draft', '/softener#size', each], ...Object.entries(SIZES).filter(([other]) => other !== each)
    .flatMap(([, parts]) => parts).flatMap(part => [[`/readings${part}`, undefined], ['draft', part, undefined]])], '/softener#size');
  const one = (part, word) => quantity(form, word, part, fieldOf(form.contract, part, form.case.readings), { short: true, pair: SIZES.tank.includes(part) ? SIZES.tank : undefined }, false);
  return html`<fieldset class="field" data-pointer=${pointer} tabindex="-1"><legend>${labelOf(form, name)}</legend>
    <select id="size-by" aria-label=${form.text('screen.readBy')} @change=${event => choose(event.target.value)}>${Object.keys(SIZES).map(each => html`<option value=${each} ?selected=${each === chosen}>${form.text(`screen.sizeBy.${each}`)}</option>`)}</select>
    ${chosen === 'tank' ? nothing : one(SIZES[chosen][0], chosen === 'plate' ? 'nameplateCapacity' : 'resinVolume')}
    ${chosen === 'tank' || holds('tank') ? html`<div class="pair">${one(SIZES.tank[0], 'tankDiameter')}${one(SIZES.tank[1], 'tankHeight')}</div>` : nothing}
    ${below(form, pointer)}</fieldset>`;
}

/** What starts a regeneration, as the controller shows it. */
const CONTROLS = ['everyDays', 'weekdays', 'meteredDelayed', 'meteredImmediate', 'twinAlternating'];
function control(form, name, pointer) {
  const given = form.case.readings.softener?.control;
  const assumed = given ? undefined : QUESTIONS[form.case.question].assumed?.[pointer]?.kind;
  const chosen = draftOf(form, `${pointer}#kind`) ?? (!given ? assumed ?? 'everyDays' : given.kind !== 'clock' ? given.kind : given.weekdays ? 'weekdays' : 'everyDays');
  const shared = given ? Object.fromEntries(Object.entries(given).filter(([each]) => ['dayOverride', 'regenerationHour'].includes(each))) : {};
  const choose = each => form.set([['draft', `${pointer}#kind`, each], ['draft', `${pointer}/everyDays`, undefined],
    [`/readings${pointer}`, CONTROLS.indexOf(each) < 2 ? undefined : { kind: each, ...shared }]], `${pointer}#kind`);
  const part = (field, word = field) => fieldView(word, form, `${pointer}/${field}`, true);
  const clock = { ...form, set: (changes, what) => form.set(changes.flatMap(change => (change[0] === `/readings${pointer}/everyDays`
    ? [change[1] === undefined ? [`/readings${pointer}`, undefined] : [`/readings${pointer}`, { kind: 'clock', ...shared, everyDays: change[1] }]] : [change])), what) };
  const metered = chosen.startsWith('metered') || chosen === 'twinAlternating';
  return html`<fieldset class="field" data-pointer=${pointer} tabindex="-1"><legend>${labelOf(form, name)}</legend>
    <select aria-label=${labelOf(form, name)} @change=${event => choose(event.target.value)}>${CONTROLS.map(each => html`<option value=${each} ?selected=${each === chosen}>${form.text(`screen.starts.${each}`)}</option>`)}</select>
    ${chosen === 'everyDays' ? number(clock, 'everyDays', `${pointer}/everyDays`, { ...fieldOf(form.contract, `${pointer}/everyDays`, { softener: { control: { kind: 'clock' } } }) }, {}, false) : nothing}
    ${chosen === 'weekdays' ? weekdays(form, pointer, given, shared) : nothing}
    ${assumed === chosen ? html`<p class="hint">${form.text('screen.assumedUsual')}</p>` : nothing}
    ${metered && given ? html`${part('hardnessSetting')}${part('capacitySetting')}${chosen === 'meteredDelayed' ? reserve(form, `${pointer}/reserve`) : nothing}` : nothing}
    ${given ? html`<details class="fold"><summary>${form.text('screen.otherSettings')}</summary>${part('dayOverride')}${part('regenerationHour')}</details>` : nothing}
    ${below(form, pointer)}</fieldset>`;
}

function weekdays(form, pointer, given, shared) {
  const on = given?.weekdays ?? [];
  const toggle = (day, checked) => {
    const next = WEEKDAYS.filter(each => (each === day ? checked : on.includes(each)));
    form.set([['draft', `${pointer}#kind`, 'weekdays'], [`/readings${pointer}`, next.length ? { kind: 'clock', ...shared, weekdays: next } : undefined]], `${pointer}/weekdays/${day}`);
  };
  return html`<div class="week" role="group" aria-label=${form.text('screen.starts.weekdays')}>${WEEKDAYS.map((day, index) => html`<label class="day"><input type="checkbox" .checked=${on.includes(day)}
    aria-label=${weekday(index, form.language, 'long')} @change=${event => toggle(day, event.target.checked)}><span aria-hidden="true">${weekday(index, form.language, 'short')}</span></label>`)}</div>`;
}

/** A reserve in water; the other rules of the contract are the service's to choose. */
function reserve(form, pointer) {
  const rules = fieldOf(form.contract, `${pointer}/volume`, { softener: { control: { kind: 'meteredDelayed', reserve: { rule: 'volume' } } } });
  const volume = { ...form, set: (changes, what) => form.set(changes.map(change => (change[0] === `/readings${pointer}/volume`
    ? [`/readings${pointer}`, change[1] === undefined ? undefined : { rule: 'volume', volume: change[1] }] : change)), what) };
  return quantity(volume, 'reserve', `${pointer}/volume`, rules, {}, true);
}

/** How the house is lived in, and what is known of its use of water. */
const USES = ['people', 'absences', 'holidayHome', 'stays', 'dailyUse', 'weeklyUse'];
const PATTERNS = { absences: 'usualAbsences', holidayHome: 'holidayHome', stays: 'stays' };
function use(form, name) {
  const house = form.case.readings.household ?? {};
  const pattern = Object.keys(PATTERNS).find(each => PATTERNS[each] === house.occupancy?.pattern);
  const chosen = draftOf(form, '/household#use') ?? (house.weeklyUse ? 'weeklyUse' : house.dailyUse ? 'dailyUse' : pattern ?? 'people');
  const choose = each => form.set([['draft', '/household#use', each], ['/readings/household/dailyUse', undefined], ['/readings/household/weeklyUse', undefined],
    ['draft', '/household/dailyUse', undefined], ['draft', '/household#week', undefined], ['/readings/household/occupancy', PATTERNS[each] && each !== 'stays' ? { pattern: PATTERNS[each] } : undefined]], '/household#use');
  return html`<div class="field">${label(form, name, '/household/use', null, true)}
    <select id=${idOf('/household/use')} data-pointer="/household/use" @change=${event => choose(event.target.value)}>${USES.map(each => html`<option value=${each} ?selected=${each === chosen}>${form.text(`screen.useBy.${each}`)}</option>`)}</select>
    ${hintOf(form, `screen.useHint.${chosen}`, '/household/use')}
    ${chosen === 'dailyUse' ? fieldView('dailyUse', form, '/household/dailyUse', false) : nothing}
    ${chosen === 'weeklyUse' ? week(form) : nothing}
    ${chosen === 'stays' ? stays(form) : nothing}
    ${below(form, '/household/use')}</div>`;
}

function week(form) {
  const given = form.case.readings.household?.weeklyUse;
  const unit = given?.[0]?.unit ?? form.country.water;
  // A day that was left empty is not known: all seven are needed, and only who types 0 means none.
  const days = WEEKDAYS.map((none, day) => draftOf(form, '/household#week')?.[day] ?? given?.[day]?.value ?? null);
  const set = (index, text) => {
    const found = parsed(text, ['L', 'gal', 'm3']);
    const next = days.map((each, day) => (day === index ? found?.value ?? null : each));
    const whole = next.every(each => each !== null);
    form.set([['draft', '/household#use', 'weeklyUse'], ['draft', '/household#week', whole ? undefined : next],
      ['/readings/household/weeklyUse', whole ? next.map(value => ({ value, unit })) : undefined],
      ['draft', `/household/weeklyUse/${index}`, found?.value !== undefined && written(found.value, form.language) === text ? undefined : text]], `/household/weeklyUse/${index}`);
  };
  const open = days.filter(each => each === null).length;
  return html`<div class="days-use" role="group" aria-label=${form.text('screen.useBy.weeklyUse')}>${WEEKDAYS.map((day, index) => html`<label><span>${weekday(index, form.language, 'short')}</span>
    <input inputmode="decimal" autocomplete="off" size="5" aria-label=${`${weekday(index, form.language, 'long')}, ${symbol(unit)}`} .value=${draftOf(form, `/household/weeklyUse/${index}`) ?? written(days[index] ?? undefined, form.language)}
      @input=${event => set(index, event.target.value)}></label>`)}<span class="suffix">${symbol(unit)}</span></div>
    ${open > 0 && open < 7 ? html`<p class="hint" role="status">${form.text('screen.weekdaysOpen', open)}</p>` : nothing}`;
}

function stays(form) {
  const spells = form.case.readings.household?.occupancy?.spells ?? [];
  const rows = draftOf(form, '/household#spells') ?? (spells.length ? spells : [{ from: '', to: '' }]);
  const set = next => {
    const whole = next.filter(each => each.from && each.to && each.from <= each.to);
    form.set([['draft', '/household#use', 'stays'], ['draft', '/household#spells', next], ['/readings/household/occupancy', whole.length ? { pattern: 'stays', spells: whole } : undefined]], '/household#spells');
  };
  const cell = (row, index, end) => html`<label>${form.text(`screen.spell.${end}`)} <input type="date" .value=${row[end]} @change=${event => set(rows.map((each, other) => (other === index ? { ...each, [end]: event.target.value } : each)))}></label>`;
  return html`${rows.map((row, index) => html`<div class="row">${cell(row, index, 'from')}${cell(row, index, 'to')}</div>`)}
    <button type="button" class="small" @click=${() => set([...rows, { from: '', to: '' }])}>${form.text('screen.addStay')}</button>`;
}

/** Softeners to choose from: three are a task. */
function candidates(form) {
  const given = form.case.readings.candidates ?? [];
  const rows = given.length ? given : [];
  const set = (next, what) => form.set([['/readings/candidates', next.length ? next : undefined]], what);
  const add = () => set([...rows, { sku: String.fromCharCode(65 + rows.length % 26) }], '/candidates#add');
  const one = index => html`<fieldset class="good"><legend>${form.text('screen.softenerNumber', String(index + 1))}</legend>
    <div class="field"><label for="sku-${index}">${form.text('screen.field.sku')}</label>
      <input id="sku-${index}" maxlength="64" .value=${rows[index].sku ?? ''} @input=${event => set(rows.map((each, other) => (other === index ? { ...each, sku: event.target.value } : each)), `/candidates/${index}/sku`)}>
      ${below(form, `/candidates/${index}/sku`)}</div>
    <div class="pair">${fieldView('resinVolume', form, `/candidates/${index}/resinVolume`, false)}${fieldView('price', form, `/candidates/${index}/price`, true)}</div>
    <details class="fold"><summary>${form.text('screen.orPlate')}</summary>${fieldView('nameplateCapacity', form, `/candidates/${index}/nameplateCapacity`, false)}</details>
    <button type="button" class="small" @click=${() => set(rows.filter((each, other) => other !== index), `/candidates/${index}#gone`)}>${form.text('screen.remove')}</button></fieldset>`;
  return html`<div class="field" data-pointer="/candidates"><p class="hint">${form.text('screen.hint.candidates')}</p>${rows.map((row, index) => one(index))}
    <button type="button" @click=${add}>${form.text('screen.addSoftener')}</button></div>`;
}

/** Readings of the meter, pasted. */
function days(form, name, pointer) {
  const given = form.case.readings.days ?? {};
  const pasted = { text: '', unit: form.country.water, kind: 'volume', monthFirst: form.country.code === 'US', ...given };
  const read = daysOf(pasted);
  const set = more => form.set([['/readings/days', { ...pasted, ...more }.text === '' && !more.kind && !more.unit ? undefined : { ...pasted, ...more }]], `${pointer}/${Object.keys(more)[0]}`);
  const units = ['L', 'm3', 'gal', 'gal-imperial', 'ft3'];
  return html`<div class="field"><label for=${idOf(pointer)}>${labelOf(form, name)}</label>
    <p class="hint" id="${idOf(pointer)}-hint">${form.text('screen.hint.days')}</p>
    <textarea id=${idOf(pointer)} data-pointer=${pointer} rows="3" spellcheck="false" aria-describedby=${described(form, pointer, true)} .value=${pasted.text} @input=${event => set({ text: event.target.value })}></textarea>
    <div class="named"><span><label for="days-kind">${form.text('screen.daysKind')}</label><select id="days-kind" @change=${event => set({ kind: event.target.value })}>
      ${['volume', 'register'].map(each => html`<option value=${each} ?selected=${each === pasted.kind}>${form.text(`screen.daysKind.${each}`)}</option>`)}</select></span>
    <span><label for="days-unit">${form.text('screen.unit')}</label><select id="days-unit" @change=${event => set({ unit: event.target.value })}>
      ${units.map(each => html`<option value=${each} ?selected=${each === pasted.unit}>${symbol(each)}</option>`)}</select></span></div>
    ${read ? html`<p class="hint ${read.faults.length ? 'warn' : ''}" role="status">${read.faults.length ? form.text('screen.badLines', String(read.faults.length), read.faults[0].text)
    : read.twice?.length ? form.text('screen.twiceDate', read.twice[0]) : html`${form.text('screen.daysRead', read.rows.length)} ${read.unknown ? form.text('screen.daysUnknown', read.unknown) : nothing}`}</p>` : nothing}
    ${below(form, pointer)}</div>`;
}

/** Fields with a form of their own; modules that come later add theirs. */
export const COMPOSITES = { size, control, use, candidates, days };

/** A field by its name; nothing where the operation's contract has no such property. */
export function fieldView(name, form, pointer = FIELDS[name]?.pointer, optional = true) {
  const spec = FIELDS[name] ?? {};
  if (spec.after && at(form.case.readings, spec.after) === undefined) { return nothing; }
  if (spec.unless && at(form.case.readings, FIELDS[spec.unless].pointer) !== undefined) { return fieldView(spec.unless, form, undefined, optional); }
  if (COMPOSITES[spec.as]) { return COMPOSITES[spec.as](form, name, pointer); }
  if (spec.as === 'numbers') { return numbers(form, name, pointer, false); }
  const rules = fieldOf(form.contracts[spec.of] ?? form.contract, spec.rules ?? pointer, form.case.readings);
  if (!rules) { return nothing; }
  if (rules.kind === 'date') { return date(form, name, pointer, optional); }
  if (spec.as === 'choices') { return choices(form, name, pointer, rules); }
  if (rules.kind === 'quantity') { return quantity(form, name, pointer, rules, spec, optional); }
  if (rules.kind === 'number' || rules.kind === 'whole') { return number(form, name, pointer, rules, spec, optional); }
  return choice(form, name, pointer, rules, optional);
}
