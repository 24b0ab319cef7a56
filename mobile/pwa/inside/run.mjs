// Runs one Python file inside the Pyodide that the site ships, so that its bytecode is the phone's:
// node run.mjs PYODIDE_FOLDER SCRIPT INPUT OUTPUT. The script finds /input and leaves /output.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const [folder, script, input, output] = process.argv.slice(2);
try {
  const { loadPyodide } = await import(pathToFileURL(join(folder, 'pyodide.mjs')));
  // Sets are written in hash order; without sources nobody needs columns.
  const env = { PYTHONHASHSEED: '0', PYTHONNODEBUGRANGES: '1' };
  const python = await loadPyodide({ indexURL: folder, env });
  python.FS.writeFile('/input', readFileSync(input));
  python.runPython(readFileSync(script, 'utf8'), { filename: script });
  writeFileSync(output, python.FS.readFile('/output'));
} catch (problem) {
  console.error(problem.message); // without the megabyte of source that Node would show
  process.exit(1);
}
