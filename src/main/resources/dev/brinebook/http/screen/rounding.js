// SPDX-License-Identifier: Apache-2.0
/**
 * Numbers with the digits that people use: half up on the shown value, from the unrounded one. A setting is never rounded, it is
 * what the controller takes.
 */
import { symbol } from './units.js';

/** Steps by kind and unit; `number` for what has none. A function takes the value. */
const STEPS = {
  hardness: { gpg: 0.1, 'mg/L': 1, dH: 0.1, fH: 0.1, 'mmol/L': 0.1, 'gpg-imperial': 0.1, 'meq/L': 0.1 },
  hardnessInWords: { gpg: value => (value > 10 ? 1 : 0.1), 'mg/L': 1, dH: value => (value > 10 ? 1 : 0.1), fH: 1, 'mmol/L': 0.1, 'gpg-imperial': 1, 'meq/L': 0.1 },
  iron: { 'mg/L': value => (value < 0.1 ? 0.01 : 0.1) },
  water: { gal: 10, L: 10, m3: 0.1 },
  waterYear: { gal: 100, L: 100, m3: 0.1 },
  salt: { lb: 0.5, kg: 0.1, g: 10 },
  saltYear: { lb: 10, kg: 1, g: 1000 },
  days: { number: 0.5 },
  hardDays: { number: 1 },
  capacity: { gr: 100, g: 10, 'dH.m3': 0.1, 'fH.m3': 0.1, mol: 0.1, eq: 0.1, kgr: 0.1 },
  flow: { gpm: 0.1, 'L/min': 1, 'm3/h': 0.1, 'L/s': 0.01 },
  minutes: { number: 1 },
  years: { number: value => (value < 2 ? 0.1 : 0.5) },
  percent: { number: 1 },
  sodium: { 'mg/L': 1 },
  pressure: { psi: 1, bar: 0.1, kPa: 10 },
  resin: { ft3: 0.25, L: 1 },
  dose: { 'lb/ft3': 0.5, 'g/L': 1 },
};
const UP = ['minutes'];
const DOWN = ['capacity'];
/** A year's money: whole under 100, then in fives. */
const moneyStep = value => (Math.abs(value) < 100 ? 1 : 5);

const tidy = value => Number(value.toPrecision(12));

/** A value in whole steps: half up, or `up`, or `down`. */
export function rounded(value, step, way) {
  const turns = tidy(value / step);
  const whole = way === 'up' ? Math.ceil(turns) : way === 'down' ? Math.floor(turns) : Math.floor(turns + 0.5);
  return tidy(whole * step);
}

/** The step of a kind at a value of a unit, or null where it is shown as it is. */
export function stepOf(kind, unit, value) {
  if (kind === 'money') { return moneyStep(value); }
  const step = STEPS[kind]?.[unit ?? 'number'];
  return typeof step === 'function' ? step(value) : step ?? null;
}

const wayOf = kind => (UP.includes(kind) ? 'up' : DOWN.includes(kind) ? 'down' : 'half');

/** The unit in which a country shows a kind, where it is not the one of the answer. */
const SHOWN_IN = {
  hardness: country => country.hardness, hardnessInWords: country => country.hardness, waterYear: country => country.waterLarge,
  capacity: country => country.capacity, resin: country => country.resin,
};

/** An hour of the day as a time in a language. */
export const hourOf = (hour, language) => new Intl.DateTimeFormat(language, { hour: 'numeric', minute: '2-digit', timeZone: 'UTC' }).format(new Date(Date.UTC(2000, 0, 1, hour)));

/** Languages in which the service parts thousands by a space, from five digits on. */
const SPACED = /^(de|fr|es)(-(AT|BE|DE|ES|FR|LU))?$/;
const formats = new Map();
/** A format is dear to make, and the same few are wanted at each key. */
export function formatOf(language, options) {
  const of = language + JSON.stringify(options);
  if (!formats.has(of)) { formats.set(of, new Intl.NumberFormat(language, options)); }
  return formats.get(of);
}

const grouped = (format, value, language) => format.formatToParts(value).map(({ type, value: part }) => (type === 'group' && SPACED.test(language) ? '\u00a0' : part)).join('');

/** Text of a number in a language, with at most as many decimals as its step has. */
export function numeral(value, language, step) {
  const decimals = step ? Math.max(0, Math.ceil(-Math.log10(step) - 1e-9)) + (step === 0.25 ? 1 : 0) : 6;
  return grouped(formatOf(language, { maximumFractionDigits: decimals, useGrouping: SPACED.test(language) ? 'min2' : true }), value === 0 ? 0 : value, language);
}

/**
 * A number or quantity as people read it, with its unit. `convert(value, from, to)` changes units.
 * Kinds: hardness, hardnessInWords, iron, water, waterYear, salt, saltYear, days, hardDays, capacity, flow, minutes, money, price,
 * years, percent, sodium, pressure, resin, setting.
 */
export function shown(quantity, kind, country, language, convert = value => value) {
  if (quantity === undefined || quantity === null) { return ''; }
  if (typeof quantity === 'number') {
    const step = stepOf(kind, null, quantity);
    return numeral(step ? rounded(quantity, step, wayOf(kind)) : quantity, language, step);
  }
  if (kind === 'price' || kind === 'money') {
    const value = kind === 'money' ? rounded(quantity.value, moneyStep(quantity.value)) : quantity.value;
    const cents = kind === 'price' && !Number.isInteger(value) ? 2 : 0;
    return `${grouped(formatOf(language, { minimumFractionDigits: cents, maximumFractionDigits: cents, useGrouping: SPACED.test(language) ? 'min2' : true }), value === 0 ? 0 : value, language)}\u00a0${quantity.unit}`;
  }
  const unit = SHOWN_IN[kind]?.(country) ?? quantity.unit;
  const there = convert(quantity.value, quantity.unit, unit);
  const inUnit = there === quantity.value ? quantity.unit : unit;
  const step = stepOf(kind, inUnit, there);
  return `${numeral(step ? rounded(there, step, wayOf(kind)) : there, language, step)}\u00a0${symbol(inUnit)}`;
}
