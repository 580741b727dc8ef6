// The part behind "#" is the page's state, so links within the page move the reader without touching it.
import { around } from "./elements.js";

document.addEventListener("click", event => {
  const link = around(event, 'a[href^="#"]');
  if (!link) return;
  const place = document.getElementById(decodeURIComponent(link.getAttribute("href")?.slice(1) ?? ""));
  event.preventDefault();
  place?.scrollIntoView();
  place?.focus({ preventScroll: true });
});
