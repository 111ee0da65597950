// Shows a walk: fills the places of the page that are marked for it. All texts come from the server.

export class View {
  constructor(root, texts) {
    this.root = root;
    this.texts = texts;
  }

  say(key, ...values) {
    return values.reduce((text, value, at) => text.replaceAll(`{${at}}`, value), this.texts[key] ?? key);
  }

  slot(name) {
    return this.root.querySelector(`[data-slot="${name}"]`);
  }

  put(name, text) {
    const slot = this.slot(name);
    slot.textContent = text;
    slot.hidden = !text;
  }

  /** One of the step, the stop card and the end has the page to itself. */
  only(id) {
    for (const one of ['step', 'over', 'all-read']) this.root.querySelector(`#${one}`).hidden = one !== id;
    this.root.querySelector(`#${id} [tabindex]`).focus({ preventScroll: false });
  }

  step(at, walk, chosenMeter) {
    const { stop, step } = at;
    this.put('door', this.say('phone.door', stop.code, stop.room));
    this.put('species', stop.species.join(', '));
    this.put('title', step.title);
    this.put('quantity', step.quantityWord);
    this.put('where', step.where);
    this.put('last-read', step.lastRead);
    this.put('cold', walk.cold(at).map((lamp) => this.say('phone.cold', lamp.tag)).join(' '));
    this.put('unit', step.unit);
    this.put('amount-label', `${step.quantityWord || step.unit} ${step.code}`);
    this.field(step);
    this.meters(walk.metersFor(step), chosenMeter, step);
    this.held(step);
    this.root.querySelector('[data-outcome="SKIPPED"]').hidden = !step.skippable;
    this.root.querySelector('#unlikely').hidden = !walk.isDoubted(at);
    this.put('both', '');
    this.only('step');
  }

  field(step) {
    const field = this.root.querySelector('#amount');
    const isUvi = step.quantity === 'UV_INDEX';
    field.value = '';
    field.classList.toggle('long', !isUvi);
    field.dataset.digits = isUvi ? 5 : 7;
    this.slot('sign').hidden = !step.mayBeNegative;
    field.dispatchEvent(new Event('input'));
    this.wrong('');
  }

  wrong(text) {
    const place = this.root.querySelector('#amount-wrong');
    place.textContent = text;
    place.hidden = !text;
    this.root.querySelector('#amount').toggleAttribute('aria-invalid', Boolean(text));
  }

  meters(meters, chosen, step) {
    const select = this.root.querySelector('#meter');
    select.replaceChildren(...meters.map((meter) => new Option(meter.name, meter.id, false, meter.id === chosen)));
    select.closest('.field').hidden = !meters.length;
    this.root.querySelector('#entry').hidden = !meters.length;
    this.slot('no-meter-next').hidden = Boolean(meters.length);
    this.put('no-meter', meters.length ? '' : this.say('visit.no-meter', step.quantityWord || step.unit));
    this.notice(meters);
  }

  notice(meters) {
    const chosen = Number(this.root.querySelector('#meter').value);
    this.put('meter-notice', (meters.find((meter) => meter.id === chosen)?.notices ?? []).join('. '));
  }

  held(step) {
    const select = this.root.querySelector('#held');
    select.replaceChildren(select.options[0], ...step.otherwise.map((one) => new Option(one.word, one.value)));
    select.value = '';
    this.slot('held').hidden = !step.otherwise.length;
  }

  /** Which of several amounts is next; while some are typed they stay with their meter. */
  repeats(shown) {
    this.put('repeats', shown ? this.say('repeats.number', shown.number, shown.of) : '');
    this.slot('repeats-how').hidden = !shown;
    this.slot('apart').hidden = !shown?.allAgain;
    this.root.querySelector('#meter').disabled = Boolean(shown?.open);
    const held = this.root.querySelector('#held');
    held.disabled = Boolean(shown?.open);
    held.value = shown?.open?.held ?? '';
  }

  unlikely(found) {
    this.put('unlikely', this.say(`phone.unlikely.${found.direction}`));
    this.slot('slips').replaceChildren(...found.slips.map((slip) => this.item(this.say(`phone.slip.${slip}`))));
    this.root.querySelector('#unlikely').hidden = false;
  }

  over(at, entry) {
    this.put('over-amount', entry.typed);
    this.put('over-unit', at.step.unit);
    this.put('over-ceiling', this.say('phone.over', `${at.stop.code} ${at.step.code}`, `${at.step.ceiling} ${at.step.unit}`));
    this.put('over-at', this.say('phone.taken', new Date(entry.takenAt).toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' })));
    this.only('over');
  }

  isSaid() {
    return !this.root.querySelector('#said').hidden;
  }

  said(text) {
    const place = this.root.querySelector('#said');
    place.textContent = text;
    place.hidden = !text;
  }

  both() {
    this.put('both', this.say('phone.both'));
  }

  item(text) {
    const item = document.createElement('li');
    item.textContent = text;
    return item;
  }
}
