// SPDX-License-Identifier: Apache-2.0
/** What settings would have done on the own readings, and which settings these readings ask for. */
import { pairs } from './charts.js';
import { counted, dateInWords, figuresOf, words } from './figures.js';
import { html, nothing } from './lit-html.js';
import { onDemand } from './more.js';
import { findingsList, questionsList } from './settings.js';

const LINES = [['hardDays', 'halfDays', 'result.hardDaysThere'], ['regenerations', 'hardDays', 'result.regenerations'], ['salt', 'saltYear', 'result.saltUsed'],
  ['water', 'waterYear', 'result.waterUsed']];

/** The request that asks which settings these days want: they take the place of what was known of the use before. */
export function reviewOf({ water, household, softener, preferences, units, days }) {
  const { dailyUse, weeklyUse, ...home } = household ?? {};
  return { water, softener, preferences, units, household: { ...home, dailySeries: days } };
}

/** The settings that these readings ask for, which the service reviews when somebody wishes to see them. */
function suited(kept, ctx) {
  const load = () => ctx.ask('reviewSettings', reviewOf(kept.request), { fields: 'verdict,findings,questions' });
  return html`<section class="part">${onDemand('suited', html`<h2 id="result-settings" tabindex="-1">${ctx.text('result.settingsForThese')}</h2>`, kept, load,
    ({ verdict, findings = [], questions = [] }) => html`<p class="lead">${verdict.sentence}</p>
      ${findings.length ? findingsList(findings, ctx) : html`<p>${verdict.action}</p>`}${questionsList(questions, ctx)}`, ctx)}</section>`;
}

/** The own readings beside what was expected. */
export function backtested(kept, ctx) {
  const { answer } = kept;
  const { onTheseDays, predicted, usualHardDays, exceptionalDays = [], missingDays } = answer;
  const sides = [predicted, onTheseDays];
  const rows = LINES.map(([name, kind, id]) => ({ name: ctx.text(id), words: sides.map(each => words(each[name], kind, ctx)),
    values: sides.map(each => each[name].value ?? counted(each[name], kind === 'halfDays' ? 'days' : kind)) }));
  return { sentence: answer.summary, action: ['result-settings', 'result.settingsForThese'],
    figure: ctx.text('result.hardDaysOnYours', counted(onTheseDays.hardDays, 'days'), answer.days),
    range: usualHardDays && ctx.text('result.usual', usualHardDays.from, usualHardDays.to),
    settings: suited(kept, ctx),
    steps: html`<section class="pictures" aria-labelledby="result-charts"><h2 id="result-charts">${ctx.text('result.onYourDays')}</h2>
      ${missingDays > 0 ? html`<p class="quiet">${ctx.text('result.missingDays', missingDays)}</p>` : nothing}
      ${pairs({ title: ctx.text('result.backtestTitle', counted(onTheseDays.hardDays, 'days'), words(predicted.hardDays, 'halfDays', ctx)),
        names: [ctx.text('result.expected'), ctx.text('result.yourDays')], rows }, ctx)}
      <dl class="measures">${[['dailyUse', 'result.useMeasured'], ['expectedDailyUse', 'result.useExpected']].filter(([name]) => answer[name]).map(([name, id]) => html`<div>
        <dt>${ctx.text(id)}</dt><dd>${figuresOf(answer, ctx)(`/${name}`, 'water')}</dd></div>`)}</dl>
      ${exceptionalDays.length ? html`<h3>${ctx.text('result.exceptionalDays')}</h3><ul>${exceptionalDays.map((each, index) => html`<li>${dateInWords(each.date, ctx)}:
        ${figuresOf(answer, ctx)(`/exceptionalDays/${index}/use`, 'water')}</li>`)}</ul>` : nothing}</section>` };
}
