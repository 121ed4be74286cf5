// Keeps the on-court page on the phone, so that it opens without a network. The server writes two
// lines before these: BUILD, which tells one page from another, and FILES, what the page is made of.
//
// Only the page is kept here. Scores travel past it: they are kept by the page itself.

const KEPT = 'rallywright-court ';
const CACHE = KEPT + BUILD;
const SHELL = '/court/shell';

const worker = /** @type {ServiceWorkerGlobalScope} */ (/** @type {unknown} */ (self));

worker.addEventListener('install', (event) => event.waitUntil(fill()));
worker.addEventListener('activate', (event) => event.waitUntil(takeOver()));
worker.addEventListener('fetch', (event) => {
  const file = fileFor(event.request);
  if (file) {
    event.respondWith(answer(file, event.request));
  }
});

/** Fetches every file anew; if one is missing, the earlier page stays in use. */
async function fill() {
  const cache = await caches.open(CACHE);
  await cache.addAll(FILES.map((file) => new Request(file, { cache: 'reload' })));
  await worker.skipWaiting();
}

/** Throws earlier pages away and serves the open ones. */
async function takeOver() {
  const old = (await caches.keys()).filter((name) => name.startsWith(KEPT) && name !== CACHE);
  await Promise.all(old.map((name) => caches.delete(name)));
  await worker.clients.claim();
}

/**
 * The kept file that answers a request: every session has the same page, which reads what it shows
 * through its key.
 * @param {Request} request @returns {string|null}
 */
function fileFor(request) {
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== location.origin) {
    return null;
  }
  if (request.mode === 'navigate') {
    return url.pathname === '/court' ? '/court' : /^\/court\/[^/]+$/.test(url.pathname) ? SHELL : null;
  }
  return FILES.includes(url.pathname) ? url.pathname : null;
}

/** @param {string} file @param {Request} request */
async function answer(file, request) {
  const cache = await caches.open(CACHE);
  return (await cache.match(file)) ?? fetch(request);
}
