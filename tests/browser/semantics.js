// What a screen reader finds on the page: one object a node that says something or can be touched.
// The page is a canvas; Flutter lays these nodes over it once accessibility is asked for.
() => {
  const ask = document.querySelector('flt-semantics-placeholder');
  if (ask) {
    const { left, top, width, height } = ask.getBoundingClientRect();
    const middle = { clientX: left + width / 2, clientY: top + height / 2, bubbles: true };
    ask.dispatchEvent(new MouseEvent('click', middle));
  }
  const plain = (text) => (text ?? '').replace(/\s+/g, ' ').trim();
  // A heading is an <h2> with the id of a node.
  const semantic = (node) =>
    node.matches?.('flt-semantics, [id^="flt-semantic-node"]') ?? false;
  const own = (node) => [...node.childNodes].filter((part) => !semantic(part));
  const roles = { INPUT: 'textbox', TEXTAREA: 'textbox', A: 'link', IMG: 'img' };
  const found = [];
  const scrolls = ({ style }) => [style.overflowX, style.overflowY].includes('scroll');
  const walk = (node, parent, port) => {
    let here = parent;
    if (semantic(node)) {
      const field = own(node).find((part) => part.matches?.('input, textarea'));
      const said = field ?? node;
      const words = own(node).map((part) => part.textContent).join(' ');
      const name = plain(said.getAttribute('aria-label') || (field ? '' : words));
      const inner = own(node).find((part) => /^H[1-6]$/.test(part.tagName ?? ''));
      const role = said.getAttribute('role') || roles[said.tagName]
        || (inner || /^H[1-6]$/.test(node.tagName) ? 'heading' : 'text');
      const tap = node.hasAttribute('flt-tappable') || ['button', 'textbox', 'link', 'switch',
        'checkbox', 'radio', 'slider', 'tab', 'menuitem'].includes(role);
      if (name || tap) {
        const { left, top, width, height } = node.getBoundingClientRect();
        const is = (flag) => said.getAttribute(flag) === 'true';
        here = node.id;
        found.push({ id: node.id, parent, role, name, left, top, width, height, tap,
          value: field ? field.value : plain(said.getAttribute('aria-valuetext')),
          chosen: is('aria-current') || is('aria-checked') || is('aria-selected'),
          off: is('aria-disabled') || Boolean(field?.disabled),
          cut: Boolean(port) && (left < port.left + 1 || top < port.top + 1
            || left + width > port.right - 1 || top + height > port.bottom - 1) });
      }
    }
    const inside = scrolls(node) ? node.getBoundingClientRect() : port;
    for (const child of node.children) walk(child, here, inside);
  };
  const host = document.querySelector('flt-semantics-host');
  if (host) walk(host, '', null);
  return found;
}
