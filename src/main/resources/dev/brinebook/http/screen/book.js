// SPDX-License-Identifier: Apache-2.0
/**
 * The case book of this device: cases, their photos and their steps of undo, in IndexedDB. Where the device keeps nothing, the book
 * lives in memory and says so. Each write notifies the other tabs.
 */
import { openDB } from './idb.js';

const NAME = 'brinebook';
const VERSION = 1;
const TRASH_MS = 30 * 86400000;

const now = () => Date.now();

/** A book in memory, where the device has none. */
function memory() {
  const held = { cases: new Map(), photos: new Map(), steps: new Map(), settings: new Map() };
  return {
    get: async (store, key) => held[store].get(key),
    getAll: async store => [...held[store].values()],
    async write(changes) {
      const [[first, id]] = changes;
      const before = held[first].get(id);
      changes.forEach(([store, key, value]) => (value === undefined ? held[store].delete(key) : held[store].set(key, value)));
      return before;
    },
    lasting: false,
  };
}

async function device() {
  const base = await openDB(NAME, VERSION, {
    upgrade(fresh) { ['cases', 'photos', 'steps', 'settings'].forEach(store => fresh.createObjectStore(store)); },
    blocking(event) { event.target?.close?.(); },
  });
  return {
    get: (store, key) => base.get(store, key),
    getAll: store => base.getAll(store),
    /** All or none of the changes; gives what the first of them replaces. */
    async write(changes) {
      const stores = [...new Set(changes.map(([store]) => store))];
      const work = base.transaction(stores, 'readwrite');
      const [[first, id]] = changes;
      const before = work.objectStore(first).get(id);
      const done = changes.map(([store, key, value]) => (value === undefined ? work.objectStore(store).delete(key)
        : work.objectStore(store).put(value, key)));
      await Promise.all([before, ...done, work.done]);
      return before;
    },
    lasting: true,
  };
}

/** Opens the book. `onChange(id)` is called when another tab changed a case. */
export async function openBook(onChange) {
  const base = await device().catch(memory);
  const channel = 'BroadcastChannel' in globalThis ? new BroadcastChannel(NAME) : null;
  channel?.addEventListener('message', ({ data }) => onChange(data.id));
  const broadcast = id => channel?.postMessage({ id });
  const withPhoto = async given => given && { ...given, photo: (await base.get('photos', given.id)) ?? null };

  const book = {
    lasting: base.lasting,
    /** All cases, newest first, without their photos; those in the trash too. */
    async all() {
      const cases = await base.getAll('cases');
      return cases.sort((one, other) => (one.changed < other.changed ? 1 : -1));
    },
    async load(id) {
      return { case: await withPhoto(await base.get('cases', id)), steps: await base.get('steps', id) };
    },
    async withPhotos(cases) { return Promise.all(cases.map(withPhoto)); },
    /**
     * Writes a case that was last read as `known`, its time of change. Gives back what another tab wrote since, which the writer
     * keeps as a step, or null. Throws `QuotaExceededError` where the device is full.
     */
    async save(given, steps, known, photoToo) {
      const { photo, ...rest } = given;
      const changes = [['cases', given.id, rest]];
      if (steps) { changes.push(['steps', given.id, steps]); }
      if (photoToo) { changes.push(['photos', given.id, photo ?? undefined]); }
      const there = await base.write(changes);
      broadcast(given.id);
      return there && known && there.changed > known ? there : null;
    },
    async trash(id) { await change(id, { deleted: new Date(now()).toISOString() }); },
    async restore(id) { await change(id, { deleted: null }); },
    /** Takes away for good what has been in the trash for thirty days. */
    async empty() {
      const gone = (await base.getAll('cases')).filter(each => each.deleted && now() - Date.parse(each.deleted) > TRASH_MS);
      if (gone.length) { await base.write(gone.flatMap(({ id }) => ['cases', 'photos', 'steps'].map(store => [store, id, undefined]))); }
    },
    setting: name => base.get('settings', name),
    async set(name, value) { await base.write([['settings', name, value]]); },
    /** Asks the browser to keep the book, once there is something to keep; false where it refuses. */
    async persist() {
      if (!base.lasting) { return false; }
      return navigator.storage?.persist ? (await navigator.storage.persisted()) || navigator.storage.persist() : false;
    },
  };

  async function change(id, more) {
    const there = await base.get('cases', id);
    if (there) {
      await base.write([['cases', id, { ...there, ...more }]]);
      broadcast(id);
    }
  }
  return book;
}

/** A photo as text for a file, and back. */
export async function photoToText(photo) {
  if (!photo) { return null; }
  const bytes = new Uint8Array(await photo.arrayBuffer());
  let text = '';
  bytes.forEach(each => { text += String.fromCharCode(each); });
  return { type: photo.type, base64: btoa(text) };
}

export function photoFromText(kept) {
  if (!kept?.base64) { return null; }
  return new Blob([Uint8Array.from(atob(kept.base64), letter => letter.charCodeAt(0))], { type: kept.type });
}
