// SPDX-License-Identifier: Apache-2.0
/** Everything right of the readings, or below them: the verdict first, then the steps, then why, then what would change it. */
import { answerOf } from './answers.js';
import { firstSentence } from './figures.js';
import { html, nothing } from './lit-html.js';
import { cautions, guesses, reasons, sheets, unfit, wouldChange } from './more.js';

/** What is shown while nothing was answered yet: of about the size of what comes. */
function empty(calculation, ctx) {
  if (calculation.state === 'working') {
    return html`<section class="result empty" aria-busy="true"><p class="quiet">${ctx.text('result.calculating')}</p>
      <div class="lines" aria-hidden="true"><span></span><span></span><span></span></div>
      <p class="late">${ctx.text('result.stillCalculating')}</p></section>`;
  }
  return html`<section class="result empty"><p class="quiet">${stateInWords(calculation, ctx)}</p></section>`;
}

const STATES = { working: 'result.calculating', offline: 'result.waitsForConnection', failed: 'result.correctFirst' };

/** What the answer waits for. */
function stateInWords(calculation, ctx, short = false) {
  const missing = (calculation.missing ?? []).map(pointer => ctx.name(pointer)).filter(Boolean);
  const id = STATES[calculation.state];
  if (id || !missing.length) { return ctx.text(id ?? 'result.comesHere'); }
  return short && missing.length > 2 ? ctx.text('result.waitingForMore', missing[0], missing.length - 1) : ctx.text('result.waitingFor', missing.join(', '));
}

/** The verdict: one sentence, one number with its range, what does not fit, one action. */
function verdict(view, fit, stale, ctx) {
  const [first, rest] = firstSentence(view.sentence, ctx.language);
  const action = view.action !== undefined ? view.action : view.settings ? ['result-settings', 'result.showSettings'] : null;
  return html`<div class="verdict">
    <h2>${first}</h2>
    ${view.figure ? html`<p class="headline"><strong>${view.figure}</strong>${view.range ? html` <span class="range">${view.range}</span>` : nothing}</p>` : nothing}
    ${rest ? html`<p>${rest}</p>` : nothing}
    ${view.sure ? html`<p class="quiet">${view.sure}</p>` : nothing}
    ${unfit(fit, ctx)}
    ${stale ? nothing : view.does ?? nothing}
    ${stale || !action ? nothing : html`<p><button type="button" class="primary" @click=${goTo(action[0])}>${ctx.text(action[1])}</button></p>`}
  </div>`;
}

const goTo = id => () => {
  const place = document.getElementById(id);
  const folded = place?.closest('details');
  if (folded) { folded.open = true; }
  place?.scrollIntoView({ behavior: matchMedia('(prefers-reduced-motion: reduce)').matches ? 'auto' : 'smooth' });
  place?.focus({ preventScroll: true });
};

const shownAtOnce = (view, kept, stale, ctx) => html`
  ${verdict(view, kept.answer.fit, stale, ctx)}
  ${view.cautionsFirst ? cautions(kept.answer.cautions ?? [], ctx) : nothing}
  ${view.steps ?? nothing}
  ${view.settings ?? nothing}
  ${view.after ?? nothing}
  ${view.cautionsFirst ? nothing : cautions(kept.answer.cautions ?? [], ctx)}
  ${view.change === false ? nothing : wouldChange(kept.answer.verdict?.wouldChange ?? [], ctx)}
  ${view.charts ?? nothing}
  ${reasons(kept, view.why ?? [], ctx)}
  ${stale ? nothing : guesses(kept, ctx)}
  ${stale ? nothing : sheets(kept, view.sheets, ctx)}`;

/**
 * The result of a case.
 * @param open the case, with what was answered last
 * @param calculation whether that is still the answer to its readings
 */
export function resultView(open, calculation, ctx) {
  return html`<p class="spoken" role="status">${calculation.state === 'fresh' && open.answer ? firstSentence(answerOf(open.answer, ctx).sentence, ctx.language)[0] : ''}</p>
    ${resultOf(open, calculation, ctx)}`;
}

function resultOf(open, calculation, ctx) {
  const kept = open.answer;
  if (!kept) { return empty(calculation, ctx); }
  const stale = calculation.state !== 'fresh';
  const view = answerOf(kept, ctx);
  if (!stale) { return html`<section class="result" aria-label=${ctx.text('result.answer')}>${shownAtOnce(view, kept, false, ctx)}</section>`; }
  const before = html`<p class="before">${ctx.text('result.answerBefore')}</p>`;
  if (['failed', 'waiting'].includes(calculation.state)) { // which no answer can follow before something is typed
    return html`<section class="result stale" aria-label=${ctx.text('result.answerBefore')}><p>${stateInWords(calculation, ctx)}</p>
      <details class="kept"><summary>${ctx.text('result.answerBefore')}: ${firstSentence(view.sentence, ctx.language)[0]}</summary>${shownAtOnce(view, kept, true, ctx)}</details>
      <p class="unprinted">${ctx.text('result.notPrinted')}</p></section>`;
  }
  return html`<section class="result stale" aria-label=${ctx.text('result.answerBefore')} aria-busy=${calculation.state === 'working'}>${before}
    ${calculation.state === 'offline' ? html`<p>${ctx.text('result.waitsForConnection')}</p>` : nothing}
    ${calculation.state === 'working' ? html`<p class="late">${ctx.text('result.stillCalculating')}</p>` : nothing}
    <div class="content">${shownAtOnce(view, kept, true, ctx)}</div>
    <p class="unprinted">${ctx.text('result.notPrinted')}</p></section>`;
}

/** The verdict in two lines, which stays in sight while readings are typed. */
export function verdictBar(open, calculation, ctx) {
  const kept = open.answer;
  const view = kept ? answerOf(kept, ctx) : null;
  const sentence = view ? firstSentence(view.sentence, ctx.language)[0] : '';
  const lines = calculation.state === 'fresh' ? html`<p class="bar-sentence">${sentence}</p>
    ${view.figure ? html`<p class="bar-figure"><strong>${view.figure}</strong> ${view.range ?? nothing}</p>` : nothing}`
    : html`<p class="bar-state">${stateInWords(calculation, ctx, true)}</p>
    ${sentence ? html`<p class="bar-old">${ctx.text('result.answerBefore')}: ${sentence}</p>` : nothing}`;
  return html`<div role="status">${lines}</div>`;
}
