// Takes over what was computed anew, and leaves alone what is as it was: less to lay out, and nothing folds up that was unfolded.

/** The words of a drawing come in two sizes, of which one shows; the other need not come while something is moved. */
export function unseen(shown) {
  const words = [...shown.querySelectorAll('.drawing > .wide, .drawing > .narrow')];
  const seen = words.find((one) => getComputedStyle(one).display !== 'none');
  return seen ? { wide: 'narrow', narrow: 'wide' }[seen.classList[0]] : '';
}

/** A check's reason never changes: it is not sent while something is moved, and what was unfolded stays so. */
function keepReasons(shown, found) {
  for (const fresh of found.querySelectorAll('.check')) {
    const old = shown.querySelector(`.check[data-check="${fresh.dataset.check}"] > details`);
    const own = fresh.querySelector(':scope > details');
    if (own && old) own.open = old.open;
    else if (old) fresh.append(old.cloneNode(true));
  }
  const [old, own] = [shown, found].map((one) => one.querySelector('.checks > details'));
  if (old && own) own.open = old.open;
}

/** Parts that are as they were stay; the focus goes with a check that moves. */
export function replaceChanged(shown, found) {
  const summary = document.activeElement?.closest?.('.check summary');
  const check = summary?.closest('.check').dataset.check;
  keepReasons(shown, found);
  const [old, fresh] = [[...shown.children], [...found.children]];
  if (old.length !== fresh.length) shown.replaceChildren(...found.childNodes);
  else fresh.forEach((part, index) => { if (!part.isEqualNode(old[index])) old[index].replaceWith(part); });
  if (check && !summary.isConnected) shown.querySelector(`.check[data-check="${check}"] summary`)?.focus({ preventScroll: true });
}
