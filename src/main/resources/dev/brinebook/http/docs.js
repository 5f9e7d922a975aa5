// SPDX-License-Identifier: Apache-2.0
// What pages gain with scripts: buttons that copy, and the search. Without scripts they hold the same content.

function copyButton(block) {
  const button = Object.assign(document.createElement('button'), { type: 'button', className: 'copy', textContent: 'Copy' });
  const title = block.closest('details')?.querySelector('summary').textContent ?? block.dataset.language ?? 'answer';
  button.setAttribute('aria-label', `Copy: ${title}`);
  button.addEventListener('click', async () => {
    button.textContent = await copied(block) ? 'Copied' : 'Press Ctrl+C';
    setTimeout(() => { button.textContent = 'Copy'; }, 2000);
  });
  const frame = Object.assign(document.createElement('div'), { className: 'copyable' });
  block.replaceWith(frame);
  frame.append(block, button);
}

/** Over plain HTTP browsers have no clipboard for scripts: there the text is selected, and copied in the old way. */
async function copied(block) {
  try {
    await navigator.clipboard.writeText(block.textContent);
    return true;
  } catch {
    const range = document.createRange();
    range.selectNodeContents(block);
    getSelection().removeAllRanges();
    getSelection().addRange(range);
    return document.execCommand('copy');
  }
}

document.querySelectorAll('main pre').forEach(copyButton);

/** "saltDose" is found by salt dose too. */
const words = text => text.replace(/([a-z0-9])([A-Z])/g, '$1 $2 $&').toLowerCase();

/** Every term must occur; a name counts for more than what is said of it, the whole name most. */
function score(entry, terms) {
  if (!terms.every(term => entry.all.includes(term))) {
    return 0;
  }
  const inName = terms.filter(term => entry.name.includes(term)).length;
  return 1 + inName * 4 + (entry.title.toLowerCase() === terms.join('') ? 8 : 0) + (entry.kind === 'property' ? 0 : 1);
}

function result(entry) {
  const item = document.createElement('li');
  const link = Object.assign(document.createElement('a'), { href: entry.address, textContent: entry.title });
  const kind = Object.assign(document.createElement('span'), { className: 'tag', textContent: entry.kind });
  const text = Object.assign(document.createElement('p'), { textContent: entry.text });
  item.append(link, ' ', kind, text);
  return item;
}

const MOST_SHOWN = 40;

async function search(place) {
  const { groups } = await (await fetch('/docs/search.json')).json();
  const entries = groups.flatMap(({ kind, entries: some }) => some.map(entry => (
    { ...entry, kind, name: words(entry.title), all: words(`${entry.title} ${entry.text}`) })));
  const label = Object.assign(document.createElement('label'), { htmlFor: 'query', textContent: 'Search the docs' });
  const box = Object.assign(document.createElement('input'), { id: 'query', type: 'search', autocomplete: 'off', spellcheck: false });
  const count = Object.assign(document.createElement('p'), { className: 'aside' });
  count.setAttribute('role', 'status');
  const list = Object.assign(document.createElement('ol'), { className: 'found' });
  const everything = document.getElementById('everything');
  const show = () => {
    const terms = box.value.toLowerCase().split(/\s+/).filter(Boolean);
    const found = terms.length === 0 ? [] : entries.map(entry => ({ entry, score: score(entry, terms) }))
      .filter(each => each.score > 0).sort((one, other) => other.score - one.score);
    list.replaceChildren(...found.slice(0, MOST_SHOWN).map(each => result(each.entry)));
    everything.hidden = terms.length > 0;
    const shown = found.length > MOST_SHOWN ? `, the first ${MOST_SHOWN} shown` : '';
    count.textContent = terms.length === 0 ? 'Type to search, arrow keys to choose. / opens the search from every page.'
      : `${found.length} found${shown}`;
    history.replaceState(null, '', terms.length === 0 ? location.pathname : `?q=${encodeURIComponent(box.value)}`);
  };
  place.addEventListener('keydown', event => {
    const stops = [box, ...list.querySelectorAll('a')];
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (step && stops.includes(document.activeElement)) {
      stops[stops.indexOf(document.activeElement) + step]?.focus();
      event.preventDefault();
    } else if (event.key === 'Enter' && document.activeElement === box) {
      stops[1]?.click();
    }
  });
  box.addEventListener('input', show);
  box.value = new URLSearchParams(location.search).get('q') ?? '';
  place.append(label, box, count, list);
  show();
  box.focus();
}

const place = document.getElementById('search');
if (place) {
  search(place);
}
document.addEventListener('keydown', event => {
  if (event.key === '/' && !event.ctrlKey && !event.metaKey && !event.altKey && !event.target.closest('input, textarea, select')) {
    event.preventDefault();
    if (place) {
      document.getElementById('query')?.focus();
    } else {
      location.assign('/docs/search');
    }
  }
});
