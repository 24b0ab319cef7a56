// Does what only the page can, when Python asks for it.
import { setAlarms, silence } from './alarm.js';
import { renew, watch, weighing } from './offline.js';
import { pick } from './pick.js';
import { print } from './print.js';
import { failed, shown } from './splash.js';

let awake, wanted = false;
async function stayAwake() {
  if (!wanted) { await awake?.release(); awake = null; return; }
  if (!document.hidden) awake = await navigator.wakeLock?.request('screen').catch(() => null);
}
document.addEventListener('visibilitychange', stayAwake); // a hidden page loses it

function save(name, bytes, mime) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([bytes], { type: mime }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

function say(text) { // by a voice that is on the phone: a basement has no signal
  const voices = globalThis.speechSynthesis?.getVoices().filter((one) => one.localService && one.lang.startsWith('en'));
  if (!voices?.length) return;
  const words = new SpeechSynthesisUtterance(text);
  words.voice = voices[0];
  speechSynthesis.cancel();
  speechSynthesis.speak(words);
}

function watchText(tell) {
  const rem = document.createElement('div'); // one line of text wide, whatever the phone or the app makes of that
  rem.style.cssText = 'position:fixed;left:-100rem;width:1rem;height:0';
  document.body.append(rem);
  new ResizeObserver(() => tell({ event: 'text', ratio: parseFloat(getComputedStyle(rem).width) / 16 })).observe(rem);
}

const calls = {
  alarms: ({ alarms }, tell) => setAlarms(alarms, (id) => tell({ event: 'due', id })),
  silence,
  save: ({ name, bytes, mime }) => save(name, bytes, mime),
  pick: ({ accept }, tell) => pick(accept, (name, bytes) => tell({ event: 'picked', name, bytes })),
  print: ({ bytes, mime }) => print(bytes, mime),
  say: ({ text }) => say(text),
  awake: ({ on }) => { wanted = on; stayAwake(); },
  persist: () => navigator.storage?.persist?.(),
  text: ({ ratio }) => { document.documentElement.style.fontSize = `${ratio * 100}%`; },
  sized: (_, tell) => watchText(tell),
  shown: ({ ground, ink }) => shown(ground, ink),
  failed: ({ reason }) => failed(reason),
  weighing: ({ on }) => weighing(on),
  watch: (_, tell) => watch(({ kept, newer }) => tell({ event: 'version', kept, newer })),
  renew,
  reload: () => location.reload(),
  hidden: (_, tell) => document.addEventListener('visibilitychange', () => { if (document.hidden) tell({ event: 'hidden' }); }),
};

/** Do what a message from Python says; `tell` answers. */
export const told = (message, tell) => calls[message.call](message, tell);
