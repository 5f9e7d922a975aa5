// SPDX-License-Identifier: Apache-2.0
/** Units: their factors, which come from the service's own register, and numbers as people type them, with or without one. */

/** Factors by kind and symbol of the register at `/v1/units`. */
export const factorsOf = register => Object.fromEntries(register.kinds.map(({ schema, units }) =>
  [schema, Object.fromEntries(units.map(({ symbol: sign, factor, zero }) => [sign, { factor, zero: zero ?? 0 }]))]));

/** A value in another unit of its kind, to six digits; the same value where the units are not of one kind. */
export function converted(value, from, to, factors) {
  const kind = from === to ? null : Object.values(factors).find(units => units[from] && units[to]);
  if (!kind) { return value; }
  const base = (value - kind[from].zero) * kind[from].factor;
  return Number((base / kind[to].factor + kind[to].zero).toPrecision(6));
}

/** How people write a unit, by what the contract calls it. */
const SPELLINGS = {
  'mg/L': ['mg/l', 'ppm', 'mg', 'mg/lcaco3'], gpg: ['gpg', 'grains', 'gr/gal', 'grain'], 'gpg-imperial': ['clark', '°clark', '°e', 'ºe'],
  dH: ['dh', '°dh', '°d', 'grad'], fH: ['fh', '°fh', '°f', 'th', 'tf'], 'mmol/L': ['mmol/l', 'mmol'], 'meq/L': ['meq/l', 'meq'],
  'ug/L': ['ug/l', 'µg/l', 'μg/l', 'ppb'],
  L: ['l', 'litre', 'litres', 'liter', 'liters', 'litro', 'litros'], m3: ['m3', 'm³', 'cbm'], gal: ['gal', 'gallon', 'gallons', 'galones'], ft3: ['ft3', 'ft³', 'cuft', 'cf'],
  in: ['in', '"', '″', 'inch', 'inches', 'zoll', 'pulgadas', 'pouces'], mm: ['mm'], m: ['m'],
  lb: ['lb', 'lbs', 'pounds'], kg: ['kg'], g: ['g'], gr: ['gr', 'grains', 'grain'], kgr: ['kgr'],
  mol: ['mol'], 'dH.m3': ['dh.m3', '°dhm³', '°dh·m³', 'dhm3'], 'fH.m3': ['fh.m3', '°fhm³', '°f·m³', '°f.m3'],
  gpm: ['gpm', 'gal/min'], 'L/min': ['l/min', 'lpm'], 'm3/h': ['m3/h', 'm³/h'], F: ['f', '°f'], C: ['c', '°c'],
  'lb/ft3': ['lb/ft3', 'lb/ft³', 'lb/cuft'], 'g/L': ['g/l'],
};
let words = {};
/** Sets the words of units in the language of the page, by the ids of its texts. */
export function nameUnits(texts) { words = texts; }

/** A unit as people write it. */
export const symbol = unit => words[`unit.${unit}`] ?? unit.split('/').map(part => words[`unit.${part}`] ?? part).join('/');

const unitOf = (text, units) => units.find(unit => (SPELLINGS[unit] ?? [unit.toLowerCase()]).includes(text));

/**
 * What was typed as a number: `{ value, unit }`, the unit only where one was typed; `{ readings: [a, b] }` where a sign may part
 * thousands or decimals; `{}` for nothing, null for what is no number. Lengths may be typed in centimetres.
 */
export function parsed(typed, units = []) {
  const text = typed.normalize('NFKC').replace(/[\s'’]+/g, '').replace('−', '-').toLowerCase();
  if (text === '') { return {}; }
  const match = /^(-?[\d.,]*\d[.,]?)(.*)$/.exec(text);
  if (!match) { return null; }
  const [, digits, rest] = match;
  const hundredths = rest === 'cm' && units.includes('mm');
  const unit = rest === '' ? undefined : hundredths ? 'mm' : unitOf(rest, units);
  if (rest !== '' && !unit) { return null; }
  const value = number(digits);
  if (value === null) { return null; }
  if (Array.isArray(value)) { return unit ? { readings: value, unit } : { readings: value }; }
  const result = { value: hundredths ? value * 10 : value };
  return unit ? { ...result, unit } : result;
}

/** A number, two of them where either may be meant, or null. */
function number(digits) {
  const signs = digits.replace(/[-\d]/g, '');
  const last = signs.at(-1);
  const plain = text => (/^-?\d*\.?\d*$/.test(text) && /\d/.test(text) ? Number(text) : null);
  if (signs.length === 0) { return plain(digits); }
  if (signs.length > 1) {
    const same = [...signs].every(each => each === last);
    const parts = digits.replace('-', '').split(/[.,]/);
    const grouped = parts.slice(1, same ? undefined : -1).every(each => each.length === 3) && parts[0].length <= 3;
    if (!grouped || (!same && signs.slice(0, -1).includes(last))) { return null; }
    return same ? plain(digits.replaceAll(last, '')) : plain(digits.replaceAll(signs[0], '').replace(last, '.'));
  }
  if (/^-?[1-9]\d{0,2}[.,]\d{3}$/.test(digits)) { return [plain(digits.replace(last, '.')), plain(digits.replace(last, ''))]; }
  return plain(digits.replace(last, '.'));
}
