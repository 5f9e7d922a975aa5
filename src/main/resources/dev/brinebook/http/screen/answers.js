// SPDX-License-Identifier: Apache-2.0
/** What each operation's answer comes to on the screen: a sentence, a figure with its range, steps, settings, charts and reasons. */
import { doses, pairs, phases } from './charts.js';
import { counted, dateInWords, endsInWords, figuresOf, inOwnUnit, ofTwenty, words } from './figures.js';
import { isAdvised, ladder, leastGain, nameOf, stepCharts } from './ladder.js';
import { fold } from './fold.js';
import { html, nothing } from './lit-html.js';
import { monthOnDemand, surenessOnDemand } from './uncertain.js';

const rangeOf = (values, kind, ctx) => ctx.text('result.range', ...endsInWords(Math.min(...values), Math.max(...values), kind, ctx));

/** The saving or the payback at the ends of what is not known exactly, where the answer has it for the same comparison. */
function ends(answer, gain, of) {
  if (answer.verdict.step !== 'convert' || gain.over !== 'asFound') { return []; }
  return ['useUncertainty', 'testUncertainty'].flatMap(name => ['low', 'high'].map(end => of(answer[name]?.[end]))).filter(each => each !== undefined);
}

/** The one number of a verdict: the payback, else the saving, else the hard days, else the hardness. */
function headline(answer, ctx) {
  const rung = answer.verdict.ladder.find(each => isAdvised(each, answer.verdict));
  const gain = leastGain(rung);
  if (!rung || ['noneNeeded', 'treatFirst'].includes(rung.step)) {
    return { figure: answer.hardness && ctx.text('result.hardnessIs', words(answer.hardness.tested, 'hardness', ctx)) };
  }
  if (gain?.simplePaybackYears?.value > 0 && gain.savedPerYear.value > 0) {
    const years = ends(answer, gain, end => end?.simplePaybackYears?.value);
    return { figure: ctx.text('result.toPayBack', words(gain.simplePaybackYears.value, 'years', ctx)),
      range: years.length ? rangeOf(years, 'years', ctx)
        : gain.paysPercent === undefined ? '' : ctx.text('result.paysInCases', ofTwenty(gain.paysPercent)) };
  }
  if (gain?.savedPerYear.value > 0) {
    return { figure: ctx.text('result.savedAYear', words(gain.savedPerYear, 'money', ctx)) };
  }
  return rung.hardDays === undefined ? {} : { figure: ctx.text('result.hardDaysAYear', counted(rung.hardDays, 'hardDays')) };
}

const SETTINGS = { hardness: ['result.setHardness', 'setting'], capacity: ['result.setCapacity', 'setting'], meterVolume: ['result.setMeterVolume', 'water'],
  reserve: ['result.setReserve', 'setting'], saltDose: ['result.setSaltDose', 'dose'], saltPerRegeneration: ['result.setSalt', 'setting'],
  dayOverride: ['result.setDayOverride', 'settingDays'], regenerationHour: ['result.setHour', 'hour'], refillMinutes: ['result.setRefill', 'settingMinutes'],
  refill: ['result.setRefill'], interval: ['result.setInterval'], backwash: ['result.setBackwash'], slowRinse: ['result.setSlowRinse'] };

/** Where what is set now is shown: a salt dose that is read by weight stands beside the weight. */
function placeOf({ setting, set }, settings) {
  if (setting === 'refill') { return 'refillMinutes'; }
  return setting === 'saltDose' && !set.includes('/') && settings.saltPerRegeneration ? 'saltPerRegeneration' : setting;
}

const CYCLE = { backwash: 'result.backwash', brineAndSlowRinse: 'result.brineAndSlowRinse', secondBackwash: 'result.secondBackwash', fastRinse: 'result.fastRinse', refill: 'result.refill' };

/** The name of a setting that should be another: salt by weight is salt of a regeneration, whatever the resin. */
const namedAs = ({ setting, shouldBe }) => (setting === 'reserve' ? 'result.reserve'
  : setting === 'saltDose' && !shouldBe.includes('/') ? 'result.setSalt' : SETTINGS[setting]?.[0] ?? 'result.setOther');

/** The settings of an answer as the controller takes them: where its salt is set by weight, a dose for the resin says the same twice. */
const asSet = (settings, softener) => (softener?.saltPerRegeneration && settings.saltPerRegeneration ? { ...settings, saltDose: undefined } : settings);

/** What to set, each with what it is now where that differs, and why; then the minutes of the regeneration. */
function settingsTable({ answer, request }, ctx) {
  const { findings = [], cycle } = answer;
  const settings = answer.settings && asSet(answer.settings, request.softener);
  if (!settings) { return nothing; }
  const shown = figuresOf(answer, ctx);
  const reason = new Map(settings.reasons.map(each => [each.setting, each.reason]));
  const now = new Map(findings.map(each => [placeOf(each, settings), each.set]));
  const typed = request.softener?.saltPerRegeneration;
  if (typed && now.has('saltDose') && !settings.saltDose) {
    now.set('saltPerRegeneration', words(typed, 'setting', ctx));
    reason.set('saltPerRegeneration', reason.get('saltPerRegeneration') ?? reason.get('saltDose'));
  }
  const line = (name, figure, old, why) => html`<div><dt>${name}</dt><dd><strong>${figure}</strong>
    ${old ? html`<span class="quiet">${ctx.text('result.now', old)}</span>` : nothing}<span class="reason">${why ?? ''}</span></dd></div>`;
  return html`<dl class="settings">${Object.keys(SETTINGS).filter(name => settings[name] !== undefined).map(name =>
    line(ctx.text(SETTINGS[name][0]), shown(`/settings/${name}`, SETTINGS[name][1]), now.get(name), reason.get(name)))}
    ${(cycle?.steps ?? []).map((each, index) => [each, index]).filter(([each]) => each.step !== 'refill').map(([each, index]) =>
    line(ctx.text(CYCLE[each.step]), shown(`/cycle/steps/${index}/wholeMinutes`, 'settingMinutes'), '', each.purpose))}</dl>`;
}

/** The steps of the regeneration as it is advised, one after another, each with the minutes that are set for it. */
function cycleChart(cycle, settings, ctx) {
  const timed = (cycle?.steps ?? []).filter(each => each.minutes !== undefined);
  if (timed.length < 2) { return nothing; }
  const minutes = each => (each.step === 'refill' && settings?.refillMinutes !== undefined ? words(settings.refillMinutes, 'settingMinutes', ctx)
    : words(each.wholeMinutes ?? each.minutes, 'minutes', ctx));
  const longest = timed.reduce((most, each) => each.minutes > most.minutes ? each : most);
  return phases({ title: ctx.text('result.cycleTitle', ctx.text(CYCLE[longest.step]), minutes(longest)),
    steps: timed.map(each => ({ name: ctx.text(CYCLE[each.step]), minutes: each.minutes, words: minutes(each) })), total: cycle.totalMinutes }, ctx);
}

/** Findings of one setting and one value are one line with several reasons. */
const merged = findings => findings.reduce((lines, each) => {
  const same = lines.find(line => line.setting === each.setting && line.shouldBe === each.shouldBe);
  if (same) { same.reasons.push(each.why); } else { lines.push({ ...each, reasons: [each.why] }); }
  return lines;
}, []);

/** Settings that should be others, as the service ranks them. */
const findingsList = (findings, ctx) => html`<ol class="findings">${merged(findings).map(each => html`<li class=${each.severity}>
  <h3>${ctx.text(namedAs(each))}</h3>
  <p><strong>${each.shouldBe}</strong> <span class="quiet">${ctx.text('result.now', each.set)}</span></p>${each.reasons.map(reason => html`<p>${reason}</p>`)}</li>`)}</ol>`;

const questionsList = (questions, ctx) => questions.length ? html`<h3>${ctx.text('result.readOff')}</h3>
  <ul>${questions.map(each => html`<li>${each.question} <span class="quiet">${each.why}</span></li>`)}</ul>` : nothing;

const settingsSection = (content, lead, ctx) => fold('result-settings', ctx.text('result.settings'), html`${lead ? html`<p class="lead">${lead}</p>` : nothing}${content}`);

const pictures = (content, ctx) => fold('result-charts', ctx.text('result.charts'), content);

/** Settings by the verdict: what is set now is corrected where it stays, and a meter's where there will be one. */
function settingsOf(kept, ctx) {
  const { answer } = kept;
  const { verdict, findings = [], questions = [], settings } = answer;
  if (['noneNeeded', 'treatFirst'].includes(verdict.step)) { return html`<p class="lead">${verdict.action}</p>`; }
  const stays = ['asFound', 'setRight'].includes(verdict.step);
  const corrections = findings.length ? html`<h3>${ctx.text('result.findings')}</h3>${findingsList(findings, ctx)}` : nothing;
  return settingsSection(html`
    ${stays ? corrections : settingsTable(kept, ctx)}
    ${questionsList(questions, ctx)}
    ${stays && settings ? html`<details><summary>${ctx.text('result.meterSettings')}</summary>${settingsTable(kept, ctx)}</details>` : nothing}
    ${!stays && findings.length ? html`<details><summary>${ctx.text('result.untilThen')}</summary>${findingsList(findings, ctx)}</details>` : nothing}`,
  verdict.action, ctx);
}

const CONFIDENCE = { high: 'result.sureHigh', medium: 'result.sureMedium', low: 'result.sureLow' };

/** The dose that costs least, with the band of doses that cost nearly the same. */
function doseChart(tradeOff, ctx) {
  if (!(tradeOff?.doses?.length > 1) || !tradeOff.band) { return nothing; }
  const dose = quantity => words(quantity, 'dose', ctx);
  const { leastSaltDose, mostSaltDose } = tradeOff.band;
  return doses({ title: ctx.text('result.doseTitle', dose(leastSaltDose), dose(mostSaltDose)), note: `${ctx.text('result.doseNote')} ${tradeOff.why ?? ''}`, tradeOff, dose,
    money: quantity => words(quantity, 'money', ctx) }, ctx);
}

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

/** The settings of one that is set up: they are the answer, and there is nothing before them to compare with. */
function toSetUp(kept, ctx) {
  const { settings, verdict, tradeOff } = kept.answer;
  const usual = assessed(kept, ctx);
  if (!settings || !['asFound', 'setRight'].includes(verdict.step)) { return usual; }
  const range = tradeOff?.hardDaysRange;
  const set = name => words(settings[name], 'setting', ctx);
  return { ...usual, steps: nothing, sure: '',
    sentence: ctx.text('result.setUpSentence', set('hardness'), set('capacity'), set('saltPerRegeneration'), set('reserve')),
    figure: tradeOff?.intervalDays?.value && ctx.text('result.betweenRegenerations', words(tradeOff.intervalDays.value, 'days', ctx)),
    range: yearsWords(range, ctx),
    settings: settingsSection(settingsTable({ ...kept, answer: { ...kept.answer, findings: [] } }, ctx), '', ctx) };
}

/** Hard days of nine years in ten, where they differ. */
const yearsWords = (range, ctx) => range && range.from !== range.to ? ctx.text('result.nineYears', range.from, range.to) : '';

/** Hard days of a year, beside those of now where they are others. */
function hardDaysLine(then, now, ctx) {
  const [better, worse] = [counted(then, 'hardDays'), counted(now, 'hardDays')];
  return better === worse ? ctx.text('result.hardDaysAYear', better) : ctx.text('result.hardDaysThen', better, words(now, 'hardDays', ctx));
}

function reviewed(kept, ctx) {
  const { answer } = kept;
  const { asFound, setRight, verdict } = answer;
  const better = setRight ?? asFound;
  const range = better?.hardDaysRange;
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
  return html`<li class="card ${chosen ? 'advised' : ''} ${candidate.fits ? '' : 'worse'}">
    ${chosen ? html`<p class="tag">${ctx.text('result.advised')}</p>` : nothing}
    <h3>${candidate.sku}</h3><p>${ctx.text(candidate.fits ? 'result.fits' : 'result.fitsNot')}</p>
    <dl class="measures">${lines.filter(([name]) => candidate[name] !== undefined).map(([name, kind, id, ...slots]) => html`<div><dt>${ctx.text(id, ...slots)}</dt>
      <dd>${shown(`/candidates/${index}/${name}`, kind)}</dd></div>`)}</dl>
    ${candidate.reasons.map(reason => html`<p class="reason">${reason}</p>`)}</li>`;
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

/** The own readings beside what was expected. */
function backtested(kept, ctx) {
  const { answer } = kept;
  const { onTheseDays, predicted, usualHardDays, exceptionalDays = [] } = answer;
  const lines = [['hardDays', 'halfDays', 'result.hardDaysThere'], ['regenerations', 'hardDays', 'result.regenerations'], ['salt', 'saltYear', 'result.saltUsed'], ['water', 'waterYear', 'result.waterUsed']];
  return { sentence: answer.summary,
    figure: ctx.text('result.hardDaysOnYours', counted(onTheseDays.hardDays, 'days'), answer.days),
    range: usualHardDays && ctx.text('result.usual', usualHardDays.from, usualHardDays.to),
    steps: html`<section class="pictures" aria-labelledby="result-charts"><h2 id="result-charts">${ctx.text('result.onYourDays')}</h2>
      ${pairs({ title: ctx.text('result.backtestTitle', counted(onTheseDays.hardDays, 'days'), words(predicted.hardDays, 'halfDays', ctx)),
        names: [ctx.text('result.expected'), ctx.text('result.yourDays')], rows: lines.map(([name, kind, id]) => ({ name: ctx.text(id),
          values: [predicted[name], onTheseDays[name]].map(each => each.value ?? counted(each, kind === 'halfDays' ? 'days' : kind)), words: [predicted[name], onTheseDays[name]].map(each => words(each, kind, ctx)) })) }, ctx)}
      <dl class="measures">${[['dailyUse', 'result.useMeasured'], ['expectedDailyUse', 'result.useExpected']].filter(([name]) => answer[name]).map(([name, id]) => html`<div>
        <dt>${ctx.text(id)}</dt><dd>${figuresOf(answer, ctx)(`/${name}`, 'water')}</dd></div>`)}</dl>
      ${exceptionalDays.length ? html`<h3>${ctx.text('result.exceptionalDays')}</h3><ul>${exceptionalDays.map((each, index) => html`<li>${dateInWords(each.date, ctx)}:
        ${figuresOf(answer, ctx)(`/exceptionalDays/${index}/use`, 'water')}</li>`)}</ul>` : nothing}</section>` };
}

/** Whether one is needed at all comes first; the size that fits is what follows. */
function wanted(kept, ctx) {
  const view = sized(kept, ctx);
  const { verdict, hardness } = kept.answer;
  const without = verdict?.ladder.find(each => each.step === 'noneNeeded')?.reasons ?? [];
  return verdict?.step === 'replace' && without.length ? { ...view, sentence: [usual(hardness.tested, ctx), without.join(' ')].join('\n'), figure: ctx.text('result.hardnessIs', words(hardness.tested, 'hardness', ctx)), range: '' } : view;
}

const VIEWS = { assess: assessed, reviewSettings: reviewed, sizeSoftener: sized, convertHardness: classed, backtestSettings: backtested };
/** Where the same operation answers another question. */
const ASKED = { setup: { assess: toSetUp }, need: { sizeSoftener: wanted } };

/** What an answer comes to on the screen. */
export const answerOf = (kept, ctx) => (ASKED[kept.question]?.[kept.operation] ?? VIEWS[kept.operation])(kept, ctx);
