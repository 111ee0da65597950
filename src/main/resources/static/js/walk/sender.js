// Sends what waits, one entry after another in the order of typing, until the site says that it is stored. Photos come after.
const AGAIN_MILLISECONDS = 15_000;
const PATIENCE_MILLISECONDS = 20_000;
const SENT_FIELDS = ['key', 'visitKey', 'personId', 'enclosureId', 'pointId', 'quantity', 'meterId', 'amount', 'held', 'outcome',
  'repeats', 'stopped', 'note', 'cover', 'takenAt', 'secondsAtPoint'];

const REFUSALS = [400, 413, 422];

const waits = (entry) => (entry.state === 'WAITING' || entry.state === 'SENT') && !entry.photo;

export class Sender {
  /**
   * @param told called with (entries, {signedOut, otherPerson}) whenever something has changed
   * @param afterwards called whenever nothing more can be sent
   */
  constructor(store, told, afterwards) {
    this.store = store;
    this.told = told;
    this.afterwards = afterwards;
    this.busy = false;
    this.again = false;
    addEventListener('online', () => this.send());
    document.addEventListener('visibilitychange', () => document.hidden || this.send());
    setInterval(() => this.send(), AGAIN_MILLISECONDS);
  }

  /** Sends all that waits; asked while it sends, it looks again afterwards. */
  async send() {
    this.again = true;
    if (this.busy) return;
    this.busy = true;
    try {
      while (this.again) {
        this.again = false;
        await this.round();
      }
    } finally {
      this.busy = false;
    }
    this.afterwards();
  }

  async round() {
    const waiting = (await this.store.all()).filter(waits);
    if (!waiting.length) return this.tell({});
    const ticket = await this.ticket();
    if (!ticket) return this.tell({});
    if (ticket.signedOut) return this.tell({ signedOut: true });
    for (const entry of waiting.filter((one) => one.personId === ticket.personId)) {
      if (!await this.sendOne(entry, ticket)) break;
    }
    return this.tell({ otherPerson: waiting.some((one) => one.personId !== ticket.personId) });
  }

  /** Who is signed in; null without network. A site that asks for sign-in sends elsewhere instead. */
  async ticket() {
    try {
      const answer = await this.fetch('/walk/ticket', { redirect: 'manual' });
      if (answer.type === 'opaqueredirect' || answer.status === 401 || answer.status === 403) return { signedOut: true };
      return answer.ok ? await answer.json() : null;
    } catch {
      return null;
    }
  }

  /** Whether the next may follow: what is refused is out of the way, what was not answered is not. */
  async sendOne(entry, ticket) {
    const settled = await this.settled(entry, () => this.fetch('/walk/entries', {
      method: 'POST',
      redirect: 'manual',
      headers: { 'Content-Type': 'application/json', [ticket.header]: ticket.token },
      body: JSON.stringify({ ...Object.fromEntries(SENT_FIELDS.map((field) => [field, entry[field] ?? null])), sentAt: new Date().toISOString() }),
    }));
    return settled.state !== 'WAITING';
  }

  /** What became of an entry by the answer to what it is sent with. */
  async settled(entry, post) {
    await this.store.put({ ...entry, state: 'SENT' });
    this.tell({});
    const settled = { ...entry, ...await this.became(post) };
    await this.store.put(settled);
    return settled;
  }

  async became(post) {
    try {
      const answer = await post();
      if (REFUSALS.includes(answer.status)) return { state: 'REFUSED', words: '' };
      if (!answer.ok) throw new Error(`answered ${answer.status}`);
      const said = await answer.json();
      return { state: said.kind, words: said.words, judged: said.state, readingId: said.readingId };
    } catch {
      return { state: 'WAITING' };
    }
  }

  /** A sign-in leads back to pages, not to what was asked for in passing: therefore the header. */
  fetch(path, { headers, ...options }) {
    return fetch(path, {
      credentials: 'same-origin', cache: 'no-store', signal: AbortSignal.timeout(PATIENCE_MILLISECONDS),
      headers: { Accept: 'application/json', 'X-Requested-With': 'XMLHttpRequest', ...headers }, ...options,
    });
  }

  async tell(how) {
    this.told(await this.store.all(), how);
  }
}
