// SPDX-License-Identifier: Apache-2.0
/** A softener that is set up: what to enter, in the order of the controller, then the checks of the day. Nothing before it is compared. */
import { words, yearsWords } from './figures.js';
import { fold } from './fold.js';
import { html, nothing } from './lit-html.js';
import { monthOnDemand } from './month.js';
import { cycleChart, doseChart, pictures, settingsSection, settingsTable } from './settings.js';

/** The settings as they are entered: a dose for the resin says the weight of the salt again, and nothing was set before. */
const entered = kept => ({ ...kept, answer: { ...kept.answer, findings: [], settings: { ...kept.answer.settings, saltDose: undefined } } });

/** The day itself: what must be there, then what is done and checked, in order. */
const theDay = ({ readiness = [], commissioning = [] }, ctx) => commissioning.length ? fold('result-day', ctx.text('result.theDay'), html`
  ${readiness.length ? html`<details><summary>${ctx.text('result.beforeWork')}</summary><ul>${readiness.map(each => html`<li>${each.wanted} <span class="quiet">${each.whenNotMet}</span></li>`)}</ul></details>` : nothing}
  <ol>${commissioning.map(each => html`<li>${each}</li>`)}</ol>`) : nothing;

/** What starts the regeneration by itself: a clock has its own step, a meter the settings of the answer. */
function started({ answer, request }, ctx) {
  const { ladder } = answer.verdict;
  const kept = ['setRight', 'asFound'].map(step => ladder.find(each => each.step === step)).find(each => each?.settings);
  if (request.softener?.control?.kind !== 'clock' || !kept) { return null; }
  return { ...kept, words: kept.settings.charAt(0).toLocaleLowerCase(ctx.language) + kept.settings.slice(1) };
}

const meterSentence = ({ settings }, ctx) => ctx.text('result.setUpSentence', ...['hardness', 'capacity', 'saltPerRegeneration', 'reserve'].map(name => words(settings[name], 'setting', ctx)));

/** A clock: its interval and its salt; the settings of a meter are another softener's. */
const onClock = (clock, kept, ctx) => ({ sentence: ctx.text('result.setUpClock', clock.words),
  figure: clock.hardDays === undefined ? '' : ctx.text('result.hardDaysAYear', Math.round(clock.hardDays)),
  settings: settingsSection(html`<details><summary>${ctx.text('result.meterSettings')}</summary>${settingsTable(entered(kept), ctx)}</details>`, clock.settings, ctx) });

function onMeter(kept, ctx) {
  const { answer, request } = kept;
  const range = answer.tradeOff?.hardDaysRange;
  const alone = { ...kept, request: { ...request, softener: { ...request.softener, control: undefined } } };
  return { sentence: meterSentence(answer, ctx),
    figure: answer.tradeOff?.intervalDays?.value && ctx.text('result.betweenRegenerations', words(answer.tradeOff.intervalDays.value, 'days', ctx)),
    range: yearsWords(range, ctx), settings: settingsSection(settingsTable(entered(kept), ctx), '', ctx),
    charts: pictures(html`${doseChart(answer.tradeOff, ctx)}${cycleChart(answer.cycle, answer.settings, ctx)}${monthOnDemand(alone, ctx)}`, ctx),
    why: [answer.tradeOff?.why, range?.sentence, answer.readings?.sentence].filter(Boolean) };
}

/** Shortcomings of its size, which come before any setting. */
const TOO_SMALL = ['intervalTooShort', 'runsHard', 'serviceStandardNotMet'];

/** Settings first, then the day. Where no softener is needed or the water is treated first, that stands before them. */
export function toSetUp(kept, ctx) {
  const { answer } = kept;
  const { verdict, settings } = answer;
  const day = theDay(answer, ctx);
  if (!settings || ['noneNeeded', 'treatFirst'].includes(verdict.step)) {
    return { sentence: verdict.sentence, change: true, action: settings ? undefined : null, steps: nothing,
      settings: settings ? settingsSection(html`<details><summary>${ctx.text('result.showAnyway')}</summary>${settingsTable(entered(kept), ctx)}</details>`, verdict.action, ctx) : nothing };
  }
  const clock = started(kept, ctx);
  const view = clock ? onClock(clock, kept, ctx) : onMeter(kept, ctx);
  const sentence = (answer.fit?.shortcomings ?? []).some(each => TOO_SMALL.includes(each)) ? `${ctx.text('result.setUpTooSmall')} ${view.sentence}` : view.sentence;
  return { change: false, sheets: ['card', 'checklist'], after: day, ...view, sentence };
}
