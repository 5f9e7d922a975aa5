// SPDX-License-Identifier: Apache-2.0
/** What the two answers of a visit share: measured numbers with their intervals, and the way to the other questions. */
import { html } from './lit-html.js';
import { numeral } from './rounding.js';
import { symbol } from './units.js';

const DIGITS = 3;

/** A number with three digits, as the service says it in sentences. */
export const inFull = (value, ctx, digits = DIGITS) => numeral(Number(value.toPrecision(digits)), ctx.language);

/** A measured value with its unit and its interval, each with its place in the answer. */
export function measured(value, pointer, ctx) {
  const unit = value.unit === 'degrees' ? '°' : value.unit === '%' ? '\u00a0%' : `\u00a0${symbol(value.unit)}`;
  const data = (name, words) => html`<data value=${value[name]} data-from=${`${pointer}/${name}`} data-kind="three">${words}</data>`;
  return html`${data('value', `${inFull(value.value, ctx)}${unit}`)} <span class="quiet">${ctx.text('visit.fromToWords')} ${data('low', inFull(value.low, ctx))}&nbsp;${ctx.text('visit.to')} ${data('high', inFull(value.high, ctx))}</span>`;
}

/** Other questions of the case that such parts answer better. */
const NEXT = ['worth', 'hard', 'setup', 'fits'];

/** One press takes parts of an answer into the case and goes to another of its questions. */
export const onward = (parts, id, ctx) => html`<div class="onward"><p>${ctx.text(id)}</p><p class="row">${NEXT.filter(each => each !== 'fits' || !parts.softener).map((each, index) => html`<button type="button" class=${index ? '' : 'primary'}
  @click=${() => ctx.take(parts, each)}>${ctx.text(`screen.question.${each}`)}</button>`)}</p></div>`;
