// Blocks without a score: getting warm, rest, closed tests, and the end of the session.

import { drawing, el } from '../dom.js';
import { clock } from '../clock.js';
import { onward, undoButton } from './frame.js';

/** @typedef {import('../model.js').Scene} Scene */
/** @typedef {import('../model.js').BlockPlan} BlockPlan */

/** A warm-up or a rest. @param {Scene} scene @param {BlockPlan} block @param {number} now */
export function timed(scene, block, now) {
  const shown = clock(scene, block, now);
  const first = scene.plan.blocks[0] === block;
  const picture = scene.plan.drawings[block.drawing];
  return [
    el('div.reading', { tabindex: 0, role: 'region', 'aria-label': block.title },
      el('p', {}, block.rule),
      picture ? el('div.reading-court', {}, drawing(block.drawing, picture)) : null,
      block.cues.length > 0 ? el('ul', {}, block.cues.map((cue) => el('li', {}, cue))) : null,
      first ? cautions(scene) : null),
    el('div.acts', {}, undoButton(scene), onward(scene)),
    el('div.clock', { role: 'timer', 'data-over': shown.over },
      el('span.clock-time', {}, shown.text), el('span.clock-words', {}, shown.words)),
  ];
}

/** @param {Scene} scene */
export function cautions(scene) {
  return el('div.caution', {}, el('ul.plain', {},
    scene.plan.cautions.map((caution) => el('li', {}, caution))));
}

/** A closed test: so many balls, a tap for each. @param {Scene} scene @param {BlockPlan} block */
export function yardstick(scene, block) {
  const { players } = scene.plan;
  const player = players.find((each) => each.id === scene.choice.player) ?? players[0];
  const balls = block.yardstick?.balls ?? 0;
  const count = scene.session.counts.get(`${block.id} ${player.id}`);
  const hits = count?.hits ?? 0;
  const struck = count?.balls ?? 0;
  const area = (/** @type {string} */ hit, /** @type {string} */ words,
    /** @type {number} */ number) =>
    el(hit === 'HIT' ? 'button.area.area-a' : 'button.area.area-b',
      { 'data-act': 'ball', 'data-hit': hit, 'data-player': player.id,
        'aria-disabled': struck >= balls, 'aria-label': `${words}, so far ${number}` },
      el('span.area-name', {}, words), el('span.area-score', {}, number),
      el('span.area-note', {}, struck >= balls ? 'all balls struck' : '\u00a0'));
  return [
    el('button.place', { 'data-act': 'sheet', 'data-sheet': 'counted' },
      el('span', {}, player.name), el('span', {}, `${struck} of ${balls} balls`)),
    el('div.reading', { tabindex: 0, role: 'region', 'aria-label': block.title },
      el('p', {}, block.rule), el('p', {}, el('strong', {}, 'Counts: '), block.yardstick?.hit ?? '')),
    el('div.acts', {}, undoButton(scene),
      el('button.act', { 'data-act': 'sheet', 'data-sheet': 'total', 'data-key': 'time' },
        el('span.act-word', {}, 'Type total')), onward(scene)),
    el('div.areas', {}, area('HIT', 'Hit', hits), area('MISS', 'Miss', struck - hits)),
  ];
}

/** How hard it was, player by player, then the end. @param {Scene} scene */
export function ending(scene) {
  const { players } = scene.plan;
  const { end, efforts } = scene.session;
  return [
    el('div.reading.reading-tall', { tabindex: 0, role: 'region', 'aria-label': 'Effort' },
      el('h2', {}, end ? 'The session is over' : 'How hard was it?'),
      el('p', {}, 'Each player says a number: 0 is rest, 3 moderate, 5 hard, 7 very hard, '
        + '10 as hard as it gets. It can be left out.'),
      players.map((player) => el('section.effort', { 'data-key': player.id },
        el('h3', {}, player.name),
        el('div.cells.cells-effort', { role: 'group', 'aria-label': `Effort of ${player.name}` },
          Array.from({ length: 11 }, (_, rating) => el('button.cell', { 'data-act': 'effort',
            'data-player': player.id, 'data-rating': rating,
            'aria-pressed': efforts.get(player.id)?.rating === rating }, rating)))))),
    el('div.acts', {}, undoButton(scene),
      end ? el('p.act.act-on', {}, el('span.act-word', {}, 'Session ended'))
        : el('button.act.act-on.act-now', { 'data-act': 'end-session', 'data-key': 'onward' },
          el('span.act-word', {}, 'End the session'))),
  ];
}
