// Takes the key from the address's fragment, which is never sent to the server, and posts it.
const key = new URLSearchParams(location.hash.slice(1)).get('key');
if (key) {
  history.replaceState(null, '', location.pathname);
  const form = /** @type {HTMLFormElement} */ (document.getElementById('sign-in'));
  /** @type {HTMLInputElement} */ (form.elements.namedItem('key')).value = key;
  form.submit();
} else {
  const wrong = document.querySelector('[aria-invalid="true"]');
  /** @type {HTMLElement | null} */ (wrong ?? document.querySelector('input:not([type=hidden])'))?.focus();
}
