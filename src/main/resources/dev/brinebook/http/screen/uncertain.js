// SPDX-License-Identifier: Apache-2.0
/** What is asked for when somebody wants to see it: an example month of the bed, and how sure a change is to pay. */
import { dots, month, tornado } from './charts.js';
import { dateInWords, ofTwenty, words } from './figures.js';
import { html, nothing } from './lit-html.js';
import { onDemand } from './more.js';

const MONTH_DAYS = 28;
/** Days to calculate, so that the regeneration after the month is known. */
const DAYS = 56;

const shared = ({ water, household, softener, prices, preferences, units, seed }) => ({ water, household, softener, prices, preferences, units, seed });

/** The meter as it is advised to be set. */
const advised = ({ meterVolume, reserve, dayOverride, regenerationHour }) => ({ kind: 'meteredDelayed', dayOverride, regenerationHour,
  ...(meterVolume && reserve ? { reserve: { rule: 'volume', volume: { ...reserve, value: Math.min(reserve.value, meterVolume.value) } } } : {}) });

/** The softener with the meter and the salt that are advised: the salt now, by weight or by the minutes of refill, is another. */
function withMeter({ saltPerRegeneration, minutes: { refill, ...minutes } = {}, ...rest }, settings) {
  return { ...rest, ...(Object.keys(minutes).length ? { minutes } : {}), saltDose: settings.saltDose, control: advised(settings) };
}

/** The same household on the same days: the softener as it is, and with a meter set as advised. */
export function monthOnDemand(kept, ctx) {
  const { softener, household } = kept.request;
  const { settings } = kept.answer;
  if (!softener?.control && !settings) { return nothing; }
  const ways = [...(softener.control ? [['result.asItIs', softener]] : []), ...(settings ? [['result.withMeter', withMeter(softener, settings)]] : [])];
  const load = () => Promise.all(ways.map(([id, given]) => ctx.ask('scheduleRegeneration', { ...shared(kept.request), softener: given,
    policies: [{ name: ctx.text(id), control: given.control }], days: household?.dailySeries ? undefined : DAYS }, { fields: 'firstDate,capacity,policies.name,policies.events' })));
  return onDemand('month', ctx.text('result.monthFold'), kept, load, answers => {
    const policies = answers.map(({ firstDate, capacity, policies: [policy] }, i) => ({ firstDate, capacity, name: policy.name, events: policy.events, mark: ways[i][0] === 'result.asItIs' ? 'now' : 'then' }));
    const counts = policies.map(({ firstDate, events }) => events.filter(event => Date.parse(event.date) <= Date.parse(firstDate) + MONTH_DAYS * 86400000).length);
    return month({ title: counts.length > 1 ? ctx.text('result.monthTitle', ...counts) : ctx.text('result.monthTitleOne', counts[0]), note: ctx.text('result.monthNote'),
      days: MONTH_DAYS, policies, amount: quantity => words(quantity, 'capacity', ctx), date: date => dateInWords(date, ctx) }, ctx);
  }, ctx);
}

const INPUTS = { hardness: 'result.driverHardness', dailyUse: 'result.driverUse', capacity: 'result.driverCapacity', saltPrice: 'result.driverSalt', waterPrice: 'result.driverWater',
  sewerPrice: 'result.driverSewer', servicePrice: 'result.driverService', firstCost: 'result.driverCost', growth: 'result.driverGrowth', discount: 'result.driverDiscount' };
const PAYBACK_YEARS = 5;

/** Converting against the cheaper of leaving it and correcting it, under inputs that are not known exactly. */
export function surenessOnDemand(kept, ctx) {
  const { retrofit, softener } = kept.request;
  const { verdict } = kept.answer;
  const rung = verdict.ladder.find(each => each.step === 'convert');
  if (!retrofit?.cost || !rung?.overBelow || softener?.control?.kind !== 'clock') { return nothing; }
  const [found, right] = ['asFound', 'setRight'].map(step => verdict.ladder.find(each => each.step === step));
  const corrected = right?.costPerYear?.value < found?.costPerYear?.value;
  const name = { asFound: found.name, tunedClock: right?.name ?? '', metered: rung.name };
  const alternatives = [corrected ? { name: name.tunedClock, kind: 'tunedClock' } : { name: name.asFound, kind: 'asFound' },
    { name: name.metered, kind: 'metered', cost: retrofit.cost, rebate: retrofit.rebate }];
  const load = () => ctx.ask('compareAlternatives', { ...shared(kept.request), alternatives, horizonYears: retrofit.horizonYears, uncertainty: { paybackYears: PAYBACK_YEARS } },
    { fields: 'horizonYears,alternatives.uncertain' });
  return onDemand('sureness', ctx.text('result.sureFold'), kept, load, answer => {
    const { uncertain } = answer.alternatives[1];
    const within = ofTwenty(uncertain.paysWithinPercent);
    const percent = factor => Math.round(Math.abs(factor - 1) * 100);
    const swing = each => Math.abs(each.worthAtHigh.value - each.worthAtLow.value);
    const widest = uncertain.drivers.reduce((most, each) => swing(each) > swing(most) ? each : most);
    const input = each => ctx.text(INPUTS[each.input]);
    return html`<p>${ctx.text('result.sureLead', rung.name, alternatives[0].name, words(uncertain.draws, 'hardDays', ctx))}</p>
      ${dots({ title: ctx.text('result.dotsTitle', within, uncertain.withinYears), note: ctx.text('result.dotsNote'), years: uncertain.paybackYears,
        within: { percent: uncertain.paysWithinPercent },
        horizon: answer.horizonYears, amount: value => words(value, 'years', ctx) }, ctx)}
      ${tornado({ title: ctx.text('result.tornadoTitle', input(widest)), note: ctx.text('result.tornadoNote', answer.horizonYears), drivers: uncertain.drivers,
        name: each => ctx.text('result.driver', input(each), percent(each.lowFactor), percent(each.highFactor)), median: uncertain.netPresentValue.median,
        money: quantity => words(quantity, 'money', ctx) }, ctx)}
      <p class="quiet">${ctx.text('result.sureLimits')}</p>`;
  }, ctx);
}
