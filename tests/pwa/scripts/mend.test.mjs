// What Flutter trips over is mended before it runs. Each case runs the script afresh.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';

const script = readFileSync(new URL('../../../mobile/pwa/web/page/mend.js', import.meta.url), 'utf8');

function mended(navigator) {
  const put = [];
  class Element { setAttribute(name, value) { put.push([name, value]); } }
  globalThis.Element = Element;
  Object.defineProperty(globalThis, 'navigator', { value: navigator, configurable: true });
  new Function(script)();
  return { put, element: new Element() };
}

test('good languages stay as they are', () => {
  const navigator = { languages: ['de-AT', 'en'], language: 'de-AT' };
  mended(navigator);
  assert.deepEqual(navigator, { languages: ['de-AT', 'en'], language: 'de-AT' });
});

for (const [languages, language, usable] of [
  [['c'], 'c', ['en']],
  [[], 'c', ['en']],
  [undefined, undefined, ['en']],
  [['c', 'de'], 'c', ['de']],
  [['en_US.UTF-8', 'nl'], 'en_US.UTF-8', ['nl']],
]) {
  test(`${languages} and ${language} become ${usable}`, () => {
    const navigator = { languages, language };
    mended(navigator);
    assert.deepEqual([...navigator.languages], usable);
    assert.equal(navigator.language, usable[0]);
  });
}

test('a keyboard for numbers has a decimal point, all else is untouched', () => {
  const { put, element } = mended({ languages: ['en'], language: 'en' });
  element.setAttribute('inputmode', 'numeric');
  element.setAttribute('inputmode', 'text');
  element.setAttribute('role', 'numeric');
  assert.deepEqual(put, [['inputmode', 'decimal'], ['inputmode', 'text'], ['role', 'numeric']]);
});
