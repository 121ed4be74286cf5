// Before each game: who stands where and does what, so that players need no coach.

import { drawing, el } from '../dom.js';
import { names } from '../model.js';
import { sheet } from './frame.js';
import { capital, headStart } from './scoring.js';

/** @typedef {import('../model.js').Scene} Scene */
/** @typedef {import('../score.js').Side} Side */

/** @param {Scene} scene */
export function guide(scene) {
  const { game, block } = scene;
  if (!game || !block) {
    return null;
  }
  const number = scene.laneGames.indexOf(game) + 1;
  const picture = scene.plan.drawings[game.drawing];
  const sitting = block.sitting[game.turn - 1] ?? [];
  const stands = (/** @type {Side} */ side) => {
    const { role, task } = side === 'A' ? game.a : game.b;
    return el('p', {},
      el(side === 'A' ? 'strong.side-a' : 'strong.side-b', {}, names(game, side)),
      ` ${side === 'A' ? 'near' : 'far'} side${role === 'even' ? '' : `, ${role}`}. ${task}`);
  };
  return sheet(block.title, [
    el('p', {}, el('strong', {}, `Game ${number} of ${scene.laneGames.length}`),
      ` on ${game.place}.`),
    el('div.guide', {},
      picture ? el('div.guide-court', {}, drawing(game.drawing, picture)) : null,
      el('div.guide-words', {}, stands('B'), stands('A'))),
    el('p', {}, headStart(game), serve(game),
      sitting.length > 0 ? ` Sitting out: ${sitting.join(', ')}.` : ''),
    el('button.button.now.wide', { 'data-act': 'ready' }, capital('ready'))]);
}

/** @param {import('../model.js').GamePlan} game */
function serve(game) {
  switch (game.feed) {
    case 'SERVE':
      return ` ${names(game, game.format.firstServer)} serves first.`;
    case 'A':
    case 'B':
      return ` ${names(game, game.feed)} puts the ball in play.`;
    case 'WINNER':
      return ' Whoever won the last rally puts the ball in play.';
    default:
      return ' Put the ball in play by turns.';
  }
}
