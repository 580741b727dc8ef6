// What the page's scripts find in a browser besides the browser itself, for the type check.
import type { Part, Table } from "../../src/RigScenarios.Page/site/shared/requests.js";

declare global {
  /** carried.js: what a saved page that answers carries. Nowhere else is there any. */
  var carried: {
    BASE: string;
    beginPage(): Promise<void>;
    beginWorker(): void;
    load(address: unknown): Promise<any>;
    charts(): Promise<Blob>;
    makeWorker(): Worker;
    whole: Promise<unknown>;
    saved: any;
  };

  // What a script keeps at an element. Names begin with "rs", so that they are no browser's.
  interface Element {
    /** The part that an element shows: see parts.js. */
    rsPart?: Part;
    /** A chart's specification that is still to be drawn. */
    rsWaiting?: unknown;
    /** The markup that a drawing was made from. */
    rsMarkup?: string;
    /** The table of a figure's numbers. */
    rsTable?: Table;
    /** The row of what can be saved of it. */
    rsHasTools?: Element;
  }

  // Pages are made of HTML, with drawings in SVG whose elements have the same members as far as scripts use them.
  interface ParentNode {
    querySelector<K extends keyof HTMLElementTagNameMap>(selectors: K): HTMLElementTagNameMap[K] | null;
    querySelector(selectors: string): HTMLElement | null;
    querySelectorAll<K extends keyof HTMLElementTagNameMap>(selectors: K): NodeListOf<HTMLElementTagNameMap[K]>;
    querySelectorAll(selectors: string): NodeListOf<HTMLElement>;
  }

  interface Element {
    closest(selectors: string): HTMLElement | null;
  }

  interface HTMLElement {
    /** The drawing that an element of SVG stands in. */
    ownerSVGElement?: SVGSVGElement | null;
  }

  interface Window {
    /** figure.js: draws charts, and makes pictures of them. */
    rigFigures: {
      draw(element: HTMLElement, specification: any): Promise<unknown>;
      forget(element: HTMLElement): void;
      redraw(): void;
      picture(specification: any,
        options: { format: string, width: number, height: number, scale?: number }): Promise<string>;
    };
    /** keep.js: charts, drawings and numbers as files. */
    rigKeep: {
      csvOfChart(specification: any): string;
      csvOfTable(table: Table): string;
      drawingOf(markup: string): { text: string, width: number, height: number };
      save(content: Blob | string, name: string, type?: string): void;
      saveChart(specification: any, name: string, format: "png" | "svg"): Promise<void>;
      saveDrawing(markup: string, name: string, format: "png" | "svg"): Promise<void>;
      saveNumbers(text: string, name: string): void;
    };
    /** The same for pages that are kept: draws a figure where its name says. */
    rigFigure: (slug: string, specification: any) => void;
    /** Asks for a place to save a file at, where the browser can (File System Access, WICG). */
    showSaveFilePicker?(options: { suggestedName: string, types: { description: string, accept: Record<string, string[]> }[] }):
      Promise<FileSystemFileHandle>;
    /** Done when plotly.js is there, in pages that it comes packed to. */
    rigPlotly?: Promise<void>;
    /** plotly.js. */
    Plotly: any;
  }
}
