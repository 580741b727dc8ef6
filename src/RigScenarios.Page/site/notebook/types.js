// What a notebook's page is made of. Only types stand here.

/**
 * Values of parameters by name, as a person writes them.
 * @typedef {Record<string, string>} Values
 */

/**
 * What may be chosen; for a part that slides with its stretch in millimetres.
 * @typedef {{ value: string, title: string, detail?: string, least?: number, greatest?: number, at?: number }} Choice
 */

/**
 * A parameter. `isOptional`: its value may be "", and then it is the chosen file's.
 * @typedef {{ name: string, label: string, kind: string, unit: string, of: string, minimum: number | null,
 *   maximum: number | null, default: string, isOptional: boolean, choices: Choice[] }} Parameter
 */

/**
 * @typedef {{ kind: "prose", html: string }} ProseCell
 * @typedef {{ kind: "code", number: number, code: string, isParameters: boolean, isStart: boolean }} CodeCell
 * @typedef {{ name: string, title: string, cells: (ProseCell | CodeCell)[], parameters: Parameter[] }} Notebook
 */

/** @typedef {"now" | "pinned"} VersionName */

/** The page as a whole: what the controls say, and what is pinned beside it.
 * @typedef {{ now: Values, pinned: Values | null }} State */

/**
 * What a cell tells of a control: the value that it stands on where the reader gave none, and whether that is the file's; why it
 * moves nothing.
 * @typedef {{ name: string, holds: string | null, isOfFile: boolean, whyNothing: string | null }} Told
 */

/**
 * A control. `held`: the file's value that it stands on.
 * @typedef {{ label: HTMLElement, fields: HTMLElement[], row: (HTMLElement | null)[], value: string, note?: HTMLElement,
 *   held?: string, list?: import("../shared/places.js").PlacesList, useChoices?: (choices: Choice[]) => void,
 *   touched?: (isSettled: boolean) => void, hold?: (value: string, isOfFile: boolean) => void }} PlainControl
 * @typedef {PlainControl & { element: HTMLElement, useChoices: (choices: Choice[]) => void, say: (words: string) => void,
 *   why: (words: string) => void }} Control
 */

export {};
