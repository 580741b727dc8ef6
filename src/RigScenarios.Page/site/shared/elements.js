// Finding elements of the page.

/**
 * The element with this id. The page has it: anything else is a mistake in the page, and is said as one.
 * @template {HTMLElement} [T=HTMLElement]
 * @param {string} id
 * @param {new () => T} [kind]
 * @returns {T}
 */
export function byId(id, kind) {
  const element = document.getElementById(id);
  if (!element || (kind && !(element instanceof kind))) throw new Error(`The page has no ${kind?.name ?? "element"} "${id}".`);
  return /** @type {T} */ (element);
}

/**
 * The nearest element around an event's target that a selector names; null for none, and where the target is no element.
 * @param {Event} event
 * @param {string} selector
 * @returns {HTMLElement | null}
 */
export function around(event, selector) {
  return event.target instanceof Element ? event.target.closest(selector) : null;
}
