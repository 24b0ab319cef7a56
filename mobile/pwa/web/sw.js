// Serves the app from the phone. Files are kept by their content; a version's table says which path
// is which. A newer version is fetched and checked beside the old one; its table comes into force
// when the person agrees ("use"), however often the browser swaps this script before that.
/* global VERSION -- the generator puts it before this: { csp, seal (of the csp), files: path -> [SHA-256, type] } */

const scope = registration.scope;
const kept = () => caches.open(`duskcoat ${scope}`);
const key = (version, path) => `${scope}.kept/${version.seal}/${version.files[path][0]}`;
const IN_FORCE = `${scope}.kept/version`;
const blink = typeof Intl.v8BreakIterator === 'function'; // such browsers take the smaller CanvasKit, as Flutter's loader does
const needed = (version) => Object.keys(version.files).filter((path) =>
  !path.startsWith('canvaskit/') || path.startsWith('canvaskit/chromium/') === blink);

async function hashOf(bytes) {
  return [...new Uint8Array(await crypto.subtle.digest('SHA-256', bytes))].map((b) => b.toString(16).padStart(2, '0')).join('');
}

async function fetched(version, path) {
  const [hash, type] = version.files[path], url = path === 'index.html' ? scope : scope + path;
  for (const cache of ['no-cache', 'reload']) { // a cache on the way may hold an older file
    const answer = await fetch(url, { cache });
    const bytes = answer.ok && await answer.arrayBuffer();
    if (!bytes || await hashOf(bytes) !== hash) continue;
    const headers = { 'content-type': type, 'content-length': bytes.byteLength, 'content-security-policy': version.csp };
    const whole = new Response(bytes, { headers });
    await (await kept()).put(key(version, path), whole.clone());
    return whole;
  }
  throw new Error(`${url} is not what this version's table says`);
}

/** Look at every file of a version; fetch what is missing or damaged. */
async function checked(version) {
  const cache = await kept(), ahead = needed(version), found = { repaired: 0, broken: 0, problem: null };
  await Promise.all([1, 2, 3, 4].map(async () => {
    for (let path; (path = ahead.pop());) {
      const whole = await cache.match(key(version, path));
      if (whole && await hashOf(await whole.arrayBuffer()) === version.files[path][0]) continue;
      try {
        await fetched(version, path); // takes the place of what was there
        found.repaired += 1;
      } catch (problem) {
        found.broken += 1;
        found.problem = String(problem);
      }
    }
  }));
  return found;
}

let known;
async function inForce(again) {
  if (again || !known) known = await (await (await kept()).match(IN_FORCE))?.json() ?? VERSION;
  return known;
}

async function use(version) {
  await (await kept()).put(IN_FORCE, new Response(JSON.stringify(version)));
  known = version;
}

const same = (one, other) => JSON.stringify(one) === JSON.stringify(other);

/** Forget files that neither the version in force nor this script's own needs. */
async function swept() {
  if (registration.installing) return; // it may be putting files of its own
  const cache = await kept(), wanted = new Set([IN_FORCE]);
  for (const version of [VERSION, await inForce(true)]) for (const path of needed(version)) wanted.add(key(version, path));
  for (const request of await cache.keys()) if (!wanted.has(request.url)) await cache.delete(request);
}

self.addEventListener('install', (event) => event.waitUntil((async () => {
  const found = await checked(VERSION);
  if (found.broken) throw new Error(`${found.broken} files could not be kept. ${found.problem}`);
  if (!await (await kept()).match(IN_FORCE)) await use(VERSION);
})()));

self.addEventListener('activate', (event) => event.waitUntil((async () => { await swept(); await clients.claim(); })()));

async function served(path, starts) {
  const version = await inForce(starts);
  if (!(path in version.files)) return new Response(null, { status: 404 });
  return await (await kept()).match(key(version, path)) ?? fetched(version, path);
}

self.addEventListener('fetch', (event) => {
  const { request } = event, url = request.url.replace(/[?#].*/s, '');
  if (new URL(url).origin !== location.origin) event.respondWith(new Response(null, { status: 404 }));
  else if (url.startsWith(scope)) event.respondWith(served(url.slice(scope.length) || 'index.html', request.mode === 'navigate'));
});

const answers = {
  state: async () => ({ kept: Boolean(registration.active), newer: !same(await inForce(true), VERSION) }),
  check: async () => checked(await inForce(true)),
  use: async () => {
    await use(VERSION);
    if (registration.waiting) await skipWaiting();
    await swept();
    for (const client of await clients.matchAll({ includeUncontrolled: true })) client.postMessage('renewed');
  },
};
self.addEventListener('message', (event) => event.waitUntil(
  answers[event.data]().then((answer) => event.ports[0].postMessage(answer))));
