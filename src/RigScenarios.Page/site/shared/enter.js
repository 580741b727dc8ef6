// The first page of a start: keeps the page's key where the browser shows it to pages of this very address alone, its port
// included, and goes on without any key in the address. What stands behind the "#" goes along.
(() => {
  /** @param {string} name */
  const said = name => document.querySelector(`meta[name="${name}"]`)?.getAttribute("content") ?? "";
  localStorage.setItem("rig-key", said("rig-key"));
  const next = new URL(said("rig-next"), location.origin);
  next.hash = location.hash;
  if (next.origin === location.origin) location.replace(next.href);
})();
