/**
 * <brinebook-advice>: asks a shopper for the water and the household, and answers which softener of the shop's own list
 * suits. Attributes: service (address of the service; default: where this script comes from), lang (en, es, fr, de),
 * units (us, metric), hardness-unit (default unit), candidates (JSON list of the contract's CandidateRequest; or as a child
 * <script type="application/json">). Colours and type by the custom properties --brinebook-* below.
 */
(() => {
  'use strict';
  const HOME = document.currentScript ? new URL(document.currentScript.src).origin : location.origin;
  const WAIT_MS = 10000;
  const UNITS = { 'mg/L': 'mg/L (ppm)', gpg: 'gpg', 'gpg-imperial': 'gpg (UK)', dH: '°dH', fH: '°fH', 'mmol/L': 'mmol/L', 'meq/L': 'meq/L' };
  /** Fixed words by language and key, which the service puts in from its texts. */
  const WORDS = {/* texts */};
  const LOOK = `
    :host { display: block; max-width: 34rem; color-scheme: light dark;
      --ink: var(--brinebook-ink, light-dark(#1c2a30, #e6ecec)); --paper: var(--brinebook-paper, light-dark(#fff, #172125));
      --soft: var(--brinebook-soft, light-dark(#506066, #a9b8bb)); --line: var(--brinebook-line, light-dark(#7d8c90, #7d8f93));
      --accent: var(--brinebook-accent, light-dark(#145a72, #8fd0e6)); --on-accent: var(--brinebook-on-accent, light-dark(#fff, #0e1a1f));
      --fault: var(--brinebook-fault, light-dark(#a3151f, #ff9f98)); --radius: var(--brinebook-radius, 8px);
      font: var(--brinebook-font, 1rem/1.5 system-ui, sans-serif); color: var(--ink); }
    section { background: var(--paper); border: 1px solid var(--line); border-radius: var(--radius); padding: 1.1rem 1.25rem; }
    h2 { font-size: 1.25em; line-height: 1.25; margin: 0 0 .75rem; } h3 { font-size: 1em; margin: 1.1rem 0 .25rem; }
    form { display: grid; grid-template-columns: repeat(auto-fit, minmax(11rem, 1fr)); gap: .8rem 1rem; align-items: start; }
    label { display: block; font-size: .92em; margin-bottom: .2rem; }
    input, select, button { font: inherit; color: inherit; box-sizing: border-box; width: 100%; padding: .5rem .6rem;
      background: transparent; border: 1px solid var(--line); border-radius: calc(var(--radius) * .6); min-height: 2.75rem; }
    option { color: var(--ink); background: var(--paper); }
    button { background: var(--accent); color: var(--on-accent); border-color: transparent; font-weight: 600; cursor: pointer; }
    form > button { grid-column: 1 / -1; }
    :focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; }
    [aria-invalid=true] { border-color: var(--fault); border-width: 2px; }
    .fault { color: var(--fault); font-size: .9em; margin: .25rem 0 0; } .fault:empty { display: none; }
    .choice { font-size: 1.3em; font-weight: 650; margin: .1rem 0; overflow-wrap: anywhere; }
    .label, .soft { color: var(--soft); font-size: .92em; margin: 0; }
    dl { display: grid; grid-template-columns: 1fr auto; gap: .35rem 1rem; margin: .8rem 0; } dd { margin: 0; font-weight: 600; text-align: right; }
    ul { margin: .25rem 0; padding-left: 1.2rem; } li { margin: .25rem 0; } summary { cursor: pointer; padding: .35rem 0; color: var(--accent); }
    .answer:not(:empty) { border-top: 1px solid var(--line); margin-top: 1.1rem; padding-top: 1rem; }`;
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(LOOK);

  /** An element with text or children. */
  function make(tag, attributes = {}, ...children) {
    const element = document.createElement(tag);
    Object.entries(attributes).forEach(([name, value]) => element.setAttribute(name, value));
    element.append(...children);
    return element;
  }

  class BrinebookAdvice extends HTMLElement {
    static observedAttributes = ['lang', 'units', 'hardness-unit', 'service', 'candidates'];
    #fields = {};
    #running = null;

    connectedCallback() { this.#draw(); }

    attributeChangedCallback(name, before, after) {
      if (this.isConnected && before !== after && (name === 'lang' || name === 'hardness-unit')) { this.#draw(); }
    }

    get #language() {
      const asked = this.lang || this.closest('[lang]')?.lang || navigator.language;
      const base = asked.slice(0, 2).toLowerCase();
      return WORDS[base] ? base : 'en';
    }

    get #words() { return WORDS[this.#language]; }

    #candidates() {
      const text = this.getAttribute('candidates') ?? this.querySelector('script[type="application/json"]')?.textContent;
      return text ? JSON.parse(text) : undefined;
    }

    #draw() {
      const root = this.shadowRoot ?? this.attachShadow({ mode: 'open', delegatesFocus: true });
      root.adoptedStyleSheets = [sheet];
      const kept = Object.fromEntries(Object.entries(this.#fields).map(([name, field]) => [name, field.input.value]));
      const words = this.#words;
      const form = make('form', { novalidate: '' });
      this.#fields = {};
      form.append(this.#field('hardness', make('input', { inputmode: 'decimal', autocomplete: 'off', required: '' })));
      const unit = make('select');
      Object.entries(UNITS).forEach(([symbol, shown]) => unit.append(make('option', { value: symbol }, shown)));
      unit.value = this.getAttribute('hardness-unit') ?? (this.getAttribute('units') === 'metric' ? 'dH' : 'gpg');
      form.append(this.#field('unit', unit),
        this.#field('iron', make('input', { inputmode: 'decimal', autocomplete: 'off' })),
        this.#field('people', make('input', { inputmode: 'numeric', autocomplete: 'off', required: '' })),
        make('button', { type: 'submit' }, words.ask));
      Object.entries(kept).forEach(([name, value]) => { if (name !== 'unit') { this.#fields[name].input.value = value; } });
      form.addEventListener('submit', event => { event.preventDefault(); this.#ask(); });
      this.#answer = make('div', { class: 'answer', role: 'status', 'aria-live': 'polite', lang: this.#language });
      root.replaceChildren(make('section', { 'aria-labelledby': 'title', lang: this.#language },
        make('h2', { id: 'title' }, words.title), form, this.#answer));
    }

    #answer = null;

    #field(name, input) {
      input.id = name;
      const fault = make('p', { class: 'fault', id: `${name}-fault` });
      input.setAttribute('aria-describedby', fault.id);
      this.#fields[name] = { input, fault };
      return make('div', {}, make('label', { for: name }, this.#words[name]), input, fault);
    }

    /** What the contract's sizeSoftener takes; text that is no number is sent as it is, so that the service says what is wrong. */
    #request() {
      const read = name => {
        const text = this.#fields[name].input.value.trim();
        const number = Number(text.replace(',', '.'));
        return text === '' ? undefined : Number.isFinite(number) ? number : text;
      };
      const iron = read('iron');
      const units = this.getAttribute('units') ?? 'us';
      return { water: { hardness: { value: read('hardness'), unit: this.#fields.unit.input.value },
        iron: iron === undefined ? undefined : { value: iron, unit: 'mg/L' } },
      household: { people: read('people') }, candidates: this.#candidates(), units };
    }

    async #ask() {
      this.#running?.abort();
      const running = this.#running = new AbortController();
      const timer = setTimeout(() => running.abort(), WAIT_MS);
      this.#mark([]);
      this.#answer.setAttribute('aria-busy', 'true');
      if (!this.#answer.hasChildNodes()) { this.#answer.append(make('p', { class: 'soft' }, this.#words.busy)); }
      try {
        let request;
        try { request = this.#request(); } catch { this.#say(make('p', { class: 'fault' }, this.#words.goods)); console.error('brinebook-advice: the list of candidates is not JSON'); return; }
        const response = await fetch(new URL('/v1/softener-sizing?detail=full', this.getAttribute('service') || HOME), {
          method: 'POST', signal: running.signal, credentials: 'omit', body: JSON.stringify(request),
          headers: { 'Content-Type': 'application/json', 'Accept-Language': this.#language },
        });
        const answer = await response.json();
        if (response.ok) { this.#show(answer); } else if (response.status === 422) { this.#mark(answer.errors ?? [], answer.detail); } else { this.#away(); }
      } catch {
        if (this.#running === running) { this.#away(); }
      } finally {
        clearTimeout(timer);
        if (this.#running === running) { this.#answer.removeAttribute('aria-busy'); }
      }
    }

    #say(...children) { this.#answer.replaceChildren(...children); }

    #away() {
      const again = make('button', { type: 'button' }, this.#words.again);
      again.addEventListener('click', () => this.#ask());
      this.#say(make('p', {}, this.#words.away), again);
    }

    /** Puts each fault at the field that its pointer leads to. */
    #mark(errors, detail) {
      Object.values(this.#fields).forEach(({ input, fault }) => { input.removeAttribute('aria-invalid'); fault.textContent = ''; });
      const elsewhere = [];
      let first = null;
      for (const { pointer, message } of errors) {
        const name = /^\/water\/hardness\/unit/.test(pointer) ? 'unit' : /^\/water\/iron/.test(pointer) ? 'iron'
          : /^\/water(\/hardness.*)?$/.test(pointer) ? 'hardness' : /^\/household/.test(pointer) ? 'people' : null;
        if (name) {
          const { input, fault } = this.#fields[name];
          input.setAttribute('aria-invalid', 'true');
          fault.textContent = fault.textContent || message;
          first ??= input;
        } else { elsewhere.push(make('li', {}, message)); }
      }
      if (errors.length || detail) {
        this.#say(make('p', { class: 'fault' }, first ? this.#words.fix : detail ?? ''), make('ul', {}, ...elsewhere));
        first?.focus();
      }
    }

    #show(answer) {
      const words = this.#words;
      const numbers = new Intl.NumberFormat(this.#language, { maximumSignificantDigits: 3 });
      const best = answer.candidates.find(each => each.sku === answer.choice) ?? answer.candidates[0];
      const row = (label, value, unit) => value === undefined ? [] : [make('dt', {}, label),
        make('dd', {}, make('data', { value }, numbers.format(value)), unit ? ` ${unit}` : '')];
      const why = answer.basis.filter(each => /^\/(hardness\/(compensated|iron)|dailyUse|dailyLoad)$|^\/candidates\/\*\/(rank|capacity|daysBetweenRegenerations|saltPerYear|waterPerYear)$/.test(each.pointer));
      this.#say(make('p', { class: 'label' }, answer.choice ? words.takes : words.nearest), make('p', { class: 'choice' }, best.sku), ...(answer.verdict.step === 'noneNeeded' || answer.verdict.step === 'treatFirst' ? [make('p', { class: 'choice' }, answer.verdict.sentence)] : []), make('p', {}, answer.why),
        make('dl', {}, ...row(words.days, best.daysBetweenRegenerations), ...row(words.salt, best.saltPerYear?.value, best.saltPerYear?.unit),
          ...row(words.water, best.waterPerYear?.value, best.waterPerYear?.unit)),
        make('h3', {}, words.cautions), make('p', { class: 'soft' }, words.local),
        make('ul', {}, ...answer.cautions.filter(each => each.inFront).map(each => make('li', {}, each.message))),
        make('details', {}, make('summary', {}, words.why), make('p', {}, answer.summary), make('ul', {}, ...answer.cautions.filter(each => !each.inFront).map(each => make('li', {}, each.message))),
          make('ul', {}, ...why.map(each => make('li', {}, each.formula, make('br'), make('span', { class: 'soft' }, each.source))))));
      this.dispatchEvent(new CustomEvent('brinebook-answer', { detail: answer, bubbles: true, composed: true }));
    }
  }
  customElements.define('brinebook-advice', BrinebookAdvice);
})();
