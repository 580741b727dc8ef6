// A box that scrolls must be reachable by keyboard; one that does not would only be a stop in the way.

/** @type {WeakMap<Element, { box: HTMLElement, nameOf: () => string }>} */
const watched = new WeakMap();

const watch = new ResizeObserver(entries => {
  for (const { target } of entries) mark(watched.get(target));
});

/**
 * Keeps a box in the order of the Tab key for as long as it scrolls. What is in it may grow; that its children are others later
 * is not seen.
 * @param {HTMLElement} box
 * @param {() => string} nameOf the box's name for a screen reader
 */
export function keepReachable(box, nameOf) {
  for (const element of [box, ...box.children]) {
    watched.set(element, { box, nameOf });
    watch.observe(element);
  }
}

/** @param {{ box: HTMLElement, nameOf: () => string } | undefined} one */
function mark(one) {
  if (!one) return;
  const { box, nameOf } = one;
  if (box.scrollWidth > box.clientWidth + 1 || box.scrollHeight > box.clientHeight + 1) {
    box.tabIndex = 0;
    box.setAttribute("role", "group");
    box.setAttribute("aria-label", nameOf());
  } else {
    for (const name of ["tabindex", "role", "aria-label"]) box.removeAttribute(name);
  }
}
