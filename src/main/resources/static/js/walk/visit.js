// What is said of the visit at a stop as a whole: how the cover was, a note, photos.
export class VisitPanel {
  /** @param keep called with (stop, what) for what is to be kept */
  constructor(view, walk, keep, photos) {
    this.view = view;
    this.walk = walk;
    this.keep = keep;
    this.photos = photos;
    this.drafts = new Map(); // what was typed and not kept, by visit
    this.panel = view.root.querySelector('#visit');
    this.button = view.root.querySelector('[data-do="visit"]');
    this.note = this.panel.querySelector('#note');
    this.button.addEventListener('click', () => this.open(this.panel.hidden));
    this.panel.querySelector('.covers').addEventListener('click', (event) => this.cover(event.target.closest('[data-cover]')));
    this.panel.querySelector('form').addEventListener('submit', (event) => {
      event.preventDefault();
      this.keepNote();
    });
  }

  open(isOpen) {
    this.panel.hidden = !isOpen;
    this.button.setAttribute('aria-expanded', isOpen);
    if (isOpen) this.panel.querySelector('h2').focus();
  }

  /** Of the stop at hand; a text that was not kept stays with the stop at which it was typed. */
  show(stop) {
    if (this.stop?.visitKey !== stop.visitKey) {
      if (this.stop) this.drafts.set(this.stop.visitKey, this.note.value);
      this.note.value = this.drafts.get(stop.visitKey) ?? '';
      this.open(false);
    }
    this.stop = stop;
    this.button.hidden = false;
    this.view.put('visit-of', this.view.say('phone.visit.of', stop.code));
    this.photos.show(stop);
    this.covers();
  }

  covers() {
    const said = this.walk.entries.filter((entry) => entry.visitKey === this.stop.visitKey && entry.cover && entry.state !== 'REFUSED').at(-1);
    for (const button of this.panel.querySelectorAll('[data-cover]')) {
      button.setAttribute('aria-pressed', button.dataset.cover === said?.cover);
    }
  }

  async cover(button) {
    if (!button) return;
    await this.keep(this.stop, { cover: button.dataset.cover });
    this.covers();
  }

  async keepNote() {
    const note = this.note.value.trim();
    if (!note) return this.note.focus();
    const stop = this.stop;
    await this.keep(stop, { note });
    if (this.stop.visitKey === stop.visitKey) this.note.value = '';
    else this.drafts.delete(stop.visitKey);
  }
}
