// The notebook as an article: its prose, and for each code cell what it shows, in one version or in two beside each other.
import { drawFigures, el, showParts } from "../shared/parts.js";

/** `decorate(container)` is told whenever what a version shows in a cell has changed. */
export function makeArticle(root, notebook, strip, decorate) {
  const cells = new Map();
  let hasStrip = false;
  const children = [];
  for (const cell of notebook.cells) {
    if (cell.kind === "prose") {
      const prose = el("div", { class: "prose" });
      prose.innerHTML = cell.html;
      mendLinks(prose);
      children.push(prose);
      continue;
    }
    if (cell.isParameters) {
      children.push(strip);
      hasStrip = true;
    }
    if (cell.isStart) continue;
    const made = makeCell(cell);
    cells.set(cell.number, made);
    children.push(made.element);
  }
  // A notebook with nothing to change can still be saved and linked to.
  if (!hasStrip) children.splice(Math.min(1, children.length), 0, strip);
  root.replaceChildren(...children);

  const seen = new Set();
  const watch = new IntersectionObserver(entries => {
    for (const { target, isIntersecting } of entries) seen[isIntersecting ? "add" : "delete"](Number(target.dataset.cell));
  });
  for (const cell of cells.values()) watch.observe(cell.element);

  const version = (number, name) => cells.get(number)?.versions[name];
  return {
    /** The numbers of the cells on the screen. */
    inSight: () => [...seen],
    /** What a version shows in a cell. Only data; `draw` draws the charts. */
    show(number, name, parts) {
      const place = version(number, name);
      if (!place) return;
      showParts(place.shown, parts);
      place.box.classList.remove("is-renewed", "is-old");
      place.failed.hidden = true;
      place.bar.hidden = true;
      cells.get(number).element.classList.toggle("has-shown",
        [...cells.get(number).element.querySelectorAll(".shown")].some(shown => shown.childElementCount > 0));
      decorate(place.shown);
    },
    draw: async onlyVisible => { await drawFigures(root, onlyVisible); },
    hasWaiting: () => [...root.querySelectorAll(".rs-chart")].some(chart => chart.rsWaiting && chart.clientWidth > 0),
    progress(number, name, fraction, text) {
      const place = version(number, name);
      if (!place) return;
      place.box.classList.add("is-renewed");
      place.bar.hidden = fraction === 0 && !text;
      place.bar.firstElementChild.value = fraction;
      place.bar.lastElementChild.textContent = text;
    },
    /** Marks what is about to change: the cells named, or all where it isn't known. */
    renewing(name, numbers) {
      for (const [number, cell] of cells) if (!numbers || numbers.has(number))
        cell.versions[name].box.classList.add("is-renewed");
    },
    /** Nothing is being renewed any more. `isCutShort`: what was waiting for it stays as it was before, and is marked so. */
    settled(name, isCutShort = false) {
      for (const cell of cells.values()) {
        const { classList } = cell.versions[name].box;
        if (isCutShort && classList.contains("is-renewed")) classList.add("is-old");
        classList.remove("is-renewed");
        cell.versions[name].bar.hidden = true;
      }
    },
    /** A cell stopped: says why, where it stands. What comes after it still shows what was there before, and is marked so. */
    failed(number, name, text, line) {
      for (const [other, cell] of cells) {
        const { classList } = cell.versions[name].box;
        classList.toggle("is-old", other === number || (other > number && classList.contains("is-renewed")));
        cell.versions[name].failed.hidden = true;
      }
      const place = version(number, name);
      if (!place) return false;
      const hasLater = [...cells].some(([other, cell]) => other >= number && cell.versions[name].shown.childElementCount > 0);
      place.failed.replaceChildren(
        el("strong", {}, "This could not be computed. "), text, line ? ` (The code behind it, line ${line}.)` : "",
        hasLater ? " What is shown from here on is from before." : "");
      place.failed.hidden = false;
      return true;
    },
    mended(name) {
      for (const cell of cells.values()) {
        cell.versions[name].box.classList.remove("is-old");
        cell.versions[name].failed.hidden = true;
      }
    },
    setPinned(isPinned) {
      root.classList.toggle("has-pinned", isPinned);
      for (const cell of cells.values()) {
        cell.versions.pinned.box.hidden = !isPinned;
        if (!isPinned) showParts(cell.versions.pinned.shown, []);
      }
    },
    /** Heads the two versions with what sets them apart. */
    nameVersions(pinnedWords, nowWords) {
      for (const cell of cells.values()) {
        cell.versions.pinned.name.textContent = pinnedWords ? `Pinned: ${pinnedWords}` : "Pinned";
        cell.versions.now.name.textContent = nowWords ? `Now: ${nowWords}` : "Now";
      }
    },
    /** Gives the pinned version what is shown now, until the server has run it: no gap for the eye. */
    copyToPinned() {
      for (const cell of cells.values()) {
        showParts(cell.versions.pinned.shown, [...cell.versions.now.shown.children].map(child => child.rsPart));
        decorate(cell.versions.pinned.shown);
      }
    },
    answers: name => [...cells.values()].flatMap(cell => [...cell.versions[name].shown.children].map(child => child.rsPart)
      .filter(part => part?.type === "answer")),
    shown: name => [...cells.values()].flatMap(cell => [...cell.versions[name].shown.children]),
  };
}

function makeCell(cell) {
  const versions = {};
  for (const [name, title] of [["pinned", "Pinned"], ["now", "Now"]]) {
    const shown = el("div", { class: "shown" });
    const bar = el("div", { class: "cell-progress", hidden: true },
      el("progress", { max: "1", value: "0", "aria-label": "How far this part has come" }), el("span"));
    const failed = el("p", { class: "problem", role: "alert", hidden: true });
    const heading = el("p", { class: "version-name", id: `${name}-${cell.number}` }, title);
    const box = el("div", { class: `version version-${name}`, role: "group", "aria-labelledby": heading.id,
      hidden: name === "pinned" }, heading, failed, bar, shown);
    versions[name] = { box, shown, bar, failed, name: heading };
  }
  const element = el("section", { class: "cell", "data-cell": cell.number },
    el("div", { class: "versions" }, versions.pinned.box, versions.now.box),
    el("details", { class: "rs-code" }, el("summary", {}, "The code behind it"),
      el("pre", { tabindex: "0" }, el("code", {}, cell.code.trimEnd()))));
  return { element, versions };
}

// Notebooks refer to each other as pages that lie side by side; here they are all on the shelf.
function mendLinks(prose) {
  for (const link of prose.querySelectorAll("a[href]")) {
    const other = /^(?:\.\/)?([^/:?#]+)\.(?:html|ipynb)(#.*)?$/.exec(link.getAttribute("href"));
    if (other) link.setAttribute("href", `/n/${other[1]}`);
    else if (/^https?:/.test(link.getAttribute("href"))) { link.target = "_blank"; link.rel = "noopener noreferrer"; }
  }
}
