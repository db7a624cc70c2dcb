// Keeps the app's own files. What is about players is not here but in the app's database.
const CACHE = 'tapeline-field-' + BUILD;
const HOME = '/fitting/field/';
const SHARED = '/assets/';

self.addEventListener('install', (event) => {
  event.waitUntil(
    caches
      .open(CACHE)
      .then((cache) => cache.addAll(FILES.map((file) => new Request(file, { cache: 'reload' }))))
      .then(() => self.skipWaiting()),
  );
});

self.addEventListener('activate', (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) =>
        Promise.all(
          names
            .filter((name) => name.startsWith('tapeline-field-') && name !== CACHE)
            .map((name) => caches.delete(name)),
        ),
      )
      .then(() => self.clients.claim()),
  );
});

const newest = async (request, cache) => {
  const answer = await fetch(request, { cache: 'no-cache' });
  if (answer.ok) await cache.put(request, answer.clone());
  return answer;
};

const kept = async (request, path) => {
  const cache = await caches.open(CACHE);
  const page = request.mode === 'navigate' ? HOME + 'index.html' : path;
  const held = await cache.match(page);
  if (!held) return fetch(request);
  if (path.startsWith(SHARED)) newest(path, cache).catch(() => {});
  return held;
};

self.addEventListener('fetch', (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== 'GET' || url.origin !== self.location.origin) return;
  const own = event.request.mode === 'navigate' && url.pathname.startsWith(HOME);
  if (own || FILES.includes(url.pathname)) event.respondWith(kept(event.request, url.pathname));
});
