// Draws a board anew whenever the server says that something changed, and after every gap.

const board = /** @type {HTMLElement} */ (document.getElementById('board'));
const lost = /** @type {HTMLElement} */ (document.getElementById('board-lost'));
let drawing = false;
let again = false;

/** Whether a person is at work in a part: a field has the focus, or something is folded out. */
/** @param {Element} part */
function isInUse(part) {
  return part.contains(document.activeElement) || part.querySelector('details[open]') !== null;
}

/** Takes the parts that change from a fresh copy of this page. */
async function draw() {
  if (drawing) {
    again = true;
    return;
  }
  drawing = true;
  try {
    const address = /** @type {string} */ (board.dataset.fresh);
    const answer = await fetch(address, { headers: { Accept: 'text/html' } });
    if (answer.ok) {
      const fresh = new DOMParser().parseFromString(await answer.text(), 'text/html');
      const size = fresh.getElementById('board')?.className;
      board.className = size ?? board.className;
      for (const part of ['board-state', 'board-actions', 'board-more']) {
        const now = document.getElementById(part);
        const next = fresh.getElementById(part);
        if (now && next && now.innerHTML !== next.innerHTML && !isInUse(now)) {
          now.replaceWith(next);
        }
      }
    }
  } catch {
    lost.hidden = false;
  }
  drawing = false;
  if (again) {
    again = false;
    draw();
  }
}

/** One thing at a time; what was folded in is drawn as it is now. */
/** @param {Event} event */
function folded(event) {
  const details = /** @type {HTMLDetailsElement} */ (event.target);
  if (!details.open) {
    draw();
  } else if (details.classList.contains('board-act')) {
    document.querySelectorAll('details.board-act[open]').forEach((other) => {
      if (other !== details) {
        other.removeAttribute('open');
      }
    });
  }
}

const changes = new EventSource(/** @type {string} */ (board.dataset.changes));
changes.addEventListener('changed', draw);
changes.addEventListener('open', () => { lost.hidden = true; });
changes.addEventListener('error', () => { lost.hidden = false; });
board.addEventListener('toggle', folded, true);
// The clock moves also where nothing else does.
setInterval(draw, 20000);
