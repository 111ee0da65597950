// What is computed from a draft: asked for with the form's fields, one request at a time, the newest state next.
const REST_MILLIS = 350;
const SVG = 'http://www.w3.org/2000/svg';
/** One request at a time; while it is under way only the newest of the next is remembered. */
class Asking {
  constructor(path, taken, failed) {
    this.path = path;
    this.taken = taken;
    this.failed = failed;
  }

  ask(body, isLong) {
    if (this.under && !this.under.isLong) {
      this.next = [body, isLong];
      return;
    }
    this.under?.abort.abort();
    const under = { abort: new AbortController(), isLong };
    this.under = under;
    this.send(under, body).finally(() => {
      if (this.under !== under) return;
      this.under = null;
      const next = this.next;
      this.next = null;
      if (next) this.ask(...next);
    });
  }

  async send(under, body) {
    try {
      const answer = await fetch(this.path, { method: 'POST', body, signal: under.abort.signal, redirect: 'error', headers: { Accept: 'text/html' } });
      const html = await answer.text();
      if (this.under !== under) return;
      if (answer.ok) this.taken(html, body);
      else this.failed();
    } catch (failure) {
      if (this.under === under && failure.name !== 'AbortError') this.failed();
    }
  }
}

const parsed = (html, id) => new DOMParser().parseFromString(html, 'text/html').getElementById(id);

export class Looking {
  constructor(form, look, fields, swapping) {
    Object.assign(this, { form, look, fields, swapping });
    this.drawn = this.places();
    this.lookAsking = new Asking(form.dataset.look, (html, body) => this.swap(html, body), () => this.fail());
    this.atAsking = new Asking(form.dataset.at, (html) => this.tell(html), () => {});
  }

  body(more) {
    const body = new URLSearchParams(new FormData(this.form));
    for (const [name, text] of Object.entries(more)) body.set(name, text);
    return body;
  }

  places() {
    const parts = new Set([...this.look.querySelectorAll('[data-part]')].map((part) => part.dataset.part));
    return new Map([...parts].map((part) => [part, this.fields.place(part)]));
  }

  /** Something is being moved: shown at once, computed roughly, and closely once that has come and nothing moves. */
  moving() {
    clearTimeout(this.rest);
    this.shift();
    this.lookAsking.ask(Object.assign(this.body({ rough: 'true', unseen: this.swapping.unseen(this.look) }), { places: this.places(), isRough: true }), false);
  }

  resting() {
    clearTimeout(this.rest);
    this.lookAsking.ask(Object.assign(this.body({}), { places: this.places() }), true);
  }

  swap(html, body) {
    const found = parsed(html, 'look');
    if (!found) return this.fail();
    for (const words of document.querySelectorAll('[data-look-failed]')) words.hidden = true;
    const held = document.activeElement?.closest?.('#look [data-part], #look [id]');
    const [part, plane] = [held?.dataset.part, held?.ownerSVGElement?.dataset.plane];
    this.swapping.replaceChanged(this.look, found);
    this.drawn = body.places;
    clearTimeout(this.rest);
    if (body.isRough && !this.lookAsking.next) this.rest = setTimeout(() => this.resting(), REST_MILLIS);
    this.shift();
    this.mark();
    if (part) this.focus(`svg[data-plane="${plane}"] [data-part="${CSS.escape(part)}"]`);
    else if (held?.id && !held.isConnected) this.focus(`#${CSS.escape(held.id)}`);
    this.look.dispatchEvent(new CustomEvent('looked', { bubbles: true }));
  }

  focus(where) {
    [...this.look.querySelectorAll(where)].find((one) => one.checkVisibility?.() ?? true)?.focus({ preventScroll: true });
  }

  fail() {
    for (const words of document.querySelectorAll('[data-look-failed]')) words.hidden = false;
  }

  /** Parts that have moved since they were drawn stand where they are now. */
  shift() {
    for (const part of this.look.querySelectorAll('[data-part]')) {
      const from = this.drawn.get(part.dataset.part);
      const svg = part.ownerSVGElement;
      if (!from || !svg?.dataset.plane) continue;
      const now = this.fields.place(part.dataset.part);
      const units = Number(svg.dataset.unitsPerMetre);
      const up = svg.dataset.plane === 'plan' ? 'y' : 'z';
      const right = (now.x[0] - from.x[0]) * units || 0;
      const down = (from[up][0] - now[up][0]) * units || 0;
      part.setAttribute('transform', `translate(${right} ${down})`);
    }
  }

  /** What is at a place. */
  at(place) {
    this.asked = place;
    this.mark();
    const metres = Object.fromEntries(Object.entries(place).map(([axis, number]) => [axis, number.toFixed(3)]));
    this.atAsking.ask(this.body(metres), false);
  }

  tell(html) {
    document.getElementById('at')?.replaceChildren(...(parsed(html, 'at')?.childNodes ?? []));
  }

  /** A cross at the place that was asked for. */
  mark() {
    for (const old of this.look.querySelectorAll('.here')) old.remove();
    if (!this.asked) return;
    for (const svg of this.look.querySelectorAll('svg[data-plane]')) {
      const x = Number(svg.dataset.left) + this.asked.x * Number(svg.dataset.unitsPerMetre);
      const up = svg.dataset.plane === 'plan' ? this.asked.y : this.asked.z;
      const y = Number(svg.dataset.bottom) - up * Number(svg.dataset.unitsPerMetre);
      const cross = document.createElementNS(SVG, 'path');
      cross.setAttribute('class', 'here');
      cross.setAttribute('d', `M${x - 7} ${y}h14M${x} ${y - 7}v14`);
      svg.append(cross);
    }
  }
}
