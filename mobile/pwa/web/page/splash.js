// What stands on the page until the app does: a start, a slow start, a failed one.
import { ask, renew, watch } from './offline.js';

let up = false; // the app shows itself: what goes wrong from here on is the app's to tell
let down = false; // the start failed: there is nothing under the splash unless the app says so
const SLOW_MS = 45_000, LIFT_MS = 10_000;
const part = (id) => document.getElementById(id);
const ground = localStorage.getItem('ground'), ink = localStorage.getItem('ink');
if (ground) paint(ground, ink);

part('again').onclick = async () => {
  const found = await ask('check');
  if (found?.broken || (await ask('state'))?.newer) await renew(); // an app that can't start can't ask for it
  location.reload();
};
const slow = setTimeout(() => { part('slow').hidden = part('again').hidden = false; }, SLOW_MS);

function paint(ground, ink) {
  document.documentElement.style.cssText += `;--ground:${ground};--ink:${ink};background:${ground}`;
  document.querySelector('meta[name=theme-color]').content = ground;
}

/** Show the app, painted in these colours; the next start begins in them. */
export function shown(ground, ink) {
  localStorage.setItem('ground', ground);
  localStorage.setItem('ink', ink);
  paint(ground, ink);
  lift();
}

/** Python runs: if the app says nothing, show whatever there is. */
export const opened = () => setTimeout(() => down || lift(), LIFT_MS);

function lift() {
  clearTimeout(slow);
  up = true;
  requestAnimationFrame(() => requestAnimationFrame(() => { part('splash').hidden = true; }));
}

/** Say that the start failed; look for damaged files, put them right and start once more. */
export async function failed(reason) {
  console.error(reason);
  if (up) return;
  down = true;
  clearTimeout(slow);
  part('reason').textContent = reason;
  part('starting').hidden = part('slow').hidden = true;
  part('failed').hidden = part('again').hidden = part('splash').hidden = false;
  watch(({ newer }) => { part('newer').hidden = !newer; });
  const found = await ask('check');
  if (found?.repaired && !sessionStorage.getItem('repaired')) {
    sessionStorage.setItem('repaired', '1');
    location.reload();
  }
  part('repaired').hidden = !found?.repaired;
  part('broken').hidden = !found?.broken;
}
