// Takes photos of the visit at hand: each is made small at once, kept on the phone, and listed with what was typed.
const MOST_OF_A_VISIT = 6;

export class PhotoPanel {
  /**
   * @param small makes a file small, without what the camera says of place and time
   * @param keep called with ({stop}, what) for what is to be listed
   */
  constructor(view, walk, { pictures, small, keep, newKey }) {
    Object.assign(this, { view, walk, pictures, small, keep, newKey, busy: Promise.resolve() });
    this.field = view.root.querySelector('#photo');
    this.field.addEventListener('change', () => this.take([...this.field.files]));
  }

  /** Of the stop at hand. */
  show(stop) {
    if (this.stop?.visitKey !== stop.visitKey) this.say('photo-wrong', '');
    this.stop = stop;
    this.count();
    this.view.slot('photos').href = `/enclosures/${stop.enclosureId}/visits/${stop.visitKey}/photos`;
  }

  /** One after another, also when the next is chosen while one is made small. */
  take(files) {
    const { stop } = this;
    this.field.value = '';
    for (const file of files) this.busy = this.busy.then(() => this.takeOne(file, stop));
  }

  async takeOne(file, stop) {
    this.say('photo-wrong', '');
    this.view.put('photo-count', this.view.say('photos.busy'));
    this.say('photo-wrong', await this.wrongWith(file, stop));
    this.count();
  }

  count() {
    const count = this.countOf(this.stop);
    this.view.put('photo-count', count ? this.view.say('phone.photo.count', count) : '');
  }

  /** What hinders that a photo is kept; empty: it is kept. */
  async wrongWith(file, stop) {
    if (this.countOf(stop) >= MOST_OF_A_VISIT) return this.view.say('phone.photo.many');
    let picture;
    try {
      picture = await (await this.small(file)).arrayBuffer();
    } catch {
      return this.view.say('phone.photo.unread');
    }
    const key = this.newKey();
    try {
      await this.pictures.put(key, picture);
      await this.keep({ stop }, { key, photo: picture.byteLength });
      return '';
    } catch {
      await this.pictures.delete(key).catch(() => {});
      return this.view.say('phone.photo.full');
    }
  }

  countOf(stop) {
    return this.walk.entries.filter((entry) => entry.photo && entry.visitKey === stop.visitKey && entry.state !== 'REFUSED').length;
  }

  say(slot, text) {
    this.view.put(slot, text);
    if (slot === 'photo-wrong') this.field.toggleAttribute('aria-invalid', Boolean(text));
  }
}
