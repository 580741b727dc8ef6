// Day and night. Loaded in the head as a plain script, so that the page never flashes white before it turns dark.
(() => {
  const KEY = "rig-theme", root = document.documentElement;

  function stored() {
    try { return localStorage.getItem(KEY); } catch { return null; }
  }

  /** @param {string} theme */
  function use(theme) {
    root.dataset.theme = theme;
    const meta = document.querySelector('meta[name="color-scheme"]');
    meta?.setAttribute("content", theme === "night" ? "dark" : "light");
    // The button says what pressing it does, not what is.
    for (const button of document.querySelectorAll("[data-theme-button]")) {
      button.textContent = theme === "night" ? "Day" : "Night";
      button.setAttribute("title", theme === "night" ? "Light page for daylight" : "Dark page for a dark set");
    }
    dispatchEvent(new CustomEvent("rs-theme", { detail: { theme } }));
  }

  function preferred() {
    return stored() || (matchMedia("(prefers-color-scheme: dark)").matches ? "night" : "day");
  }

  use(preferred());
  document.addEventListener("DOMContentLoaded", () => use(root.dataset.theme ?? preferred()));
  document.addEventListener("click", event => {
    if (!(event.target instanceof Element) || !event.target.closest("[data-theme-button]")) return;
    const theme = root.dataset.theme === "night" ? "day" : "night";
    try { localStorage.setItem(KEY, theme); } catch { /* A browser that keeps nothing still gets its dark page. */ }
    use(theme);
  });
  // Another page of ours changed it.
  addEventListener("storage", event => { if (event.key === KEY) use(preferred()); });
})();
