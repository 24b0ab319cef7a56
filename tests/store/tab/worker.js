// Python with the store and without the app; each message is a verb of tab.py.
import { loadPyodide } from './pyodide/pyodide.mjs';

async function start() {
  const python = await loadPyodide({ indexURL: new URL('pyodide/', self.location).href });
  python.unpackArchive(await (await fetch('app.zip')).arrayBuffer(), 'zip');
  return python.pyimport('tests.store.tab.tab');
}

const started = start();
self.onmessage = async ({ data: [id, name, values] }) => {
  try {
    self.postMessage([id, JSON.parse(await (await started)[name](...values))]);
  } catch (problem) {
    self.postMessage([id, null, String(problem)]);
  }
};
