// The way out: send first, then forget everything of this device.
import { button, el, link } from '../dom.js';
import { read, wipe } from '../store.js';
import { send } from '../sender.js';

const MARK = 'tapeline-field';
const OWED = 'tapeline-sign-out';

const leave = async () => {
  // Without signal the service cannot be told now; it is at the next start, before anything else,
  // also when another tab starts again because this one wipes.
  localStorage.setItem(OWED, 'owed');
  await wipe();
  localStorage.removeItem(MARK);
  await signedOut();
  location.replace('/fitting/field/');
};

/** Leads over the service's own way out when that is still owed and there is signal. */
export const signedOut = async () => {
  if (!localStorage.getItem(OWED)) return;
  try {
    await fetch('/sign-out', { redirect: 'manual', cache: 'no-store', signal: AbortSignal.timeout(10_000) });
  } catch {
    // No signal: the phone holds nothing, and asks again next time.
    return;
  }
  localStorage.removeItem(OWED);
  location.replace('/sign-out');
  await new Promise(() => {});
};

/** How many entries would be lost: those not sent, and refused ones that were not handed over. */
const unsent = () =>
  read(async ({ sessions, queue }) => {
    const kept = new Set((await sessions.all()).filter((s) => s.conflict?.handedOver).map((s) => s.session));
    return (await queue.all()).filter((e) => e.state !== 'sent' && !kept.has(e.session)).length;
  });

export const signOut = async () => {
  const lost = await unsent();
  const sure = el('div', {});
  const confirm = () =>
    sure.replaceChildren(
      el('div', { class: 'notice bad', role: 'alert' },
        el('p', {}, el('strong', {}, `${lost} ${lost === 1 ? 'entry is' : 'entries are'} not sent and will be lost.`), ' Nobody can bring them back.'),
        button(`Lose ${lost} and sign out`, 'danger wide', leave)));
  return {
    refreshes: true,
    node: el('div', {},
      el('h1', { tabindex: '-1' }, 'Sign out'),
      el('p', {}, 'Everything that this phone holds about players is wiped.'),
      lost > 0
        ? [el('p', { class: 'notice warn' }, `${lost} ${lost === 1 ? 'entry is' : 'entries are'} not sent yet. Send first.`),
           el('div', { class: 'actions' }, button('Send now', 'primary', send), button('Sign out without sending', 'danger', confirm)), sure]
        : el('div', { class: 'actions' }, button('Wipe this phone and sign out', 'primary', leave)),
      link('#/players', 'Stay')),
  };
};
