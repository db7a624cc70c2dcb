// One check at a time, and what comes of it: remedies, the pass, the result.
import { alarm, button, el, goTo, link } from '../dom.js';
import { enter, look, sessionWith } from '../fit.js';
import { said } from '../words.js';
import { pass, result } from './ends.js';
import { helmet } from './helmet.js';

const drawing = (check) =>
  el('img', { class: 'drawing', src: `/fitting/drawings/${check.id}.svg`, alt: '', onerror: (e) => e.target.remove() });

const progress = (seen) => {
  const passed = seen.checks.filter((c) => c.answer === 'pass').length;
  return el('progress', { max: String(seen.checks.length), value: String(passed), 'aria-label': `${passed} of ${seen.checks.length} checks passed` });
};

const failed = (held, id, session, check, now, send) => {
  const remedies = now.remedies.map((r) => check.ways.flatMap((w) => w.remedies).find((x) => x.id === r));
  const applied = (remedy, first) => {
    const pick = remedy.items.length > 1
      ? el('select', { id: 'item-' + remedy.id, 'aria-label': 'Part for: ' + remedy.text }, remedy.items.map((i) => el('option', { value: i }, said(held.pack, i))))
      : undefined;
    const one = remedy.items.length === 1 ? ` (${said(held.pack, remedy.items[0])})` : '';
    return [pick ?? '', button(`Done: ${remedy.text}${one}`, first ? 'primary wide' : 'wide', () =>
      send('adjustments', { check: check.id, remedy: remedy.id, item: pick?.value ?? remedy.items[0] }))];
  };
  return {
    top: [
      el('div', { class: 'notice warn' }, el('p', {}, el('strong', {}, `Failed: ${now.said ?? now.finding}.`), ' ',
        remedies.length > 0 ? 'Try this, then look again.' : `No remedy is left: it needs ${now.otherwise}.`)),
      check.severity === 'UNSAFE_HELMET'
        ? el('p', {}, el('strong', {}, 'The helmet itself is at fault. Do not let it be worn.'), ' Put it aside and report the damage.') : '',
    ],
    hand: [
      remedies.flatMap((r, i) => applied(r, i === 0)),
      el('div', { class: 'row' },
        now.mayPass ? button('Passes after all', 'grow', () => send('checks', { check: check.id, result: 'pass' })) : '',
        link('#/helmet/' + id, 'Other helmet'), link('#/fail/' + id, 'No fit', 'button danger')),
    ],
  };
};

const open = (id, check, send) => ({
  top: [drawing(check), el('p', {}, check.how), el('p', {}, el('strong', {}, check.pass))],
  hand: [
    button('Passes', 'primary wide big', () => send('checks', { check: check.id, result: 'pass' })),
    check.ways.map((w) => button('Fails: ' + w.said, 'danger wide', () =>
      send('checks', { check: check.id, result: 'fail', finding: w.finding }))),
    el('div', { class: 'row' }, link('#/helmet/' + id, 'Other helmet'), link('#/abandon/' + id, 'Stop'),
      link('#/players', 'Later')),
  ],
});

const checkScreen = (held, id, session, seen, wanted) => {
  const checks = held.pack.protocol.checks;
  const check = checks.find((c) => c.id === wanted);
  const now = seen.checks.find((c) => c.id === wanted);
  const player = held.pack.players.find((p) => p.player === session.player);
  const hint = el('div', {});
  const send = async (kind, body) => {
    const refused = await enter(session, kind, body);
    if (refused) hint.replaceChildren(alarm(refused.sentence));
    else goTo('#/session/' + id);
  };
  const parts = now.answer === 'fail' ? failed(held, id, session, check, now, send) : open(id, check, send);
  return {
    kind: 'fit',
    node: el('div', { class: 'split' },
      el('div', { class: 'top' },
        el('p', { class: 'meta' }, `${player?.name ?? ''} · ${seen.helmet.tag} · check ${checks.indexOf(check) + 1} of ${checks.length}`),
        progress(seen),
        el('h1', { tabindex: '-1' }, check.question),
        parts.top),
      el('div', { class: 'hand' }, hint, parts.hand)),
  };
};

export const session = async (held, id) => {
  const found = await sessionWith(id);
  if (!found.session) {
    return { node: el('div', {}, el('h1', { tabindex: '-1' }, 'This session is over'), el('p', {}, 'It was ended elsewhere, or this phone does not hold it any more.'), link('#/players', 'Players')) };
  }
  const seen = look(held.pack, found.session);
  if (found.session.conflict || seen.status !== 'open') return result(held, found.session, seen, found.unsent);
  if (!seen.sameProtocol) {
    return { node: el('div', {}, el('h1', { tabindex: '-1' }, 'The fit protocol has changed'), el('p', {}, 'End this session and open a new one.'), link('#/abandon/' + id, 'End it')) };
  }
  if (!seen.helmet) return helmet(held, id);
  return seen.next ? checkScreen(held, id, found.session, seen, seen.next) : pass(held, found.session, seen);
};
