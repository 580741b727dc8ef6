// What pages may ask of the program behind them, and what it answers: the whole list. Only types stand here. Requests and answers
// are plain data, so that the program may be a server, or the library in the browser: see program.js.

/**
 * One sentence on what is wrong. `path`: the field or parameter; `accepted`: what is accepted; `nearest`: the nearest name;
 * `line`, `column`: the place in a text, from 1; `severity`: "error" or "warning".
 * @typedef {{ text: string, path?: string, accepted?: string | null, nearest?: string | null, line?: number | null,
 *   column?: number | null, severity?: string }} Problem
 */

/**
 * @typedef {{ title: string, isNumber: boolean }} Column
 * @typedef {{ caption?: string, columns: Column[], rows: string[][] }} Table
 */

/**
 * A piece of an answer or of a notebook, as parts.js shows it; `type` says which of the other fields there are. Only `html`,
 * `svg`, `narrowSvg` and `line` are markup. `line`: an answer in one line; `isVerdict`: it is one, and no sentence only.
 * @typedef {{ type: string, text?: string, html?: string, cautions?: string[], slug?: string, title?: string, caption?: string,
 *   alternative?: string, height?: number, specification?: unknown, svg?: string, narrowSvg?: string, table?: Table,
 *   level?: number, name?: string, line?: string, isVerdict?: boolean, mayBeTaken?: boolean }} Part
 */

/**
 * A file of the reader's own ("own/…") or a sample ("samples/…"). `version` is given back when it is saved. The shelf's `folder`
 * is where own files lie, in words for people; null where they lie in none.
 * @typedef {{ id: string, text: string, writable: boolean, version: string, problems: Problem[] }} TextFile
 * @typedef {{ id: string, folder: string, name: string, title: string, problems: number }} FileOnShelf
 * @typedef {{ name: string, title: string, sentence: string, hasPicture: boolean }} NotebookOnShelf
 * @typedef {{ notebooks: NotebookOnShelf[], files: FileOnShelf[], folder: string | null }} Shelf
 */

/**
 * Help for a place in a text: the group there and the fields that may stand in it.
 * @typedef {{ key: string, about: string, accepted: string, required: boolean, present: boolean }} HelpField
 * @typedef {{ path: string, about: string, accepted: string, fields: HelpField[] }} TextHelp
 */

/**
 * A rig as the form has it. `given`: what somebody gave, a tree of texts as a scenario file has it. `view`: the things in it, by
 * their names in the tree; `part`: a listed one; `own`: one of the reader's own; `count`: the path of how many there are.
 * @typedef {{ [name: string]: any }} Tree
 * @typedef {{ name: string, question: string, part: string | null, own: string | null, title: string, figures: string,
 *   count: string | null }} Thing
 * @typedef {{ things: Thing[], camera: string | null, battery: string | null, charger: string | null }} View
 * @typedef {{ given: Tree, view: View }} ShownRig
 * @typedef {{ name: string, title: string }} Choice
 * @typedef {{ given: Tree, file: string | null, build: string | null, day: string | null }} PlacedRig
 */

/**
 * A task for a class, as a teacher makes it. `controls`: what may be changed, with bounds where the teacher narrows them;
 * `shown`: the questions that are told from the start; `reveal`: "by-teacher" or "on-hand-in"; `code`: what stands in its
 * address.
 * @typedef {{ field: string, from: number | null, to: number | null }} OpenControl
 * @typedef {{ title: string, text: string, scenario: string, build: string, days: string[], causes: number, seed: number,
 *   controls: OpenControl[], shown: string[], reveal: string, estimates: string[], ownQuestions: string[],
 *   code: string | null }} ClassTask
 * @typedef {{ name: string, version: string, task: ClassTask, addresses: string[], path: string | null,
 *   isOnNetwork: boolean }} KeptTask
 */

/**
 * What a task may be made of, and what its class has: a control is a parameter of a notebook's kind, with a heading.
 * @typedef {import("../notebook/types.js").Parameter & { group: string }} ClassControl
 * @typedef {{ name: string, question: string, unit: string, answer: string | null }} Asked
 * @typedef {{ controls: ClassControl[], questions: { kind: string, title: string, words: string }[], headline: string,
 *   estimates: { name: string, kind: string | null, question: string, unit: string }[], findings: string[],
 *   told: string[] }} TaskChoices
 * @typedef {{ name: string, at: string, estimates: Record<string, string>, changes: string[], outcome: string }} HandIn
 * @typedef {{ isRevealed: boolean, headline: string, asked: Asked[], handIns: HandIn[] }} LessonNow
 * @typedef {{ title: string, note: string, columns: string[], rows: string[][] }} GivenSection
 * @typedef {{ student: string, version: string, isIn: boolean, mayHandIn: boolean, title: string, text: string, about: string,
 *   known: string[], days: string[], given: GivenSection[], controls: ClassControl[], asked: Asked[],
 *   lines: { title: string, verdict: string, words: string }[], hidden: string[], check: string[], isHiding: boolean,
 *   onHandIn: boolean, cautions: string[], parts: Part[] }} LessonView
 */

/**
 * What the program behind the pages can do. What it can't is not shown, or the page says where it can be had. `bestRig`: it
 * searches for the best rig for the money; `classes`: it keeps tasks for a class and hands out their addresses; `changedCells`:
 * it compiles a notebook that its reader changed; `folder`: own files lie in a folder, where a command line finds them.
 * @typedef {{ bestRig: boolean, classes: boolean, changedCells: boolean, folder: boolean }} Abilities
 */

/**
 * Each request: what is asked, and what is given.
 * @typedef {{
 *   "abilities": { asks: {}, gives: Abilities },
 *   "shelf": { asks: {}, gives: Shelf },
 *   "picture": { asks: { notebook: string }, gives: Blob },
 *   "page": { asks: { notebook: string, values: Record<string, string> }, gives: Blob },
 *   "page-that-answers": { asks: { notebook: string, values: Record<string, string> }, gives: Blob },
 *   "page-that-answers-size": { asks: { notebook: string }, gives: { bytes: number | null, why: string | null } },
 *   "file": { asks: { id: string }, gives: TextFile },
 *   "save-file": { asks: { name: string, text: string, version: string | null, replace: boolean },
 *     gives: { id: string, version: string, problems: Problem[] } },
 *   "check-text": { asks: { text: string, file: string },
 *     gives: { problems: Problem[], answers: { build: string, day: string, text: string }[] } },
 *   "text-help": { asks: { text: string, line: number, column: number }, gives: TextHelp },
 *   "rig-questions": { asks: {}, gives: ShownRig & { build: string, day: string, questions: any[], fields: any[], label: any[],
 *     parts: any[], days: any[] } },
 *   "rig-given": { asks: { file: string, build?: string | null, day?: string | null },
 *     gives: ShownRig & { builds: Choice[], days: Choice[], build: string, day: string, version: string } },
 *   "rig-alone": { asks: PlacedRig, gives: ShownRig & { build: string, day: string } },
 *   "rig-edit": { asks: PlacedRig & { edit: object }, gives: ShownRig & { thing: string | null } },
 *   "rig-log": { asks: PlacedRig & { log: Blob, name: string, air: number, charge: number },
 *     gives: { says: string[], cautions: string[], read: string[], take: { [field: string]: string } | null } },
 *   "rig-sheet": { asks: object, gives: Blob },
 *   "notebook-sheet": { asks: { notebook: string, values: Record<string, string>, sheet: string, whole: boolean },
 *     gives: Blob },
 *   "save-rig": { asks: PlacedRig & { name: string, version: string | null, replace: boolean },
 *     gives: { id: string, build: string, day: string, version: string, command: string } },
 *   "class-tasks": { asks: {}, gives: { tasks: { name: string, title: string, isRead: boolean }[], folder: string } },
 *   "class-places": { asks: { file: string }, gives: { title: string, builds: Choice[], days: Choice[] } },
 *   "class-choices": { asks: { task: ClassTask }, gives: TaskChoices },
 *   "class-task": { asks: { name: string }, gives: KeptTask },
 *   "save-class-task": { asks: { name: string, task: ClassTask, version: string | null, replace: boolean }, gives: KeptTask },
 *   "class-sheet": { asks: { task: ClassTask, solution: boolean, whole: boolean }, gives: Blob },
 *   "class-lesson": { asks: { name: string }, gives: LessonNow },
 *   "tell-class": { asks: { name: string, revealed?: boolean, clear?: boolean }, gives: LessonNow },
 *   "lesson-state": { asks: { code: string, student: string }, gives: { version: string } },
 *   "lesson-view": { asks: { code: string, student: string | null, settings: Record<string, string> }, gives: LessonView },
 *   "hand-in": { asks: { code: string, student: string, name: string, estimates: Record<string, string>,
 *     settings: Record<string, string> }, gives: { version: string } },
 * }} Requests
 */

/**
 * A line: a page listens on it and asks for runs. The form has one, and each notebook.
 * @typedef {{ kind: "rig" } | { kind: "notebook", name: string }} Line
 */

/**
 * What a page sends on a line: a run of a queue, with the page's own number, or that the queue's run stops. A newer run of the
 * same queue overtakes the one before. `values` and `inSight` (cells on the screen) are a notebook's. A run of the form's answer
 * may be parted: with `until` it ends after the answer, with `from` it tells only what comes after it, for the same rig. With
 * `parts: "later"` charts and drawings come right after the answer, by themselves. A run of a notebook with `untilCell` ends
 * after that cell; what it left is done by the next.
 * @typedef {{ kind: "run", queue: string, run: number, values?: Record<string, string>, inSight?: number[],
 *   until?: "answer", from?: "answer", parts?: "later", untilCell?: number, [more: string]: unknown }
 *   | { kind: "stop", queue: string }} RunMessage
 */

/**
 * What comes on a line. `notebook`: the notebook, once, before all else; everything else names the queue and the run it
 * belongs to. The last word of a run is one of `done`, `failed`, `problems`, `stopped`; before it come any of `parameters`,
 * `cell`, `inSight`, `progress` (a notebook) or `answer`, `parts`, `rests-on`, `progress`, `would-work`, `best-rig` (the
 * form).
 * @typedef {{ kind: string, queue?: string, run?: number, [more: string]: any }} LineMessage
 */

/**
 * Who listens on a line: `message` gets what comes; `open` and `broken` (words for the reader) tell how it stands; `gone` may say
 * in words why there is nothing at the other end any more, going by what is on the shelf.
 * @typedef {{ message: (json: LineMessage) => void, open?: () => void, broken: (words: string) => void,
 *   gone?: (shelf: Shelf) => string }} LineListener
 */

/**
 * Sends on a line; true when it went out. What doesn't is lost: after an opening the page runs anew anyway.
 * @typedef {(json: RunMessage) => boolean} Send
 */

/**
 * The program behind the pages. `ask` fails with a ProgramProblem where it refuses or nobody answers, and with an AbortError
 * where the signal says that the answer is no longer wanted. `forget`: an own file is kept no longer; only where they lie in no
 * folder, in which the reader could do that.
 * @typedef {{
 *   ask<K extends keyof Requests>(name: K, what: Requests[K]["asks"], signal?: AbortSignal): Promise<Requests[K]["gives"]>,
 *   listen(line: Line, on: LineListener): Send,
 *   forget?: (id: string) => Promise<void>,
 * }} Program
 */

export {};
