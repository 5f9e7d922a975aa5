// SPDX-License-Identifier: Apache-2.0
/**
 * Charts: pure functions from figures to drawings. Each says its finding as title and has its figures as a table and as words.
 * Every place across is a share of the width, so that words keep their size on any screen.
 */
import { html, nothing, svg } from './lit-html.js';

const LINE = 20;
const BAR = 14;
/** How much of the width bars may take: the rest is for the words at their ends. */
const BAR_PERCENT = 72;
const DOTS = 20;
const percent = share => `${Math.round(share * 100000) / 1000}%`;

/** A drawing with its title, what is said to who does not see it, and its table. */
function figure({ title, height, drawing, heads, rows, note, key }, ctx) {
  const spoken = `${title}. ${rows.map(row => row.join(' ')).join('. ')}`;
  return html`<figure class="chart">
    <figcaption>${title}</figcaption>
    ${key ? html`<p class="key">${key.map(([mark, words]) => html`<span><span class="mark ${mark}"></span>${words}</span>`)}</p>` : nothing}
    <svg role="img" aria-label=${spoken} width="100%" height=${height}>${drawing}</svg>
    ${note ? html`<p class="remark">${note}</p>` : nothing}
    <details class="data"><summary>${ctx.text('result.asTable')}</summary><div class="wide" tabindex="0" role="group" aria-label=${title}>
      <table><caption>${title}</caption><thead><tr>${heads.map(head => html`<th scope="col">${head}</th>`)}</tr></thead>
      <tbody>${rows.map(([first, ...rest]) => html`<tr><th scope="row">${first}</th>${rest.map(cell => html`<td>${cell}</td>`)}</tr>`)}</tbody></table></div></details>
  </figure>`;
}

/**
 * One measure of several steps as bars from zero.
 * @param bars `[{name, value, words, mark}]`: `mark` is the series, `now`, `then` or `third`
 */
export function bars({ title, head, bars: all, note }, ctx) {
  const most = Math.max(...all.map(bar => bar.value), 0) || 1;
  const drawing = all.map((bar, i) => {
    const top = i * (LINE + BAR + 8);
    const end = percent(Math.max(bar.value, 0) / most * BAR_PERCENT / 100);
    return svg`<text x="0" y=${top + 14} class=${bar.chosen ? 'strong' : ''}>${bar.name}</text>
      <rect class="length ${bar.mark}" x="0" y=${top + LINE} width=${end} height=${BAR}></rect>
      <line class="axis" x1="0" x2="0" y1=${top + LINE - 2} y2=${top + LINE + BAR + 2}></line>
      <text x=${end} dx="6" y=${top + LINE + 12} class="value">${bar.words}</text>`;
  });
  return figure({ title, note, height: all.length * (LINE + BAR + 8), drawing, heads: [ctx.text('result.step'), head],
    rows: all.map(bar => [bar.name, bar.words]) }, ctx);
}

/** Where values lie between the least and the most of a scale, with room at both sides. */
const scale = (least, most) => value => 0.06 + 0.86 * (most > least ? (value - least) / (most - least) : 0.5);

/** Cost of each salt dose, with the band of doses that cost nearly the same and the dose to set. */
export function doses({ title, note, tradeOff, dose, money }, ctx) {
  const points = tradeOff.doses;
  const across = scale(points[0].saltDose.value, points.at(-1).saltDose.value);
  const costs = points.map(each => each.costPerYear.value);
  const [least, most] = [Math.min(...costs), Math.max(...costs)];
  const down = value => 34 + 116 * (most > least ? (most - value) / (most - least) : 0.5);
  const x = quantity => percent(across(quantity.value));
  const { leastSaltDose, mostSaltDose } = tradeOff.band ?? { leastSaltDose: tradeOff.chosen, mostSaltDose: tradeOff.chosen };
  const drawing = svg`
    <rect class="band" x=${x(leastSaltDose)} y="24" width=${percent(Math.max(across(mostSaltDose.value) - across(leastSaltDose.value), 0.006))} height="140"></rect>
    ${points.slice(1).map((each, i) => svg`<line class="path then" x1=${x(points[i].saltDose)} y1=${down(costs[i])} x2=${x(each.saltDose)} y2=${down(costs[i + 1])}></line>`)}
    ${points.map((each, i) => svg`<circle class="point then ${each.keepsServiceStandard && each.holdsEndPoint ? '' : 'hollow'}" cx=${x(each.saltDose)} cy=${down(costs[i])} r="4"></circle>`)}
    <line class="chosen" x1=${x(tradeOff.chosen)} x2=${x(tradeOff.chosen)} y1="24" y2="164"></line>
    <text x=${x(tradeOff.chosen)} y="14" class="strong" text-anchor=${across(tradeOff.chosen.value) > 0.5 ? 'end' : 'start'}>${ctx.text('result.chosenDose', dose(tradeOff.chosen))}</text>
    <line class="axis" x1="0" x2="100%" y1="164" y2="164"></line>
    <text x=${x(points[0].saltDose)} y="182" text-anchor="middle" dx="14">${dose(points[0].saltDose)}</text>
    <text x=${x(points.at(-1).saltDose)} y="182" text-anchor="end" dx="14">${dose(points.at(-1).saltDose)}</text>
    <text x=${x(points[0].saltDose)} dx="8" y=${down(costs[0]) - 10}>${money(points[0].costPerYear)}</text>
    <text x=${x(points.at(-1).saltDose)} y=${down(costs.at(-1)) - 10} text-anchor="end" dx="14">${money(points.at(-1).costPerYear)}</text>`;
  return figure({ title, note, height: 188, drawing, heads: [ctx.text('result.saltDose'), ctx.text('result.costPerYear'), ctx.text('result.keepsSoft')],
    rows: points.map(each => [dose(each.saltDose), money(each.costPerYear), ctx.text(each.keepsServiceStandard && each.holdsEndPoint ? 'result.yes' : 'result.no')]) }, ctx);
}

const DAY = 86400000;

/**
 * The charge of the bed through an example month: full after each regeneration, down to what was left at the next.
 * @param policies `[{name, mark, firstDate, capacity, events}]`, two at most
 */
export function month({ title, note, days, policies, amount, date }, ctx) {
  const across = day => percent(day / days);
  const height = 84;
  const dayOf = (event, { firstDate }) => Math.round((Date.parse(event.date) - Date.parse(firstDate)) / DAY);
  const within = policy => policy.events.filter(event => dayOf(event, policy) <= days);
  const drawing = policies.map((policy, i) => {
    const { name, mark, capacity, events } = policy;
    const top = i * (height + 58) + 24;
    const down = value => 4 + (height - 4) * (1 - Math.max(0, Math.min(1, value / capacity.value)));
    const ends = events.slice(0, within(policy).length + 1).map(event => [dayOf(event, policy), event.capacityThrownAway.value]);
    return svg`<text x="0" y=${top - 8} class="strong">${name}</text>
      <text x="100%" y=${top - 8} text-anchor="end">${ctx.text('result.fullWith', amount(capacity))}</text>
      <svg x="0" y=${top} width="100%" height=${height} overflow="hidden">${ends.map(([day, left], n) => svg`
        <line class="path ${mark}" x1=${across(n ? ends[n - 1][0] : 0)} y1=${down(capacity.value)} x2=${across(day)} y2=${down(left)}></line>
        <line class="path ${mark}" x1=${across(day)} y1=${down(left)} x2=${across(day)} y2=${down(capacity.value)}></line>`)}</svg>
      <line class="axis" x1="0" x2="100%" y1=${top + height} y2=${top + height}></line>
      ${[0, 1, 2, 3, 4].map(week => svg`<text x=${percent(week / 4)} y=${top + height + 16} text-anchor=${['start', 'middle', 'middle', 'middle', 'end'][week]}>${ctx.text('result.dayNumber', week * days / 4)}</text>`)}`;
  });
  return figure({ title, note, height: policies.length * (height + 58) + 6, drawing,
    heads: [ctx.text('result.date'), ctx.text('result.way'), ctx.text('result.capacityLeft')],
    rows: policies.flatMap(policy => within(policy).map(event => [date(event.date), policy.name, amount(event.capacityThrownAway)])) }, ctx);
}

/** What drives the worth: for each uncertain input the worth at its low and at its high end, the widest first. */
export function tornado({ title, note, drivers, name, money, median }, ctx) {
  const all = drivers.map(each => ({ ...each, ends: [each.worthAtLow, each.worthAtHigh].sort((a, b) => a.value - b.value) }))
    .sort((a, b) => (b.ends[1].value - b.ends[0].value) - (a.ends[1].value - a.ends[0].value)).slice(0, 5);
  const least = Math.min(...all.map(each => each.ends[0].value), median.value);
  const most = Math.max(...all.map(each => each.ends[1].value), median.value);
  const across = value => 0.24 + 0.5 * (most > least ? (value - least) / (most - least) : 0.5);
  const drawing = svg`${all.map((each, i) => {
    const top = i * (LINE + BAR + 8);
    const [from, to] = each.ends.map(end => across(end.value));
    return svg`<text x="0" y=${top + 14}>${name(each)}</text>
      <rect class="length then" x=${percent(from)} y=${top + LINE} width=${percent(Math.max(to - from, 0.004))} height=${BAR}></rect>
      <text class="value" x=${percent(from)} dx="-6" y=${top + LINE + 12} text-anchor="end">${money(each.ends[0])}</text>
      <text class="value" x=${percent(to)} dx="6" y=${top + LINE + 12}>${money(each.ends[1])}</text>`;
  })}`;
  return figure({ title, note, height: all.length * (LINE + BAR + 8), drawing,
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
  const tallest = Math.max(...counts);
  const base = 16 + tallest * 16;
  const drawing = svg`
    ${counts.map((count, column) => Array.from({ length: count }, (each, i) => svg`<circle class="dot ${column === columns ? 'now' : 'then'}"
      cx=${percent(column === columns ? 1 - width : (column + 0.5) * width)} cy=${base - 8 - i * 16} r="6"></circle>`))}
    <line class="axis" x1="0" x2="100%" y1=${base} y2=${base}></line>
    ${Array.from({ length: columns / bins + 1 }, (each, i) => i).map(i => svg`<text x=${percent(i * bins * width)} y=${base + 18}
      text-anchor=${i === 0 ? 'start' : i === columns / bins && !never ? 'end' : 'middle'}>${i * step}</text>`)}
    ${never ? svg`<text x="100%" y=${base + 36} text-anchor="end">${ctx.text('result.longerOrNever')}</text>` : nothing}
    <text x="0" y=${base + 36}>${ctx.text('result.yearsToPayBack')}</text>`;
  const words = value => isKnown(value) ? amount(value) : ctx.text('result.longerOrNever');
  return figure({ title, note, height: base + 42, drawing, heads: [ctx.text('result.casesOfTwenty'), ctx.text('result.yearsToPayBack')],
    rows: KNOWN.map(([share, name]) => [ctx.text('result.atMostCases', share * DOTS), words(years[name]?.value)]) }, ctx);
}

/**
 * Two values of each quantity, each on its own scale from zero.
 * @param rows `[{name, values: [a, b], words: [a, b]}]`
 */
export function pairs({ title, names, rows: all }, ctx) {
  const gap = 64;
  const drawing = all.map(({ name, values, words }, i) => {
    const most = Math.max(...values) || 1;
    const [a, b] = values.map(value => percent(0.02 + value / most * 0.94));
    const y = i * gap + 48;
    return svg`<text x="0" y=${y - 34}>${name}</text><text class="value" x="0" y=${y - 15}>${words.join(' | ')}</text>
      <line class="axis" x1="2%" x2="96%" y1=${y} y2=${y}></line><line class="path third" x1=${a} x2=${b} y1=${y} y2=${y}></line>
      <circle class="point now" cx=${a} cy=${y} r="6"></circle><rect class="point then" x=${b} y=${y - 5} width="10" height="10" transform="translate(-5 0)"></rect>`;
  });
  return figure({ title, height: all.length * gap, drawing, key: [['now', names[0]], ['then', names[1]]], heads: ['', ...names],
    rows: all.map(({ name, words }) => [name, ...words]) }, ctx);
}

/** Steps of a regeneration one after another, as bars on one line of time. */
export function phases({ title, steps, total }, ctx) {
  let before = 0;
  const drawing = steps.map(({ name, minutes, words }, i) => {
    const top = i * (LINE + BAR + 6);
    const [from, length] = [before / total * 0.72, Math.max(minutes / total * 0.72, 0.004)];
    before += minutes;
    return svg`<text x="0" y=${top + 14}>${name}</text><rect class="length then" x=${percent(from)} y=${top + LINE} width=${percent(length)} height=${BAR}></rect>
      <text class="value" x=${percent(from + length)} dx="6" y=${top + LINE + 12}>${words}</text>`;
  });
  return figure({ title, height: steps.length * (LINE + BAR + 6), drawing, heads: [ctx.text('result.step'), ctx.text('result.minutes')],
    rows: steps.map(({ name, words }) => [name, words]) }, ctx);
}
