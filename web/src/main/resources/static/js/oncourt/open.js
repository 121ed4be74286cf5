// The page behind the QR code: posts the key from the address's fragment and goes on to the session.

import { keepPage, lastSession } from './app.js';
import { open, openedBefore } from './key.js';

const sentence = /** @type {HTMLElement} */ (document.getElementById('sentence'));
const form = /** @type {HTMLFormElement} */ (document.getElementById('key-form'));
const resume = /** @type {HTMLElement} */ (document.getElementById('resume'));
const field = /** @type {HTMLInputElement} */ (document.getElementById('key'));

/** @param {string} session */
function show(session) {
  location.replace(`/court/${encodeURIComponent(session)}`);
}

/** @param {string} key */
async function go(key) {
  sentence.textContent = 'Opening the session…';
  try {
    const answer = await open(key);
    if (answer.session) {
      show(answer.session);
      return;
    }
    sentence.textContent = answer.problem ?? 'The key was not taken.';
  } catch {
    const before = openedBefore(key);
    if (before) {
      show(before);
      return;
    }
    sentence.textContent =
      'The server cannot be reached. Stay near the Wi-Fi on which it runs, then try again.';
  }
}

keepPage();
const last = lastSession();
if (last) {
  const link = /** @type {HTMLAnchorElement} */ (resume.querySelector('a'));
  link.href = `/court/${encodeURIComponent(last)}`;
  resume.hidden = false;
}
const key = new URLSearchParams(location.hash.slice(1)).get('key');
if (key) {
  history.replaceState(null, '', location.pathname);
  go(key);
} else if (last && new URLSearchParams(location.search).has('resume')) {
  show(last);
}
form.addEventListener('submit', (event) => {
  event.preventDefault();
  go(field.value.trim());
});
