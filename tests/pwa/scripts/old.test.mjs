// An old browser is told so; a good one is not.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { runInNewContext } from 'node:vm';

const script = readFileSync(new URL('../../../mobile/pwa/web/page/old.js', import.meta.url), 'utf8');
const good = () => ({
  HTMLScriptElement: class { get noModule() { return false; } },
  WebAssembly: { Tag: class {} }, crypto: {}, indexedDB: {}, isSecureContext: true, navigator: { locks: {} },
});

function told(lacking) {
  const parts = { starting: { hidden: false }, old: { hidden: true } };
  const window = { ...good(), ...lacking };
  let loaded;
  const document = { addEventListener: (_, run) => { loaded = run; }, getElementById: (id) => parts[id] };
  runInNewContext(script, Object.assign(window, { window, document }));
  loaded?.();
  return !parts.old.hidden && parts.starting.hidden;
}

test('a browser that can do it all is told nothing', () => assert.equal(told({}), false));
for (const [what, lacking] of Object.entries({
  modules: { HTMLScriptElement: class {} },
  'WebAssembly exceptions': { WebAssembly: {} },
  locks: { navigator: {} },
})) test(`a browser without ${what} is told`, () => assert.equal(told(lacking), true));
test('over plain http the start itself says what is missing', () =>
  assert.equal(told({ navigator: {}, isSecureContext: false }), false));
