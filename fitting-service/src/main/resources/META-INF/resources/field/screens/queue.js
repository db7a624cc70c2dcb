// What waits, what needs the fitter, and the way out.
import { button, el, link } from '../dom.js';
import { change, read } from '../store.js';
import { counted, lineNow, told } from '../bar.js';
import { signInAddress } from '../connection.js';
import { send } from '../sender.js';
import { hour } from '../words.js';

const KINDS = { open: 'Fit check begun', helmet: 'Helmet put on', checks: 'Check answered', adjustments: 'Remedy done', pass: 'Signed off', fail: 'No fit', abandon: 'Ended without a result', pause: 'Paused', resume: 'Gone on', 'passed-over': 'Remedy not possible', corrections: 'Answer taken back' };

const entrySaid = (pack, entry) => {
  const check = pack.protocol.checks.find((c) => c.id === entry.body.check)?.question;
  const detail = [check, entry.body.tag, entry.body.result === 'fail' ? 'fails' : entry.body.result && 'passes', entry.body.finding].filter(Boolean).join(', ');
  return `${hour(entry.enteredAt)} ${KINDS[entry.kind] ?? entry.kind}${detail ? ': ' + detail : ''}`;
};

const name = (pack, id) => {
  const player = pack.players.find((p) => p.player === id);
  return player ? `${player.name} ${player.number}` : 'A player who is not held any more';
};

const dismiss = (session) =>
  change(async ({ sessions, queue }) => {
    await sessions.remove(session.session);
    for (const e of await queue.all()) if (e.session === session.session) await queue.remove(e.seq);
  }).then(() => told('dismissed'));

const conflict = (pack, session, entries) =>
  el('section', { class: 'notice bad', 'aria-label': 'Not recorded: ' + name(pack, session.player) },
    el('h2', {}, name(pack, session.player)),
    el('p', {}, el('strong', {}, 'Not recorded: '), session.conflict.sentence),
    el('p', {}, 'Nothing was signed off. Put the helmet aside or take it back, then begin a new fit check.'),
    el('details', {}, el('summary', {}, 'What was entered'),
      el('ol', {}, entries.map((e) => el('li', {}, entrySaid(pack, e), e.state === 'refused' ? el('strong', {}, ' – refused') : e.state === 'held' ? ' – not sent' : ' – recorded')))),
    el('p', { class: 'meta' }, session.conflict.handedOver
      ? 'All of it was handed over: it stands on the player’s page for the equipment manager.'
      : session.conflict.notTaken ? 'It could not be handed over. Write it down before you put it away.' : 'It is handed over as soon as there is signal.'),
    el('div', { class: 'row' },
      link('#/player/' + session.player, 'New fit check', 'button primary'),
      session.conflict.handedOver || session.conflict.notTaken ? button('Seen, put it away', '', () => dismiss(session)) : ''));

const waitingOf = (pack, session, entries) =>
  entries.length === 0 ? ''
    : el('details', {}, el('summary', {}, `${name(pack, session.player)}: ${entries.length} to be sent`),
        el('ol', {}, entries.map((e) => el('li', {}, entrySaid(pack, e)))));

const lineSaid = { ok: 'Connected.', sending: 'Sending.', 'no-signal': 'No signal, or the service does not answer.', 'sign-in': 'Signed out by the service. Sign in to send.', 'other-fitter': 'Somebody else is signed in.', starting: 'Starting.' };

export const queue = async (held) => {
  const state = await counted();
  const { sessions, entries } = await read(async (t) => ({ sessions: await t.sessions.all(), entries: await t.queue.all() }));
  const waiting = entries.filter((e) => e.state === 'waiting');
  const line = lineNow();
  return {
    refreshes: true,
    node: el('div', {},
      el('h1', { tabindex: '-1' }, waiting.length > 0 ? `${waiting.length} to be sent` : state.conflicts > 0 ? 'Not recorded' : 'Everything is sent'),
      el('p', {}, lineSaid[line]),
      line === 'other-fitter' ? el('p', { class: 'notice warn' }, `This phone holds entries of ${state.fitter ?? held.pack.fitter}. They are sent only under that name.`) : '',
      line === 'sign-in' || line === 'other-fitter' ? el('p', {}, link(line === 'sign-in' ? signInAddress : '/sign-out', line === 'sign-in' ? 'Sign in' : 'Sign in as ' + (state.fitter ?? held.pack.fitter), 'button primary wide')) : '',
      sessions.filter((s) => s.conflict).map((s) => conflict(held.pack, s, entries.filter((e) => e.session === s.session))),
      el('div', { class: 'actions' }, button('Send now', 'primary', send), link('#/sign-out', 'Sign out')),
      sessions.filter((s) => !s.conflict).map((s) => waitingOf(held.pack, s, waiting.filter((e) => e.session === s.session))),
      el('p', { class: 'meta' }, `Signed in as ${held.pack.fitter}. This phone holds ${held.pack.players.length} players, ${held.pack.helmets.length} helmets, as of ${hour(held.asOf)}.`)),
  };
};
