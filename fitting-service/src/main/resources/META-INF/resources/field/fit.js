// Fit sessions on the phone. The rules are the service's own, compiled to rules.js.
import * as rules from './rules.js';
import { newId } from './ids.js';
import { change, read } from './store.js';
import { told } from './bar.js';

let begun;

/** Gives the rules the protocol that was taken along; again when a newer one has come. */
const begin = (pack) => {
  const protocol = JSON.stringify(pack.protocol);
  if (begun !== protocol) rules.begin(protocol);
  begun = protocol;
};

const today = (pack, field) => {
  const zone = pack.fields.find((f) => f.code === field)?.zone ?? 'UTC';
  return new Intl.DateTimeFormat('en-CA', { timeZone: zone, year: 'numeric', month: '2-digit', day: '2-digit' }).format();
};

const sizeOf = (model, size) => (size ? [{ model, size }] : []);

/** A helmet that went out here is no longer free, though the service does not know it yet. */
const asOut = (helmet, out) =>
  out.has(helmet.tag) && helmet.state === 'available' ? { ...helmet, state: 'issued', holder: out.get(helmet.tag) } : helmet;

/** What the service would look up, from what the phone holds. */
const facts = (pack, session, tag, out = new Map()) => {
  const player = pack.players.find((p) => p.player === session.player);
  const model = session.events.findLast((e) => e.type === 'helmet-tried')?.data.model;
  const listed = pack.helmets.find((h) => h.tag === tag);
  const advised = player?.advised ?? [];
  const first = advised.flatMap((a) => sizeOf(a.model, a.size));
  return {
    team: player?.team ?? '',
    fitter: pack.fitter,
    today: today(pack, session.field),
    altitudeM: pack.fields.find((f) => f.code === session.field)?.altitudeM,
    advised: first,
    advisedNow: [...first, ...advised.flatMap((a) => sizeOf(a.model, a.second))],
    measuredAt: player?.measuredAt,
    models: pack.models,
    parts: pack.parts[session.field]?.[model] ?? {},
    helmet: listed && asOut(listed, out),
  };
};

/** The helmets of the field that may be free. */
const shelf = (pack, session, out) =>
  pack.helmets
    .filter((h) => h.place === session.field && (h.state === 'available' || h.holder === session.player))
    .map((h) => asOut(h, out));

/** Helmets that went out here and of which the service does not know yet, with who has them. */
export const handedOut = (sessions) =>
  new Map(
    sessions
      .filter((s) => !s.conflict && s.events.at(-1)?.type === 'fit-passed')
      .map((s) => [s.events.at(-1).data.tag, s.player]),
  );

const tagOn = (events) => events.findLast((e) => e.type === 'helmet-tried')?.data.tag;

/** Where the session stands; see FitCheckInHand.look. */
export const look = (pack, session, out = new Map()) => {
  begin(pack);
  const known = { ...facts(pack, session, tagOn(session.events), out), shelf: shelf(pack, session, out) };
  return JSON.parse(rules.look(JSON.stringify(session.events), JSON.stringify(known)));
};

export const tagProblem = (typed) => rules.tagProblem(typed);
export const tagOf = (typed) => rules.tag(typed);

/** A new session of the player, at the own field where the player is. */
export const openFor = async (pack, player) => {
  const field = pack.fields.some((f) => f.code === player.field) ? player.field : pack.fields[0]?.code;
  const session = { session: newId(), player: player.player, field, fitter: pack.fitter, events: [] };
  const answer = await enter(session, 'open', { session: session.session, player: player.player, field });
  return { ...answer, session: session.session };
};

/**
 * Stores an entry when the rules accept it; it is sent afterwards. Gives the refusal otherwise, or
 * nothing.
 */
export const enter = async (session, kind, body) => {
  const enteredAt = new Date().toISOString();
  const refused = await change(async ({ held, sessions, queue }) => {
    const { pack } = await held.get('pack');
    const now = (await sessions.get(session.session)) ?? session;
    if (now.events.length !== session.events.length || now.conflict) {
      return { sentence: 'This session was gone on with in another window. Look again.' };
    }
    begin(pack);
    const tag = kind === 'helmet' ? rules.tag(body.tag) : tagOn(now.events);
    const out = handedOut(await sessions.all());
    const known = facts(pack, now, tag, out);
    if (kind === 'fail') known.shelf = shelf(pack, now, out);
    const command = { ...body, kind, at: enteredAt };
    const decision = JSON.parse(
      rules.enter(JSON.stringify(now.events), JSON.stringify(command), JSON.stringify(known)),
    );
    if (!decision.accepted) return decision;
    await queue.add({
      commandId: newId(), session: now.session, fitter: pack.fitter, kind,
      body: { ...body, enteredAt }, enteredAt, known: now.events.length, state: 'waiting',
    });
    await sessions.put({ ...now, events: [...now.events, ...decision.events], changedAt: enteredAt });
    return undefined;
  });
  if (!refused) told('entered');
  return refused;
};

/** The session, where it stands, and how many of its entries wait to be sent. */
export const sessionWith = (id) =>
  read(async ({ held, sessions, queue }) => {
    const { pack } = await held.get('pack');
    const session = await sessions.get(id);
    return {
      session,
      seen: session && look(pack, session, handedOut(await sessions.all())),
      unsent: (await queue.all()).filter((e) => e.session === id && e.state !== 'sent').length,
    };
  });
