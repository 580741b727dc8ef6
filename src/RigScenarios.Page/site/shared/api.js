// @ts-nocheck: program.js takes its place.
// Asks the server. What it refuses comes back as one kind of error, with the problems in words that a page can show.

/** A request that was refused, or that no server answered. `problems` are the server's, each with at least `text`. */
export class ApiProblem extends Error {
  constructor(status, problems) {
    super(problems.map(problem => problem.text).join(" "));
    this.status = status;
    this.problems = problems;
  }
}

/**
 * The page's key, which each request for something shows: see enter.js. Read each time, for another window may have opened a
 * newer start of the program.
 */
export function pageKey() {
  try { return localStorage.getItem("rig-key") ?? ""; } catch { return ""; }
}

/** A file that the server makes, for an address that a plain link can't ask for because it has no key. */
export async function fetchFile(path) {
  const response = await fetch(path, { headers: { "Rig-Key": pageKey() } });
  if (response.ok) return response.blob();
  const json = await response.json().catch(() => null);
  throw new ApiProblem(response.status, json?.problems?.length ? json.problems : [{ text: unexplained(response.status) }]);
}

/** Sends `body` (or nothing) as JSON and gives what came back. `signal` cancels. */
export async function api(method, path, body, signal) {
  let response;
  try {
    response = await fetch(path, {
      method,
      signal,
      headers: { "Rig-Key": pageKey(), ...(body === undefined ? {} : { "Content-Type": "application/json" }) },
      body: body === undefined ? undefined : JSON.stringify(body),
    });
  } catch (error) {
    if (error.name === "AbortError") throw error;
    throw new ApiProblem(0, [{ text: "The program behind this page does not answer. Is it still running?" }]);
  }
  const json = await response.json().catch(() => null);
  if (!response.ok)
    throw new ApiProblem(response.status, json?.problems?.length ? json.problems : [{ text: unexplained(response.status) }]);
  return json;
}

/** A file's address in the API or the editor: every piece of the name encoded, the slashes kept. */
export function inPath(id) {
  return id.split("/").map(encodeURIComponent).join("/");
}

function unexplained(status) {
  return status === 401 || status === 403
    ? "This page belongs to an earlier start of the program. Open the address that the program printed when it started."
    : `The program behind this page answered with an error (${status}).`;
}
