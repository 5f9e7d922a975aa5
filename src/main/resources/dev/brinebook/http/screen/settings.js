// SPDX-License-Identifier: Apache-2.0
/** What to set on a controller, in its own order: as a table, as corrections, and as the steps of the regeneration. */
import { doses, phases } from './charts.js';
import { figuresOf, words } from './figures.js';
import { fold } from './fold.js';
import { html, nothing } from './lit-html.js';

/** In the order in which a controller asks for them: those of `LAST` come after the minutes of the regeneration. */
const SETTINGS = { hardness: ['result.setHardness', 'setting'], capacity: ['result.setCapacity', 'setting'], meterVolume: ['result.setMeterVolume', 'water'],
  reserve: ['result.setReserve', 'setting'], saltDose: ['result.setSaltDose', 'dose'], saltPerRegeneration: ['result.setSalt', 'setting'],
  refillMinutes: ['result.setRefill', 'settingMinutes'], refill: ['result.setRefill'], interval: ['result.setInterval'], backwash: ['result.setBackwash'],
  slowRinse: ['result.setSlowRinse'], dayOverride: ['result.setDayOverride', 'settingDays'], regenerationHour: ['result.setHour', 'hour'] };
const LAST = ['dayOverride', 'regenerationHour'];

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
export function settingsTable({ answer, request }, ctx) {
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
  const entry = name => line(ctx.text(SETTINGS[name][0]), shown(`/settings/${name}`, SETTINGS[name][1]), now.get(name), reason.get(name));
  const given = Object.keys(SETTINGS).filter(name => settings[name] !== undefined);
  return html`<dl class="settings">${given.filter(name => !LAST.includes(name)).map(entry)}
    ${(cycle?.steps ?? []).map((each, index) => [each, index]).filter(([each]) => each.step !== 'refill').map(([each, index]) =>
    line(ctx.text(CYCLE[each.step]), shown(`/cycle/steps/${index}/wholeMinutes`, 'settingMinutes'), '', each.purpose))}
    ${given.filter(name => LAST.includes(name)).map(entry)}</dl>`;
}

/** The steps of the regeneration as it is advised, one after another, each with the minutes that are set for it. */
export function cycleChart(cycle, settings, ctx) {
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
export const findingsList = (findings, ctx) => html`<ol class="findings">${merged(findings).map(each => html`<li class=${each.severity}>
  <h3>${ctx.text(namedAs(each))}</h3>
  <p><strong>${each.shouldBe}</strong> <span class="quiet">${ctx.text('result.now', each.set)}</span></p>${each.reasons.map(reason => html`<p>${reason}</p>`)}</li>`)}</ol>`;

export const questionsList = (questions, ctx) => questions.length ? html`<h3>${ctx.text('result.readOff')}</h3>
  <ul>${questions.map(each => html`<li>${each.question} <span class="quiet">${each.why}</span></li>`)}</ul>` : nothing;

export const settingsSection = (content, lead, ctx) => fold('result-settings', ctx.text('result.settings'), html`${lead ? html`<p class="lead">${lead}</p>` : nothing}${content}`);

/** Settings by the verdict: what is set now is corrected where it stays, and a meter's where there will be one. */
export function settingsOf(kept, ctx) {
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

export const pictures = (content, ctx) => fold('result-charts', ctx.text('result.charts'), content);

/** The dose that costs least, with the band of doses that cost nearly the same. */
export function doseChart(tradeOff, ctx) {
  if (!(tradeOff?.doses?.length > 1) || !tradeOff.band) { return nothing; }
  const dose = quantity => words(quantity, 'dose', ctx);
  const { leastSaltDose, mostSaltDose } = tradeOff.band;
  return doses({ title: ctx.text('result.doseTitle', dose(leastSaltDose), dose(mostSaltDose)), note: `${ctx.text('result.doseNote')} ${tradeOff.why ?? ''}`, tradeOff, dose,
    money: quantity => words(quantity, 'money', ctx) }, ctx);
}
