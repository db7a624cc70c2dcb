// Scanning faster than the page loads: tags wait in a line that a reload does not lose, each goes as
// a command with an id of its own, and one that is refused is listed until somebody looks at it.
(() => {
  'use strict';
  const form = document.getElementById('scan');
  if (!form || !window.fetch) return;
  const field = form.elements.tag;
  const kept = 'receive ' + location.pathname;
  const read = () => JSON.parse(localStorage.getItem(kept) || '{"waiting":[],"refused":[]}');
  const write = (line) => localStorage.setItem(kept, JSON.stringify(line));
  let sending = false;

  // Without https there is no randomUUID; the numbers are as random.
  const freshId = () => ([1e7] + -1e3 + -4e3 + -8e3 + -1e11).replace(/[018]/g,
    (c) => (c ^ crypto.getRandomValues(new Uint8Array(1))[0] & 15 >> c / 4).toString(16));

  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const tag = field.value.trim();
    field.value = '';
    field.focus();
    if (!tag) return;
    const line = read();
    line.waiting.push({ id: freshId(), tag });
    write(line);
    send();
  });

  async function send() {
    if (sending) return;
    sending = true;
    try {
      for (let line = read(); line.waiting.length > 0; line = read()) {
        const [next] = line.waiting;
        const body = new URLSearchParams({ commandId: next.id, tag: next.tag });
        const answer = await fetch(form.action, { method: 'POST', body });
        if (answer.status >= 500) throw new Error('answered ' + answer.status);
        const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
        const taken = page.getElementById('taken');
        // A sign-in page, say: nothing was taken in, and the tag must not get lost.
        if (answer.ok && !taken) throw new Error('another page');
        const now = read();
        now.waiting.shift();
        if (!answer.ok) now.refused.unshift({ tag: next.tag, why: why(page) });
        write(now);
        if (taken) document.getElementById('taken').replaceWith(taken);
        show();
      }
    } catch (e) {
      setTimeout(send, 3000);
    } finally {
      sending = false;
      show();
    }
  }

  const why = (page) => {
    const error = page.getElementById('tag-error');
    const near = [...page.querySelectorAll('form button[name=tag]')].map((b) => b.value);
    return (error ? error.textContent : 'It was refused.')
      + (near.length > 0 ? ' Perhaps ' + near.join(' or ') + '?' : '');
  };

  function show() {
    const line = read();
    const section = document.getElementById('not-taken');
    section.hidden = line.refused.length + line.waiting.length === 0;
    section.querySelector('ul').replaceChildren(
      ...line.waiting.map((w) => row(w.tag, ' waits to be sent')),
      ...line.refused.map((r, i) => refusedRow(r, i)));
  }

  const row = (tag, said) => {
    const li = document.createElement('li');
    const strong = document.createElement('b');
    strong.textContent = tag;
    li.append(strong, ' ', said);
    return li;
  };

  function refusedRow(refused, i) {
    const li = row(refused.tag, refused.why + ' ');
    const again = document.createElement('button');
    again.type = 'button';
    again.textContent = 'Correct it';
    again.addEventListener('click', () => {
      const line = read();
      line.refused.splice(i, 1);
      write(line);
      show();
      field.value = refused.tag;
      field.focus();
    });
    li.append(again);
    return li;
  }

  show();
  send();
})();
