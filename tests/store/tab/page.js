// Hands verbs to the worker and its answers back: `await verb('keep', 3)`.
const worker = new Worker('worker.js', { type: 'module' });
const waiting = new Map();
let last = 0;
worker.onmessage = ({ data: [id, answer, problem] }) => {
  const [resolve, reject] = waiting.get(id);
  waiting.delete(id);
  problem ? reject(new Error(problem)) : resolve(answer);
};
globalThis.verb = (name, ...values) => new Promise((resolve, reject) => {
  waiting.set(last += 1, [resolve, reject]);
  worker.postMessage([last, name, values]);
});
