// One player: may the player take the field, what was advised, and the way into the fit check.
import { alarm, button, el, goTo, link } from '../dom.js';
import { read } from '../store.js';
import { openFor } from '../fit.js';
import { said, wear } from '../words.js';
import { hereOnly, pill } from './players.js';

const fact = (name, ...what) => [el('dt', {}, name), el('dd', {}, ...what)];

const advised = (pack, player) =>
  player.advised.map((a) =>
    fact('Advised',
      el('strong', {}, `${said(pack, a.model)}: ${a.size ? said(pack, a.size) : 'no size fits'}`),
      a.second ? `, bring ${said(pack, a.second)} too` : '', ' ', el('span', { class: 'meta' }, a.reason)));

const notice = (here) => {
  if (here.conflict) {
    return el('div', { class: 'notice bad' },
      el('p', {}, el('strong', {}, 'A fit check of this phone was not recorded. '), here.conflict.conflict.sentence),
      link('#/queue', 'What to do'));
  }
  if (here.passed) {
    return el('p', { class: 'notice warn' },
      el('strong', {}, 'Fit check passed here, not yet recorded.'), ' Not signed off until sent.');
  }
  if (here.failed) {
    return el('p', { class: 'notice bad' }, el('strong', {}, 'No fit here, not yet recorded.'), ' Do not wear.');
  }
  return '';
};

export const player = async (held, id) => {
  const who = held.pack.players.find((p) => p.player === id);
  if (!who) return { node: el('div', {}, el('h1', { tabindex: '-1' }, 'Not held on this phone'), link('#/players', 'Players')), refreshes: true };
  const here = await read(async (t) => hereOnly(who, await t.sessions.all(), await t.queue.all()));
  const state = wear(held, who);
  const hint = el('div', {});
  const fresh = button('New fit check', here.open ? 'wide' : 'primary wide big', async () => {
    const answer = await openFor(held.pack, who);
    if (answer.sentence) hint.replaceChildren(alarm(answer.sentence));
    else goTo('#/session/' + answer.session);
  });
  return {
    refreshes: true,
    kind: 'fit',
    node: el('div', { class: 'split' },
      el('div', { class: 'top' },
        el('h1', { tabindex: '-1' }, who.name),
        el('p', { class: 'meta' }, `${who.number} · ${who.team} · field ${who.field}`),
        el('p', {}, pill(held, who, here), ' ', state.reason || '', ' ', el('span', { class: 'meta' }, state.age ?? '')),
        notice(here),
        el('dl', { class: 'facts' },
          who.tag ? fact('Helmet', el('code', {}, who.tag)) : '',
          advised(held.pack, who).flat(),
          who.refit ? fact('Re-fit', who.refit) : ''),
        who.advised.length === 0 ? el('p', { class: 'notice warn' }, 'Not measured yet. Measure the head first; that needs signal.') : ''),
      el('div', { class: 'hand' }, hint,
        here.open ? link('#/session/' + here.open.session, 'Go on with the fit check', 'button primary wide big') : '',
        fresh,
        el('p', { class: 'meta' }, 'A cracked or altered helmet is not worn. A suspected concussion means out of play, and a licensed health-care professional decides the return.'))),
  };
};
