// SPDX-License-Identifier: Apache-2.0
/** What stands below the steps: cautions, what would change the verdict, why, what was assumed, sheets to print. */
import { fold, isNarrow } from './fold.js';
import { html, nothing } from './lit-html.js';

/** How many cautions are open, on a phone and elsewhere; the others are folded. */
const OPEN_CAUTIONS = { narrow: 2, wide: 3 };
const SIGNS = { stop: ['✕', 'result.stop'], warning: ['!', 'result.warning'], info: ['i', 'result.note'] };

const caution = (each, ctx) => {
  const [sign, id] = SIGNS[each.severity] ?? SIGNS.info;
  return html`<li class="caution ${each.severity}"><span class="sign" aria-hidden="true">${sign}</span> <strong>${ctx.text(id)}</strong> ${each.message}</li>`;
};

/** Why the softener does not fit the household, beside the verdict: what is advised may still be less than a new one. */
export const unfit = (fit, ctx) => (fit?.fits === false ? html`<div class="caution warning unfit"><span class="sign" aria-hidden="true">!</span>
  <strong>${ctx.text('result.softenerFitsNot')}</strong><ul>${fit.reasons.map(reason => html`<li>${reason}</li>`)}</ul></div>` : nothing);

/** Cautions as the service ranks them: those to show in front first. */
export function cautions(all, ctx) {
  if (!all.length) { return nothing; }
  const front = all.filter(each => each.inFront).slice(0, isNarrow() ? OPEN_CAUTIONS.narrow : OPEN_CAUTIONS.wide);
  const rest = all.filter(each => !front.includes(each));
  return html`<section aria-labelledby="result-cautions"><h2 id="result-cautions">${ctx.text('result.cautions')}</h2>
    ${front.length ? html`<ul class="cautions">${front.map(each => caution(each, ctx))}</ul>` : nothing}
    ${rest.length ? html`<details><summary>${ctx.text('result.moreCautions', rest.length)}</summary>
      <ul class="cautions">${rest.map(each => caution(each, ctx))}</ul></details>` : nothing}</section>`;
}

/** Facts that a reader can check, and which would make it another verdict. */
export const wouldChange = (sentences, ctx) => sentences.length
  ? html`<details class="change" ?open=${!isNarrow()}><summary>${ctx.text('result.wouldChange')}</summary><ul>${sentences.map(each => html`<li>${each}</li>`)}</ul></details>` : nothing;

/** What was asked for on demand, by the answer that it belongs to. */
const asked = new WeakMap();

/**
 * A fold that asks the service when it is opened first.
 * @param load asks, and resolves to what `view` shows
 */
export function onDemand(name, title, kept, load, view, ctx) {
  const entries = asked.get(kept.answer) ?? asked.set(kept.answer, {}).get(kept.answer);
  const begin = () => {
    entries[name] = { state: 'working' };
    load().then(value => { entries[name] = { state: 'done', value }; }, fault => { entries[name] = { state: 'failed', refused: fault.away === false ? fault.message : '' }; }).finally(() => ctx.redraw());
    ctx.redraw();
  };
  const entry = entries[name];
  return html`<details class="demand" ?open=${entry !== undefined} @toggle=${event => { if (event.currentTarget.open && !entries[name]) { begin(); } }}>
    <summary>${title}</summary>
    ${entry?.state === 'done' ? view(entry.value) : nothing}
    ${entry?.state === 'working' ? html`<p role="status">${ctx.text('result.calculating')}</p>` : nothing}
    ${entry?.refused ? html`<p role="status">${entry.refused}</p>` : nothing}
    ${entry?.state === 'failed' && !entry.refused ? html`<p role="status">${ctx.text('result.notReached')} <button type="button" @click=${begin}>${ctx.text('result.again')}</button></p>` : nothing}
  </details>`;
}

/** Sources of an answer, each with the formulas that rest on it. */
function sources(basis) {
  const bySource = new Map();
  basis.filter(each => each.source && each.formula).forEach(({ source, formula }) => bySource.set(source, (bySource.get(source) ?? new Set()).add(formula)));
  return html`<ul class="sources">${[...bySource].map(([source, formulas]) => html`<li><cite>${source}</cite>
    <ul>${[...formulas].map(formula => html`<li>${formula}</li>`)}</ul></li>`)}</ul>`;
}

/** Why these numbers: what the answer says of itself, then formulas and sources on demand. */
export const reasons = (kept, sentences, ctx) => html`<details><summary>${ctx.text('result.why')}</summary>
  ${sentences.map(each => html`<p>${each}</p>`)}
  ${onDemand('basis', ctx.text('result.sources'), kept, async () => kept.answer.basis ?? (await ctx.ask(kept.operation, kept.request, { fields: 'basis' })).basis,
    sources, ctx)}
  <p class="quiet">${ctx.text('result.estimate')} ${kept.answer.modelVersion ? ctx.text('result.version', kept.answer.modelVersion) : nothing}</p></details>`;

const ORIGINS = { default: 'result.fromDefault', estimated: 'result.fromEstimate', country: 'result.fromCountry' };

/** What was assumed, each value one tap from being replaced. What has no field here has no line either. */
export function guesses(kept, ctx) {
  return onDemand('assumptions', ctx.text('result.guesses'), kept,
    async () => kept.answer.assumptions ?? (await ctx.ask(kept.operation, kept.request, { fields: 'assumptions' })).assumptions,
    assumptions => {
      const lines = assumptions.filter(each => ORIGINS[each.origin] && each.pointer && ctx.name(each.pointer) && (each.value !== undefined || each.code !== undefined));
      return html`<p class="quiet">${ctx.text('result.guessesLead')}</p><ul class="guesses">${lines.map(each => html`<li>
        <span><strong>${ctx.name(each.pointer)}</strong> ${ctx.value(each)} <span class="quiet">${ctx.text(ORIGINS[each.origin])}${each.note ? `, ${each.note}` : ''}</span></span>
        <button type="button" aria-label=${ctx.text('result.changeThis', ctx.name(each.pointer))} @click=${() => ctx.edit(each.pointer)}>${ctx.text('result.change')}</button></li>`)}</ul>`;
    }, ctx);
}

/** Operations whose requests are also one of an assessment, which the sheets are made of. */
const ASSESSED = ['assess', 'reviewSettings'];
/** Operations with one sheet of their own. */
const RECORDED = { readWaterReport: 'report', reduceFieldMeasurements: 'measurements', planCommissioning: 'commissioning' };
/** Those whose sheet is of the size of the country's paper by itself. */
const SIZED = ['planCommissioning'];
const SHEETS = [['letter', 'result.letter'], ['card', 'result.card'], ['checklist', 'result.checklist']];

/**
 * Saves a sheet that the service makes of the case, which goes in the body, so that no address holds it. It is not opened in
 * place: a page made of it here would be under this page's policy, which refuses the sheet its own style.
 */
async function saveSheet(kept, sheet, type, ctx) {
  const own = RECORDED[kept.operation];
  try {
    const blob = await ctx.ask(own ? kept.operation : 'assess', kept.request, { ...(own ? {} : { sheet }), ...(SIZED.includes(kept.operation) ? {} : { paper: ctx.country.paper.toLowerCase() }), accept: type });
    const anchor = Object.assign(document.createElement('a'), { href: URL.createObjectURL(blob), download: `brinebook-${sheet}.${type === 'text/html' ? 'html' : 'pdf'}` });
    anchor.click();
    setTimeout(() => URL.revokeObjectURL(anchor.href), 10000);
  } catch {
    ctx.notice(ctx.text('result.sheetFailed'));
  }
}

const sheetsOf = (kept, wanted) => RECORDED[kept.operation] ? [[RECORDED[kept.operation], `visit.sheet.${RECORDED[kept.operation]}`]]
  : SHEETS.filter(([sheet]) => !wanted || wanted.includes(sheet));

/** The menu of sheets: all, or those that are `wanted`. */
export const sheets = (kept, wanted, ctx) => !ASSESSED.includes(kept.operation) && !RECORDED[kept.operation] ? nothing : fold('result-sheets', ctx.text('result.sheets'), html`<ul class="sheets">${sheetsOf(kept, wanted).map(([sheet, id]) => html`<li><span>${ctx.text(id)}</span>
    ${[['application/pdf', 'result.asPdf'], ['text/html', 'result.asPage']].map(([type, how]) => html`<button type="button"
      aria-label=${`${ctx.text(id)}: ${ctx.text(how)}`} @click=${() => saveSheet(kept, sheet, type, ctx)}>${ctx.text(how)}</button>`)}</li>`)}</ul>`);
