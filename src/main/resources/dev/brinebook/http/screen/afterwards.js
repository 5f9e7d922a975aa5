// SPDX-License-Identifier: Apache-2.0
/** The questions after a visit, as data: a complaint, the start of a softener, and what a change saved. They come when one of them is opened. */
import { FIELDS, HALVES, HOUSEHOLD, PRICES, QUESTIONS, RINSES, VISITS, WATER, atVisit, caseOf, complete, halfParts, job, moneyIsKnown, taken, withoutMoney } from './questions.js';

/** Fields of the questions after a visit; what was looked at has the words of its signs. */
const LOOKS = ['saltLevelUnchanged', 'saltBridge', 'controllerRight', 'displayCounts', 'bypassNotShut', 'drainRunsInService', 'airBubbles', 'suctionWithoutDrainHose', 'levelRisesInService', 'acidTurnsYellow',
  'bedLow', 'beadsInScreen', 'airGapMissing', 'rawTheSame', 'meterMovesAtNight', 'hotStaysHard', 'softAfterHandStart', 'cameSlowly'];
/** A period of readings, with the water as a total or by the register at both ends. */
const period = name => Object.fromEntries([['From', 'from'], ['To', 'to'], ['Control', 'control'], ['Count', 'regenerations'], ['Salt', 'saltPerRegeneration'], ['SaltOff', 'saltPerRegenerationPlusMinus'], ['Bags', 'bags'],
  ['SaltAtStart', 'saltAtStart'], ['SaltAtEnd', 'saltAtEnd'], ['Water', 'water'], ['MeterStart', 'meterStart', 'water'], ['MeterEnd', 'meterEnd', 'water'], ['Hardness', 'hardness'], ['Outlet', 'outletHardness'],
  ['WaterEach', 'waterPerRegeneration']].map(([end, property, rules]) => [`${name}${end}`, { pointer: `/${name}/${property}`, like: `period${end}`, ...(rules ? { rules: `/${name}/${rules}`, also: [`/${name}/meter`] } : {}) }]));
Object.assign(FIELDS, atVisit({
  symptoms: { pointer: '/symptoms', as: 'symptoms' }, softDays: '/softDays', hotDrops: '/hotHardness', drainInService: '/drainInService', chlorideExcess: '/chlorideExcess', unsafeRawWater: '/unsafeRawWater',
  countDays: '/counts/days', countRegenerations: '/counts/regenerations', countWater: '/counts/meteredWater',
  ...Object.fromEntries(LOOKS.map(name => [name, { pointer: `/looks/${name}`, words: `complaintSign.${name}` }])),
  ...period('before'), ...period('after'), plannedControl: { pointer: '/plannedControl', like: 'periodControl' }, promised: '/promise/saltPercent', changedOn: '/changedOn',
  residents: { pointer: '/household/people', rules: '/people', also: ['/people'] }, startDate: '/preferences/startDate', brineSuction: '/softener/flows/brineSuction',
  checks: { pointer: '/checks', as: 'checks', rules: '/readings', also: ['/readings'] },
}));
/** Whether the salt of a period is known, by regenerations or by bags. */
const isCounted = of => of?.bags !== undefined || (of?.regenerations !== undefined && of.saltPerRegeneration !== undefined);

FIELDS.beforeCount.given = readings => isCounted(readings.before);

/** `first`, `needed` and `more` as for the other questions. */
Object.assign(QUESTIONS, {
  complaint: { operation: 'diagnoseComplaint', visit: true,
    parts: ['symptoms', 'softDays', 'looks', 'counts', 'books', 'hardness', 'hotHardness', 'drain', 'drainInService', 'refill', 'refillMinutes', 'brineDraw', 'brineDrawLiquid', 'brine', 'meterCheck', 'run', 'resinTank', 'serviceFlow',
      'pressure', 'chlorideExcess', 'unsafeRawWater', 'water', 'household', 'softener', 'preferences', 'site'],
    first: { symptoms: ['symptoms'], water: ['hardness'], household: ['people'], softener: ['size', 'control', 'saltPerRegeneration'] },
    needed: ['symptoms', 'hardness', 'people', 'size', 'control'],
    more: { looks: ['softDays', 'unsafeRawWater', ...LOOKS], drops: ['rawDrops', 'outletDrops', 'tapDrops', 'hotDrops', 'dropSize', 'chlorideExcess'], counts: ['countDays', 'countRegenerations', 'countWater'],
      books: ['saltUsed', 'regenerations', 'bagUsed'], drainFlow: ['drainVolume', 'drainSeconds', 'drainInService'], draw: ['drawVolume', 'drawSeconds', 'drawLiquid'], refill: ['refillVolume', 'refillSeconds', 'refillRun'],
      brine: ['degrees', 'brineTemperature'], meter: ['meterBucket', 'meterFills', 'meterCounted', 'meterStep'], run: ['runVolume', 'runStep'], tank: ['outerDiameter', 'innerDiameter', 'innerHeight', 'freeboard', 'gravelDepth', 'bottom'],
      service: ['serviceVolume', 'serviceSeconds'], pressure: ['rest', 'flowing', 'bypassRest', 'bypassFlowing'],
      water: ['iron', ...WATER], household: ['use', ...HOUSEHOLD], softener: ['salt', 'resinAgeYears', 'brineDirection'], cycle: RINSES, site: ['wasteWater'] } },
  start: { operation: 'planCommissioning', visit: true,
    parts: ['water', 'household', 'softener', 'brineTank', 'site', 'prices', 'preferences'],
    first: { water: ['hardness', 'iron'], household: ['people'], softener: ['size'], checks: ['checks'] },
    needed: ['hardness', 'people', 'size'],
    more: { cycle: ['startDate', 'drainFlow', 'brineDrawFlow', 'brineSuction', 'refillFlow', 'supplyFlow'], brineTank: ['brineWidth', 'brineShape', 'voidShare'],
      water: WATER, household: ['use', ...HOUSEHOLD], softener: ['salt', 'brineDirection'], money: PRICES, site: ['wasteWater'] } },
  savings: { operation: 'verifySavings', visit: true,
    parts: ['before', 'after', 'plannedControl', 'promise', 'changedOn', 'prices'],
    first: { before: ['From', 'To', 'Control', 'Count', 'Salt', 'Bags', 'MeterStart', 'MeterEnd'].map(each => `before${each}`), after: ['From', 'To', 'Control', 'Count', 'Salt', 'Bags', 'MeterStart', 'MeterEnd'].map(each => `after${each}`),
      promise: ['promised'] },
    needed: ['beforeFrom', 'beforeTo', 'beforeControl', 'beforeCount'],
    more: { beforeMore: ['SaltAtStart', 'SaltAtEnd', 'SaltOff', 'Water', 'Hardness', 'Outlet', 'WaterEach'].map(each => `before${each}`), afterMore: ['SaltAtStart', 'SaltAtEnd', 'SaltOff', 'Water', 'Hardness', 'Outlet', 'WaterEach'].map(each => `after${each}`),
      promise: ['plannedControl', 'changedOn', 'residents'], money: PRICES } },
});

/** What lacks in a period that was begun, and in a pair of readings of its meter. */
const halfPeriods = readings => ['before', 'after'].filter(name => readings[name]).flatMap(name => {
  const of = readings[name];
  return [...(name === 'before' ? [] : ['from', 'to', 'control'].filter(each => of[each] === undefined)), ...(isCounted(of) ? [] : of.regenerations !== undefined ? ['saltPerRegeneration'] : name === 'before' ? [] : ['regenerations']),
    ...(of.meterStart && !of.meterEnd ? ['meterEnd'] : of.meterEnd && !of.meterStart ? ['meterStart'] : []),
    ...(of.saltAtStart && !of.saltAtEnd ? ['saltAtEnd'] : of.saltAtEnd && !of.saltAtStart ? ['saltAtStart'] : [])].map(each => `/${name}/${each}`);
});

HALVES.savings = halfPeriods;
HALVES.complaint = (readings, contract, fieldOf) => [...halfParts('complaint', readings, contract, fieldOf), ...(readings.hotHardness && !readings.hardness?.tap ? ['/hardness/tap'] : [])];

const complaintOf = (readings, country) => job('diagnoseComplaint', caseOf('complaint', readings, country));

/** The checks that were made, in the order in which they are sent. */
export const readOf = readings => Object.entries(readings.checks ?? {}).filter(([, each]) => each.value !== undefined || each.yes !== undefined).map(([check, each]) => ({ check, ...each }));

/** A softener that has not been set yet, and what was read at it; it starts on the day on which it was seen. */
function startOf(readings, country, seen) {
  const { brineTank, softener, preferences, ...rest } = caseOf('start', readings, country);
  const { control, saltPerRegeneration, saltDose, uncertainty, ...set } = softener;
  const read = readOf(readings);
  return job('planCommissioning', { ...rest, softener: set, ...(preferences || seen ? { preferences: { startDate: seen, ...preferences } } : {}), ...(brineTank?.width ? { brineTank: taken(['shape', 'width', 'voidShare'], brineTank) } : {}), ...(read.length ? { readings: read } : {}) });
}

/** A period, with both readings of its meter where these are given: the service takes one from the other. */
function periodOf({ meterStart, meterEnd, saltBag, ...of }, country) {
  const meter = meterStart && meterEnd && !of.water ? { meter: { unit: meterStart.unit }, kind: 'register', readings: [{ at: of.from, value: meterStart.value }, { at: of.to, value: meterEnd.value }] } : undefined;
  return { ...of, ...(meter ? { meter } : {}), ...(saltBag?.price?.unit === country.money ? { saltBag } : {}) };
}

function savingsOf(readings, country) {
  const { before, after, plannedControl, promise, changedOn } = readings;
  const whole = complete({ prices: readings.prices });
  const { prices } = moneyIsKnown(whole, country) ? whole : withoutMoney(whole);
  return job('verifySavings', { before: periodOf(before, country), ...(after ? { after: periodOf(after, country) } : plannedControl ? { plannedControl } : {}), ...(promise ? { promise } : {}), ...(changedOn ? { changedOn } : {}),
    ...(readings.household?.people ? { people: readings.household.people } : {}), ...(prices ? { prices } : {}), country: country.home, units: country.units });
}

Object.assign(VISITS, { complaint: complaintOf, start: startOf, savings: savingsOf });
