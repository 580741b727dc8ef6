// Draws figures: in the layout of the page or, where the figure is narrow, in that of a phone; fits them to paper for printing.
(function () {
  var drawn = [];

  function copy(value) { return JSON.parse(JSON.stringify(value)); }

  function draw(element) {
    var figure = copy(element.rigFigure), narrow = figure.narrow;
    element.rigIsNarrow = element.clientWidth > 0 && element.clientWidth < narrow.below;
    if (element.rigIsNarrow) {
      Object.assign(figure.layout, narrow.layout);
      narrow.traces.forEach(function (change, i) { Object.assign(figure.data[i], change); });
    }
    if (figure.layout.height) element.style.minHeight = figure.layout.height + "px";
    if (element.rigPrintWidth) figure.layout.width = element.rigPrintWidth;
    return window.Plotly.react(element, figure.data, figure.layout, figure.config);
  }

  window.rigFigure = function (slug, figure) {
    var places = Array.prototype.slice.call(document.querySelectorAll('[data-figure="' + slug + '"]'));
    var element = places.filter(function (place) { return !place.rigFigure; })[0] || places[places.length - 1];
    if (!element) return;
    element.rigFigure = figure;
    drawn.push(element);
    draw(element);
    if (window.ResizeObserver) {
      new ResizeObserver(function () {
        if (!element.rigPrintWidth && element.rigIsNarrow !== (element.clientWidth < figure.narrow.below)) draw(element);
      }).observe(element);
    }
  };

  function fit(width) {
    drawn.forEach(function (element) {
      if (!element.isConnected || element.clientWidth === 0) return;
      element.rigPrintWidth = width;
      draw(element);
    });
  }

  // A4 less its margins, at 96 dots an inch, is 680 wide; the style sheet prints charts at 85 %, as small as print may be.
  window.addEventListener("beforeprint", function () { fit(780); });
  window.addEventListener("afterprint", function () { fit(0); });
})();
