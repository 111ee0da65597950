// The page of a walk: what is typed is kept on the phone before the next step shows, and sent when there is a network.
const RESUMED_MILLISECONDS = 2 * 3_600_000;

const root = document.querySelector('[data-walk]');
const load = (name) => import(root.dataset[`${name}Script`]);
const read = (id) => JSON.parse(document.getElementById(id).textContent);

const [{ Walk }, { Store, newKey }, { Sender }, { View }, { Standing }, { slipsOf }, { keeperDose }, { keepPage }] = await Promise.all(
  ['walk', 'store', 'sender', 'view', 'standing', 'plausible', 'dose', 'worker'].map(load));

const sheet = read('sheet');
const walk = new Walk(sheet, { slipsOf, keeperDose });
const view = new View(root, read('texts'));
const standing = new Standing(view, walk, goTo);
const chosen = new Map(); // the meter of the last entry of each quantity
let at = null;
let since = 0;
let how = {};
let outOfRange = null; // asked about once

const store = await Store.opened().catch(() => null);
const sender = store && new Sender(store, (entries, told) => {
  walk.entries = entries;
  how = told;
  standing.show(how);
});

function goTo(next) {
  at = next;
  since = performance.now();
  if (at) view.step(at, walk, chosen.get(at.step.quantity));
  else view.only('all-read');
}

const goOn = () => goTo(walk.next(walk.steps.indexOf(at)));

async function keep(what) {
  const { stop, step } = at;
  const entry = {
    key: newKey(), number: Date.now(), state: 'WAITING', visitKey: stop.visitKey, planId: sheet.plan?.id ?? null,
    personId: sheet.person.id, personName: sheet.person.name, enclosureId: stop.enclosureId, pointId: step.pointId,
    quantity: step.quantity, unit: step.unit, place: `${stop.code} ${step.code}`, hazard: stop.hazard,
    secondsAtPoint: (performance.now() - since) / 1000, takenAt: new Date().toISOString(), ...what,
  };
  await store.put(entry);
  walk.entries = await store.all();
  view.said(standing.words(entry));
  standing.show(how);
  sender.send();
  return entry;
}

async function log() {
  const typed = root.querySelector('#amount').value.trim().replace(',', '.');
  const amount = Number(typed);
  const { step } = at;
  if (!/^-?\d+(\.\d{1,2})?$/.test(typed) || amount < step.lowest || amount > step.highest) {
    view.wrong(view.say(`visit.amount.wrong.${step.quantity}`));
    return;
  }
  const meter = sheet.meters.find((one) => one.id === Number(root.querySelector('#meter').value));
  if (!walk.canShow(meter, amount) && outOfRange !== typed) {
    outOfRange = typed;
    view.wrong(view.say('phone.range', meter.range.low, meter.range.high));
    return;
  }
  outOfRange = null;
  const held = root.querySelector('#held').value || null;
  const second = walk.isDoubted(at);
  const slips = second ? null : walk.slips(at, amount, meter, held);
  chosen.set(step.quantity, meter.id);
  const entry = await keep({ amount, typed, held, meterId: meter.id, factor: walk.factor(meter, amount), doubted: Boolean(slips) });
  if (walk.isOver(at, amount, meter)) view.over(at, entry);
  else if (slips) doubt(slips);
  else {
    goOn();
    if (second) view.both();
  }
}

function doubt(slips) {
  goTo(at);
  view.unlikely(slips);
}

/** A door that was left in the middle goes on with the visit that was begun. */
function resume() {
  if (sheet.plan) return;
  for (const stop of sheet.stops) {
    const last = walk.entries.filter((entry) => entry.enclosureId === stop.enclosureId && !entry.planId && entry.personId === sheet.person.id).at(-1);
    if (!last || Date.now() - Date.parse(last.takenAt) > RESUMED_MILLISECONDS) continue;
    const fresh = stop.visitKey;
    stop.visitKey = last.visitKey;
    if (!walk.next()) stop.visitKey = fresh;
  }
}

root.querySelector('#entry').addEventListener('submit', (event) => {
  event.preventDefault();
  log();
});
root.querySelector('#meter').addEventListener('change', () => view.notice(walk.metersFor(at.step)));
root.querySelector('.answers').addEventListener('click', async (event) => {
  const outcome = event.target.closest('[data-outcome]')?.dataset.outcome;
  if (!outcome) return;
  await keep({ outcome });
  goOn();
});
root.querySelector('[data-do="after-stop"]').addEventListener('click', goOn);
root.querySelector('[data-do="send"]').addEventListener('click', () => sender.send());

if (store) {
  root.querySelector('#plain').hidden = true;
  root.querySelector('#phone').hidden = false;
  walk.entries = await store.all();
  resume();
  standing.show();
  goTo(walk.atDoor(location.hash) ?? walk.next());
  addEventListener('hashchange', () => goTo(walk.atDoor(location.hash) ?? at));
  sender.send();
  keepPage();
} else {
  root.querySelector('#no-store').hidden = false;
}
