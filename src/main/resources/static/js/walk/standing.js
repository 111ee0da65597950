// What stands around the step of a walk: progress, what waits, the reader's own dose, all points, all that was typed.
const AGED_MILLISECONDS = 5 * 86_400_000;
const UNITS = [['days', 86_400_000], ['hours', 3_600_000], ['minutes', 60_000]];

export class Standing {
  constructor(view, walk, goTo) {
    this.view = view;
    this.walk = walk;
    this.goTo = goTo;
  }

  show({ signedOut = false, otherPerson = false } = {}) {
    const done = this.walk.steps.filter((at) => this.walk.isDone(at)).length;
    this.view.put('progress', this.view.say('phone.progress', done, this.walk.steps.length));
    this.waiting(otherPerson);
    this.view.root.querySelector('#signed-out').hidden = !signedOut;
    this.last();
    this.dose();
    this.doors();
    this.entries();
  }

  /** What became of the entry before this step. */
  last() {
    const entry = this.walk.entries.at(-1);
    if (entry && this.view.isSaid()) this.view.said(this.words(entry));
  }

  words(entry) {
    return this.view.say('phone.kept', entry.place, this.what(entry), this.view.say(`phone.state.${entry.state}`));
  }

  /** What was typed; of what is to be repeated how often, never the amount. */
  what(entry) {
    if (entry.outcome) return this.view.say(`outcome.${entry.outcome}`);
    if (entry.cover) return this.view.say(`visit.cover.${entry.cover}`);
    if (entry.photo) return this.view.say('phone.photo.kept', Math.ceil(entry.photo / 1000));
    if (entry.note) return this.view.say('phone.note', entry.note);
    if (entry.state === 'OPEN') return this.view.say('phone.repeats.kept', entry.repeats.length, entry.repeats.length < 3 ? 3 : 6);
    return `${entry.typed} ${entry.unit}`;
  }

  waiting(otherPerson) {
    const waiting = this.walk.entries.filter((entry) => ['WAITING', 'SENT'].includes(entry.state));
    const strip = this.view.root.querySelector('#waits');
    strip.hidden = !waiting.length;
    if (!waiting.length) return;
    const age = Math.max(0, Date.now() - Math.min(...waiting.map((entry) => Date.parse(entry.takenAt))));
    this.view.put('waiting', waiting.length === 1
      ? this.view.say('phone.waiting.one', this.age(age)) : this.view.say('phone.waiting.many', waiting.length, this.age(age)));
    const photos = waiting.filter((entry) => entry.photo).length;
    this.view.put('waiting-photos', photos ? this.view.say('phone.waiting.photos', photos) : '');
    this.view.slot('waiting-old').hidden = age < AGED_MILLISECONDS;
    const others = waiting.filter((entry) => entry.personId !== this.walk.sheet.person.id);
    this.view.put('other-person', otherPerson && others.length ? this.view.say('phone.other-person', others.length, others[0].personName) : '');
  }

  age(milliseconds) {
    const [unit, length] = UNITS.find(([, one]) => milliseconds >= one) ?? UNITS.at(-1);
    return this.view.say(`phone.waiting.${unit}`, Math.floor(milliseconds / length));
  }

  dose() {
    const dose = this.walk.dose();
    const panel = this.view.root.querySelector('#dose');
    panel.hidden = !(dose.share >= 0.01);
    if (panel.hidden) return;
    this.view.put('dose', this.view.say('phone.dose', dose.uviMinutes.toFixed(1), Math.round(dose.share * 100), this.view.say(`phone.dose.${dose.binding}`)));
    this.view.put('dose-advice', dose.advice === 'NONE' ? '' : this.view.say(`phone.dose.${dose.advice}`));
    this.view.slot('dose-assumed').hidden = !dose.assumed;
  }

  doors() {
    this.view.slot('doors').replaceChildren(...this.walk.sheet.stops.map((stop) => {
      const steps = this.walk.steps.filter((at) => at.stop === stop);
      const item = this.view.item('');
      const button = document.createElement('button');
      button.type = 'button';
      button.className = 'wide';
      button.textContent = `${stop.code}: ${this.view.say('phone.progress', steps.filter((at) => this.walk.isDone(at)).length, steps.length)}`;
      button.addEventListener('click', () => this.goTo(steps.find((at) => !this.walk.isDone(at)) ?? steps[0]));
      item.append(button);
      return item;
    }));
  }

  /** Newest first. */
  entries() {
    const items = [...this.walk.entries].reverse().map((entry) => {
      const item = this.view.item(this.words(entry));
      item.dataset.state = entry.state;
      if (entry.words) item.append(`. ${entry.words}`);
      if (entry.photo && entry.state === 'REFUSED') item.append(this.choices(entry));
      return item;
    });
    const { refused, key } = document.activeElement.dataset;
    this.view.slot('entries').replaceChildren(...items);
    if (refused) this.view.slot('entries').querySelector(`[data-refused="${refused}"][data-key="${key}"]`)?.focus();
    this.view.slot('none').hidden = items.length > 0;
  }

  /** A picture that is still on this phone may be sent again, or go. */
  choices(entry) {
    const row = document.createElement('div');
    row.className = 'row';
    row.append(...['again', 'forget'].map((choice) => {
      const button = document.createElement('button');
      button.type = 'button';
      button.dataset.refused = choice;
      button.dataset.key = entry.key;
      button.textContent = this.view.say(`phone.photo.${choice}`);
      return button;
    }));
    return row;
  }
}
