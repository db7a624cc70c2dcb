// The players of the own fields, found by number or name.
import { el } from '../dom.js';
import { read } from '../store.js';
import { age, hour, wear } from '../words.js';

const MOST = 60;
let typed = '';

const ended = (s) => ['fit-passed', 'fit-failed', 'session-abandoned', 'pass-taken-back'].includes(s.events.at(-1)?.type);

/** What this phone knows of the player that the service does not know yet. */
export const hereOnly = (player, sessions, entries) => {
  const own = sessions.filter((s) => s.player === player.player);
  const unsent = (s) => entries.some((e) => e.session === s.session && e.state !== 'sent');
  return {
    conflict: own.find((s) => s.conflict),
    passed: own.find((s) => !s.conflict && s.events.at(-1)?.type === 'fit-passed' && unsent(s)),
    failed: own.find((s) => !s.conflict && s.events.at(-1)?.type === 'fit-failed' && unsent(s)),
    open: own.filter((s) => !s.conflict && !ended(s)).at(-1),
  };
};

export const pill = (held, player, here) => {
  const state = wear(held, player);
  if (here.conflict) return el('span', { class: 'state unknown' }, 'Needs you');
  if (here.failed) return el('span', { class: 'state do-not-wear' }, 'Failed here');
  if (here.passed) return el('span', { class: 'state unknown' }, 'Not yet recorded');
  return el('span', { class: 'state ' + state.code }, state.said);
};

const card = (held, player, here) =>
  el('li', {},
    el('a', { class: 'card', href: '#/player/' + player.player },
      el('span', {}, el('strong', {}, player.name), ' ', el('span', { class: 'meta' }, player.number)),
      pill(held, player, here),
      el('span', { class: 'meta' }, player.team + (here.open ? ' · fit check open' : ''))));

const matches = (player, text) =>
  `${player.number} ${player.name} ${player.team}`.toLowerCase().includes(text.toLowerCase().trim());

export const players = async (held) => {
  const { sessions, entries } = await read(async (t) => ({ sessions: await t.sessions.all(), entries: await t.queue.all() }));
  const list = el('ul', { class: 'cards' });
  const count = el('p', { class: 'meta', role: 'status' });
  const fill = () => {
    const found = held.pack.players.filter((p) => matches(p, typed));
    list.replaceChildren(...found.slice(0, MOST).map((p) => card(held, p, hereOnly(p, sessions, entries))));
    count.textContent = found.length > MOST ? `${MOST} of ${found.length}: type more` : found.length === 1 ? '1 player' : `${found.length} players`;
  };
  const search = el('input', { id: 'search', type: 'search', autocomplete: 'off', value: typed, oninput: () => {
    typed = search.value;
    fill();
  } });
  fill();
  const ready = document.body.dataset.ready === 'yes' ? 'Works without signal.' : '';
  return {
    refreshes: true,
    node: el('div', {},
      el('h1', { tabindex: '-1' }, 'Players'),
      el('p', { class: 'meta' }, `As of ${hour(held.asOf)}, ${age(held.asOf)}. ${ready}`),
      el('label', { for: 'search' }, 'Number, name or team'), search, count, list),
  };
};
