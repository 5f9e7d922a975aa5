/** Charts. Each has its data as a table beside it, for whoever does not see the drawing. */
import { label } from './labels.js';
import { make, number, table } from './parts.js';

const HEIGHT = 240;
const drawn = new Map();

const colour = name => getComputedStyle(document.documentElement).getPropertyValue(name).trim();
const axis = (text, more = {}) => ({ label: text, stroke: colour('--soft'), grid: { stroke: colour('--line'), width: 1 },
  ticks: { stroke: colour('--line') }, font: '12px system-ui', labelFont: '12px system-ui', size: 56, labelSize: 20,
  values: (plot, ticks) => ticks.map(each => each === null ? '' : number(each)), ...more });
const line = (text, tint, more = {}) => ({ label: text, stroke: colour(tint), width: 2, points: { show: false }, ...more });

/** Draws into a figure, or gives the figure that stands there new data. */
function draw(figure, { title, note = '', spoken = '', options, data, heads, rows, key }) {
  let plot = figure.querySelector('.plot');
  if (!plot) {
    plot = make('div', { class: 'plot', role: 'img' });
    figure.replaceChildren(make('figcaption', {}, title), plot, make('p', { class: 'key' }),
      make('details', {}, make('summary', {}, label('table')), make('div', { class: 'wide', tabindex: '0', role: 'group', 'aria-label': title })));
  }
  plot.setAttribute('aria-label', `${title}. ${note} ${spoken}`);
  const legend = figure.querySelector('.key');
  legend.replaceChildren(...key.flatMap(([text, mark]) => [make('span', { class: `mark ${mark}` }), `${text} `]), make('br'), note);
  figure.querySelector('.wide').replaceChildren(table(title, heads, rows));
  drawn.get(figure)?.destroy();
  const before = [...plot.children];
  drawn.set(figure, new globalThis.uPlot({ width: Math.max(200, plot.clientWidth), height: HEIGHT, legend: { show: false },
    cursor: { show: false }, ...options }, data, plot));
  before.forEach(each => each.remove());
}

/** Fits all to a new width of the page. */
export const fitAll = () => drawn.forEach((plot, figure) => plot.setSize({
  width: Math.max(200, figure.querySelector('.plot').clientWidth), height: HEIGHT }));

/** Capacity and efficiency against salt dose in this water, with the dose to set. */
export function doses(figure, chart, chosen) {
  const points = chart.points;
  const x = points.map(each => each.saltDose.value);
  const capacity = points.map(each => each.workingTable?.capacity?.value ?? null);
  const column = points.map(each => each.column?.capacity?.value ?? null);
  const efficiency = points.map(each => each.workingTable?.saltEfficiency?.value ?? null);
  const has = column.some(each => each !== null);
  const [dose, cap, eff] = [points[0].saltDose.unit, points.find(p => p.workingTable?.capacity)?.workingTable.capacity.unit,
    points.find(p => p.workingTable?.saltEfficiency)?.workingTable.saltEfficiency.unit];
  draw(figure, { title: label('doseChart'), spoken: `${label('chosen')}: ${number(chosen.value)} ${chosen.unit}.`,
    options: { scales: { x: { time: false }, eff: {} },
      axes: [axis(`${label('saltDose')} (${dose})`, { size: 40 }), axis(`${label('capacity')} (${cap})`),
        axis(`${label('efficiency')} (${eff})`, { scale: 'eff', side: 1, grid: { show: false } })],
      series: [{}, line(label('capacity'), '--one'), line(label('byColumn'), '--three', { dash: [6, 4], show: has }),
        line(label('efficiency'), '--two', { scale: 'eff' })],
      hooks: { draw: [plot => mark(plot, chosen.value)] } },
    data: [x, capacity, column, efficiency],
    key: [[label('capacity'), 'one'], ...(has ? [[label('byColumn'), 'three']] : []), [label('efficiency'), 'two'], [`${label('chosen')}: ${number(chosen.value)} ${chosen.unit}`, 'set']],
    heads: [`${label('saltDose')} (${dose})`, `${label('capacity')} (${cap})`, `${label('efficiency')} (${eff})`],
    rows: x.map((each, i) => [each, capacity[i], efficiency[i]]) });
}

function mark(plot, value) {
  const { ctx, bbox } = plot;
  const at = Math.round(plot.valToPos(value, 'x', true));
  ctx.save();
  ctx.strokeStyle = colour('--ink');
  ctx.lineWidth = 2;
  ctx.setLineDash([4, 4]);
  ctx.beginPath();
  ctx.moveTo(at, bbox.top);
  ctx.lineTo(at, bbox.top + bbox.height);
  ctx.stroke();
  ctx.restore();
}

const TINTS = ['one', 'two', 'three', 'four'];

/** Charge left under each policy on the same days: from each regeneration full, down to what the next one threw away. */
export function charge(figure, schedule) {
  const full = schedule.capacity.value;
  const day = date => Math.round((Date.parse(date) - Date.parse(schedule.firstDate)) / 86400000);
  const lines = schedule.policies.map(policy => {
    const points = [[0, full]];
    for (const event of policy.events) { points.push([day(event.date), event.capacityThrownAway.value], [day(event.date) + 0.001, full]); }
    points.push([schedule.days, policy.leftAtEnd.value]);
    return points;
  });
  const x = [...new Set(lines.flatMap(points => points.map(([at]) => at)))].sort((a, b) => a - b);
  const data = [x, ...lines.map(points => { const byDay = new Map(points); return x.map(at => byDay.get(at)); })];
  draw(figure, { title: label('chargeChart'), note: label('chargeNote'),
    options: { scales: { x: { time: false } }, axes: [axis(label('day'), { size: 40 }), axis(`${label('capacity')} (${schedule.capacity.unit})`, { size: 68 })],
      series: [{}, ...schedule.policies.map((policy, i) => line(policy.name, `--${TINTS[i % 4]}`, { spanGaps: true, dash: i ? [6, 2 + i] : [] }))] },
    data, key: schedule.policies.map((policy, i) => [policy.name, TINTS[i % 4]]),
    heads: ['', label('day'), `${label('capacity')} (${schedule.capacity.unit})`],
    rows: schedule.policies.flatMap(policy => policy.events.map(event => [policy.name, event.date, event.capacityThrownAway.value])) });
}

/** What the change is worth, year by year, and when it has paid back. */
export function money(figure, flows, band) {
  const x = flows.map(each => each.year);
  const y = flows.map(each => each.cumulative.value);
  const unit = flows[0].cumulative.unit;
  const [from, to] = band ? [band.percentile5?.value, band.percentile95?.value ?? x.at(-1)] : [];
  const known = from !== undefined;
  const shade = plot => {
    if (!known) { return; }
    const { ctx, bbox } = plot;
    const [a, b] = [from, Math.min(to, x.at(-1))].map(each => plot.valToPos(each, 'x', true));
    ctx.save();
    ctx.fillStyle = colour('--band');
    ctx.fillRect(a, bbox.top, b - a, bbox.height);
    ctx.restore();
  };
  draw(figure, { title: label('moneyChart'), note: known ? label('moneyNote', number(from), number(to)) : '',
    options: { scales: { x: { time: false } }, axes: [axis(label('year'), { size: 40 }), axis(unit, { size: 64 })],
      series: [{}, line(label('cumulative'), '--one')], hooks: { drawClear: [shade] } },
    data: [x, y], key: [[label('cumulative'), 'one'], ...(known ? [[label('payback'), 'band']] : [])],
    heads: [label('year'), `${label('cumulative')} (${unit})`], rows: x.map((each, i) => [each, y[i]]) });
}

/** Salt and water of a year, now and after. */
export function year(figure, { asFound, metered }) {
  const unit = [asFound.salt.unit, asFound.water.unit];
  const bars = tint => ({ stroke: colour(tint), fill: colour(tint), width: 0, points: { show: false }, paths: globalThis.uPlot.paths.bars({ size: [0.8, 60] }) });
  const shownAs = { 0.5: `${label('salt')} (${unit[0]})`, 3.5: `${label('water')} (${unit[1]})` };
  draw(figure, { title: label('yearChart'),
    note: `${label('salt')}: ${number(asFound.salt.value)} → ${number(metered.salt.value)} ${unit[0]}; ${label('water')}: ${number(asFound.water.value)} → ${number(metered.water.value)} ${unit[1]}.`,
    options: { scales: { x: { time: false, range: [-0.8, 4.8] }, y: { range: (p, a, b) => [0, b * 1.1 || 1] }, water: { range: (p, a, b) => [0, b * 1.1 || 1] } },
      axes: [axis('', { size: 34, labelSize: 0, splits: () => [0.5, 3.5], values: (p, at) => at.map(each => shownAs[each]), grid: { show: false } }),
        axis(unit[0]), axis(unit[1], { scale: 'water', side: 1, grid: { show: false }, size: 64 })],
      series: [{}, bars('--two'), bars('--one'), { ...bars('--two'), scale: 'water' }, { ...bars('--one'), scale: 'water' }] },
    data: [[0, 1, 3, 4], [asFound.salt.value, null, null, null], [null, metered.salt.value, null, null],
      [null, null, asFound.water.value, null], [null, null, null, metered.water.value]],
    key: [[label('now'), 'two'], [label('after'), 'one']], heads: ['', label('now'), label('after')],
    rows: [[`${label('salt')} (${unit[0]})`, asFound.salt.value, metered.salt.value], [`${label('water')} (${unit[1]})`, asFound.water.value, metered.water.value]] });
}
