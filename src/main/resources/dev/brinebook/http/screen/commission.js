// SPDX-License-Identifier: Apache-2.0
/** Putting a softener into service: stages and checks as a list with a field for each reading, then settings, later checks and upkeep. */
import { readOf } from './afterwards.js';
import { shows } from './answers.js';
import { COMPOSITES, idOf } from './fields.js';
import { fold } from './fold.js';
import { html, nothing } from './lit-html.js';
import { onDemand } from './more.js';
import { shared } from './month.js';
import { labelId } from './questions.js';
import { numeral } from './rounding.js';
import { parsed, symbol } from './units.js';
import { inFull } from './visit-parts.js';

// ---- the list of checks ----

const unitWords = (unit, text) => (unit === 'minutes' ? text('screen.unit.minutes') : unit === 'degrees' ? '°' : symbol(unit));
const withUnit = (value, unit, form) => `${inFull(value, form)}${unit === 'degrees' ? '°' : `\u00a0${unitWords(unit, form.text)}`}`;

/** What a check passes at. */
function band(check, form) {
  const { passFrom, passTo, unit } = check;
  if (unit === undefined) { return nothing; }
  const words = passFrom === undefined ? form.text('visit.passTo', withUnit(passTo, unit, form)) : passTo === undefined ? form.text('visit.passFrom', withUnit(passFrom, unit, form))
    : form.text('visit.passBetween', inFull(passFrom, form), withUnit(passTo, unit, form));
  return html`<p class="band">${words}</p>`;
}

const SIGNS = { pass: ['✓', 'good'], measureAgain: ['↻', 'again'], fail: ['✕', 'bad'] };

/** What a reading comes to; nothing while it is asked about. */
function outcome(check, given, form) {
  const same = given && (given.yes !== undefined ? true : given.value !== undefined);
  if (!check.verdict || !same || form.case.answer.stale) { return html`<p class="outcome" role="status"></p>`; }
  const [sign, name] = SIGNS[check.verdict];
  return html`<p class="outcome ${name}" role="status"><span aria-hidden="true">${sign} </span><strong>${form.text(`visit.reading.${check.verdict}`)}</strong> ${check.verdict === 'pass' ? '' : check.reason}</p>`;
}

function checkView(check, form) {
  const { text } = form;
  const pointer = `/checks/${check.check}`;
  const given = form.case.readings.checks?.[check.check];
  const draft = form.case.drafts[`${pointer}/value`];
  const id = idOf(`${pointer}/value`);
  if (check.unit === undefined) {
    const set = yes => form.set([[`/readings${pointer}`, yes === given?.yes ? undefined : { yes }]], pointer);
    return html`<div class="check" role="group" aria-labelledby="${id}-name"><p class="what"><strong id="${id}-name">${check.name}</strong> ${check.how}</p>
      <p class="row">${[true, false].map(yes => html`<button type="button" class="toggle" aria-pressed=${String(given?.yes === yes)} @click=${() => set(yes)}>${text(`screen.flag.${yes}`)}</button>`)}</p>${outcome(check, given, form)}</div>`;
  }
  const unit = given?.unit ?? check.unit;
  const type = value => {
    const found = parsed(value, []);
    const fits = found?.value !== undefined;
    form.set([[`/readings${pointer}`, fits ? { value: found.value, unit } : undefined], ['draft', `${pointer}/value`, value === '' ? undefined : value]], pointer);
  };
  const problem = form.problems.get(`${pointer}/value`);
  const shown = draft ?? (given?.value === undefined ? '' : numeral(given.value, form.language).replaceAll('\u00a0', ''));
  return html`<div class="check"><p class="what"><label for=${id}><strong>${check.name}</strong></label> ${check.how}</p>${band(check, form)}
    <div class="with-unit"><input id=${id} inputmode="decimal" autocomplete="off" size="7" data-pointer="${pointer}/value" .value=${shown} aria-invalid=${problem ? 'true' : nothing} aria-describedby=${problem ? `${id}-fault` : nothing} @input=${event => type(event.target.value)} @change=${() => { if (given?.value !== undefined) { form.set([['draft', `${pointer}/value`, undefined]], pointer); } }}>
      <span class="suffix">${unitWords(unit, text)}</span></div>
    ${problem ? html`<p class="fault" id="${id}-fault"><span aria-hidden="true">▲ </span>${problem}</p>` : nothing}${outcome(check, given, form)}</div>`;
}

/** The field of a reading that was sent as one of a list. */
export const checkAt = (index, readings) => `/checks/${readOf(readings)[index]?.check}/value`;
/** The name of the check that a pointer leads to. */
export const checkName = (pointer, open) => open.answer?.answer.checks?.find(({ check }) => check === pointer.split('/')[2])?.name;

/** Stages that are open, by case: the first with a check that was not made opens by itself, and none shuts by itself. */
const stagesOf = new Map();
function openStages(id, first) {
  const mine = stagesOf.get(id) ?? { open: new Set(), begun: new Set() };
  stagesOf.set(id, mine);
  if (first && !mine.begun.has(first)) { mine.begun.add(first); mine.open.add(first); }
  return mine.open;
}

const entries = answer => html`<dl class="entries">${answer.settings.filter(each => each.entered).map(each => html`<div><dt>${each.name}</dt><dd>${each.shows}</dd></div>`)}</dl>`;

COMPOSITES.checks = function checks(form, name, pointer) {
  const { text } = form;
  const answer = form.case.answer?.operation === 'planCommissioning' ? form.case.answer.answer : null;
  if (!answer) { return html`<div class="field" id=${idOf(pointer)} data-pointer=${pointer} tabindex="-1"><p class="hint">${text('visit.checksCome')}</p></div>`; }
  const read = form.case.readings.checks ?? {};
  const made = stage => stage.checks.filter(each => read[each] !== undefined).length;
  const shown = openStages(form.case.id, answer.stages.find(stage => stage.checks.length > made(stage))?.stage);
  const head = stage => html`${stage.instruction} <span class="quiet">${text('visit.takesMinutes', numeral(Math.ceil(stage.minutes), form.language))}${stage.checks.length ? ` ${text('visit.checksMade', made(stage), stage.checks.length)}` : ''}</span>`;
  const body = stage => html`${stage.stage === 'enterSettings' ? entries(answer) : nothing}${stage.checks.map(each => answer.checks.find(({ check }) => check === each)).filter(Boolean).map(each => checkView(each, form))}`;
  return html`<div class="field" id=${idOf(pointer)} data-pointer=${pointer} tabindex="-1"><p class="hint">${text('visit.checksHint')}</p><ol class="stages" aria-label=${text(labelId(name))}>${answer.stages.map(stage => html`<li>${stage.checks.length ? html`<details .open=${shown.has(stage.stage)} @toggle=${event => { if (event.target.open) { shown.add(stage.stage); } else { shown.delete(stage.stage); } }}>
    <summary>${head(stage)}</summary>${body(stage)}</details>` : html`<p>${head(stage)}</p>${stage.stage === 'sanitise' ? html`<p class="hint">${text('visit.bleach', inFull(answer.brine.bleachMillilitres, form, 2), inFull(answer.brine.contactMinutes, form))}</p>` : nothing}`}</li>`)}</ol></div>`;
};

// ---- the answer ----

/** The settings in the order of a common menu. */
const settings = (answer, ctx) => fold('result-settings', ctx.text('visit.enterSettings'), html`<dl class="settings">${answer.settings.filter(each => each.entered).map(each => html`<div><dt>${each.name}</dt><dd><strong>${each.shows}</strong></dd></div>`)}</dl>`);

/** Readings that fail or are to be made again, with what to do. */
function amiss({ checks }, ctx) {
  const bad = ['fail', 'measureAgain'].flatMap(verdict => checks.filter(each => each.verdict === verdict));
  return bad.length ? html`<section aria-labelledby="result-misfit"><h2 id="result-misfit" tabindex="-1">${ctx.text('visit.lookAgain')}</h2><ul class="findings bare">${bad.map(each => html`<li class=${each.verdict === 'fail' ? 'stop' : 'warning'}>
    <p><strong>${ctx.text(`visit.reading.${each.verdict}`)}</strong> ${each.name}</p><p>${each.reason}</p></li>`)}</ul></section>` : nothing;
}

const later = (answer, ctx) => fold('result-later', ctx.text('visit.lookLater'), html`<ul>${answer.later.map(each => html`<li><strong>${ctx.date(each.date)}</strong> ${each.instruction}</li>`)}</ul>`);

/** Brine, salt and bleach to have ready. */
const ready = ({ brine }, ctx) => html`<p>${ctx.text('visit.brineWaits', inFull(brine.waitMinutes, ctx))}</p>`;

/** The request of the plan of upkeep, of the same case. */
const upkeepOf = request => { const { prices, seed, ...rest } = shared(request); return JSON.parse(JSON.stringify(rest)); };

async function saveCalendar(request, ctx) {
  try {
    const blob = await ctx.ask('planUpkeep', request, { accept: 'text/calendar' });
    const anchor = Object.assign(document.createElement('a'), { href: URL.createObjectURL(blob), download: 'brinebook-upkeep.ics' });
    anchor.click();
    setTimeout(() => URL.revokeObjectURL(anchor.href), 10000);
  } catch { ctx.notice(ctx.text('result.sheetFailed')); }
}

const upkeep = (kept, ctx) => {
  const request = upkeepOf(kept.request);
  return onDemand('upkeep', ctx.text('visit.upkeep'), kept, () => ctx.ask('planUpkeep', request, {}), plan => html`<p><button type="button" @click=${() => saveCalendar(request, ctx)}>${ctx.text('visit.saveCalendar')}</button></p>
    <ul>${plan.tasks.map(each => html`<li>${each.dates?.length ? html`<strong>${ctx.date(each.dates[0])}</strong> ` : nothing}${each.task} <span class="quiet">${each.everyDays ? ctx.text('visit.everyDays', each.everyDays) : nothing} ${each.trigger}</span></li>`)}</ul>`, ctx);
};

const goToChecks = () => { if (location.hash.endsWith('/answer')) { history.back(); } setTimeout(() => { const place = document.getElementById(idOf('/checks')); place?.scrollIntoView(); place?.focus({ preventScroll: true }); }, 100); };

shows('planCommissioning', (kept, ctx) => {
  const { answer } = kept;
  return { sentence: answer.summary, action: null, cautionsFirst: true, why: [], does: html`<p><button type="button" class="primary" @click=${goToChecks}>${ctx.text('visit.toChecks')}</button></p>`,
    steps: html`${amiss(answer, ctx)}${settings(answer, ctx)}${ready(answer, ctx)}${later(answer, ctx)}<section class="part">${upkeep(kept, ctx)}</section>` };
});

/** Nothing of this module is drawn by name. */
export const commissionLoaded = true;
