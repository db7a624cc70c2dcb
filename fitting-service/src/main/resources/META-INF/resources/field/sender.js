// Sends what was entered, in order, one after the other, from one window at a time. An entry leaves
// the queue only by the service's answer; sent twice, the service does it once.
import { ask } from './connection.js';
import { newId } from './ids.js';
import { change, read } from './store.js';
import { say, told } from './bar.js';

const AGAIN = 15_000;
let running = false;
let wanted = false;

const address = (entry) =>
  entry.kind === 'open' ? '/fitting/api/sessions' : `/fitting/api/sessions/${entry.session}/${entry.kind}`;

const post = (entry) =>
  ask('POST', address(entry), {
    'Idempotency-Key': entry.commandId,
    'Entered-By': entry.fitter,
    'Events-Known': String(entry.known),
  }, entry.body);

const sent = (entry) =>
  change(async ({ sessions, queue }) => {
    await queue.put({ ...entry, state: 'sent' });
    const session = await sessions.get(entry.session);
    if (session) await sessions.put({ ...session, recordedAt: new Date().toISOString() });
  });

/** Keeps the session as it is: nothing of it is sent any more, and nothing of it is lost. */
const refused = (entry, { code, sentence }) =>
  change(async ({ sessions, queue }) => {
    for (const other of await queue.all()) {
      if (other.session !== entry.session || other.state === 'sent') continue;
      await queue.put({ ...other, state: other.seq === entry.seq ? 'refused' : 'held' });
    }
    const session = await sessions.get(entry.session);
    const conflict = { commandId: entry.commandId, asideId: newId(), code, sentence, handedOver: false };
    await sessions.put({ ...session, fitter: entry.fitter, conflict });
  });

const needCode = (need) => need.item ?? [need.kind, need.model, need.size].join(':');

const code = (value) =>
  Array.isArray(value) ? value.map((v) => (typeof v === 'string' ? v : needCode(v))).join(',') : String(value);

const codes = (body) =>
  Object.fromEntries(
    Object.entries(body)
      .filter(([name, value]) => name !== 'enteredAt' && value !== undefined && value !== null)
      .map(([name, value]) => [name, code(value)])
      .filter(([, value]) => value !== ''),
  );

/** The refused session goes to the service as a note, for whoever sees to it. */
const handOver = (session, entries) =>
  ask('POST', '/fitting/api/set-aside', {
    'Idempotency-Key': session.conflict.asideId,
    'Entered-By': session.fitter,
  }, {
    session: session.session, player: session.player, field: session.field,
    refused: session.conflict.commandId, code: session.conflict.code || 'refused',
    sentence: session.conflict.sentence.slice(0, 1000),
    entries: entries.map((e) => ({ command: e.commandId, kind: e.kind, enteredAt: e.enteredAt, said: codes(e.body) })),
  });

const nextOf = () =>
  read(async ({ sessions, queue }) => {
    const entries = await queue.all();
    const aside = (await sessions.all()).find((s) => s.conflict && !s.conflict.handedOver && !s.conflict.notTaken);
    if (aside) return { aside, entries: entries.filter((e) => e.session === aside.session) };
    return { entry: entries.find((e) => e.state === 'waiting') };
  });

const handedOver = (session, outcome) =>
  change(async ({ sessions }) => {
    const now = await sessions.get(session.session);
    const conflict = { ...now.conflict, handedOver: outcome === 'ok', notTaken: outcome === 'refused' };
    await sessions.put({ ...now, conflict });
  });

/** Sends one; gives the outcome, or nothing when there is nothing to send. */
const sendNext = async () => {
  const { aside, entries, entry } = await nextOf();
  if (aside) {
    const { outcome } = await handOver(aside, entries);
    if (outcome === 'ok' || outcome === 'refused') await handedOver(aside, outcome);
    return outcome;
  }
  if (!entry) return undefined;
  const answer = await post(entry);
  if (answer.outcome === 'ok') await sent(entry);
  if (answer.outcome === 'refused') await refused(entry, answer);
  return answer.outcome;
};

const sendAll = async () => {
  for (;;) {
    const outcome = await sendNext();
    if (outcome === undefined) return say({ line: 'ok' });
    if (outcome !== 'ok' && outcome !== 'refused') return say({ line: outcome });
    say({ line: 'sending' });
    told('sent');
  }
};

/** Sends what waits, as soon as no other window does. */
export const send = async () => {
  wanted = true;
  if (running) return;
  running = true;
  try {
    while (wanted) {
      wanted = false;
      await navigator.locks.request('tapeline-send', sendAll);
    }
  } finally {
    running = false;
  }
};

export const keepSending = () => {
  window.addEventListener('online', send);
  window.addEventListener('offline', () => say({ line: 'no-signal' }));
  document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && send());
  setInterval(send, AGAIN);
};
