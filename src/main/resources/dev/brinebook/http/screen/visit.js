// SPDX-License-Identifier: Apache-2.0
/** What was measured at a softener, what contradicts what, which measurement comes next, and whether it can be converted. */
import { shows } from './answers.js';
import { figuresOf } from './figures.js';
import { fold } from './fold.js';
import { html, nothing } from './lit-html.js';
import { inFull, measured, onward } from './visit-parts.js';

/** Quantities in the order in which they are told, by group: the most wanted first. */
const QUANTITIES = { salt: ['combined/mean', 'byRefill', 'byDraw', 'byBooks'], resin: ['combined/mean', 'byGeometry', 'byNameplate', 'byRun', 'capacity', 'capacityLeft', 'freeboard'],
  flows: ['drain', 'refill', 'brineDraw', 'service'], brine: ['degrees', 'saltPerWater', 'saltPerBrine'], bed: ['rawWater', 'meterCounts', 'lift', 'pressureLoss', 'cleanBedLoss'] };

const at = (part, path) => path.split('/').reduce((inner, name) => inner?.[name], part);

/** Every measured quantity of a group, each with its interval. */
function group(answer, name, ctx) {
  const lines = QUANTITIES[name].map(path => [path, at(answer[name], path)]).filter(([path, value]) => value && !(path === 'combined/mean' && QUANTITIES[name].filter(other => answer[name][other]).length < 2));
  const { combined } = answer[name];
  return lines.length ? html`<h3>${ctx.text(`visit.measured.${name}`)}</h3><dl class="measures intervals">${lines.map(([path, value]) => html`<div><dt>${ctx.text(`visit.quantity.${name}.${path.replace('/mean', '')}`)}
    ${combined?.leftOut === path ? html`<span class="quiet">${ctx.text('visit.leftOut')}</span>` : nothing}</dt><dd>${measured(value, `/${name}/${path}`, ctx)}</dd></div>`)}</dl>
    ${name === 'brine' ? html`<p class="quiet">${ctx.text('visit.brineWait', inFull(answer.brine.waitMinutes, ctx))}</p>` : nothing}` : nothing;
}

/** What contradicts what, the most important first. */
const findings = (answer, ctx) => html`<section aria-labelledby="result-misfit"><h2 id="result-misfit" tabindex="-1">${ctx.text('visit.contradicts')}</h2>
  ${answer.findings.length ? html`<ol class="findings">${answer.findings.map(each => html`<li class="warning">${each.message}</li>`)}</ol>` : html`<p>${ctx.text('visit.nothingContradicts')}</p>`}</section>`;

/** The cheapest measurement that tells most, and those after it. */
function next({ nextMeasurements: list }, ctx) {
  const line = each => html`<li><p>${each.message}</p><p class="quiet">${ctx.text('visit.takesMinutes', inFull(each.minutes, ctx))} ${ctx.text('visit.narrows', ctx.text(`visit.settles.${each.settles}`), inFull(each.uncertaintyNowPercent, ctx, 2), inFull(each.uncertaintyAfterPercent, ctx, 2))}</p></li>`;
  return html`<section aria-labelledby="result-tests"><h2 id="result-tests" tabindex="-1">${ctx.text('visit.measureNext')}</h2>
    ${list.length ? html`<ol class="findings">${list.slice(0, 2).map(line)}</ol>` : html`<p>${ctx.text('visit.measuredEnough')}</p>`}
    ${list.length > 2 ? html`<details><summary>${ctx.text('visit.moreMeasurements', list.length - 2)}</summary><ol class="findings">${list.slice(2).map(line)}</ol></details>` : nothing}</section>`;
}

const STATES = { met: 'visit.met', notMet: 'visit.notMet', checkOnSite: 'visit.checkOnSite' };

/** Signs and conditions: what is not met and what is open first, what is met folded. */
function installation(answer, prefix, ctx, alone) {
  const { checks, signs, unpriced } = answer;
  const figures = figuresOf(prefix ? { installation: answer } : answer, ctx);
  const bad = signs.filter(each => each.seen === 'no');
  const open = signs.filter(each => each.seen === 'notChecked');
  const line = each => html`<li class=${each.state === 'notMet' ? 'warning' : ''}><p><strong>${ctx.text(STATES[each.state])}</strong> ${each.wanted}</p>${each.state === 'notMet' ? html`<p>${each.whenNotMet}</p>` : nothing}
    ${each.price ? html`<p class="price">${figures(`${prefix}/checks/${checks.indexOf(each)}/price`, 'price')}</p>` : nothing}</li>`;
  const by = state => checks.filter(each => each.state === state);
  const done = [...signs.filter(each => each.seen === 'yes').map(each => html`<li>${each.meaning}</li>`), ...by('met').map(each => html`<li>${each.wanted}</li>`)];
  const content = html`${alone ? nothing : html`<p class="lead">${answer.summary}</p>`}
    ${bad.length || by('notMet').length ? html`<ul class="findings bare">${bad.map(each => html`<li class="stop"><p><strong>${each.question}</strong> ${ctx.text('screen.flag.false')}</p><p>${each.meaning}</p></li>`)}${by('notMet').map(line)}</ul>` : nothing}
    ${unpriced.length ? html`<p class="quiet">${ctx.text('visit.unpriced', unpriced.length)}</p>` : nothing}
    ${open.length || by('checkOnSite').length ? html`<details ?open=${alone}><summary>${ctx.text('visit.open', open.length + by('checkOnSite').length)}</summary><ul>${open.map(each => html`<li>${each.question} <span class="quiet">${each.meaning}</span></li>`)}${by('checkOnSite').map(each => html`<li>${each.wanted}</li>`)}</ul></details>` : nothing}
    ${done.length ? html`<details><summary>${ctx.text('visit.inOrder', done.length)}</summary><ul>${done}</ul></details>` : nothing}`;
  return alone ? html`<section class="part">${content}</section>` : fold('result-installation', ctx.text('visit.installation'), content);
}

shows('reduceFieldMeasurements', (kept, ctx) => {
  const { answer } = kept;
  const parts = { ...(answer.softener ? { softener: answer.softener } : {}), ...(answer.site ? { site: answer.site } : {}) };
  return { sentence: answer.summary, action: null, cautionsFirst: true, why: [],
    does: answer.softener && onward(parts, 'visit.useSoftener', ctx),
    steps: html`${findings(answer, ctx)}${next(answer, ctx)}${fold('result-quantities', ctx.text('visit.quantities'), html`<p class="quiet">${ctx.text('visit.intervalNote')}</p>
      ${Object.keys(QUANTITIES).filter(name => answer[name]).map(name => group(answer, name, ctx))}`)}
      ${answer.installation ? installation(answer.installation, '/installation', ctx, false) : html`<p class="quiet">${ctx.text('visit.installationOpen')}</p>`}` };
});

shows('checkInstallation', (kept, ctx) => ({ sentence: kept.answer.summary, action: null, cautionsFirst: true, why: [],  steps: installation(kept.answer, '', ctx, true) }));

/** Nothing of this module is drawn by name. */
export const visitLoaded = true;
