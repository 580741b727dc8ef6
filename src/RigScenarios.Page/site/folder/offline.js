// Keeps this folder for use without a network. The files of one version are kept as a whole: each is checked against its mark
// when it comes, an older version stays in use until all of the new one is here, and then goes as a whole.

const MARK = "/* mark */";
/** The files by their paths, with their marks. @type {Record<string, string>} */
const FILES = {/* files */};

/** @type {any} What types say of `self` is of a page. */
const worker = self;
// Other folders of the same server keep their own.
const OURS = `rigscenarios ${worker.registration.scope} `;
const STORE = OURS + MARK;
const AT_ONCE = 6;

worker.addEventListener("install", (/** @type {any} */ event) => event.waitUntil(keepAll()));
worker.addEventListener("activate", (/** @type {any} */ event) => event.waitUntil(forgetOthers()));
worker.addEventListener("fetch", (/** @type {any} */ event) => {
  const answer = answerTo(event.request);
  if (answer) event.respondWith(answer);
});
// A page asks for it when its reader wants the new version now.
worker.addEventListener("message", (/** @type {MessageEvent} */ { data }) => { if (data === "use-now") worker.skipWaiting(); });

async function keepAll() {
  const store = await caches.open(STORE), names = Object.keys(FILES);
  try {
    await Promise.all(Array.from({ length: AT_ONCE }, async () => {
      for (let name = names.pop(); name !== undefined; name = names.pop())
        await store.put(addressOf(name), await fetched(name));
    }));
  } catch (error) {
    await caches.delete(STORE);
    throw error;
  }
}

/**
 * A file that is what the list says. What the browser has already is taken, unless it is of another version.
 * @param {string} name
 */
async function fetched(name) {
  const integrity = FILES[name];
  const ask = (/** @type {RequestCache} */ cache) => fetch(addressOf(name), { integrity, cache, credentials: "same-origin" });
  const came = await ask("default").catch(() => ask("reload"));
  if (!came.ok) throw new Error(`${name}: ${came.status}`);
  // Some servers lead from one name to another; what was led there may not answer for a page.
  return new Response(await came.blob(), { headers: headersOf(name, came) });
}

// A worker has no page whose policy holds for it.
/** @param {string} name @param {Response} came */
function headersOf(name, came) {
  const headers = new Headers({ "Content-Type": typeOf(name) ?? came.headers.get("Content-Type") ?? "application/octet-stream" });
  if (name.endsWith(".js")) headers.set("Content-Security-Policy",
    "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; connect-src 'self'; worker-src 'self'");
  return headers;
}

/** @param {string} name */
function typeOf(name) {
  if (name.endsWith(".js")) return "text/javascript";
  if (name.endsWith(".wasm")) return "application/wasm";
  if (name.endsWith(".html")) return "text/html; charset=utf-8";
  return null;
}

/** @param {string} name */
function addressOf(name) {
  return new URL(name.split("/").map(encodeURIComponent).join("/"), worker.registration.scope).href;
}

/** @param {Request} request @returns {Promise<Response> | null} */
function answerTo(request) {
  const address = new URL(request.url);
  if (request.method !== "GET" || !address.href.startsWith(worker.registration.scope)) return null;
  address.search = address.hash = "";
  const name = decodeURIComponent(address.href.slice(worker.registration.scope.length));
  const known = [name, name === "" ? "index.html" : `${name}.html`].find(one => Object.hasOwn(FILES, one));
  return known === undefined ? null : kept(known, request);
}

/** @param {string} name @param {Request} request */
async function kept(name, request) {
  const store = await caches.open(STORE);
  return await store.match(addressOf(name)) ?? fetch(request);
}

async function forgetOthers() {
  const names = await caches.keys();
  await Promise.all(names.filter(name => name.startsWith(OURS) && name !== STORE).map(name => caches.delete(name)));
}
