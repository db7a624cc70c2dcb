// The field app: shows the screen that the address names. Addresses after the # are of this app alone.
import { alarm, el } from './dom.js';
import { listen, paint, told } from './bar.js';
import { read } from './store.js';
import { keepSending, send } from './sender.js';
import { keepTaking, takeAlong } from './pack.js';
import { players } from './screens/players.js';
import { player } from './screens/player.js';
import { session } from './screens/check.js';
import { helmet } from './screens/helmet.js';
import { abandon, fail } from './screens/ends.js';
import { queue } from './screens/queue.js';
import { signOut, signedOut } from './screens/sign-out.js';
import { signInAddress } from './connection.js';

const SCREENS = { players, player, session, helmet, fail, abandon, queue, 'sign-out': signOut };
const main = document.getElementById('screen');
let shown = '';
let refreshes = false;

const nothingHeld = (answer) =>
  el('div', {},
    el('h1', {}, 'Field app'),
    answer?.outcome === 'refused' ? alarm(answer.sentence) : '',
    el('p', {}, 'This phone holds nothing yet. Sign in once with signal; after that it works without.'),
    el('p', {}, el('a', { class: 'button primary wide big', href: signInAddress }, 'Sign in')));

let lastTake;

const show = async (fresh) => {
  const [name, ...rest] = location.hash.replace(/^#\//, '').split('/').map(decodeURIComponent);
  const held = await read((tables) => tables.held.get('pack'));
  const screen = SCREENS[name] ?? players;
  let made;
  try {
    made = held ? await screen(held, ...rest) : { node: nothingHeld(lastTake), refreshes: true };
  } catch (problem) {
    made = { node: el('div', {}, el('h1', {}, 'This cannot be shown'), alarm(problem.message)), refreshes: true };
  }
  if (!fresh && !mayRefresh()) return;
  main.className = made.kind ?? '';
  main.replaceChildren(made.node);
  refreshes = made.refreshes ?? false;
  document.title = (main.querySelector('h1')?.textContent ?? 'Field app') + ' · Tapeline';
  if (!fresh) return;
  window.scrollTo(0, 0);
  (main.querySelector('[data-focus]') ?? main.querySelector('h1') ?? main).focus({ preventScroll: true });
};

/** In the order in which they are asked for: a slow screen never overtakes a newer one. */
let turn = Promise.resolve();
const inTurn = (fresh) => {
  turn = turn.then(() => show(fresh));
  return turn;
};

const entering = () => main.contains(document.activeElement) && document.activeElement.matches('input, select');

/** What stands on the screen is shown anew; never under the hands of somebody who types into it. */
const mayRefresh = () => refreshes && !entering();

window.addEventListener('hashchange', () => {
  shown = location.hash;
  inTurn(true);
});
listen((what) => {
  if (what === 'entered') send();
  else if (mayRefresh()) inTurn(false);
});

const start = async () => {
  if (!window.isSecureContext) {
    main.replaceChildren(el('h1', {}, 'Field app'), alarm('The field app needs an address that begins with https.'));
    return;
  }
  await signedOut();
  navigator.storage?.persist?.();
  await paint();
  await inTurn(shown === '');
  lastTake = await takeAlong();
  await send();
  keepSending();
  keepTaking();
  if (lastTake.outcome !== 'ok' && lastTake.outcome !== 'unchanged') inTurn(false);
};

if ('serviceWorker' in navigator) {
  navigator.serviceWorker.register('/fitting/field/service-worker.js', { scope: '/fitting/field/' });
  navigator.serviceWorker.ready.then(() => {
    document.body.dataset.ready = 'yes';
    told('ready');
  });
}
start();
