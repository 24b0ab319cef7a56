// Keeps the app on the phone, and takes a new version only when asked to.
const IDLE_MS = 20_000, HOUR_MS = 3_600_000;
const SCALE = `${new URL('.', document.baseURI).pathname} weighing`; // a lock that every tab of the app sees
const able = 'serviceWorker' in navigator;

/** Ask the newest service worker; null where there is none. */
export async function ask(what) {
  const registration = able && await navigator.serviceWorker.getRegistration();
  const worker = registration && (registration.waiting ?? registration.active);
  if (!worker) return null;
  const channel = new MessageChannel();
  const answer = new Promise((resolve) => { channel.port1.onmessage = ({ data }) => resolve(data); });
  worker.postMessage(what, [channel.port2]);
  return answer;
}

const watchers = [];
async function look() {
  const found = await ask('state');
  if (found) for (const watcher of watchers) watcher(found);
}

/** Tell a watcher whether all files are kept (`kept`) and whether a newer version waits (`newer`). */
export function watch(watcher) {
  watchers.push(watcher);
  look();
}

/** Take the newer version, unless some tab is in a weigh-out; every tab then starts afresh. */
export const renew = () => navigator.locks.request(SCALE, { ifAvailable: true }, (lock) => lock && ask('use'));

let done;
/** Hold back new versions while paint is on the scale. */
export function weighing(on) {
  done?.();
  done = null;
  if (on) navigator.locks.request(SCALE, { mode: 'shared' }, () => new Promise((resolve) => { done = resolve; }));
}

async function keep() {
  const registration = await navigator.serviceWorker.register('sw.js', { updateViaCache: 'none' });
  const follow = () => registration.installing?.addEventListener('statechange', look);
  registration.addEventListener('updatefound', follow);
  follow(); // the browser looks for a newer version by itself, and may be ahead of us
  look();
  let asked = Date.now();
  document.addEventListener('visibilitychange', () => {
    if (document.hidden || Date.now() - asked < HOUR_MS) return;
    asked = Date.now();
    registration.update().catch(() => {}); // no signal: another time
  });
  const idle = globalThis.requestIdleCallback ?? setTimeout;
  setTimeout(() => idle(() => ask('check')), IDLE_MS);
}

if (able) navigator.serviceWorker.onmessage = ({ data }) => { if (data === 'renewed') location.reload(); };

// After the first picture: keeping the files must not slow the first start.
if (able) addEventListener('flutter-first-frame', () => keep().catch((problem) => console.warn('Not kept for offline:', problem)), { once: true });
