// Questions whose answer is more than one figure of the file: how many batteries there are, how many bays the charger has, how
// the batteries travel. Each change of them is asked for.
import { at, textAt } from "./tree.js";

/** @typedef {{ read: () => string, write: (text: string, isSettled: boolean) => void, isShown?: () => boolean }} AskedField */

const pause = 250;

/** What is asked. Their paths are places of the form, not of the file. @type {import("./field.js").Asked[]} */
export const askedQuestions = [
  { key: "battery-count", path: "asked.battery-count", label: "How many batteries", example: "3",
    help: "All of the kind on the rig, charged as it is. Leave it open if one is all you want to know about." },
  { key: "charger-bays", path: "asked.charger-bays", label: "Bays of the charger", example: "2",
    help: "How many batteries it takes at once. Leave it open if nothing is charged during the day." },
];

/**
 * How these fields read and write, by their keys.
 * @param {import("./state.js").Rig} rig
 * @returns {{ [key: string]: AskedField }}
 */
export function askedFields(rig) {
  return {
    "battery-count": {
      read: () => String(Object.keys(at(rig.given, "batteries") ?? {}).length || ""),
      write: asking(rig, "how many batteries", (text) => {
        const count = text.normalize("NFKC").trim();
        return /^([1-9]|1\d|20)?$/.test(count) ? { do: "batteries", count }
          : rig.refuse({ text: `Found “${text}”.`, accepted: "a whole number, 1 to 20" }, { do: "batteries" });
      }),
    },
    "charger-bays": {
      read: () => rig.text(rig.view.charger ? `chargers.${rig.view.charger}.bays` : null),
      write: asking(rig, "bays of the charger", (bays) => ({ do: "charger", bays })),
    },
    // The first journey of the file is the one that is shown; what else it says stays.
    "journey-by": {
      read: () => journeyOf(rig).by,
      write: asking(rig, "how the batteries travel", (by) => ({ do: "journey", by, travellers: journeyOf(rig).travellers })),
    },
    "journey-travellers": {
      read: () => journeyOf(rig).travellers,
      write: asking(rig, "how many people carry them", (travellers) => ({ do: "journey", by: journeyOf(rig).by, travellers })),
      isShown: () => journeyOf(rig).by.includes("flight"),
    },
  };
}

/** Where it is told that an edit was refused. @param {any} edit */
export function fieldOfEdit(edit) {
  /** @type {{ [kind: string]: string }} */
  const fields = { batteries: "asked.battery-count", charger: "asked.charger-bays", journey: "asked.journey-by" };
  return fields[edit.do] ?? (edit.thing ? `kit.${edit.thing}` : edit.question ? `missing.${edit.question}` : "");
}

/** @param {import("./state.js").Rig} rig */
function journeyOf(rig) {
  const journey = Object.values(at(rig.given, "journeys") ?? {})[0];
  return { by: journey ? textAt(journey, "by") || "flight" : "", travellers: textAt(journey, "travellers") };
}

// While a number is typed it is asked for after a moment; all that is typed in one field is one step.
/**
 * @param {import("./state.js").Rig} rig
 * @param {string} name
 * @param {(text: string) => { [name: string]: any } | null} editOf
 */
function asking(rig, name, editOf) {
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer;
  return (/** @type {string} */ text, /** @type {boolean} */ isSettled) => {
    clearTimeout(timer);
    const ask = () => {
      const edit = editOf(text);
      if (edit) rig.edit(edit, { name, key: `asked ${name}` });
    };
    if (isSettled) ask(); else timer = setTimeout(ask, pause);
  };
}
