// SPDX-License-Identifier: Apache-2.0
/** What each operation's answer comes to on the screen: a sentence, a figure with its range, steps, settings, charts and reasons. */
import { counted, endsInWords, figuresOf, inOwnUnit, ofTwenty, words, yearsWords } from './figures.js';
import { isNarrow } from './fold.js';
import { isAdvised, ladder, leastGain, nameOf, stepCharts } from './ladder.js';
import { html, nothing } from './lit-html.js';
import { monthOnDemand } from './month.js';
import { backtested } from './own-readings.js';
import { toSetUp } from './set-up.js';
import { cycleChart, doseChart, pictures, settingsOf, settingsSection } from './settings.js';
import { surenessOnDemand } from './uncertain.js';

/** The ends of what is not known exactly, where the answer has them for the same comparison as its gain. */
function ends(answer, gain) {
  if (answer.verdict.step !== 'convert' || gain.over !== 'asFound') { return []; }
  return ['useUncertainty', 'testUncertainty'].flatMap(name => ['low', 'high'].map(end => answer[name]?.[end])).filter(each => each?.savedPerYear);
}

/** The years to pay back at these ends, with a word where nothing is saved at one of them. */
function yearsRange(all, ctx) {
  const years = all.filter(each => each.savedPerYear.value > 0).map(each => each.simplePaybackYears?.value).filter(each => each !== undefined);
  if (years.length === 0) { return ''; }
  const [low, high] = endsInWords(Math.min(...years), Math.max(...years), 'years', ctx);
  return years.length < all.length ? ctx.text('result.rangeOrNever', words(counted(Math.min(...years), 'years', 'down'), 'years', ctx)) : ctx.text('result.range', low, high);
}

/** The money saved at these ends: where one of them costs more, both are said in words. */
function savedRange(all, ctx) {
  if (all.length === 0) { return ''; }
  const amounts = all.map(each => each.savedPerYear).sort((one, other) => one.value - other.value);
  const [low, high] = [amounts[0], amounts.at(-1)].map(each => words({ ...each, value: Math.abs(each.value) }, 'money', ctx));
  return ctx.text(amounts[0].value < 0 ? 'result.rangeMoreToLess' : 'result.range', low, high);
}

/** The one number of a verdict: the payback, else the saving, else the hard days, else the hardness. */
function headline(answer, ctx) {
  const rung = answer.verdict.ladder.find(each => isAdvised(each, answer.verdict));
  const gain = leastGain(rung);
  if (!rung || ['noneNeeded', 'treatFirst'].includes(rung.step)) {
    return { figure: answer.hardness && ctx.text('result.hardnessIs', words(answer.hardness.tested, 'hardness', ctx)) };
  }
  if (gain?.simplePaybackYears?.value > 0 && gain.savedPerYear.value > 0) {
    const range = yearsRange(ends(answer, gain), ctx);
    return { figure: ctx.text('result.toPayBack', words(gain.simplePaybackYears.value, 'years', ctx)),
      range: range || (gain.paysPercent === undefined ? '' : ctx.text('result.paysInCases', ofTwenty(gain.paysPercent))) };
  }
  if (gain?.savedPerYear.value > 0) {
    return { figure: ctx.text('result.savedAYear', words(gain.savedPerYear, 'money', ctx)), range: savedRange(ends(answer, gain), ctx) };
  }
  return rung.hardDays === undefined ? {} : { figure: ctx.text('result.hardDaysAYear', counted(rung.hardDays, 'hardDays')) };
}

const CONFIDENCE = { high: 'result.sureHigh', medium: 'result.sureMedium', low: 'result.sureLow' };

function assessed(kept, ctx) {
  const { answer } = kept;
  const { verdict } = answer;
  const softening = !['noneNeeded', 'treatFirst'].includes(verdict.step);
  return { sentence: verdict.sentence, ...headline(answer, ctx), sure: ctx.text(CONFIDENCE[verdict.confidence]), steps: ladder(answer, ctx),
    settings: settingsOf(kept, ctx),
    charts: softening ? pictures(html`${stepCharts(answer, ctx)}${doseChart(answer.tradeOff, ctx)}${cycleChart(answer.cycle, answer.settings, ctx)}${monthOnDemand(kept, ctx)}${surenessOnDemand(kept, ctx)}`, ctx) : nothing,
    why: [answer.tradeOff?.why, answer.tradeOff?.hardDaysRange?.sentence, answer.retrofit?.overClockSetRight?.sentence, answer.readings?.sentence,
      verdict.published?.sentence].filter(Boolean) };
}

/** Hard days of a year, beside those of now where they are others. */
function hardDaysLine(then, now, ctx) {
  const [better, worse] = [counted(then, 'hardDays'), counted(now, 'hardDays')];
  return better === worse ? ctx.text('result.hardDaysAYear', better) : ctx.text('result.hardDaysThen', better, words(now, 'hardDays', ctx));
}

function reviewed(kept, ctx) {
  const { answer } = kept;
  const { asFound, setRight, verdict } = answer;
  const rung = verdict.ladder.find(each => isAdvised(each, verdict));
  // The step that is advised, of which the answer may hold the range too.
  const better = rung?.hardDays === undefined ? setRight ?? asFound : rung;
  const range = [setRight, asFound].find(each => each && each.hardDays === better.hardDays)?.hardDaysRange;
  return { sentence: verdict.sentence, sure: ctx.text(CONFIDENCE[verdict.confidence]),
    figure: better && hardDaysLine(better.hardDays, asFound.hardDays, ctx),
    range: yearsWords(range, ctx),
    settings: settingsOf(kept, ctx), steps: ladder(answer, ctx),
    charts: pictures(html`${stepCharts(answer, ctx, ['hardDays', 'salt', 'water', 'costPerYear'])}${monthOnDemand(kept, ctx)}`, ctx),
    why: [['asFound', asFound], ['setRight', setRight]].filter(([, year]) => year?.hardDaysRange)
      .map(([step, year]) => `${nameOf(step, verdict)}: ${year.hardDaysRange.sentence}`) };
}

/** Over these years the service spreads a price: `costPerYear` of a candidate in the contract. */
const LIFE_YEARS = 15;

function candidateCard(candidate, index, chosen, ctx) {
  const shown = figuresOf({ candidates: { [index]: candidate } }, ctx);
  const lines = [['resinVolume', 'resin', 'result.resin'], ['daysBetweenRegenerations', 'days', 'result.days'], ['saltPerYear', 'saltYear', 'result.salt'],
    ['waterPerYear', 'waterYear', 'result.water'], ['hardDaysPerYear', 'hardDays', 'result.hardDays'], ['runningCostPerYear', 'money', 'result.costPerYear'],
    ['costPerYear', 'money', 'result.costWithPrice', LIFE_YEARS]];
  const fits = ctx.text(candidate.fits ? 'result.fits' : 'result.fitsNot');
  const content = html`<dl class="measures">${lines.filter(([name]) => candidate[name] !== undefined).map(([name, kind, id, ...slots]) => html`<div><dt>${ctx.text(id, ...slots)}</dt>
      <dd>${shown(`/candidates/${index}/${name}`, kind)}</dd></div>`)}</dl>
    ${candidate.reasons.map(reason => html`<p class="reason">${reason}</p>`)}`;
  return html`<li class="card ${chosen ? 'advised' : ''} ${candidate.fits ? '' : 'worse'}">
    ${chosen ? html`<p class="tag">${ctx.text('result.advised')}</p>` : nothing}
    ${isNarrow() && !chosen ? html`<details><summary><h3>${candidate.sku}</h3><span class="aside">${fits}</span></summary>${content}</details>` : html`<h3>${candidate.sku}</h3><p>${fits}</p>${content}`}</li>`;
}

/** The size that fits, with the next smaller and the next larger one beside it; the others are folded. */
function sized(kept, ctx) {
  const { answer } = kept;
  const { verdict, candidates = [], choice } = answer;
  const needed = verdict?.step === 'replace' || !verdict;
  const bySize = candidates.map((each, index) => [each, index]).sort(([a], [b]) => a.resinVolume.value - b.resinVolume.value);
  const place = bySize.findIndex(([each]) => each.sku === choice);
  const near = place < 0 ? bySize.slice(0, 3) : bySize.slice(Math.max(0, place - 1), place + 2);
  const best = candidates.find(each => each.sku === choice);
  const range = answer.tradeOff?.hardDaysRange;
  const cards = list => html`<ol class="ladder">${list.map(([each, index]) => candidateCard(each, index, needed && each.sku === choice, ctx))}</ol>`;
  const rest = bySize.filter(each => !near.includes(each));
  return { sentence: needed ? answer.why ?? answer.summary : verdict.sentence,
    ...(!needed || !best ? { figure: ctx.text('result.hardnessIs', words(answer.hardness.tested, 'hardness', ctx)) }
      : { figure: ctx.text('result.betweenRegenerations', words(best.daysBetweenRegenerations, 'days', ctx)),
        range: yearsWords(range, ctx) }),
    sure: verdict ? ctx.text(CONFIDENCE[verdict.confidence]) : '',
    steps: candidates.length ? html`<section class=${needed ? '' : 'dimmed'} aria-labelledby="result-sizes"><h2 id="result-sizes" tabindex="-1">${ctx.text('result.sizes')}</h2>
      ${needed ? cards(near) : html`<details><summary>${ctx.text('result.showAnyway')}</summary>${cards(near)}</details>`}
      ${rest.length ? html`<details><summary>${ctx.text('result.moreSizes', rest.length)}</summary>${cards(rest)}</details>` : nothing}</section>` : nothing,
    settings: verdict?.action ? settingsSection(nothing, verdict.action, ctx) : nothing, action: needed && near.length > 1 ? ['result-sizes', 'result.showSizes'] : null,
    charts: needed ? pictures(doseChart(answer.tradeOff, ctx), ctx) : nothing,
    why: [answer.tradeOff?.why, range?.sentence, verdict?.ladder.find(each => each.step === 'noneNeeded')?.note].filter(Boolean) };
}

const CLASSES = { soft: 'result.soft', slightlyHard: 'result.slightlyHard', moderatelyHard: 'result.moderatelyHard', medium: 'result.medium', hard: 'result.hard', veryHard: 'result.veryHard' };
const SCALES = { usgs: 'result.usgs', german: 'result.germanScale', trade: 'result.tradeScale' };

/** From these hardnesses on some people soften, and many. Source: the classes of the US Geological Survey, in mg/L. */
const SOFTENED = [[120, 'result.manySoften'], [60, 'result.someSoften'], [0, 'result.softAlready']];

/** Whether people soften such water, which is the answer to whether one needs a softener. */
function usual(hardness, ctx) {
  const milligrams = ctx.convert(hardness.value, hardness.unit, 'mg/L');
  return ctx.text(SOFTENED.find(([least]) => milligrams >= least)[1], words(hardness, 'hardnessInWords', ctx));
}

/** Whether people soften such water, then its class on three scales and in every unit. */
function classed(kept, ctx) {
  const { answer } = kept;
  const main = answer.inEveryUnit.find(each => each.unit === ctx.country.hardness) ?? answer.inEveryUnit[0];
  return { sentence: `${usual(main, ctx)}\n${answer.summary}`, figure: ctx.text('result.hardnessIs', words(main, 'hardness', ctx)),
    steps: html`<section aria-labelledby="result-classes"><h2 id="result-classes">${ctx.text('result.classes')}</h2>
      <dl class="measures wide-names">${Object.entries(answer.classes).map(([scale, name]) => html`<div><dt>${ctx.text(SCALES[scale])}</dt><dd>${ctx.text(CLASSES[name])}</dd></div>`)}</dl>
      <h3>${ctx.text('result.inEveryUnit')}</h3><ul class="units">${answer.inEveryUnit.map((each, index) => html`<li><data value=${each.value} data-from=${`/inEveryUnit/${index}`} data-kind="own">${inOwnUnit(each, 'hardness', ctx)}</data></li>`)}</ul></section>` };
}

/** Whether one is needed at all comes first; the size that fits is what follows. */
function wanted(kept, ctx) {
  const view = { ...sized(kept, ctx), settings: nothing };
  const { verdict, hardness } = kept.answer;
  const without = verdict?.ladder.find(each => each.step === 'noneNeeded')?.reasons ?? [];
  return verdict?.step === 'replace' && without.length ? { ...view, sentence: [usual(hardness.tested, ctx), without.join(' ')].join('\n'), figure: ctx.text('result.hardnessIs', words(hardness.tested, 'hardness', ctx)), range: '' } : view;
}

const VIEWS = { assess: assessed, reviewSettings: reviewed, sizeSoftener: sized, convertHardness: classed, backtestSettings: backtested };
/** Has an operation shown by a view that comes later than this module. */
export function shows(operation, view) { VIEWS[operation] = view; }
/** Where the same operation answers another question. */
const ASKED = { setup: { assess: toSetUp }, need: { sizeSoftener: wanted } };

/** What an answer comes to on the screen. */
export const answerOf = (kept, ctx) => (ASKED[kept.question]?.[kept.operation] ?? VIEWS[kept.operation])(kept, ctx);
