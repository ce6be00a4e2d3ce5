// Keeps the page on this machine, so that it starts without a network.
//
// Each build has a cache of its own. A new build is fetched whole beside the old one. It takes over when the last
// tab of the old one is closed, when the only tab is loaded anew, or when a person asks for it. What tabs of the old
// build may still ask for stays until none is left, for the host does not have it any more.
//
// A file's hash is checked when it is fetched, and after each start. A start waits only for the hashes of the page and
// its start script; hashing the module first would cost up to 50 ms on a busy machine.

// The last step of a build fills these in; see src/tasks/scripts.rs. Each file has its hash.
const BUILD = "";
const FILES = {};

// Caches belong to the host, which may hold another copy of this page in another folder.
const SCOPE = self.registration.scope;
const OURS = `ropewalk ${SCOPE} `;
const CACHE = OURS + BUILD;

// How long a tab has to say which build it runs, in milliseconds.
const PATIENCE = 2000;

self.addEventListener("install", (event) => event.waitUntil(fill()));
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));

self.addEventListener("message", (event) => {
  if (event.data === "take over") self.skipWaiting();
  if (event.data === "take over if alone") event.waitUntil(takeOverIfAlone());
  if (event.data === "check") event.waitUntil(check());
});

self.addEventListener("fetch", (event) => {
  const { method, url } = event.request;
  if (method === "GET" && url.startsWith(SCOPE)) event.respondWith(answer(event));
});

async function fill() {
  const cache = await caches.open(CACHE);
  await cache.addAll(Object.keys(FILES).map(wanted));
}

// "reload" passes by the browser's own cache, which may hold a file of the build before; and the browser refuses a
// file whose hash is another.
function wanted(name) {
  return new Request(name, { cache: "reload", integrity: FILES[name] });
}

async function takeOverIfAlone() {
  if ((await tabs()).length <= 1) await self.skipWaiting();
}

function tabs() {
  return self.clients.matchAll({ type: "window", includeUncontrolled: true });
}

// Looks at every file that is kept, fetches what is missing or wrong, and tells whether all is there. Every tab hears
// it: one that was loaded anew meanwhile may have met the file that was wrong.
async function check() {
  const found = await Promise.all(Object.keys(FILES).map(restore)).catch(() => ["missing"]);
  const result = { whole: !found.includes("missing"), restored: found.includes("restored") };
  for (const tab of await tabs()) tab.postMessage(result);
  await clearUp();
}

async function restore(name) {
  if (await findRight(name)) return "right";
  const cache = await caches.open(CACHE);
  return cache.add(wanted(name)).then(() => "restored", () => "missing");
}

// Deletes earlier builds when no tab runs them any more.
async function clearUp() {
  const names = await caches.keys();
  const earlier = names.filter((name) => name.startsWith(OURS) && name !== CACHE);
  // One of them may be the next build.
  if (!earlier.length || self.registration.installing || self.registration.waiting) return;
  const builds = await Promise.all((await tabs()).map(buildOf));
  if (builds.every((build) => build === BUILD)) await Promise.all(earlier.map((name) => caches.delete(name)));
}

function buildOf(tab) {
  return new Promise((tell) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => tell(data);
    tab.postMessage("build", [port2]);
    setTimeout(tell, PATIENCE);
  });
}

async function answer(event) {
  const { request } = event;
  const name = nameOf(request);
  const listed = Object.hasOwn(FILES, name);
  // What cannot be kept or is not as it should be is asked of the network.
  const kept = await (listed ? find(name) : findEarlier(request)).catch(() => undefined);
  if (kept) return kept;
  if (!listed && request.mode === "navigate") return elsewhere(request);
  const response = await fetch(request);
  if (listed) event.waitUntil(keep(name, response.clone()).catch(() => {}));
  return response;
}

// The page itself is listed by its folder. What stands behind a question mark changes no file.
function nameOf(request) {
  const name = request.url.slice(SCOPE.length).split(/[?#]/)[0];
  return name === "" || name === "index.html" ? "./" : name;
}

// A file of this build, if it is kept. The page and its start script must be right, for they ask for a check when
// another file is not; no start waits for the hash of a large one.
async function find(name) {
  if (name === "./" || name.startsWith("start-")) return findRight(name);
  const cache = await caches.open(CACHE);
  return cache.match(name, { ignoreVary: true });
}

async function findRight(name) {
  const cache = await caches.open(CACHE);
  const kept = await cache.match(name, { ignoreVary: true });
  return kept && (await isRight(name, kept.clone())) ? kept : undefined;
}

async function isRight(name, response) {
  const hash = await crypto.subtle.digest("SHA-256", await response.arrayBuffer());
  return FILES[name] === `sha256-${btoa(String.fromCharCode(...new Uint8Array(hash)))}`;
}

// A file that only an earlier build has.
async function findEarlier(request) {
  return request.mode === "navigate" ? undefined : caches.match(request, { ignoreVary: true });
}

async function keep(name, response) {
  if (!response.ok || !(await isRight(name, response.clone()))) return;
  const cache = await caches.open(CACHE);
  await cache.put(name, response);
}

// Any other address leads to the page, unless the host has something there.
async function elsewhere(request) {
  const there = await fetch(request).catch(() => undefined);
  return there && there.status !== 404 ? there : Response.redirect(SCOPE);
}
