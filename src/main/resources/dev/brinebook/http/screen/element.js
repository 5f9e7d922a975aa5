/**
 * <brinebook-advice>: asks a shopper for the water and the household, and answers which softener of the shop's own list
 * suits, or that none is needed.
 *
 * Attributes: lang (en, es, fr, de); country (US, DE, FR, GB, or EU for the rest of Europe; without it the shopper is asked);
 * units (us, metric; by default those of the country); service (its address; by default where this script comes from);
 * contact (address of a page to ask a person); off (shows what stands inside the element instead).
 * Properties: candidates (the contract's CandidateRequest, each also with name and link, which are only shown); prices (the
 * contract's PricesRequest). Both may stand inside as <script type="application/json">, which holds the list, or an
 * object with both.
 * Events: brinebook-answer, brinebook-fault, brinebook-height.
 * Looks: the custom properties --brinebook-*, and the parts box, title, field, button, verdict, choice, cautions and fault.
 */
(() => {
  'use strict';
  const SCRIPT = document.currentScript?.src ?? location.href;
  const WAIT_MS = 10000;
  const FIELDS = 'verdict.step,verdict.sentence,verdict.action,choice,candidates,cautions';
  /** Countries of the contract: region, currency of their usual prices, usual unit of hardness. */
  const COUNTRIES = { unitedStates: ['US', 'USD', 'gpg'], germany: ['DE', 'EUR', 'dH'], france: ['FR', 'EUR', 'fH'],
    unitedKingdom: ['GB', 'GBP', 'mg/L'], europeanUnion: ['EU', 'EUR', 'mg/L'] };
  const UNITS = { 'mg/L': 'mg/L (ppm)', gpg: 'gpg', dH: '°dH', fH: '°fH', 'mmol/L': 'mmol/L' };
  /** How people write units behind a number. */
  const WRITTEN = { 'mg/L': /^(mg\/?l|ppm)/i, gpg: /^(gpg|grains?)/i, dH: /^°?dh?$/i, fH: /^°?fh?$/i, 'mmol/L': /^mmol/i };
  /** What is taken for a class. Soft and, in the US, the others: its upper end; elsewhere 2.5 and 3.5 mmol/L, where hard has no end. */
  const TAKEN = { gpg: [3.5, 7, 10.5, 17.5], dH: [3.3, 14, 20], fH: [6, 25, 35], 'mg/L': [60, 250, 350] };
  const FAULTS = { hardness: 'hardnessFault', iron: 'ironFault', people: 'peopleFault' };
  const CLASSES = ['soft', 'medium', 'hard', 'veryHard'];
  /** Fixed words by language and key, which the service puts in from its texts; a variant has what differs. */
  const WORDS = {/* texts */};
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(`
    :host { display: block; } :host([hidden]) { display: none; }
    section { all: initial; direction: ltr; color-scheme: var(--brinebook-scheme, inherit); display: block; box-sizing: border-box;
      --ink: var(--brinebook-ink, light-dark(#16232a, #e6eeee)); --paper: var(--brinebook-paper, light-dark(#fff, #182226));
      --soft: var(--brinebook-soft, light-dark(#4b5a61, #a9b8bc)); --line: var(--brinebook-line, light-dark(#6f7f86, #7c9096));
      --accent: var(--brinebook-accent, light-dark(#0b5872, #8fd0e6)); --on: var(--brinebook-on-accent, light-dark(#fff, #0e1a1f));
      --fault: var(--brinebook-fault, light-dark(#a1121d, #ff9d96)); --radius: var(--brinebook-radius, 8px);
      max-width: 36em; font: var(--brinebook-font, medium/1.5 system-ui, sans-serif); color: var(--ink); background: var(--paper);
      border: 1px solid var(--line); border-radius: var(--radius); padding: 1.1em 1.2em; overflow-wrap: anywhere; }
    * { box-sizing: border-box; min-width: 0; }
    h2 { font-size: 1.3em; } h3 { font-size: 1.15em; } h4 { font-size: 1em; } h2, h3, h4 { line-height: 1.25; margin: 0 0 .5em; }
    p, ul, dl { margin: .4em 0; } ul { padding-left: 1.2em; }
    form { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(13em, 100%), 1fr)); gap: .9em 1em; align-items: start; }
    form > :is(.wide, button) { grid-column: 1 / -1; } details.wide { margin: -.7em 0; } details.wide[open] { margin-bottom: 0; } [hidden] { display: none !important; } .pair { display: flex; flex-wrap: wrap; gap: .5em; } .pair > * { flex: 1 1 5.5em; }
    .tick { display: flex; align-items: center; gap: .6em; min-height: 2.75em; margin: 0; } .tick input { width: 1.4em; flex: none; accent-color: var(--accent); }
    label { display: block; margin-bottom: .2em; }
    input, select, button { font: inherit; color: inherit; width: 100%; padding: .5em .6em; background: transparent;
      border: 1px solid var(--line); border-radius: calc(var(--radius) * .6); min-height: 2.75em; }
    option { color: var(--ink); background: var(--paper); }
    button { background: var(--accent); color: var(--on); border-color: transparent; font-weight: 600; cursor: pointer; }
    button.link { background: none; color: var(--accent); text-decoration: underline; width: auto; padding: .5em 0; font-weight: 400; }
    a, summary { color: var(--accent); } summary { cursor: pointer; padding: .65em 0; }
    :focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; }
    [aria-invalid] { border: 2px solid var(--fault); } .fault { color: var(--fault); }
    .box { border: 2px solid var(--fault); border-radius: calc(var(--radius) * .6); padding: .7em .9em; margin-bottom: 1em; } .box a { color: inherit; }
    .soft { color: var(--soft); font-size: .92em; } :is(p, div):empty { display: none; }
    .answer { margin-top: 1.1em; } .stale > :not(.note) { color: var(--soft); } .stale .card { border-style: dashed; }`);

  /** An element with text or children. */
  function make(tag, attributes, ...children) {
    const element = document.createElement(tag);
    Object.entries(attributes ?? {}).forEach(([name, value]) => element.setAttribute(name, value));
    element.append(...children.filter(child => child !== undefined && child !== null));
    return element;
  }

  /** A number as people write it, with what follows it; NaN where it can be read in two ways. */
  function read(text) {
    const [, digits, unit] = /^([\d\s.,]*)(.*)$/u.exec(text.normalize('NFKC').trim());
    const plain = digits.replace(/\s/g, '');
    const number = plain === '' || /^[1-9]\d{0,2}[.,]\d{3}$/.test(plain) ? NaN : Number(plain.replace(',', '.'));
    return { number, unit: unit.trim() };
  }

  class BrinebookAdvice extends HTMLElement {
    static observedAttributes = ['lang', 'country', 'off'];
    #fields = {};
    #form; #button; #problem; #answer; #running; #height; #grown;

    constructor() {
      super();
      this.#grown = new ResizeObserver(() => {
        const height = Math.ceil(this.getBoundingClientRect().height);
        if (height !== this.#height) { this.#announce('height', { height: this.#height = height }); }
      });
    }

    connectedCallback() {
      this.#draw();
      this.#grown.observe(this);
    }

    disconnectedCallback() { this.#grown.disconnect(); this.#stop(); }

    #stop() { this.#running?.abort(); this.#running = null; }

    attributeChangedCallback(name, before, after) { if (this.isConnected && before !== after) { this.#draw(); } }

    #announce(name, detail) { this.dispatchEvent(new CustomEvent(`brinebook-${name}`, { detail, bubbles: true, composed: true })); }

    /** The language, with its region where one is named; English where it is not spoken here. */
    get #tag() {
      const asked = this.lang || this.closest('[lang]')?.lang || navigator.language;
      try { return WORDS[asked.slice(0, 2).toLowerCase()] ? Intl.getCanonicalLocales(asked)[0] : 'en'; } catch { return 'en'; }
    }

    get #language() { return this.#tag.slice(0, 2); }

    /** A text, with what goes in its places. */
    #say(key, ...slots) {
      const american = /^es-(?!ES)/i.test(this.#tag) && WORDS['es-419']?.[key];
      return (american || WORDS[this.#language][key]).replace(/\{(\d)\}/g, (all, at) => slots[at]);
    }

    get #given() {
      const asked = this.getAttribute('country');
      return Object.keys(COUNTRIES).find(name => name === asked || COUNTRIES[name][0] === asked?.toUpperCase());
    }

    get #country() { return this.#given ?? this.#fields.country.input.value; }

    // The question

    #draw() {
      const root = this.shadowRoot ?? this.attachShadow({ mode: 'open', delegatesFocus: true });
      root.adoptedStyleSheets = [sheet];
      if (this.hasAttribute('off')) { root.replaceChildren(make('slot')); return; }
      const kept = Object.entries(this.#fields).map(([name, { input }]) => [name, input.value, input.checked]);
      this.#stop();
      this.#fields = {};
      const text = mode => make('input', { inputmode: mode, autocomplete: 'off' });
      const unit = this.#select(UNITS);
      unit.id = 'unit';
      unit.setAttribute('aria-label', this.#say('unit'));
      this.#fields.unit = { input: unit };
      const hardness = this.#field('hardness', text('decimal'), unit);
      const country = this.#given ? null : this.#field('country', this.#select(Object.fromEntries(Object.entries(COUNTRIES).map(([name, [region]]) =>
        [name, region === 'EU' ? this.#say('elsewhere') : new Intl.DisplayNames(this.#language, { type: 'region' }).of(region)]))));
      const kind = this.#field('class', make('select'));
      const unknown = make('details', { class: 'wide' }, make('summary', {}, this.#say('unknown')), make('p', {}, this.#say('ask')), kind);
      const iron = this.#field('iron', text('decimal'));
      const source = make('input', { type: 'checkbox', id: 'well' });
      this.#fields.well = { input: source };
      const well = make('label', { class: 'wide tick', part: 'field' }, source, this.#say('well'));
      this.#button = make('button', { part: 'button' }, this.#say('find'));
      this.#form = make('form', { novalidate: '' }, hardness, unknown, this.#field('people', text('numeric')), country, well, iron, this.#button);
      if (country) { this.#fields.country.input.value = this.#usual(); }
      const follow = () => { iron.hidden = !source.checked; };
      const settle = () => {
        const own = COUNTRIES[this.#country][2];
        unit.value = own;
        this.#fields.class.input.replaceChildren(...['none', ...CLASSES].slice(0, TAKEN[own].length + 1)
          .map(name => make('option', { value: name === 'none' ? '' : name }, this.#say(name))));
      };
      settle();
      const typed = kept.some(([name, value]) => name === 'hardness' && value); // whose unit then stays, too
      kept.forEach(([name, value, checked]) => {
        if (name !== 'class' && (name !== 'unit' || typed) && this.#fields[name]) { Object.assign(this.#fields[name].input, { value, checked }); }
      });
      follow();
      this.#form.addEventListener('change', ({ target }) => {
        follow();
        if (target.id === 'country') { settle(); }
        if (target.id === 'class' && target.value) { this.#fields.hardness.input.value = ''; }
      });
      this.#form.addEventListener('input', ({ target }) => {
        if (target.id === 'hardness') { this.#fields.class.input.value = ''; }
        this.#age();
      });
      this.#form.addEventListener('submit', event => { event.preventDefault(); this.#ask(); });
      this.#problem = make('div', { tabindex: '-1', part: 'fault' });
      this.#answer = make('div', { class: 'answer' });
      root.replaceChildren(make('section', { 'aria-labelledby': 'title', lang: this.#language, part: 'box' },
        make('h2', { id: 'title', part: 'title' }, this.#say('title')), this.#problem, this.#form, this.#answer));
    }

    /** The country that is chosen first: that of the language, to be changed by one choice. */
    #usual() {
      const [asked, browser] = [this.#tag, navigator.language].map(tag => new Intl.Locale(tag));
      const region = asked.region ?? (browser.language === asked.language ? browser.region : null);
      return Object.keys(COUNTRIES).find(name => COUNTRIES[name][0] === region)
        ?? { de: 'germany', fr: 'france', es: 'europeanUnion', en: 'unitedStates' }[this.#language];
    }

    #select(options) { return make('select', {}, ...Object.entries(options).map(([value, shown]) => make('option', { value }, shown))); }

    #field(name, input, beside) {
      input.id = name;
      input.setAttribute('aria-describedby', `${name}-fault`);
      const fault = make('p', { class: 'fault', id: `${name}-fault`, part: 'fault' });
      this.#fields[name] = { input, fault };
      return make('div', { part: 'field' }, make('label', { for: name }, this.#say(name)),
        beside ? make('div', { class: 'pair' }, input, beside) : input, fault);
    }

    // The call

    /** The goods and prices, as set or as they stand inside; throws what the shop has to correct. */
    #goods() {
      const inside = this.querySelector('script[type="application/json"]');
      const parsed = inside ? JSON.parse(inside.textContent) : {};
      const candidates = this.candidates ?? parsed.candidates ?? parsed;
      if (!Array.isArray(candidates) || !candidates.length) { throw new Error('candidates is no list of goods'); }
      const currencies = new Set(candidates.map(one => one.price?.unit).filter(Boolean));
      if (currencies.size > 1) { throw new Error(`prices in ${[...currencies].join(' and ')}`); }
      if (new Set(candidates.map(one => one.sku)).size < candidates.length) { throw new Error('a sku stands twice'); }
      return { candidates, prices: this.prices ?? parsed.prices, currency: [...currencies][0] };
    }

    /** What the contract's sizeSoftener takes, or the fields that are to be corrected. */
    #request({ candidates, prices, currency }) {
      const value = name => this.#fields[name].input.value;
      const faults = [];
      const number = name => {
        const { number: read_, unit } = read(value(name));
        if (!Number.isFinite(read_) || unit && name !== 'hardness') { faults.push({ name }); }
        return read_;
      };
      const own = COUNTRIES[this.#country];
      const kind = CLASSES.indexOf(value('class'));
      const hardness = kind < 0 ? { value: number('hardness'), unit: this.#unit() } : { value: TAKEN[own[2]][kind], unit: own[2] };
      if (hardness.unit === undefined) { faults.push({ name: 'hardness' }); }
      const well = this.#fields.well.input.checked;
      const iron = well && value('iron').trim() ? { value: number('iron'), unit: 'mg/L' } : undefined;
      const people = number('people');
      const priced = prices || currency === own[1];
      return { faults, kind: kind < 0 ? undefined : this.#say(CLASSES[kind]), request: { water: { hardness, iron, supply: well ? 'privateWell' : 'publicSupply' },
        household: { people, country: this.#country }, prices, units: this.getAttribute('units') ?? undefined,
        candidates: candidates.map(({ name, link, price, ...rest }) => ({ ...rest, price: priced ? price : undefined })) } };
    }

    /** The unit that is written behind the hardness, else the one chosen; none where what is written is no unit. */
    #unit() {
      const { unit } = read(this.#fields.hardness.input.value);
      const found = unit ? Object.keys(WRITTEN).find(name => WRITTEN[name].test(unit)) : this.#fields.unit.input.value;
      if (found) { this.#fields.unit.input.value = found; }
      return found;
    }

    async #ask() {
      let goods;
      try { goods = this.#goods(); } catch (wrong) { this.#unlisted([{ pointer: '/candidates', message: wrong.message }]); return; }
      const { faults, request, kind } = this.#request(goods);
      this.#mark(faults);
      if (faults.length) { return; }
      this.#stop();
      const running = this.#running = new AbortController();
      const timer = setTimeout(() => running.abort(), WAIT_MS);
      this.#busy(true);
      try {
        const shown = import(new URL('/element/answer.js', SCRIPT)); // beside the call
        shown.catch(() => {});
        const response = await fetch(new URL(`/v1/softener-sizing?fields=${FIELDS}`, this.getAttribute('service') || SCRIPT), {
          method: 'POST', signal: running.signal, credentials: 'omit', body: JSON.stringify(request),
          headers: { 'Content-Type': 'application/json', 'Accept-Language': this.#tag },
        });
        const answer = await response.json();
        const { answered, look } = await shown;
        if (this.#running !== running) { return; }
        if (response.ok) {
          this.shadowRoot.adoptedStyleSheets = [sheet, look];
          this.#show(answered, { answer, request, goods, kind });
        } else if (response.status === 422) { this.#refused(answer.errors); } else { this.#away(response.status); }
      } catch (failed) {
        if (this.#running === running) { this.#away(failed.name); }
      } finally {
        clearTimeout(timer);
        if (this.#running === running) { this.#busy(false); }
      }
    }

    /** While it works, button and answer keep their size. */
    #busy(on) {
      this.#answer.style.minHeight = on ? `${this.#answer.getBoundingClientRect().height}px` : '';
      this.#answer.setAttribute('aria-busy', on);
      this.#button.setAttribute('aria-disabled', on);
      this.#button.textContent = this.#say(on ? 'busy' : 'find');
    }

    // What went wrong

    #refused(errors) {
      const at = { hardness: /^\/water(\/hardness.*)?$/, iron: /^\/water\/iron/, people: /^\/household\/people/ };
      const placed = errors.map(({ pointer, allowed }) => ({ name: Object.keys(at).find(name => at[name].test(pointer)), allowed: allowed?.[0] }));
      if (placed.every(({ name }) => name)) { this.#mark(placed, errors); } else { this.#unlisted(errors); }
    }

    /** The fields to be corrected: a summary that leads to each, and the same words there. */
    #mark(faults, errors) {
      Object.values(this.#fields).forEach(({ input, fault }) => { input.removeAttribute('aria-invalid'); fault?.replaceChildren(); });
      const lines = [...new Map(faults.map(each => [each.name, each])).values()].map(({ name, allowed }) => {
        const { input, fault } = this.#fields[name];
        const words = this.#say(FAULTS[name]) + (allowed ? ` ${this.#say('allowed', allowed)}` : '');
        input.setAttribute('aria-invalid', 'true');
        fault.textContent = words;
        const link = make('a', { href: `#${name}` }, words);
        link.addEventListener('click', event => { event.preventDefault(); input.focus(); });
        return make('li', {}, link);
      });
      this.#problem.className = lines.length ? 'fault box' : '';
      this.#problem.replaceChildren(...lines.length ? [make('h3', {}, this.#say('problem')), make('ul', {}, ...lines)] : []);
      if (lines.length) {
        this.#age();
        this.#problem.focus();
        this.#announce('fault', { kind: 'fields', errors: errors ?? faults.map(({ name }) => ({ pointer: name })) });
      }
    }

    /** The shop has to correct its list: the shopper cannot. */
    #unlisted(errors) {
      this.#mark([]);
      this.#put(this.#say('goods'));
      console.error('brinebook-advice: the goods are listed wrongly', errors);
      this.#announce('fault', { kind: 'goods', errors });
    }

    #away(reason) {
      const again = make('button', { type: 'button', part: 'button' }, this.#say('again'));
      again.addEventListener('click', () => { this.#button.focus(); this.#ask(); });
      this.#put(this.#say('away'), again);
      this.#announce('fault', { kind: 'away', errors: [{ message: String(reason) }] });
    }

    /** An answer no longer belongs to what is in the fields. */
    #age() {
      if (this.#answer.childElementCount && !this.#answer.classList.contains('stale')) {
        this.#answer.classList.add('stale');
        this.#answer.prepend(make('p', { class: 'note soft' }, this.#say('stale')));
      }
    }

    #put(headline, ...children) {
      const verdict = make('div', { role: 'status', part: 'verdict' });
      this.#answer.className = 'answer';
      this.#answer.replaceChildren(verdict, ...children);
      verdict.append(make('h3', {}, headline)); // a live region says what comes into it
    }

    #show(answered, call) {
      const { headline, nodes, ...report } = answered({ ...call, tag: this.#tag, language: this.#language, make,
        contact: this.getAttribute('contact') });
      this.#put(headline, ...nodes);
      this.#announce('answer', { ...report, request: call.request, answer: call.answer });
    }
  }
  customElements.define('brinebook-advice', BrinebookAdvice);
})();
