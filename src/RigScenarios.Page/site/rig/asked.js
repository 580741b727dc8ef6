// Fields whose text is more than one figure of the file: how many batteries there are, how many bays the charger has. Each change
// of them is asked for.
import { at } from "./tree.js";

const pause = 250;

/**
 * How these fields read and write, by their keys.
 * @param {import("./state.js").Rig} rig
 */
export function askedFields(rig) {
  return {
    "battery-count": {
      read: () => String(Object.keys(at(rig.given, "batteries") ?? {}).length || ""),
      write: asking(rig, "how many batteries", (count) => ({ do: "batteries", count })),
    },
    "charger-bays": {
      read: () => rig.text(rig.view.charger ? `chargers.${rig.view.charger}.bays` : null),
      write: asking(rig, "bays of the charger", (bays) => ({ do: "charger", bays })),
    },
  };
}

// While a number is typed it is asked for after a moment; all that is typed in one field is one step.
/**
 * @param {import("./state.js").Rig} rig
 * @param {string} name
 * @param {(text: string) => { [name: string]: any }} editOf
 */
function asking(rig, name, editOf) {
  let timer = 0;
  return (/** @type {string} */ text, /** @type {boolean} */ isSettled) => {
    clearTimeout(timer);
    const ask = () => rig.edit(editOf(text), { name, key: `asked ${name}` });
    if (isSettled) ask(); else timer = setTimeout(ask, pause);
  };
}
