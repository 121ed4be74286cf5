// Sheets over the page: choosing, and what is not needed every minute.

import { drawing, el } from '../dom.js';
import { names } from '../model.js';
import { doubt, entries } from './doubt.js';
import { endings } from './ending.js';
import { sheet, standing } from './frame.js';
import { guide } from './guide.js';
import { more, wrong } from './more.js';
import { note, notes } from './notes.js';
import { headStart, resultGrid } from './scoring.js';

/** @typedef {import('../model.js').Scene} Scene */

/** @type {Record<string, (scene: Scene, way: import('../sync.js').Way) => HTMLElement|null>} */
const SHEETS = {
  blocks,
  place: places,
  drill,
  more,
  result: (scene) => result(scene, scene.choice.sheet?.id ?? ''),
  ending: endings,
  doubt,
  entries,
  'others-play': othersPlay,
  back,
  note,
  notes,
  seats,
  counted,
  total,
};

/** The sheet that is open, or null. @param {Scene} scene @param {import('../sync.js').Way} way */
export function openSheet(scene, way) {
  const { sheet: open } = scene.choice;
  if (open) {
    return SHEETS[open.kind]?.(scene, way) ?? null;
  }
  return scene.isToBeGuided() ? guide(scene) : null;
}

/** @param {Scene} scene */
function blocks(scene) {
  const line = (/** @type {string} */ id, /** @type {string} */ title,
    /** @type {string} */ state, /** @type {boolean} */ here) =>
    el('li', {}, el('button.choose', { 'data-act': 'show-block', 'data-block': id,
      'aria-current': here ? 'true' : null }, el('span', {}, title), el('span', {}, state)));
  return sheet('The session', [
    scene.isBehind() ? el('button.button', { 'data-act': 'sheet', 'data-sheet': 'back',
      'data-key': 'back' }, `Take everybody back to ${scene.blockTitle(scene.block?.id)}`) : null,
    el('ol.plain', {},
    scene.plan.blocks.map((block) => line(block.id, block.title, stateOf(scene, block),
      block === scene.block)),
    line('end', 'Effort and end', scene.session.end ? 'done' : '', scene.block === null))]);
}

/** @param {Scene} scene @param {import('../model.js').BlockPlan} block */
function stateOf(scene, block) {
  if (scene.session.current === block.id) {
    return 'on now';
  }
  return scene.session.starts.has(block.id) ? 'done' : `${Math.round(block.minutes)} min`;
}

/** @param {Scene} scene */
function places(scene) {
  const { games } = scene;
  return sheet('Your lane', [el('div', {}, scene.lanes.map((lane) => el('section', {},
    el('h3', {}, games.find((game) => game.lane === lane)?.place ?? ''),
    el('ul.plain', {}, games.filter((game) => game.lane === lane).map((game) =>
      el('li', {}, el('button.choose', { 'data-act': 'choose-game', 'data-game': game.id,
        'data-lane': lane, 'aria-current': game === scene.game ? 'true' : null },
      el('span', {}, `${names(game, 'A')} – ${names(game, 'B')}`),
      el('span', {}, standing(scene, game)))))))))]);
}

/** @param {Scene} scene */
function drill(scene) {
  const { block, game } = scene;
  if (!block) {
    return null;
  }
  const picture = scene.plan.drawings[game?.drawing ?? block.drawing];
  return sheet(block.title, [
    picture ? el('div.sheet-court', {}, drawing(game?.drawing ?? block.drawing, picture)) : null,
    el('p', {}, block.rule),
    game ? el('p', {}, el('strong', {}, `${names(game, 'B')}, far: `), game.b.task) : null,
    game ? el('p', {}, el('strong', {}, `${names(game, 'A')}, near: `), game.a.task) : null,
    game ? el('p', {}, headStart(game)) : null,
    game?.roundThePost ? el('p', {}, 'A ball legally played round the post wins the rally.') : null,
    game && scene.view(game).status === 'NOT_BEGUN'
      ? el('button.button', { 'data-act': 'sheet', 'data-sheet': 'seats' }, 'Somebody else plays')
      : null,
    game && scene.view(game).last
      ? el('button.button', { 'data-act': 'sheet', 'data-sheet': 'entries' }, 'What was entered')
      : null,
    el('button.button', { 'data-act': 'sheet', 'data-sheet': 'notes' }, 'Notes'),
    block.cues.length > 0 ? el('ul', {}, block.cues.map((cue) => el('li', {}, cue))) : null]);
}

/** @param {Scene} scene @param {string} id */
function result(scene, id) {
  const game = scene.gameOf(id);
  if (!game) {
    return null;
  }
  return sheet(`${names(game, 'A')} – ${names(game, 'B')}`, [
    el('p', {}, `${game.place}. ${headStart(game)}`),
    el('button.button', { 'data-act': 'toggle-time', 'aria-pressed': scene.choice.timeCalled },
      'Time called'),
    resultGrid(scene, game)]);
}

/** Somebody else in the place of one of those who are to play. @param {Scene} scene */
function seats(scene) {
  const { game } = scene;
  if (!game) {
    return null;
  }
  const playing = [...game.a.ids, ...game.b.ids];
  const others = scene.plan.players.filter((player) => !playing.includes(player.id));
  return sheet('Somebody else plays', [
    wrong(scene),
    el('p', {}, 'Whoever comes in from another game of this turn changes places.'),
    el('div', {}, playing.map((out) => el('section', { 'data-key': out },
      el('h3', {}, `Instead of ${scene.playerName(out)}`),
      el('div.cells.cells-words', {}, others.map((player) => el('button.cell',
        { 'data-act': 'swap', 'data-game': game.id, 'data-out': out, 'data-in': player.id,
          'data-name': player.name }, player.name))))))]);
}

/** @param {Scene} scene */
function othersPlay(scene) {
  const open = scene.openGames();
  return sheet('Games are still open', [
    el('p', {}, `${open.length === 1 ? '1 game has' : `${open.length} games have`} no result yet: `
      + `${open.slice(0, 4).map((game) => `${names(game, 'A')} – ${names(game, 'B')}`).join('; ')}`
      + `${open.length > 4 ? ' …' : ''}. They can be scored later.`),
    el('div.acts', {},
      el('button.act', { 'data-act': 'close' }, el('span.act-word', {}, 'Wait')),
      el('button.act.act-now', { 'data-act': 'next-block-now' },
        el('span.act-word', {}, 'Go on for all')))]);
}

/** Somebody wants to play a block again while the others have gone on. @param {Scene} scene */
function back(scene) {
  const there = scene.blockTitle(scene.present()?.id);
  return sheet('Take everybody back?', [
    el('p', {}, `The session has gone on to ${there}. Going back to `
      + `${scene.blockTitle(scene.block?.id)} takes every phone and the board along. Scores stay as `
      + 'they are; games that are still open there can be scored without going back.'),
    el('div.acts', {},
      el('button.act', { 'data-act': 'start-back' }, el('span.act-word', {}, 'Take all back')),
      el('button.act.act-now', { 'data-act': 'follow' }, el('span.act-word', {}, 'On to'),
        el('span.act-what', {}, there)))]);
}

/** @param {Scene} scene */
function counted(scene) {
  const block = scene.block;
  return sheet('Who strikes', [el('ul.plain', {}, scene.plan.players.map((player) => {
    const count = scene.session.counts.get(`${block?.id} ${player.id}`);
    return el('li', {}, el('button.choose', { 'data-act': 'choose-player',
      'data-player': player.id, 'aria-current': player.id === scene.choice.player ? 'true' : null },
    el('span', {}, player.name),
    el('span', {}, count ? `${count.hits} of ${count.balls}` : '–')));
  }))]);
}

/** @param {Scene} scene */
function total(scene) {
  const balls = scene.block?.yardstick?.balls ?? 0;
  const player = scene.choice.player ?? scene.plan.players[0]?.id;
  return sheet(`Hits of ${balls}`, [el('p', {}, scene.playerName(player)),
    el('div.cells', {}, Array.from({ length: balls + 1 }, (_, hits) => el('button.cell',
      { 'data-act': 'count', 'data-player': player, 'data-hits': hits }, hits)))]);
}
