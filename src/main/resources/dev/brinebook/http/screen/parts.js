/** Small pieces of the page. */
import { label, language } from './labels.js';

const FOUR = new Intl.NumberFormat(language, { maximumSignificantDigits: 4 });
const CENTS = new Intl.NumberFormat(language, { minimumFractionDigits: 2, maximumFractionDigits: 2 });

export const number = value => FOUR.format(value);

export function make(tag, attributes = {}, ...children) {
  const element = document.createElement(tag);
  Object.entries(attributes).forEach(([name, value]) => element.setAttribute(name, value));
  element.append(...children);
  return element;
}

/** A number with its unit; the exact one of the answer stands in `value`, its place in `data-from`. */
export function shown(quantity, from) {
  const { value, unit } = typeof quantity === 'object' ? quantity : { value: quantity };
  const text = /^[A-Z]{3}$/.test(unit ?? '') ? CENTS.format(value) : number(value);
  return make('span', {}, make('data', { value, 'data-from': from }, text), unit ? `\u00a0${unit}` : '');
}

/** Rows of label and value; what an answer leaves out has no row. */
export function facts(rows) {
  return make('dl', { class: 'facts' }, ...rows.filter(([, value]) => value !== undefined && value !== null)
    .flatMap(([name, value, from]) => [make('dt', {}, label(name)),
      make('dd', {}, typeof value === 'object' || typeof value === 'number' ? (value instanceof Node ? value : shown(value, from)) : value)]));
}

export function table(caption, heads, rows) {
  return make('table', {}, make('caption', {}, caption), make('thead', {}, make('tr', {}, ...heads.map(head => make('th', { scope: 'col' }, head)))),
    make('tbody', {}, ...rows.map(row => make('tr', {}, ...row.map(cell => make('td', {}, typeof cell === 'number' ? number(cell) : cell ?? ''))))));
}

const MONEY = ['USD', 'EUR', 'GBP', 'CHF', 'CAD', 'MXN'];

/** The fields of each step: pointer of the value, what kind of field, and its choices or its units. */
export const FIELDS = {
  water: [
    ['hardness', '/water/hardness', ['gpg', 'mg/L', 'gpg-imperial', 'dH', 'fH', 'mmol/L', 'meq/L']],
    ['iron', '/water/iron', ['mg/L', 'ug/L']], ['manganese', '/water/manganese', ['mg/L', 'ug/L']],
    ['sodium', '/water/sodium', ['mg/L']], ['temperature', '/water/temperature', ['F', 'C']],
    ['supply', '/water/supply', null, ['publicSupply', 'privateWell']]],
  household: [
    ['people', '/household/people'], ['dailyUse', '/household/dailyUse', ['gal', 'L', 'm3']], ['bathrooms', '/household/bathrooms']],
  found: [
    ['resinVolume', '/softener/resinVolume', ['ft3', 'L']], ['tankDiameter', '/softener/tankDiameter', ['in', 'm', 'mm']],
    ['tankHeight', '/softener/tankHeight', ['in', 'm', 'mm']], ['saltDose', '/softener/saltDose', ['lb/ft3', 'g/L']],
    ['control', '/softener/control/kind', null, ['clock', 'meteredDelayed', 'meteredImmediate', 'twinAlternating']],
    ['everyDays', '/softener/control/everyDays']],
  saves: [
    ['cost', '/retrofit/cost', MONEY], ['bagPrice', '/prices/saltBag/price', MONEY], ['bagMass', '/prices/saltBag/mass', ['lb', 'kg']],
    ['waterPrice', '/prices/water/price', MONEY], ['waterPer', '/prices/water/per', ['gal', 'm3', 'L']],
    ['sewerPrice', '/prices/sewer/price', MONEY], ['sewerPer', '/prices/sewer/per', ['gal', 'm3', 'L']]],
};
