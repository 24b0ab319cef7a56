// Prints one picture and nothing else of the page.
let last = null;

function gone() {
  if (!last) return;
  URL.revokeObjectURL(last.src);
  last.remove();
  last = null;
}

/** Ask the phone to print a picture; where it can't print, nothing happens. */
export function print(bytes, mime) {
  gone(); // a print that no browser told the end of
  last = document.createElement('img');
  last.className = 'printed'; // the page's style shows it on paper only
  last.onload = () => globalThis.print();
  last.src = URL.createObjectURL(new Blob([bytes], { type: mime }));
  document.body.append(last);
  addEventListener('afterprint', gone, { once: true });
}
