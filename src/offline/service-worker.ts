import type { Said, Told } from "./told.ts";

/*
 * Keeps a whole copy of the program on the device and serves the page from it alone. It stands at the root of what is built, without
 * imports. A new build brings a new one of it, which puts its own files away beside the old ones and goes on serving the version that
 * was in use until somebody asks for the newer.
 */

declare const self: ServiceWorkerGlobalScope;
/** Each file of this build, by its path below the page, and the beginning of its SHA-256; the build writes it in front of this file. */
declare const built: readonly (readonly [path: string, hash: string])[];
/** Which build this is: made from all those. */
declare const version: string;

const { scope } = self.registration;
/** Several copies may live at one origin, in folders of their own. */
const mine = `leftwright ${scope} `;
const noted = `${mine}chosen`;
const nameOf = (one: string): string => `${mine}version ${one}`;

self.addEventListener("install", (event) => {
  event.waitUntil(fill().then(() => self.skipWaiting()));
});

self.addEventListener("activate", (event) => {
  event.waitUntil(activated());
});

self.addEventListener("message", (event) => {
  if (event.source instanceof Client) event.waitUntil(answered(event.source, event.data as Said));
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== "GET" || !url.href.startsWith(scope)) return;
  const path = url.pathname.slice(new URL(scope).pathname.length);
  if (request.mode === "navigate" && path !== "" && path !== "index.html") return;
  if (request.mode === "navigate") event.respondWith(opened(request));
  else event.respondWith(found(url.href).then((answer) => answer ?? fetch(request)));
});

/** The page itself: of a copy that is not whole only where there is no network, since its other files may be missing. */
async function opened(request: Request): Promise<Response> {
  const page = await found(scope);
  if (page === undefined) return fetch(request);
  return (await isWhole(await chosen())) ? page : fetch(request).catch(() => page);
}

/**
 * From the version in use; a page that is older than that finds its own files in its own version. The page itself comes from the one in
 * use or not at all.
 */
async function found(at: string): Promise<Response | undefined> {
  const inUse = await caches.open(nameOf((await chosen()).version));
  const answer = await inUse.match(at, { ignoreSearch: true });
  if (answer !== undefined || at === scope) return answer;
  for (const name of await versions()) {
    const older = await (await caches.open(name)).match(at);
    if (older !== undefined) return older;
  }
  return undefined;
}

/** Puts away what is not there yet. Rejects where a file does not come, or is not the one of this build: nothing half is ever used. */
async function fill(): Promise<void> {
  const own = await caches.open(nameOf(version));
  const there = new Set((await own.keys()).map(({ url }) => url));
  const missing = built.filter(([path]) => !there.has(new URL(path, scope).href));
  await Promise.all(
    missing.map(async ([path, hash]) => {
      const at = new URL(path, scope).href;
      await own.put(at, (await again(at, hash)) ?? (await fetched(at, hash)));
    }),
  );
}

/** The same file, where an older version has it. */
async function again(at: string, hash: string): Promise<Response | undefined> {
  for (const name of await versions()) {
    const older = await (await caches.open(name)).match(at);
    if (older && (await hashOf(await older.clone().arrayBuffer())) === hash) return older;
  }
  return undefined;
}

async function fetched(at: string, hash: string): Promise<Response> {
  const answer = await fetch(at, { cache: "no-cache" });
  const bytes = await answer.arrayBuffer();
  if (!answer.ok || (await hashOf(bytes)) !== hash) throw new Error(`${at} is not of this build`);
  const headers = new Headers(answer.headers);
  for (const name of ["content-encoding", "content-length"]) headers.delete(name);
  return new Response(bytes, { headers });
}

async function hashOf(bytes: ArrayBuffer): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return [...digest.subarray(0, 8)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

async function versions(): Promise<string[]> {
  return (await caches.keys()).filter((name) => name.startsWith(nameOf("")));
}

/** A build, and of how many files it is. */
interface Build {
  readonly version: string;
  readonly files: number;
}

const thisBuild: Build = { version, files: built.length };

const isWhole = async ({ version, files }: Build): Promise<boolean> =>
  (await (await caches.open(nameOf(version))).keys()).length >= files;

/** The build in use: the one that was chosen, as long as it is whole; else this one. */
async function chosen(): Promise<Build> {
  const note = await (await caches.open(noted)).match(scope);
  const one: Build = note ? await note.json() : thisBuild;
  return one.version !== version && (await isWhole(one)) ? one : thisBuild;
}

const choose = async (one: Build): Promise<void> =>
  (await caches.open(noted)).put(scope, Response.json(one));

/** Takes over as the one that serves; whatever version is in use stays so. */
async function activated(): Promise<void> {
  await choose(await chosen());
  await self.clients.claim();
  await tidy();
  for (const client of await self.clients.matchAll()) client.postMessage(await standing());
}

/** How it stands: whether what is in use is all here, and a newer version, which is offered once that is whole. */
async function standing(): Promise<Told> {
  const inUse = await chosen();
  return {
    kept: await isWhole(inUse),
    newer: inUse.version !== version && (await isWhole(thisBuild)),
  };
}

async function answered(client: Client, said: Said): Promise<void> {
  // What was thrown away meanwhile, as browsers do where space is short, is fetched again.
  const whole = await fill().then(
    () => true,
    () => false,
  );
  if (said === "here") await tidy();
  else if (whole) await choose(thisBuild);
  const told: Told = said === "take" && whole ? { taken: true } : await standing();
  client.postMessage(told);
}

/** Throws away what is neither in use nor the newest, unless another page may still want it, or a newer version is just coming. */
async function tidy(): Promise<void> {
  const pages = await self.clients.matchAll({ type: "window", includeUncontrolled: true });
  if (pages.length > 1 || self.registration.installing) return;
  const kept = [nameOf(version), nameOf((await chosen()).version)];
  for (const name of await versions()) if (!kept.includes(name)) await caches.delete(name);
}
