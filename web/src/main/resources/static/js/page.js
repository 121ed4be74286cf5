// What every page does by script; each page works without it.

/** The content of a meta element. @param {string} name @returns {string} */
const meta = (name) => document.querySelector(`meta[name="${name}"]`)?.getAttribute('content') ?? '';

// Requests by htmx carry the token against forged requests.
document.addEventListener('htmx:configRequest', (event) => {
  const { headers } = /** @type {CustomEvent} */ (event).detail;
  headers[meta('csrf-header')] = meta('csrf-token');
});

// A form that is sent whole shows its waiting words and cannot be sent twice.
document.addEventListener('submit', (event) => {
  const form = /** @type {HTMLFormElement} */ (event.target);
  if (form.classList.contains('waiting')) {
    event.preventDefault();
    return;
  }
  if (!form.matches('[hx-post], [hx-get]') && !form.hasAttribute('data-download')) {
    form.classList.add('waiting');
  }
});

// Coming back by the browser's back button finds the form ready again.
addEventListener('pageshow', () => {
  document.querySelectorAll('form.waiting').forEach((form) => form.classList.remove('waiting'));
});

// After a mistake the first wrong field is in sight and ready to be changed.
/** @type {HTMLElement | null} */ (document.querySelector('[aria-invalid="true"]'))?.focus();

// A part of a page that is drawn anew keeps what was unfolded and where the keyboard was.
/** @type {string[]} */
let unfolded = [];
document.addEventListener('htmx:beforeSwap', (event) => {
  const part = /** @type {Element} */ (/** @type {CustomEvent} */ (event).detail.target);
  unfolded = [...part.querySelectorAll('details[open]')].map((each) => each.id);
});
document.addEventListener('htmx:afterSwap', () => {
  unfolded.forEach((id) => document.getElementById(id)?.setAttribute('open', ''));
});
document.addEventListener('htmx:afterSettle', () => {
  if (document.activeElement === document.body) {
    document.getElementById('plan-clock')?.focus({ preventScroll: true });
  }
});
