// Lets the browser keep this folder for use without a network, says so, and offers a newer version once all of it has come.
import { byId } from "../shared/elements.js";
import { el } from "../shared/parts.js";

/** @param {...(string | Node)} words */
const tell = (...words) => byId("offline-told").replaceChildren(...words);

// Not in the way of the first answer: the same files are on their way to it.
const QUIET = 3000;

async function keep() {
  if (!("serviceWorker" in navigator)) {
    tell(window.isSecureContext ? "This browser keeps no pages for use without a network."
      : "Opened like this, the browser keeps no pages for use without a network: for that it wants https, or a server on this "
        + "very device.");
    return;
  }
  const worker = navigator.serviceWorker, wasKept = worker.controller !== null;
  let isChanging = false;
  // All windows change together: a page of one version never loads a piece of another. What was entered is kept.
  worker.addEventListener("controllerchange", () => {
    if (!wasKept || isChanging) return;
    isChanging = true;
    location.reload();
  });
  try {
    const registration = await worker.register(new URL("../../offline.js", import.meta.url), { updateViaCache: "none" });
    if (registration.active) tell("Kept on this device: it works without a network.");
    watch(registration, registration.installing);
    registration.addEventListener("updatefound", () => watch(registration, registration.installing));
    if (registration.waiting && registration.active) offer(registration.waiting);
  } catch (error) {
    // Without a network there is nothing to register anew; the kept version goes on.
    if (!wasKept) tell(`The browser did not keep these pages for use without a network (${error.message}).`);
  }
}

/** @param {ServiceWorkerRegistration} registration @param {ServiceWorker | null} coming */
function watch(registration, coming) {
  if (!coming) return;
  const isFirst = !registration.active;
  coming.addEventListener("statechange", () => {
    if (coming.state === "installed" && !isFirst) offer(coming);
    if (coming.state === "activated" && isFirst) tell("Kept on this device: it works without a network.");
    if (coming.state === "redundant" && isFirst)
      tell("The browser could not keep these pages: a file did not come, or there is no room.");
  });
}

/** @param {ServiceWorker} coming */
function offer(coming) {
  tell("A newer version is here. ", el("button", { type: "button", onclick: () => coming.postMessage("use-now") },
    "Use it now"), " What you entered stays.");
}

setTimeout(keep, QUIET);
