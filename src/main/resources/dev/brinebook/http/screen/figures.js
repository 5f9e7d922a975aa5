// SPDX-License-Identifier: Apache-2.0
/** Figures of an answer as they are shown: rounded for people, with the exact value and its place in the answer kept beside. */
import { html, nothing } from './lit-html.js';
import { hourOf, numeral, rounded, stepOf } from './rounding.js';
import { symbol } from './units.js';

/** What a pointer leads to, or nothing. */
export const at = (answer, pointer) => pointer.split('/').slice(1).reduce((part, name) => part?.[name], answer);

/** Kinds of plain numbers that are said with their unit, and the text that says it. */
const COUNTED = { days: 'result.dayCount', settingDays: 'result.dayCount', minutes: 'result.minuteCount', settingMinutes: 'result.minuteCount', years: 'result.yearCount' };

/** A plain number in the steps in which people count it. */
export function counted(value, kind, way = kind === 'minutes' ? 'up' : 'half') {
  const step = stepOf(kind, null, value);
  return step ? rounded(value, step, way) : value;
}

/** A figure as words alone. */
export function words(value, kind, ctx) {
  if (kind === 'hour') { return hourOf(value, ctx.language); }
  if (kind === 'halfDays') { return ctx.shown(value, 'days'); }
  return typeof value === 'number' && COUNTED[kind] ? ctx.text(COUNTED[kind], counted(value, kind)) : ctx.shown(value, kind);
}

/** The ends of a range of plain numbers, each rounded away from the other; the unit is said once. */
export const endsInWords = (low, high, kind, ctx) => [ctx.shown(counted(low, kind, 'down'), kind), words(counted(high, kind, 'up'), kind, ctx)];

const size = ({ value, unit }) => ({ value: Math.abs(value), unit });

/** Money that is gained, or lost: in words, as no sign stands before money. */
export const gainInWords = (amount, ctx) => amount.value < 0 ? ctx.text('result.lost', words(size(amount), 'money', ctx)) : words(amount, 'money', ctx);

/** From one amount that is gained to another; where one of them is lost, it says so. */
export function gainsInWords(from, to, ctx) {
  const id = from.value >= 0 ? 'result.fromTo' : to.value > 0 ? 'result.lostToGained' : 'result.lostToLost';
  return ctx.text(id, words(size(from), 'money', ctx), words(size(to), 'money', ctx));
}

/** A quantity in its own unit, where it stands beside the same in others. */
export function inOwnUnit({ value, unit }, kind, ctx) {
  const step = stepOf(kind, unit, value);
  return `${numeral(step ? rounded(value, step) : value, ctx.language, step)}\u00a0${symbol(unit)}`;
}

/** A function that shows what stands at a place of an answer. */
export const figuresOf = (answer, ctx) => (pointer, kind) => {
  const value = at(answer, pointer);
  if (value === undefined || value === null || (typeof value === 'object' && typeof value.value !== 'number')) { return nothing; }
  return html`<data value=${typeof value === 'object' ? value.value : value} data-from=${pointer} data-kind=${kind}>${words(value, kind, ctx)}</data>`;
};

/** The first sentence of a text, and the rest of it. */
export function firstSentence(text, language) {
  const [first] = new Intl.Segmenter(language, { granularity: 'sentence' }).segment(text);
  const length = first?.segment.length ?? text.length;
  return [text.slice(0, length).trim(), text.slice(length).trim()];
}

/** A chance in percent as a count of twenty cases. */
export const ofTwenty = percent => Math.round(percent / 5);

/** Hard days of nine years in ten, where they differ. */
export const yearsWords = (range, ctx) => range && range.from !== range.to ? ctx.text('result.nineYears', range.from, range.to) : '';

/** A date of an answer in a language. */
export const dateInWords = (date, ctx) => new Intl.DateTimeFormat(ctx.language, { dateStyle: 'medium', timeZone: 'UTC' }).format(new Date(date));
