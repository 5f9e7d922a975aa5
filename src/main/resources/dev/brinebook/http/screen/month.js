// SPDX-License-Identifier: Apache-2.0
/** How the bed empties in an example month, which the service calculates when somebody wants to see it. */
import { month } from './charts.js';
import { dateInWords, words } from './figures.js';
import { nothing } from './lit-html.js';
import { onDemand } from './more.js';

const MONTH_DAYS = 28;
/** Days to calculate, so that the regeneration after the month is known. */
const DAYS = 56;
const DAY_MS = 86400000;
/** A bed that is regenerated every day shows what each day takes of it. */
const EACH_DAY = 'each day';
const FIELDS = 'firstDate,capacity,policies.name,policies.events,policies.leftAtEnd,policies.meterVolume,policies.reserve';
/** Days are drawn only where they lead to what the service says is left at each regeneration, within this share of the capacity. */
const AGREES = 0.005;

/** The parts of a request that other operations take too. */
export const shared = ({ water, household, softener, prices, preferences, units, seed }) => ({ water, household, softener, prices, preferences, units, seed });

/** The meter as it is advised to be set. */
const advised = ({ hardness, capacity, meterVolume, reserve, dayOverride, regenerationHour }) => ({ kind: 'meteredDelayed', hardnessSetting: hardness,
  capacitySetting: capacity, dayOverride, regenerationHour,
  ...(meterVolume && reserve ? { reserve: { rule: 'volume', volume: { ...reserve, value: Math.min(reserve.value, meterVolume.value) } } } : {}) });

/** The softener with the meter and the salt that are advised: the salt now, by weight or by the minutes of refill, is another. */
function withMeter({ saltPerRegeneration, minutes: { refill, ...minutes } = {}, ...rest }, settings) {
  return { ...rest, ...(Object.keys(minutes).length ? { minutes } : {}), saltDose: settings.saltDose, control: advised(settings) };
}

/** Regenerations of a policy as days from the first, each with what was left. */
export const regenerationsOf = ({ events }, firstDate) => events.map(({ date, capacityThrownAway }) =>
  ({ date, day: Math.round((Date.parse(date) - Date.parse(firstDate)) / DAY_MS), left: capacityThrownAway }));

/**
 * What is left after each day, of the days as the service has them; null where they do not lead to what it says is left at the
 * regenerations, as where one begins in the middle of a day.
 * @param took what each day takes of the bed
 */
export function dailySteps(capacity, took, regenerations) {
  const steps = [];
  let left = capacity;
  for (let day = 1; day <= took.length; day++) {
    left = Math.max(0, left - took[day - 1]);
    steps.push({ day, left });
    const regenerated = regenerations.find(each => each.day === day);
    if (regenerated && Math.abs(regenerated.left.value - left) > AGREES * capacity) { return null; }
    if (regenerated) {
      left = capacity;
      steps.push({ day, left });
    }
  }
  return steps;
}

/** What was left at each regeneration alone, back to the one before. */
const knownSteps = (capacity, regenerations) => regenerations.flatMap(({ day, left }) => [{ day, left: left.value }, { day, left: capacity }]);

/** The reserve as a share of the capacity, where there is one. */
function reserveOf({ meterVolume, reserve }, capacity, settings, ctx) {
  if (!(reserve?.value > 0 && meterVolume?.value > 0)) { return null; }
  const counted = settings ? ctx.convert(settings.capacity.value, settings.capacity.unit, capacity.unit) / capacity.value : 1;
  return { share: 1 - (1 - reserve.value / meterVolume.value) * counted,
    words: `${ctx.text('result.reserve')}: ${words(settings?.reserve ?? reserve, 'setting', ctx)}` };
}

/** One way of the answer as it is drawn. */
function drawn({ firstDate, capacity, policies: [policy, daily] }, { id, mark, settings }, ctx) {
  const regenerations = regenerationsOf(policy, firstDate);
  const took = [...daily.events.map(each => each.capacityThrownAway), daily.leftAtEnd].slice(0, MONTH_DAYS).map(each => capacity.value - each.value);
  const steps = dailySteps(capacity.value, took, regenerations);
  return { name: ctx.text(id), mark, capacity, daily: steps !== null, steps: steps ?? knownSteps(capacity.value, regenerations),
    regenerations: regenerations.filter(each => each.day <= MONTH_DAYS), reserve: reserveOf(policy, capacity, settings, ctx) };
}

/** The same household on the same days: the softener as it is, and with a meter set as advised. */
export function monthOnDemand(kept, ctx) {
  const { softener, household } = kept.request;
  const { settings } = kept.answer;
  if (!softener?.control && !settings) { return nothing; }
  const ways = [...(softener.control ? [{ id: 'result.asItIs', mark: 'now', softener }] : []),
    ...(settings ? [{ id: 'result.withMeter', mark: 'then', softener: withMeter(softener, settings), settings }] : [])];
  const load = () => Promise.all(ways.map(({ id, softener: given }) => ctx.ask('scheduleRegeneration', { ...shared(kept.request), softener: given,
    days: household?.dailySeries ? undefined : DAYS, policies: [{ name: ctx.text(id), control: given.control },
      { name: EACH_DAY, control: { kind: 'clock', everyDays: 1, regenerationHour: given.control.regenerationHour } }] }, { fields: FIELDS })));
  return onDemand('month', ctx.text('result.monthFold'), kept, load, answers => {
    const policies = answers.map((answer, i) => drawn(answer, ways[i], ctx));
    const counts = policies.map(({ regenerations }) => regenerations.length);
    return month({ title: counts.length > 1 ? ctx.text('result.monthTitle', ...counts) : ctx.text('result.monthTitleOne', counts[0]),
      note: ctx.text(policies.every(({ daily }) => daily) ? 'result.monthNoteDaily' : 'result.monthNote'),
      days: MONTH_DAYS, policies, amount: quantity => words(quantity, 'capacity', ctx), date: date => dateInWords(date, ctx) }, ctx);
  }, ctx);
}
