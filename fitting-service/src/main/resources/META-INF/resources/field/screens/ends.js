// How a session ends: signed off, no fit, stopped; and what became of it.
import { alarm, button, el, goTo, link } from '../dom.js';
import { enter, sessionWith } from '../fit.js';
import { lineNow } from '../bar.js';
import { hour, needSaid, said, wear } from '../words.js';

const HAIR = [['usual', 'As usual'], ['short', 'Cut short'], ['long', 'Long'], ['braids', 'Braids']];
const WHY = [['interrupted', 'Interrupted'], ['player-left', 'The player left'], ['weather', 'Weather'], ['mistake', 'Opened by mistake']];

const nameOf = (held, session) => held.pack.players.find((p) => p.player === session.player)?.name ?? '';

/** Degrees Celsius of what was typed; nothing for nothing, NaN for what is no number. */
export const celsius = (typed, unit) => {
  if (typed.trim() === '') return undefined;
  const value = Number(typed.trim().replace(',', '.'));
  return unit === 'F' ? Math.round(((value - 32) / 1.8) * 10) / 10 : value;
};

const choice = (name, value, text, checked) =>
  el('label', { class: 'choice' }, el('input', { type: 'radio', name, value, checked }), text);

export const over = () => ({
  refreshes: true,
  node: el('div', {}, el('h1', { tabindex: '-1' }, 'This session is over'),
    el('p', {}, 'It was ended elsewhere, or this phone does not hold it any more.'), link('#/players', 'Players')),
});

export const pass = (held, session, seen) => {
  const hint = el('div', {});
  const unit = localStorage.getItem('tapeline-degrees') ?? 'F';
  const air = el('input', { id: 'air', inputmode: 'decimal', autocomplete: 'off' });
  const form = el('form', { onsubmit: (e) => e.preventDefault() },
    el('label', { for: 'air' }, 'Air temperature (may be left empty)'),
    el('div', { class: 'beside' }, air, choice('unit', 'F', '°F', unit === 'F'), choice('unit', 'C', '°C', unit === 'C')),
    el('fieldset', {}, el('legend', {}, 'Hair'), el('div', { class: 'row' }, HAIR.map(([v, t], i) => choice('hair', v, t, i === 0)))));
  const signOff = async () => {
    const data = new FormData(form);
    localStorage.setItem('tapeline-degrees', data.get('unit'));
    const airCelsius = celsius(air.value, data.get('unit'));
    if (airCelsius !== undefined && !(airCelsius >= -40 && airCelsius <= 60)) {
      return hint.replaceChildren(alarm('Air temperature from -40 to 60 °C (-40 to 140 °F).'));
    }
    const refused = await enter(session, 'pass', { airCelsius, hair: data.get('hair'), parts: [] });
    if (refused) return hint.replaceChildren(alarm(refused.sentence));
    return goTo('#/session/' + session.session);
  };
  const h = seen.helmet;
  return {
    kind: 'fit',
    node: el('div', { class: 'split' },
      el('div', { class: 'top' },
        el('p', { class: 'meta' }, nameOf(held, session)),
        el('h1', { tabindex: '-1' }, 'Every check passed'),
        el('dl', { class: 'facts' },
          el('dt', {}, 'Helmet'), el('dd', {}, `${h.tag}, ${said(held.pack, h.model)} ${said(held.pack, h.size)}`),
          el('dt', {}, 'Parts fitted'), el('dd', {}, seen.parts.map((p) => said(held.pack, p)).join(', ') || 'none')),
        el('p', { class: 'meta' }, "No helmet prevents every head or neck injury. The helmet maker's instructions come first.")),
      el('div', { class: 'hand' }, form, hint, button('Sign off and hand out', 'primary wide big', signOff),
        link('#/fail/' + session.session, 'No fit after all'))),
  };
};

export const fail = async (held, id) => {
  const { session, seen } = await sessionWith(id);
  if (!session) return over();
  const hint = el('div', {});
  const wrong = seen.checks.filter((c) => c.answer === 'fail').map((c) => held.pack.protocol.checks.find((x) => x.id === c.id).question);
  // What failed names the needs by itself; where no helmet could be tried the proposal does.
  const unmet = wrong.length === 0 ? seen.next.needs ?? [] : [];
  const needs = wrong.length === 0 ? unmet : seen.needs;
  const noFit = async () => {
    const refused = await enter(session, 'fail', { needs: unmet });
    if (refused) hint.replaceChildren(alarm(refused.sentence));
    else goTo('#/session/' + id);
  };
  return {
    kind: 'fit',
    node: el('div', { class: 'split' },
      el('div', { class: 'top' },
        el('p', { class: 'meta' }, nameOf(held, session)),
        el('h1', { tabindex: '-1' }, 'End without a fit?'),
        needs.length > 0
          ? [wrong.length > 0 ? el('p', {}, `Failed: ${wrong.join('; ')}.`) : el('p', {}, 'No helmet of the size that is needed is free at this field.'),
             el('p', {}, 'The re-fit will need: ', el('strong', {}, needs.map((n) => needSaid(held.pack, n)).join(', ')), '.'),
             el('p', {}, 'Once it is sent, by itself: the player is shown as "do not wear", a replacement is kept or ordered, the re-fit is booked, the parents are told.')]
          : el('p', { class: 'notice' }, 'No check has failed on this helmet. Answer the check that fails, so that the re-fit brings the right thing.'),
        el('p', { class: 'meta' }, 'A helmet that does not fit is not worn, not even for one practice.')),
      el('div', { class: 'hand' }, hint,
        needs.length > 0 ? button('No fit: open a re-fit case', 'danger wide big', noFit)
          // A check that was passed by mistake: putting the same helmet on again asks all of them anew.
          : seen.helmet ? link('#/helmet/' + id, 'Put it on anew: all checks again', 'button wide') : '',
        link('#/session/' + id, 'Back to the checks', 'button wide'))),
  };
};

export const abandon = async (held, id) => {
  const { session } = await sessionWith(id);
  if (!session) return over();
  const hint = el('div', {});
  const pause = async () => {
    const refused = await enter(session, 'pause', {});
    if (refused) hint.replaceChildren(alarm(refused.sentence));
    else goTo('#/players');
  };
  const stop = async (why) => {
    const refused = await enter(session, 'abandon', { why });
    if (refused) hint.replaceChildren(alarm(refused.sentence));
    else goTo('#/session/' + id);
  };
  return {
    kind: 'fit',
    node: el('div', { class: 'split' },
      el('div', { class: 'top' }, el('p', { class: 'meta' }, nameOf(held, session)),
        el('h1', { tabindex: '-1' }, 'Pause or stop?'),
        el('p', {}, 'Paused, it waits on the player’s page, and you or another fitter can go on with it. Ended, nothing of it counts: nothing is signed off.')),
      el('div', { class: 'hand' }, hint, button('Pause: go on later', 'primary wide big', pause),
        el('p', { class: 'meta' }, 'End without a result:'), WHY.map(([why, text]) => button(text, 'wide', () => stop(why))),
        link('#/session/' + id, 'Back to the checks', 'button wide'))),
  };
};

const ended = (held, session, seen, unsent) => {
  const player = held.pack.players.find((p) => p.player === session.player);
  if (session.conflict) {
    return [el('h1', { tabindex: '-1' }, 'Not recorded'),
      el('div', { class: 'notice bad' }, el('p', {}, session.conflict.sentence)),
      el('p', {}, 'What was entered is kept. Nothing was signed off: where a helmet was handed out, take it back.'),
      link('#/queue', 'What to do', 'button primary wide big')];
  }
  const waits = unsent > 0;
  if (seen.status === 'passed' && waits) {
    return [el('h1', { tabindex: '-1' }, 'Fit check passed here'),
      el('p', { class: 'notice warn' }, el('strong', {}, 'Not yet recorded: not signed off until sent.'), lineNow() === 'sign-in' ? ' The service has signed this phone out: ' : ' It is sent by itself as soon as there is signal. Keep this phone on.',
        lineNow() === 'sign-in' ? link('#/queue', 'sign in to send') : '')];
  }
  if (seen.status === 'passed') {
    // What was fetched before the sign-off says nothing of it.
    const later = Date.parse(held.asOf) > Date.parse(session.recordedAt ?? 0);
    const state = player && later ? wear(held, player) : undefined;
    return [el('h1', { tabindex: '-1' }, 'Recorded: signed off'),
      el('p', { class: 'notice ok' }, `Recorded at ${hour(session.recordedAt ?? Date.now())}, helmet ${seen.helmet.tag}.`),
      state ? el('p', {}, 'Now: ', el('span', { class: 'state ' + state.code }, state.said), ' ', el('span', { class: 'meta' }, state.age ?? state.reason)) : el('p', { class: 'meta' }, 'The sideline list follows in a few seconds; this phone asks for it within a minute.'),
      el('p', {}, 'Check the fit again within a week, and after a haircut, a change of weather or a hit.')];
  }
  if (seen.status === 'failed') {
    return [el('h1', { tabindex: '-1' }, 'No fit'),
      el('p', {}, el('span', { class: 'state do-not-wear' }, 'Do not wear'), ' the helmet of this session.'),
      el('p', {}, waits ? 'Not yet recorded: the re-fit case opens when it is sent.' : 'A re-fit case is open. The replacement, the date and the notice to the parents follow by themselves.')];
  }
  return [el('h1', { tabindex: '-1' }, 'Ended without a result'), el('p', {}, 'Nothing was signed off.')];
};

export const result = (held, session, seen, unsent) => ({
  refreshes: true,
  kind: 'fit',
  node: el('div', { class: 'split' },
    el('div', { class: 'top' }, el('p', { class: 'meta' }, nameOf(held, session)), ended(held, session, seen, unsent)),
    el('div', { class: 'hand' },
      link('#/players', 'Next player', 'button primary wide big'),
      link('#/player/' + session.player, nameOf(held, session) || 'The player', 'button wide'))),
});
