// Questions and messages in a dialog of the page's own: keyboard, Escape and the focus afterwards are the browser's.
import { el } from "../shared/parts.js";

/**
 * Asks something. `fields`: [{name, label, value, help}] one-line texts; `actions`: [{value, label, primary}] besides "Cancel".
 * Gives {action, values}, or null when the reader turned away. `check(action, values)` may give (a promise of) words that say
 * what is wrong; then the dialog stays open and shows them.
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
    let answer = null;
    form.addEventListener("submit", async event => {
      event.preventDefault();
      const action = event.submitter?.value ?? actions[0]?.value;
      const values = Object.fromEntries(fields.map((field, i) => [field.name, inputs[i].value.trim()]));
      const problem = check ? await check(action, values) : null;
      if (problem) {
        wrong.textContent = problem;
        wrong.hidden = false;
        return;
      }
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

/** Tells something and waits until it is put away. */
export function tell(title, text) {
  return ask({ title, text, cancel: null });
}

let asked = 0;

/** Copies an address; where the browser does not allow it, shows it to be copied by hand. Gives whether it was copied. */
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
