// Where a walk stands: which step is next, and what an amount at it means. Knows the sheet and the entries, not the page.
const MILLISECONDS_PER_MINUTE = 60_000;
const LONGEST_MINUTES = 10;

export class Walk {
  constructor(sheet, { slipsOf, keeperDose }) {
    this.sheet = sheet;
    this.slipsOf = slipsOf;
    this.keeperDose = keeperDose;
    this.steps = sheet.stops.flatMap((stop) => stop.steps.map((step) => ({ stop, step })));
    this.entries = [];
  }

  entriesOf({ stop, step }) {
    return this.entries.filter((entry) => entry.visitKey === stop.visitKey && entry.pointId === step.pointId && !['REFUSED', 'OPEN'].includes(entry.state)
      && (entry.quantity === step.quantity || (entry.outcome && !['NO_METER', 'SKIPPED'].includes(entry.outcome))));
  }

  /** A doubted reading alone leaves its step open, until there is a second. */
  isDone(at) {
    const entries = this.entriesOf(at);
    return at.step.done || entries.length > 1 || (entries.length === 1 && !entries[0].doubted);
  }

  isDoubted(at) {
    return this.entriesOf(at).some((entry) => entry.doubted);
  }

  next(after = -1) {
    const order = [...this.steps.slice(after + 1), ...this.steps.slice(0, after + 1)];
    return order.find((at) => !this.isDone(at)) ?? null;
  }

  /** The next step behind a door that was scanned, as the end of an address names it. */
  atDoor(hash) {
    const here = this.steps.filter(({ stop }) => stop.door && hash === `#door-${stop.door}`);
    return here.find((at) => !this.isDone(at)) ?? here[0] ?? null;
  }

  metersFor(step) {
    return this.sheet.meters.filter((meter) => meter.quantity === step.quantity);
  }

  /** The lamps that give of a quantity and are off or not warm at an instant, by the timers that are known. */
  cold({ stop, step }, now = Date.now()) {
    const warmUp = this.sheet.warmUpMinutes * MILLISECONDS_PER_MINUTE;
    return stop.lamps.filter((lamp) => lamp.gives.includes(step.quantity)
      && !lamp.lit.some((lit) => Date.parse(lit.from) + warmUp <= now && now < Date.parse(lit.to)));
  }

  /** True over displayed: that of the range in which an amount lies, beyond all of them that of the nearest. */
  factor(meter, amount) {
    return (meter.factors.find((one) => one.upTo === null || amount <= one.upTo) ?? meter.factors.at(-1)).factor;
  }

  canShow(meter, amount) {
    return !meter.range || (amount >= meter.range.low && amount <= meter.range.high);
  }

  /** Null if likely, or if nothing is expected; a sensor held otherwise is not compared. */
  slips(at, amount, meter, held) {
    if (!at.step.expected || held) return null;
    const ranges = (steps) => steps.map((other) => other.step.expected).filter(Boolean);
    const here = this.steps.filter((other) => other.stop === at.stop && other !== at);
    return this.slipsOf(at.step.quantity, amount * this.factor(meter, amount), at.step.expected, {
      otherPoints: ranges(here.filter((other) => other.step.quantity === at.step.quantity)),
      otherQuantities: ranges(here.filter((other) => other.step.pointId === at.step.pointId)),
      isCold: this.cold(at).length > 0,
    });
  }

  isOver({ step }, amount, meter) {
    return step.ceiling !== null && amount * this.factor(meter, amount) >= step.ceiling;
  }

  /** What fell on who types, today, by what was typed on this phone. */
  dose() {
    const today = new Date().toDateString();
    const mine = this.entries.filter((entry) => entry.personId === this.sheet.person.id && entry.quantity === 'UV_INDEX'
      && !entry.outcome && new Date(entry.takenAt).toDateString() === today);
    return this.keeperDose(mine.map((entry) => ({
      uvIndex: entry.amount * entry.factor,
      minutes: Math.min(entry.secondsAtPoint / 60, LONGEST_MINUTES),
      hazard: entry.hazard,
    })));
  }
}
