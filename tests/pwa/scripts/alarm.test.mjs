// The alarm: rings once for each instant, also late, repeats, stops.
import assert from 'node:assert/strict';
import { beforeEach, mock, test } from 'node:test';

const SECOND = 1000;
const buzzes = [], listeners = {}, tones = [];
class Sound {
  state = 'suspended';
  currentTime = 0;
  resume() { this.state = 'running'; }
  createOscillator() { return { frequency: {}, connect: (to) => to, start: (at) => tones.push(at), stop() {} }; }
  createGain() {
    return { gain: { setValueAtTime() {}, linearRampToValueAtTime() {} }, connect: (to) => to };
  }
}
Object.assign(globalThis, {
  AudioContext: Sound,
  addEventListener: (event, heard) => { listeners[event] = heard; },
  document: { addEventListener: (event, heard) => { listeners[event] = heard; } },
});
Object.defineProperty(globalThis, 'navigator', { value: { vibrate: (pattern) => buzzes.push(pattern) } });
mock.timers.enable({ apis: ['setTimeout', 'setInterval', 'Date'], now: 1_700_000_000_000 });
const { setAlarms, silence } = await import('../../../mobile/pwa/web/page/alarm.js');

let due;
const hear = (id) => due.push(id);
const inSeconds = (id, seconds) => ({ id, atMs: Date.now() + seconds * SECOND });
const pass = (seconds) => { for (let tenth = 0; tenth < seconds * 10; tenth += 1) mock.timers.tick(SECOND / 10); };
const rang = () => buzzes.filter((pattern) => Array.isArray(pattern)).length;

beforeEach(() => {
  setAlarms([], hear);
  silence();
  due = [];
  buzzes.length = tones.length = 0;
});

test('it rings when it is due, not before, and says so once', () => {
  setAlarms([inSeconds('base 1', 10)], hear);
  pass(9);
  assert.deepEqual(due, []);
  pass(2);
  assert.deepEqual(due, ['base 1']);
  pass(30);
  assert.deepEqual(due, ['base 1']);
});

test('it goes on ringing until it is silenced', () => {
  setAlarms([inSeconds('base 1', 1)], hear);
  pass(11);
  const before = rang();
  assert.ok(before >= 5, `${before} times`);
  silence();
  pass(20);
  assert.equal(rang(), before);
});

test('it ends by itself within a minute or so', () => {
  setAlarms([inSeconds('base 1', 1)], hear);
  pass(65);
  const after = rang();
  pass(60);
  assert.equal(rang(), after);
});

test('the same instants given anew do not ring again, another instant does', () => {
  const alarm = inSeconds('base 1', 1);
  setAlarms([alarm], hear);
  pass(2);
  setAlarms([alarm], hear);
  pass(2);
  assert.deepEqual(due, ['base 1']);
  setAlarms([alarm, inSeconds('base 1', 5)], hear);
  pass(6);
  assert.deepEqual(due, ['base 1', 'base 1']);
});

test('an instant that has passed already rings at once', () => {
  setAlarms([inSeconds('base 1', -30)], hear);
  assert.deepEqual(due, ['base 1']);
});

test('an instant that is taken away does not ring', () => {
  setAlarms([inSeconds('base 1', 5)], hear);
  setAlarms([], hear);
  pass(10);
  assert.deepEqual(due, []);
});

test('a page that slept looks as soon as it wakes', () => {
  setAlarms([inSeconds('base 1', 5)], hear);
  mock.timers.setTime(Date.now() + 60 * SECOND); // the clock went on, the timers did not
  assert.deepEqual(due, []);
  listeners.visibilitychange();
  assert.deepEqual(due, ['base 1']);
});

test('months ahead is not at once', () => {
  setAlarms([inSeconds('hand-over', 90 * 24 * 3600)], hear);
  pass(60);
  assert.deepEqual(due, []);
});

test('there is sound only after a touch, and then there is', () => {
  setAlarms([inSeconds('base 1', 1)], hear);
  pass(2);
  assert.equal(tones.length, 0);
  listeners.pointerup();
  pass(3);
  assert.ok(tones.length >= 2);
});
