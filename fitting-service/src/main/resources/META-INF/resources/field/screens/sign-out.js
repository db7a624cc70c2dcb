// The way out: send first, then forget everything of this device.
import { button, el, link } from '../dom.js';
import { read, wipe } from '../store.js';
import { counted } from '../bar.js';
import { send } from '../sender.js';

const MARK = 'tapeline-field';
const OWED = 'tapeline-sign-out';

const leave = async () => {
  await wipe();
  localStorage.removeItem(MARK);
  // Without signal the service cannot be told now; it is at the next start, before anything else.
  localStorage.setItem(OWED, 'owed');
  await signedOut();
  location.replace('/sign-in');
};

/** Tells the service that the fitter signed out, when that is still owed. */
export const signedOut = async () => {
  if (!localStorage.getItem(OWED)) return;
  try {
    await fetch('/sign-out', { redirect: 'manual', cache: 'no-store', signal: AbortSignal.timeout(10_000) });
    localStorage.removeItem(OWED);
  } catch {
    // No signal: the phone holds nothing, and asks again next time.
  }
};

export const signOut = async () => {
  const { waiting, notHandedOver } = await counted();
  const unsent = await read(async ({ queue }) => (await queue.all()).filter((e) => e.state === 'waiting' || e.state === 'refused' || e.state === 'held').length);
  const lost = waiting + notHandedOver > 0 ? unsent : 0;
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
