// All lanes of a block in one grid, for the coach's phone: one line a game, two taps a result.

import { el } from '../dom.js';
import { names } from '../model.js';
import { modes } from './scoring.js';
import { onward, standing, undoButton } from './frame.js';

/** @typedef {import('../model.js').Scene} Scene */

/** @param {Scene} scene */
export function lanes(scene) {
  const { games } = scene;
  const turns = [...new Set(games.map((game) => game.turn))].sort((a, b) => a - b);
  const open = scene.openGames().length;
  return [
    el('p.lanes-rule', {}, scene.block?.rule ?? ''),
    el('div.lanes', { tabindex: 0, role: 'region', 'aria-label': 'All games of this block' },
      turns.map((turn) => el('section', {},
        turns.length > 1 ? el('h2.lanes-turn', {}, `Turn ${turn}`) : null,
        el('ul.lanes-list', {},
          games.filter((game) => game.turn === turn).map((game) => line(scene, game)))))),
    el('p.lanes-left', { role: 'status' }, open === 0 ? 'All games are in.'
      : `${open} of ${games.length} still to come.`),
    modes(scene),
    el('div.acts', {}, undoButton(scene), onward(scene)),
  ];
}

/** @param {Scene} scene @param {import('../model.js').GamePlan} game */
function line(scene, game) {
  const { status } = scene.view(game);
  return el('li', { 'data-key': game.id },
    el('button.lane', { 'data-act': 'result-of', 'data-game': game.id, 'data-status': status },
      el('span.lane-place', {}, game.place),
      el('span.lane-a', {}, names(game, 'A')),
      el('strong.lane-score', {}, standing(scene, game)),
      el('span.lane-b', {}, names(game, 'B'))));
}
