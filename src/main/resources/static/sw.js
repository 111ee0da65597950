// Keeps on the phone what a walk needs without signal: the pages of walks, and the files that they are made of.
const PAGES = 'dapple-pages-1';
const FILES = 'dapple-files-1';
const FOLDERS = ['/css/', '/js/', '/font/', '/icon/', '/webjars/'];
const WITHOUT_SIGNAL = '/walk/without-signal';
const PATIENCE_MILLISECONDS = 10_000;

const isFile = (url) => FOLDERS.some((folder) => url.pathname.startsWith(folder));
const isWalk = (url) => url.pathname.endsWith('/on-phone');
const doorOf = (url) => url.pathname.match(/^\/d\/([0-9A-Z]+)$/)?.[1];

const patiently = () => ({ signal: AbortSignal.timeout(PATIENCE_MILLISECONDS) });

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
  const answer = await fetch(request, { credentials: 'same-origin', ...patiently() });
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
    if (isWalk(url)) return await walkPage(pages, request, url);
    return await (doorOf(url) ? fetch(request, patiently()) : fetch(request));
  } catch (none) {
    const kept = await walkAtDoor(pages, doorOf(url)) ?? await pages.match(url.origin + url.pathname) ?? await pages.match(WITHOUT_SIGNAL);
    if (kept) return kept;
    throw none;
  }
}

/** A scanned door without signal: on to the newest kept walk that comes by it. */
async function walkAtDoor(pages, door) {
  if (!door) return undefined;
  for (const kept of (await pages.keys()).reverse()) {
    const text = await (await pages.match(kept)).text();
    if (text.includes(`"door":"${door}"`)) return Response.redirect(`${kept.url}#door-${door}`);
  }
  return undefined;
}

async function walkPage(pages, request, url) {
  const answer = await fetch(request, patiently());
  if (answer.ok && !answer.redirected) await pages.put(url.origin + url.pathname, answer.clone());
  return answer;
}

async function file(request) {
  const kept = await caches.open(FILES);
  const found = await kept.match(request.url);
  return found ?? fetchKept(kept, request);
}
