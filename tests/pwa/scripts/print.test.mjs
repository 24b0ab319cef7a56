// A label is printed: shown to the printer alone, and gone after it.
import assert from 'node:assert/strict';
import { test } from 'node:test';

const shown = new Set(), revoked = [];
let printed = 0, made = 0;
class Picture { remove() { shown.delete(this); } }
globalThis.document = { createElement: () => new Picture(), body: { append: (one) => shown.add(one) } };
globalThis.print = () => { printed += 1; };
URL.createObjectURL = () => `blob:${made += 1}`;
URL.revokeObjectURL = (address) => revoked.push(address);
const heard = new EventTarget();
globalThis.addEventListener = heard.addEventListener.bind(heard);
const { print } = await import('../../../mobile/pwa/web/page/print.js');

test('a picture is printed once it is drawn, and taken off the page afterwards', () => {
  print(new Uint8Array([60]), 'image/svg+xml');
  const [picture] = shown;
  assert.deepEqual([picture.className, picture.src, printed], ['printed', 'blob:1', 0]);
  picture.onload();
  assert.equal(printed, 1);
  heard.dispatchEvent(new Event('afterprint'));
  assert.deepEqual([shown.size, revoked], [0, ['blob:1']]);
});

test('a print whose end nobody told gives way to the next', () => {
  print(new Uint8Array([60]), 'image/svg+xml');
  print(new Uint8Array([60]), 'image/svg+xml');
  assert.deepEqual([[...shown].map((one) => one.src), revoked], [['blob:3'], ['blob:1', 'blob:2']]);
});
