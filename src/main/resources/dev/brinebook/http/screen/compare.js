// SPDX-License-Identifier: Apache-2.0
/** Two cases side by side: the answers first, then the readings that differ; what is the same in both is folded. */
import { answerOf } from './answers.js';
import { pairs } from './charts.js';
import { counted, dateInWords, firstSentence, words } from './figures.js';
import { html, nothing } from './lit-html.js';

/** Figures that answers share, where each operation has them, with the kind they are shown as. */
const FIGURES = [['hardDays', 'hardDays', 'result.hardDays'], ['salt', 'saltYear', 'result.salt'], ['water', 'waterYear', 'result.water'], ['costPerYear', 'money', 'result.costPerYear']];

/** The figures of a year with what is advised. */
function yearOf(kept) {
  const verdict = kept?.answer.verdict;
  const rung = verdict?.ladder?.find(each => each.step === verdict.step && each.improvement === verdict.improvement && each.goods === verdict.goods);
  return rung ?? {};
}

/** Every reading of a request by its pointer; a quantity is one reading. */
export function readingsOf(part, pointer = '') {
  if (part === null || typeof part !== 'object' || Array.isArray(part)) { return [[pointer, part]]; }
  if (typeof part.value === 'number' && typeof part.unit === 'string') { return [[pointer, part]]; }
  return Object.entries(part).flatMap(([name, value]) => readingsOf(value, `${pointer}/${name}`));
}

const same = (a, b) => JSON.stringify(a) === JSON.stringify(b);

/** Rows of two cases: what has no field on the screen has no row. */
export function rowsOf(cases, name) {
  const [first, second] = cases.map(each => new Map(readingsOf(each.readings)));
  return [...new Set([...first.keys(), ...second.keys()])].filter(pointer => name(pointer))
    .map(pointer => ({ pointer, values: [first.get(pointer), second.get(pointer)], equal: same(first.get(pointer), second.get(pointer)) }));
}

/** What a case is called; one without a name by the day it was seen. */
const nameOf = (each, ctx) => each.name || ctx.text('screen.unnamed', dateInWords(each.seen, ctx));

/** A reading in words. */
function reading(value, ctx) {
  if (Array.isArray(value)) { return value.map(each => reading(each, ctx)).join(', '); }
  if (value !== null && typeof value === 'object') { return typeof value.value === 'number' ? ctx.value(value) : Object.values(value).map(each => reading(each, ctx)).join(', '); }
  return ctx.value(typeof value === 'number' ? { value } : { code: String(value) });
}

const cell = (value, ctx) => value === undefined ? html`<span class="quiet">${ctx.text('result.notGiven')}</span>` : reading(value, ctx);

const table = (rows, cases, caption, ctx) => html`<table class="compared"><caption>${caption}</caption>
  <thead><tr><th scope="col">${ctx.text('result.reading')}</th>${cases.map(each => html`<th scope="col">${nameOf(each, ctx)}</th>`)}</tr></thead>
  <tbody>${rows.map(({ pointer, values }) => html`<tr><th scope="row">${ctx.name(pointer)}</th>${values.map((value, i) => html`<td data-case=${nameOf(cases[i], ctx)}>${cell(value, ctx)}</td>`)}</tr>`)}</tbody></table>`;

/** What a case was answered, with a word where that is not for its readings. */
function verdictOf(each, ctx) {
  if (!each.answer) { return html`<p class="quiet">${ctx.text('result.noAnswerYet')}</p>`; }
  const view = answerOf(each.answer, ctx);
  const [first, rest] = firstSentence(view.sentence, ctx.language);
  const old = each.answer.stale;
  return html`<div class=${old ? 'stale' : ''}>${old ? html`<p class="before">${ctx.text('result.oldAnswer')}</p>` : nothing}
    <p class="sentence">${first}</p>${view.figure ? html`<p class="headline"><strong>${view.figure}</strong> ${view.range ?? nothing}</p>` : nothing}${rest ? html`<p class="quiet">${rest}</p>` : nothing}</div>`;
}

/** Figures of both, each on its own scale. */
function chart(cases, ctx) {
  const years = cases.map(each => yearOf(each.answer));
  const units = (a, b) => a?.unit === b?.unit;
  const rows = FIGURES.filter(([name]) => years.every(year => year[name] !== undefined) && units(...years.map(year => year[name])))
    .map(([name, kind, id]) => ({ name: ctx.text(id), values: years.map(year => year[name].value ?? counted(year[name], kind)), words: years.map(year => words(year[name], kind, ctx)) }));
  return rows.length ? pairs({ title: ctx.text('result.comparedTitle', rows[0].name, ...rows[0].words), names: cases.map(each => nameOf(each, ctx)), rows }, ctx) : nothing;
}

/** The two cases. */
export function compareView(first, second, ctx) {
  const cases = [first, second];
  const rows = rowsOf(cases, ctx.name);
  const [differing, equal] = [rows.filter(row => !row.equal), rows.filter(row => row.equal)];
  return html`<section class="result comparison" aria-label=${ctx.text('result.sideBySide')}>
    <h2>${ctx.text('result.answers')}</h2>
    <div class="two">${cases.map(each => html`<section aria-label=${nameOf(each, ctx)}><h3>${nameOf(each, ctx)}</h3>${verdictOf(each, ctx)}</section>`)}</div>
    ${cases.some(each => each.answer?.stale) ? nothing : chart(cases, ctx)}
    ${differing.length ? table(differing, cases, ctx.text('result.differs'), ctx) : nothing}
    ${equal.length ? html`<details><summary>${ctx.text('result.same', equal.length)}</summary>${table(equal, cases, ctx.text('result.same', equal.length), ctx)}</details>` : nothing}</section>`;
}
