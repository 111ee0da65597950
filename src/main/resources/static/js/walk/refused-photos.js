// What can be done with a photo that the site did not accept: its picture is still on this phone.
export class RefusedPhotos {
  /** @param changed called when there is something to send or to show */
  constructor(view, { store, pictures, changed }) {
    Object.assign(this, { store, pictures, changed });
    view.slot('entries').addEventListener('click', (event) => this.choose(event.target.closest('[data-refused]')?.dataset));
  }

  async choose(chosen) {
    if (!chosen) return;
    const entry = (await this.store.all()).find((one) => one.key === chosen.key && one.state === 'REFUSED');
    if (entry && chosen.refused === 'again') await this.store.put({ ...entry, state: 'WAITING', words: '' });
    if (entry && chosen.refused === 'forget') {
      await this.store.delete(entry.key);
      await this.pictures.delete(entry.key);
    }
    this.changed();
  }
}
