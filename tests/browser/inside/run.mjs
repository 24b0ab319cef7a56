// Runs core's tests in the Python of a built site, under Node:
// node run.mjs SITE STDLIB GIVEN_ZIP SCRIPT REPORT. The script finds /given.zip and leaves /report.
import { readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';

const [site, stdlib, given, script, report] = process.argv.slice(2).map((path) => resolve(path));
try {
  const { loadPyodide } = await import(pathToFileURL(join(site, 'pyodide', 'pyodide.mjs')));
  const python = await loadPyodide({
    indexURL: join(site, 'pyodide'),
    stdLibURL: join(site, 'python', 'library.zip'),
  });
  const own = ['packages', 'later', 'app'].map((name) => [name, join(site, 'python', `${name}.zip`)]);
  const files = { ...Object.fromEntries(own), stdlib, given };
  for (const [name, path] of Object.entries(files)) python.FS.writeFile(`/${name}.zip`, readFileSync(path));
  python.runPython(readFileSync(script, 'utf8'), { filename: script });
  writeFileSync(report, python.FS.readFile('/report'));
} catch (problem) {
  console.error(problem.message);
  process.exit(1);
}
