// SPDX-License-Identifier: Apache-2.0
/** How sure a change is to pay, asked for when somebody wants to see it. */
import { dots, tornado } from './charts.js';
import { gainInWords, gainsInWords, ofTwenty, words } from './figures.js';
import { html, nothing } from './lit-html.js';
import { shared } from './month.js';
import { onDemand } from './more.js';

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
        money: amount => gainInWords(amount, ctx), range: (from, to) => gainsInWords(from, to, ctx) }, ctx)}
      <p class="quiet">${ctx.text('result.sureLimits')}</p>`;
  }, ctx);
}
