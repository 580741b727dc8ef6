// Questions and messages in a dialog of the page's own: keyboard, Escape and the focus afterwards are the browser's.
import { el } from "../shared/parts.js";

/**
 * `fields`: one-line texts; `actions`: buttons besides "Cancel". `check` may give words that say what is wrong; then the dialog
 * stays open and shows them.
 * @typedef {{ title: string, text?: string, content?: Node | null,
 *   fields?: { name: string, label: string, value?: string, help?: string }[],
 *   actions?: { value: string, label: string, primary?: boolean }[], cancel?: string | null,
 *   check?: (action: string, values: Record<string, string>) => Promise<string | null> }} Question
 */

/** @typedef {{ action: string, values: Record<string, string> }} Answer */

let asked = 0;

/**
 * Asks something; gives null when the reader turned away.
 * @param {Question} question
 * @returns {Promise<Answer | null>}
 */
export function ask({ title, text, content, fields = [], actions = [{ value: "ok", label: "OK", primary: true }],
  cancel = "Cancel", check }) {
  const number = ++asked;
  const inputs = fields.map(field => el("input",
    { type: "text", id: `ask-${number}-${field.name}`, value: field.value ?? "", autocomplete: "off", spellcheck: "false" }));
  const wrong = el("p", { class: "problem", role: "alert", hidden: true });
  const form = el("form", { class: "dialog-body" },
    el("h2", { id: `ask-${number}` }, title),
    text ? el("p", {}, text) : null,
    content ?? null,
    fields.map((field, i) => el("p", { class: "field" },
      el("label", { for: inputs[i].id }, field.label), inputs[i], field.help ? el("span", { class: "help" }, field.help) : null)),
    wrong,
    el("p", { class: "actions" },
      actions.map(action => el("button", { type: "submit", value: action.value, class: action.primary ? "primary" : "" },
        action.label)),
      cancel ? el("button", { type: "button", class: "quiet", onclick: () => dialog.close() }, cancel) : null));
  const dialog = el("dialog", { "aria-labelledby": `ask-${number}` }, form);
  return new Promise(resolve => {
    /** @type {Answer | null} */
    let answer = null;
    form.addEventListener("submit", async event => {
      event.preventDefault();
      const action = event.submitter instanceof HTMLButtonElement ? event.submitter.value : actions[0]?.value ?? "";
      const values = Object.fromEntries(fields.map((field, i) => [field.name, inputs[i].value.trim()]));
      wrong.textContent = check ? await check(action, values) : "";
      wrong.hidden = !wrong.textContent;
      if (!wrong.hidden) return;
      answer = { action, values };
      dialog.close();
    });
    dialog.addEventListener("click", event => { if (event.target === dialog) dialog.close(); });
    dialog.addEventListener("close", () => { dialog.remove(); resolve(answer); });
    document.body.append(dialog);
    dialog.showModal();
    inputs[0]?.select();
  });
}

/** Copies an address; where the browser does not allow it, shows it to be copied by hand. Gives whether it was copied.
 * @param {string} address */
export async function copyLink(address) {
  try {
    await navigator.clipboard.writeText(address);
    return true;
  } catch {
    await ask({ title: "The link to this state", text: "Copy it from here.",
      fields: [{ name: "link", label: "Link", value: address }], actions: [], cancel: "Close" });
    return false;
  }
}
