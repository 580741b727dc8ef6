// Charts, drawings and their numbers as files: PNG, SVG, CSV. On a page that was kept as a file it also puts the buttons there.
// What stands in a file of numbers: docs/take-along.md.
// biome-ignore lint/complexity/noExcessiveLinesPerFunction: the scope of a plain script, not a function with a task.
(() => {
  /** @typedef {{ name: string, column: number, names?: string[] | null }} Series */
  /** @typedef {string | number | null | undefined} Cell */
  /** @typedef {{ x: string, values: string[], series: (Series | null)[], rows?: Cell[][] | null }} Points */

  const LINE_END = "\r\n";
  // Traces whose values stand in rows and columns.
  const MAPS = ["heatmap", "contour"];
  const PICTURE_WIDTH = 1000, PICTURE_SCALE = 2;
  // What the style sheet of a page does to a drawing and no attribute of its own.
  const DRAWING_STYLE = "text{font-family:'Segoe UI','Helvetica Neue',Arial,'Liberation Sans','DejaVu Sans',sans-serif;fill:#222}"
    + ".rs-soft{fill:#444}.rs-move .rs-box{fill:#f0c17a;stroke-width:2}.rs-rail{visibility:hidden}";
  // Units of one kind, as a column of a table may mix them: which one the file has, and what one is of it.
  /** @type {Record<string, [string, number]>} */
  const KINDS = { g: ["kg", 0.001], kg: ["kg", 1], mm: ["mm", 1], m: ["mm", 1000], "mΩ": ["Ω", 0.001], "Ω": ["Ω", 1],
    s: ["min", 1 / 60], min: ["min", 1], h: ["min", 60] };

  /** RFC 4180, texts always in quotes, numbers never. @param {Cell} cell */
  function field(cell) {
    if (cell === null || cell === undefined || (typeof cell === "number" && !Number.isFinite(cell))) return "";
    return typeof cell === "number" ? String(cell) : `"${String(cell).replaceAll('"', '""')}"`;
  }

  /** @param {Cell[][]} rows */
  const lines = rows => rows.map(row => row.map(field).join(",") + LINE_END).join("");

  /** What a chart says of its numbers; of one that says nothing, what its traces say. @param {any} figure @returns {Points} */
  function pointsOf(figure) {
    const axis = (/** @type {string} */ name) => figure.layout?.[name]?.title?.text ?? name[0];
    return figure.points ?? { x: axis("xaxis"), values: [axis("yaxis")],
      series: figure.data.map((/** @type {any} */ trace, /** @type {number} */ i) =>
        ({ name: trace.name ?? `series ${i + 1}`, column: 0 })) };
  }

  /**
   * The points of one trace, a row each.
   * @param {any} trace
   * @param {Series} series
   * @param {number} columns
   * @returns {Cell[][]}
   */
  function rowsOf(trace, series, columns) {
    if (MAPS.includes(trace.type))
      return trace.y.flatMap((/** @type {number} */ y, /** @type {number} */ row) =>
        trace.x.map((/** @type {number} */ x, /** @type {number} */ i) => [x, y, trace.z[row][i]]));
    if (trace.type === "bar")
      return trace.x.map((/** @type {number} */ length, /** @type {number} */ i) =>
        [series.names?.[i] ?? series.name, trace.base[i], Number((trace.base[i] + length).toPrecision(12))]);
    const rows = [];
    for (const [i, x] of trace.x.entries()) {
      // Where the pen is lifted there is no point.
      if (x === null) continue;
      const values = new Array(columns).fill(null);
      values[series.column] = trace.y[i];
      rows.push([series.name, x, ...values]);
    }
    return rows;
  }

  /** All points of a chart, a row each. @param {any} figure */
  function csvOfChart(figure) {
    const points = pointsOf(figure);
    if (points.rows) return lines(points.rows);
    const isMap = figure.data.some((/** @type {any} */ trace) => MAPS.includes(trace.type));
    const isBars = figure.data.some((/** @type {any} */ trace) => trace.type === "bar");
    const head = [...(isMap ? [] : [isBars ? "name" : "series"]), points.x, ...points.values];
    return lines([head, ...points.series.flatMap((series, i) =>
      series === null ? [] : rowsOf(figure.data[i], series, points.values.length))]);
  }

  /** A cell's number with its unit; null where it is none. @param {string} text */
  function numberOf(text) {
    const plain = text.replace("\u2212", "-").trim();
    const hours = /^(-?)(\d+) (h|min) (\d+) (min|s)$/.exec(plain);
    if (hours) {
      const whole = Number(hours[2]) * KINDS[hours[3]][1] + Number(hours[4]) * KINDS[hours[5]][1];
      return { value: hours[1] ? -whole : whole, unit: "min" };
    }
    const one = /^(-?\d+(?:\.\d+)?(?:E[+-]\d+)?)\s?(\D*)$/.exec(plain);
    return one ? { value: Number(one[1]), unit: one[2].trim() } : null;
  }

  /** A column of numbers, all in one unit, which goes into the title. @param {string} title @param {string[]} cells */
  function column(title, cells) {
    const found = cells.map(numberOf);
    const filled = found.filter((_, i) => cells[i] !== "");
    const units = [...new Set(filled.map(number => number?.unit))];
    const kinds = [...new Set(units.map(unit => KINDS[unit ?? ""]?.[0]))];
    if (filled.includes(null) || (units.length > 1 && (kinds.length > 1 || kinds[0] === undefined)))
      return { title, cells };
    const unit = units.length > 1 ? kinds[0] : units[0] ?? "";
    const of = (/** @type {{ value: number, unit: string }} */ number) => number.unit === unit ? number.value
      : Number((number.value * KINDS[number.unit][1]).toPrecision(12));
    return { title: unit ? `${title} (${unit})` : title,
      cells: found.map((number, i) => number === null || cells[i] === "" ? null : of(number)) };
  }

  /** A table, each unit in the title of its column. @param {any} table */
  function csvOfTable(table) {
    const columns = table.columns.map((/** @type {any} */ { title, isNumber }, /** @type {number} */ i) => {
      const cells = table.rows.map((/** @type {string[]} */ row) => row[i] ?? "");
      return isNumber ? column(title, cells) : { title, cells };
    });
    return lines([columns.map((/** @type {any} */ { title }) => title), ...table.rows.map((/** @type {any} */ _,
      /** @type {number} */ row) => columns.map((/** @type {any} */ { cells }) => cells[row]))]);
  }

  /** A drawing as a picture that stands alone, on white, with its size. @param {string} markup */
  function drawingOf(markup) {
    const holder = document.createElement("template");
    holder.innerHTML = markup;
    const svg = /** @type {SVGSVGElement} */ (/** @type {unknown} */ (holder.content.querySelector("svg")));
    const [left, top, width, height] = (svg.getAttribute("viewBox") ?? "0 0 800 600").split(/[ ,]+/).map(Number);
    svg.setAttribute("width", String(width));
    svg.setAttribute("height", String(height));
    const style = document.createElementNS(svg.namespaceURI ?? "", "style");
    const paper = document.createElementNS(svg.namespaceURI ?? "", "rect");
    style.textContent = DRAWING_STYLE;
    for (const [name, value] of Object.entries({ x: left, y: top, width, height, fill: "#ffffff" }))
      paper.setAttribute(name, String(value));
    svg.prepend(style, paper);
    return { text: new XMLSerializer().serializeToString(svg), width, height };
  }

  /** @param {{ text: string, width: number, height: number }} drawing @returns {Promise<Blob>} */
  async function pngOf({ text, width, height }) {
    const image = new Image(), scale = Math.max(1, (PICTURE_WIDTH * PICTURE_SCALE) / width);
    image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(text)}`;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = Math.round(width * scale);
    canvas.height = Math.round(height * scale);
    canvas.getContext("2d")?.drawImage(image, 0, 0, canvas.width, canvas.height);
    return new Promise((done, failed) => canvas.toBlob(blob => blob ? done(blob)
      : failed(new Error("No picture could be made."))));
  }

  /** @param {Blob | string} content @param {string} name @param {string} [type] */
  function save(content, name, type) {
    const address = URL.createObjectURL(content instanceof Blob ? content : new Blob([content], { type }));
    const link = document.createElement("a");
    link.href = address;
    link.download = name;
    link.hidden = true;
    document.body.append(link);
    link.click();
    link.remove();
    setTimeout(() => URL.revokeObjectURL(address), 10000);
  }

  // The mark at the start tells programs that guess an encoding that this is UTF-8 ("°C" would suffer).
  /** @param {string} text @param {string} name */
  const saveNumbers = (text, name) => save(`\ufeff${text}`, `${name}.csv`, "text/csv;charset=utf-8");

  /** @param {any} figure @param {string} name @param {"png" | "svg"} format */
  async function saveChart(figure, name, format) {
    const address = await window.rigFigures.picture(figure, { format, width: PICTURE_WIDTH, height: figure.layout?.height ?? 420,
      scale: format === "png" ? PICTURE_SCALE : 1 });
    const data = address.slice(address.indexOf(",") + 1);
    if (format === "svg") return save(decodeURIComponent(data), `${name}.svg`, "image/svg+xml");
    return save(new Blob([Uint8Array.from(atob(data), letter => letter.charCodeAt(0))], { type: "image/png" }), `${name}.png`);
  }

  /** @param {string} markup @param {string} name @param {"png" | "svg"} format */
  async function saveDrawing(markup, name, format) {
    const drawing = drawingOf(markup);
    return format === "svg" ? save(drawing.text, `${name}.svg`, "image/svg+xml") : save(await pngOf(drawing), `${name}.png`);
  }

  window.rigKeep = { csvOfChart, csvOfTable, drawingOf, save, saveChart, saveDrawing, saveNumbers };

  /** The numbers of a page that was kept stand in its table. @param {HTMLElement} figure */
  function tableIn(figure) {
    const head = [...figure.querySelectorAll(".rs-numbers thead th")];
    return { columns: head.map(cell => ({ title: cell.textContent ?? "", isNumber: cell.classList.contains("rs-number") })),
      rows: [...figure.querySelectorAll(".rs-numbers tbody tr")].map(row =>
        [...row.querySelectorAll("td")].map(cell => (cell.textContent ?? "").replaceAll("\u00a0", " "))) };
  }

  /** @param {HTMLElement} figure @returns {[string, () => unknown][]} */
  function actionsOf(figure) {
    const chart = /** @type {any} */ (figure.querySelector(".rs-chart")), drawing = figure.querySelector("svg.rs-wide");
    const name = figure.dataset.drawing ?? chart?.dataset.figure ?? "picture";
    const formats = /** @type {("png" | "svg")[]} */ (["png", "svg"]);
    if (chart) return [...formats.map(format => /** @type {[string, () => unknown]} */ ([format.toUpperCase(),
      () => saveChart(chart.rigFigure, name, format)])), ["CSV", () => saveNumbers(csvOfChart(chart.rigFigure), name)]];
    if (!drawing) return [];
    return [...formats.map(format => /** @type {[string, () => unknown]} */ ([format.toUpperCase(),
      () => saveDrawing(drawing.outerHTML, name, format)])), ["CSV", () => saveNumbers(csvOfTable(tableIn(figure)), name)]];
  }

  document.addEventListener("DOMContentLoaded", () => {
    if (!document.body.classList.contains("rs-kept")) return;
    for (const figure of document.querySelectorAll(".rs-figure")) {
      const row = document.createElement("div"), title = figure.querySelector(".rs-figure-title")?.textContent ?? "";
      row.className = "rs-keep";
      row.setAttribute("role", "group");
      row.setAttribute("aria-label", `Save: ${title}`);
      row.append("Save:");
      for (const [label, run] of actionsOf(figure)) {
        const button = document.createElement("button");
        button.type = "button";
        button.textContent = label;
        button.addEventListener("click", run);
        row.append(button);
      }
      figure.append(row);
    }
  });
})();
