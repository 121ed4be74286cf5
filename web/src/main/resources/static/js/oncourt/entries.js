// What several phones noted of one game: which entries count, and what is in doubt. A twin of the
// server's.
//
// An entry follows on what its phone knew. One that was made without knowing of another phone's
// entry, which reached the server first, waits beside the game: mostly both saw the same rally. A
// result counts all the same if the rallies could have led to it. Where what waits leads to a score
// that the game has passed through, nothing is in doubt.

import { foldGame } from './fold.js';
import { isBlindTo } from './joined.js';

/** @typedef {import('./joined.js').Entry} Entry */
/** @typedef {import('./fold.js').GameView} GameView */
/** @typedef {import('./score.js').Format} Format */
/** @typedef {import('./score.js').Score} Score */

/**
 * Two phones do not say the same of a game.
 * @typedef {object} Dispute
 * @property {string} game
 * @property {string} phone the phone whose entries wait
 * @property {Score} score what this phone shows
 * @property {import('./score.js').Side|null} server who serves next for it, where that is known
 * @property {boolean} over whether the game is over for it
 * @property {import('./fold.js').CourtEvent[]} waiting its entries, in order
 * @property {import('./fold.js').CourtEvent[]} standing those that count and that it did not know
 */

/** @param {GameView} view */
const isOver = (view) => view.status === 'PLAYED_OUT' || view.status === 'TIME_CALLED';
/** @param {Score} less @param {Score} more */
const isWithin = (less, more) => less[0] <= more[0] && less[1] <= more[1];

/**
 * @param {string} game @param {Format} format @param {Entry[]} entries those of this game
 * @returns {{view: GameView, disputes: Dispute[]}}
 */
export function joinGame(game, format, entries) {
  /** @type {Entry[]} */
  const counting = [];
  /** @type {Map<string, Entry[]>} */
  const waiting = new Map();
  for (const entry of entries) {
    const blind = counting.some((other) => isBlindTo(entry, other));
    if (!blind || isReached(format, counting, entry)) {
      counting.push(entry);
    } else {
      const by = entry.event.by ?? '';
      waiting.set(by, [...(waiting.get(by) ?? []), entry]);
    }
  }
  const view = fold(format, counting);
  const disputes = [...waiting].flatMap(([phone, own]) =>
    disputed({ game, format, counting, view }, phone, own));
  return { view, disputes };
}

/** @param {Format} format @param {Entry[]} entries */
function fold(format, entries) {
  return foldGame(format, entries.map(({ event }) => event));
}

/** Whether the game as it stands can go on to a result. */
/** @param {Format} format @param {Entry[]} counting @param {Entry} entry */
function isReached(format, counting, { event }) {
  if (event.type !== 'final-score') {
    return false;
  }
  const now = fold(format, counting);
  return !isOver(now) && isWithin(now.score, [Number(event.a), Number(event.b)]);
}

/**
 * @param {{game: string, format: Format, counting: Entry[], view: GameView}} joint
 * @param {string} phone @param {Entry[]} own @returns {Dispute[]}
 */
function disputed(joint, phone, own) {
  const shown = fold(joint.format, asSeenBy(joint.counting, phone, own));
  if (isPassed(joint, shown)) {
    return [];
  }
  const standing = joint.counting.filter((entry) => own.some((each) => isBlindTo(each, entry)));
  return [{
    game: joint.game,
    phone,
    score: shown.score,
    server: shown.state?.server ?? null,
    over: isOver(shown),
    waiting: own.map(({ event }) => event),
    standing: standing.map(({ event }) => event),
  }];
}

/** The entries from which a phone read its score when it made its last one that waits. */
/** @param {Entry[]} counting @param {string} phone @param {Entry[]} own */
function asSeenBy(counting, phone, own) {
  const last = own[own.length - 1];
  const seen = last.event.seen ?? -1;
  return [...counting, ...own]
    .filter(({ place }) => place <= last.place)
    .filter(({ place, event }) => (event.by ?? '') === phone || place < seen)
    .sort((one, other) => one.place - other.place);
}

/** Whether the game has passed through what a phone shows, or could have. */
/** @param {{format: Format, counting: Entry[], view: GameView}} joint @param {GameView} shown */
function isPassed({ format, counting, view }, shown) {
  if (shown.firstServer !== null && shown.firstServer !== view.firstServer) {
    return false;
  }
  if (isOver(shown)) {
    return isOver(view) && view.score[0] === shown.score[0] && view.score[1] === shown.score[1];
  }
  if (isOver(view) && view.state === null && isWithin(shown.score, view.score)) {
    return true;
  }
  return [view, ...counting.map((_, length) => fold(format, counting.slice(0, length)))]
    .some((passed) => isSame(format, passed, shown));
}

/** Whether two standings are one; where the serve decides who scores, it belongs to them. */
/** @param {Format} format @param {GameView} one @param {GameView} other */
function isSame(format, one, other) {
  if (one.score[0] !== other.score[0] || one.score[1] !== other.score[1]) {
    return false;
  }
  return format.scoring === 'EVERY_RALLY' || one.state === null || other.state === null
    || (one.state.server === other.state.server && one.state.number === other.state.number);
}
