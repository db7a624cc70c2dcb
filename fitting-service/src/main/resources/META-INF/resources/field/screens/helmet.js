// Which helmet goes on: its tag, scanned or typed, and the size that stands on its label.
import { alarm, button, el, goTo, link } from '../dom.js';
import { enter, sessionWith, tagOf, tagProblem } from '../fit.js';
import { needSaid, said } from '../words.js';
import { canScan, scan } from '../camera.js';

const sizesOf = (pack) => [...new Set(Object.values(pack.models).flat())];

export const helmet = async (held, id) => {
  const { session, seen } = await sessionWith(id);
  const { pack } = held;
  if (!session) return { node: el('div', {}, el('h1', { tabindex: '-1' }, 'This session is over'), link('#/players', 'Players')) };
  const player = pack.players.find((p) => p.player === session.player);
  const on = seen.helmet;
  const next = seen.next;
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
  const MOST = 5;
  const proposed = next.kind === 'put-on'
    ? el('div', {}, el('p', {}, 'Proposed: ', el('strong', {}, `${said(pack, next.model)} ${said(pack, next.size)}`)),
        el('div', { class: 'chips' }, next.tags.slice(0, MOST).map((t) => button(t, 'chip', () => take(t)))))
    : next.kind === 'look' || next.kind === 'try' || next.kind === 'sign-off' ? ''
      : el('p', { class: 'notice warn' }, next.kind === 'measure-again' && next.needs.length === 0
          ? 'The head was never measured. Measure it first; that needs signal.'
          : (next.needs ?? []).length > 0 && next.needs.every((n) => n.kind !== 'helmet')
            ? `No other helmet is proposed: the re-fit needs ${next.needs.map((n) => needSaid(pack, n)).join(', ')}.`
            : 'No free helmet of the size that is needed is recorded at this field.');
  return {
    kind: 'fit',
    node: el('div', { class: 'split' },
      el('div', { class: 'top' },
        el('p', { class: 'meta' }, `${player?.name ?? ''} ${player?.number ?? ''}`),
        el('h1', { tabindex: '-1' }, on ? 'Put another helmet on' : 'Put a helmet on'),
        proposed),
      el('div', { class: 'hand' }, hint,
        el('label', { for: 'tag' }, 'Tag on the helmet'),
        el('div', { class: 'beside' }, tag,
          canScan() ? button('Scan', '', async () => {
            const found = await scan();
            if (found) take(found);
          }) : ''),
        tagHint,
        el('label', { for: 'size' }, 'Size on the label inside'), size,
        next.kind === 'end-without-fit' ? link('#/fail/' + id, 'End without a fit', 'button danger wide') : '',
        el('div', { class: 'row' },
          button('Helmet is on', 'primary big grow', putOn),
          on ? link('#/session/' + id, 'Back') : link('#/abandon/' + id, 'Stop')))),
  };
};
