// Photos are made small on the phone before they are sent. Without this, or where it fails, the file goes as it is.
const LONGEST_EDGE = 1600;
const QUALITY = 0.8;

/** A JPEG of a picture, turned upright, no larger than is kept, and with nothing in it but the picture. */
export async function small(file) {
  const picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
  const scale = Math.min(1, LONGEST_EDGE / Math.max(picture.width, picture.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  const pen = canvas.getContext('2d');
  pen.fillStyle = 'white';
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  const drawn = await new Promise((done) => canvas.toBlob(done, 'image/jpeg', QUALITY));
  if (!drawn) throw new Error('nothing was drawn');
  return new File([drawn], 'photo.jpg', { type: 'image/jpeg' });
}

async function send(form) {
  const field = form.querySelector('input[type=file]');
  try {
    const made = new DataTransfer();
    made.items.add(await small(field.files[0]));
    field.files = made.files;
  } catch {
    // It is no picture that this browser can read: the server says what it thinks of it.
  }
  form.submit();
}

// On the document, since the form comes later than this script.
document.addEventListener('submit', (event) => {
  const form = event.target;
  if (!form.matches('[data-photo]')) return;
  event.preventDefault();
  const button = form.querySelector('button');
  if (button.disabled) return;
  button.disabled = true;
  button.textContent = button.dataset.busy;
  send(form);
});
