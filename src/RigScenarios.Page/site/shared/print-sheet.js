// Prints a sheet out of the page that shows its answer: on a phone a saved file is hard to find and to print. The sheet stands in
// the page, on paper only, with its own style in a shadow tree of its own; the next doing of the reader takes it away again.
import { el } from "./parts.js";

const DOINGS = ["pointerdown", "keydown"];

// Of the page nothing is printed but the sheet, and its own margins hold. On the screen all stays as it is.
const AROUND = `
  @media screen { .printed-sheet { display: none; } }
  @media print {
    @page { size: auto; margin: 8mm; }
    html, body { background: #fff !important; }
    body > :not(.printed-sheet) { display: none !important; }
    .printed-sheet { display: block; color-scheme: light; }
  }`;

/** @param {string} html a sheet as the program made it, from escaped text */
export function printSheet(html) {
  document.querySelector(".printed-sheet")?.remove();
  const sheet = new DOMParser().parseFromString(html, "text/html"), host = el("div", { class: "printed-sheet" });
  const around = styleOf(AROUND), shadow = host.attachShadow({ mode: "open" });
  const body = el("div", { class: "sheet-body", style: sheet.body.getAttribute("style") });
  body.append(...sheet.body.childNodes);
  shadow.append(body);
  // A page's own style names its body; here the sheet stands in a box. What holds for paper as a whole stands with the page.
  shadow.adoptedStyleSheets = [styleOf([...sheet.querySelectorAll("style")].map(style => style.textContent).join("\n")
    .replace(/@page[^{]*\{[^}]*\}/g, "").replace(/(^|[\s,}])body(?=[\s,{])/g, "$1.sheet-body")
    .replace(/(^|[\s,}])html(?=[\s,{])/g, "$1.sheet-root"))];
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, around];
  document.body.append(host);
  const done = new AbortController();
  for (const doing of DOINGS) addEventListener(doing, () => {
    done.abort();
    host.remove();
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter(style => style !== around);
  }, { capture: true, signal: done.signal });
  window.print();
}

/** @param {string} text */
function styleOf(text) {
  const style = new CSSStyleSheet();
  style.replaceSync(text);
  return style;
}
