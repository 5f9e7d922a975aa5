// SPDX-License-Identifier: Apache-2.0
/** Pure functions on a case: its readings by pointer, undo, links and files. Nothing here touches the page or the device. */

/** The shape of a case. A case of an older one is brought to it when it is opened; one of a newer page is refused. */
export const SHAPE = 2;
const UNDO_STEPS = 50;
const SAME_STEP_MS = 2000;
/** What undo brings back. The photo is not among them: it is large, and kept by itself. */
const UNDONE = ['name', 'seen', 'country', 'question', 'readings', 'drafts', 'guesses', 'notes'];
/** What a file says of a case beside its readings, in this order, so that the same case is the same file. */
const KEPT = ['shape', 'id', 'name', 'seen', 'changed', 'country', 'question', 'drafts', 'guesses', 'notes', 'answer', 'deleted', 'photo'];

const steps = pointer => pointer.split('/').slice(1);

/** What is at a pointer, or undefined. */
export const at = (part, pointer) => steps(pointer).reduce((inner, name) => inner?.[name], part);

/** A copy with a value at a pointer. Undefined takes away; what becomes empty by that goes too. */
export function put(part, pointer, value) {
  const [name, ...rest] = steps(pointer);
  const inner = rest.length ? put(part?.[name] ?? (/^\d+$/.test(rest[0]) ? [] : {}), `/${rest.join('/')}`, value) : value;
  const gone = inner === undefined || (rest.length > 0 && value === undefined && Object.keys(inner).length === 0);
  if (Array.isArray(part)) {
    return gone ? part.filter((each, index) => index !== Number(name)) : Object.assign([...part], { [name]: inner });
  }
  const copy = { ...part };
  if (gone) { delete copy[name]; } else { copy[name] = inner; }
  return copy;
}

/** A case with nothing in it yet. */
export function emptyCase(id, question, country, now) {
  return { shape: SHAPE, id, name: '', seen: localDay(now), changed: now.toISOString(), country, question, readings: {}, drafts: {},
    guesses: {}, notes: '', photo: null, answer: null, deleted: null };
}

/** A case begun once something is known of it. */
export const isBegun = each => Object.keys(each.readings).length > 0 || Object.keys(each.drafts).length > 0
  || each.name !== '' || each.notes !== '' || each.photo !== null;

export const localDay = now => [now.getFullYear(), now.getMonth() + 1, now.getDate()].map(part => String(part).padStart(2, '0')).join('-');

/** The steps of a case before any change. */
export const noSteps = () => ({ past: [], future: [], last: null });

const undone = given => Object.fromEntries(UNDONE.map(name => [name, given[name]]));

/** A case and its steps after a change; changes of the same `what` shortly after one another are one step. */
export function changed(given, kept, next, what, now) {
  const same = kept.last && kept.last.what === what && now - kept.last.at < SAME_STEP_MS && kept.past.length > 0;
  return {
    case: { ...next, changed: now.toISOString() },
    steps: { past: same ? kept.past : [...kept.past, undone(given)].slice(-UNDO_STEPS), future: [], last: { what, at: now.getTime() } },
  };
}

/** The case one step back, or null where there is none. */
export function undo(given, kept, now) {
  const before = kept.past.at(-1);
  return before ? { case: { ...given, ...before, changed: now.toISOString() },
    steps: { past: kept.past.slice(0, -1), future: [undone(given), ...kept.future], last: null } } : null;
}

/** The case one step forward again, or null where there is none. */
export function redo(given, kept, now) {
  const [after, ...rest] = kept.future;
  return after ? { case: { ...given, ...after, changed: now.toISOString() },
    steps: { past: [...kept.past, undone(given)], future: rest, last: null } } : null;
}

/** The steps when another tab changed the case: what this tab had can be brought back. */
export const takenOver = (mine, kept) => ({ past: [...kept.past, undone(mine)].slice(-UNDO_STEPS), future: [], last: null });

export const duplicate = (given, id, name, now) => ({ ...given, id, name, seen: localDay(now), changed: now.toISOString(), deleted: null });

const PLAIN = /^[\w-]+$/;

/** The part of an address after `#` that holds the readings of a case, without name and notes. */
export function toLink({ shape, question, country, readings, guesses }) {
  const bytes = new TextEncoder().encode(JSON.stringify({ shape, question, country, readings, guesses }));
  let text = '';
  bytes.forEach(each => { text += String.fromCharCode(each); });
  return btoa(text).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

/** The readings of such a part, or null where it is broken. */
export function fromLink(part) {
  if (!PLAIN.test(part)) { return null; }
  try {
    const text = atob(part.replaceAll('-', '+').replaceAll('_', '/'));
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(Uint8Array.from(text, letter => letter.charCodeAt(0))));
  } catch {
    return null;
  }
}

const isObject = value => value !== null && typeof value === 'object' && !Array.isArray(value);
const REQUEST_PARTS = ['water', 'household', 'softener', 'retrofit', 'site', 'prices', 'preferences', 'candidates', 'days', 'results', 'drain', 'refill', 'resinTank', 'brineTank', 'books'];

/**
 * A case from what was stored, sent or saved, by this page or an older one. A plain request of an operation, as the first pages saved
 * and linked it, becomes a case too. `{ refused: reason }` where it is neither.
 */
export function opened(raw, questions, blank) {
  if (!isObject(raw)) { return { refused: 'unreadable' }; }
  if (raw.shape > SHAPE) { return { refused: 'newer' }; }
  const plain = raw.shape === undefined && REQUEST_PARTS.some(name => name in raw);
  if (!plain && !isObject(raw.readings)) { return { refused: 'unreadable' }; }
  const given = plain ? { readings: raw } : raw;
  const { units, seed, ...readings } = given.readings;
  const seen = given.seen ?? given.changed?.slice(0, 10) ?? blank.seen;
  const kept = Object.fromEntries(Object.keys(blank).filter(name => name in given && typeof given[name] === typeof blank[name]
    || given[name] === null || blank[name] === null && name in given).map(name => [name, given[name] ?? blank[name]]));
  return { case: { ...blank, ...kept, seen, readings, shape: SHAPE, question: questions.includes(given.question) ? given.question : questions[0] } };
}

/** A file of cases: each as its readings, which are those of a request, and the book's own part under one name. */
export function toFile(cases) {
  const entries = [...cases].sort((one, other) => (one.id < other.id ? -1 : 1)).map(each => ({ ...each.readings,
    brinebook: Object.fromEntries(KEPT.filter(name => each[name] !== undefined).map(name => [name, each[name]])) }));
  return `${JSON.stringify({ version: SHAPE, cases: entries }, null, 1)}\n`;
}

/** The entries of such a file, or of a single case or request; null where the text is none of these. */
export function fromFile(text) {
  let file;
  try { file = JSON.parse(text); } catch { return null; }
  if (!isObject(file)) { return null; }
  const entries = Array.isArray(file.cases) ? file.cases : [file];
  return entries.map(entry => {
    if (!isObject(entry)) { return null; }
    const { brinebook, ...readings } = entry;
    return isObject(brinebook) ? { ...brinebook, readings } : readings;
  });
}

/** What an import would do with each case, before it writes: add, replace an older one, or leave what is here. */
export function importPlan(held, incoming) {
  return incoming.map(each => {
    const mine = held.find(other => other.id === each.id);
    if (!mine) { return { case: each, does: 'add' }; }
    return { case: each, does: mine.changed === each.changed ? 'same' : mine.changed < each.changed ? 'replace' : 'older' };
  });
}

const MONTH_MS = 30 * 86400000;

/**
 * Whether to remind of an export: at most once a month, and only where cases were changed since the last one.
 * @param reminded when somebody was reminded last, or the month began with the first case
 */
export function isToExport(book, exported, reminded, now) {
  const last = [exported, reminded].filter(Boolean).map(Date.parse);
  return last.length > 0 && now - Math.max(...last) >= MONTH_MS && book.some(each => !each.deleted && (!exported || each.changed > exported));
}
