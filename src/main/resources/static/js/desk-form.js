// The fields of a draft: where its parts are, and what they were before.
const SOON_MILLIS = 700;
const AXES = ['x', 'y', 'z'];
const same = (one, other) => one.length === other.length && one.every((text, index) => text === other[index]);

export class DeskForm {
  constructor(form) {
    this.form = form;
    this.past = [];
    this.future = [];
    this.now = this.texts();
    this.tell = () => {};
  }

  fields() {
    return [...this.form.elements].filter((field) => field.name && !this.isOfPlace(field) && !['hidden', 'submit', 'button', 'fieldset'].includes(field.type));
  }

  /** Whether a field belongs to the place that is asked about, not to the draft. */
  isOfPlace(field) {
    return AXES.includes(field.name);
  }

  /** The place that is typed; nothing unless it is whole. */
  asked() {
    const typed = AXES.map((axis) => this.form.elements.namedItem(axis)?.value.trim());
    const isWhole = typed.every((text) => text && Number.isFinite(Number(text)));
    return isWhole ? Object.fromEntries(AXES.map((axis, index) => [axis, Number(typed[index])])) : null;
  }

  texts() {
    return this.fields().map((field) => (['checkbox', 'radio'].includes(field.type) ? String(field.checked) : field.value));
  }

  field(part, name) {
    const field = this.form.elements.namedItem(`${part}.${name}`);
    return field && 'value' in field ? field : null;
  }

  /** Whether a part can be moved: it has a place. */
  has(part) {
    return AXES.every((axis) => this.field(part, `${axis}Metres`)?.value.trim());
  }

  /** Where a part begins and, if it is long, ends, m. */
  place(part) {
    const number = (name) => { const field = this.field(part, name); return field && field.value.trim() ? Number(field.value) : NaN; };
    return Object.fromEntries(AXES.map((axis) => [axis, [number(`${axis}Metres`), number(`end${axis.toUpperCase()}Metres`)]]));
  }

  /** Moves a part, in whole centimetres; says whether anything changed. */
  put(part, from, way) {
    let changed = false;
    for (const axis of AXES) {
      const metres = Math.round(way[axis] * 100) / 100;
      [`${axis}Metres`, `end${axis.toUpperCase()}Metres`].forEach((name, index) => {
        const field = this.field(part, name);
        if (!field || Number.isNaN(from[axis][index])) return;
        const text = (from[axis][index] + metres).toFixed(2).replace(/^-0\.00$/, '0.00');
        changed = changed || field.value !== text && Number(field.value) !== Number(text);
        if (Number(field.value) !== Number(text)) field.value = text;
      });
    }
    return changed;
  }

  focus(part) {
    const field = this.field(part, 'xMetres');
    const closed = field?.closest('details');
    if (closed) closed.open = true;
    field?.focus();
  }

  /** What stands in the fields becomes a state to come back to. */
  keep() {
    clearTimeout(this.timer);
    const texts = this.texts();
    if (same(texts, this.now)) return;
    this.past.push(this.now);
    this.future = [];
    this.now = texts;
    this.told();
  }

  /** The same once the keys rest. */
  keepSoon() {
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.keep(), SOON_MILLIS);
  }

  undo() {
    this.keep();
    return this.turn(this.past, this.future);
  }

  redo() {
    this.keep();
    return this.turn(this.future, this.past);
  }

  turn(from, to) {
    const texts = from.pop();
    if (!texts) return false;
    to.push(this.now);
    this.now = texts;
    this.fields().forEach((field, index) => {
      if (['checkbox', 'radio'].includes(field.type)) field.checked = texts[index] === 'true';
      else if (field.value !== texts[index]) field.value = texts[index];
    });
    this.told();
    return true;
  }

  /** Keeps the earlier states while the page is left or asked for anew. */
  store() {
    this.keep();
    const { past, future, now } = this;
    sessionStorage.setItem(this.key(), JSON.stringify({ names: this.names(), past, future, now }));
  }

  /** Takes them back, if the form has the same fields; says whether it had to begin anew. */
  recall() {
    const stored = JSON.parse(sessionStorage.getItem(this.key()) ?? 'null');
    sessionStorage.removeItem(this.key());
    if (!stored || stored.past.length + stored.future.length === 0) return false;
    if (!same(stored.names, this.names())) return true;
    this.past = stored.past;
    this.future = same(stored.now, this.now) ? stored.future : [];
    if (!same(stored.now, this.now)) this.past.push(stored.now);
    return false;
  }

  key() {
    return `desk ${this.form.getAttribute('action')}`;
  }

  names() {
    return this.fields().map((field) => `${field.name} ${field.type === 'radio' ? field.value : ''}`);
  }

  watch(tell) {
    this.tell = tell;
    this.told();
  }

  told() {
    this.tell(this.past.length > 0, this.future.length > 0);
  }
}
