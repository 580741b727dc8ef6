// The reader's own files, kept by this browser in a database of its own. All windows of these pages have the same files and hear
// of each other's changes.

const DATABASE = "rig-scenarios";
const FILES = "own-files";

/** @typedef {{ name: string, bytes: Uint8Array<ArrayBuffer> }} OwnFile */

export class OwnFiles {
  /** @type {Promise<IDBDatabase> | null} */
  #opening = null;
  #others = new BroadcastChannel(`${DATABASE}: ${FILES}`);

  /** Whenever another window has changed a file, with its name. @param {(name: string) => void} told */
  onChanged(told) { this.#others.onmessage = event => told(String(event.data)); }

  /** @returns {Promise<OwnFile[]>} */
  async all() {
    const [names, files] = await this.#do("readonly", store => [store.getAllKeys(), store.getAll()]);
    return names.map((/** @type {IDBValidKey} */ name, /** @type {number} */ at) => ({ name: String(name), bytes: files[at] }));
  }

  /** A file's bytes; null where there is none. @param {string} name @returns {Promise<Uint8Array<ArrayBuffer> | null>} */
  async get(name) { return (await this.#do("readonly", store => [store.get(name)]))[0] ?? null; }

  /** Keeps a file; fails where the browser keeps nothing or has no room. @param {string} name @param {Uint8Array} bytes */
  async put(name, bytes) {
    await this.#do("readwrite", store => [store.put(bytes, name)]);
    this.#others.postMessage(name);
  }

  /** @param {string} name */
  async remove(name) {
    await this.#do("readwrite", store => [store.delete(name)]);
    this.#others.postMessage(name);
  }

  /**
   * Done when it is on the disk, not before.
   * @param {IDBTransactionMode} mode
   * @param {(store: IDBObjectStore) => IDBRequest[]} ask
   * @returns {Promise<any[]>}
   */
  async #do(mode, ask) {
    this.#opening ??= open();
    const database = await this.#opening;
    return new Promise((resolve, reject) => {
      const transaction = database.transaction(FILES, mode, { durability: "strict" });
      const asked = ask(transaction.objectStore(FILES));
      transaction.oncomplete = () => resolve(asked.map(request => request.result));
      transaction.onerror = transaction.onabort = () => reject(transaction.error ?? new Error("The browser gave no reason."));
    });
  }
}

/** @returns {Promise<IDBDatabase>} */
function open() {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open(DATABASE, 1);
    opening.onupgradeneeded = () => { opening.result.createObjectStore(FILES); };
    opening.onsuccess = () => resolve(opening.result);
    opening.onerror = opening.onblocked = () => reject(opening.error ?? new Error("The browser's database is held up."));
  });
}
