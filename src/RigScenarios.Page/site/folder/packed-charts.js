// The charts' script, which is large, comes deflated (RFC 1951): so it is small also on a server that compresses nothing. A plain
// script in the head, so that it is asked for at once. What comes out is run as a script of the page, which the page's policy
// knows by its hash: nothing else would run.
{
  const from = new URL("../plotly.bin", /** @type {HTMLScriptElement} */ (document.currentScript).src);

  /** @returns {Promise<void>} */
  async function run() {
    const came = await fetch(from);
    if (!came.ok || !came.body) throw new Error(`The script of the charts can't be had (${came.status}).`);
    const script = document.createElement("script");
    script.textContent = await new Response(came.body.pipeThrough(new DecompressionStream("deflate-raw"))).text();
    document.head.append(script);
  }

  // figure.js waits for it.
  window.rigPlotly = run();
}
