// SPDX-License-Identifier: Apache-2.0
/** Keeps the pages, their words and the rules of the forms, so that cases open without a signal. Calculations are never kept. */
const PATHS = [/* paths */];
const PAGES = 'brinebook-/* version */';
const RULES = 'brinebook-rules';
const OPERATIONS = ['assess', 'reviewSettings', 'sizeSoftener', 'backtestSettings', 'readWaterReport', 'reduceFieldMeasurements', 'checkInstallation',
  'diagnoseComplaint', 'planCommissioning', 'verifySavings'];
const AT_ONCE = ['/v1/units', ...OPERATIONS.map(each => `/openapi/${each}.json`), '/examples/assess.well-family.request.json', '/examples/assess.apartment.request.json'];

self.addEventListener('install', event => {
  event.waitUntil((async () => {
    // Words of other languages come when they are first used.
    const pages = await caches.open(PAGES);
    await pages.addAll(PATHS.filter(path => !path.includes('text-')).map(path => new Request(path, { cache: 'no-cache' })));
    const rules = await caches.open(RULES);
    await rules.addAll(AT_ONCE);
  })());
});

self.addEventListener('activate', event => {
  event.waitUntil((async () => {
    const names = await caches.keys();
    await Promise.all(names.filter(name => name.startsWith('brinebook-') && name !== PAGES && name !== RULES).map(name => caches.delete(name)));
    await self.clients.claim();
  })());
});

/** What is kept is given at once; it changes with the version of the worker alone. */
async function kept(request, path) {
  const cache = await caches.open(PAGES);
  const there = await cache.match(path);
  if (there) { return there; }
  const answer = await fetch(request);
  if (answer.ok) { await cache.put(path, answer.clone()); }
  return answer;
}

/** Rules are asked for anew each time; without a signal those of the last time do. */
async function fresh(request, path) {
  const cache = await caches.open(RULES);
  try {
    const answer = await fetch(request);
    if (answer.ok) { await cache.put(path, answer.clone()); }
    return answer;
  } catch (fault) {
    const there = await cache.match(path);
    if (there) { return there; }
    throw fault;
  }
}

self.addEventListener('fetch', event => {
  const { pathname, origin } = new URL(event.request.url);
  if (event.request.method !== 'GET' || origin !== self.location.origin) { return; }
  if (PATHS.includes(pathname)) { event.respondWith(kept(event.request, pathname)); } else if (AT_ONCE.includes(pathname) || pathname.startsWith('/examples/')) { event.respondWith(fresh(event.request, pathname)); }
});
