// Sends the photos that wait, one after another, while no reading waits; readings typed meanwhile go past them.
const PATIENCE_MILLISECONDS = 120_000;
const PLACED_FIELDS = ['key', 'visitKey', 'personId', 'enclosureId', 'takenAt'];

const waits = (entry) => entry.state === 'WAITING' || entry.state === 'SENT';

export class PhotoSender {
  /** @param lost what is said of a photo whose picture this phone has not any more */
  constructor(store, pictures, sender, lost) {
    Object.assign(this, { store, pictures, sender, lost, busy: false });
  }

  async send() {
    if (this.busy) return;
    this.busy = true;
    try {
      while (await this.next());
    } finally {
      this.busy = false;
    }
  }

  /** Whether there may be another. */
  async next() {
    const waiting = (await this.store.all()).filter(waits);
    if (!waiting.some((entry) => entry.photo)) return false;
    const ticket = await this.sender.ticket();
    if (!ticket) return false;
    if (ticket.signedOut) return this.stop({ signedOut: true });
    const mine = waiting.filter((entry) => entry.personId === ticket.personId);
    if (!mine.length || mine.some((entry) => !entry.photo)) return this.stop({ otherPerson: mine.length < waiting.length });
    return await this.sendOne(mine[0], ticket) || this.stop({});
  }

  async stop(how) {
    await this.sender.tell(how);
    return false;
  }

  /** Whether the next may follow. */
  async sendOne(photo, ticket) {
    const bytes = await this.pictures.get(photo.key);
    if (!bytes) {
      await this.store.put({ ...photo, state: 'REFUSED', words: this.lost });
      return true;
    }
    const { state } = await this.sender.settled(photo, () => this.sender.fetch('/walk/photos', {
      method: 'POST',
      redirect: 'manual',
      headers: { [ticket.header]: ticket.token },
      body: this.form(photo, bytes),
      signal: AbortSignal.timeout(PATIENCE_MILLISECONDS),
    }));
    this.sender.tell({});
    if (state === 'STORED') await this.pictures.delete(photo.key);
    return state !== 'WAITING';
  }

  form(photo, bytes) {
    const placed = { ...Object.fromEntries(PLACED_FIELDS.map((field) => [field, photo[field]])), sentAt: new Date().toISOString() };
    const form = new FormData();
    form.append('entry', new Blob([JSON.stringify(placed)], { type: 'application/json' }));
    form.append('photo', new Blob([bytes], { type: 'image/jpeg' }), 'photo.jpg');
    return form;
  }
}
