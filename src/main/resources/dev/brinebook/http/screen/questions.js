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
  // What somebody measured of the softener may be off by so much: a measurement fills it in, and who knows better corrects it.
  resinOff: { pointer: '/softener/uncertainty/resinVolume', after: '/softener/resinVolume' },
  saltOff: { pointer: '/softener/uncertainty/saltPerRegeneration', after: '/softener/saltPerRegeneration' },
};

/** Fields of the two questions of a visit, whose words come when one of them is opened. `rules` is where the contract has them. */
export const atVisit = pointers => Object.fromEntries(Object.entries(pointers).map(([name, of]) => [name, { visit: true, ...(typeof of === 'string' ? { pointer: of } : of) }]));
const bucket = (name, part) => ({ [`${name}Volume`]: `/${part}/volume`, [`${name}Seconds`]: { pointer: `/${part}/seconds`, as: 'numbers' },
  [`${name}Weighed`]: `/${part}/weighed`, [`${name}Off`]: `/${part}/volumePlusMinus` });
Object.assign(FIELDS, atVisit({
  results: { pointer: '/results', as: 'results' },
  tap: { pointer: '/sample/tap', rules: '/results/0/tap' }, method: { pointer: '/sample/method', rules: '/results/0/method' },
  firstDraw: { pointer: '/sample/firstDraw', rules: '/results/0/firstDraw' }, sampledOn: { pointer: '/sample/sampledOn', rules: '/results/0/sampledOn' },
  reportSupply: '/supply', atTap: '/appearance/atTap', afterStanding: '/appearance/afterStanding', slime: '/appearance/slime', naturalSodium: '/naturalSodium',
  ...bucket('drain', 'drain'), ...bucket('refill', 'refill'), ...bucket('draw', 'brineDraw'), ...bucket('service', 'serviceFlow'),
  refillRun: '/refillMinutes', drawLiquid: '/brineDrawLiquid',
  meterBucket: '/meterCheck/bucket', meterFills: '/meterCheck/fills', meterCounted: '/meterCheck/counted', meterStep: '/meterCheck/displayStep',
  outerDiameter: '/resinTank/outerDiameter', innerDiameter: '/resinTank/innerDiameter', innerHeight: '/resinTank/height', freeboard: '/resinTank/freeboard',
  gravelDepth: '/resinTank/gravelDepth', bottom: '/resinTank/bottom',
  brineShape: '/brineTank/shape', brineWidth: '/brineTank/width', wellWidth: '/brineTank/wellWidth', levelBefore: '/brineTank/levelBefore', levelAfter: '/brineTank/levelAfter',
  saltForm: '/brineTank/saltForm', voidShare: '/brineTank/voidShare', voidShareOff: '/brineTank/voidSharePlusMinus',
  degrees: '/brine/degrees', brineTemperature: '/brine/temperature',
  rest: '/pressure/rest', flowing: '/pressure/flowing', bypassRest: '/pressure/bypassRest', bypassFlowing: '/pressure/bypassFlowing',
  rawDrops: '/hardness/raw', outletDrops: '/hardness/outlet', tapDrops: '/hardness/tap', dropSize: '/hardness/dropSize',
  runVolume: '/run/volume', runStep: '/run/testStep', saltUsed: '/books/salt', regenerations: '/books/regenerations', bagUsed: '/books/bag', waterTemperature: '/waterTemperature',
  saltTank: { pointer: '/saltTank', of: 'checkInstallation' }, drainLine: { pointer: '/drainLine', of: 'checkInstallation' },
  softerOutlet: { pointer: '/softerOutlet', of: 'checkInstallation' }, valveComesOff: { pointer: '/valveComesOff', of: 'checkInstallation' },
  brineTankAndLine: '/site/brineTankAndLine', drainLineFlow: '/site/drainFlow', valveBore: '/site/valveBore', surgeProtection: '/site/surgeProtection',
}));
/** Prices of meeting a condition of the site, asked where it is not met. */
export const PRICED = { '/site/brineTankAndLine': 'brineTankAndLine', '/site/drain': 'drain', '/site/placeForMeter': 'placeForMeter', '/site/powerWithinReach': 'powerWithinReach',
  '/site/surgeProtection': 'surgeProtection', '/site/bypass': 'bypass', '/site/resinGood': 'resin' };

/** The ids of the words of a field, by what they are for. */
export const labelId = name => FIELDS[name]?.words ?? (FIELDS[name]?.visit ? `visit.field.${FIELDS[name].like ?? name}` : `screen.field.${name}`);
export const hintId = name => (FIELDS[name]?.visit ? `visit.hint.${FIELDS[name].like ?? name}` : `screen.hint.${name}`);
export const optionId = (name, option) => (FIELDS[name]?.visit ? `visit.option.${option}` : `screen.option.${option}`);
export const enterId = name => (FIELDS[name]?.visit ? `visit.enter.${FIELDS[name].like ?? name}` : `screen.enter.${name}`);
/** Groups whose words come with the questions of a visit. */
const VISIT_GROUPS = ['report', 'sample', 'look', 'drainFlow', 'refill', 'draw', 'service', 'meter', 'tank', 'brineTank', 'brine', 'pressure', 'drops', 'run', 'books', 'plate', 'signs', 'place',
  'symptoms', 'looks', 'counts', 'before', 'beforeMore', 'after', 'afterMore', 'promise', 'checks'];
export const groupId = id => (VISIT_GROUPS.includes(id) ? `visit.group.${id}` : `screen.group.${id}`);

const waterFor = country => (country.units === 'us' ? { value: 1000, unit: 'gal' } : { value: 1, unit: 'm3' });

export const WATER = ['supply', 'hardnessUncertainty', 'ironForm', 'manganese', 'ph', 'dissolvedSolids', 'sodium', 'freeChlorine', 'hydrogenSulfide', 'temperature', 'bacteriaTested'];
export const HOUSEHOLD = ['usePerPerson', 'bathrooms', 'leftHard', 'outdoorUse', 'peakFlow'];
export const PRICES = ['saltPrice', 'saltBag', 'waterPrice', 'sewerPrice'];
export const RINSES = ['backwashMinutes', 'brineMinutes', 'fastRinseMinutes', 'refillMinutes', 'drainFlow', 'refillFlow', 'brineDrawFlow', 'supplyFlow'];

/** A question whose fields come later: until then nothing is asked of it. */
const later = operation => ({ operation, visit: true, parts: [], first: {}, needed: [], more: {} });

/** `first` is asked at once, those of `needed` before the first answer; `more` refines it, folded, by groups. */
export const QUESTIONS = {
  worth: { operation: 'assess', parts: ['water', 'household', 'softener', 'retrofit', 'site', 'prices', 'preferences'],
    first: { water: ['hardness'], household: ['people'], softener: ['size', 'control', 'saltPerRegeneration'], money: ['cost'] },
    needed: ['hardness', 'people', 'size', 'control'],
    more: { water: ['iron', ...WATER], household: ['use', ...HOUSEHOLD], softener: ['salt', 'resinAgeYears', 'brineDirection', 'brineTankCapacity', 'resinOff', 'saltOff'],
      money: ['rebate', 'horizonYears', 'replacement', ...PRICES, 'growthPercentPerYear', 'discountPercentPerYear'],
      cycle: RINSES, site: ['wasteWater', 'drain', 'powerWithinReach', 'placeForMeter', 'bypass', 'resinGood'] } },
  hard: { operation: 'reviewSettings', parts: ['water', 'household', 'softener', 'retrofit', 'site', 'prices', 'preferences'],
    first: { water: ['hardness', 'iron'], household: ['people'], softener: ['size', 'control', 'saltPerRegeneration'] },
    needed: ['hardness', 'people', 'size', 'control'],
    more: { household: ['use', ...HOUSEHOLD], cycle: RINSES, water: WATER, softener: ['salt', 'resinAgeYears', 'brineDirection', 'brineTankCapacity', 'resinOff', 'saltOff'],
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
  report: { operation: 'readWaterReport', parts: ['results', 'sample', 'appearance', 'naturalSodium', 'supply'], visit: true,
    first: { report: ['results'], sample: ['tap', 'firstDraw', 'method', 'sampledOn'] },
    needed: ['results'],
    more: { look: ['reportSupply', 'atTap', 'afterStanding', 'slime', 'naturalSodium'] } },
  visit: { operation: 'reduceFieldMeasurements', besides: 'checkInstallation', visit: true,
    parts: ['drain', 'refill', 'refillMinutes', 'brineDraw', 'brineDrawLiquid', 'serviceFlow', 'meterCheck', 'resinTank', 'brineTank', 'brine', 'pressure', 'hardness', 'run', 'books', 'waterTemperature'],
    signs: ['saltTank', 'drainLine', 'softerOutlet', 'valveComesOff'],
    first: { drainFlow: ['drainVolume', 'drainSeconds'] },
    needed: ['drainVolume'],
    more: { drainFlow: ['drainWeighed', 'drainOff'], refill: ['refillVolume', 'refillSeconds', 'refillRun', 'refillWeighed', 'refillOff'], draw: ['drawVolume', 'drawSeconds', 'drawLiquid', 'drawWeighed', 'drawOff'],
      brineTank: ['brineWidth', 'levelBefore', 'levelAfter', 'brineShape', 'wellWidth', 'saltForm', 'voidShare', 'voidShareOff'], brine: ['degrees', 'brineTemperature'],
      books: ['saltUsed', 'regenerations', 'bagUsed'], tank: ['outerDiameter', 'innerDiameter', 'innerHeight', 'freeboard', 'gravelDepth', 'bottom'],
      drops: ['rawDrops', 'outletDrops', 'tapDrops', 'dropSize'], run: ['runVolume', 'runStep'], service: ['serviceVolume', 'serviceSeconds', 'serviceWeighed', 'serviceOff', 'waterTemperature'],
      pressure: ['rest', 'flowing', 'bypassRest', 'bypassFlowing'], meter: ['meterBucket', 'meterFills', 'meterCounted', 'meterStep'],
      plate: ['size', 'resinAgeYears', 'salt', 'saltPerRegeneration', 'control'], signs: ['saltTank', 'drainLine', 'softerOutlet', 'valveComesOff'],
      place: ['brineTankAndLine', 'drain', 'drainLineFlow', 'valveBore', 'placeForMeter', 'powerWithinReach', 'surgeProtection', 'bypass', 'resinGood', 'wasteWater'] } },
  // These three have their fields and requests in a module of their own, which comes when one of them is opened.
  complaint: later('diagnoseComplaint'),
  start: later('planCommissioning'),
  savings: later('verifySavings'),
};

export const QUESTION_IDS = Object.keys(QUESTIONS);

/** Where operations are asked. */
export const PATHS = { assess: '/v1/assessment', reviewSettings: '/v1/settings-review', sizeSoftener: '/v1/softener-sizing', backtestSettings: '/v1/backtest',
  convertHardness: '/v1/hardness-conversion', readMeter: '/v1/meter-readings', scheduleRegeneration: '/v1/regeneration-schedule',
  compareAlternatives: '/v1/alternatives', chartResinCapacity: '/v1/resin-capacity', chooseReserve: '/v1/reserve-choice', designCycle: '/v1/regeneration-cycle',
  readWaterReport: '/v1/water-report', reduceFieldMeasurements: '/v1/field-measurements', checkInstallation: '/v1/installation-check',
  diagnoseComplaint: '/v1/complaint-diagnosis', planCommissioning: '/v1/commissioning-plan', verifySavings: '/v1/savings-verification', planUpkeep: '/v1/upkeep-plan',
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
  if (name === 'results') { return rowsOf(readings).length > 0; }
  if (name === 'drainVolume') { return isMeasured(readings) || isSeen(readings); }
  if (FIELDS[name].given) { return FIELDS[name].given(readings); }
  if (name === 'control') { return controlGiven(readings); }
  if (name === 'days') { return daysOf(readings.days)?.ready === true; }
  if (name === 'size' && at(readings, '/softener/tankHeight') && !at(readings, '/softener/tankDiameter')) { return false; }
  return [pointer, ...instead].some(each => at(readings, each) !== undefined);
}

/** The operations whose contracts a question's fields are in. */
export const operationsOf = question => [QUESTIONS[question].operation, QUESTIONS[question].besides].filter(Boolean);

/** Whether anything was measured at the softener; the temperature of the water alone measures nothing of it. */
const isMeasured = readings => QUESTIONS.visit.parts.some(name => typeof readings[name] === 'object' && name !== 'waterTemperature');
/** Whether anything was seen of the installation, which the way of the waste water is not. */
const isSeen = readings => QUESTIONS.visit.signs.some(name => readings[name] !== undefined) || Object.keys(readings.site ?? {}).some(name => !['wasteWater', 'prices'].includes(name));

/** The rows of a report that something was entered in. */
const isBegun = row => row?.parameter !== undefined || row?.value !== undefined;
const rowsOf = readings => (readings.results ?? []).filter(isBegun);
/** Qualifiers that stand for a number. */
const WITHOUT_NUMBER = ['notDetected', 'present', 'absent', 'invalid'];

/** What lacks in rows and readings that were begun: pointers of the fields to fill, none for what is whole. */
export function halvesOf(question, readings, contract, fieldOf) {
  if (question === 'report') {
    return (readings.results ?? []).flatMap((row, index) => !isBegun(row) ? [] : [...(row.parameter ? [] : [`/results/${index}/parameter`]),
      ...(row.value === undefined && !WITHOUT_NUMBER.includes(row.qualifier) ? [`/results/${index}/value`] : [])]);
  }
  if (HALVES[question]) { return HALVES[question](readings, contract, fieldOf); }
  return question === 'visit' ? halfParts(question, readings, contract, fieldOf) : [];
}

/** Measurements that lack what their part of the contract requires. */
export function halfParts(question, readings, contract, fieldOf) {
  const tank = readings.resinTank && !readings.resinTank.outerDiameter && !readings.resinTank.innerDiameter ? ['/resinTank/outerDiameter'] : [];
  return [...tank, ...QUESTIONS[question].parts.filter(name => typeof readings[name] === 'object' && !['water', 'household', 'softener'].includes(name))
    .flatMap(name => (fieldOf(contract, `/${name}`, readings)?.required ?? []).filter(each => readings[name][each] === undefined).map(each => `/${name}/${each}`)),
    ...(readings.run && !readings.hardness ? ['/hardness/raw'] : [])];
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
export function withoutMoney(request) {
  const { prices, retrofit, ...rest } = request;
  const { growthPercentPerYear, discountPercentPerYear } = prices ?? {};
  const rates = Object.fromEntries(Object.entries({ growthPercentPerYear, discountPercentPerYear }).filter(([, value]) => value !== undefined));
  const { prices: ofSite, ...seen } = rest.site ?? {};
  if (ofSite) { rest.site = seen; }
  const candidates = rest.candidates?.map(({ price, ...each }) => each);
  return { ...rest, ...(Object.keys(rates).length ? { prices: rates } : {}), ...(candidates ? { candidates } : {}) };
}

/** Half a request is none: prices without their amounts, a rebate without a cost, an improvement without its kind, an uncertainty of nothing. */
export function complete(request) {
  let whole = request;
  const { resinVolume, saltPerRegeneration, saltDose, uncertainty } = whole.softener ?? {};
  if (uncertainty?.resinVolume && !resinVolume) { whole = put(whole, '/softener/uncertainty/resinVolume', undefined); }
  if (uncertainty?.saltPerRegeneration && !saltPerRegeneration && !saltDose) { whole = put(whole, '/softener/uncertainty/saltPerRegeneration', undefined); }
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
 * @param seen the day of the case
 */
export function requestOf(question, readings, country, seen) {
  const { operation, parts, alone } = QUESTIONS[question];
  if (missingOf(question, readings).length > 0) { return null; }
  if (QUESTIONS[question].visit) { return VISITS[question]?.(readings, country, seen) ?? null; }
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

export const job = (operation, request) => ({ operation, path: PATHS[operation], request });
export const taken = (names, from) => Object.fromEntries(names.filter(name => from[name] !== undefined).map(name => [name, from[name]]));

/** The request of a report: what was said of the whole sample is said of each of its results, unless one says otherwise. */
function reportOf(readings, country) {
  const rest = taken(['supply', 'appearance', 'naturalSodium'], { supply: readings.water?.supply, ...readings });
  return job('readWaterReport', { results: rowsOf(readings).map(row => ({ ...readings.sample, ...row })), ...rest, country: country.home, units: country.units });
}

/** A part of a case without what a measurement filled in: it is no witness beside itself. What was changed since is kept. */
function unmeasured(name, readings) {
  const now = readings[name] ?? {};
  const after = readings.measured?.after[name];
  if (!after) { return readings[name]; }
  const before = Object.entries(readings.measured.before[name] ?? {}).filter(([key]) => key in now || !(key in after));
  const own = Object.entries(now).filter(([key, value]) => JSON.stringify(value) !== JSON.stringify(after[key]));
  const part = Object.fromEntries([...before, ...own]);
  return Object.keys(part).length ? part : undefined;
}

/** The request of a visit: of what was measured, and beside it of what was seen; of that alone where nothing was measured. */
function visitOf(readings, country) {
  const [softener, site] = ['softener', 'site'].map(name => unmeasured(name, readings));
  const home = { country: country.home, units: country.units };
  const seen = { ...taken(QUESTIONS.visit.signs, readings), ...(site ? { site } : {}), ...(softener?.resinAgeYears === undefined ? {} : { resinAgeYears: softener.resinAgeYears }),
    ...(readings.household?.peakFlow ? { peakFlow: readings.household.peakFlow } : {}), ...home };
  const checked = isSeen(readings) ? job('checkInstallation', seen) : undefined;
  if (!isMeasured(readings)) { return checked; }
  return { ...job('reduceFieldMeasurements', { ...taken(QUESTIONS.visit.parts, readings), ...(softener ? { softener } : {}), ...(site ? { site } : {}), ...home }), ...(checked ? { beside: checked } : {}) };
}

/** The parts of a case that a question takes, whole, without money that the country has none of. */
export function caseOf(question, readings, country) {
  const full = inDegreesOf(country, complete({ ...taken(QUESTIONS[question].parts, readings), household: household(readings, country), units: country.units }));
  return moneyIsKnown(full, country) ? full : withoutMoney(full);
}

/** What makes the requests of these questions, and what lacks in their readings; modules that come later add theirs. */
export const VISITS = { report: reportOf, visit: visitOf };
export const HALVES = {};

/** A case after an answer's parts were taken into it, with what stood there before where it was measured. */
export function withParts(readings, parts) {
  const names = Object.keys(parts);
  const measured = names.includes('softener') || names.includes('site') ? { measured: { after: taken(names, parts),
    before: Object.fromEntries(['softener', 'site'].map(name => [name, unmeasured(name, readings)]).filter(([, part]) => part)) } } : {};
  return { ...readings, ...parts, ...measured };
}
