// SPDX-License-Identifier: Apache-2.0
/** The pages as templates: pure functions of the state and of what can be done (`acts`), which app.js gives. */
import { isToExport } from './case.js';
import { COUNTRIES, countryOf } from './country.js';
import { countryName, day, foot, nameOf, top } from './front.js';
import { html, nothing } from './lit-html.js';
import { symbol } from './units.js';

/** Once a month, where cases were changed since the last export: a word that they are on this device alone. */
export const reminder = (state, text, acts) => (isToExport(state.book, state.exported, state.reminded, Date.now()) ? html`<p class="note remind"><span>${text('screen.remind')}</span>
  <button type="button" class="small" @click=${acts.exportAll}>${text('screen.act.exportCase')}</button> <button type="button" class="small" @click=${acts.later}>${text('screen.later')}</button></p>` : nothing);

/** Which country a house is in, and the language, which is another matter. */
export function countryPage(state, { text, acts }) {
  const chosen = state.case?.country ?? state.country;
  return html`${top(state, text)}<main class="plain"><p><a href=${state.back}>${text('screen.back')}</a></p><h1 tabindex="-1">${text('screen.whichCountry')}</h1>
    <p>${text('screen.countrySets')}</p>
    <fieldset class="countries"><legend>${text('screen.country')}</legend>${COUNTRIES.map(code => {
    const country = countryOf(code);
    return html`<label class="tick"><input type="radio" name="country" .checked=${code === chosen} @change=${() => acts.country(code)}>
      <span>${countryName(code, state.language)} <span class="quiet">${symbol(country.hardness)} · ${symbol(country.water)} · ${country.money} · ${country.paper === 'A4' ? 'A4' : 'Letter'}</span></span></label>`;
  })}</fieldset>
    <div class="field"><label for="language">${text('screen.language')}</label><select id="language" @change=${event => acts.language(event.target.value)}>
      ${['en', 'de', 'es', 'es-419', 'es-MX', 'fr'].map(tag => html`<option value=${tag} lang=${tag} ?selected=${tag === state.tag}>${new Intl.DisplayNames(tag, { type: 'language' }).of(tag)}</option>`)}</select></div>
    <fieldset class="field looks"><legend>${text('screen.look')}</legend>${['system', 'light', 'dark'].map(look => html`<label class="tick"><input type="radio" name="look" value=${look} .checked=${state.look === look}
      @change=${() => acts.look(look)}> ${text(`screen.look.${look}`)}</label>`)}</fieldset>
    <p><a class="button" href=${state.back}>${text('screen.done')}</a></p></main>`;
}

/** The case book. */
export function bookPage(state, { text, acts }) {
  const wanted = state.search.trim().toLowerCase();
  const cases = state.book.filter(each => !each.deleted && nameOf(each, text, state.language).toLowerCase().includes(wanted));
  const gone = state.book.filter(each => each.deleted);
  return html`${top(state, text)}<main class="plain"><h1 tabindex="-1">${text('screen.cases')}</h1>${reminder(state, text, acts)}
    ${state.book.length > 3 ? html`<div class="field"><label for="search">${text('screen.search')}</label><input id="search" type="search" .value=${state.search} @input=${event => acts.search(event.target.value)}></div>` : nothing}
    ${cases.length === 0 ? html`<p>${text(wanted ? 'screen.noneFound' : 'screen.noCases')}</p>` : html`<ul class="rows book">${cases.map(each => caseRow(state, each, text, acts))}</ul>`}
    ${state.book.some(each => !each.deleted) ? nothing : html`<p><button type="button" @click=${acts.exampleCase}>${text('screen.tryExample')}</button></p>`}
    <p class="row"><button type="button" ?disabled=${cases.length === 0} @click=${acts.exportAll}>${text('screen.exportAll')}</button>
      <label class="button" for="file">${text('screen.import')}</label><input id="file" class="hidden-file" type="file" accept="application/json,.json" @change=${event => acts.open(event.target)}></p>
    ${state.exported ? html`<p class="quiet">${text('screen.lastExport', day(state.exported, state.language))}</p>` : nothing}
    ${state.plan ? planView(state, text, acts) : nothing}
    ${state.persisted === false && cases.length > 1 ? html`<p class="note warn">${text('screen.mayDelete')}</p>` : nothing}
    ${gone.length ? html`<details class="fold"><summary>${text('screen.deleted', gone.length)}</summary><ul class="rows">${gone.map(each => html`<li>${nameOf(each, text, state.language)}
      <button type="button" class="small" @click=${() => acts.restore(each.id)}>${text('screen.restore')}</button></li>`)}</ul></details>` : nothing}
    </main>${foot(state, text)}`;
}

function caseRow(state, each, text, acts) {
  const line = each.answer?.answer?.verdict?.sentence ?? each.answer?.answer?.summary;
  const older = each.answer && each.answer.at < each.changed && each.answer.stale;
  return html`<li><a href="#/case/${each.id}"><strong>${nameOf(each, text, state.language)}</strong></a>
    <span class="quiet">${text(`screen.question.${each.question}`)} · ${day(each.seen, state.language)}</span>
    ${line ? html`<span class=${older ? 'quiet old' : 'line'}>${older ? html`${text('screen.oldAnswer')} ` : nothing}${line}</span>` : nothing}
    <details class="fold"><summary>${text('screen.actions')}<span class="unseen">: ${nameOf(each, text, state.language)}</span></summary><span class="row">${['duplicate', 'compare', 'exportCase', 'remove'].map(act => html`<button type="button" class="small" @click=${() => acts.ofCase(act, each.id)}>${text(`screen.act.${act}`)}</button>`)}</span></details></li>`;
}

/** What an import would do, before it does. */
function planView(state, text, acts) {
  const some = state.plan.filter(({ does }) => does === 'add' || does === 'replace');
  return html`<section class="note" aria-labelledby="plan"><h2 id="plan" tabindex="-1">${text('screen.importPlan')}</h2>
    <ul>${state.plan.map(({ case: each, does, reason }) => html`<li>${each ? nameOf(each, text, state.language) : text('screen.entry')}: ${text(`screen.import.${reason ?? does}`)}</li>`)}</ul>
    <p class="row"><button type="button" class="primary" ?disabled=${some.length === 0} @click=${acts.import}>${text('screen.importNow', some.length)}</button>
      <button type="button" @click=${acts.dismiss}>${text('screen.cancel')}</button></p></section>`;
}

/** Two cases: which is the other one, then both. */
export function comparePage(state, { text, acts, compared }) {
  const [one, other] = state.pair ?? [];
  const rest = state.book.filter(each => !each.deleted && each.id !== one?.id);
  return html`${top(state, text)}<main class="plain wide"><h1 tabindex="-1">${text('screen.compareTitle')}</h1>
    ${one ? html`<div class="field"><label for="other">${text('screen.compareWith', nameOf(one, text, state.language))}</label>
      <select id="other" @change=${event => acts.other(event.target.value)}><option value="">${text('screen.choose')}</option>
      ${rest.map(each => html`<option value=${each.id} ?selected=${each.id === other?.id}>${nameOf(each, text, state.language)}</option>`)}</select></div>` : html`<p>${text('screen.noSuchCase')}</p>`}
    ${rest.length === 0 ? html`<p>${text('screen.needTwo')}</p>` : nothing}
    ${one && other ? compared : nothing}</main>`;
}

/** What is shown while the parts of a page are on their way. */
export const waitingPage = (state, { text }) => html`${top(state, text)}<main class="plain"><h1 tabindex="-1">${state.case ? text(`screen.question.${state.case.question}`) : nothing}</h1>
  <p class="quiet">${text(state.away ? 'screen.formAway' : 'screen.formLoads')}</p></main>`;

/** A link or a case that cannot be opened. */
export const brokenPage = (state, { text }) => html`${top(state, text)}<main class="plain"><h1 tabindex="-1">${text('screen.brokenTitle')}</h1>
  <p>${text(state.route.reason === 'newer' ? 'screen.newerCase' : state.route.view === 'gone' ? 'screen.noSuchCase' : 'screen.brokenLink')}</p>
  <p><a class="button" href="#/">${text('screen.toFront')}</a></p></main>`;
