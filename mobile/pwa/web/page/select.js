// Selects all of a field that is tapped into, so that what is typed next takes its place.
// Here rather than in Python: a selection that comes from there, late, would take what was typed meanwhile.
const SOON_MS = 1000; // a focus so soon after a touch comes from it, and not from a return to the page
const HELD_MS = 400; // Flutter puts the cursor where one tapped, somewhat later
let touched = -Infinity, down = false, field = null, end = 0;

const chosen = () => field.selectionEnd - field.selectionStart;
const leave = () => { clearTimeout(end); field = null; };
const all = () => { if (field === document.activeElement) field.setSelectionRange(0, field.value.length); };
const hold = () => { all(); end = setTimeout(leave, HELD_MS); };

addEventListener('pointerdown', () => { leave(); [touched, down] = [performance.now(), true]; }, true);
addEventListener('focusin', ({ target }) => { // under a mouse before it goes up, under a finger after
  leave();
  if (!(target instanceof HTMLInputElement) || performance.now() - touched > SOON_MS) return;
  field = target;
  if (!down) hold();
});
for (const kind of ['pointerup', 'pointercancel']) {
  addEventListener(kind, () => {
    down = false;
    if (field) chosen() ? leave() : hold(); // who dragged has chosen a part
  }, true);
}
const typed = () => { leave(); touched = -Infinity; }; // a focus that comes again, late, must not take what is typed
for (const kind of ['keydown', 'beforeinput', 'input']) addEventListener(kind, typed, true);
document.addEventListener('selectionchange', () => {
  if (field && !down && chosen() < field.value.length) all();
});
