// The page of a walk: what is typed is kept on the phone before the next step shows, and sent when there is a network.
const RESUMED_MILLISECONDS = 2 * 3_600_000;

const root = document.querySelector('[data-walk]');
const load = (name) => import(root.dataset[`${name}Script`]);
const read = (id) => JSON.parse(document.getElementById(id).textContent);

const [{ Walk }, { Store, newKey }, { Sender }, { View }, { Standing }, { slipsOf }, { keeperDose }, { keepPage }, rule, { Repeating }, { VisitPanel }, { small },
  { Pictures }, { PhotoPanel }, { PhotoSender }, { RefusedPhotos }] = await Promise.all(['walk', 'store', 'sender', 'view', 'standing', 'plausible', 'dose', 'worker', 'repeats',
  'repeating', 'visit', 'small', 'pictures', 'photoPanel', 'photoSender', 'refusedPhotos'].map(load));

const sheet = read('sheet');
const walk = new Walk(sheet, { slipsOf, keeperDose });
const view = new View(root, read('texts'));
const standing = new Standing(view, walk, goTo);
const repeating = new Repeating(walk, rule);
const pictures = new Pictures();
const visit = new VisitPanel(view, walk, (stop, what) => keep({ stop }, what), new PhotoPanel(view, walk, { pictures, small, keep, newKey }));
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
}, () => photoSender.send());
const photoSender = store && new PhotoSender(store, pictures, sender, view.say('phone.photo.lost'));

function goTo(next) {
  at = next;
  since = performance.now();
  if (!at) return view.only('all-read');
  visit.show(at.stop);
  const repeats = repeating.shown(at);
  view.step(at, walk, repeats?.open?.meterId ?? chosen.get(at.step.quantity));
  view.repeats(repeats);
}

const goOn = () => goTo(walk.next(walk.steps.indexOf(at)));

/** @param open the entry that this goes on with, if any */
async function keep({ stop, step }, what, open = null) {
  const seconds = step ? (performance.now() - since) / 1000 : 0;
  if (step) since = performance.now();
  const entry = {
    key: newKey(), number: Date.now(), state: 'WAITING', visitKey: stop.visitKey, planId: sheet.plan?.id ?? null,
    personId: sheet.person.id, personName: sheet.person.name, enclosureId: stop.enclosureId, pointId: step?.pointId ?? null,
    quantity: step?.quantity ?? null, unit: step?.unit ?? '', place: step ? `${stop.code} ${step.code}` : stop.code, hazard: stop.hazard,
    ...open, secondsAtPoint: (open?.secondsAtPoint ?? 0) + seconds, takenAt: new Date().toISOString(), ...what,
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
  const over = walk.isOver(at, amount, meter);
  const open = repeating.openAt(at);
  const made = step.repeats ? repeating.after(open, { amount, typed, resolution: meter.resolution, over }) : { amount, typed, state: 'WAITING' };
  const second = walk.isDoubted(at);
  const slips = second || made.state === 'OPEN' ? null : walk.slips(at, made.amount, meter, held);
  chosen.set(step.quantity, meter.id);
  const entry = await keep(at, { ...made, held, meterId: meter.id, factor: walk.factor(meter, made.amount), doubted: Boolean(slips) }, open);
  if (entry.state === 'OPEN') goTo(at);
  else if (over) view.over(at, entry);
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

/** What was begun is sent as it is. */
async function close(...entries) {
  for (const entry of entries.filter(Boolean)) await store.put({ ...entry, state: 'WAITING' });
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
  await close(repeating.openAt(at));
  await keep(at, { outcome });
  goOn();
});
root.querySelector('[data-do="after-stop"]').addEventListener('click', goOn);
root.querySelector('[data-do="send"]').addEventListener('click', () => sender.send());

if (store) {
  root.querySelector('#plain').hidden = true;
  root.querySelector('#phone').hidden = false;
  walk.entries = await store.all();
  await close(...repeating.left());
  walk.entries = await store.all();
  resume();
  standing.show();
  visit.show(sheet.stops[0]);
  goTo(walk.atDoor(location.hash) ?? walk.next());
  addEventListener('hashchange', () => goTo(walk.atDoor(location.hash) ?? at));
  sender.send();
  new RefusedPhotos(view, { store, pictures, changed: () => sender.send() });
  pictures.keepOnly(walk.entries.filter((entry) => entry.photo && entry.state !== 'STORED').map((entry) => entry.key));
  keepPage();
} else {
  root.querySelector('#no-store').hidden = false;
}
