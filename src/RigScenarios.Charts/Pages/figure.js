// Draws figures: in the layout of the page or, where the figure is narrow, in that of a phone; fits them to paper for printing;
// in the colours of the night where the page says so with data-theme="night" at its root.
(function () {
  var drawn = [];

  function copy(value) { return JSON.parse(JSON.stringify(value)); }

  // What the figure is at this width and in this light, as plotly.js takes it; a copy, for plotly.js writes into what it gets.
  function present(element) {
    var figure = copy(element.rigFigure), narrow = figure.narrow;
    element.rigWidth = element.clientWidth;
    if (element.rigWidth > 0 && element.rigWidth < narrow.below) {
      Object.assign(figure.layout, narrow.layout);
      narrow.traces.forEach(function (change, i) { Object.assign(figure.data[i], change); });
    }
    // Said each time: plotly.js keeps the width of the drawing before.
    if (element.rigPrintWidth || element.rigWidth) figure.layout.width = element.rigPrintWidth || element.rigWidth;
    // Paper is white at night too.
    if (!element.rigPrintWidth && document.documentElement.getAttribute("data-theme") === "night") darken(figure);
    return figure;
  }

  function draw(element) {
    var figure = present(element);
    if (figure.layout.height) {
      element.style.minHeight = figure.layout.height + "px";
      element.style.setProperty("--rs-chart-height", figure.layout.height + "px");
    }
    return window.Plotly.react(element, figure.data, figure.layout, figure.config);
  }

  function show(element, figure) {
    var isNew = !element.rigFigure;
    element.rigFigure = figure;
    if (isNew) {
      drawn.push(element);
      if (window.ResizeObserver) {
        new ResizeObserver(function () {
          if (element.clientWidth > 0 && !element.rigPrintWidth && element.clientWidth !== element.rigWidth) draw(element);
        }).observe(element);
      }
    }
    return draw(element);
  }

  window.rigFigure = function (slug, figure) {
    var places = Array.prototype.slice.call(document.querySelectorAll('[data-figure="' + slug + '"]'));
    var element = places.filter(function (place) { return !place.rigFigure; })[0] || places[places.length - 1];
    if (element) show(element, figure);
  };

  // For pages whose figures change: draws a figure into an element, or in the place of the one before, without a flicker.
  window.rigFigures = {
    draw: show,
    // Before a figure leaves the page: plotly.js would go on listening for it.
    forget: function (element) {
      drawn = drawn.filter(function (other) { return other !== element; });
      if (element.rigFigure) window.Plotly.purge(element);
    },
    redraw: function () {
      drawn.forEach(function (element) { if (element.clientWidth > 0) draw(element); });
    },
    // The picture for a file: on white, whatever the light of the page.
    picture: function (figure, options) {
      var plain = copy(figure);
      plain.layout.width = options.width;
      plain.layout.height = plain.layout.height || options.height;
      return window.Plotly.toImage({ data: plain.data, layout: plain.layout, config: plain.config },
        { format: options.format, width: options.width, height: plain.layout.height, scale: options.scale || 1 });
    }
  };

  // Night. Greys are turned round between a dark paper and a dimmed warm white; colours keep their hue and are lightened until
  // they stand out from the paper by 4.5 to 1, as text must (Web Content Accessibility Guidelines 2.2, success criterion 1.4.3).
  var PAPER = [29, 28, 27], INK = [206, 198, 183], CONTRAST = 4.5;
  // Cividis at half its light (stops: plotly.js), so that no cell glares and light text can be read on each.
  var NIGHT_SCALE = [[0, "rgb(4,20,44)"], [0.2, "rgb(28,38,55)"], [0.4, "rgb(50,52,57)"], [0.6, "rgb(74,71,61)"],
    [0.8, "rgb(100,92,56)"], [1, "rgb(128,117,40)"]];

  function light(rgb) {
    var part = rgb.map(function (value) {
      var c = value / 255;
      return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    });
    return 0.2126 * part[0] + 0.7152 * part[1] + 0.0722 * part[2];
  }

  function mixed(from, to, share) {
    return from.map(function (value, i) { return Math.round(value + (to[i] - value) * share); });
  }

  function nightColour(text) {
    var hex = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(text);
    var list = hex ? null : /^rgba?\(\s*([\d.]+)[,\s]+([\d.]+)[,\s]+([\d.]+)(?:[,\s/]+([\d.]+))?\s*\)$/i.exec(text);
    if (!hex && !list) return text;
    var rgb = hex ? hex.slice(1).map(function (pair) { return parseInt(pair, 16); }) : list.slice(1, 4).map(Number);
    var alpha = list && list[4] !== undefined ? Number(list[4]) : 1;
    if (Math.max.apply(null, rgb) - Math.min.apply(null, rgb) < 20) {
      rgb = mixed(INK, PAPER, rgb[1] / 255);
    } else {
      var plain = rgb, share = 0;
      while (share < 1 && (light(rgb) + 0.05) / (light(PAPER) + 0.05) < CONTRAST) rgb = mixed(plain, INK, share += 0.05);
    }
    return "rgba(" + rgb.join(",") + "," + alpha + ")";
  }

  function darken(figure) {
    var hasMap = figure.data.some(function (trace) { return trace.type === "heatmap"; });
    figure.data.forEach(function (trace) {
      if (trace.type === "heatmap") trace.colorscale = NIGHT_SCALE;
      recolour(trace, nightColour);
      // Every cell of a map is dark now: so all words on cells are light.
      if (hasMap && trace.textfont) trace.textfont.color = nightColour("#000000");
    });
    recolour(figure.layout, nightColour);
  }

  function recolour(node, change) {
    Object.keys(node).forEach(function (key) {
      var value = node[key];
      if (/color$/i.test(key)) {
        if (typeof value === "string") { node[key] = change(value); return; }
        if (Array.isArray(value)) {
          node[key] = value.map(function (item) { return typeof item === "string" ? change(item) : item; });
          return;
        }
      }
      // The numbers of a trace hold no colours and are many.
      if (value && typeof value === "object" && !(Array.isArray(value) && typeof value[0] !== "object")) recolour(value, change);
    });
  }

  function fit(width) {
    drawn.forEach(function (element) {
      if (!element.isConnected || element.clientWidth === 0) return;
      element.rigPrintWidth = width;
      draw(element);
    });
  }

  window.addEventListener("rs-theme", function () { if (window.Plotly) window.rigFigures.redraw(); });
  // A4 less its margins, at 96 dots an inch, is 680 wide; the style sheet prints charts at 85 %, as small as print may be.
  window.addEventListener("beforeprint", function () { fit(780); });
  window.addEventListener("afterprint", function () { fit(0); });
})();
