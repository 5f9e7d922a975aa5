// SPDX-License-Identifier: Apache-2.0
/** The words of the page: the language in use alone is loaded. */

const FIRST = ['en', 'de', 'es', 'fr', 'es-MX'];
/** Spanish of America, where it is not that of Mexico. */
const AMERICA = ['AR', 'BO', 'CL', 'CO', 'CR', 'CU', 'DO', 'EC', 'GT', 'HN', 'NI', 'PA', 'PE', 'PR', 'PY', 'SV', 'US', 'UY', 'VE', '419'];

/** The file of texts for the first of a browser's languages that the page speaks. */
export function tagOf(languages) {
  for (const each of languages) {
    const [base, ...rest] = each.split('-');
    if (base === 'es' && rest.some(part => AMERICA.includes(part.toUpperCase()))) { return 'es-419'; }
    const found = FIRST.find(tag => tag === each) ?? FIRST.find(tag => tag === base);
    if (found) { return found; }
  }
  return 'en';
}

const BRANCH = /(=\d+|\w+)\s*\{((?:[^{}]|\{\d+\})*)\}/g;
const SLOT = /\{(\d+)(?:,\s*(plural|select),\s*((?:(?:=\d+|\w+)\s*\{(?:[^{}]|\{\d+\})*\}\s*)+))?\}/g;

const rules = new Map();
function rulesOf(language) {
  if (!rules.has(language)) { rules.set(language, new Intl.PluralRules(language)); }
  return rules.get(language);
}

/** A pattern with values in its slots; plural and select as ICU MessageFormat has them, one in another not. */
export function filled(pattern, values, language) {
  const simple = text => text.replace(/\{(\d+)\}/g, (slot, index) => values[index] ?? slot);
  return pattern.replace(SLOT, (slot, index, kind, branches) => {
    const value = values[index];
    if (!kind) { return value ?? slot; }
    const of = Object.fromEntries([...branches.matchAll(BRANCH)].map(([, name, text]) => [name, text]));
    const count = Number(value);
    const chosen = kind === 'select' ? of[value] ?? of.other : of[`=${value}`] ?? of[rulesOf(language).select(count)] ?? of.other;
    return simple(kind === 'plural' ? chosen.replaceAll('#', new Intl.NumberFormat(language).format(count)) : chosen);
  }).replaceAll("''", "'");
}

/** `text(id, ...slots)` of a language. */
export const textOf = (texts, language) => (id, ...values) => filled(texts[id] ?? id, values, language);
