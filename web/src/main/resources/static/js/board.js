// Draws a board anew whenever the server says that something changed, and after every gap.

const board = /** @type {HTMLElement} */ (document.getElementById('board'));
const lost = /** @type {HTMLElement} */ (document.getElementById('board-lost'));
let drawing = false;
let again = false;

/** Takes the parts that change from a fresh copy of this page. */
async function draw() {
  if (drawing) {
    again = true;
    return;
  }
  drawing = true;
  try {
    const answer = await fetch(location.pathname, { headers: { Accept: 'text/html' } });
    if (answer.ok) {
      const fresh = new DOMParser().parseFromString(await answer.text(), 'text/html');
      const size = fresh.getElementById('board')?.className;
      board.className = size ?? board.className;
      for (const part of ['board-state', 'board-actions']) {
        const now = document.getElementById(part);
        const next = fresh.getElementById(part);
        if (now && next && now.innerHTML !== next.innerHTML && !now.contains(document.activeElement)) {
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

const changes = new EventSource(/** @type {string} */ (board.dataset.changes));
changes.addEventListener('changed', draw);
changes.addEventListener('open', () => { lost.hidden = true; });
changes.addEventListener('error', () => { lost.hidden = false; });
// The clock moves also where nothing else does.
setInterval(draw, 20000);
