// Rings when a coat is due: the page keeps the instants, so that a busy Python can't be late.
const MINUTE_MS = 60_000, BEAT_MS = 1_500, LONGEST_MS = 2 ** 31 - 1;
let sound, alarms = [], due, timer, beat, ringingUntil = 0;

// Browsers give sound only after a touch.
for (const touch of ['pointerup', 'touchend', 'keydown']) {
  addEventListener(touch, () => { sound ??= new AudioContext(); if (sound.state !== 'running') sound.resume(); }, { capture: true, passive: true });
}

/** Take the instants anew: [{ id, atMs }, …]; `isDue(id)` is called once for each. */
export function setAlarms(wanted, isDue) {
  const rung = new Set(alarms.filter((alarm) => alarm.rung).map((alarm) => `${alarm.id} ${alarm.atMs}`));
  alarms = wanted.map((alarm) => ({ ...alarm, rung: rung.has(`${alarm.id} ${alarm.atMs}`) }));
  due = isDue;
  look();
}

/** Stop the ringing. */
export function silence() {
  ringingUntil = 0;
  clearInterval(beat);
  navigator.vibrate?.(0);
}

function look() {
  clearTimeout(timer);
  const now = Date.now();
  for (const alarm of alarms.filter((one) => !one.rung && one.atMs <= now)) {
    alarm.rung = true;
    ring();
    due(alarm.id);
  }
  const next = Math.min(...alarms.filter((one) => !one.rung).map((one) => one.atMs));
  if (next < Infinity) timer = setTimeout(look, Math.min(next - now, LONGEST_MS));
}
document.addEventListener('visibilitychange', look); // a sleeping page's timers sleep, too

function ring() {
  clearInterval(beat);
  ringingUntil = Date.now() + MINUTE_MS;
  const strike = () => {
    if (Date.now() >= ringingUntil) return silence();
    navigator.vibrate?.([400, 200, 400]);
    if (sound?.state === 'running') { tone(880, 0); tone(660, 0.35); }
  };
  strike();
  beat = setInterval(strike, BEAT_MS);
}

function tone(hertz, delay) {
  const at = sound.currentTime + delay, voice = sound.createOscillator(), volume = sound.createGain();
  voice.frequency.value = hertz;
  volume.gain.setValueAtTime(0, at);
  volume.gain.linearRampToValueAtTime(0.5, at + 0.02); // no click
  volume.gain.linearRampToValueAtTime(0, at + 0.3);
  voice.connect(volume).connect(sound.destination);
  voice.start(at);
  voice.stop(at + 0.32);
}
