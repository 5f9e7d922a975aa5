// SPDX-License-Identifier: Apache-2.0
/** The steps from the smallest to the largest change, each against the cheapest step below it that keeps the water soft. */
import { bars } from './charts.js';
import { counted, figuresOf, ofTwenty, words } from './figures.js';
import { isNarrow } from './fold.js';
import { html, nothing } from './lit-html.js';

/** Whether a step is the one that the verdict advises. */
export const isAdvised = (rung, verdict) => rung.step === verdict.step && rung.improvement === verdict.improvement && rung.goods === verdict.goods;

/** The gain that a verdict speaks of: over the step below or over the softener as it is, whichever is less. */
export const leastGain = rung => [rung?.overBelow, rung?.overAsFound].filter(Boolean).sort((a, b) => a.savedPerYear.value - b.savedPerYear.value)[0];

/** The gains on a card: over the step below; on that of the verdict first what its sentence speaks of, where that is over what is there. */
const gains = (rung, advised) => rung.step === 'noneNeeded' || !rung.overBelow ? []
  : [...new Set([...advised ? [leastGain(rung)] : [], rung.overBelow])];

/** What a step is called. */
export const nameOf = (step, verdict) => verdict.ladder.find(rung => rung.step === step)?.name ?? step;

/** What a step gains over the one below it, in sentences. */
function gain(increment, rung, verdict, horizon, ctx) {
  const { savedPerYear, simplePaybackYears, worthUpTo, paysPercent } = increment;
  const below = nameOf(increment.over, verdict);
  const size = { ...savedPerYear, value: Math.abs(savedPerYear.value) };
  const saves = savedPerYear.value > 0;
  const sentences = [saves ? ctx.text('result.savesOver', words(size, 'money', ctx), below)
    : savedPerYear.value < 0 ? ctx.text('result.costsOver', words(size, 'money', ctx), below) : ctx.text('result.sameAs', below)];
  const costs = rung.firstCost?.value > 0;
  const cases = paysPercent === undefined ? undefined : ofTwenty(paysPercent);
  if (saves && costs && cases < 10) {
    sentences.push(ctx.text('result.probablyNot', cases));
  } else if (saves && costs && simplePaybackYears?.value !== undefined) {
    sentences.push(simplePaybackYears.value > horizon ? ctx.text('result.paysBackLater', words(horizon, 'years', ctx))
      : ctx.text('result.paysBackIn', words(simplePaybackYears.value, 'years', ctx)));
    if (cases !== undefined) { sentences.push(ctx.text('result.paysInCases', cases)); }
  } else if (simplePaybackYears?.why && costs) {
    sentences.push(simplePaybackYears.why);
  } else if (!rung.firstCost && worthUpTo?.value > 0) {
    sentences.push(ctx.text('result.paysBelow', words(worthUpTo, 'money', ctx)));
  }
  return sentences;
}

/** Less than this of the money of a year is no rise. */
const LEAST_MORE = 0.5;

/** What a step costs more a year than the softener as it is, in words; nothing where it does not. */
function dearer(rung, found, ctx) {
  if (!found || found === rung || rung.costPerYear?.unit !== found.costPerYear?.unit) { return ''; }
  const more = words({ ...rung.costPerYear, value: rung.costPerYear.value - found.costPerYear.value }, 'money', ctx);
  return rung.costPerYear.value - found.costPerYear.value >= LEAST_MORE ? more : '';
}

function price(rung, found, ctx) {
  const more = dearer(rung, found, ctx);
  const yearly = more ? html`<p class="reason">${ctx.text('result.costsMoreAYear', more)}</p>` : nothing;
  if (!rung.firstCost) { return html`<p class="price quiet">${ctx.text('result.noPrice')}</p>${yearly}`; }
  if (more && rung.firstCost.value <= 0) { return html`<p class="price">${ctx.text('result.noPurchaseCostsMore', more)}</p>`; }
  const lacks = rung.firstCostLacks?.length ? ctx.text('result.priceLacks', rung.firstCostLacks.join(', ')) : '';
  return html`<p class="price">${rung.firstCost.value > 0 ? words(rung.firstCost, 'price', ctx) : ctx.text('result.free')}
    ${lacks ? html`<span class="quiet">${lacks}</span>` : nothing}</p>${yearly}`;
}

const MEASURES = [['hardDays', 'hardDays', 'result.hardDays'], ['salt', 'saltYear', 'result.salt'],
  ['water', 'waterYear', 'result.water'], ['costPerYear', 'money', 'result.costPerYear']];

/** The four figures of a step, each beside what it is now. */
function measures(rung, index, found, list, answer, ctx) {
  const shown = figuresOf(answer, ctx);
  return html`<dl class="measures">${MEASURES.filter(([name]) => rung[name] !== undefined).map(([name, kind, id]) => {
    const now = found && found !== rung && found[name] !== undefined ? words(found[name], kind, ctx) : '';
    return html`<div><dt>${ctx.text(id)}</dt><dd>${shown(`/verdict/${list}/${index}/${name}`, kind)}
      ${now && now !== words(rung[name], kind, ctx) ? html`<span class="quiet">${ctx.text('result.insteadOf', now)}</span>` : nothing}</dd></div>`;
  })}</dl>`;
}

function card(rung, index, list, answer, horizon, ctx) {
  const { verdict } = answer;
  const found = verdict.ladder.find(each => each.step === 'asFound' && each.salt);
  const advised = list === 'ladder' && isAdvised(rung, verdict);
  const worse = !advised && (!rung.serves || rung.overBelow?.savedPerYear.value <= 0);
  const name = `${rung.name}${rung.goods ? ` ${rung.goods}` : ''}`;
  const content = html`${rung.step === 'asFound' ? nothing : price(rung, found, ctx)}
    ${rung.settings ? html`<p class="quiet set">${rung.settings}</p>` : nothing}
    ${measures(rung, index, found, list, answer, ctx)}
    ${rung.reasons.map(reason => html`<p class="reason">${reason}</p>`)}
    ${gains(rung, advised).flatMap(increment => gain(increment, rung, verdict, horizon, ctx)).map(sentence => html`<p>${sentence}</p>`)}`;
  return html`<li class="card ${advised ? 'advised' : ''} ${worse ? 'worse' : ''}">
    ${advised ? html`<p class="tag">${ctx.text('result.advised')}</p>` : nothing}
    ${isNarrow() && !advised ? html`<details><summary><h3>${name}</h3><span class="aside">${ctx.text('result.aYear', words(rung.costPerYear, 'money', ctx))}</span></summary>${content}</details>`
      : html`<h3>${name}</h3>${content}`}</li>`;
}

const hasFigures = rung => rung.step !== 'noneNeeded' && rung.settings !== undefined;

/** A step without figures, in words: not to soften has no price for what hard water does, so it shows none. */
const inWords = (rung, verdict, ctx) => html`<li class=${isAdvised(rung, verdict) ? 'advised' : ''}>
  <strong>${rung.name}</strong>${isAdvised(rung, verdict) ? html` <span class="tag">${ctx.text('result.advised')}</span>` : nothing}
  ${rung.reasons.map(reason => html`<span> ${reason}</span>`)}${rung.note ? html`<span> ${rung.note}</span>` : nothing}</li>`;

/** The steps as cards, then those that are none here. */
export function ladder(answer, ctx) {
  const { verdict } = answer;
  const horizon = answer.retrofit?.payback?.cashFlows?.at(-1)?.year ?? Infinity;
  const steps = verdict.ladder.map((rung, index) => [rung, index]);
  const others = verdict.others.map((rung, index) => [rung, index]).filter(([rung]) => hasFigures(rung));
  const without = steps.filter(([rung]) => !hasFigures(rung));
  return html`<section aria-labelledby="result-steps"><h2 id="result-steps" tabindex="-1">${ctx.text('result.steps')}</h2>
    <p class="quiet steps-lead">${ctx.text('result.stepsLead')}</p>
    <ol class="ladder">${steps.filter(([rung]) => hasFigures(rung)).map(([rung, index]) => card(rung, index, 'ladder', answer, horizon, ctx))}</ol>
    ${without.length ? html`<details ?open=${without.some(([rung]) => isAdvised(rung, verdict))}><summary>${ctx.text('result.notSteps')}</summary>
      <ul class="bare">${without.map(([rung]) => inWords(rung, verdict, ctx))}</ul></details>` : nothing}
    ${others.length ? html`<details><summary>${ctx.text('result.others')}</summary>
      <ol class="ladder">${others.map(([rung, index]) => card(rung, index, 'others', answer, horizon, ctx))}</ol></details>` : nothing}
  </section>`;
}

const LEAST = { costPerYear: 'result.leastCost', salt: 'result.leastSalt', water: 'result.leastWater', hardDays: 'result.leastHardDays' };

const THEN = { costPerYear: 'result.thenCost', salt: 'result.thenSalt', water: 'result.thenWater', hardDays: 'result.thenHardDays' };

/** What a chart finds: the advised step beside the softener as it is, else the step with the least. */
function finding(measure, head, { known, verdict, exact, figure }, ctx) {
  const now = known.find(rung => rung.step === 'asFound');
  const then = known.find(rung => rung !== now && isAdvised(rung, verdict));
  if (now && then && figure(now) === figure(then)) { return ctx.text('result.thenTheSame', head, figure(now), then.name); }
  if (now && then) { return ctx.text(THEN[measure], then.name, figure(then), figure(now)); }
  const least = known.reduce((best, rung) => exact(rung) < exact(best) ? rung : best);
  return ctx.text(LEAST[measure], least.name, figure(least));
}

/** One small chart a measure: what each step costs, takes and lets pass. */
export function stepCharts(answer, ctx, measures = ['costPerYear', 'salt', 'water', 'hardDays']) {
  const { verdict } = answer;
  const rungs = verdict.ladder.filter(hasFigures);
  if (rungs.length < 2) { return nothing; }
  return html`<div class="charts">${measures.map(measure => {
    const [, kind, id] = MEASURES.find(([name]) => name === measure);
    const figure = rung => words(rung[measure], kind, ctx);
    const exact = rung => rung[measure]?.value ?? counted(rung[measure], kind);
    const known = rungs.filter(rung => rung[measure] !== undefined);
    if (known.length < 2) { return nothing; }
    return bars({ title: finding(measure, ctx.text(id), { known, verdict, exact, figure }, ctx), head: ctx.text(id),
      bars: known.map(rung => ({ name: rung.name, value: exact(rung), words: figure(rung), mark: rung.step === 'asFound' ? 'now' : 'then', chosen: isAdvised(rung, verdict) })) }, ctx);
  })}</div>`;
}
