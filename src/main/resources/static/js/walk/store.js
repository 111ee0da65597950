// What was typed on this phone, kept in the browser's own database until the site has stored it and for a day after.
const NAME = 'dapple-walk';
const KEPT_MILLISECONDS = 24 * 3600 * 1000;

const done = (request) => new Promise((resolve, reject) => {
  request.onsuccess = () => resolve(request.result);
  request.onerror = () => reject(request.error);
});

const open = () => {
  const request = indexedDB.open(NAME, 1);
  request.onupgradeneeded = () => request.result.createObjectStore('entries', { keyPath: 'key' });
  return done(request);
};

export class Store {
  /** Waits until it may be used; throws where the browser keeps nothing. */
  static async opened() {
    const store = new Store(await open());
    await store.forgetOld();
    navigator.storage?.persist?.();
    return store;
  }

  constructor(database) {
    this.database = database;
  }

  /** Kept when this returns, a dead battery later. */
  async put(entry) {
    await this.change((entries) => entries.put(entry));
  }

  async delete(key) {
    await this.change((entries) => entries.delete(key));
  }

  async change(work) {
    const transaction = this.database.transaction('entries', 'readwrite', { durability: 'strict' });
    work(transaction.objectStore('entries'));
    await new Promise((resolve, reject) => {
      transaction.oncomplete = resolve;
      transaction.onabort = () => reject(transaction.error);
    });
  }

  /** All, in the order in which they were typed. */
  async all() {
    const entries = await done(this.database.transaction('entries').objectStore('entries').getAll());
    return entries.sort((one, other) => one.number - other.number || one.takenAt.localeCompare(other.takenAt));
  }

  async forgetOld() {
    const before = Date.now() - KEPT_MILLISECONDS;
    const old = (await this.all()).filter((entry) => entry.state === 'STORED' && Date.parse(entry.takenAt) < before);
    const entries = this.database.transaction('entries', 'readwrite').objectStore('entries');
    await Promise.all(old.map((entry) => done(entries.delete(entry.key))));
  }
}

/** A version 4 UUID [rfc9562] of what also plain HTTP has. */
export function newKey() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = (bytes[6] & 0x0f) | 0x40;
  bytes[8] = (bytes[8] & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join('-');
}
