// The page behind the QR code: posts the key from the address's fragment and goes on to the session.

import { open } from './key.js';

const sentence = /** @type {HTMLElement} */ (document.getElementById('sentence'));
const form = /** @type {HTMLFormElement} */ (document.getElementById('key-form'));
const field = /** @type {HTMLInputElement} */ (document.getElementById('key'));

/** @param {string} key */
async function go(key) {
  sentence.textContent = 'Opening the session…';
  try {
    const answer = await open(key);
    if (answer.session) {
      location.replace(`/court/${encodeURIComponent(answer.session)}`);
      return;
    }
    sentence.textContent = answer.problem ?? 'The key was not taken.';
  } catch {
    sentence.textContent =
      'The server cannot be reached. Stay near the Wi-Fi on which it runs, then try again.';
  }
  form.hidden = false;
}

const key = new URLSearchParams(location.hash.slice(1)).get('key');
if (key) {
  history.replaceState(null, '', location.pathname);
  go(key);
}
form.addEventListener('submit', (event) => {
  event.preventDefault();
  go(field.value.trim());
});
