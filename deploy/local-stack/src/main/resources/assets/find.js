// The search box: "/" goes there, the arrow keys walk through what was found. Names of players are
// asked of the service that knows them, with the rights of who asks, and are shown only.
(() => {
  'use strict';
  const box = document.getElementById('find-words');
  if (!box) return;
  const typing = (where) => where.matches('input, select, textarea, [contenteditable]');
  const links = () => [...document.querySelectorAll('.results a')];

  document.addEventListener('keydown', (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === '/' && !typing(event.target)) {
      event.preventDefault();
      box.focus();
      box.select();
    } else if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
      walk(event);
    }
  });

  function walk(event) {
    const all = links();
    const at = all.indexOf(document.activeElement);
    const inBox = document.activeElement === box;
    if (all.length === 0 || (at < 0 && !inBox)) return;
    if (inBox && event.key === 'ArrowUp') return;
    event.preventDefault();
    const next = event.key === 'ArrowDown' ? at + 1 : at - 1;
    if (next < 0) box.focus();
    else all[Math.min(next, all.length - 1)].focus();
  }

  const named = document.querySelector('.named');
  if (named) lookUp(named, named.dataset.words);

  async function json(path) {
    const answer = await fetch(path, { headers: { Accept: 'application/json' } });
    if (!answer.ok) throw new Error(path + ' answered ' + answer.status);
    return answer.json();
  }

  async function lookUp(section, words) {
    const status = section.querySelector('[role=status]');
    try {
      const players = (await json('/sizing/api/players?q=' + encodeURIComponent(words))).slice(0, 50);
      if (players.length === 0) {
        status.textContent = 'No player of this name or number.';
        return;
      }
      const asked = players.map((p) => 'player=' + encodeURIComponent(p.player)).join('&');
      const helmets = await json('/inventory/api/player-helmets?' + asked);
      status.textContent = players.length === 1 ? 'One player:' : players.length + ' players:';
      section.querySelector('ul').append(...players.map((p) => line(p, helmets)));
    } catch {
      status.prepend('The names could not be looked up now. ');
    }
  }

  function line(player, helmets) {
    const item = document.createElement('li');
    const link = document.createElement('a');
    link.href = '/inventory/players/' + encodeURIComponent(player.player);
    link.textContent = player.name;
    const more = document.createElement('span');
    more.className = 'meta';
    more.textContent = ' ' + [player.number, player.team, player.field].filter(Boolean).join(', ') + ' ';
    item.append(link, more);
    const own = helmets.filter((h) => h.player === player.player);
    own.forEach((h) => {
      const tag = document.createElement('a');
      tag.href = '/inventory/helmets/' + encodeURIComponent(h.tag);
      tag.textContent = 'Helmet ' + h.tag;
      item.append(tag, ' ');
    });
    if (own.length === 0) item.append('has no helmet of ours');
    return item;
  }
})();
