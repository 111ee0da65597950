// The number pad: works on the form's field; without it the phone's own decimal keys do.
for (const pad of document.querySelectorAll('.pad')) {
  const form = pad.closest('form');
  const field = form.querySelector('[data-pad]');
  const log = form.querySelector('[data-log]');
  const say = () => { log.textContent = field.value ? `${log.dataset.log} ${field.value}` : log.dataset.log; };
  pad.hidden = false;
  if (matchMedia('(pointer: coarse)').matches) field.inputMode = 'none';
  pad.addEventListener('click', (press) => {
    const key = press.target.dataset.key;
    if (!key) return;
    if (key === 'back') field.value = field.value.slice(0, -1);
    else if (key === '-') field.value = field.value.startsWith('-') ? field.value.slice(1) : `-${field.value}`;
    else if ((field.value + key).length <= Number(field.dataset.digits) && !(key === '.' && field.value.includes('.'))) field.value += key;
    say();
  });
  field.addEventListener('input', say);
  say();
}
