// What the phone takes along, fetched anew whenever there is signal.
import { ask } from './connection.js';
import { change, read } from './store.js';
import { say, told } from './bar.js';

const AGAIN = 60_000;
const OLD_RESULTS_MS = 24 * 3_600_000;

/** Of a session that ended here and was recorded the result stays in sight for a day. */
const outlived = (session, entries) =>
  !entries.some((e) => e.session === session.session && e.state !== 'sent') &&
  !session.conflict &&
  Date.parse(session.recordedAt ?? 0) < Date.now() - OLD_RESULTS_MS;

const ended = (session) =>
  ['fit-passed', 'fit-failed', 'session-abandoned', 'pass-taken-back'].includes(session.events.at(-1)?.type);

/** Another phone's word counts unless something of this phone is still to be sent. */
const mergeSessions = async ({ sessions, queue }, pack) => {
  const entries = await queue.all();
  const open = new Map(pack.sessions.map((s) => [s.session, s]));
  for (const local of await sessions.all()) {
    const there = open.get(local.session);
    open.delete(local.session);
    if (local.conflict || entries.some((e) => e.session === local.session && e.state === 'waiting')) continue;
    if (there) await sessions.put({ ...local, events: there.events });
    else if (!ended(local) || outlived(local, entries)) {
      await sessions.remove(local.session);
      for (const e of entries.filter((x) => x.session === local.session)) await queue.remove(e.seq);
    }
  }
  for (const there of open.values()) {
    const opened = there.events[0].data;
    await sessions.put({ ...there, field: opened.field, fitter: pack.fitter });
  }
};

/** Another fitter signed in: what the one before left unsent stays, and stays that one's. */
const changedHands = async ({ held, sessions, queue }, pack) => {
  const before = await held.get('pack');
  if (!before || before.pack.fitter === pack.fitter) return 'same';
  const unsent = (await queue.all()).some((e) => e.state !== 'sent');
  const conflicts = (await sessions.all()).some((s) => s.conflict && !s.conflict.handedOver);
  if (unsent || conflicts) return 'kept';
  await Promise.all([sessions.clear(), queue.clear()]);
  return 'cleared';
};

const keep = (pack, tag, asOf) =>
  change(async (tables) => {
    const hands = await changedHands(tables, pack);
    if (hands === 'kept') return hands;
    await tables.held.put({ pack, tag, asOf }, 'pack');
    await mergeSessions(tables, pack);
    return hands;
  });

const take = async () => {
  const before = await read(({ held }) => held.get('pack'));
  const answer = await ask('GET', '/fitting/api/field-pack' + location.search,
    before ? { 'If-None-Match': `"${before.tag}"` } : {});
  if (answer.outcome === 'refused') {
    say({ line: 'ok' });
    return answer;
  }
  if (answer.outcome !== 'ok' && answer.outcome !== 'unchanged') {
    say({ line: answer.outcome });
    return answer;
  }
  const asOf = answer.answer.headers.get('As-Of');
  if (answer.outcome === 'unchanged') {
    await change(({ held }) => held.put({ ...before, asOf }, 'pack'));
  } else {
    const tag = answer.answer.headers.get('ETag').replaceAll('"', '');
    if ((await keep(answer.json, tag, asOf)) === 'kept') {
      say({ line: 'other-fitter' });
      return { outcome: 'other-fitter' };
    }
  }
  localStorage.setItem('tapeline-field', 'held');
  say({ line: 'ok' });
  told('pack');
  return answer;
};

/** Not while entries are on their way: the answer would be older than they are. */
export const takeAlong = () => navigator.locks.request('tapeline-send', take);

export const keepTaking = () => {
  const again = () => document.visibilityState === 'visible' && takeAlong();
  window.addEventListener('online', again);
  document.addEventListener('visibilitychange', again);
  setInterval(again, AGAIN);
};
