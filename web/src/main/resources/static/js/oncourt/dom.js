// Pages are drawn as a whole and then fitted into what is there: elements stay, only what differs
// changes. So an answer of the server never takes a button away from under a finger.

/** @typedef {Node|string|number|null|undefined|false} Child */

/**
 * An element.
 * @param {string} tag the tag, with classes after dots: 'button.cell.won'
 * @param {Record<string, string|number|boolean|null|undefined>} [attributes]
 * @param {...(Child|Child[])} children
 * @returns {HTMLElement}
 */
export function el(tag, attributes = {}, ...children) {
  const [name, ...classes] = tag.split('.');
  const element = document.createElement(name);
  if (classes.length > 0) {
    element.className = classes.join(' ');
  }
  if (name === 'button') {
    element.setAttribute('type', 'button');
  }
  for (const [key, value] of Object.entries(attributes)) {
    const stated = key.startsWith('aria-') || key.startsWith('data-');
    if (value !== null && value !== undefined && (stated || value !== false)) {
      element.setAttribute(key, value === true && !stated ? '' : String(value));
    }
  }
  for (const child of children.flat()) {
    if (child !== null && child !== undefined && child !== false) {
      element.append(child instanceof Node ? child : String(child));
    }
  }
  return element;
}

/** @type {Map<string, Element>} */
const drawings = new Map();

/**
 * A drawing that came as text; nothing in it can run.
 * @param {string} key @param {string} text @returns {Element}
 */
export function drawing(key, text) {
  let parsed = drawings.get(key);
  if (!parsed) {
    parsed = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
    drawings.set(key, parsed);
  }
  return /** @type {Element} */ (parsed.cloneNode(true));
}

/**
 * Makes the children of an element like the wanted ones, touching only what differs.
 * @param {Element} live @param {Node[]} wanted
 */
export function fit(live, wanted) {
  let place = live.firstChild;
  for (const want of wanted) {
    if (place && alike(place, want)) {
      const next = place.nextSibling;
      adopt(place, want);
      place = next;
    } else {
      live.insertBefore(want, place);
      if (place && !wanted.some((each) => each !== want && place && alike(place, each))) {
        const gone = place;
        place = place.nextSibling;
        gone.remove();
      }
    }
  }
  while (place) {
    const gone = place;
    place = place.nextSibling;
    gone.remove();
  }
}

/** @param {Node} a @param {Node} b */
function alike(a, b) {
  if (a.nodeName !== b.nodeName) {
    return false;
  }
  return !(a instanceof Element && b instanceof Element)
    || a.getAttribute('data-key') === b.getAttribute('data-key');
}

/** @param {Node} live @param {Node} want */
function adopt(live, want) {
  if (!(live instanceof Element && want instanceof Element)) {
    if (live.nodeValue !== want.nodeValue) {
      live.nodeValue = want.nodeValue;
    }
    return;
  }
  for (const { name } of Array.from(live.attributes)) {
    if (!want.hasAttribute(name) && name !== 'open') {
      live.removeAttribute(name);
    }
  }
  for (const { name, value } of Array.from(want.attributes)) {
    if (live.getAttribute(name) !== value) {
      live.setAttribute(name, value);
    }
  }
  fit(live, Array.from(want.childNodes));
}
