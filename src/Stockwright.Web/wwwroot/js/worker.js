// The service worker: keeps one page for when there is no network, and what that page needs. Never the pages of batches, which would
// be out of date, and never anything that is sent. `version` is put on top by the server.

const store = `stockwright-${version}`;
const offline = "/offline";
const pagePatience = 12_000;
const partPatience = 5000;

self.addEventListener("install", event => {
  event.waitUntil(prepare().then(() => self.skipWaiting()));
});

async function prepare() {
  const page = await fetch(offline, { cache: "reload" });
  if (!page.ok) throw new Error("The offline page did not come.");
  const text = await page.clone().text();
  const parts = [...text.matchAll(/(?:href|src)="([^"]+\.(?:js|css|svg))"/g)].map(match => new URL(match[1], self.location.origin).href);
  const cache = await caches.open(store);
  await cache.addAll([...new Set(parts)].map(part => new Request(part, { cache: "no-cache" })));
  await cache.put(offline, page);
}

self.addEventListener("activate", event => {
  event.waitUntil((async () => {
    for (const name of await caches.keys()) {
      if (name.startsWith("stockwright-") && name !== store) await caches.delete(name);
    }
    await self.clients.claim();
  })());
});

self.addEventListener("fetch", event => {
  const { request } = event;
  if (request.method !== "GET" || new URL(request.url).origin !== self.location.origin) return;
  if (request.mode === "navigate") event.respondWith(page(request));
  else if (["script", "style", "image", "font"].includes(request.destination)) event.respondWith(part(request));
  else if (request.headers.get("Accept")?.includes("blazor-enhanced-nav")) event.respondWith(step(request));
});

async function page(request) {
  try {
    const answer = await within(fetch(request), pagePatience);
    // A proxy that finds no server behind it is no network either.
    return answer.status === 502 || answer.status === 504 ? await kept(offline) ?? answer : answer;
  } catch {
    return await kept(offline) ?? Response.error();
  }
}

async function part(request) {
  const known = await kept(request);
  if (!known) return fetch(request);
  try {
    const answer = await within(fetch(request), partPatience);
    return answer.ok || answer.status === 304 ? answer : known;
  } catch {
    return known;
  }
}

/** A link followed by the framework's own navigation: without a network it is told to load the whole page, which then is the offline one. */
async function step(request) {
  try {
    return await fetch(request);
  } catch {
    return new Response("", { headers: { "Content-Type": "text/plain" } });
  }
}

const kept = async what => (await caches.open(store)).match(what);

function within(promise, milliseconds) {
  return Promise.race([promise, new Promise((_, reject) => setTimeout(() => reject(new Error("too slow")), milliseconds))]);
}

self.addEventListener("notificationclick", event => {
  event.notification.close();
  event.waitUntil((async () => {
    const url = new URL(event.notification.data?.url ?? "/", self.location.origin).href;
    const pages = await self.clients.matchAll({ type: "window", includeUncontrolled: true });
    const open = pages.find(each => each.url.startsWith(url)) ?? pages[0];
    if (open) await open.focus();
    else await self.clients.openWindow(url);
  })());
});
