// The part behind "#" is the page's state, so links within the page move the reader without touching it.
document.addEventListener("click", event => {
  const target = event.target.closest?.('a[href^="#"]');
  const place = target && document.getElementById(decodeURIComponent(target.getAttribute("href").slice(1)));
  if (!target) return;
  event.preventDefault();
  place?.scrollIntoView();
  place?.focus({ preventScroll: true });
});
