// From the plan and the events to what the page shows: which block, which game, who, what to undo.

import { foldSession } from './fold.js';
import { at, isSideOut } from './score.js';

/** @typedef {import('./fold.js').CourtEvent} CourtEvent */
/** @typedef {import('./fold.js').GameView} GameView */
/** @typedef {import('./score.js').Side} Side */

/**
 * One side of a game, as others may see it.
 * @typedef {object} SeatPlan
 * @property {string[]} ids who plays it
 * @property {string[]} names first names, in the same order
 * @property {string} role
 * @property {string} task what this side does, in one sentence
 */

/**
 * @typedef {object} GamePlan
 * @property {string} id
 * @property {number} turn
 * @property {string} lane names the court and lane, the same for all games on it
 * @property {string} place the court and lane in words
 * @property {string} direction
 * @property {string} drawing the key of its drawing, or empty
 * @property {SeatPlan} a
 * @property {SeatPlan} b
 * @property {[number, number]} headStart
 * @property {import('./score.js').Format} format
 * @property {string} counted how it is counted, in words
 * @property {'A'|'B'|'WINNER'|'TURN'|'SERVE'} feed who puts the ball in play
 * @property {boolean} roundThePost whether a ball round the post wins a rally
 */

/**
 * @typedef {object} BlockPlan
 * @property {string} id
 * @property {'WARM_UP'|'DRILL'|'TOGETHER'|'FULL_GAME'|'YARDSTICK'|'BREAK'} kind
 * @property {string} title
 * @property {string} rule
 * @property {string[]} cues
 * @property {'BY_CLOCK'|'LAST_LANE'} end
 * @property {number} minutes
 * @property {{balls: number, hit: string}|null} yardstick
 * @property {string} drawing the key of its drawing where it has no games, or empty
 * @property {string[][]} sitting first names by turn
 * @property {GamePlan[]} games
 */

/**
 * @typedef {object} SessionPlan
 * @property {string} name
 * @property {boolean} indoors
 * @property {'FEET'|'METRIC'} units
 * @property {{id: string, name: string}[]} players
 * @property {string[]} cautions
 * @property {{celsius: number|null, humidityPercent: number|null, always: string, edition: string,
 *   heat: [number, string, string][]}} [weather] what is expected; heat by category: from (°F),
 *   words, advice
 * @property {BlockPlan[]} blocks
 * @property {Record<string, string>} drawings
 */

/**
 * What this phone has chosen to see.
 * @typedef {object} Choice
 * @property {'result'|'rallies'|'lanes'} mode
 * @property {string|null} block the block looked at; null follows what is on
 * @property {string|null} lane
 * @property {string|null} game
 * @property {string|null} player the one who is being counted
 * @property {boolean} timeCalled whether the grid shows unfinished scores
 * @property {[number|null, number|null]} picked an unfinished score that is being picked
 * @property {{kind: string, id?: string}|null} sheet
 * @property {string} said what was just done
 * @property {string} problem why the last change of who plays was not made, or a note not kept
 * @property {string} about what a note that is being written is about; empty as usual
 * @property {'right'|'left'} hand
 * @property {'usual'|'large'} size of the type
 * @property {'auto'|'bright'|'dark'} light
 * @property {'on'|'off'} sound a short sound for every entry
 * @property {'on'|'off'} buzz a short buzz for every entry, where the phone can
 * @property {'on'|'off'|''} guide who stands where, before each game; empty as usual for the visitor
 * @property {'on'|'off'} ask how a rally ended, after every one
 * @property {string} ready the game before which that was read
 * @property {boolean} stays whether the person knows that the page must stay open
 */

/** All that a view needs. */
export class Scene {
  /**
   * @param {SessionPlan} plan @param {CourtEvent[]} events @param {Choice} choice
   * @param {{by: string, coach: boolean}} phone which phone it is, and whether the coach's
   */
  constructor(plan, events, choice, phone) {
    this.plan = plan;
    this.choice = choice;
    this.phone = phone;
    this.events = events;
    this.session = foldSession(plan.blocks, events);
    this.block = this.shownBlock();
    this.games = (this.block?.games ?? []).filter((game) => !this.fallsAway(game));
    this.lanes = [...new Set(this.games.map((game) => game.lane))];
    this.lane = this.lanes.includes(choice.lane ?? '') ? choice.lane : this.lanes[0] ?? null;
    this.laneGames = this.games.filter((game) => game.lane === this.lane);
    this.game =
      this.laneGames.find((game) => game.id === choice.game)
      ?? this.laneGames.find((game) => !this.isOver(game))
      ?? this.laneGames[this.laneGames.length - 1]
      ?? null;
  }

  /** @returns {BlockPlan|null} null once everything has been played */
  shownBlock() {
    const { blocks } = this.plan;
    if (this.choice.block === 'end' || (this.choice.block === null && this.session.end)) {
      return null;
    }
    const wanted = this.choice.block ?? this.session.current;
    const fresh = blocks.find((block) => !this.session.starts.has(block.id));
    return blocks.find((block) => block.id === wanted) ?? fresh ?? null;
  }

  /** The block after the one shown. @returns {BlockPlan|null} */
  next() {
    const place = this.block ? this.plan.blocks.indexOf(this.block) : -1;
    return place < 0 ? null : this.plan.blocks[place + 1] ?? null;
  }

  /** @param {GamePlan} game @returns {GameView} */
  view(game) {
    const found = this.session.games.get(game.id);
    if (!found) {
      throw new Error(`The plan has no game ${game.id}.`);
    }
    return found;
  }

  /** @param {GamePlan} game */
  isOver(game) {
    const { status } = this.view(game);
    return status === 'PLAYED_OUT' || status === 'TIME_CALLED';
  }

  /** Whether the block shown is the one that is on. */
  isOn() {
    return this.block !== null && this.session.current === this.block.id;
  }

  /** Games of the block shown that are not over. */
  openGames() {
    return this.games.filter((game) => !this.isOver(game));
  }

  /** Whether a game is not played any more because its block ends sooner. @param {GamePlan} game */
  fallsAway(game) {
    const limit = this.session.limits.get(this.block?.id ?? '');
    return Boolean(limit?.without?.includes(game.id)) && this.view(game).status === 'NOT_BEGUN';
  }

  /** The block that is on for everybody, or was last. @returns {BlockPlan|null} */
  present() {
    const { blocks } = this.plan;
    const started = blocks.filter(({ id }) => this.session.starts.has(id));
    return blocks.find(({ id }) => id === this.session.current) ?? started.pop() ?? null;
  }

  /** Whether the others have gone on from the block shown. */
  isBehind() {
    const present = this.present();
    return this.block !== null && present !== null && !this.isOn()
      && this.plan.blocks.indexOf(this.block) < this.plan.blocks.indexOf(present);
  }

  /** Whether those who play should hear now who stands where. */
  isToBeGuided() {
    const { guide, mode, ready, block } = this.choice;
    const wanted = guide === '' ? !this.phone.coach : guide === 'on';
    return wanted && mode !== 'lanes' && block === null && this.isOn() && this.game !== null
      && this.view(this.game).status === 'NOT_BEGUN' && ready !== this.game.id;
  }

  /** What two phones do not say alike, that of the game shown first. */
  dispute() {
    const { disputes } = this.session;
    return disputes.find(({ game }) => game === this.game?.id) ?? disputes[0] ?? null;
  }

  /** The next game on this lane, if the block has one. @returns {GamePlan|null} */
  nextOnLane() {
    const place = this.game ? this.laneGames.indexOf(this.game) : -1;
    return place < 0 ? null : this.laneGames[place + 1] ?? null;
  }

  /** @param {string} id @returns {GamePlan|null} */
  gameOf(id) {
    return this.plan.blocks.flatMap((block) => block.games).find((game) => game.id === id) ?? null;
  }

  /** @param {string|undefined} id */
  playerName(id) {
    return this.plan.players.find((player) => player.id === id)?.name ?? '?';
  }

  /** @param {string|undefined} id */
  blockTitle(id) {
    const block = this.plan.blocks.find((each) => each.id === id);
    return block ? this.titleOf(block) : 'a block';
  }

  /** The title of a block, with its number where one that is on or near has the same. */
  /** @param {BlockPlan} block */
  titleOf(block) {
    const near = [this.block, this.present(), this.next()];
    const same = near.some((each) => each && each !== block && each.title === block.title);
    return same ? `${this.plan.blocks.indexOf(block) + 1}. ${block.title}` : block.title;
  }
}

/** The names of a side. @param {GamePlan} game @param {Side} side */
export function names(game, side) {
  return (side === 'A' ? game.a : game.b).names.join(' & ');
}

/** A score with the sign that people write. @param {[number, number]} score */
export function written(score) {
  return `${score[0]}–${score[1]}`;
}

/**
 * Which events an undo takes back here, and what they were in words.
 * @param {Scene} scene
 * @returns {{events: CourtEvent[], words: string}|null}
 */
export function undoable(scene) {
  const last = lastHere(scene);
  return last ? { events: together(scene, last), words: inWords(scene, last) } : null;
}

/** @param {Scene} scene @returns {CourtEvent|null} */
function lastHere(scene) {
  const { block, game, session, choice } = scene;
  // The start of a block from which the others have gone on is not this phone's to take back.
  const start = block && !scene.isBehind() ? session.starts.get(block.id) ?? null : null;
  const newest = (/** @type {(event: CourtEvent) => boolean|undefined} */ test) =>
    [...session.counted].reverse().find(test) ?? null;
  if (!block) {
    return newest((event) => event.type === 'effort' || event.type === 'session-ended');
  }
  if (block.kind === 'YARDSTICK') {
    const counts = newest((event) => event.type === 'yardstick' && event.block === block.id);
    return counts ?? start;
  }
  if (choice.mode === 'lanes' && block.games.length > 0) {
    const here = new Set(block.games.map((each) => each.id));
    return newest((event) => event.game !== undefined && here.has(event.game))
      ?? start;
  }
  if (game && scene.view(game).last) {
    return scene.view(game).last;
  }
  return start && newest((event) => event.type === 'block-started' && event.block === block.id);
}

/** A block that started when another ended: both go together. */
/** @param {Scene} scene @param {CourtEvent} last @returns {CourtEvent[]} */
function together(scene, last) {
  if (last.type !== 'block-started') {
    return [last];
  }
  const twin = scene.session.counted.filter(
    (event) => event.type === 'block-ended' && event.at === last.at && event.by === last.by);
  return [last, ...twin];
}

/** @param {Scene} scene @param {CourtEvent} event @returns {string} */
function inWords(scene, event) {
  const game = event.game ? scene.gameOf(event.game) : null;
  switch (event.type) {
    case 'rally':
      return game && event.winner
        ? `${isSideOut(game.format) ? 'rally' : 'point'} to ${names(game, event.winner)}`
        : 'rally';
    case 'final-score':
      return `result ${event.a}–${event.b}`;
    case 'time-called':
      return 'time called';
    case 'first-server':
      return game && event.server ? `${names(game, event.server)} serves first` : 'first server';
    case 'yardstick':
      return `last count of ${scene.playerName(event.player)}`;
    case 'block-started':
      return 'start of this block';
    case 'effort':
      return `effort of ${scene.playerName(event.player)}`;
    case 'session-ended':
      return 'end of the session';
    default:
      return 'last entry';
  }
}

/**
 * Who puts the ball in play now, and how that is said; empty where it is not known.
 * @param {GamePlan} game @param {GameView} view
 * @returns {{side: Side, words: string}|null}
 */
export function starter(game, view) {
  if (game.feed === 'TURN' || !view.state) {
    return null;
  }
  if (game.feed === 'SERVE') {
    const { server, partner, number } = view.state;
    const side = server === 'A' ? game.a : game.b;
    const who = side.names.length > 1 ? side.names[partner === 'RIGHT_AT_EVEN' ? 0 : 1] : '';
    const second = game.format.scoring === 'SIDE_OUT_TWO_SERVERS' ? ` (${number})` : '';
    return { side: server, words: who ? `${who} serves${second}` : 'serves' };
  }
  if (game.feed === 'WINNER') {
    return view.rallies > 0 ? { side: view.state.server, words: 'feeds' } : null;
  }
  return { side: game.feed, words: 'feeds' };
}

/** The points of a side. @param {GameView} view @param {Side} side */
export function points(view, side) {
  return view.score[at(side)];
}
