// Lets the person choose a file of the phone, and reads it.
const LARGEST_BYTES = 64_000_000; // Python needs as much again
let input = null; // the one that waits for a choice: a second call asks again, through the same one

/** Ask for a file of these kinds (as in `accept`); `heard(name, bytes)` is called once it is chosen. */
export function pick(accept, heard) {
  input ??= waiting(heard);
  input.accept = accept;
  open();
}

function open() {
  if (!input.showPicker) return input.click(); // WebKit heeds a click only while a touch is handled, and Python asks later
  try { input.showPicker(); } catch (problem) { console.warn('No file can be chosen:', problem); } // no touch, or long ago
}

function waiting(heard) {
  const made = document.createElement('input');
  made.type = 'file';
  made.style.display = 'none';
  document.body.append(made); // outside of the document some browsers ignore the click
  made.addEventListener('change', async () => {
    const [file] = made.files;
    made.remove();
    input = null; // the next call begins afresh, so that the same file can be chosen again
    heard(file.name, await read(file));
  }, { once: true });
  return made;
}

const NOTHING = new Uint8Array();
async function read(file) {
  if (file.size > LARGEST_BYTES) return NOTHING;
  return file.arrayBuffer().then((whole) => new Uint8Array(whole), () => NOTHING); // gone, or not ours to read
}
