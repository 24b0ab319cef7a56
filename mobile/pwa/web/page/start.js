// Starts Python beside Flutter, and joins the two when both are there.
import { told } from './device.js';
import { failed, opened } from './splash.js';

let toDart, ready;
const started = new Promise((resolve) => { ready = resolve; });
const worker = new Worker(new URL('worker.js', import.meta.url), { type: 'module' });

worker.onmessage = ({ data }) => {
  if (data instanceof Uint8Array) toDart(data);
  else if (data.started) { ready(); opened(); }
  else if (data.failed) failed(data.failed);
  else told(data, (news) => worker.postMessage(news, news.bytes ? [news.bytes.buffer] : []));
};
worker.onerror = (event) => failed(event.message || 'The app’s Python could not be loaded.');
worker.postMessage({ url: document.URL });

// Flet's client calls these three. It waits for good when Python fails: the page then says so.
globalThis.jsConnect = async (_app, _options, receive) => { toDart = receive; await started; };
globalThis.jsSend = async (_app, bytes) => worker.postMessage(bytes, [bytes.buffer]);
globalThis.jsDisconnect = async () => worker.terminate();

// A page kept for "back" would keep the book's lock, too: let go, and start afresh on return.
addEventListener('pagehide', () => worker.terminate());
addEventListener('pageshow', (event) => { if (event.persisted) location.reload(); });
addEventListener('error', (event) => {
  if (event.target instanceof HTMLScriptElement) failed(`${event.target.src} could not be loaded.`);
}, true);
