// SPDX-License-Identifier: Apache-2.0
/**
 * Charts: pure functions from figures to drawings. Each says its finding as title and has its figures as a table and as words.
 * Every place across is a share of the width, every height one of the text, so that words keep their size and their room on any screen.
 */
import { html, nothing, svg } from './lit-html.js';

const DOTS = 20;
const percent = share => `${Math.round(share * 100000) / 1000}%`;
/** Heights are in the size of the text, so that a drawing grows with it. */
const em = value => `${Math.round(value * 1000) / 1000}em`;

/**
 * A drawing with its title, what is said to who does not see it, and its table. Words beside a drawing are words of the page: they wrap
 * and grow as all others do.
 */
function figure({ title, drawing, heads, rows, note, key }, ctx) {
  const spoken = `${title}. ${rows.map(row => row.join(' ')).join('. ')}`;
  return html`<figure class="chart">
    <figcaption>${title}</figcaption>
    ${key ? html`<p class="key">${key.map(([mark, words]) => html`<span><span class="mark ${mark}"></span>${words}</span>`)}</p>` : nothing}
    <div class="drawing" role="img" aria-label=${spoken}>${drawing}</div>
    ${note ? html`<p class="remark">${note}</p>` : nothing}
    <details class="data"><summary>${ctx.text('result.asTable')}</summary><div class="wide" tabindex="0" role="group" aria-label=${title}>
      <table><caption>${title}</caption><thead><tr>${heads.map(head => html`<th scope="col">${head}</th>`)}</tr></thead>
      <tbody>${rows.map(([first, ...rest]) => html`<tr><th scope="row">${first}</th>${rest.map(cell => html`<td>${cell}</td>`)}</tr>`)}</tbody></table></div></details>
  </figure>`;
}

const canvas = (height, content) => html`<svg width="100%" height=${em(height)} aria-hidden="true">${content}</svg>`;

/** A line of words over its drawing: a name, and a figure. */
const lineOf = (name, words, chosen = false) => html`<p class="line"><span class=${chosen ? 'strong' : ''}>${name}</span> <span class="value">${words}</span></p>`;

/** Words under a drawing, from its left to its right end. */
const ends = all => html`<p class="ends">${all.map(each => html`<span>${each}</span>`)}</p>`;

/** A bar between two shares of the width. */
const barOf = (from, to, mark) => canvas(1, svg`<rect class="length ${mark}" x=${percent(from)} y="0" width=${percent(Math.max(to - from, 0.004))} height="1em"></rect>`);

/**
 * One measure of several steps as bars from zero.
 * @param bars `[{name, value, words, mark}]`: `mark` is the series, `now`, `then` or `third`
 */
export function bars({ title, head, bars: all, note }, ctx) {
  const most = Math.max(...all.map(bar => bar.value), 0) || 1;
  const drawing = all.map(bar => html`${lineOf(bar.name, bar.words, bar.chosen)}<div class="from-zero">${bar.value > 0 ? barOf(0, bar.value / most, bar.mark) : canvas(1, nothing)}</div>`);
  return figure({ title, note, drawing, heads: [ctx.text('result.step'), head], rows: all.map(bar => [bar.name, bar.words]) }, ctx);
}

/** Where values lie between the least and the most of a scale, with room at both sides. */
const scale = (least, most) => value => 0.02 + 0.96 * (most > least ? (value - least) / (most - least) : 0.5);

/** Cost of each salt dose, with the band of doses that cost nearly the same and the dose to set. */
export function doses({ title, note, tradeOff, dose, money }, ctx) {
  const points = tradeOff.doses;
  const [first, last] = [points[0], points.at(-1)];
  const across = scale(first.saltDose.value, last.saltDose.value);
  const costs = points.map(each => each.costPerYear.value);
  const [least, most] = [Math.min(...costs), Math.max(...costs)];
  const down = value => em(0.6 + 8 * (most > least ? (most - value) / (most - least) : 0.5));
  const x = quantity => percent(across(quantity.value));
  const { leastSaltDose, mostSaltDose } = tradeOff.band;
  const drawing = html`${ends([money(first.costPerYear), money(last.costPerYear)])}${canvas(9.4, svg`
    <rect class="band" x=${x(leastSaltDose)} y="0" width=${percent(Math.max(across(mostSaltDose.value) - across(leastSaltDose.value), 0.006))} height="9.2em"></rect>
    ${points.slice(1).map((each, i) => svg`<line class="path then" x1=${x(points[i].saltDose)} y1=${down(costs[i])} x2=${x(each.saltDose)} y2=${down(costs[i + 1])}></line>`)}
    ${points.map((each, i) => svg`<circle class="point then ${each.keepsServiceStandard && each.holdsEndPoint ? '' : 'hollow'}" cx=${x(each.saltDose)} cy=${down(costs[i])} r="0.28em"></circle>`)}
    <line class="chosen" x1=${x(tradeOff.chosen)} x2=${x(tradeOff.chosen)} y1="0" y2="9.2em"></line>
    <line class="axis" x1="0" x2="100%" y1="9.2em" y2="9.2em"></line>`)}${ends([dose(first.saltDose), dose(last.saltDose)])}`;
  return figure({ title, note, drawing, key: [['dashed', ctx.text('result.chosenDose', dose(tradeOff.chosen))]],
    heads: [ctx.text('result.saltDose'), ctx.text('result.costPerYear'), ctx.text('result.keepsSoft')],
    rows: points.map(each => [dose(each.saltDose), money(each.costPerYear), ctx.text(each.keepsServiceStandard && each.holdsEndPoint ? 'result.yes' : 'result.no')]) }, ctx);
}

/** The heights of a bed at a share of its capacity: one line of text is left for the words of the reserve. */
const BED = 7;
const level = share => em(0.2 + (BED - 0.2) * (1 - Math.max(0, Math.min(1, share))));

/**
 * What is left in the bed through an example month, in steps: after each day where it is known, else at each regeneration.
 * @param policies `[{name, mark, capacity, steps: [{ day, left }], regenerations: [{ date, day, left }], reserve: { share, words }}]`
 */
export function month({ title, note, days, policies, amount, date }, ctx) {
  const across = day => percent(Math.min(day, days) / days);
  const drawing = policies.map(({ name, mark, capacity, steps, reserve }) => {
    const path = steps.filter(({ day }, i) => i === 0 || steps[i - 1].day < days).map((each, i, all) => [all[i - 1] ?? { day: 0, left: capacity.value }, each]);
    return html`${lineOf(name, ctx.text('result.fullWith', amount(capacity)), true)}${canvas(BED + 0.1, svg`
      ${path.map(([before, { day, left }]) => svg`
        <line class="path ${mark}" x1=${across(before.day)} x2=${across(before.day)} y1=${level(before.left / capacity.value)} y2=${level(left / capacity.value)}></line>
        <line class="path ${mark}" x1=${across(before.day)} x2=${across(day)} y1=${level(left / capacity.value)} y2=${level(left / capacity.value)}></line>`)}
      ${reserve ? svg`<line class="chosen" x1="0" x2="100%" y1=${level(reserve.share)} y2=${level(reserve.share)}></line>
        <text class="on-line" x="100%" y=${level(reserve.share)} dy=${reserve.share > 0.25 ? '1.2em' : '-0.35em'} text-anchor="end">${reserve.words}</text>` : nothing}
      <line class="axis" x1="0" x2="100%" y1=${em(BED)} y2=${em(BED)}></line>`)}${ends([0, 1, 2, 3, 4].map(week => (week ? String(week * days / 4) : ctx.text('result.dayNumber', 0))))}`;
  });
  return figure({ title, note, drawing, heads: [ctx.text('result.date'), ctx.text('result.way'), ctx.text('result.capacityLeft')],
    rows: policies.flatMap(({ name, regenerations }) => regenerations.map(each => [date(each.date), name, amount(each.left)])) }, ctx);
}

/** What drives the worth: for each uncertain input the worth at its low and at its high end, the widest first. */
export function tornado({ title, note, drivers, name, money, range, median }, ctx) {
  const all = drivers.map(each => ({ ...each, ends: [each.worthAtLow, each.worthAtHigh].sort((a, b) => a.value - b.value) }))
    .sort((a, b) => (b.ends[1].value - b.ends[0].value) - (a.ends[1].value - a.ends[0].value)).slice(0, 5);
  const least = Math.min(...all.map(each => each.ends[0].value), median.value);
  const most = Math.max(...all.map(each => each.ends[1].value), median.value);
  const across = value => (most > least ? (value - least) / (most - least) : 0.5);
  const drawing = all.map(each => html`${lineOf(name(each), range(...each.ends))}${barOf(...each.ends.map(end => across(end.value)), 'then')}`);
  return figure({ title, note, drawing,
    heads: [ctx.text('result.input'), ctx.text('result.from'), ctx.text('result.to')],
    rows: all.map(each => [name(each), money(each.ends[0]), money(each.ends[1])]) }, ctx);
}

const KNOWN = [[0.05, 'percentile5'], [0.25, 'percentile25'], [0.5, 'median'], [0.75, 'percentile75'], [0.95, 'percentile95']];

/**
 * Years of the dot that stands for a share of the cases, or none where it takes longer than the known ones: linear between known
 * shares. Above the last of them it is that one's years where nearly all cases are known to pay within `within` years.
 */
export function yearsAt(share, years, within) {
  const above = KNOWN.findIndex(([known]) => known >= share);
  if (above < 0) { return within.percent >= share * 100 ? years.percentile95?.value : undefined; }
  const [low, high] = [KNOWN[Math.max(above - 1, 0)], KNOWN[above]];
  const [from, to] = [years[low[1]]?.value, years[high[1]]?.value];
  if (to === undefined) { return undefined; }
  return from === undefined || low === high ? to : from + (to - from) * (share - low[0]) / (high[0] - low[0]);
}

/** Years to pay back as twenty dots, one for each twentieth of the simulated cases. */
export function dots({ title, note, years, within, horizon, amount }, ctx) {
  const at = Array.from({ length: DOTS }, (each, i) => yearsAt((i + 0.5) / DOTS, years, within));
  const isKnown = value => value !== undefined && value <= horizon;
  const most = Math.max(2, Math.ceil(Math.max(...at.filter(isKnown), 0)));
  const step = Math.max(1, Math.ceil(most / 8));
  const bins = most <= 5 ? 2 : 1;
  const columns = Math.ceil(most / step) * bins;
  const counts = Array.from({ length: columns + 1 }, () => 0);
  at.forEach(value => { counts[isKnown(value) ? Math.min(columns - 1, Math.floor(value / step * bins)) : columns] += 1; });
  const never = counts[columns];
  const width = 1 / (columns + (never ? 2 : 0));
  const base = 4 + Math.max(...counts) * 16;
  const ticks = Array.from({ length: columns / bins + 1 }, (each, i) => i);
  const drawing = html`<svg width="100%" height=${base} aria-hidden="true">
    ${counts.map((count, column) => Array.from({ length: count }, (each, i) => svg`<circle class="dot ${column === columns ? 'now' : 'then'}"
      cx=${percent(column === columns ? 1 - width : (column + 0.5) * width)} cy=${base - 8 - i * 16} r="6"></circle>`))}
    <line class="axis" x1="0" x2="100%" y1=${base} y2=${base}></line></svg>
    ${canvas(1.6, ticks.map(i => svg`<text x=${percent(i * bins * width)} y="1.1em" text-anchor=${i === 0 ? 'start' : i === columns / bins && !never ? 'end' : 'middle'}>${i * step}</text>`))}
    ${ends([ctx.text('result.yearsToPayBack'), never ? ctx.text('result.longerOrNever') : ''])}`;
  const words = value => isKnown(value) ? amount(value) : ctx.text('result.longerOrNever');
  return figure({ title, note, drawing, heads: [ctx.text('result.casesOfTwenty'), ctx.text('result.yearsToPayBack')],
    rows: KNOWN.map(([share, name]) => [ctx.text('result.atMostCases', share * DOTS), words(years[name]?.value)]) }, ctx);
}

/**
 * Two values of each quantity, each on its own scale from zero.
 * @param rows `[{name, values: [a, b], words: [a, b]}]`
 */
export function pairs({ title, names, rows: all }, ctx) {
  const drawing = all.map(({ name, values, words }) => {
    const most = Math.max(...values) || 1;
    const [a, b] = values.map(value => percent(0.03 + value / most * 0.94));
    return html`${lineOf(name, words.join(' | '))}${canvas(1.2, svg`
      <line class="axis" x1="2%" x2="98%" y1="0.6em" y2="0.6em"></line><line class="path third" x1=${a} x2=${b} y1="0.6em" y2="0.6em"></line>
      <circle class="point now" cx=${a} cy="0.6em" r="0.43em"></circle><rect class="point then" x=${b} y="0.25em" width="0.7em" height="0.7em"></rect>`)}`;
  });
  return figure({ title, drawing, key: [['now', names[0]], ['then', names[1]]], heads: ['', ...names], rows: all.map(({ name, words }) => [name, ...words]) }, ctx);
}

/** Steps of a regeneration one after another, as bars on one line of time. */
export function phases({ title, steps, total }, ctx) {
  let before = 0;
  const drawing = steps.map(({ name, minutes, words }) => {
    const from = before / total;
    before += minutes;
    return html`${lineOf(name, words)}${barOf(from, before / total, 'then')}`;
  });
  return figure({ title, drawing, heads: [ctx.text('result.step'), ctx.text('result.minutes')], rows: steps.map(({ name, words }) => [name, words]) }, ctx);
}
