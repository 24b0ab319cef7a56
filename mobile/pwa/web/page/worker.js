// Runs the app's Python: standard library, packages and app come as stored archives of bytecode.
const fetched = async (name) => {
  const answer = await fetch(new URL(`../python/${name}`, import.meta.url));
  if (!answer.ok) throw new Error(`${name}: ${answer.status}`);
  return new Uint8Array(await answer.arrayBuffer());
};
const archives = ['packages.zip', 'app.zip'];
const coming = archives.map(fetched); // beside Pyodide, not after it
const flet = {};                      // Flet's Python looks for a module flet_js
let python;

self.onmessage = ({ data }) => {
  if (data instanceof Uint8Array) flet.send(data);
  else if (data.url) start(data.url).catch((problem) => self.postMessage({ failed: String(problem) }));
  else self.told?.(data);             // Python's mobile.device sets it
};

// An archive that the start does without. Python's import can't wait for a promise; here it needn't.
self.bring = (name) => {
  const ask = new XMLHttpRequest();
  ask.open('GET', new URL(`../python/${name}`, import.meta.url), false);
  ask.responseType = 'arraybuffer';
  ask.send();
  if (ask.status !== 200) throw new Error(`${name}: ${ask.status}`);
  python.FS.writeFile(`/${name}`, new Uint8Array(ask.response), { canOwn: true });
};

async function start(url) {
  const pyodide = new URL('../pyodide/', import.meta.url).href;
  const { loadPyodide } = await import(`${pyodide}pyodide.mjs`);
  python = await loadPyodide({ indexURL: pyodide, stdLibURL: new URL('../python/library.zip', import.meta.url).href });
  for (const [n, bytes] of (await Promise.all(coming)).entries()) python.FS.writeFile(`/${archives[n]}`, bytes, { canOwn: true });
  flet.documentUrl = url;
  python.registerJsModule('flet_js', flet);
  python.runPython(`
import sys
sys.path += ["/packages.zip", "/app.zip"]
from mobile import main
main.start()`);
  await flet.start_connection((message) => { const bytes = message.toJs(); self.postMessage(bytes, [bytes.buffer]); });
  self.postMessage({ started: true });
}
