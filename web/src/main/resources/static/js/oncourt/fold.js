// What the events of the court add up to: a twin of the server's fold.
//
// The phone keeps the events themselves, the server's and its own that are not home yet, and reads
// everything it shows from them. So undo of any depth, a reload and a late answer are one thing.

import { joinGame } from './entries.js';
import { isBlindTo, joined } from './joined.js';
import { after, start as beginning, winnerAt } from './score.js';

/**
 * One thing that happened on court, as it travels.
 * @typedef {object} CourtEvent
 * @property {string} id made by the phone
 * @property {'rally'|'first-server'|'final-score'|'time-called'|'undone'|'block-started'|
 *   'block-ended'|'block-limited'|'yardstick'|'conditions'|'effort'|'note'|'session-ended'} type
 * @property {number} at when the phone saw it, in milliseconds since 1970
 * @property {number} [v] the version of this form
 * @property {string} [session]
 * @property {string} [by] the phone that made it
 * @property {number} [n] the phone's own count of its events of this session, from 1
 * @property {number} [seen] how many of the server's events the phone had when it made this one
 * @property {string} [game]
 * @property {string} [block]
 * @property {string} [player]
 * @property {import('./score.js').Side} [winner]
 * @property {'NONE'|'ROUND_THE_POST'} [bonus]
 * @property {{stage?: string, stroke?: string, manner?: string}} [ending]
 * @property {import('./score.js').Side} [server]
 * @property {number} [a]
 * @property {number} [b]
 * @property {'PLAYED_OUT'|'TIME_CALLED'} [finish]
 * @property {string} [undone] the id of the event that does not count any more
 * @property {number} [hits]
 * @property {number} [balls]
 * @property {number} [rating]
 * @property {'CALM'|'LIGHT'|'STRONG'} [wind]
 * @property {'NONE'|'BLINDING'} [sun]
 * @property {number} [celsius]
 * @property {number} [humidityPercent]
 * @property {string} [text] of a note; missing where only the coach may read it
 * @property {string} [instead] the note that this one corrects
 * @property {number} [minutesLeft] how long a block goes on from `at`
 * @property {string[]} [without] games of a block that fall away
 */

/**
 * Where one game stands.
 * @typedef {object} GameView
 * @property {'NOT_BEGUN'|'RUNNING'|'PLAYED_OUT'|'TIME_CALLED'} status
 * @property {import('./score.js').Score} score
 * @property {import('./score.js').State|null} state null where only the result is known
 * @property {number} rallies how many rallies are known
 * @property {import('./score.js').Side|null} firstServer
 * @property {CourtEvent|null} last the newest event that counts, the one an undo takes back
 * @property {CourtEvent|null} lastRally the newest rally, where it is the newest event
 * @property {import('./score.js').Side|null} lastServer who served in the newest rally
 */

/**
 * @param {import('./score.js').Format} format
 * @param {import('./score.js').Side[]} winners
 */
function replay(format, winners) {
  let state = beginning(format);
  for (const winner of winners) {
    // A first server named late can end the game earlier than the rallies were seen to.
    if (!winnerAt(format, state.score)) {
      state = after(state, winner);
    }
  }
  return state;
}

/**
 * Where a game stands after its events.
 * @param {import('./score.js').Format} planned its format as planned
 * @param {CourtEvent[]} events the events of this game that count, in order
 * @returns {GameView}
 */
export function foldGame(planned, events) {
  /** @type {import('./score.js').Side[]} */
  const winners = [];
  let format = planned;
  /** @type {import('./score.js').Side|null} */
  let firstServer = null;
  /** @type {CourtEvent|null} */
  let given = null;
  let clockEnded = false;
  /** @type {import('./score.js').Side|null} */
  let lastServer = null;
  /** @type {CourtEvent|null} */
  let last = null;
  for (const event of events) {
    if (event.type === 'rally' && event.winner) {
      const state = replay(format, winners);
      if (given || clockEnded || winnerAt(format, state.score)) {
        continue;
      }
      lastServer = state.server;
      winners.push(event.winner);
    } else if (event.type === 'first-server' && event.server) {
      firstServer = event.server;
      format = { ...planned, firstServer };
    } else if (event.type === 'final-score') {
      given = event;
    } else if (event.type === 'time-called') {
      clockEnded = true;
    } else {
      continue;
    }
    last = event;
  }
  return view(replay(format, winners),
    { winners, firstServer, given, clockEnded, last, lastServer });
}

/**
 * @param {import('./score.js').State} state
 * @param {{winners: import('./score.js').Side[], firstServer: import('./score.js').Side|null,
 *   given: CourtEvent|null, clockEnded: boolean, last: CourtEvent|null,
 *   lastServer: import('./score.js').Side|null}} seen
 * @returns {GameView}
 */
function view(state, { winners, firstServer, given, clockEnded, last, lastServer }) {
  /** @type {import('./score.js').Score} */
  const score = given ? [Number(given.a), Number(given.b)] : state.score;
  const agrees = score[0] === state.score[0] && score[1] === state.score[1];
  return {
    status: status(state, given, clockEnded, last),
    score,
    state: agrees ? state : null,
    rallies: agrees ? winners.length : 0,
    firstServer,
    last,
    lastRally: last?.type === 'rally' ? last : null,
    lastServer,
  };
}

/**
 * @param {import('./score.js').State} state @param {CourtEvent|null} given
 * @param {boolean} clockEnded @param {CourtEvent|null} last @returns {GameView['status']}
 */
function status(state, given, clockEnded, last) {
  if (given) {
    return given.finish === 'PLAYED_OUT' ? 'PLAYED_OUT' : 'TIME_CALLED';
  }
  if (winnerAt(state.format, state.score)) {
    return 'PLAYED_OUT';
  }
  if (clockEnded) {
    return 'TIME_CALLED';
  }
  return last ? 'RUNNING' : 'NOT_BEGUN';
}

/**
 * Where the session stands.
 * @typedef {object} SessionView
 * @property {Map<string, GameView>} games
 * @property {string|null} current the block that is on now
 * @property {Map<string, CourtEvent>} starts by block, the event that started it first
 * @property {Map<string, CourtEvent>} ends by block
 * @property {Map<string, CourtEvent>} limits by block, what was said of its end while it was on
 * @property {Map<string, CourtEvent>} counts by block and player, the newest count
 * @property {CourtEvent|null} conditions
 * @property {Map<string, CourtEvent>} efforts by player
 * @property {CourtEvent|null} end
 * @property {CourtEvent[]} counted every event that counts
 * @property {import('./entries.js').Dispute[]} disputes games that two phones scored differently
 */

/**
 * @param {{games: {id: string, format: import('./score.js').Format}[]}[]} blocks
 * @param {CourtEvent[]} events in the order in which they arrived
 * @returns {SessionView}
 */
export function foldSession(blocks, events) {
  const entries = joined(events);
  /** @type {SessionView} */
  const session = {
    games: new Map(),
    current: null,
    starts: new Map(),
    ends: new Map(),
    limits: new Map(),
    counts: new Map(),
    conditions: null,
    efforts: new Map(),
    end: null,
    counted: entries.map(({ event }) => event),
    disputes: [],
  };
  /** @type {Map<string, import('./joined.js').Entry[]>} */
  const byGame = new Map();
  /** @type {import('./joined.js').Entry|null} */
  let start = null;
  for (const entry of entries) {
    const { game } = entry.event;
    if (game) {
      const own = byGame.get(game);
      own ? own.push(entry) : byGame.set(game, [entry]);
    }
    // A block that a phone began without knowing of a later one does not turn the session back.
    /** @type {boolean} */
    const late = start !== null && isBlindTo(entry, start);
    start = entry.event.type === 'block-started' && !late ? entry : start;
    take(session, entry.event, late);
  }
  for (const { id, format } of blocks.flatMap((block) => block.games)) {
    const { view, disputes } = joinGame(id, format, byGame.get(id) ?? []);
    session.games.set(id, view);
    session.disputes.push(...disputes);
  }
  return session;
}

/** @param {SessionView} session @param {CourtEvent} event
 * @param {boolean} late whether its phone did not know of the block that is on */
function take(session, event, late) {
  if (event.type === 'block-started' && event.block) {
    session.current = late ? session.current : event.block;
    session.ends.delete(event.block);
    session.limits.delete(event.block);
    if (!session.starts.has(event.block)) {
      session.starts.set(event.block, event);
    }
  } else if (event.type === 'block-ended' && event.block) {
    session.ends.set(event.block, event);
    session.current = session.current === event.block ? null : session.current;
  } else if (event.type === 'block-limited' && event.block) {
    session.limits.set(event.block, event);
  } else if (event.type === 'yardstick') {
    session.counts.set(`${event.block} ${event.player}`, event);
  } else if (event.type === 'conditions') {
    session.conditions = event;
  } else if (event.type === 'effort' && event.player) {
    session.efforts.set(event.player, event);
  } else if (event.type === 'session-ended') {
    session.end = event;
  }
}
