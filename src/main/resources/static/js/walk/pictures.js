// The pictures of photos that were taken on this phone and are not stored yet. They have a database of their own, so that
// what is typed is never read or written together with them.
const NAME = 'dapple-walk-photos';
const ROOM = 'room';
const ROOM_BYTES = 2_000_000; // stays free: some thousand readings
const CHANCE_BYTES = 65_536; // the most that a browser gives at once
const BEGUN_MILLISECONDS = 3_600_000;

const done = (request) => new Promise((resolve, reject) => {
  request.onsuccess = () => resolve(request.result);
  request.onerror = () => reject(request.error);
});

const open = () => {
  const request = indexedDB.open(NAME, 1);
  request.onupgradeneeded = () => request.result.createObjectStore('pictures', { keyPath: 'key' });
  return done(request);
};

/** By chance, so that no browser can fold it. */
function filled(length) {
  const bytes = new Uint8Array(length);
  for (let at = 0; at < length; at += CHANCE_BYTES) crypto.getRandomValues(bytes.subarray(at, at + CHANCE_BYTES));
  return bytes.buffer;
}

export class Pictures {
  /**
   * Kept when this returns; throws, and keeps nothing, unless there is room for it and for what is typed after it. Not every
   * browser says what room there is: therefore it is tried.
   */
  async put(key, bytes) {
    await this.change((pictures) => {
      pictures.put({ key, bytes, at: Date.now() });
      pictures.put({ key: ROOM, bytes: filled(ROOM_BYTES), at: 0 });
    });
    await this.delete(ROOM);
  }

  /** The bytes of a JPEG, or null. */
  async get(key) {
    return (await this.found(key))?.bytes ?? null;
  }

  async delete(...keys) {
    await this.change((pictures) => keys.forEach((key) => pictures.delete(key)));
  }

  /** Throws away what no entry needs any more; an entry of a picture that was begun just now may follow. */
  async keepOnly(needed) {
    const pictures = (await this.opened()).transaction('pictures').objectStore('pictures');
    for (const key of (await done(pictures.getAllKeys())).filter((one) => !needed.includes(one))) {
      const found = await this.found(key);
      if (found && Date.now() - found.at > BEGUN_MILLISECONDS) await this.delete(key);
    }
  }

  async found(key) {
    return done((await this.opened()).transaction('pictures').objectStore('pictures').get(key));
  }

  async change(work) {
    const transaction = (await this.opened()).transaction('pictures', 'readwrite', { durability: 'strict' });
    work(transaction.objectStore('pictures'));
    await new Promise((resolve, reject) => {
      transaction.oncomplete = resolve;
      transaction.onabort = () => reject(transaction.error);
    });
  }

  opened() {
    return this.database ??= open();
  }
}
