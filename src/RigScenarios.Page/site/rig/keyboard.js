// Which keyboard a phone brings up for a field: digits where a number is wanted, letters where words are.
import { el } from "../shared/parts.js";
import { numberIn } from "./words.js";

/** @typedef {{ key: string, example?: string, unit?: string, label: string }} Asked */

// Where a number is a count of something.
const counts = new Set(["battery-count", "charger-bays", "rented-days", "age-shoots"]);

// Where a number may be below zero. A keyboard of digits has no minus on every phone: a button beside the field has it.
const signed = new Set(["ambient", "start-temperature", "slide-middle", "age-place"]);

/**
 * The keyboard of a field that holds this text ("inputmode" of the HTML Living Standard). A bare number gets the field's unit, so
 * that digits are enough; who wrote another unit, or words, keeps the letters.
 * @param {Asked} asked
 * @param {string} text
 */
export function keyboardOf({ key, example = "", unit = "" }, text) {
  const wants = key === "starts" ? "numeric" : counts.has(key) ? "numeric"
    : (unit && numberIn(example || `0 ${unit}`, unit) !== null) || /^\d+\.\d+$/.test(example) ? "decimal" : "text";
  const isDigits = key === "starts" ? /^[\d:.]*$/.test(text) : text === "" || numberIn(text, unit) !== null;
  return wants !== "text" && isDigits ? wants : "text";
}

/** Whether the number of a field may be below zero. @param {string} key */
export function mayBeBelowZero(key) { return signed.has(key) || key.startsWith("place-"); }

/** The same number on the other side of zero, as it was written otherwise; null where there is none. @param {string} text */
export function turnedOver(text) {
  const trimmed = text.normalize("NFKC").trim();
  if (!/^[+\-−–]?\s*[\d.]*[1-9]/.test(trimmed)) return null;
  return /^[-−–]/.test(trimmed) ? trimmed.replace(/^[-−–]\s*/, "") : `-${trimmed.replace(/^\+\s*/, "")}`;
}

/**
 * The button beside a number that may be below zero; shown where a finger types.
 * @param {string} label of the field
 * @param {() => void} turn
 */
export function signButton(label, turn) {
  return el("button", { type: "button", class: "sign", "aria-label": `${label}: above or below zero`, onclick: turn }, "±");
}

/**
 * On a phone the key at the corner puts the keyboard away, and the verdict is seen; with a keyboard on the desk nothing is in the
 * way, and the focus stays.
 * @param {HTMLInputElement} input
 * @param {string} [key] what it says: "done", or "go" where it sends something
 */
export function closeWithEnter(input, key = "done") {
  input.setAttribute("enterkeyhint", key);
  if (key !== "done") return;
  input.addEventListener("keydown", (event) => {
    if (event.key === "Enter" && !event.defaultPrevented && matchMedia("(pointer: coarse)").matches) input.blur();
  });
}
