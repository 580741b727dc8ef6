// Day and night. Loaded in the head as a plain script, so that the page never flashes white before it turns dark.
(function () {
  "use strict";
  var KEY = "rig-theme", root = document.documentElement;

  function stored() {
    try { return localStorage.getItem(KEY); } catch { return null; }
  }

  function use(theme) {
    root.dataset.theme = theme;
    var meta = document.querySelector('meta[name="color-scheme"]');
    if (meta) meta.content = theme === "night" ? "dark" : "light";
    // The button says what pressing it does, not what is.
    document.querySelectorAll("[data-theme-button]").forEach(function (button) {
      button.textContent = theme === "night" ? "Day" : "Night";
      button.title = theme === "night" ? "Light page for daylight" : "Dark page for a dark set";
    });
    window.dispatchEvent(new CustomEvent("rs-theme", { detail: { theme: theme } }));
  }

  function preferred() {
    return stored() || (matchMedia("(prefers-color-scheme: dark)").matches ? "night" : "day");
  }

  use(preferred());
  document.addEventListener("DOMContentLoaded", function () { use(root.dataset.theme); });
  document.addEventListener("click", function (event) {
    if (!event.target.closest || !event.target.closest("[data-theme-button]")) return;
    var theme = root.dataset.theme === "night" ? "day" : "night";
    try { localStorage.setItem(KEY, theme); } catch { /* A browser that keeps nothing still gets its dark page. */ }
    use(theme);
  });
  // Another page of ours changed it.
  window.addEventListener("storage", function (event) { if (event.key === KEY) use(preferred()); });
})();
