// SPDX-License-Identifier: Apache-2.0
/** Parts of a page that a phone folds, and that a wider screen shows. */
import { html } from './lit-html.js';

const NARROW = matchMedia('(max-width: 40rem)');

export const isNarrow = () => NARROW.matches;

/** A part with its heading, folded on a phone. */
export const fold = (id, title, content) => isNarrow()
  ? html`<details class="part"><summary><h2 id=${id} tabindex="-1">${title}</h2></summary>${content}</details>`
  : html`<section class="part" aria-labelledby=${id}><h2 id=${id} tabindex="-1">${title}</h2>${content}</section>`;
