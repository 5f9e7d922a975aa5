// SPDX-License-Identifier: Apache-2.0
/**
 * Readings of a water meter as people paste them: a date and a number on each line, with blanks, semicolons, tabs or commas between.
 * What was used on each day becomes the days of a request; what the meter showed goes to the service, which takes the days from it.
 */

const ISO = /^(\d{4})-(\d{1,2})-(\d{1,2})$/;
const DOTTED = /^(\d{1,2})\.(\d{1,2})\.(\d{4})$/;
const SLASHED = /^(\d{1,2})\/(\d{1,2})\/(\d{4})$/;
const DAY_MS = 86400000;

/** The date of a text as `YYYY-MM-DD`, or null. A date with slashes begins with the month in the United States alone. */
export function dateOf(text, monthFirst) {
  const [iso, dotted, slashed] = [ISO.exec(text), DOTTED.exec(text), SLASHED.exec(text)];
  const [year, month, day] = iso ? iso.slice(1) : dotted ? [dotted[3], dotted[2], dotted[1]]
    : slashed ? (monthFirst ? [slashed[3], slashed[1], slashed[2]] : [slashed[3], slashed[2], slashed[1]]) : [];
  if (!year) { return null; }
  const date = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  const back = new Date(`${date}T00:00:00Z`);
  return Number.isNaN(back.getTime()) || back.toISOString().slice(0, 10) !== date ? null : date;
}

const LINE = /^"?([\d./-]+)"?(?:[T ]\d{1,2}:\d{2}(?::\d{2})?)?[\s;,\t]+"?(-?[\d.,]+)"?\s*(?:[a-zA-Z³]+\s*)?$/;

/** A date without a number: a day that is not known, never one without water. */
const EMPTY = /^"?([\d./-]+)"?(?:[T ]\d{1,2}:\d{2}(?::\d{2})?)?[\s;,\t]*"?[-–?]?"?[\s;,\t]*$/;

function numberOf(text) {
  const plain = text.includes(',') && text.includes('.') ? text.replaceAll(text.lastIndexOf(',') > text.lastIndexOf('.') ? '.' : ',', '') : text;
  const value = Number(plain.replace(',', '.'));
  return Number.isFinite(value) && value >= 0 ? value : null;
}

/**
 * The lines of a text: `rows` of `{ date, value }` by date, `empty` dates without a number, and `faults` of `{ line, text }` for lines
 * that are neither a reading nor a heading on the first line.
 */
export function rowsOf(text, monthFirst) {
  const rows = [];
  const empty = [];
  const faults = [];
  text.split(/\r?\n/).forEach((whole, index) => {
    const line = whole.trim();
    if (line === '') { return; }
    const [match, alone] = [LINE.exec(line), EMPTY.exec(line)];
    const date = dateOf((match ?? alone)?.[1] ?? '', monthFirst);
    const value = match && numberOf(match[2]);
    if (date && alone) { empty.push(date); } else if (date && value !== null) { rows.push({ date, value }); } else if (index > 0 || /\d{3}/.test(line)) { faults.push({ line: index + 1, text: line }); }
  });
  rows.sort((one, other) => (one.date < other.date ? -1 : one.date > other.date ? 1 : 0));
  return { rows, empty, faults };
}

/** Days of use in a row from the first to the last date; those between that were not given are missing. */
export function seriesOf(rows, unit) {
  const of = new Map(rows.map(({ date, value }) => [date, value]));
  const [first, last] = [rows[0].date, rows.at(-1).date];
  const values = [];
  const missing = [];
  for (let at = Date.parse(first); at <= Date.parse(last); at += DAY_MS) {
    const date = new Date(at).toISOString().slice(0, 10);
    if (of.has(date)) { values.push(of.get(date)); } else { missing.push(date); }
  }
  return missing.length ? { firstDate: first, unit, values, missing } : { firstDate: first, unit, values };
}

const LEAST = 2;

/**
 * What was pasted, `{ text, unit, kind: 'volume'|'register', monthFirst }`, read: `{ rows, faults, ready, series }` for volumes,
 * `{ rows, faults, ready, meter }` for what the meter showed, whose `meter` is the request that turns it into days. `unknown` counts
 * the days that are left out, as no number was given for them.
 */
export function daysOf(pasted) {
  if (!pasted?.text) { return null; }
  const { rows, empty, faults } = rowsOf(pasted.text, pasted.monthFirst);
  const twice = rows.filter((row, index) => index > 0 && rows[index - 1].date === row.date).map(row => row.date);
  const ready = rows.length >= LEAST && faults.length === 0 && twice.length === 0;
  const read = { rows, faults, twice, ready, unknown: empty.length };
  if (!ready) { return read; }
  if (pasted.kind === 'register') {
    return { ...read, meter: { meter: { unit: pasted.unit }, kind: 'register', readings: rows.map(({ date, value }) => ({ at: `${date}T07:00`, value })) } };
  }
  const series = seriesOf(rows, pasted.unit);
  return { ...read, series, unknown: new Set([...empty, ...(series.missing ?? [])]).size };
}
