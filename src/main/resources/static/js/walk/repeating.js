// The entries of steps at which three amounts are asked for: open, and kept on the phone, until all are typed.
const LEFT_MILLISECONDS = 2 * 3_600_000;

export class Repeating {
  /** @param rule {ASKED, nextOf, amountOf} */
  constructor(walk, rule) {
    this.walk = walk;
    this.rule = rule;
  }

  /** The entry of a step that is not whole yet, or null. */
  openAt({ stop, step }) {
    return this.walk.entries.find((entry) => entry.state === 'OPEN' && entry.personId === this.walk.sheet.person.id
      && entry.visitKey === stop.visitKey && entry.pointId === step.pointId && entry.quantity === step.quantity) ?? null;
  }

  /** How far a step is: null where nothing is repeated; never an amount. */
  shown(at) {
    if (!at.step.repeats) return null;
    const open = this.openAt(at);
    const typed = open?.repeats.length ?? 0;
    return { number: typed % this.rule.ASKED + 1, of: this.rule.ASKED, allAgain: typed >= this.rule.ASKED, open };
  }

  /** What one amount more makes of an entry. Over the ceiling it counts at once: nobody stays there for another. */
  after(open, { amount, typed, resolution, over }) {
    const repeats = [...(open?.repeats ?? []), amount];
    const texts = [...(open?.texts ?? []), typed];
    const isOpen = !over && this.rule.nextOf(repeats, resolution) !== 'ENOUGH';
    const counting = isOpen || over ? amount : this.rule.amountOf(repeats);
    return { repeats, texts, stopped: over, amount: counting, typed: texts[repeats.lastIndexOf(counting)], state: isOpen ? 'OPEN' : 'WAITING' };
  }

  /** Begun and left: sent as they are, so that nothing is lost. */
  left(now = Date.now()) {
    return this.walk.entries.filter((entry) => entry.state === 'OPEN' && now - Date.parse(entry.takenAt) > LEFT_MILLISECONDS);
  }
}
