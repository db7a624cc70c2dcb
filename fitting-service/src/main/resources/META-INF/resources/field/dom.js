// Builds elements. Text goes in as text, so that nothing that was typed can become markup.
export const el = (name, attributes = {}, ...children) => {
  const node = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (value === undefined || value === false || value === null) continue;
    if (key.startsWith('on')) node.addEventListener(key.slice(2), value);
    else if (key in node && typeof value !== 'string') node[key] = value;
    else node.setAttribute(key, value === true ? '' : value);
  }
  node.append(...children.flat(Infinity).filter((c) => c !== undefined && c !== null && c !== false && c !== ''));
  return node;
};

export const link = (href, text, kind = 'button') => el('a', { href, class: kind }, text);

/** A button that is deaf while what it started goes on: a second tap does nothing twice. */
export const button = (text, kind, work) => {
  const node = el('button', { type: 'button', class: kind }, text);
  node.addEventListener('click', async () => {
    if (node.getAttribute('aria-busy')) return;
    node.setAttribute('aria-busy', 'true');
    try {
      await work();
    } finally {
      node.removeAttribute('aria-busy');
    }
  });
  return node;
};

/** A sentence that is read out at once. */
export const alarm = (text) => el('div', { class: 'notice bad', role: 'alert' }, el('p', {}, text));

export const goTo = (hash) => {
  if (location.hash === hash) window.dispatchEvent(new HashChangeEvent('hashchange'));
  else location.hash = hash;
};
