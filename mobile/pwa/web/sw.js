// Serves the app from the phone. Files are kept by their content; a table says which path is which.
// A newer version is fetched and checked beside the old one; its table comes into force when the
// person agrees ("use"), however often the browser swaps this script before that.
// The generator puts before this file: FILES, path -> [SHA-256, type]; CSP; SEAL, which names the CSP.
/* global FILES, CSP, SEAL */

const scope = registration.scope;
const kept = () => caches.open(`duskcoat ${scope}`);
const key = ([hash]) => `${scope}.kept/${SEAL}/${hash}`;
const TABLE = `${scope}.kept/table`;
const blink = typeof Intl.v8BreakIterator === 'function'; // such browsers take the smaller CanvasKit, as Flutter's loader does
const needed = (files) => Object.entries(files).filter(([path]) =>
  !path.startsWith('canvaskit/') || path.startsWith('canvaskit/chromium/') === blink);

async function hashOf(bytes) {
  return [...new Uint8Array(await crypto.subtle.digest('SHA-256', bytes))].map((b) => b.toString(16).padStart(2, '0')).join('');
}

async function fetched(path, file) {
  const url = path === 'index.html' ? scope : scope + path;
  for (const cache of ['no-cache', 'reload']) { // a host's cache may hold an older file
    const answer = await fetch(url, { cache });
    const bytes = answer.ok && await answer.arrayBuffer();
    if (!bytes || await hashOf(bytes) !== file[0]) continue;
    const whole = new Response(bytes, { headers: { 'content-security-policy': CSP, 'content-type': file[1], 'content-length': bytes.byteLength } });
    await (await kept()).put(key(file), whole.clone());
    return whole;
  }
  throw new Error(`${url} is not what the table of this version says`);
}

/** Look at every file of a table; fetch what is missing or damaged. */
async function checked(files) {
  const cache = await kept(), ahead = needed(files), found = { repaired: 0, broken: 0, problem: null };
  await Promise.all([1, 2, 3, 4].map(async () => {
    for (let next; (next = ahead.pop());) {
      const [path, file] = next;
      const whole = await cache.match(key(file));
      if (whole && await hashOf(await whole.arrayBuffer()) === file[0]) continue;
      try {
        await cache.delete(key(file));
        await fetched(path, file);
        found.repaired += 1;
      } catch (problem) {
        found.broken += 1;
        found.problem = String(problem);
      }
    }
  }));
  return found;
}

let table;
async function inForce(again = false) {
  if (again || !table) table = await (await (await kept()).match(TABLE))?.json() ?? FILES;
  return table;
}

async function use(files) {
  await (await kept()).put(TABLE, new Response(JSON.stringify(files)));
  table = files;
}

const same = (one, other) => JSON.stringify(one) === JSON.stringify(other);

/** Forget files that neither the table in force nor this version's names. */
async function swept() {
  if (registration.installing) return; // it may be putting files of its own
  const cache = await kept(), wanted = new Set([TABLE, ...[FILES, await inForce(true)].flatMap((files) => Object.values(files).map(key))]);
  for (const request of await cache.keys()) if (!wanted.has(request.url)) await cache.delete(request);
}

self.addEventListener('install', (event) => event.waitUntil((async () => {
  const found = await checked(FILES);
  if (found.broken) throw new Error(`${found.broken} files could not be kept. ${found.problem}`);
  if (!await (await kept()).match(TABLE)) await use(FILES);
})()));

self.addEventListener('activate', (event) => event.waitUntil((async () => { await swept(); await clients.claim(); })()));

async function served(path, starts) {
  const file = (await inForce(starts))[path || 'index.html'];
  if (!file) return new Response(null, { status: 404 });
  return await (await kept()).match(key(file)) ?? fetched(path || 'index.html', file);
}

self.addEventListener('fetch', (event) => {
  const { request } = event, url = request.url.replace(/[?#].*/s, '');
  if (new URL(url).origin !== location.origin) event.respondWith(new Response(null, { status: 404 }));
  else if (url.startsWith(scope)) event.respondWith(served(url.slice(scope.length), request.mode === 'navigate'));
});

const answers = {
  state: async () => ({ kept: Boolean(registration.active), newer: !same(await inForce(true), FILES) }),
  check: async () => checked(await inForce(true)),
  use: async () => {
    await use(FILES);
    await skipWaiting();
    await swept();
    for (const client of await clients.matchAll({ includeUncontrolled: true })) client.postMessage('renewed');
  },
};
self.addEventListener('message', (event) => event.waitUntil(
  answers[event.data]().then((answer) => event.ports[0].postMessage(answer))));
