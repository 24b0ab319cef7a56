// A file is chosen: heard once, read whole, and the next choice begins afresh.
import assert from 'node:assert/strict';
import { beforeEach, test } from 'node:test';

const shown = new Set(), clicked = [];
class Input extends EventTarget {
  style = {};
  showPicker() { clicked.push(this); }
  remove() { shown.delete(this); }
}
globalThis.document = { createElement: () => new Input(), body: { append: (input) => shown.add(input) } };
const { pick } = await import('../../../mobile/pwa/web/page/pick.js');

const file = (name, text) => ({ name, size: text.length, arrayBuffer: async () => new TextEncoder().encode(text).buffer });
let heard;
const hear = (name, bytes) => heard.push([name, new TextDecoder().decode(bytes)]);
const soon = () => new Promise((done) => { setTimeout(done, 1); });
async function choose(input, one) {
  input.files = [one];
  input.dispatchEvent(new Event('change'));
  await soon();
}

beforeEach(async () => {
  heard = [];
  pick('', hear);
  await choose(clicked.at(-1), file('left over', ''));
  heard.length = clicked.length = 0;
});

test('a file is heard by name and content, and nothing is left on the page', async () => {
  pick('.json', hear);
  const [input] = clicked;
  assert.deepEqual([input.type, input.accept, shown.has(input)], ['file', '.json', true]);
  await choose(input, file('book.json', '{}'));
  assert.deepEqual(heard, [['book.json', '{}']]);
  assert.equal(shown.size, 0);
});

test('asked again before there is a choice, it is heard once', async () => {
  pick('.json', hear);
  pick('.txt', hear);
  assert.equal(clicked.length, 2);
  await choose(clicked[0], file('one', '1'));
  await choose(clicked[1], file('two', '2'));
  assert.deepEqual(heard, [['one', '1']]);
});

test('a browser without a picker is clicked, and one that refuses breaks nothing', async (here) => {
  const { showPicker } = Input.prototype, { warn } = console;
  here.after(() => { Object.assign(Input.prototype, { showPicker }); console.warn = warn; });
  console.warn = () => {};
  Input.prototype.showPicker = () => { throw new Error('no touch'); };
  pick('', hear);
  Object.assign(Input.prototype, { showPicker: undefined, click: showPicker });
  pick('', hear);
  await choose(clicked[0], file('one', '1'));
  assert.deepEqual(heard, [['one', '1']]);
});

test('after a choice the same file can be chosen again', async () => {
  for (const _ of [1, 2]) {
    pick('', hear);
    await choose(clicked.at(-1), file('book.json', '{}'));
  }
  assert.deepEqual(heard, [['book.json', '{}'], ['book.json', '{}']]);
});

test('given up and asked again, it is heard once', async () => {
  pick('', hear);
  clicked[0].dispatchEvent(new Event('cancel'));
  pick('', hear);
  await choose(clicked[1], file('one', '1'));
  assert.deepEqual(heard, [['one', '1']]);
});

test('what is too large, or can not be read, comes without content', async () => {
  const never = () => assert.fail('it is read');
  pick('', hear);
  await choose(clicked[0], { name: 'film.mp4', size: 64_000_001, arrayBuffer: never });
  pick('', hear);
  await choose(clicked[1], { name: 'gone', size: 1, arrayBuffer: async () => { throw new Error('gone'); } });
  pick('', hear);
  await choose(clicked[2], { ...file('just small enough', '!'), size: 64_000_000 });
  assert.deepEqual(heard, [['film.mp4', ''], ['gone', ''], ['just small enough', '!']]);
});
