// All that the phone keeps, in one database: what it took along (held), the sessions, and what was
// entered in the order in which it was (queue). A change is made whole or not at all.
const NAME = 'tapeline-field';
const LETS_GO_MS = 5_000;
let opened;
let wiped = false;

const promised = (request) =>
  new Promise((done, failed) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => failed(request.error);
  });

const open = () => {
  opened ??= new Promise((done, failed) => {
    const request = indexedDB.open(NAME, 1);
    request.onupgradeneeded = () => {
      request.result.createObjectStore('held');
      request.result.createObjectStore('sessions', { keyPath: 'session' });
      request.result.createObjectStore('queue', { keyPath: 'seq', autoIncrement: true });
    };
    request.onsuccess = () => {
      // Another tab signs out: let go, so that everything can be wiped, and keep nothing new.
      request.result.onversionchange = () => {
        wiped = true;
        request.result.close();
        location.replace(location.pathname);
      };
      done(request.result);
    };
    request.onerror = () => failed(request.error);
  });
  return opened;
};

const table = (store) => ({
  get: (key) => promised(store.get(key)),
  all: () => promised(store.getAll()),
  put: (value, key) => promised(key === undefined ? store.put(value) : store.put(value, key)),
  add: (value) => promised(store.add(value)),
  remove: (key) => promised(store.delete(key)),
  clear: () => promised(store.clear()),
});

const within = async (mode, work) => {
  // Nobody gets an answer any more: what still runs must not begin a new database.
  if (wiped) return new Promise(() => {});
  const database = await open();
  const transaction = database.transaction(['held', 'sessions', 'queue'], mode, { durability: 'strict' });
  const finished = new Promise((done, failed) => {
    transaction.oncomplete = () => done();
    transaction.onabort = () => failed(transaction.error ?? new Error('Not stored'));
  });
  const tables = {
    held: table(transaction.objectStore('held')),
    sessions: table(transaction.objectStore('sessions')),
    queue: table(transaction.objectStore('queue')),
  };
  try {
    const result = await work(tables);
    await finished;
    return result;
  } catch (problem) {
    try {
      transaction.abort();
    } catch {
      // It ended already.
    }
    finished.catch(() => {});
    throw problem;
  }
};

export const read = (work) => within('readonly', work);
export const change = (work) => within('readwrite', work);

const emptied = () =>
  change(async ({ held, sessions, queue }) => {
    await Promise.all([held.clear(), sessions.clear(), queue.clear()]);
  });

/** Forgets everything of this device. What began before comes first, and nothing begins after. */
export const wipe = async () => {
  const empty = emptied();
  wiped = true;
  try {
    await empty;
  } catch (problem) {
    wiped = false;
    throw problem;
  }
  (await open()).close();
  opened = undefined;
  await new Promise((done) => {
    const request = indexedDB.deleteDatabase(NAME);
    request.onsuccess = request.onerror = () => done();
    // Another tab lets go as soon as it is told; one that never does keeps an empty database.
    request.onblocked = () => setTimeout(done, LETS_GO_MS);
  });
};
