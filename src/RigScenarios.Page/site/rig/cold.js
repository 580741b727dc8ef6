// How cold it is, what state the batteries are in and how many there are, where the camera plate is screwed on: each the value as
// text, with any unit, most with a slider beside it.
import { numberIn, withUnit } from "./words.js";

const dials = [
  { key: "ambient", unit: "°C" },
  { key: "start-temperature", unit: "°C" },
  { key: "charge", unit: "%" },
  { key: "capacity-left", unit: "%" },
  { key: "resistance-growth", unit: "" },
  { key: "slide-middle", unit: "mm" },
  { key: "battery-count", unit: "" },
  { key: "swap-at", unit: "%" },
  { key: "charger-bays", unit: "" },
  { key: "charger-current", unit: "A" },
  { key: "power-hours", unit: "" },
];

export function connectDials(draft) {
  for (const { key, unit } of dials) {
    const text = document.getElementById(key), slider = document.getElementById(`${key}-slider`);
    text.dataset.path = key;
    slider?.addEventListener("input", () => {
      text.value = withUnit(slider.value, unit);
      draft.set(key, text.value);
    });
    text.addEventListener("input", () => draft.set(key, withUnit(text.value, unit), false));
    text.addEventListener("change", () => { text.value = withUnit(text.value, unit); });
    draft.addEventListener("changed", () => {
      const value = draft.value[key] ?? "";
      if (document.activeElement !== text) text.value = value;
      if (!slider) return;
      const number = numberIn(value, unit);
      if (number !== null && document.activeElement !== slider) slider.value = number;
      slider.setAttribute("aria-valuetext", value || text.placeholder);
      slider.classList.toggle("open", value === "");
    });
  }
}
