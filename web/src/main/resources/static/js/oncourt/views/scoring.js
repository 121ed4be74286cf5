// Scoring one game: who plays what, then the result in one tap, or rally by rally.

import { drawing, el } from '../dom.js';
import { names, points, starter, written } from '../model.js';
import { call, finals, isOpenAt, isSideOut, openPoints } from '../score.js';
import { onward, undoButton } from './frame.js';

/** @typedef {import('../model.js').Scene} Scene */
/** @typedef {import('../model.js').GamePlan} GamePlan */
/** @typedef {import('../score.js').Side} Side */

const SIDES = /** @type {Side[]} */ (['A', 'B']);
/** How far beyond the target a game won by two is offered. */
const BEYOND = 4;
/** The most unfinished scores that stand on one grid; with more, each side's points are picked. */
const MOST_CELLS = 30;

/** @param {Scene} scene @param {GamePlan} game */
export function scoring(scene, game) {
  const rallies = scene.choice.mode === 'rallies';
  return [
    place(scene, game),
    info(scene, game),
    modes(scene),
    el('div.acts', {}, undoButton(scene), middle(scene, game), onward(scene)),
    rallies ? endingRow(scene, game) : null,
    rallies ? areas(scene, game) : el('div.lower', {}, resultGrid(scene, game)),
  ];
}

/** @param {Scene} scene @param {GamePlan} game */
function place(scene, game) {
  const number = scene.laneGames.indexOf(game) + 1;
  return el('button.place', { 'data-act': 'sheet', 'data-sheet': 'place' },
    el('span', {}, capital(game.place)),
    el('span', {}, `game ${number} of ${scene.laneGames.length}`));
}

/** @param {string} words */
export function capital(words) {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** Who, role, direction, rule, head start, beside the drawing. */
/** @param {Scene} scene @param {GamePlan} game */
export function info(scene, game) {
  const picture = scene.plan.drawings[game.drawing];
  const sitting = scene.block?.sitting[game.turn - 1] ?? [];
  return el('button.info', { 'data-act': 'sheet', 'data-sheet': 'drill' },
    picture ? el('span.info-court', {}, drawing(game.drawing, picture)) : null,
    el('span.info-words', {},
      seat(game, 'B'),
      el('span.info-rule', {}, scene.block?.rule ?? ''),
      el('span.info-small', {}, `${capital(game.direction)}. ${headStart(game)}`,
        sitting.length > 0 ? ` Sitting out: ${sitting.join(', ')}.` : ''),
      seat(game, 'A'),
      el('span.unseen', {}, 'More on this drill')));
}

/** @param {GamePlan} game @param {Side} side */
function seat(game, side) {
  const { role } = side === 'A' ? game.a : game.b;
  return el('span.info-seat', {},
    el(side === 'A' ? 'strong.side-a' : 'strong.side-b', {}, names(game, side)),
    ' ', role === 'even' ? '' : el('span', {}, role));
}

/** @param {GamePlan} game */
export function headStart(game) {
  const [a, b] = game.headStart;
  if (a === 0 && b === 0) {
    return capital(game.counted) + '.';
  }
  const side = a > 0 ? 'A' : 'B';
  return `${capital(game.counted)}; ${names(game, side)} starts with ${a + b}.`;
}

/** @param {Scene} scene */
export function modes(scene) {
  const offered = [['result', 'Result'], ['rallies', 'Rallies'], ['lanes', 'All lanes']];
  return el('div.modes', { role: 'group', 'aria-label': 'Way to score' },
    offered.map(([mode, words]) => el('button.mode',
      { 'data-act': 'mode', 'data-mode': mode, 'aria-pressed': scene.choice.mode === mode }, words)));
}

/** What stands between undo and next: time called, where it applies. */
/** @param {Scene} scene @param {GamePlan} game */
function middle(scene, game) {
  if (scene.choice.mode === 'rallies') {
    return el('button.act', { 'data-act': 'time-called', 'data-key': 'time',
      disabled: scene.view(game).status !== 'RUNNING' }, el('span.act-word', {}, 'Time called'));
  }
  return el('button.act', { 'data-act': 'toggle-time', 'data-key': 'time',
    'aria-pressed': scene.choice.timeCalled }, el('span.act-word', {}, 'Time called'));
}

/** One tap each, never needed: error or beaten, round the post, more. */
/** @param {Scene} scene @param {GamePlan} game */
function endingRow(scene, game) {
  const view = scene.view(game);
  if (view.status === 'NOT_BEGUN' && isSideOut(game.format)) {
    return firstServer(game, view);
  }
  const last = view.lastRally;
  const note = last?.ending ?? {};
  const chip = (/** @type {string} */ act, /** @type {string} */ words,
    /** @type {boolean} */ on) =>
    el('button.chip', { 'data-act': act, disabled: last === null, 'aria-pressed': on }, words);
  return el('div.endings', { role: 'group', 'aria-label': 'How the last rally ended, if you like' },
    chip('ending-ERROR', 'Error', note.manner === 'ERROR'),
    chip('ending-BEATEN', 'Beaten', note.manner === 'BEATEN'),
    game.roundThePost ? chip('bonus', 'Round post', last?.bonus === 'ROUND_THE_POST') : null,
    chip('open-ending', 'Where', Boolean(note.stroke || note.stage)));
}

/** @param {GamePlan} game @param {import('../fold.js').GameView} view */
function firstServer(game, view) {
  const first = view.firstServer ?? game.format.firstServer;
  return el('div.endings', { role: 'group', 'aria-label': 'Who serves first' },
    el('span.endings-word', {}, 'Serves first'),
    SIDES.map((side) => el('button.chip', { 'data-act': 'first-server', 'data-side': side,
      'aria-pressed': first === side }, names(game, side))));
}

/** The two areas that fill the lower half. @param {Scene} scene @param {GamePlan} game */
function areas(scene, game) {
  const view = scene.view(game);
  const over = scene.isOver(game);
  const starts = over ? null : starter(game, view);
  const spoken = view.state && game.feed === 'SERVE' ? call(view.state, over) : '';
  return el('div.areas', {},
    SIDES.map((side) => el(side === 'A' ? 'button.area.area-a' : 'button.area.area-b',
      { 'data-act': 'rally', 'data-side': side, 'aria-disabled': over,
        'aria-label': `${names(game, side)} ${points(view, side)}`
          + (over ? '' : ', tap when they win the rally') },
      el('span.area-name', {}, names(game, side)),
      el('span.area-score', {}, points(view, side)),
      el('span.area-note', {}, over ? ended(view, side) : starts?.side === side
        ? `${starts.words}${spoken ? `, call ${spoken}` : ''}` : '\u00a0'))));
}

/** @param {import('../fold.js').GameView} view @param {Side} side */
function ended(view, side) {
  if (view.status === 'TIME_CALLED') {
    return 'time called';
  }
  const other = side === 'A' ? 'B' : 'A';
  return points(view, side) > points(view, other) ? 'wins' : '\u00a0';
}

/** Every possible result, each one tap. @param {Scene} scene @param {GamePlan} game */
export function resultGrid(scene, game) {
  if (scene.choice.timeCalled) {
    return unfinished(scene, game);
  }
  return el('div.results', {},
    SIDES.map((side) => el('div.results-side', { role: 'group',
      'aria-label': `${names(game, side)} wins` },
      el('p.results-head', {},
        el(side === 'A' ? 'strong.side-a' : 'strong.side-b', {}, names(game, side)), ' wins'),
      el('div.cells', {},
        finals(game.format, side, BEYOND).map((score) => cell(scene, game, score, false))))));
}

/** @param {Scene} scene @param {GamePlan} game @param {[number, number]} score
 * @param {boolean} timeCalled */
function cell(scene, game, score, timeCalled) {
  const view = scene.view(game);
  const status = timeCalled ? 'TIME_CALLED' : 'PLAYED_OUT';
  const chosen = view.status === status && written(view.score) === written(score);
  return el('button.cell', { 'data-act': 'final', 'data-game': game.id, 'data-a': score[0],
    'data-b': score[1], 'data-finish': status, 'aria-pressed': chosen }, written(score));
}

/** @param {Scene} scene @param {GamePlan} game */
function unfinished(scene, game) {
  const a = openPoints(game.format, 'A');
  const b = openPoints(game.format, 'B');
  const head = el('p.results-head', {}, 'Time was called at ',
    el('strong.side-a', {}, names(game, 'A')), ' – ', el('strong.side-b', {}, names(game, 'B')));
  if (a.length * b.length <= MOST_CELLS) {
    const scores = a.flatMap((first) =>
      b.map((second) => /** @type {[number, number]} */ ([first, second])));
    const open = scores.filter((score) => isOpenAt(game.format, score));
    return el('div.results-open', {}, head, el('div.cells', { 'data-columns': b.length },
      open.map((score) => cell(scene, game, score, true))));
  }
  return el('div.results-open', {}, head, picker(scene, game, 'A', a), picker(scene, game, 'B', b),
    pickedButton(scene, game));
}

/** @param {Scene} scene @param {GamePlan} game @param {Side} side @param {number[]} offered */
function picker(scene, game, side, offered) {
  const picked = scene.choice.picked[side === 'A' ? 0 : 1];
  return el('div.results-side', { role: 'group', 'aria-label': `Points of ${names(game, side)}` },
    el('p.results-head', {},
      el(side === 'A' ? 'strong.side-a' : 'strong.side-b', {}, names(game, side))),
    el('div.cells', {}, offered.map((number) => el('button.cell', { 'data-act': 'pick',
      'data-side': side, 'data-points': number, 'aria-pressed': picked === number }, number))));
}

/** @param {Scene} scene @param {GamePlan} game */
function pickedButton(scene, game) {
  const [a, b] = scene.choice.picked;
  const ready = a !== null && b !== null;
  return el('button.button.now.wide', { 'data-act': 'final', 'data-game': game.id, 'data-a': a,
    'data-b': b, 'data-finish': 'TIME_CALLED', disabled: !ready },
    ready ? `Keep ${a}–${b}, time called` : 'Pick both');
}
