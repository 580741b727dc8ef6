// For whoever measures on a slowed processor: browsers slow the page's own thread and no worker. Each worker of the page is
// therefore a frame here, which runs on the page's thread. Both then wait for each other, so that what is measured is rather too
// long than too short.
window.Worker = class extends EventTarget {
  #frame = document.createElement("iframe");
  #waiting = [];

  constructor(address) {
    super();
    const frame = this.#frame;
    frame.hidden = true;
    frame.src = "about:blank";
    (document.body ?? document.documentElement).append(frame);
    const inside = frame.contentWindow;
    inside.postMessage = (data, transfer) => {
      const event = new MessageEvent("message", { data: structuredClone(data, { transfer: transfer ?? [] }) });
      setTimeout(() => { this.dispatchEvent(event); this.onmessage?.(event); });
    };
    const script = inside.document.createElement("script");
    script.type = "module";
    script.src = address;
    script.addEventListener("load", () => {
      const waiting = this.#waiting;
      this.#waiting = null;
      for (const data of waiting) this.#hand(data);
    });
    inside.document.head.append(script);
  }

  postMessage(data, transfer) {
    const copy = structuredClone(data, { transfer: transfer ?? [] });
    if (this.#waiting) this.#waiting.push(copy);
    else setTimeout(() => this.#hand(copy));
  }

  terminate() { this.#frame.remove(); }

  #hand(data) { this.#frame.contentWindow?.dispatchEvent(new MessageEvent("message", { data })); }
};
