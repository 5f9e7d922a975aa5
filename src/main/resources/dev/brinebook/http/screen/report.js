// SPDX-License-Identifier: Apache-2.0
/** A water report: its rows as a form, and what the service says of it. */
import { shows } from './answers.js';
import { at } from './case.js';
import { fieldOf } from './contract.js';
import { COMPOSITES, fieldView, idOf } from './fields.js';
import { ofTwenty, words } from './figures.js';
import { html, nothing } from './lit-html.js';
import { FORMS_OF, resultsOf } from './paste-table.js';
import { numeral } from './rounding.js';
import { parsed, symbol } from './units.js';
import { inFull, onward } from './visit-parts.js';

// ---- the form ----

const MASS = ['mg/L', 'ug/L', 'ppm', 'ppb', 'mmol/L', 'meq/L'];
const DEGREES = ['gpg', 'gpg-imperial', 'dH', 'fH'];
/** Units that laboratories print beside a parameter; all else is a mass. */
const UNITS_OF = { hardness: [...DEGREES, ...MASS], alkalinity: [...MASS, ...DEGREES], alkalinityToPh8: [...MASS, ...DEGREES], calcium: [...MASS, ...DEGREES], magnesium: [...MASS, ...DEGREES], ph: ['pH'],
  conductivity: ['uS/cm', 'umho/cm', 'mS/cm', 'dS/m', 'mS/m'], turbidity: ['NTU', 'FNU'], colour: ['PtCo'], coliform: ['/100mL'], eColi: ['/100mL'], temperature: ['C', 'F'] };
/** What a household is asked for first; the others follow by name. */
const FIRST = ['hardness', 'calcium', 'magnesium', 'iron', 'manganese', 'ph', 'alkalinity', 'sodium', 'chloride', 'sulfate', 'nitrate', 'conductivity', 'dissolvedSolids', 'coliform'];

/** The rules of a property of a result. */
const ruleOf = (form, name) => fieldOf(form.contract, `/results/0/${name}`);
const unitsOf = (form, parameter) => { const known = ruleOf(form, 'unit').options; return (UNITS_OF[parameter] ?? MASS).filter(each => known.includes(each)); };
const unitAt = (form, parameter) => { const units = unitsOf(form, parameter); return units.includes(form.country.hardness) && parameter === 'hardness' ? form.country.hardness : units.includes('mg/L') ? 'mg/L' : units[0]; };

const nameOf = (parameter, text) => text(`waterParameter.${parameter}`);
const titled = name => (/^.[A-Z]/.test(name) ? name : name.charAt(0).toLocaleUpperCase() + name.slice(1));
/** What a row is called where it is spoken of. */
export const resultName = (row, index, text) => (row?.parameter ? titled(nameOf(row.parameter, text)) : text('visit.resultNumber', index + 1));

/** Row that is open; one that was begun and is not whole stays open by itself. */
let editing = 0;

const isWhole = row => row?.parameter && (row.value !== undefined || ['notDetected', 'present', 'absent', 'invalid'].includes(row.qualifier));

function lineOf(row, form) {
  if (!isWhole(row)) { return ''; }
  const before = { below: '< ', above: '> ' }[row.qualifier] ?? '';
  return row.value === undefined || ['notDetected', 'present', 'absent', 'invalid'].includes(row.qualifier) ? form.text(`visit.option.${row.qualifier}`)
    : `${before}${numeral(row.value, form.language)}\u00a0${row.unit === 'pH' || row.parameter === 'ph' ? '' : symbol(row.unit ?? unitAt(form, row.parameter))}`.trim();
}

/** The number as typed, with a sign before it where one was typed too. */
function typedValue(form, index, text) {
  const pointer = `/results/${index}/value`;
  const [, before, digits] = /^\s*([<>])?\s*(.*)$/.exec(text);
  const row = form.case.readings.results?.[index] ?? {};
  const found = parsed(digits, unitsOf(form, row.parameter));
  const value = found?.value;
  const unit = row.unit ?? unitAt(form, row.parameter);
  form.set([[`/readings${pointer}`, value], ...(value === undefined ? [] : [[`/readings/results/${index}/unit`, found.unit ?? unit]]),
    ...(before ? [[`/readings/results/${index}/qualifier`, before === '<' ? 'below' : 'above']] : []), ['draft', pointer, text === '' ? undefined : text]], pointer);
}

function select(form, { id, name, options, given, empty, words, set }) {
  return html`<div class="field"><label for=${id}>${name}</label><select id=${id} @change=${event => set(event.target.value || undefined)}>
    ${empty === undefined ? nothing : html`<option value="" ?selected=${given === undefined}>${empty}</option>`}
    ${options.map(each => html`<option value=${each} ?selected=${each === given}>${words(each)}</option>`)}</select></div>`;
}

const isKnown = option => option !== 'unknown';

/** What few results have beside number and unit. */
function rest(form, row, index) {
  const { text } = form;
  const pointer = name => `/results/${index}/${name}`;
  const forms = FORMS_OF[row.parameter] ?? [];
  const choose = (name, options, empty) => select(form, { id: idOf(pointer(name)), name: text(`visit.field.${name}`), options, given: row[name], empty, words: each => text(`visit.option.${each}`),
    set: value => form.set([[`/readings${pointer(name)}`, value]], pointer(name)) });
  const asSample = text('visit.asSample');
  return html`<details class="fold"><summary>${text('visit.more')}</summary>
    ${forms.length > 1 ? choose('form', forms, text('visit.formUnsaid')) : nothing}
    ${choose('method', ruleOf(form, 'method').options.filter(isKnown), asSample)}${choose('tap', ruleOf(form, 'tap').options.filter(isKnown), asSample)}
    ${['firstDraw', 'onSite'].map(name => html`<label class="tick"><input type="checkbox" .checked=${row[name] === true} @change=${event => form.set([[`/readings${pointer(name)}`, event.target.checked || undefined]], pointer(name))}> ${text(`visit.field.${name}`)}</label>`)}
    ${['resolution', 'uncertainty', 'hoursHeld'].map(name => fieldView(name, form, pointer(name)))}${fieldView('sampledOn', form, pointer('sampledOn'))}</details>`;
}

function rowView(form, row, index) {
  const { text } = form;
  const pointer = name => `/results/${index}/${name}`;
  const label = resultName(row, index, text);
  const listed = ruleOf(form, 'parameter').options;
  const others = listed.filter(each => !FIRST.includes(each)).sort((one, other) => nameOf(one, text).localeCompare(nameOf(other, text), form.language));
  const draft = form.case.drafts[pointer('value')];
  const shown = draft ?? (row.value === undefined ? '' : numeral(row.value, form.language).replaceAll('\u00a0', ''));
  const problem = form.problems.get(pointer('value')) ?? form.problems.get(pointer('parameter')) ?? form.problems.get(`/results/${index}`);
  const units = row.parameter ? unitsOf(form, row.parameter) : MASS;
  const remove = () => { editing = -1; form.set([[`/readings/results/${index}`, undefined], ...Object.keys(form.case.drafts).filter(each => each.startsWith('/results/')).map(each => ['draft', each, undefined])], '/results#gone'); };
  return html`<details class="good result-row" .open=${editing === index || !isWhole(row) || problem !== undefined} @toggle=${event => { if (event.target === event.currentTarget && event.target.open) { editing = index; } }}>
    <summary><span>${label}</span><span class="aside">${lineOf(row, form)}</span></summary>
    ${select(form, { id: idOf(pointer('parameter')), name: text('visit.field.parameter'), options: [...FIRST.filter(each => listed.includes(each)), ...others], given: row.parameter, empty: text('visit.choose'), words: each => titled(nameOf(each, text)),
    set: value => { editing = index; form.set([[`/readings${pointer('parameter')}`, value], [`/readings${pointer('unit')}`, row.unit && value && unitsOf(form, value).includes(row.unit) ? row.unit : undefined], [`/readings${pointer('form')}`, undefined]], pointer('parameter')); } })}
    <div class="field"><label for=${idOf(pointer('value'))}>${text('visit.field.value')}</label><div class="with-unit">
      <select class="short" aria-label=${text('visit.field.qualifier')} @change=${event => form.set([[`/readings${pointer('qualifier')}`, event.target.value === 'equal' ? undefined : event.target.value]], pointer('qualifier'))}>
        ${ruleOf(form, 'qualifier').options.map(each => html`<option value=${each} ?selected=${each === (row.qualifier ?? 'equal')}>${text(`visit.option.${each}`)}</option>`)}</select>
      <input id=${idOf(pointer('value'))} inputmode="decimal" autocomplete="off" size="7" data-pointer=${pointer('value')} .value=${shown} aria-invalid=${problem ? 'true' : nothing} aria-describedby=${problem ? `${idOf(pointer('value'))}-fault` : nothing}
        @input=${event => { editing = index; typedValue(form, index, event.target.value); }} @change=${() => { if (row.value !== undefined) { form.set([['draft', pointer('value'), undefined]], pointer('value')); } }}>
      ${row.parameter === 'ph' ? nothing : html`<select class="short" aria-label=${text('screen.unitOf', label)} @change=${event => form.set([[`/readings${pointer('unit')}`, event.target.value]], pointer('unit'))}>
        ${units.map(each => html`<option value=${each} ?selected=${each === (row.unit ?? (row.parameter ? unitAt(form, row.parameter) : 'mg/L'))}>${symbol(each)}</option>`)}</select>`}</div>
      ${problem ? html`<p class="fault" id="${idOf(pointer('value'))}-fault"><span aria-hidden="true">▲ </span>${problem}</p>` : nothing}</div>
    ${rest(form, row, index)}
    <button type="button" class="small" aria-label=${text('visit.removeNamed', label)} @click=${remove}>${text('screen.remove')}</button></details>`;
}

/** Takes what was pasted; lines that are not understood stay in the box. */
function pasted(form, text) {
  const words = ruleOf(form, 'parameter').options.map(each => [each, nameOf(each, form.text)]);
  const { results, left } = resultsOf(text, words, form.language);
  if (!results.length) { form.set([['draft', '/results#paste', text || undefined]], '/results#paste'); return; }
  const whole = results.map(row => ({ ...row, ...(row.unit && !unitsOf(form, row.parameter).includes(row.unit) ? { unit: undefined } : {}) }));
  const rows = [...(form.case.readings.results ?? []).filter(isWhole), ...whole.map(({ unit, ...row }) => ({ ...row, unit: unit ?? unitAt(form, row.parameter) }))];
  editing = -1;
  form.set([['/readings/results', rows], ...Object.keys(form.case.drafts).filter(each => each.startsWith('/results/')).map(each => ['draft', each, undefined]), ['draft', '/results#paste', left.join('\n') || undefined]], '/results#paste');
  form.notice(form.text('visit.pasted', results.length));
}

COMPOSITES.results = function results(form, name, pointer) {
  const { text } = form;
  const rows = at(form.case.readings, pointer) ?? [];
  const shown = rows.length ? rows : [{}];
  const draft = form.case.drafts['/results#paste'] ?? '';
  const add = () => { editing = rows.length; form.set([[`/readings/results/${rows.length}/qualifier`, 'equal']], '/results#add'); setTimeout(() => document.getElementById(idOf(`/results/${rows.length}/parameter`))?.focus(), 50); };
  return html`<div class="field" data-pointer=${pointer} tabindex="-1" id=${idOf(pointer)}>
    <details class="fold" ?open=${draft !== ''}><summary>${text('visit.paste')}</summary><label for="paste-table">${text('visit.pasteTable')}</label><p class="hint" id="paste-hint">${text('visit.pasteHint')}</p>
      <textarea id="paste-table" rows="3" spellcheck="false" aria-describedby="paste-hint" .value=${draft} @input=${event => pasted(form, event.target.value)}></textarea>
      ${draft ? html`<p class="hint warn" role="status">${text('visit.notUnderstood', draft.split('\n').length)}</p>` : nothing}</details>
    ${shown.map((row, index) => rowView(form, row ?? {}, index))}
    ${form.problems.get(pointer) ? html`<p class="fault"><span aria-hidden="true">▲ </span>${form.problems.get(pointer)}</p>` : nothing}
    <button type="button" @click=${add} ?disabled=${rows.length === 0}>${text('visit.addResult')}</button></div>`;
};

// ---- the answer ----

const named = (parameter, ctx) => titled(nameOf(parameter, ctx.text));
const amount = (value, unit, ctx) => `${inFull(value, ctx)}${unit === 'pH' ? '' : `\u00a0${symbol(unit)}`}`;
const figure = (pointer, value, unit, ctx) => html`<data value=${value} data-from=${pointer} data-kind="three">${amount(value, unit, ctx)}</data>`;

/** What cannot be right, or fits badly, each with what would explain it. */
function misfits(answer, ctx) {
  const { balance, contradictions, impossible, notes, ratios, sample, slips } = answer;
  const open = balance.verdicts.find(each => each.criterion === 'practice' && each.verdict !== 'passes');
  const lines = [...impossible.map(each => html`<strong>${named(each.parameter, ctx)}</strong> ${each.message}`), ...contradictions.map(each => each.message),
    ...(open && balance.differencePercent !== undefined ? [html`${ctx.text(balance.differencePercent > 0 ? 'visit.moreCations' : 'visit.moreAnions', inFull(Math.abs(balance.differencePercent), ctx), inFull(balance.uncertaintyPercent, ctx))}
      ${balance.closing.length ? html`<br>${ctx.text('visit.wouldClose', balance.closing.map(each => `${named(each.ion, ctx)} ${inFull(each.concentration.value, ctx)}\u00a0${symbol(each.concentration.unit)}`).join(', '))}` : nothing}`] : []),
    ...(['likelySoftened', 'blendedOrLeaking'].includes(sample.verdict) ? [ctx.text(`visit.sample.${sample.verdict}`)] : []),
    ...ratios.filter(each => !each.holds).map(each => ctx.text('visit.ratioOff', ctx.text(`visit.ratio.${each.check}`), inFull(each.ratio, ctx), inFull(each.low, ctx), inFull(each.high, ctx))),
    ...notes.map(each => html`${each.message} <span class="quiet">${each.about.map(one => named(one, ctx)).join(', ')}</span>`)];
  return html`<section aria-labelledby="result-misfit"><h2 id="result-misfit" tabindex="-1">${ctx.text('visit.misfits')}</h2>
    ${lines.length ? html`<ul>${lines.map(each => html`<li>${each}</li>`)}</ul>` : html`<p>${ctx.text('visit.nothingMisfits')}</p>`}
    ${slips.length ? html`<h3>${ctx.text('visit.slips')}</h3><ul>${slips.map(each => html`<li>${each.message} <span class="quiet">${ctx.text('visit.slipThen', inFull(each.differencePercent, ctx))}</span></li>`)}</ul>` : nothing}
    ${balance.missing.length ? html`<p class="quiet">${ctx.text('visit.ionsMissing', balance.missing.map(each => named(each, ctx)).join(', '))}</p>` : nothing}</section>`;
}

const OPEN_TESTS = 2;
const HOURS_A_DAY = 24;
const within = (hours, ctx) => hours < 1 ? '' : hours <= 3 * HOURS_A_DAY ? ctx.text('visit.withinHours', hours) : ctx.text('visit.withinDays', Math.floor(hours / HOURS_A_DAY));

/** Tests to order, with why and how. */
function nextTests({ nextTests: tests }, ctx) {
  const line = each => html`<li><h3>${named(each.parameter, ctx)}${each.tested ? html` <span class="quiet">${ctx.text('visit.again')}</span>` : nothing}</h3>
    <p>${ctx.text('visit.changes', ofTwenty(each.changesPercent))}</p><p class="quiet">${each.sampling} ${within(each.hours, ctx)}</p></li>`;
  return html`<section aria-labelledby="result-tests"><h2 id="result-tests" tabindex="-1">${ctx.text('visit.orderNext')}</h2>
    ${tests.length ? html`<ol class="findings">${tests.slice(0, OPEN_TESTS).map(line)}</ol>` : html`<p>${ctx.text('visit.noTest')}</p>`}
    ${tests.length > OPEN_TESTS ? html`<details><summary>${ctx.text('visit.moreTests', tests.length - OPEN_TESTS)}</summary><ol class="findings">${tests.slice(OPEN_TESTS).map(line)}</ol></details>` : nothing}</section>`;
}

const limit = ({ low, high, unit }, ctx) => low === undefined ? ctx.text('visit.atMost', amount(high, unit, ctx)) : high === undefined ? ctx.text('screen.atLeast', amount(low, unit, ctx))
  : ctx.text('screen.between', inFull(low, ctx), amount(high, unit, ctx));

/** Public limits and those of resin: what is not kept first, the others folded. */
function limits({ guidelines, resin }, ctx) {
  const lines = [...guidelines.map((each, index) => ({ ...each, at: `/guidelines/${index}/value`, by: `${ctx.text(`visit.authority.${each.authority}`)}, ${ctx.text(`visit.protects.${each.kind}`)}` })),
    ...resin.map((each, index) => ({ ...each, at: `/resin/${index}/value`, by: ctx.text('visit.forResin') }))];
  const list = some => html`<ul>${some.map(each => html`<li><strong>${named(each.parameter, ctx)}</strong> ${figure(each.at, each.value, each.unit, ctx)}, ${ctx.text('visit.limit', limit(each, ctx))} <span class="quiet">${each.by}</span></li>`)}</ul>`;
  const missed = lines.filter(each => !each.holds);
  const kept = lines.filter(each => each.holds);
  return lines.length ? html`<section aria-labelledby="result-limits"><h2 id="result-limits" tabindex="-1">${ctx.text('visit.limits')}</h2>
    ${missed.length ? list(missed) : html`<p>${ctx.text('visit.limitsKept')}</p>`}
    ${kept.length ? html`<details><summary>${ctx.text('visit.moreKept', kept.length)}</summary>${list(kept)}</details>` : nothing}</section>` : nothing;
}

/** Every result in one unit. */
const results = ({ results: list }, ctx) => html`<details><summary>${ctx.text('visit.inOneUnit', list.length)}</summary><dl class="measures wide-names">${list.map((each, index) => html`<div><dt>${named(each.parameter, ctx)}${each.tap === 'unknown' ? '' : `, ${ctx.text(`visit.option.${each.tap}`)}`}</dt>
  <dd>${each.limit !== undefined && each.value === 0 ? html`&lt; ${figure(`/results/${index}/limit`, each.limit, each.unit, ctx)}` : html`${figure(`/results/${index}/value`, each.value, each.unit, ctx)} <span class="quiet">± ${inFull(each.uncertainty, ctx)}</span>`}
    ${each.formAssumed ? html`<span class="quiet">${ctx.text('visit.formAssumed', ctx.text(`visit.option.${each.form}`))}</span>` : nothing}</dd></div>`)}</dl></details>`;

/** What the water does to lime in each state. */
const lime = ({ saturation }, ctx) => saturation.length ? html`<details><summary>${ctx.text('visit.lime')}</summary><p class="quiet">${ctx.text('visit.limeNote')}</p>
  <table><caption>${ctx.text('visit.limeCaption')}</caption><thead><tr><th scope="col">${ctx.text('visit.waterIs')}</th><th scope="col">pH</th><th scope="col">${ctx.text('visit.index')}</th></tr></thead>
  <tbody>${saturation.map((each, index) => html`<tr><th scope="row">${ctx.text(`visit.state.${each.state}`)}, ${inFull(each.temperature.value, ctx)}\u00a0${symbol(each.temperature.unit)}</th><td>${inFull(each.ph, ctx)}</td>
    <td>${each.calciteIndex === undefined ? nothing : html`<data value=${each.calciteIndex} data-from=${`/saturation/${index}/calciteIndex`} data-kind="three">${inFull(each.calciteIndex, ctx)}</data>`}</td></tr>`)}</tbody></table></details>` : nothing;

const repeats = ({ repeats: list }, ctx) => list.length ? html`<details><summary>${ctx.text('visit.repeats')}</summary><ul>${list.map(each => html`<li>${named(each.parameter, ctx)}: ${ctx.text('visit.everyYears', each.years)}${each.dueOn ? ` ${ctx.text('visit.dueOn', ctx.date(each.dueOn))}` : ''}</li>`)}</ul></details>` : nothing;

/** The water in the unit and with the digits of a reader. */
function toTake(water, ctx) {
  const inUnit = (quantity, digits) => quantity && { value: Number(ctx.convert(quantity.value, quantity.unit, ctx.country.hardness).toPrecision(digits)), unit: ctx.country.hardness };
  return { water: { ...water, hardness: inUnit(water.hardness, 4), ...(water.hardnessUncertainty ? { hardnessUncertainty: inUnit(water.hardnessUncertainty, 3) } : {}) } };
}

shows('readWaterReport', (kept, ctx) => {
  const { answer } = kept;
  const { hardness, water } = answer;
  // The service speaks in the degrees of its own countries: a reader of another one gets theirs beside.
  const beside = hardness && !answer.summary.includes(symbol(ctx.country.hardness));
  return { sentence: answer.summary, action: null, cautionsFirst: true, why: [], ...(beside ? { figure: ctx.text('result.hardnessIs', words(hardness.hardness, 'hardness', ctx)),
    range: ctx.text('visit.fromTo', ...[hardness.low, hardness.high].map(each => words(each, 'hardness', ctx))) } : {}),
    does: water && onward(toTake(water, ctx), 'visit.useWater', ctx),
    steps: html`${misfits(answer, ctx)}${nextTests(answer, ctx)}${limits(answer, ctx)}<section class="part">${results(answer, ctx)}${lime(answer, ctx)}${repeats(answer, ctx)}</section>` };
});
