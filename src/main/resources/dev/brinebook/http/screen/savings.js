// SPDX-License-Identifier: Apache-2.0
/** What a change saved: the verdict, the saving with its interval, what explains the difference, and how long to wait. */
import './afterwards.js';
import { shows } from './answers.js';
import { gainInWords, words } from './figures.js';
import { html, nothing } from './lit-html.js';
import { numeral } from './rounding.js';
import { inFull } from './visit-parts.js';

const whole = (percent, ctx) => `${numeral(Math.round(percent), ctx.language)}\u00a0%`;
/** A share of the salt that is saved, or used more. */
const share = (percent, ctx) => ctx.text(percent < 0 ? 'visit.morePercent' : 'visit.lessPercent', whole(Math.abs(percent), ctx));
const size = ({ value, unit }) => ({ value: Math.abs(value), unit });
/** An amount that is saved, or that is used more. */
const gained = (amount, kind, ctx) => (kind === 'money' ? gainInWords(amount, ctx) : amount.value < 0 ? ctx.text('visit.usedMore', words(size(amount), kind, ctx)) : words(amount, kind, ctx));

const SAVED = [['salt', 'saltYear'], ['water', 'waterYear'], ['money', 'money']];

/** What is saved in a year, each with its interval of nine in ten. */
const saved = (answer, ctx) => html`<section aria-labelledby="result-saved"><h2 id="result-saved" tabindex="-1">${ctx.text('visit.savedAYear')}</h2><dl class="measures intervals">${SAVED.filter(([name]) => answer[name]).map(([name, kind]) => html`<div>
  <dt>${ctx.text(`visit.saved.${name}`)}</dt><dd><data value=${answer[name].savedPerYear.value} data-from=${`/${name}/savedPerYear`} data-kind=${kind}>${gained(answer[name].savedPerYear, kind, ctx)}</data>
  <span class="quiet">${ctx.text('visit.fromTo', gained(answer[name].savedLow, kind, ctx), gained(answer[name].savedHigh, kind, ctx))}</span></dd></div>`)}</dl>
  <p class="quiet">${ctx.text('visit.intervalOfNine')}</p>
  <p>${ctx.text('visit.saltBeforeAfter', words(answer.salt.beforePerYear, 'saltYear', ctx), words(answer.salt.afterPerYear, 'saltYear', ctx))}</p></section>`;

/** Why the two periods differ, the largest part first; what is nothing is left out. */
function causes({ causes: all }, ctx) {
  const parts = all.map((each, index) => [each, index]).filter(([each]) => Math.abs(each.saltPerYear.value) >= 1 || Math.abs(each.moneyPerYear?.value ?? 0) >= 1)
    .sort(([one], [other]) => Math.abs(other.saltPerYear.value) - Math.abs(one.saltPerYear.value));
  const money = each => each.moneyPerYear ? html`<span class="quiet">${ctx.text(each.moneyPerYear.value < 0 ? 'visit.costsAYear' : 'visit.worthAYear', words(size(each.moneyPerYear), 'money', ctx))}</span>` : nothing;
  return parts.length ? html`<section aria-labelledby="result-causes"><h2 id="result-causes" tabindex="-1">${ctx.text('visit.whyDifferent')}</h2><ul class="findings bare">${parts.map(([each, index]) => html`<li><p><strong>${ctx.text(`visit.factor.${each.cause}.${(each.cause === 'price' ? each.moneyPerYear ?? each.saltPerYear : each.saltPerYear).value < 0 ? 'worse' : 'better'}`)}</strong></p>
    <p>${each.cause === 'price' ? nothing : html`<data value=${each.saltPerYear.value} data-from=${`/causes/${index}/saltPerYear`} data-kind="saltYear">${ctx.text(each.saltPerYear.value < 0 ? 'visit.moreSalt' : 'visit.lessSalt', words(size(each.saltPerYear), 'saltYear', ctx))}</data>`} ${money(each)}</p></li>`)}</ul></section>` : nothing;
}

const findings = ({ findings: all }, ctx) => all.length ? html`<section aria-labelledby="result-misfit"><h2 id="result-misfit" tabindex="-1">${ctx.text('visit.mindThis')}</h2><ul class="findings bare">${all.map(each => html`<li class="warning">${each.message}</li>`)}</ul></section>` : nothing;

const weeks = (count, ctx) => count === undefined ? ctx.text('visit.neverByWaiting') : ctx.text('visit.weekCount', count);

/** How long readings take until they say something, beforehand. */
const waiting = ({ waiting: rows }, ctx) => html`<section aria-labelledby="result-wait"><h2 id="result-wait" tabindex="-1">${ctx.text('visit.howLong')}</h2>
  <table><caption>${ctx.text('visit.howLongCaption')}</caption><thead><tr><th scope="col">${ctx.text('visit.ifItSaves')}</th><th scope="col">${ctx.text('visit.evenChance')}</th><th scope="col">${ctx.text('visit.likelyChance')}</th></tr></thead>
  <tbody>${rows.map(each => html`<tr><th scope="row">${whole(each.savingPercent, ctx)}</th><td>${weeks(each.evenWeeks, ctx)}</td><td>${weeks(each.likelyWeeks, ctx)}</td></tr>`)}</tbody></table></section>`;

/** When to read again, where it is too early. */
const again = (answer, ctx) => answer.moreWeeks ? html`<p class="lead">${ctx.text('visit.readAgain', answer.moreWeeks, ctx.date(answer.readAgainOn))}</p>` : nothing;

const promise = ({ promise: seen }, ctx) => seen ? html`<section class="part"><h2>${ctx.text('visit.promiseSeen')}</h2><p>${ctx.text('visit.promisedAndSeen', whole(seen.promisedPercent, ctx), share(seen.seenPercent, ctx))}</p>
  ${seen.factor > 0 ? html`<p class="quiet">${ctx.text('visit.nextPromises', inFull(seen.factor, ctx, 2))}</p>` : nothing}</section>` : nothing;

/** The verdict in a word; without a promise the question is whether anything is saved. */
const verdict = ({ verdict: name, promise: seen }) => `visit.verdict.${name}${!seen && name.endsWith('onfirmed') ? 'Alone' : ''}`;

/** The interval of the share: below nothing it is salt used more. */
function interval({ lowPercent, highPercent }, ctx) {
  const [low, high] = [lowPercent, highPercent].map(each => whole(Math.abs(each), ctx));
  return highPercent < 0 ? ctx.text('visit.percentMoreToMore', high, low) : lowPercent < 0 ? ctx.text('visit.percentFromMore', low, high) : ctx.text('visit.fromTo', low, high);
}

shows('verifySavings', (kept, ctx) => {
  const { answer } = kept;
  if (!answer.salt) { return { sentence: answer.summary, action: null, cautionsFirst: true, why: [], steps: html`${answer.waiting ? waiting(answer, ctx) : nothing}${findings(answer, ctx)}` }; }
  const { percent } = answer.salt;
  return { sentence: `${ctx.text(verdict(answer))}\n${answer.summary}`, action: null, cautionsFirst: true, why: [], does: again(answer, ctx),
    figure: share(percent, ctx), range: interval(answer.salt, ctx),
    steps: html`${findings(answer, ctx)}${saved(answer, ctx)}${causes(answer, ctx)}${promise(answer, ctx)}` };
});

/** Nothing of this module is drawn by name. */
export const savingsLoaded = true;
