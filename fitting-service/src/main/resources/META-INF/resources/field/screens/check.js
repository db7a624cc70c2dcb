// One check at a time, and what comes of it: remedies, the pass, the result.
import { alarm, button, el, goTo, link } from '../dom.js';
import { enter, sessionWith } from '../fit.js';
import { needSaid, said } from '../words.js';
import { over, pass, result } from './ends.js';
import { helmet } from './helmet.js';

const MM_PER_INCH = 25.4;

const drawing = (id, name) =>
  el('img', { class: name, src: `/fitting/drawings/${id}.svg`, alt: '', onerror: (e) => e.target.remove() });

const progress = (seen) => {
  const passed = seen.checks.filter((c) => c.answer === 'pass').length;
  return el('progress', { max: String(seen.checks.length), value: String(passed), 'aria-label': `${passed} of ${seen.checks.length} checks passed` });
};

/** One remedy: done, or not possible here. */
const attempt = (pack, check, tried, first, send) => {
  const remedy = check.ways.flatMap((w) => w.remedies).find((r) => r.id === tried.remedy);
  const part = tried.item ? ` (${said(pack, tried.item)})` : '';
  const body = { check: check.id, remedy: remedy.id, item: tried.item };
  return [
    tried.onRecord ? '' : el('p', { class: 'meta' }, `By the records there is no ${said(pack, tried.item)} at this field. Look for one.`),
    button(`Done: ${remedy.text}${part}`, first ? 'primary wide big' : 'wide', () => send('adjustments', body)),
    !first ? '' : el('div', { class: 'row' },
      tried.item ? button('None here', 'grow', () => send('passed-over', { ...body, why: 'no-part' })) : '',
      button('Not possible on this helmet', 'grow', () => send('passed-over', { ...body, why: 'not-possible' }))),
  ];
};

const care = (check, tried) => {
  const minded = check.ways.flatMap((w) => w.remedies).find((r) => r.id === tried?.remedy)?.care ?? [];
  return minded.length === 0 ? ''
    : el('ul', { class: 'care' }, minded.map((c) => el('li', {}, drawing(c.id, 'small'), c.text)));
};

/** What is to be done when no remedy is left. */
const afterwards = (pack, session, next, id) => {
  const needs = (next.needs ?? []).map((n) => needSaid(pack, n)).join(', ');
  if (next.kind === 'put-on') {
    return { said: `Put on another helmet: ${said(pack, next.model)} ${said(pack, next.size)}, here is ${next.tags[0]}.`,
      way: link('#/helmet/' + id, 'Put another helmet on', 'button primary wide big') };
  }
  if (next.kind === 'measure-again') {
    return { said: 'The head asks for another size than was measured. Measure it again before another helmet is taken; that needs signal.',
      way: link(`/sizing/players/${session.player}/measure`, 'Measure again', 'button primary wide big') };
  }
  return { said: `No fit can be reached here. The re-fit needs ${needs}.`,
    way: link('#/fail/' + id, 'End without a fit', 'button danger wide big') };
};

const failed = ({ pack }, session, seen, check, now, send) => {
  const id = session.session;
  const left = now.remedies;
  const then = left.length === 0 ? afterwards(pack, session, seen.next, id) : undefined;
  const takeBack = () => send('corrections', { check: check.id, why: 'wrong-button' });
  return {
    top: [
      el('div', { class: 'notice warn' }, el('p', {}, el('strong', {}, `Failed: ${now.said ?? now.finding}.`), ' ',
        then ? `No remedy is left. ${then.said}` : 'Try this, then look again.')),
      check.severity === 'UNSAFE_HELMET'
        ? el('p', {}, el('strong', {}, 'The helmet itself is at fault. Do not let it be worn.'), ' Put it aside and report the damage.') : '',
      care(check, left[0]),
      el('p', {}, button('Take this answer back: wrong button', 'plain', takeBack)),
    ],
    hand: [
      then?.way ?? left.map((t, i) => attempt(pack, check, t, i === 0, send)),
      el('div', { class: 'row' },
        now.mayPass ? button('Passes after all', 'grow', () => send('checks', { check: check.id, result: 'pass' })) : '',
        link('#/helmet/' + id, 'Other helmet'), link('#/fail/' + id, 'No fit', 'button danger')),
    ],
  };
};

/** The length in millimetres; nothing where none was taken, NaN for what is no number. */
const millimetres = (typed, unit) => {
  if (typed.trim() === '') return undefined;
  const value = Number(typed.trim().replace(',', '.'));
  return unit === 'in' ? Math.round(value * MM_PER_INCH * 10) / 10 : value;
};

const limits = ({ leastMm, mostMm }, unit) => {
  const one = (mm) => (unit === 'in' ? (mm / MM_PER_INCH).toFixed(2).replace(/\.?0+$/, '') : mm);
  return `${mostMm ? `${one(leastMm)} to ${one(mostMm)}` : `at least ${one(leastMm)}`} ${unit}`;
};

const measuring = (check) => {
  if (!check.measure) return { value: () => undefined, node: '' };
  const passes = el('span', { class: 'meta', id: 'passes' });
  const say = (unit) => passes.replaceChildren(`${limits(check.measure, unit)} passes; may be left empty`);
  const kept = localStorage.getItem('tapeline-length') ?? 'in';
  const typed = el('input', { id: 'length', inputmode: 'decimal', autocomplete: 'off', 'aria-describedby': 'passes' });
  const remember = () => {
    localStorage.setItem('tapeline-length', unit.value);
    say(unit.value);
  };
  const unit = el('select', { id: 'unit', 'aria-label': 'Unit', onchange: remember },
    ['in', 'mm'].map((u) => el('option', { value: u, selected: u === kept }, u)));
  say(kept);
  return {
    value: () => millimetres(typed.value, unit.value),
    node: [el('label', { for: 'length' }, check.measure.what), el('div', { class: 'beside' }, typed, unit, passes)],
  };
};

const open = (id, check, send, refuse) => {
  const measured = measuring(check);
  const answer = (body) => {
    const valueMm = measured.value();
    return Number.isNaN(valueMm) ? refuse('A length is a number, such as 1.5 in or 38 mm, or nothing.')
      : send('checks', { check: check.id, valueMm, ...body });
  };
  return {
    top: [drawing(check.id, 'drawing'), el('p', {}, check.how), el('p', {}, el('strong', {}, check.pass))],
    hand: [
      measured.node,
      button('Passes', 'primary wide big', () => answer({ result: 'pass' })),
      check.ways.map((w) => button('Fails: ' + w.said, 'danger wide', () => answer({ result: 'fail', finding: w.finding }))),
      el('div', { class: 'row' }, link('#/helmet/' + id, 'Other helmet'), link('#/abandon/' + id, 'Pause or stop')),
    ],
  };
};

const checkScreen = (held, session, seen, wanted) => {
  const id = session.session;
  const checks = held.pack.protocol.checks;
  const check = checks.find((c) => c.id === wanted);
  const now = seen.checks.find((c) => c.id === wanted);
  const player = held.pack.players.find((p) => p.player === session.player);
  const hint = el('div', {});
  const refuse = (sentence) => hint.replaceChildren(alarm(sentence));
  const send = async (kind, body) => {
    const refused = await enter(session, kind, body);
    if (refused) refuse(refused.sentence);
    else goTo('#/session/' + id);
  };
  const parts = now.answer === 'fail' ? failed(held, session, seen, check, now, send) : open(id, check, send, refuse);
  return {
    kind: 'fit',
    node: el('div', { class: 'split' },
      el('div', { class: 'top' },
        el('p', { class: 'meta' }, `${player?.name ?? ''} · ${seen.helmet.tag}, ${said(held.pack, seen.helmet.size)} · check ${checks.indexOf(check) + 1} of ${checks.length}`),
        progress(seen),
        el('h1', { tabindex: '-1' }, check.question),
        parts.top),
      el('div', { class: 'hand' }, hint, parts.hand)),
  };
};

/** Put aside, or in another fitter's hands: taken over before anything else. */
const takeOver = (held, session, seen) => {
  const id = session.session;
  const hint = el('div', {});
  const own = seen.fitter === held.pack.fitter;
  const resume = async () => {
    const refused = await enter(session, 'resume', {});
    if (refused) hint.replaceChildren(alarm(refused.sentence));
    else goTo('#/session/' + id);
  };
  return {
    kind: 'fit',
    node: el('div', { class: 'split' },
      el('div', { class: 'top' }, el('h1', { tabindex: '-1' }, own ? 'Paused' : 'In another fitter’s hands'),
        el('p', {}, own ? 'You put this fit check aside.' : `${seen.fitter} has this fit check in hand. Take it over only when ${seen.fitter} is not working on it.`)),
      el('div', { class: 'hand' }, hint, button(own ? 'Go on' : 'Take it over and go on', 'primary wide big', resume),
        link('#/abandon/' + id, 'Stop it', 'button wide'))),
  };
};

export const session = async (held, id) => {
  const { session: found, seen, unsent } = await sessionWith(id);
  if (!found) return over();
  if (found.conflict || !['open', 'paused'].includes(seen.status)) return result(held, found, seen, unsent);
  if (!seen.sameProtocol) {
    return { node: el('div', {}, el('h1', { tabindex: '-1' }, 'The fit protocol has changed'), el('p', {}, 'End this session and open a new one.'), link('#/abandon/' + id, 'End it')) };
  }
  if (seen.status === 'paused' || seen.fitter !== held.pack.fitter) return takeOver(held, found, seen);
  if (!seen.helmet) return helmet(held, id);
  const check = seen.failed ?? seen.next.check;
  return check ? checkScreen(held, found, seen, check) : pass(held, found, seen);
};
