// Does what only the page can, when Python asks for it.
import { renew, watch, weighing } from './offline.js';
import { shown } from './splash.js';
import { setAlarms, silence } from './alarm.js';

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

/** Tell how large text is, now and whenever the phone's setting or the app's own changes it. */
function sized(tell) {
  const probe = document.createElement('div');
  probe.style.cssText = 'position:absolute;visibility:hidden;width:1rem;height:0';
  document.body.append(probe);
  const say = () => tell({ event: 'text', ratio: probe.getBoundingClientRect().width / 16 });
  new ResizeObserver(say).observe(probe);
  say();
}

const calls = {
  alarms: ({ alarms }, tell) => setAlarms(alarms, (id) => tell({ event: 'due', id })),
  silence,
  save: ({ name, bytes, mime }) => save(name, bytes, mime),
  awake: ({ on }) => { wanted = on; stayAwake(); },
  persist: () => navigator.storage?.persist?.(),
  text: ({ ratio }) => { document.documentElement.style.fontSize = `${ratio * 100}%`; },
  shown: ({ ground, ink }) => shown(ground, ink),
  weighing: ({ on }) => weighing(on),
  watch: (_, tell) => watch(({ kept, newer }) => tell({ event: 'version', kept, newer })),
  sized: (_, tell) => sized(tell),
  reload: () => location.reload(),
  renew,
  hidden: (_, tell) => document.addEventListener('visibilitychange', () => { if (document.hidden) tell({ event: 'hidden' }); }),
};

/** Do what a message from Python says; `tell` answers. */
export const told = (message, tell) => calls[message.call](message, tell);
