// Keeps the page on this machine, so that it starts without a network.
//
// Each build has a cache of its own. A new build is fetched whole beside the old one. It takes over when the last
// tab of the old one is closed, when the only tab is loaded anew, or when a person asks for it. So no tab is left
// with files of two builds.

// The last step of a build fills these in; see src/tasks/finish.rs.
const BUILD = "";
const FILES = [];

// Caches belong to the host, which may hold another copy of this page in another folder.
const OURS = `ropewalk ${self.registration.scope} `;
const CACHE = OURS + BUILD;

self.addEventListener("install", (event) => event.waitUntil(fill()));
self.addEventListener("activate", (event) => event.waitUntil(takeOver()));

self.addEventListener("message", (event) => {
  if (event.data === "take over") self.skipWaiting();
  if (event.data === "take over if alone") event.waitUntil(takeOverIfAlone());
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method === "GET" && new URL(request.url).origin === self.location.origin) {
    event.respondWith(answer(request));
  }
});

async function fill() {
  const cache = await caches.open(CACHE);
  // "reload" passes by the browser's own cache, which may hold a file of the build before.
  await cache.addAll(FILES.map((file) => new Request(file, { cache: "reload" })));
}

async function takeOverIfAlone() {
  const tabs = await self.clients.matchAll({ type: "window", includeUncontrolled: true });
  if (tabs.length <= 1) await self.skipWaiting();
}

async function takeOver() {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith(OURS) && name !== CACHE).map((name) => caches.delete(name)));
  await self.clients.claim();
}

async function answer(request) {
  const cache = await caches.open(CACHE);
  const kept = await cache.match(request, { ignoreSearch: true, ignoreVary: true });
  if (kept) return kept;
  try {
    return await fetch(request);
  } catch (error) {
    // Any address of the page is the page.
    const page = request.mode === "navigate" && (await cache.match("./"));
    if (page) return page;
    throw error;
  }
}
