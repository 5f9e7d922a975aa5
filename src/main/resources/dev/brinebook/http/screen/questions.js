// SPDX-License-Identifier: Apache-2.0
/**
 * The questions that a case can be asked, as data: what each needs first, what refines it, and the operation that answers it.
 * A later question of the same case, as a water report or a complaint, is one more entry here.
 */
import { at, put } from './case.js';
import { daysOf } from './paste.js';

/** Fields by name: where in the request, and how they are shown where the contract does not say it. */
export const FIELDS = {
  hardness: { pointer: '/water/hardness', unknown: 'hardnessClass' },
  hardnessUncertainty: { pointer: '/water/hardnessUncertainty' },
  iron: { pointer: '/water/iron', skip: true },
  ironForm: { pointer: '/water/ironForm' },
  manganese: { pointer: '/water/manganese' },
  supply: { pointer: '/water/supply' },
  bacteriaTested: { pointer: '/water/bacteriaTested' },
  ph: { pointer: '/water/ph' },
  dissolvedSolids: { pointer: '/water/dissolvedSolids' },
  sodium: { pointer: '/water/sodium' },
  freeChlorine: { pointer: '/water/freeChlorine' },
  hydrogenSulfide: { pointer: '/water/hydrogenSulfide' },
  temperature: { pointer: '/water/temperature' },
  people: { pointer: '/household/people', instead: ['/household/dailyUse', '/household/weeklyUse'] },
  use: { pointer: '/household/use', as: 'use', also: ['/household/occupancy', '/household/dailyUse', '/household/weeklyUse'] },
  usePerPerson: { pointer: '/household/usePerPerson' },
  bathrooms: { pointer: '/household/bathrooms' },
  leftHard: { pointer: '/household/leftHard', as: 'choices' },
  outdoorUse: { pointer: '/household/outdoorUse' },
  peakFlow: { pointer: '/household/peakFlow' },
  size: { pointer: '/softener/resinVolume', as: 'size', instead: ['/softener/nameplateCapacity', '/softener/tankHeight'] },
  control: { pointer: '/softener/control', as: 'control' },
  // A dose of salt for the amount of resin says the same: it is asked where a case holds it.
  saltPerRegeneration: { pointer: '/softener/saltPerRegeneration', skip: true, also: ['/softener/saltDose'], unless: 'doseOfSoftener' },
  doseOfSoftener: { pointer: '/softener/saltDose' },
  salt: { pointer: '/softener/salt' },
  resinAgeYears: { pointer: '/softener/resinAgeYears' },
  brineDirection: { pointer: '/softener/brineDirection' },
  brineTankCapacity: { pointer: '/softener/brineTankCapacity' },
  backwashMinutes: { pointer: '/softener/minutes/backwash' },
  brineMinutes: { pointer: '/softener/minutes/brineAndSlowRinse' },
  fastRinseMinutes: { pointer: '/softener/minutes/fastRinse' },
  refillMinutes: { pointer: '/softener/minutes/refill' },
  drainFlow: { pointer: '/softener/flows/drain' },
  refillFlow: { pointer: '/softener/flows/refill' },
  brineDrawFlow: { pointer: '/softener/flows/brineDraw' },
  supplyFlow: { pointer: '/softener/flows/supply' },
  cost: { pointer: '/retrofit/cost' },
  rebate: { pointer: '/retrofit/rebate', after: '/retrofit/cost' },
  horizonYears: { pointer: '/retrofit/horizonYears', after: '/retrofit/cost' },
  replacement: { pointer: '/retrofit/upgrades/0/cost', after: '/retrofit/cost', with: { '/retrofit/upgrades/0/kind': 'replacement' } },
  saltPrice: { pointer: '/prices/saltBag/price', with: { '/prices/saltBag/mass': country => country.bag } },
  saltBag: { pointer: '/prices/saltBag/mass', after: '/prices/saltBag/price' },
  waterPrice: { pointer: '/prices/water/price', with: { '/prices/water/per': country => waterFor(country) }, per: '/prices/water/per' },
  sewerPrice: { pointer: '/prices/sewer/price', with: { '/prices/sewer/per': country => waterFor(country) }, per: '/prices/sewer/per' },
  growthPercentPerYear: { pointer: '/prices/growthPercentPerYear' },
  discountPercentPerYear: { pointer: '/prices/discountPercentPerYear' },
  wasteWater: { pointer: '/site/wasteWater' },
  drain: { pointer: '/site/drain' },
  powerWithinReach: { pointer: '/site/powerWithinReach' },
  placeForMeter: { pointer: '/site/placeForMeter' },
  bypass: { pointer: '/site/bypass' },
  resinGood: { pointer: '/site/resinGood' },
  candidates: { pointer: '/candidates', as: 'candidates' },
  saltDose: { pointer: '/saltDose' },
  days: { pointer: '/days', as: 'days' },
};

const waterFor = country => (country.units === 'us' ? { value: 1000, unit: 'gal' } : { value: 1, unit: 'm3' });

const WATER = ['supply', 'hardnessUncertainty', 'ironForm', 'manganese', 'ph', 'dissolvedSolids', 'sodium', 'freeChlorine', 'hydrogenSulfide', 'temperature', 'bacteriaTested'];
const HOUSEHOLD = ['usePerPerson', 'bathrooms', 'leftHard', 'outdoorUse', 'peakFlow'];
const PRICES = ['saltPrice', 'saltBag', 'waterPrice', 'sewerPrice'];
const RINSES = ['backwashMinutes', 'brineMinutes', 'fastRinseMinutes', 'refillMinutes', 'drainFlow', 'refillFlow', 'brineDrawFlow', 'supplyFlow'];

/** `first` is asked at once, those of `needed` before the first answer; `more` refines it, folded, by groups. */
export const QUESTIONS = {
  worth: { operation: 'assess', parts: ['water', 'household', 'softener', 'retrofit', 'site', 'prices', 'preferences'],
    first: { water: ['hardness'], household: ['people'], softener: ['size', 'control', 'saltPerRegeneration'], money: ['cost'] },
    needed: ['hardness', 'people', 'size', 'control'],
    more: { water: ['iron', ...WATER], household: ['use', ...HOUSEHOLD], softener: ['salt', 'resinAgeYears', 'brineDirection', 'brineTankCapacity'],
      money: ['rebate', 'horizonYears', 'replacement', ...PRICES, 'growthPercentPerYear', 'discountPercentPerYear'],
      cycle: RINSES, site: ['wasteWater', 'drain', 'powerWithinReach', 'placeForMeter', 'bypass', 'resinGood'] } },
  hard: { operation: 'reviewSettings', parts: ['water', 'household', 'softener', 'retrofit', 'site', 'prices', 'preferences'],
    first: { water: ['hardness', 'iron'], household: ['people'], softener: ['size', 'control', 'saltPerRegeneration'] },
    needed: ['hardness', 'people', 'size', 'control'],
    more: { household: ['use', ...HOUSEHOLD], cycle: RINSES, water: WATER, softener: ['salt', 'resinAgeYears', 'brineDirection', 'brineTankCapacity'],
      money: ['cost', ...PRICES], site: ['wasteWater'] } },
  fits: { operation: 'sizeSoftener', parts: ['water', 'household', 'candidates', 'salt', 'saltDose', 'prices', 'preferences'],
    first: { water: ['hardness', 'iron'], household: ['people', 'bathrooms'] },
    needed: ['hardness', 'people'],
    more: { goods: ['candidates'], household: ['use', 'usePerPerson', 'leftHard', 'outdoorUse', 'peakFlow'], water: WATER, softener: ['saltDose'], money: PRICES } },
  need: { operation: 'sizeSoftener', parts: ['water', 'household', 'prices', 'preferences'],
    alone: 'convertHardness',
    first: { water: ['hardness', 'iron'], household: ['people'] },
    needed: ['hardness'],
    more: { household: ['use', ...HOUSEHOLD], water: WATER, money: PRICES } },
  setup: { operation: 'assess', parts: ['water', 'household', 'softener', 'site', 'prices', 'preferences'],
    first: { water: ['hardness', 'iron'], household: ['people'], softener: ['size', 'control'] },
    needed: ['hardness', 'people', 'size'],
    assumed: { '/softener/control': { kind: 'meteredDelayed' } },
    more: { cycle: RINSES, softener: ['salt', 'resinAgeYears', 'brineDirection', 'brineTankCapacity'], household: ['use', ...HOUSEHOLD], water: WATER,
      money: PRICES, site: ['wasteWater', 'drain', 'powerWithinReach', 'placeForMeter', 'bypass', 'resinGood'] } },
  readings: { operation: 'backtestSettings', parts: ['water', 'household', 'softener', 'preferences'],
    first: { days: ['days'], water: ['hardness'], household: ['people'], softener: ['size', 'control', 'saltPerRegeneration'] },
    needed: ['days', 'hardness', 'people', 'size', 'control'],
    more: { water: ['iron', ...WATER], household: HOUSEHOLD, softener: ['salt', 'resinAgeYears', 'brineDirection'] } },
};

export const QUESTION_IDS = Object.keys(QUESTIONS);

/** Where operations are asked. */
export const PATHS = { assess: '/v1/assessment', reviewSettings: '/v1/settings-review', sizeSoftener: '/v1/softener-sizing', backtestSettings: '/v1/backtest',
  convertHardness: '/v1/hardness-conversion', readMeter: '/v1/meter-readings', scheduleRegeneration: '/v1/regeneration-schedule',
  compareAlternatives: '/v1/alternatives', chartResinCapacity: '/v1/resin-capacity', chooseReserve: '/v1/reserve-choice', designCycle: '/v1/regeneration-cycle',
  compareCases: '/v1/comparison', blendHardness: '/v1/hardness-blending', estimatePayback: '/v1/retrofit-payback' };

/** The field of a question that a pointer of its request belongs to, with its name; undefined where it has none. */
export function fieldAt(pointer, question) {
  const within = (part, whole) => part === whole || part.startsWith(`${whole}/`);
  const names = [...Object.values(QUESTIONS[question].first).flat(), ...Object.values(QUESTIONS[question].more).flat()];
  const found = names.find(name => [FIELDS[name].pointer, ...(FIELDS[name].instead ?? []), ...(FIELDS[name].also ?? [])].some(each => within(pointer, each) || within(each, pointer)));
  return found && { name: found, pointer: FIELDS[found].pointer };
}

/** Whether a field has what an answer needs of it. */
export function isGiven(name, readings) {
  const { pointer, instead = [] } = FIELDS[name];
  if (name === 'control') { return controlGiven(readings); }
  if (name === 'days') { return daysOf(readings.days)?.ready === true; }
  if (name === 'size' && at(readings, '/softener/tankHeight') && !at(readings, '/softener/tankDiameter')) { return false; }
  return [pointer, ...instead].some(each => at(readings, each) !== undefined);
}

function controlGiven(readings) {
  const control = readings.softener?.control;
  return control !== undefined && (control.kind !== 'clock' || control.everyDays !== undefined || (control.weekdays ?? []).length > 0);
}

/** Whether more than the hardness was entered that a question asks for: then the hardness alone is no answer to it. */
const isMore = (question, readings) => [...firstOf(question), ...moreOf(question)].filter(name => name !== 'hardness').some(name =>
  [FIELDS[name].pointer, ...(FIELDS[name].instead ?? []), ...(FIELDS[name].also ?? [])].some(each => at(readings, each) !== undefined));

/** Names of the needed fields that are still open; people too where more than the hardness was entered, as nothing entered is left out. */
export function missingOf(question, readings) {
  const { needed, alone } = QUESTIONS[question];
  return [...needed, ...(alone && isMore(question, readings) ? ['people'] : [])].filter(name => !isGiven(name, readings));
}

/** The names of the fields that a question shows first, and those that refine it. */
export const firstOf = question => Object.values(QUESTIONS[question].first).flat();
export const moreOf = question => Object.values(QUESTIONS[question].more).flat();

/** Water the household request takes beside the readings: the country, from which the service takes usual use and rules. */
function household(readings, country) {
  const given = readings.household ?? {};
  return given.country ? given : { ...given, country: country.home };
}

/** The step in which the controllers of a country set the hardness, where nothing says in which unit this one does. */
function inDegreesOf(country, request) {
  const known = request.preferences?.controller?.hardnessStep ?? request.softener?.control?.hardnessSetting;
  return country.setting && !known ? put(request, '/preferences/controller/hardnessStep', country.setting) : request;
}

const PRICES_OF_ALL = ['saltBag', 'water', 'sewer'];

/** Whether money can be in the country's own: where usual prices are in another currency, it needs all three prices. */
export const moneyIsKnown = (readings, country) => country.money === country.pricedIn
  || PRICES_OF_ALL.every(name => at(readings, `/prices/${name}/price`) !== undefined);

/** Without prices in the country's own money no amount of it can be sent. */
function withoutMoney(request) {
  const { prices, retrofit, ...rest } = request;
  const { growthPercentPerYear, discountPercentPerYear } = prices ?? {};
  const rates = Object.fromEntries(Object.entries({ growthPercentPerYear, discountPercentPerYear }).filter(([, value]) => value !== undefined));
  const candidates = rest.candidates?.map(({ price, ...each }) => each);
  return { ...rest, ...(Object.keys(rates).length ? { prices: rates } : {}), ...(candidates ? { candidates } : {}) };
}

/** Half a request is none: prices without their amounts, a rebate without a cost, an improvement without its kind. */
function complete(request) {
  let whole = request;
  if (whole.retrofit && !whole.retrofit.cost) { whole = put(whole, '/retrofit', undefined); }
  for (const name of ['water', 'sewer']) {
    if (whole.prices?.[name] && !(whole.prices[name].price && whole.prices[name].per)) { whole = put(whole, `/prices/${name}`, undefined); }
  }
  if (whole.prices?.saltBag && !(whole.prices.saltBag.price && whole.prices.saltBag.mass)) { whole = put(whole, '/prices/saltBag', undefined); }
  if (whole.candidates) {
    const ready = whole.candidates.filter(each => each?.sku && (each.resinVolume || each.nameplateCapacity || (each.tankDiameter && each.tankHeight)));
    whole = { ...whole, candidates: ready.length ? ready : undefined };
  }
  return whole;
}

/**
 * The request of a case as the contract has it, with its operation and path; null while needed fields are open. The days of what a
 * meter showed are not in it: the service makes them of the readings.
 */
export function requestOf(question, readings, country) {
  const { operation, parts, alone } = QUESTIONS[question];
  if (missingOf(question, readings).length > 0) { return null; }
  if (alone && !isGiven('people', readings)) {
    return { operation: alone, path: PATHS[alone], request: { hardness: readings.water.hardness } };
  }
  const taken = Object.fromEntries(parts.filter(name => readings[name] !== undefined).map(name => [name, readings[name]]));
  const assumed = Object.entries(QUESTIONS[question].assumed ?? {}).filter(([pointer]) => at(taken, pointer) === undefined)
    .reduce((part, [pointer, value]) => put(part, pointer, value), taken);
  const full = inDegreesOf(country, complete({ ...assumed, household: household(readings, country), units: country.units }));
  const request = moneyIsKnown(full, country) ? full : withoutMoney(full);
  const series = question === 'readings' ? daysOf(readings.days).series : undefined;
  return { operation, path: PATHS[operation], request: series ? { ...request, days: series } : request };
}
