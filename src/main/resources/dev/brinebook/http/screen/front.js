// SPDX-License-Identifier: Apache-2.0
/** The front page and the frame of all pages: what is drawn first, before the rest of the workbench has come. */
import { countryOf } from './country.js';
import { html, nothing } from './lit-html.js';
import { symbol } from './units.js';

/** The questions that a case can be asked, in their order. */
const QUESTION_IDS = ['worth', 'hard', 'fits', 'need', 'setup', 'readings'];
/** Those of who stands at a softener, with a report or tools in hand or after the visit, below the six: a customer meets the six first. */
const VISIT_IDS = ['report', 'visit', 'complaint', 'start', 'savings'];

export const countryName = (code, language) => new Intl.DisplayNames(language, { type: 'region' }).of(code);
export const day = (iso, language) => new Intl.DateTimeFormat(language, { dateStyle: 'medium' }).format(new Date(iso.length === 10 ? `${iso}T12:00:00` : iso));

export const nameOf = (given, text, language) => given.name || text('screen.unnamed', day(given.seen, language));

/** The line that says for which country numbers are shown. */
export function countryLine(state, text) {
  const country = countryOf(state.case?.country ?? state.country);
  return html`<p class="country">${countryName(country.code, state.language)} · ${symbol(country.hardness)} · ${symbol(country.water)} · ${country.money}
    <a href="#/country">${text('screen.change')}</a></p>`;
}

const notice = state => html`<p class="notice" role="status" aria-live="polite">${state.notice ? html`${state.notice.words}
  ${state.notice.act ? html` <button type="button" class="small" @click=${state.notice.act.does}>${state.notice.act.words}</button>` : nothing}` : nothing}</p>`;

export function top(state, text, more = nothing) {
  const count = state.book.filter(each => !each.deleted).length;
  return html`<header class="top"><a class="home" href="#/">Brinebook</a>${more}
    <a class="cases" href="#/book">${text('screen.cases')}${count ? html` <span class="count">${count}</span>` : nothing}</a></header>${notice(state)}${storage(state, text)}`;
}

const STORAGE = { full: 'screen.storageFull', none: 'screen.storageNone', newer: 'screen.storageNone' };
const storage = (state, text) => (state.storage && STORAGE[state.storage] ? html`<p class="note warn" role="alert">${text(STORAGE[state.storage])}</p>` : nothing);

export const foot = (state, text) => html`<footer>${countryLine(state, text)}<p>${text('screen.privacy')}</p>
  <p><a href="/docs">${text('screen.docs')}</a> · <a href="/example-shop">${text('screen.shop')}</a></p></footer>`;

const questionList = (ids, text, name) => html`<ul class="ask ${name}">${ids.map(id => html`<li><a href="#/ask/${id}"><strong>${text(`screen.question.${id}`)}</strong><span>${text(`screen.questionHint.${id}`)}</span></a></li>`)}</ul>`;

/** The front page: the six questions, then those of a visit. */
export const frontPage = (state, { text, reminder = nothing }) => html`${top(state, text)}<main class="front">${reminder}
  <h1 tabindex="-1">${text('screen.whatToKnow')}</h1>
  <nav aria-label=${text('screen.questions')}>${questionList(QUESTION_IDS, text, 'questions')}
  <h2>${text('screen.forVisit')}</h2>${questionList(VISIT_IDS, text, 'at-visit')}</nav>
  ${lastCases(state, text)}</main>${foot(state, text)}`;

function lastCases(state, text) {
  const cases = state.book.filter(each => !each.deleted).slice(0, 3);
  return cases.length === 0 ? nothing : html`<section class="recent"><h2>${text('screen.lastCases')}</h2><ul class="rows">${cases.map(each => html`<li><a href="#/case/${each.id}">${nameOf(each, text, state.language)}</a>
    <span class="quiet">${text(`screen.question.${each.question}`)} · ${day(each.changed, state.language)}</span></li>`)}</ul></section>`;
}
