// SPDX-License-Identifier: Apache-2.0
/**
 * What the country of a house sets: the units that its tests and bills have, its money and its paper. The language is chosen apart
 * from it. Usual units, bags and paper: common practice.
 */
const METRIC = { units: 'metric', water: 'L', waterLarge: 'm3', mass: 'kg', dose: 'g/L', length: 'mm', resin: 'L', flow: 'L/min',
  temperature: 'C', pressure: 'bar', capacity: 'g', bag: { value: 25, unit: 'kg' }, paper: 'A4' };
const US = { units: 'us', water: 'gal', waterLarge: 'gal', mass: 'lb', dose: 'lb/ft3', length: 'in', resin: 'ft3', flow: 'gpm',
  temperature: 'F', pressure: 'psi', capacity: 'gr', bag: { value: 40, unit: 'lb' }, paper: 'letter' };

/** Steps of a controller's hardness where the country of the contract has another degree: settings and sentences are in the reader's. */
const MILLIGRAMS = { setting: { value: 10, unit: 'mg/L' } };
const FRENCH = { setting: { value: 1, unit: 'fH' } };

/** The currency of the usual prices of a country of the contract, which is that of its own money. */
const PRICED_IN = { unitedStates: 'USD', germany: 'EUR', france: 'EUR', unitedKingdom: 'GBP', europeanUnion: 'EUR' };

/** `home` is the country of the contract whose use and rules are taken, `own` whether they are this country's own. */
const TABLE = {
  US: { ...US, hardness: 'gpg', beside: 'mg/L', money: 'USD', home: 'unitedStates', own: true },
  CA: { ...METRIC, ...MILLIGRAMS, hardness: 'mg/L', beside: 'gpg', money: 'CAD', bag: { value: 20, unit: 'kg' }, paper: 'letter', home: 'unitedStates', own: false },
  MX: { ...METRIC, ...MILLIGRAMS, hardness: 'mg/L', beside: 'gpg', money: 'MXN', paper: 'letter', home: 'unitedStates', own: false },
  GB: { ...METRIC, hardness: 'mg/L', beside: 'gpg-imperial', money: 'GBP', home: 'unitedKingdom', own: true },
  IE: { ...METRIC, ...MILLIGRAMS, hardness: 'mg/L', beside: 'gpg-imperial', money: 'EUR', home: 'europeanUnion', own: true },
  DE: { ...METRIC, hardness: 'dH', beside: 'mmol/L', money: 'EUR', capacity: 'dH.m3', home: 'germany', own: true },
  AT: { ...METRIC, hardness: 'dH', beside: 'mmol/L', money: 'EUR', capacity: 'dH.m3', home: 'europeanUnion', own: true },
  CH: { ...METRIC, ...FRENCH, hardness: 'fH', beside: 'mmol/L', money: 'CHF', capacity: 'fH.m3', home: 'europeanUnion', own: false },
  FR: { ...METRIC, hardness: 'fH', beside: 'mg/L', money: 'EUR', capacity: 'fH.m3', home: 'france', own: true },
  BE: { ...METRIC, ...FRENCH, hardness: 'fH', beside: 'mg/L', money: 'EUR', capacity: 'fH.m3', home: 'europeanUnion', own: true },
  ES: { ...METRIC, ...FRENCH, hardness: 'fH', beside: 'mg/L', money: 'EUR', capacity: 'fH.m3', home: 'europeanUnion', own: true },
  EU: { ...METRIC, ...MILLIGRAMS, hardness: 'mg/L', beside: 'mmol/L', money: 'EUR', home: 'europeanUnion', own: true },
};

export const COUNTRIES = Object.keys(TABLE);

/** What a country sets, with its code. */
export function countryOf(code) {
  const row = TABLE[code] ?? TABLE.EU;
  return { code: TABLE[code] ? code : 'EU', ...row, pricedIn: PRICED_IN[row.home] };
}

/** The country that a browser's languages speak of: the region of the first that has one, or the likely one of the first. */
export function likelyCountry(languages) {
  const regions = languages.map(each => { try { return new Intl.Locale(each); } catch { return null; } }).filter(Boolean);
  const region = regions.find(each => each.region)?.region ?? regions[0]?.maximize().region ?? 'US';
  return TABLE[region] ? region : 'EU';
}
