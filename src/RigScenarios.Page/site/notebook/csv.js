// Tables as files of numbers: RFC 4180 (Y. Shafranovich, "Common Format and MIME Type for CSV Files", 2005): lines end with
// CR LF, and a field with a comma, a quote or a line break stands in quotes, its own quotes doubled.

/** The table as CSV, its column titles as the first line. @param {import("../shared/requests.js").Table} table */
export function toCsv(table) {
  const lines = [table.columns.map(column => column.title),
    ...table.rows.map(row => row.map((cell, i) => table.columns[i]?.isNumber ? plain(cell) : cell))];
  return lines.map(line => `${line.map(field).join(",")}\r\n`).join("");
}

/** @param {string} value */
function field(value) {
  const text = String(value ?? "");
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** A typeset minus before a number is no minus to a program that reads the file. @param {string} cell */
function plain(cell) {
  return String(cell ?? "").replace(/^\u2212(?=[\d.])/, "-");
}
