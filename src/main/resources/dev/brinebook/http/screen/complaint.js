// SPDX-License-Identifier: Apache-2.0
/** A complaint: what people say is wrong, its likely causes with what speaks for each, and the next test with fields for its result. */
import './afterwards.js';
import { shows } from './answers.js';
import { fieldOf } from './contract.js';
import { at } from './case.js';
import { COMPOSITES, fieldView, idOf } from './fields.js';
import { words } from './figures.js';
import { html, nothing } from './lit-html.js';
import { FIELDS, halvesOf, labelId } from './questions.js';
import { parsed, symbol } from './units.js';
import { inFull } from './visit-parts.js';

// ---- the form ----

/** What people say, the most usual first. */
const SYMPTOMS = ['hardAlways', 'hardAtTimes', 'hardAtWeekends', 'hardHotOnly', 'salty', 'muchSalt', 'noSaltUsed', 'brineTankFull', 'waterToDrain', 'lowPressure', 'colour', 'odour', 'resinInTaps', 'slippery',
  'regeneratesTooOften', 'neverRegenerates', 'wrongHour'];

COMPOSITES.symptoms = function symptoms(form, name, pointer) {
  const { text } = form;
  const given = form.case.readings.symptoms ?? [];
  const known = fieldOf(form.contract, '/symptoms/0').options;
  const problem = form.problems.get(pointer);
  const set = (each, on) => { const next = known.filter(other => (other === each ? on : given.includes(other))); form.set([[`/readings${pointer}`, next.length ? next : undefined]], `${pointer}/${each}`); };
  return html`<fieldset class="field" id=${idOf(pointer)} data-pointer=${pointer} tabindex="-1"><legend>${text(labelId(name))}</legend>
    <div class="tiles">${SYMPTOMS.filter(each => known.includes(each)).map(each => html`<label class="tile"><input type="checkbox" .checked=${given.includes(each)} @change=${event => set(each, event.target.checked)}> <span>${text(`visit.symptom.${each}`)}</span></label>`)}</div>
    ${problem ? html`<p class="fault"><span aria-hidden="true">▲ </span>${problem}</p>` : nothing}</fieldset>`;
};

// ---- the answer ----

/** Fields in which the result of a test is entered, by the sign that it shows; a sign that is looked at has a field of its own name. */
const ENTERED = { softDays: ['softDays'], outletShare: ['rawDrops', 'outletDrops'], rawShare: ['tapDrops'], rawChange: ['rawDrops'], hotShare: ['tapDrops', 'hotDrops'], suction: ['drawVolume', 'drawSeconds', 'drawLiquid'],
  drainFlow: ['drainVolume', 'drainSeconds'], refillWater: ['refillVolume', 'refillSeconds', 'refillRun'], brineStrength: ['degrees', 'brineTemperature'], saltByBooks: ['saltUsed', 'regenerations', 'bagUsed'],
  meterShare: ['meterBucket', 'meterFills', 'meterCounted'], regenerationRate: ['countDays', 'countRegenerations'], meteredUse: ['countDays', 'countWater'], breakthrough: ['rawDrops', 'runVolume', 'runStep'],
  pressureLoss: ['rest', 'flowing', 'bypassRest', 'bypassFlowing', 'serviceVolume', 'serviceSeconds'], resinVolume: ['outerDiameter', 'innerHeight', 'freeboard'], chlorideExcess: ['chlorideExcess'], meterSetting: [], hardNights: [], ironInWater: [] };
const fieldsOf = test => [...new Set(test.signs.flatMap(sign => ENTERED[sign] ?? [sign]))];

/** Results that were typed and not sent yet, by the case and the test, and the test that was chosen instead of the first. */
const typed = new Map();
const chosen = new WeakMap();

const isLook = sign => FIELDS[sign]?.pointer?.startsWith('/looks/') || sign === 'ironInWater';
const unitOf = unit => (unit === '%' ? '\u00a0%' : unit === 'degrees' ? '°' : unit ? `\u00a0${unit === 'days' || unit === 'regenerations a year' ? '' : symbol(unit)}` : '');
const number = (value, unit, ctx) => (unit === 'regenerations a year' ? ctx.text('visit.timesAYear', inFull(value, ctx)) : unit === 'days' ? ctx.text('visit.dayNumber', inFull(value, ctx)) : `${inFull(value, ctx)}${unitOf(unit)}`);
/** What a cause lets expect: of a look how often it is a yes, of a number its range. */
const expected = (sign, low, high, unit, ctx) => (isLook(sign) ? ctx.text('visit.yesOfTwenty', Math.round(low / 5)) : low === high ? number(low, unit, ctx) : ctx.text('visit.numberTo', inFull(low, ctx), number(high, unit, ctx)));

/** The answer that each cause predicts of a test. */
const predictions = (answer, test, ctx) => html`<details><summary>${ctx.text('visit.whatItTells')}</summary>${test.signs.filter(sign => test.expected.some(each => each.sign === sign)).map(sign => html`<h4>${ctx.text(`complaintSign.${sign}`)}</h4>
  <ul>${test.expected.filter(each => each.sign === sign).map(each => html`<li><strong>${expected(sign, each.low, each.high, each.unit, ctx)}</strong> ${answer.causes.find(({ cause }) => cause === each.cause)?.message ?? ''}</li>`)}</ul>`)}</details>`;

/** Fields for the result of the next test. They are asked for here, and go into the case when they are whole. */
function entry(test, ctx) {
  const whole = ctx.form;
  const key = `${whole.case.id}/${test.test}`;
  const held = typed.get(key) ?? { changes: [], checked: false };
  const names = fieldsOf(test);
  const mine = ctx.applied(whole.case, held.changes);
  const missing = halvesOf('complaint', mine.readings, whole.contract, fieldOf).filter(pointer => names.some(name => FIELDS[name].pointer === pointer));
  const faults = new Map([...(held.changes.length ? [] : [[FIELDS[names[0]].pointer, ctx.text('visit.enterThis', ctx.name(FIELDS[names[0]].pointer) ?? '')]]), ...missing.map(pointer => [pointer, ctx.text('visit.enterThis', ctx.name(pointer) ?? '')]),
    ...names.map(name => FIELDS[name].pointer).filter(pointer => mine.drafts[pointer] && parsed(mine.drafts[pointer], []) !== undefined && at(mine.readings, pointer) === undefined).map(pointer => [pointer, ctx.text('screen.notNumber', ctx.name(pointer) ?? '')])]);
  const form = { ...whole, case: mine, problems: held.checked ? faults : new Map(), set(changes) { typed.set(key, { ...held, changes: [...(typed.get(key)?.changes ?? []), ...changes] }); ctx.redraw(); } };
  const send = event => {
    event.preventDefault();
    if (faults.size) { typed.set(key, { ...held, checked: true }); ctx.redraw(); document.getElementById(idOf([...faults.keys()][0]))?.focus(); return; }
    typed.delete(key);
    whole.set(held.changes, `#test-${test.test}`);
    document.getElementById('answer')?.focus({ preventScroll: true });
  };
  const there = names.filter(name => ctx.isUnfolded(name));
  return html`<form class="entry" novalidate @submit=${send}>${names.map(name => there.includes(name) ? html`<p><button type="button" class="link" @click=${() => ctx.edit(FIELDS[name].pointer)}>${ctx.text(labelId(name))}</button></p>` : fieldView(name, form, undefined, false))}
    ${there.length === names.length ? nothing : html`<p><button type="submit" class="primary">${ctx.text('visit.takeResult')}</button></p>`}</form>`;
}

/** Shows the next test in large type, with what each result would mean: the one chosen, or else the first. The list below offers the others. */
function next(answer, ctx) {
  const { nextTests: tests } = answer;
  if (!tests.length) { return html`<section aria-labelledby="result-tests"><h2 id="result-tests" tabindex="-1">${ctx.text('visit.nextTest')}</h2><p>${ctx.text('visit.noMoreTests')}</p></section>`; }
  const test = tests.find(each => each.test === chosen.get(answer)) ?? tests[0];
  const rest = tests.filter(each => each !== test);
  return html`<section class="next-test" aria-labelledby="result-tests"><h2 id="result-tests" tabindex="-1">${ctx.text('visit.nextTest')}</h2>
    <p class="lead">${test.message}</p><p class="quiet">${ctx.text('visit.takesMinutes', inFull(test.minutes, ctx))}</p>
    ${ctx.fresh ? entry(test, ctx) : nothing}${predictions(answer, test, ctx)}
    ${rest.length ? html`<details><summary>${ctx.text('visit.otherTests', rest.length)}</summary><ul class="bare">${rest.map(each => html`<li><p>${each.message} <span class="quiet">${ctx.text('visit.takesMinutes', inFull(each.minutes, ctx))}</span></p>
      <p><button type="button" class="small" @click=${() => { chosen.set(answer, each.test); ctx.redraw(); document.getElementById('result-tests')?.focus(); }}>${ctx.text('visit.doThis')}</button></p></li>`)}</ul></details>` : nothing}</section>`;
}

/** How many lines of what was found are open; what does not agree always is. */
const OPEN_EVIDENCE = 2;

/** What a cause predicts against what was found: what does not agree first. */
function evidence({ balances }, of, ctx) {
  const known = balances.filter(each => each.met !== undefined).sort((one, other) => Number(one.met) - Number(other.met));
  const line = each => {
    const found = each.measured !== undefined ? html`<data value=${each.measured} data-from=${`/causes/${of}/balances/${balances.indexOf(each)}/measured`} data-kind="three">${number(each.measured, each.unit, ctx)}</data>` : ctx.text(`screen.flag.${each.seen}`);
    return html`<li><strong>${ctx.text(each.met ? 'visit.agrees' : 'visit.agreesNot')}</strong> ${each.message}: ${found} <span class="quiet">${ctx.text('visit.expects', expected(each.sign, each.predictedLow, each.predictedHigh, each.unit, ctx))}</span></li>`;
  };
  const front = known.slice(0, Math.max(OPEN_EVIDENCE, known.filter(each => !each.met).length));
  const list = some => html`<ul class="bare evidence">${some.map(line)}</ul>`;
  return known.length ? html`<h4>${ctx.text('visit.speaksFor')}</h4>${list(front)}${known.length > front.length ? html`<details><summary>${ctx.text('visit.moreFits', known.length - front.length)}</summary>${list(known.slice(front.length))}</details>` : nothing}` : nothing;
}

/** What it takes while it is left, without what is nothing. */
function left({ ifLeft }, ctx) {
  const much = ({ value }) => Math.abs(value) >= 1;
  const size = ({ value, unit }) => ({ value: Math.abs(value), unit });
  const parts = [...(ifLeft.hardDaysPerYear >= 1 ? [ctx.text('visit.leftHard', Math.round(ifLeft.hardDaysPerYear))] : []),
    ...[['saltPerYear', 'saltYear', 'Salt'], ['waterPerYear', 'waterYear', 'Water']].filter(([name]) => much(ifLeft[name])).map(([name, kind, id]) => ctx.text(`visit.left${id}${ifLeft[name].value < 0 ? 'Less' : ''}`, words(size(ifLeft[name]), kind, ctx)))];
  return parts.length ? html`<p><strong>${ctx.text('visit.ifLeft')}</strong> ${parts.join(', ')}</p>` : nothing;
}

/** Nothing is certain before it is repaired. */
const SUREST = 99;
const inWords = ({ sharePercent }, ctx) => ctx.text('visit.sure', Math.min(SUREST, Math.round(sharePercent)));
const sure = (cause, of, ctx) => html`<data value=${cause.sharePercent} data-from=${`/causes/${of}/sharePercent`} data-kind="percent">${inWords(cause, ctx)}</data>`;
const detail = (cause, of, ctx) => html`<p><strong>${ctx.text('visit.remedy')}</strong> ${cause.fix}</p>${left(cause, ctx)}${evidence(cause, of, ctx)}`;

/** Causes that can hurt stand by themselves, before all others. */
function causes({ causes: all }, top, ctx) {
  const each = (cause, open) => html`<li class=${cause.canHurt ? 'stop' : ''}><details ?open=${open}><summary><h3>${cause.message}</h3><span class="aside">${sure(cause, all.indexOf(cause), ctx)}</span></summary>${detail(cause, all.indexOf(cause), ctx)}</details></li>`;
  const risky = all.filter(cause => cause.canHurt);
  const rest = all.filter(cause => !cause.canHurt);
  return html`${risky.length ? html`<section aria-labelledby="result-risky"><h2 id="result-risky" tabindex="-1">${ctx.text('visit.ruleOutFirst')}</h2><ul class="findings bare">${risky.map(cause => each(cause, true))}</ul></section>` : nothing}
    ${rest.length ? html`<section aria-labelledby="result-causes"><h2 id="result-causes" tabindex="-1">${ctx.text('visit.likelyCauses')}</h2><ol class="findings">${rest.map(cause => each(cause, cause === top))}</ol></section>` : nothing}`;
}

shows('diagnoseComplaint', (kept, ctx) => {
  const { answer } = kept;
  const top = [...answer.causes].sort((one, other) => other.sharePercent - one.sharePercent)[0];
  const named = top && answer.verdict !== 'unexplained';
  return { sentence: !named ? answer.summary : answer.verdict === 'found' ? top.message : `${ctx.text('visit.mostLikely')} ${top.message}`, action: answer.nextTests.length && answer.verdict !== 'found' ? ['result-tests', 'visit.toNextTest'] : null,
    ...(named ? { figure: inWords(top, ctx), range: answer.causes.length > 1 ? ctx.text('visit.otherCauses', answer.causes.length - 1) : '' } : {}),
    cautionsFirst: true, why: [answer.summary], steps: answer.verdict === 'found' ? html`${causes(answer, top, ctx)}${next(answer, ctx)}` : html`${next(answer, ctx)}${causes(answer, top, ctx)}` };
});
