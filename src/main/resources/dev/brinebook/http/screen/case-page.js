// SPDX-License-Identifier: Apache-2.0
/** The page of a case as templates: its form, its menu, and its answer beside or after them. */
import { isBegun } from './case.js';
import { countryOf } from './country.js';
import { fieldView, idOf } from './fields.js';
import { countryLine, top } from './front.js';
import { html, nothing } from './lit-html.js';
import { FIELDS, QUESTIONS, QUESTION_IDS, firstOf, groupId, moneyIsKnown } from './questions.js';

const GROUPS = ['symptoms', 'days', 'report', 'looks', 'before', 'beforeMore', 'after', 'afterMore', 'promise', 'sample', 'look', 'drainFlow', 'refill', 'draw', 'brineTank', 'brine', 'books', 'tank', 'drops', 'counts', 'run', 'service', 'pressure', 'meter', 'plate', 'signs', 'place',
  'water', 'household', 'softener', 'goods', 'money', 'cycle', 'site', 'checks'];

/** The form of a question: what is needed first, then what refines it, by groups whose fields are made when they are unfolded. */
export function formView(form, question, { text, acts, unfolded }) {
  const { first: usual, more: rest, needed, visit: atVisit } = QUESTIONS[question];
  // Of some countries no usual use is known: there it is asked.
  const asks = !form.country.own && (rest.household ?? []).includes('usePerPerson');
  const first = asks ? { ...usual, household: [...usual.household, 'usePerPerson'] } : usual;
  const more = asks ? { ...rest, household: rest.household.filter(name => name !== 'usePerPerson') } : rest;
  const group = (names, id) => html`<section class="group" aria-labelledby="g-${id}"><h2 id="g-${id}">${text(groupId(id))}</h2>
    ${names.map(name => fieldView(name, form, undefined, !needed.includes(name)))}
    ${question === 'setup' && id === 'softener' ? html`<p class="hint">${text('screen.noSoftenerYet')} <button type="button" class="link" @click=${() => form.act.question('fits')}>${text('screen.question.fits')}</button></p>` : nothing}</section>`;
  return {
    first: html`${GROUPS.filter(id => first[id]).map(id => group(first[id], id))}`,
    more: html`${GROUPS.filter(id => more[id]).map(id => html`<details class="fold more" id="more-${id}" .open=${unfolded.includes(id)} @toggle=${event => acts.unfold(id, event.target.open)}><summary>${atVisit && !first[id] ? text(groupId(id)) : text('screen.more', text(groupId(id)))} <span class="count">${given(form, more[id])}</span></summary>
      ${unfolded.includes(id) ? more[id].map(name => fieldView(name, form)) : nothing}</details>`)}`,
  };
}

/** How many of the folded fields hold something. */
function given(form, names) {
  const count = names.filter(name => FIELDS[name].pointer.split('/').slice(1).reduce((part, step) => part?.[step], form.case.readings) !== undefined).length;
  return count ? String(count) : '';
}

function errorSummary(problems, text, acts) {
  return html`<div class="errors" id="errors" tabindex="-1" role="group" aria-labelledby="errors-title"><h2 id="errors-title">${text('screen.thereIsAProblem')}</h2>
    <ul>${problems.map(({ pointer, message }) => html`<li><a href="#${idOf(pointer)}" @click=${event => { event.preventDefault(); acts.edit(pointer); }}>${message}</a></li>`)}</ul></div>`;
}

function caseMenu(state, text, acts) {
  const { past, future } = state.steps;
  const turn = (id, off, does) => html`<button type="button" class="plain turn ${id === 'screen.redo' ? 'forward' : ''}" aria-label=${text(id)} title=${text(id)} ?disabled=${off} @click=${does}>
    <svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true"><path d="M9 5 4 10l5 5M4 10h10a5 5 0 0 1 0 10h-4" /></svg></button>`;
  return html`<span class="tools">${turn('screen.undo', past.length === 0, acts.undo)}${turn('screen.redo', future.length === 0, acts.redo)}
    <button type="button" class="plain" @click=${acts.share}>${text('screen.share')}</button></span>`;
}

/** What a case holds beside its readings; it stays on the device. */
function about(state, text, acts) {
  const { case: open } = state;
  return html`<details class="fold more" id="about"><summary>${text('screen.aboutCase')}</summary>
    <div class="field"><label for="name">${text('screen.caseName')}</label><input id="name" .value=${open.name} autocomplete="off" maxlength="120" @input=${event => acts.about('name', event.target.value)}></div>
    <div class="field"><label for="seen">${text('screen.seen')}</label><input id="seen" type="date" .value=${open.seen} @change=${event => event.target.value && acts.about('seen', event.target.value)}></div>
    <div class="field"><label for="notes">${text('screen.notes')}</label><textarea id="notes" rows="3" .value=${open.notes} @input=${event => acts.about('notes', event.target.value)}></textarea></div>
    <div class="field"><label for="photo">${text('screen.photo')}</label><input id="photo" type="file" accept="image/*" @change=${event => acts.photo(event.target.files[0])}>
      ${state.photo ? html`<img class="photo" src=${state.photo} alt=${text('screen.photo')}><button type="button" class="small" @click=${() => acts.photo(null)}>${text('screen.removePhoto')}</button>` : nothing}</div>
    <p class="hint">${text('screen.staysHere')}</p>
    <p class="row">${['duplicate', 'compare', 'exportCase', 'remove'].map(each => html`<button type="button" class="small" @click=${acts[each]}>${text(`screen.act.${each}`)}</button>`)}</p></details>`;
}

/** Where usual prices are known in another currency alone, the answer's money is that of another country. */
function foreignMoney({ case: open, calculation }, text, acts) {
  const country = countryOf(open.country);
  const { operation } = open.answer ?? {};
  if (calculation.state !== 'fresh' || moneyIsKnown(open.readings, country) || operation === 'convertHardness' || operation === 'backtestSettings' || QUESTIONS[open.question].visit) { return nothing; }
  return html`<p class="note">${text('screen.foreignMoney', country.pricedIn, country.money)} <button type="button" class="link" @click=${() => acts.edit('/prices/saltBag/price')}>${text('screen.enterPrices')}</button></p>`;
}

/** From the softener that fits to its settings. */
function chosen(state, text, acts) {
  const first = state.calculation.state === 'fresh' && state.case.answer?.operation === 'sizeSoftener' ? state.case.answer.answer.candidates?.[0] : null;
  return first?.fits && first.resinVolume ? html`<p><button type="button" @click=${() => acts.setUp(first)}>${text('screen.setUpThis', first.sku)}</button></p>` : nothing;
}

/** A case: its readings, and beside or after them its answer. */
export function casePage(state, { text, acts, form, problems, result, bar, answering }) {
  const { case: open, route } = state;
  const parts = form ? formView(form, open.question, { text, acts, unfolded: state.unfolded }) : null;
  const needed = QUESTIONS[open.question].needed;
  const locked = route.view === 'shared';
  const copy = where => html`<p class="note ${where}">${text('screen.copySent')} <button type="button" @click=${acts.keep}>${text('screen.keepCopy')}</button></p>`;
  return html`${top(state, text, locked ? nothing : caseMenu(state, text, acts))}
  <main class="case" data-view=${locked ? 'both' : answering ? 'answer' : 'readings'}>
    <div class="readings">
      <p class="crumb"><a href="#/">${text('screen.back')}</a> ${open.name ? html`<strong>${open.name}</strong>` : nothing}</p>
      <h1 tabindex="-1">${text(`screen.question.${open.question}`)}</h1>
      ${locked ? copy('laptop') : html`<details class="fold"><summary>${text('screen.changeQuestion')}</summary><ul class="others">${QUESTION_IDS.filter(id => id !== open.question).map(id => html`<li><button type="button" class="link" @click=${() => acts.question(id)}>${text(`screen.question.${id}`)}</button></li>`)}</ul></details>`}
      ${state.checked && problems.length ? errorSummary(problems, text, acts) : nothing}
      ${isBegun(open) || locked ? nothing : html`<p class="intro">${text('screen.needs', needed.length, firstOf(open.question).length)}
        <button type="button" class="link" @click=${acts.example}>${text('screen.tryExample')}</button></p>`}
      <form novalidate @submit=${event => { event.preventDefault(); acts.go(); }}><fieldset class="whole" ?disabled=${locked}>
        ${parts ? html`${parts.first}${locked ? nothing : html`<p class="go"><button type="submit" class="primary">${text('screen.continue')}</button></p>`}
          <h2 class="refine">${text(open.question === 'visit' ? 'visit.otherReadings' : 'screen.refine')}</h2>${parts.more}` : html`<p class="quiet">${text(state.away ? 'screen.formAway' : 'screen.formLoads')}</p>`}
        ${locked || !parts ? nothing : about(state, text, acts)}</fieldset></form>
      ${parts ? countryLine(state, text) : nothing}
    </div>
    <div class="answer" id="answer" tabindex="-1">
      ${locked ? copy('phone') : html`<p class="crumb phone"><a href="#/case/${open.id}">${text('screen.backToReadings')}</a></p>`}
      <h1 class="phone asked" tabindex="-1">${text(`screen.question.${open.question}`)}</h1>
      ${foreignMoney(state, text, acts)}${result}
      ${locked ? nothing : chosen(state, text, acts)}
    </div>
  </main>
  <div class="bar">${bar}</div>`;
}
