/**
 * Keeps the built page with the browser, so that it opens without a network. The build puts the list of its files and
 * the version in; a version is kept whole or not at all, and takes over only when a person says so or no page is open.
 */
/** @type {string} */
const VERSION = __VERSION__;
/** @type {readonly string[]} Addresses of the version's files, relative to this script. */
const FILES = __FILES__;

const PREFIX = 'handful page ';
const OWN = PREFIX + VERSION;

self.addEventListener('install', (event) => {
  event.waitUntil(keepFiles());
});

self.addEventListener('activate', (event) => {
  event.waitUntil(forgetOlder().then(() => self.clients.claim()));
});

self.addEventListener('message', (event) => {
  if (event.data === 'use now') void self.skipWaiting();
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== self.location.origin) return;
  event.respondWith(answer(request));
});

async function keepFiles() {
  const cache = await caches.open(OWN);
  // Past the browser's own cache, which may still hold a file of the version before under the same name.
  await cache.addAll(FILES.map((file) => new Request(file, { cache: 'no-cache' })));
}

/**
 * The version before this one stays: a page of it may still be open in another tab and ask for a part that it has not
 * needed so far.
 */
async function forgetOlder() {
  const others = (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== OWN);
  await Promise.all(others.slice(0, -1).map((name) => caches.delete(name)));
}

async function answer(request) {
  // Servers say that an answer varies by headers that pages and scripts send differently; the files are the same.
  const options = { ignoreSearch: true, ignoreVary: true };
  const wanted = request.mode === 'navigate' ? './' : request;
  const own = await caches.open(OWN);
  const kept = (await own.match(wanted, options)) ?? (await caches.match(wanted, options));
  return kept ?? fetch(request);
}
