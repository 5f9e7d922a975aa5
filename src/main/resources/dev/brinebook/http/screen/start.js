// SPDX-License-Identifier: Apache-2.0
/** What is done first: the words of the language in use, the front page, and then the rest of the workbench. */
import { likelyCountry } from './country.js';
import { frontPage } from './front.js';
import { render } from './lit-html.js';
import { tagOf, textOf } from './texts.js';
import { nameUnits } from './units.js';

export const root = document.getElementById('app');

/** Small choices of this device, which survive where nothing else does. */
export const remembered = {
  get(name) { try { return localStorage.getItem(`brinebook.${name}`); } catch { return null; } },
  set(name, value) { try { localStorage.setItem(`brinebook.${name}`, value); } catch { /* a browser that keeps nothing */ } },
};

/** Light, dark, or as the system is. */
export const LOOKS = ['system', 'light', 'dark'];
export function wear(look) {
  if (look === 'system') { delete document.documentElement.dataset.look; } else { document.documentElement.dataset.look = look; }
}

const asked = navigator.languages ?? [navigator.language];

/** Numbers and dates are written as the browser's own region has them, where it speaks the language. */
export const languageOf = tag => asked.find(each => each.split('-')[0] === tag.split('-')[0]) ?? tag;

const tag = remembered.get('language') ?? tagOf(asked);

/** What the page begins with. */
export const begun = { tag, language: languageOf(tag), country: remembered.get('country') ?? likelyCountry(asked), look: remembered.get('look') ?? 'system' };

/** The words of a language, which the page then has; with those of a visit where `visit`. */
export async function wordsOf(chosen, visit = false) {
  const files = [`./text-${chosen}.js`, ...(visit ? [`./visit-text-${chosen}.js`] : [])];
  const texts = Object.assign({}, ...(await Promise.all(files.map(each => import(each)))).map(each => each.default));
  nameUnits(texts);
  document.documentElement.lang = chosen;
  return textOf(texts, languageOf(chosen));
}

/** Fetches modules at once that a browser would find one after another. */
export const preload = names => names.forEach(name => document.head.append(Object.assign(document.createElement('link'), { rel: 'modulepreload', href: `/workbench/${name}.js` })));

const REST = ['app', 'book', 'calculator', 'case', 'contract', 'example', 'idb', 'pages', 'paste', 'questions', 'rounding', 'wrap-idb-value'];

async function start() {
  wear(begun.look);
  const text = await wordsOf(begun.tag);
  if (location.hash.length < 3) {
    root.replaceChildren();
    render(frontPage({ ...begun, book: [], case: null, notice: null, storage: null }, { text }), root);
    performance.mark('questions');
  }
  preload(REST);
  (await import('./app.js')).begin(text);
}

start();
