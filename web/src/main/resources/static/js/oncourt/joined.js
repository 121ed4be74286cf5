// The lists of several phones as one: a twin of the server's order, which needs no clock.
//
// Two things tell the order: where events stand in the server's list, and each phone's own count.
// The places that a phone's events took on arrival stay that phone's; within them its events stand
// as it counted them.

/** @typedef {import('./fold.js').CourtEvent} CourtEvent */

/**
 * An event and its place in the joined list.
 * @typedef {object} Entry
 * @property {number} place
 * @property {CourtEvent} event
 */

/**
 * The events that count: each id once, in the joined order, without those that were undone.
 * @param {CourtEvent[]} arrived in the order in which they reached the server @returns {Entry[]}
 */
export function joined(arrived) {
  const seen = new Set();
  const list = ordered(arrived.filter((event) => !seen.has(event.id) && seen.add(event.id)));
  const cancelled = new Set();
  for (let i = list.length - 1; i >= 0; i--) {
    const event = list[i];
    if (event.type === 'undone' && !cancelled.has(event.id)) {
      cancelled.add(event.undone);
    }
  }
  return list.map((event, place) => ({ place, event }))
    .filter(({ event }) => !cancelled.has(event.id));
}

/** @param {CourtEvent[]} arrived */
function ordered(arrived) {
  /** @type {Map<string, number[]>} */
  const places = new Map();
  arrived.forEach((event, place) => {
    if ((event.n ?? 0) > 0) {
      const own = places.get(event.by ?? '');
      own ? own.push(place) : places.set(event.by ?? '', [place]);
    }
  });
  const list = [...arrived];
  for (const own of places.values()) {
    const counted = own.map((place) => arrived[place])
      .sort((one, other) => (one.n ?? 0) - (other.n ?? 0));
    own.forEach((place, i) => {
      list[place] = counted[i];
    });
  }
  return list;
}

/** Whether the phone that made an entry could not know of another one. */
/** @param {Entry} entry @param {Entry} other */
export function isBlindTo(entry, other) {
  const seen = entry.event.seen ?? -1;
  return seen >= 0 && other.place >= seen && other.place < entry.place
    && (entry.event.by ?? '') !== (other.event.by ?? '');
}
