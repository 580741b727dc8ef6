// Draws figures: in the layout of the page or, where the figure is narrow, in that of a phone; fits them to paper for printing;
// in the colours of the night where the page says so with data-theme="night" at its root.
// biome-ignore lint/complexity/noExcessiveLinesPerFunction: the scope of a plain script, not a function with a task.
(() => {
  /**
   * A figure as plotly.js takes it, and what differs where it is narrow. A place is an element that shows one.
   * @typedef {{ data: any[], layout: any, config: any, narrow: { below: number, layout: object, traces: object[] } }} Figure
   * @typedef {HTMLElement & { rigFigure?: Figure, rigWidth?: number, rigPrintWidth?: number }} Place
   */

  /** @type {Place[]} */
  let drawn = [];

  /** @template T @param {T} value @returns {T} */
  const copy = value => JSON.parse(JSON.stringify(value));

  /**
   * What the figure is at this width and in this light; a copy, for plotly.js writes into what it gets.
   * @param {Place} place
   * @param {Figure} shown
   */
  function present(place, shown) {
    const figure = copy(shown), { narrow } = figure;
    place.rigWidth = place.clientWidth;
    if (place.rigWidth > 0 && place.rigWidth < narrow.below) {
      Object.assign(figure.layout, narrow.layout);
      for (const [i, change] of narrow.traces.entries()) Object.assign(figure.data[i], change);
    }
    // Said each time: plotly.js keeps the width of the drawing before.
    if (place.rigPrintWidth || place.rigWidth) figure.layout.width = place.rigPrintWidth || place.rigWidth;
    // Paper is white at night too.
    if (!place.rigPrintWidth && document.documentElement.getAttribute("data-theme") === "night") darken(figure);
    return figure;
  }

  /** @param {Place} place @returns {Promise<unknown>} */
  function draw(place) {
    if (!place.rigFigure) return Promise.resolve();
    // Where plotly.js comes packed, it is there a moment later.
    if (!window.Plotly && window.rigPlotly) return window.rigPlotly.then(() => draw(place));
    const figure = present(place, place.rigFigure);
    if (figure.layout.height) {
      place.style.minHeight = `${figure.layout.height}px`;
      place.style.setProperty("--rs-chart-height", `${figure.layout.height}px`);
    }
    return window.Plotly.react(place, figure.data, figure.layout, figure.config);
  }

  /** @param {Place} place @param {Figure} figure */
  function show(place, figure) {
    const isNew = !place.rigFigure;
    place.rigFigure = figure;
    if (isNew) {
      drawn.push(place);
      new ResizeObserver(() => {
        if (place.clientWidth > 0 && !place.rigPrintWidth && place.clientWidth !== place.rigWidth) draw(place);
      }).observe(place);
    }
    return draw(place);
  }

  window.rigFigure = (slug, figure) => {
    /** @type {Place[]} */
    const places = [...document.querySelectorAll(`[data-figure="${slug}"]`)];
    const place = places.find(one => !one.rigFigure) ?? places.at(-1);
    if (place) show(place, figure);
  };

  // For pages whose figures change: draws a figure into an element, or in the place of the one before, without a flicker.
  window.rigFigures = {
    draw: show,
    // Before a figure leaves the page: plotly.js would go on listening for it.
    forget(place) {
      drawn = drawn.filter(other => other !== place);
      if (/** @type {Place} */ (place).rigFigure) window.Plotly?.purge(place);
    },
    redraw() {
      for (const place of drawn) if (place.clientWidth > 0) draw(place);
    },
    // The picture for a file: on white, whatever the light of the page.
    async picture(figure, { format, width, height, scale = 1 }) {
      await window.rigPlotly;
      const { data, layout, config } = copy(figure);
      layout.width = width;
      layout.height = layout.height || height;
      return window.Plotly.toImage({ data, layout, config }, { format, width, height: layout.height, scale });
    },
  };

  // Night. Greys are turned round between a dark paper and a dimmed warm white; colours keep their hue and are lightened until
  // they stand out from the paper by 4.5 to 1, as text must (Web Content Accessibility Guidelines 2.2, success criterion 1.4.3).
  const PAPER = [29, 28, 27], INK = [206, 198, 183], CONTRAST = 4.5;
  // Cividis at half its light (stops: plotly.js), so that no cell glares and light text can be read on each.
  const NIGHT_SCALE = [[0, "rgb(4,20,44)"], [0.2, "rgb(28,38,55)"], [0.4, "rgb(50,52,57)"], [0.6, "rgb(74,71,61)"],
    [0.8, "rgb(100,92,56)"], [1, "rgb(128,117,40)"]];

  /** @param {number[]} rgb */
  function light(rgb) {
    const [red, green, blue] = rgb.map(value => {
      const part = value / 255;
      return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  }

  /** @param {number[]} from @param {number[]} to @param {number} share */
  const mixed = (from, to, share) => from.map((value, i) => Math.round(value + (to[i] - value) * share));

  /** @param {string} text */
  function nightColour(text) {
    const hex = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(text);
    const list = /^rgba?\(\s*([\d.]+)[,\s]+([\d.]+)[,\s]+([\d.]+)(?:[,\s/]+([\d.]+))?\s*\)$/i.exec(text);
    if (!hex && !list) return text;
    const plain = hex ? hex.slice(1).map(pair => Number.parseInt(pair, 16)) : (list ?? []).slice(1, 4).map(Number);
    const alpha = list?.[4] === undefined ? 1 : Number(list[4]);
    let rgb = plain;
    if (Math.max(...plain) - Math.min(...plain) < 20) {
      rgb = mixed(INK, PAPER, plain[1] / 255);
    } else {
      for (let share = 0.05; share < 1.05 && (light(rgb) + 0.05) / (light(PAPER) + 0.05) < CONTRAST; share += 0.05)
        rgb = mixed(plain, INK, share);
    }
    return `rgba(${rgb.join(",")},${alpha})`;
  }

  /** @param {Figure} figure */
  function darken(figure) {
    const hasMap = figure.data.some(trace => trace.type === "heatmap");
    for (const trace of figure.data) {
      if (trace.type === "heatmap" || (trace.type === "contour" && trace.colorscale)) trace.colorscale = NIGHT_SCALE;
      recolour(trace);
      // Every cell of a map is dark now: so all words on cells are light.
      if (hasMap && trace.textfont) trace.textfont.color = nightColour("#000000");
    }
    recolour(figure.layout);
  }

  /** @param {any} node */
  function recolour(node) {
    for (const [key, value] of Object.entries(node)) {
      if (/color$/i.test(key) && typeof value === "string") node[key] = nightColour(value);
      else if (/color$/i.test(key) && Array.isArray(value))
        node[key] = value.map(item => typeof item === "string" ? nightColour(item) : item);
      // The numbers of a trace hold no colours and are many.
      else if (value && typeof value === "object" && !(Array.isArray(value) && typeof value[0] !== "object")) recolour(value);
    }
  }

  /** @param {number} width */
  function fit(width) {
    for (const place of drawn) {
      if (!place.isConnected || place.clientWidth === 0) continue;
      place.rigPrintWidth = width;
      draw(place);
    }
  }

  addEventListener("rs-theme", () => { if (window.Plotly) window.rigFigures.redraw(); });
  // A4 less its margins, at 96 dots an inch, is 680 wide; the style sheet prints charts at 85 %, as small as print may be.
  addEventListener("beforeprint", () => fit(780));
  addEventListener("afterprint", () => fit(0));
})();
