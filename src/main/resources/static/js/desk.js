// The desk: parts of the drawings are dragged or moved by keys, what is computed follows, the place under the pointer is told.
// All of it writes the form's own fields and asks the form's own addresses; without it the buttons of the form do.

const CENTIMETRES = 100;
const FIVE = 5;
const ARROWS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };
const STILL_PIXELS = 4;

/** Metres across and up on the paper as metres in the enclosure. */
const inRoom = (svg, across, up) => (svg.dataset.plane === 'plan' ? { x: across, y: up, z: 0 } : { x: across, y: 0, z: up });

/** Metres that one pixel of the screen stands for. */
const metresPerPixel = (svg) => 1 / (svg.getScreenCTM().a * Number(svg.dataset.unitsPerMetre));

function placeUnder(svg, event) {
  const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
  const across = (at.x - Number(svg.dataset.left)) / Number(svg.dataset.unitsPerMetre);
  const up = (Number(svg.dataset.bottom) - at.y) / Number(svg.dataset.unitsPerMetre);
  const off = Number(svg.dataset.offMetres);
  return svg.dataset.plane === 'plan' ? { x: across, y: up, z: off } : { x: across, y: off, z: up };
}

function work(form, look, fields, looking) {
  let drag = null;

  look.addEventListener('pointerdown', (event) => {
    const part = event.target.closest('[data-part]');
    if (!part || event.button !== 0 || drag || !fields.has(part.dataset.part)) return;
    drag = { part: part.dataset.part, pointer: event.pointerId, plane: part.ownerSVGElement.dataset.plane, x: event.clientX, y: event.clientY, moved: { x: 0, y: 0, z: 0 }, from: fields.place(part.dataset.part) };
    look.setPointerCapture(event.pointerId);
    part.focus({ preventScroll: true });
    event.preventDefault();
  });

  // A finger on a part drags it, elsewhere it moves the page. Shapes in a drawing do not heed touch-action, and a browser
  // asks only while the finger comes down whether it may scroll.
  look.addEventListener('touchstart', (event) => {
    if (drag) event.preventDefault();
  }, { passive: false });

  look.addEventListener('pointermove', (event) => {
    if (!drag) hover(event);
    else if (event.pointerId === drag.pointer) dragTo(event);
  });

  function dragTo(event) {
    const svg = look.querySelector(`svg[data-plane="${drag.plane}"]`);
    if (!svg) return;
    const step = metresPerPixel(svg);
    const way = inRoom(svg, (event.clientX - drag.x) * step, (drag.y - event.clientY) * step);
    for (const axis of ['x', 'y', 'z']) drag.moved[axis] += way[axis];
    drag.x = event.clientX;
    drag.y = event.clientY;
    if (fields.put(drag.part, drag.from, drag.moved)) looking.moving();
  }

  function drop(event) {
    if (!drag || event.pointerId !== drag.pointer) return;
    if (event.type === 'pointercancel') fields.put(drag.part, drag.from, { x: 0, y: 0, z: 0 });
    drag = null;
    fields.keep();
    looking.resting();
    if (event.type === 'pointerup' && event.pointerType === 'touch') tell(event);
  }
  look.addEventListener('pointerup', drop);
  look.addEventListener('pointercancel', drop);

  look.addEventListener('keydown', (event) => {
    const part = event.target.closest('[data-part]');
    if (!part || event.altKey || event.ctrlKey || event.metaKey) return;
    if (event.key === 'Enter' || event.key === ' ') {
      event.preventDefault();
      fields.focus(part.dataset.part);
    } else if (ARROWS[event.key] && fields.has(part.dataset.part)) {
      event.preventDefault();
      const step = (event.shiftKey ? FIVE : 1) / CENTIMETRES;
      const [across, up] = ARROWS[event.key];
      const way = inRoom(part.ownerSVGElement, across * step, up * step);
      if (fields.put(part.dataset.part, fields.place(part.dataset.part), way)) looking.moving();
      fields.keepSoon();
    }
  });

  function hover(event) {
    const svg = event.target.closest('svg[data-plane]');
    if (svg && event.pointerType === 'mouse') looking.at(placeUnder(svg, event));
  }

  let pressed = null;
  look.addEventListener('pointerdown', (event) => { pressed = { x: event.clientX, y: event.clientY }; });
  look.addEventListener('click', tell);

  /** What is where the pointer was pressed and let go; a touch that began a drag makes no click. */
  function tell(event) {
    const svg = document.elementFromPoint(event.clientX, event.clientY)?.closest('svg[data-plane]');
    const isStill = pressed && Math.hypot(event.clientX - pressed.x, event.clientY - pressed.y) < STILL_PIXELS;
    if (svg && isStill) looking.at(placeUnder(svg, event));
  }

  // A field that was typed in has its own undo for as long as the caret is in it.
  let typed = null;
  form.addEventListener('focusout', () => { typed = null; });
  form.addEventListener('input', (event) => {
    typed = event.target;
    if (!fields.isOfPlace(event.target)) looking.moving();
    else if (fields.asked()) looking.at(fields.asked());
  });
  form.addEventListener('change', () => fields.keep());
  form.addEventListener('submit', () => fields.store());
  window.addEventListener('pagehide', () => fields.store());

  function turn(back) {
    if (back ? fields.undo() : fields.redo()) looking.moving();
  }
  const buttons = form.querySelectorAll('[data-undo], [data-redo]');
  for (const button of buttons) {
    button.hidden = false;
    button.addEventListener('click', () => turn('undo' in button.dataset));
  }
  const isAnew = fields.recall();
  for (const words of form.querySelectorAll('[data-undo-anew]')) words.hidden = !isAnew;
  fields.watch((canUndo, canRedo) => {
    for (const button of buttons) button.setAttribute('aria-disabled', String(!('undo' in button.dataset ? canUndo : canRedo)));
  });
  document.addEventListener('keydown', (event) => {
    const key = event.key.toLowerCase();
    if (!(event.ctrlKey || event.metaKey) || event.altKey || (key !== 'z' && key !== 'y')) return;
    if (typed === event.target && typed.matches('input:not([type=radio]):not([type=checkbox]), textarea')) return;
    event.preventDefault();
    turn(key === 'z' && !event.shiftKey);
  });
}

const form = document.getElementById('draft');
const look = document.getElementById('look');
if (form && look && window.PointerEvent && window.AbortController) {
  // the addresses of the others carry the hash of what is in them, so the page knows them
  const [{ DeskForm }, { Looking }, swapping] = await Promise.all(
    [form.dataset.fieldsScript, form.dataset.lookScript, form.dataset.swapScript].map((path) => import(path)));
  const fields = new DeskForm(form);
  work(form, look, fields, new Looking(form, look, fields, swapping));
}
