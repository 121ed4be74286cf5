// The rules of scoring, as the phone needs them between two messages to the server.
//
// A twin of the server's game state: the same formats, the same next state, the same check of a
// typed result. Pure functions on plain values; the server stays the judge, and a test replays
// thousands of random games on both. Nothing here knows a clock, the page or the network.

/**
 * @typedef {'A'|'B'} Side
 * @typedef {'RIGHT_AT_EVEN'|'LEFT_AT_EVEN'} Partner
 * @typedef {'EVEN'|'ODD'} Court
 * @typedef {[number, number]} Score side A first
 */

/**
 * How a game is counted.
 * @typedef {object} Format
 * @property {'EVERY_RALLY'|'SIDE_OUT_ONE_SERVER'|'SIDE_OUT_TWO_SERVERS'|'RALLY_2025'|'RALLY_2026'}
 *   scoring who may score
 * @property {'PAIRS'|'BY_SCORE'|'FIXED_LANE'} places where players stand for serve and receive
 * @property {[Court, Court]|null} courts the court of each side in a fixed lane
 * @property {Score} targets points that each side needs
 * @property {1|2} winBy the lead needed
 * @property {number|null} cap the number of points that wins whatever the lead
 * @property {Score} start the score at the first serve
 * @property {Side} firstServer who serves first
 * @property {'NONE'|'AT_HALF'} ends whether the sides change ends
 */

/**
 * A game between two rallies or at its end.
 * @typedef {object} State
 * @property {Format} format
 * @property {Score} score
 * @property {Side} server the serving side
 * @property {1|2} number first or second server of the turn
 * @property {Partner} partner which player of that side serves
 * @property {[Partner, Partner]} onRight who of each side stands on the right
 * @property {boolean} changeOfEnds whether the sides change ends before the next rally
 */

/** @param {Side} side @returns {0|1} */
export const at = (side) => (side === 'A' ? 0 : 1);
/** @param {Side} side @returns {Side} */
export const opponent = (side) => (side === 'A' ? 'B' : 'A');
/** @param {Partner} partner @returns {Partner} */
const other = (partner) => (partner === 'RIGHT_AT_EVEN' ? 'LEFT_AT_EVEN' : 'RIGHT_AT_EVEN');
/** @param {number} points @returns {Partner} */
const onRightAt = (points) => (points % 2 === 0 ? 'RIGHT_AT_EVEN' : 'LEFT_AT_EVEN');
/** @param {number} points @returns {Court} */
const courtAt = (points) => (points % 2 === 0 ? 'EVEN' : 'ODD');
/** @param {Format} format */
const isPairs = (format) => format.places === 'PAIRS';
/** @param {Format} format */
const hasTwoServers = (format) => format.scoring === 'SIDE_OUT_TWO_SERVERS';
/** @param {Format} format */
export const isSideOut = (format) => format.scoring.startsWith('SIDE_OUT');
/** @param {Score} score @param {Side} side @returns {Score} */
const pointTo = (score, side) =>
  side === 'A' ? [score[0] + 1, score[1]] : [score[0], score[1] + 1];

/**
 * Who has won at a score, or null while the game goes on or if the score cannot stand.
 * @param {Format} format @param {Score} score @returns {Side|null}
 */
export function winnerAt(format, score) {
  const unequal = format.targets[0] !== format.targets[1];
  for (const side of /** @type {Side[]} */ (['A', 'B'])) {
    const points = score[at(side)];
    const lead = points - score[at(opponent(side))];
    const atTarget = points >= format.targets[at(side)];
    const atCap = format.cap !== null && points >= format.cap && lead > 0;
    if (atCap || (atTarget && (unequal || lead >= format.winBy))) {
      return side;
    }
  }
  return null;
}

/**
 * Whether play goes on at a score.
 * @param {Format} format @param {Score} score
 */
export function isOpenAt(format, score) {
  if (winnerAt(format, score)) {
    return false;
  }
  if (format.winBy === 1) {
    return score[0] < format.targets[0] && score[1] < format.targets[1];
  }
  return format.cap === null || Math.max(score[0], score[1]) < format.cap;
}

/**
 * The state before the first rally.
 * @param {Format} format @returns {State}
 */
export function start(format) {
  const pairs = isPairs(format);
  return {
    format,
    score: format.start,
    server: format.firstServer,
    number: hasTwoServers(format) ? 2 : 1,
    partner: 'RIGHT_AT_EVEN',
    onRight: pairs
      ? [onRightAt(format.start[0]), onRightAt(format.start[1])]
      : ['RIGHT_AT_EVEN', 'RIGHT_AT_EVEN'],
    changeOfEnds: false,
  };
}

/** @param {Format} format @param {Side} winner @param {Side} server @param {Score} score */
function scores(format, winner, server, score) {
  if (winner === server) {
    return true;
  }
  if (isSideOut(format)) {
    return false;
  }
  return format.scoring !== 'RALLY_2025' || winnerAt(format, pointTo(score, winner)) === null;
}

/**
 * The state after a rally of a game that is not over.
 * @param {State} state @param {Side} winner @returns {State}
 */
export function after(state, winner) {
  const { format, server } = state;
  const point = scores(format, winner, server, state.score);
  const score = point ? pointTo(state.score, winner) : state.score;
  const onRight = /** @type {[Partner, Partner]} */ ([...state.onRight]);
  if (point && winner === server && isPairs(format)) {
    onRight[at(server)] = other(onRight[at(server)]);
  }
  const next = { ...state, score, onRight, changeOfEnds: changesEnds(format, state.score, score) };
  if (winner === server) {
    return next;
  }
  if (hasTwoServers(format) && state.number === 1) {
    return { ...next, number: 2, partner: other(state.partner) };
  }
  const partner = firstServerOf(format, winner, score, onRight);
  return { ...next, server: winner, number: 1, partner };
}

/**
 * @param {Format} format @param {Side} side @param {Score} score
 * @param {[Partner, Partner]} onRight @returns {Partner}
 */
function firstServerOf(format, side, score, onRight) {
  if (!isPairs(format)) {
    return 'RIGHT_AT_EVEN';
  }
  const fromRight = hasTwoServers(format) || score[at(side)] % 2 === 0;
  return fromRight ? onRight[at(side)] : other(onRight[at(side)]);
}

/** @param {Format} format @param {Score} before @param {Score} now */
function changesEnds(format, before, now) {
  if (format.ends === 'NONE' || winnerAt(format, now)) {
    return false;
  }
  /** @param {Score} score */
  const reached = (score) =>
    score.some((points, side) => points >= Math.floor((format.targets[side] + 1) / 2));
  return reached(now) && !reached(before);
}

/**
 * Where a player stands for the next serve.
 * @param {State} state @param {Side} side @param {Partner} partner @returns {Court}
 */
export function courtOf(state, side, partner) {
  const { format } = state;
  if (format.places === 'FIXED_LANE' && format.courts) {
    return format.courts[at(side)];
  }
  if (format.places === 'BY_SCORE') {
    return courtAt(state.score[at(state.server)]);
  }
  return state.onRight[at(side)] === partner ? 'EVEN' : 'ODD';
}

/** The server's court. @param {State} state */
export const serverCourt = (state) => courtOf(state, state.server, state.partner);

/**
 * Who of the receiving side receives.
 * @param {State} state @returns {Partner}
 */
export function receiver(state) {
  if (!isPairs(state.format)) {
    return 'RIGHT_AT_EVEN';
  }
  const right = state.onRight[at(opponent(state.server))];
  return serverCourt(state) === 'EVEN' ? right : other(right);
}

/**
 * The call before the serve; after the end the final score, side A first.
 * @param {State} state @param {boolean} over @returns {string}
 */
export function call(state, over) {
  if (over) {
    return `${state.score[0]}-${state.score[1]}`;
  }
  const own = state.score[at(state.server)];
  const theirs = state.score[at(opponent(state.server))];
  return hasTwoServers(state.format) ? `${own}-${theirs}-${state.number}` : `${own}-${theirs}`;
}

/**
 * Why a score cannot be a result: the name of the reason, or null if it can stand.
 * @param {Format} format @param {Score} score @param {boolean} timeCalled
 * @returns {string|null}
 */
export function refusal(format, score, timeCalled) {
  if (score[0] < format.start[0] || score[1] < format.start[1]) {
    return 'BELOW_THE_START';
  }
  if (timeCalled) {
    return isOpenAt(format, score) ? null : 'WON_BEFORE_TIME';
  }
  if (bothArrived(format, score)) {
    return 'BOTH_AT_TARGET';
  }
  const winner = winnerAt(format, score);
  if (!winner) {
    const nobody = score[0] < format.targets[0] && score[1] < format.targets[1];
    return nobody ? 'NOBODY_AT_TARGET' : 'LEAD_TOO_SMALL';
  }
  /** @type {Score} */
  const before = winner === 'A' ? [score[0] - 1, score[1]] : [score[0], score[1] - 1];
  return isOpenAt(format, before) ? null : 'PAST_THE_END';
}

/** @param {Format} format @param {Score} score */
function bothArrived(format, score) {
  if (format.winBy === 1) {
    return score[0] >= format.targets[0] && score[1] >= format.targets[1];
  }
  return format.cap !== null && Math.min(score[0], score[1]) >= format.cap;
}

/**
 * All results to which a side can win, the closest last.
 * @param {Format} format @param {Side} winner
 * @param {number} beyond how far past the target to list a game won by two without a cap
 * @returns {Score[]}
 */
export function finals(format, winner, beyond) {
  const target = format.targets[at(winner)];
  const otherTarget = format.targets[at(opponent(winner))];
  const last = format.winBy === 1 ? target : format.cap ?? target + beyond;
  /** @type {Score[]} */
  const found = [];
  for (let points = target; points <= last; points++) {
    const end = Math.max(points, otherTarget);
    for (let less = format.start[at(opponent(winner))]; less < end; less++) {
      /** @type {Score} */
      const score = winner === 'A' ? [points, less] : [less, points];
      if (refusal(format, score, false) === null) {
        found.push(score);
      }
    }
  }
  return found;
}

/**
 * How far each side can be while the game is still open: the numbers to offer when time is called.
 * @param {Format} format @param {Side} side @returns {number[]}
 */
export function openPoints(format, side) {
  const end = format.winBy === 1 ? format.targets[at(side)] : format.cap ?? format.targets[at(side)];
  const first = format.start[at(side)];
  return Array.from({ length: Math.max(0, end - first) }, (_, step) => first + step);
}
