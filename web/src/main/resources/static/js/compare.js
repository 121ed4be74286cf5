// Two dates on a player's page, chosen by dragging on the line of weeks or on any picture, or with
// the arrow keys on a handle. The server works out what changed; without script the two date
// fields do the same.

/** @typedef {{day: string, part: number, words: string}} Stop */
/** @typedef {'from' | 'to'} Which */

/** @type {{which: Which, svg: SVGSVGElement, moved: boolean} | null} */
let drag = null;

const timeline = () => document.querySelector('.timeline');

/** The weeks to choose from. @returns {Stop[]} */
const stops = () =>
  (timeline()?.getAttribute('data-compare-stops') ?? '')
    .split(';')
    .filter((text) => text !== '')
    .map((text) => {
      const [day, part, words] = text.split('/');
      return { day, part: Number(part), words };
    });

/** The handle on the line of weeks. @param {Which} which */
const handle = (which) => document.getElementById(`handle-${which}`);

/** The stop where a handle stands. @param {Which} which @returns {number} */
const stopOf = (which) => Number(handle(which)?.getAttribute('aria-valuenow'));

/** Where a part of the way stands in a picture. @param {Element} svg @param {number} part */
const place = (svg, part) => {
  const left = Number(svg.getAttribute('data-compare-left'));
  const right = Number(svg.getAttribute('data-compare-right'));
  return (left + part * (right - left)).toFixed(1);
};

/** Moves a handle to a stop in every picture; the first stays before the second. */
const move = (/** @type {Which} */ which, /** @type {number} */ wanted) => {
  const all = stops();
  const least = which === 'from' ? 0 : stopOf('from') + 1;
  const most = which === 'from' ? stopOf('to') - 1 : all.length - 1;
  const stop = Math.max(least, Math.min(most, wanted));
  if (stop === stopOf(which) || !all[stop]) {
    return false;
  }
  document.querySelectorAll(`line[data-compare="${which}"]`).forEach((line) => {
    const svg = /** @type {SVGLineElement} */ (line).ownerSVGElement;
    line.setAttribute('x1', place(/** @type {Element} */ (svg), all[stop].part));
    line.setAttribute('x2', place(/** @type {Element} */ (svg), all[stop].part));
  });
  const strip = /** @type {Element} */ (timeline());
  handle(which)?.setAttribute('transform', `translate(${place(strip, all[stop].part)} 36)`);
  handle(which)?.setAttribute('aria-valuenow', String(stop));
  handle(which)?.setAttribute('aria-valuetext', all[stop].words);
  const span = strip.querySelector('[data-compare-span]');
  span?.setAttribute(which === 'from' ? 'x1' : 'x2', place(strip, all[stop].part));
  const field = /** @type {HTMLInputElement | null} */ (document.getElementById(which));
  if (field) {
    field.value = all[stop].day;
  }
  return true;
};

/** Asks the server what changed between the two dates. */
const ask = () => /** @type {HTMLFormElement | null} */ (document.querySelector('form.compare'))
  ?.requestSubmit();

/** The part of the way under a pointer. @param {SVGSVGElement} svg @param {PointerEvent} event */
const partAt = (svg, event) => {
  const box = svg.getBoundingClientRect();
  const x = ((event.clientX - box.left) / box.width) * svg.viewBox.baseVal.width;
  const left = Number(svg.getAttribute('data-compare-left'));
  const right = Number(svg.getAttribute('data-compare-right'));
  return (x - left) / (right - left);
};

/** The stop nearest to a part of the way. @param {number} part @returns {number} */
const nearest = (part) => {
  const all = stops();
  let found = 0;
  all.forEach((stop, number) => {
    if (Math.abs(stop.part - part) < Math.abs(all[found].part - part)) {
      found = number;
    }
  });
  return found;
};

document.addEventListener('pointerdown', (event) => {
  const target = /** @type {Element} */ (event.target);
  const svg = /** @type {SVGSVGElement | null} */ (target.closest('svg[data-compare-left]'));
  if (!svg || event.button !== 0) {
    return;
  }
  const part = partAt(svg, event);
  const all = stops();
  const held = target.closest('[role="slider"]')?.getAttribute('data-compare');
  const toFrom = Math.abs(all[stopOf('from')].part - part);
  const toTo = Math.abs(all[stopOf('to')].part - part);
  const which = /** @type {Which} */ (held ?? (toFrom < toTo ? 'from' : 'to'));
  drag = { which, svg, moved: false };
  svg.setPointerCapture(event.pointerId);
  handle(which)?.focus({ preventScroll: true });
});

document.addEventListener('pointermove', (event) => {
  if (drag && move(drag.which, nearest(partAt(drag.svg, event)))) {
    drag.moved = true;
  }
});

document.addEventListener('pointerup', (event) => {
  if (drag) {
    const moved = move(drag.which, nearest(partAt(drag.svg, event))) || drag.moved;
    drag = null;
    if (moved) {
      ask();
    }
  }
});

// A finger that turns out to scroll the page takes nothing with it.
document.addEventListener('pointercancel', () => {
  const moved = drag?.moved;
  drag = null;
  if (moved) {
    ask();
  }
});

/** @type {Record<string, (stop: number) => number>} */
const keys = {
  ArrowLeft: (stop) => stop - 1,
  ArrowDown: (stop) => stop - 1,
  ArrowRight: (stop) => stop + 1,
  ArrowUp: (stop) => stop + 1,
  PageDown: (stop) => stop - 4,
  PageUp: (stop) => stop + 4,
  Home: () => 0,
  End: () => Number.MAX_SAFE_INTEGER,
};

document.addEventListener('keydown', (event) => {
  const slider = /** @type {Element} */ (event.target).closest?.('.handle[data-compare]');
  const next = keys[event.key];
  if (slider && next) {
    event.preventDefault();
    const which = /** @type {Which} */ (slider.getAttribute('data-compare'));
    if (move(which, next(stopOf(which)))) {
      ask();
    }
  }
});
