// Moving parts in a drawing, with a pointer or with the keyboard. What is moved follows at once; the server's drawing of it comes
// after.
import { inMillimetres } from "./places.js";

/**
 * Lets the reader move parts in the drawings within `root`. `allows(part)`: whether this part (a `g.rs-move`) may be moved here.
 * `move(part, millimetres, at, isSettled)` is told where the reader wants it; `at` is when the reader did it. Members: arm(),
 * settled().
 */
export function makeMoving(root, { allows, move }) {
  // Where parts are wanted that the drawings may not show yet.
  const wanted = new Map();
  let drag = null, held = null;

  const at = part => wanted.get(part.dataset.part) ?? Number(part.dataset.at) * 1000;
  const ends = part => [Number(part.dataset.least) * 1000, Number(part.dataset.greatest) * 1000];
  const vectorOf = part => part.dataset.move.split(",").map(Number);
  const time = event => performance.now() - Math.max(0, Math.min(1000, performance.now() - event.timeStamp));

  function arm() {
    for (const sheet of root.querySelectorAll(".rs-sheet")) armSheet(sheet);
  }

  function armSheet(sheet) {
    for (const part of sheet.querySelectorAll(".rs-move:not(.rs-can-move)")) {
      if (!allows(part)) continue;
      const [least, greatest] = ends(part);
      part.classList.add("rs-can-move");
      // One stop for the Tab key a part; the view from above moves with the same keys when it is clicked.
      const isSide = part.closest("[data-view]").dataset.view === "side";
      for (const [name, value] of Object.entries({ tabindex: isSide ? 0 : -1, role: "slider", "aria-valuemin": round(least),
        "aria-valuemax": round(greatest), "aria-label": `${part.dataset.words}: how far forward on its mount` }))
        part.setAttribute(name, value);
      part.ownerSVGElement.setAttribute("role", "group");
    }
    show(sheet);
  }

  // Shifts what is moved, and all that hangs on it, from where the server drew it to where it is wanted.
  function show(sheet) {
    for (const view of sheet.querySelectorAll("[data-view]")) {
      const parts = new Map([...view.querySelectorAll(".rs-part")].map(part => [part.dataset.part, part]));
      const shiftOf = name => {
        let x = 0, y = 0;
        for (let next = parts.get(name), steps = 0; next && steps < parts.size; next = parts.get(next.dataset.on), steps++) {
          if (!next.dataset.move || !wanted.has(next.dataset.part)) continue;
          const [dx, dy] = vectorOf(next), metres = wanted.get(next.dataset.part) / 1000 - Number(next.dataset.at);
          x += dx * metres;
          y += dy * metres;
        }
        return [x, y];
      };
      for (const element of view.querySelectorAll(".rs-part, .rs-label, .rs-rail")) {
        // A part's own rail stays where it is; only with what carries the part it goes along.
        const { part, label, rail } = element.dataset;
        const [x, y] = shiftOf(part ?? label ?? parts.get(rail)?.dataset.on);
        if (Math.abs(x) + Math.abs(y) > 0.01) element.setAttribute("transform", `translate(${x.toFixed(2)} ${y.toFixed(2)})`);
        else element.removeAttribute("transform");
      }
      for (const part of parts.values()) {
        if (!part.classList.contains("rs-can-move")) continue;
        part.setAttribute("aria-valuenow", round(at(part)));
        part.setAttribute("aria-valuetext", inMillimetres(at(part)).replace("\u2212", "minus "));
      }
    }
  }

  function showAll() {
    for (const sheet of root.querySelectorAll(".rs-sheet")) if (sheet.querySelector(".rs-can-move")) show(sheet);
  }

  function want(part, millimetres, event, isSettled) {
    wanted.set(part.dataset.part, millimetres);
    showAll();
    move(part, millimetres, time(event), isSettled);
  }

  // Whole millimetres, but the ends as they are.
  function within(part, millimetres) {
    const [least, greatest] = ends(part);
    return Math.min(greatest, Math.max(least, Math.round(millimetres)));
  }

  root.addEventListener("pointerdown", event => {
    const part = event.target.closest?.(".rs-can-move");
    if (!part || drag || event.button !== 0 || !event.isPrimary) return;
    const [x, y] = vectorOf(part), scale = part.ownerSVGElement.getScreenCTM()?.a;
    if (!scale || x * x + y * y < 1) return;
    const sheet = part.closest(".rs-sheet");
    // The sheet stays when its drawing is renewed under the pointer; the part does not.
    sheet.setPointerCapture(event.pointerId);
    event.preventDefault();
    part.focus({ preventScroll: true });
    drag = { sheet, part, pointer: event.pointerId, x: event.clientX, y: event.clientY, from: at(part), value: at(part),
      unit: [x / (scale * (x * x + y * y)), y / (scale * (x * x + y * y))] };
    sheet.classList.add("rs-moving");
  });

  root.addEventListener("pointermove", event => {
    if (drag?.pointer !== event.pointerId) return;
    const metres = (event.clientX - drag.x) * drag.unit[0] + (event.clientY - drag.y) * drag.unit[1];
    const value = Math.abs(metres) < 1e-9 ? drag.from : within(drag.part, drag.from + metres * 1000);
    if (value === drag.value) return;
    drag.value = value;
    want(drag.part, value, event, false);
  });

  function drop(event, isPutBack = false) {
    if (!drag || (event.pointerId !== undefined && drag.pointer !== event.pointerId)) return;
    const { sheet, part, pointer, from, value } = drag;
    drag = null;
    sheet.classList.remove("rs-moving");
    if (sheet.hasPointerCapture(pointer)) sheet.releasePointerCapture(pointer);
    if (isPutBack ? value !== from : wanted.has(part.dataset.part)) want(part, isPutBack ? from : value, event, true);
  }
  for (const kind of ["pointerup", "pointercancel", "lostpointercapture"]) root.addEventListener(kind, event => drop(event));

  addEventListener("keydown", event => {
    if (event.key !== "Escape" || !drag) return;
    event.preventDefault();
    drop(event, true);
  }, true);

  root.addEventListener("keydown", event => {
    const part = event.target.closest?.(".rs-can-move");
    if (!part || drag || event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return;
    const [least, greatest] = ends(part), step = event.shiftKey ? 10 : 1;
    const to = {
      ArrowRight: at(part) + step, ArrowUp: at(part) + step, ArrowLeft: at(part) - step, ArrowDown: at(part) - step,
      PageUp: at(part) + 10, PageDown: at(part) - 10, Home: least, End: greatest,
      Escape: held?.name === part.dataset.part ? held.from : at(part),
    }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    const value = event.key === "Escape" ? to : within(part, to);
    if (value !== at(part)) want(part, value, event, event.key === "Escape");
  });
  // Letting go of the key is the end of the move, as letting go of a slider is.
  root.addEventListener("keyup", event => {
    const part = event.target.closest?.(".rs-can-move");
    if (part && !drag && wanted.has(part.dataset.part) && /^(Arrow|Page|Home|End)/.test(event.key))
      want(part, at(part), event, true);
  });

  // Escape goes back to where the part was when the keyboard came to it. A renewed drawing gives the focus back to the same part.
  addEventListener("focusin", event => {
    const part = event.target.closest?.(".rs-can-move");
    if (!part) held = null;
    else if (held?.name !== part.dataset.part) held = { name: part.dataset.part, from: at(part) };
  });

  // A drawing was renewed: before it is seen it is put to where the reader has it now.
  root.addEventListener("rs-drawn", event => {
    armSheet(event.target);
    if (drag?.sheet !== event.target) return;
    const view = drag.part.closest("[data-view]").dataset.view, name = drag.part.dataset.part;
    drag.part = [...event.target.querySelectorAll(`[data-view="${view}"] .rs-can-move`)].find(part => part.dataset.part === name
      && part.getClientRects().length > 0) ?? drag.part;
  });

  return {
    arm,
    /** What the server drew is now all that is wanted, unless the reader still holds a part. */
    settled() {
      if (drag || wanted.size === 0) return;
      wanted.clear();
      showAll();
    },
  };
}

const round = millimetres => Math.round(millimetres * 10) / 10;
