/** What <brinebook-advice> shows of an answer; loaded with the first call. */

/** Fixed words by language and key, which the service puts in from its texts; a variant has what differs. */
const WORDS = {/* texts */};
const CAUTIONS = 5;
const OPEN = 3;
/** Steps that people are given numbers in, by unit. */
const STEPS = { lb: 10, kg: 1, gal: 100, m3: 0.1, days: 0.5 };
/** A caution that nobody may miss. */
const warns = each => each.inFront && ['stop', 'warning'].includes(each.severity);
/** What a larger softener would not cure. */
const OF_TANK = ['bedTooShallow', 'noRoomForBackwash', 'leaksAboveEndPoint', 'waterUntreated'];
const STATES = { noneNeeded: 'notNeeded', treatFirst: 'treatFirst' };

export const look = new CSSStyleSheet();
look.replaceSync(`
  .card { border: 1px solid var(--line); border-radius: calc(var(--radius) * .6); padding: .8em .9em; margin: .7em 0; }
  .best { border: 2px solid var(--accent); } .dim { border-style: dashed; } .dim, .dim a { color: var(--soft); }
  .name { font-size: 1.2em; font-weight: 650; margin: .1em 0; display: flex; flex-wrap: wrap; justify-content: space-between; gap: 0 1em; }
  dl div { display: flex; flex-wrap: wrap; gap: 0 1em; margin: .2em 0; } dt { flex: 1 1 7em; } dd { margin: 0 0 0 auto; font-weight: 600; }`);

/** The next cheaper that fits, else the next larger that fits, else the next smaller. */
function neighbour(best, all, price) {
  const volume = one => one.resinVolume.value;
  const others = all.filter(one => one !== best);
  const nearest = (head, list, measure) => list.map(one => ({ one, head, off: Math.abs(measure(one) - measure(best)) }))
    .sort((a, b) => a.off - b.off)[0];
  return nearest('cheaper', others.filter(one => one.fits && price(one) < price(best)), price)
    ?? nearest('larger', others.filter(one => one.fits && volume(one) >= volume(best)), volume)
    ?? nearest('smaller', others.filter(one => volume(one) < volume(best)), volume)
    ?? nearest('larger', others, volume);
}

/**
 * The headline of an answer and what stands below it, with the state for the shop's own counts.
 * The call has the answer, its request, the goods, the name of the class of hardness where that was all that was known, the
 * language and its tag, the address of a person to ask, and how an element is made.
 */
export function answered({ answer, request, goods, kind, language, tag, contact, make }) {
  const say = (key, ...slots) => (/^es-(?!ES)/i.test(tag) && WORDS['es-419']?.[key] || WORDS[language][key]).replace(/\{(\d)\}/g, (all, at) => slots[at]);
  const own = one => goods.candidates.find(each => each.sku === one.sku);
  const name = one => own(one).name ?? one.sku;
  const price = one => own(one).price?.value;
  const paragraph = (...words) => make('p', {}, ...words);
  const list = lines => make('ul', {}, ...lines.map(line => make('li', {}, line)));

  /** Money of a year: whole, from 100 on by fives; a price to the cent. */
  const money = (value, currency, cents) => new Intl.NumberFormat(tag, { style: 'currency', currency,
    trailingZeroDisplay: 'stripIfInteger', ...cents ? {} : { maximumFractionDigits: 0 } }).format(cents || value < 100 ? value : 5 * Math.round(value / 5));
  const rounded = (exact, unit) => {
    const [value, symbol] = unit === 'L' ? [exact / 1000, 'm3'] : [exact, unit];
    const shown = (Math.round(value / STEPS[symbol]) * STEPS[symbol]).toLocaleString(tag, { maximumFractionDigits: 1 });
    return unit === 'days' ? shown : `${shown}\u00a0${symbol.replace('m3', 'm³')}`;
  };

  const best = answer.candidates.find(each => each.sku === answer.choice) ?? answer.candidates[0];
  const beside = neighbour(best, answer.candidates, price);
  const state = STATES[answer.verdict.step] ?? (answer.choice ? 'fits' : 'noneFits');
  /** Costs are shown in the currency of the shop, or not at all. */
  const inMoney = best.runningCostPerYear.unit === goods.currency;

  function why(other) {
    return inMoney && other?.fits && best.costPerYear?.value <= other.costPerYear?.value
      ? say('yearly', money(best.costPerYear.value, goods.currency), name(other), money(other.costPerYear.value, goods.currency))
      : say('enough');
  }

  /** Price and salt of another against the best. */
  function against(other) {
    const { unit } = other.saltPerYear;
    const bought = price(other) - price(best);
    const salt = Math.round((other.saltPerYear.value - best.saltPerYear.value) / STEPS[unit]) * STEPS[unit];
    const differs = (amount, less, more, shown) => amount ? say(amount < 0 ? less : more, shown(Math.abs(amount))) : '';
    return [differs(bought, 'priceLess', 'priceMore', amount => money(amount, goods.currency, true)),
      differs(salt, 'saltLess', 'saltMore', amount => rounded(amount, unit))].join(' ');
  }

  function figures(one) {
    return make('dl', {}, ...[['days', one.daysBetweenRegenerations, 'days'], ['salt', one.saltPerYear.value, one.saltPerYear.unit],
      ['water', one.waterPerYear.value, one.waterPerYear.unit], ['money', inMoney ? one.runningCostPerYear.value : undefined]]
      .filter(([, value]) => value !== undefined).map(([label, value, unit]) => make('div', {}, make('dt', {}, say(label)),
        make('dd', {}, make('data', { value }, unit ? rounded(value, unit) : money(value, goods.currency))))));
  }

  function titled(one) {
    const { link } = own(one);
    const address = link && URL.canParse(link, document.baseURI) ? new URL(link, document.baseURI) : null;
    return make('p', { class: 'name' }, /^https?:$/.test(address?.protocol) ? make('a', { href: address.href }, name(one)) : make('span', {}, name(one)),
      price(one) === undefined ? '' : make('span', {}, money(price(one), goods.currency, true)));
  }

  function card(one, head, ...words) {
    const dim = state === 'treatFirst' || !one.fits && one !== best;
    return make('div', { class: `card${one === best && !dim ? ' best' : ''}${dim ? ' dim' : ''}`, part: 'choice' },
      head ? make('p', { class: 'soft' }, say(head)) : '', titled(one), ...words);
  }

  function cards() {
    if (state === 'treatFirst') {
      return [best, beside?.one].filter(Boolean).map(one => card(one));
    }
    const lacks = one => one.shortcomings.every(each => OF_TANK.includes(each)) ? [paragraph(say('lacks')), list(one.reasons)] : [paragraph(say('tooSmall'))];
    const other = beside?.one;
    return [best.fits ? card(best, 'best', paragraph(why(other)), figures(best))
      : card(best, 'nearest', ...lacks(best), paragraph(contact ? make('a', { href: contact }, say('person')) : say('person'))),
    ...!other || !best.fits ? [] : [card(other, beside.head, ...other.fits ? [paragraph(against(other)), figures(other)] : lacks(other))]];
  }

  /** What a shopper has to know: the first three open, the others to be unfolded; what warns in front comes first, whoever reads it. */
  function know() {
    const cautions = answer.cautions.filter(each => each.code !== 'tankSizeNotGiven'); // which is said for the shopper
    const lines = [...request.water.supply === 'privateWell' && !request.water.iron ? [say('ironUnknown')] : [],
      ...cautions.filter(warns).map(each => each.message), ...best.notChecked?.length ? [say('tank')] : [],
      ...cautions.filter(each => !warns(each) && each.reader === 'customer').map(each => each.message)]
      .slice(0, CAUTIONS);
    const folded = lines.slice(OPEN);
    return make('div', { part: 'cautions' }, ...lines.length ? [make('h4', {}, say('cautions')), list(lines.slice(0, OPEN))] : [],
      folded.length ? make('details', {}, make('summary', {}, say('more', folded.length)), list(folded)) : '',
      make('p', { class: 'soft' }, say('local')));
  }

  const { value, unit } = request.water.hardness;
  const taken = kind ? [paragraph(say('taken', `${value.toLocaleString(tag)}\u00a0${unit.replace(/^(?=[df]H$)/, '°')}`, kind))] : [];
  const nodes = () => [...cards(), know()];
  const report = { state, choice: answer.choice ?? null, neighbour: beside?.one.sku ?? null, headline: say(state, name(best)) };
  if (state === 'treatFirst') {
    return { ...report, nodes: [paragraph(answer.verdict.sentence), paragraph(answer.verdict.action), make('h4', {}, say('afterwards')), ...nodes()] };
  }
  if (state !== 'notNeeded') {
    return { ...report, nodes: [...taken, ...nodes()] };
  }
  const anyway = make('button', { type: 'button', class: 'link' }, say('anyway'));
  anyway.addEventListener('click', () => {
    const all = nodes();
    all[0].tabIndex = -1;
    anyway.replaceWith(...all);
    all[0].focus();
  });
  return { ...report, nodes: [paragraph(say('notNeededWhy')), ...taken, anyway] };
}
