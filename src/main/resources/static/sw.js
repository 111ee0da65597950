// Keeps on the phone what a walk needs without signal: the pages of walks, and the files that they are made of.
const PAGES = 'dapple-pages-1';
const FILES = 'dapple-files-1';
const FOLDERS = ['/css/', '/js/', '/font/', '/icon/', '/webjars/'];
const WITHOUT_SIGNAL = '/walk/without-signal';
const PATIENCE_MILLISECONDS = 10_000;

const isFile = (url) => FOLDERS.some((folder) => url.pathname.startsWith(folder));
const isWalk = (url) => url.pathname.endsWith('/on-phone');

self.addEventListener('install', () => self.skipWaiting());
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));

self.addEventListener('message', (event) => {
  const { page, files } = event.data?.keep ?? {};
  if (page) event.waitUntil(keep(page, files));
});

async function keep(page, files) {
  const pages = await caches.open(PAGES);
  const kept = await caches.open(FILES);
  await Promise.allSettled([
    fetchKept(pages, new Request(page)),
    fetchKept(pages, new Request(WITHOUT_SIGNAL)),
    ...files.filter((name) => isFile(new URL(name))).map(async (name) => await kept.match(name) ?? fetchKept(kept, new Request(name))),
  ]);
}

/** What is sent elsewhere is no page of a walk: a sign-in is not kept in its place. */
async function fetchKept(cache, request) {
  const answer = await fetch(request, { credentials: 'same-origin', signal: AbortSignal.timeout(PATIENCE_MILLISECONDS) });
  if (answer.ok && !answer.redirected) await cache.put(request.url, answer.clone());
  return answer;
}

self.addEventListener('fetch', (event) => {
  const url = new URL(event.request.url);
  if (url.origin !== location.origin) return;
  // A phone that is handed on keeps no page of who had it.
  if (event.request.method === 'POST' && url.pathname === '/sign-out') event.waitUntil(caches.delete(PAGES));
  if (event.request.method !== 'GET') return;
  if (event.request.mode === 'navigate') event.respondWith(page(event.request, url));
  else if (isFile(url)) event.respondWith(file(event.request));
});

async function page(request, url) {
  const pages = await caches.open(PAGES);
  try {
    return isWalk(url) ? await walkPage(pages, request, url) : await fetch(request);
  } catch (none) {
    const kept = await pages.match(url.origin + url.pathname) ?? await pages.match(WITHOUT_SIGNAL);
    if (kept) return kept;
    throw none;
  }
}

async function walkPage(pages, request, url) {
  const answer = await fetch(request, { signal: AbortSignal.timeout(PATIENCE_MILLISECONDS) });
  if (answer.ok && !answer.redirected) await pages.put(url.origin + url.pathname, answer.clone());
  return answer;
}

async function file(request) {
  const kept = await caches.open(FILES);
  const found = await kept.match(request.url);
  return found ?? fetchKept(kept, request);
}
