/** Keeps the page on the phone, whole, so that it opens with no network at all. It knows nothing of sets or plans. */
declare const self: ServiceWorkerGlobalScope;
/** Files of the page, and what they hold as one hash: put in by the build. */
declare const FILES: readonly string[];
declare const VERSION: string;

const PREFIX = "stave-floor-";
const NAME = PREFIX + VERSION;
const SHELL = "index.html";

self.addEventListener("install", (event) => {
  const fresh = FILES.map((file) => new Request(file, { cache: "reload" }));
  event.waitUntil(caches.open(NAME).then((cache) => cache.addAll(fresh)));
});

self.addEventListener("activate", (event) => {
  const old = (names: readonly string[]) => names.filter((name) => name.startsWith(PREFIX) && name !== NAME);
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(old(names).map((name) => caches.delete(name))))
      .then(() => self.clients.claim()),
  );
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || !request.url.startsWith(self.registration.scope)) return;
  const wanted = request.mode === "navigate" ? SHELL : request;
  event.respondWith(
    caches
      .open(NAME)
      .then((cache) => cache.match(wanted, { ignoreSearch: true }))
      .then((kept) => kept ?? fetch(request)),
  );
});

export {};
