// Which helmet goes on: its tag, scanned or typed, and the size that stands on its label.
import { alarm, button, el, goTo, link } from '../dom.js';
import { enter, handedOut, look, refusal, sessionWith, tagOf, tagProblem } from '../fit.js';
import { read } from '../store.js';
import { said } from '../words.js';
import { canScan, scan } from '../camera.js';

const MOST = 6;

/** Helmets of the field that this player can have: the one kept for the player first. */
const choices = (pack, session, player, out) => {
  const wanted = (h) => (player?.advised ?? []).some((a) => a.model === h.model && a.size === h.size);
  const own = (h) => h.holder === session.player || h.keptFor.includes(session.player);
  return pack.helmets
    .filter((h) => h.place === session.field && (own(h) || wanted(h)))
    .filter((h) => !out.has(h.tag) || out.get(h.tag) === session.player)
    .filter((h) => refusal(pack, h, session.player, session.field) === '')
    .sort((a, b) => Number(own(b)) - Number(own(a)))
    .slice(0, MOST);
};

const sizesOf = (pack) => [...new Set(Object.values(pack.models).flat())];

export const helmet = async (held, id) => {
  const { session } = await sessionWith(id);
  const { pack } = held;
  if (!session) return { node: el('div', {}, el('h1', { tabindex: '-1' }, 'This session is over'), link('#/players', 'Players')) };
  const player = pack.players.find((p) => p.player === session.player);
  const out = await read(async (t) => handedOut(await t.sessions.all()));
  const on = look(pack, session).helmet;
  const hint = el('div', {});
  const tag = el('input', { id: 'tag', autocomplete: 'off', autocapitalize: 'characters', spellcheck: 'false', enterkeyhint: 'next', 'aria-describedby': 'tag-hint' });
  const tagHint = el('p', { id: 'tag-hint', class: 'field-error', role: 'alert' });
  const size = el('select', { id: 'size' }, el('option', { value: '' }, 'Read it, then choose'),
    sizesOf(pack).map((s) => el('option', { value: s }, said(pack, s))));
  const checkTag = () => {
    tagHint.textContent = tag.value ? tagProblem(tag.value) : '';
    tag.setAttribute('aria-invalid', String(tagHint.textContent !== ''));
  };
  tag.addEventListener('change', checkTag);
  const take = (value) => {
    tag.value = value;
    checkTag();
    size.focus();
  };
  const putOn = async () => {
    tagHint.textContent = tagProblem(tag.value);
    if (tagHint.textContent) return tag.focus();
    if (!size.value) {
      hint.replaceChildren(alarm('Read the size on the label inside the shell and choose it.'));
      return size.focus();
    }
    const refused = await enter(session, 'helmet', { tag: tagOf(tag.value), sizeLabel: size.value });
    if (refused) return hint.replaceChildren(alarm(refused.sentence));
    return goTo('#/session/' + id);
  };
  const list = choices(pack, session, player, out);
  return {
    kind: 'fit',
    node: el('div', { class: 'split' },
      el('div', { class: 'top' },
        el('p', { class: 'meta' }, `${player?.name ?? ''} ${player?.number ?? ''}`),
        el('h1', { tabindex: '-1' }, on ? 'Put another helmet on' : 'Put a helmet on'),
        list.length === 0
          ? el('p', { class: 'notice warn' }, 'No free helmet of an advised size is recorded at this field.')
          : el('div', {}, el('h2', {}, 'At this field for this player'),
              el('div', { class: 'chips' }, list.map((h) => button(
                `${h.tag} ${said(pack, h.model)} ${said(pack, h.size)}` +
                  (h.keptFor.includes(session.player) ? ', kept' : h.holder === session.player ? ', has it' : ''),
                'chip', () => take(h.tag)))))),
      el('div', { class: 'hand' }, hint,
        el('label', { for: 'tag' }, 'Tag on the helmet'),
        el('div', { class: 'beside' }, tag,
          canScan() ? button('Scan', '', async () => {
            const found = await scan();
            if (found) take(found);
          }) : ''),
        tagHint,
        el('label', { for: 'size' }, 'Size on the label inside'), size,
        el('div', { class: 'row' },
          button('Helmet is on', 'primary big grow', putOn),
          on ? link('#/session/' + id, 'Back') : link('#/abandon/' + id, 'Stop')))),
  };
};
