// The state of the queue, always in sight, and what windows tell each other.
import { read } from './store.js';

const channel = new BroadcastChannel('tapeline-field');
const listeners = new Set();
let line = 'starting';
let before = '';

export const listen = (work) => listeners.add(work);

/** Something changed in the database: here, and in other windows. */
export const told = (what) => {
  channel.postMessage(what);
  changed(what);
};

const changed = (what) => {
  paint();
  listeners.forEach((work) => work(what));
};
channel.addEventListener('message', (event) => changed(event.data));

/** How the line to the service is: ok, sending, no-signal, sign-in, other-fitter. */
export const say = (state) => {
  line = state.line;
  paint();
};

export const lineNow = () => line;

export const counted = () =>
  read(async ({ held, sessions, queue }) => {
    const entries = await queue.all();
    const waiting = entries.filter((e) => e.state === 'waiting');
    const conflicts = (await sessions.all()).filter((s) => s.conflict);
    return {
      waiting: waiting.length,
      conflicts: conflicts.length,
      fitter: waiting[0]?.fitter,
      held: await held.get('pack'),
    };
  });

const words = ({ waiting, conflicts, fitter }) => {
  if (conflicts > 0 && waiting === 0) return conflicts === 1 ? '1 needs you' : `${conflicts} need you`;
  const needs = conflicts > 0 ? `, ${conflicts} need you` : '';
  if (waiting === 0) return line === 'no-signal' ? 'All sent, no signal' : line === 'sign-in' ? 'Sign in' : 'All sent';
  if (line === 'sign-in') return `${waiting} waiting, sign in to send${needs}`;
  if (line === 'other-fitter') return `${waiting} waiting for ${fitter}${needs}`;
  if (line === 'no-signal') return `${waiting} waiting, no signal${needs}`;
  return `Sending ${waiting}${needs}`;
};

export const paint = async () => {
  const state = await counted();
  const text = words(state);
  const bar = document.getElementById('queue');
  bar.textContent = text;
  bar.className = 'button ' + (state.conflicts > 0 ? 'bad' : state.waiting > 0 || line !== 'ok' ? 'waits' : 'fine');
  // Read out only what matters: not each entry on its way.
  if (text !== before && !text.startsWith('Sending')) document.getElementById('told').textContent = text;
  before = text;
};
