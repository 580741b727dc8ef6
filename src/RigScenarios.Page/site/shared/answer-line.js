// One line of the answer at the upper edge of a small window, while the answer itself is out of sight. It opens to all of it.
import { el } from "./parts.js";

/**
 * @param {{sight: HTMLElement, holder: HTMLElement, head: HTMLElement}} places `sight`: the whole answer; `holder`: keeps its
 * room in the page while it lies over it; `head`: what has to be seen of it, or the line comes
 */
export function makeAnswerLine({ sight, holder, head }) {
  const text = el("span", { class: "answer-line-text" });
  const line = el("button", { type: "button", class: "answer-line no-print", "aria-expanded": "false", "aria-controls": sight.id,
    hidden: true, onclick: () => setOpen(!isOpen()) }, text, el("span", { class: "answer-line-mark", "aria-hidden": "true" }));
  let isSeen = true;
  const isOpen = () => sight.classList.contains("is-open");
  const show = () => { line.hidden = holder.hidden || (isSeen && !isOpen()); };

  /** @param {boolean} toOpen */
  function setOpen(toOpen) {
    document.documentElement.style.setProperty("--rs-line-height", `${line.offsetHeight}px`);
    holder.style.minHeight = toOpen ? `${holder.offsetHeight}px` : "";
    sight.classList.toggle("is-open", toOpen);
    line.setAttribute("aria-expanded", String(toOpen));
    show();
  }

  // The sentence counts as seen where neither the window's edge nor the controls at its foot cover it.
  /** @type {IntersectionObserver | null} */
  let watch = null;
  /** @param {number} covered in pixels, of the window's lower edge */
  function follow(covered) {
    watch?.disconnect();
    watch = new IntersectionObserver(entries => {
      if (isOpen()) return;
      isSeen = (entries.at(-1)?.intersectionRatio ?? 0) > 0.98;
      show();
    }, { rootMargin: `0px 0px ${-covered}px 0px`, threshold: [0, 0.5, 0.99, 1] });
    watch.observe(mark);
  }
  // The height of a sentence or two, from where the answer begins.
  const mark = el("span", { class: "answer-line-seen", "aria-hidden": "true" });
  head.prepend(mark);
  follow(0);

  addEventListener("keydown", event => {
    if (event.key !== "Escape" || !isOpen() || event.defaultPrevented) return;
    setOpen(false);
    line.focus({ preventScroll: true });
  });
  addEventListener("pointerdown", event => {
    if (isOpen() && event.target instanceof Node && !sight.contains(event.target) && !line.contains(event.target)) setOpen(false);
  });

  return {
    element: line,
    /** The line's words, as markup that the program made from escaped text. @param {string} html */
    say(html) {
      if (text.innerHTML !== html) text.innerHTML = html;
      show();
    },
    /** So much of the window's lower edge is covered, in pixels. */
    follow,
  };
}
