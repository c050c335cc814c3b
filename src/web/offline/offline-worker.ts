/// <reference lib="webworker" />

/** Written in by the build: a name for this version, and the files it is made of. */
declare const pageVersion: string;
declare const pageFiles: readonly string[];
declare const self: ServiceWorkerGlobalScope;

const prefix = "skiffloom-page-";
const own = `${prefix}${pageVersion}`;

self.addEventListener("install", (event) => event.waitUntil(fetchAll()));
self.addEventListener("activate", (event) => event.waitUntil(takeOver()));
self.addEventListener("message", ({ data }) => {
  if (data === "take over") void self.skipWaiting();
});
self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || new URL(request.url).origin !== self.location.origin) return;
  event.respondWith(answer(request));
});

async function fetchAll(): Promise<void> {
  const cache = await caches.open(own);
  await cache.addAll(pageFiles.map((file) => new Request(file, { cache: "reload" })));
}

/** The version before stays until the next one: a tab that still runs it may yet ask for a part of it. */
async function takeOver(): Promise<void> {
  const names = (await caches.keys()).filter((name) => name.startsWith(prefix) && name !== own);
  await Promise.all(names.slice(0, -1).map((name) => caches.delete(name)));
  await self.clients.claim();
}

async function answer(request: Request): Promise<Response> {
  const cache = await caches.open(own);
  if (request.mode === "navigate") return (await cache.match("./index.html")) ?? fetch(request);
  return (await cache.match(request)) ?? (await caches.match(request)) ?? fetch(request);
}
