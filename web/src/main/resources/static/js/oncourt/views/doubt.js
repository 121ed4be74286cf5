// Two phones that do not say the same, and the trace of what was entered.

import { el } from '../dom.js';
import { names, written } from '../model.js';
import { sheet } from './frame.js';
import { capital } from './scoring.js';

/** @typedef {import('../model.js').Scene} Scene */
/** @typedef {import('../fold.js').CourtEvent} CourtEvent */

/**
 * What two phones say of a game, that which counts first; who serves where the score is the same.
 * @param {Scene} scene @param {import('../entries.js').Dispute} dispute
 * @param {import('../model.js').GamePlan} game @returns {[string, string]}
 */
export function versions(scene, dispute, game) {
  const { score, state } = scene.view(game);
  const same = written(score) === written(dispute.score);
  const told = (/** @type {[number, number]} */ points,
    /** @type {import('../score.js').Side|null} */ server) =>
    written(points) + (same && server ? `, ${names(game, server)} serves` : '');
  return [told(score, state?.server ?? null), told(dispute.score, dispute.server)];
}

/** Two phones do not say the same of a game. @param {Scene} scene */
export function doubtNotice(scene) {
  const dispute = scene.dispute();
  const game = dispute ? scene.gameOf(dispute.game) : null;
  return !dispute || !game ? null : el('div.notice', { role: 'alert', 'data-key': 'doubt' },
    el('p', {}, `Two phones do not say the same of ${names(game, 'A')} – ${names(game, 'B')}: `
      + `${versions(scene, dispute, game).join(' or ')}.`),
    el('button.button', { 'data-act': 'sheet', 'data-sheet': 'doubt' }, 'Which is right?'));
}

/** @param {Scene} scene */
export function doubt(scene) {
  const dispute = scene.dispute();
  const game = dispute ? scene.gameOf(dispute.game) : null;
  if (!dispute || !game) {
    return null;
  }
  const [standing, other] = versions(scene, dispute, game);
  const own = dispute.phone === scene.phone.by;
  const onlyRallies = dispute.waiting.every(({ type }) => type === 'rally');
  const choose = (/** @type {string} */ keep, /** @type {string} */ words,
    /** @type {string} */ whose) =>
    el('button.choose', { 'data-act': 'settle', 'data-keep': keep },
      el('strong', {}, words), el('span', {}, whose));
  return sheet('Which is right?', [
    el('p', {}, `${capital(game.place)}: ${names(game, 'A')} – ${names(game, 'B')}. Two phones scored it `
      + 'without hearing of each other. Nothing is lost; the other entries stay in the list.'),
    el('div', {},
      choose('standing', standing, own ? 'another phone' : 'as it stands'),
      choose('other', other, own ? 'this phone' : 'another phone'),
      onlyRallies ? choose('both', 'Both', 'one after the other') : null)]);
}

/** Every entry of a game, those that were taken back among them. @param {Scene} scene */
export function entries(scene) {
  const { game } = scene;
  if (!game) {
    return null;
  }
  const seen = new Set();
  const own = scene.events.filter(({ id, game: of }) =>
    of === game.id && !seen.has(id) && seen.add(id));
  const counted = new Set(scene.session.counted.map(({ id }) => id));
  return sheet('What was entered', [
    el('p', {}, `${names(game, 'A')} – ${names(game, 'B')}, oldest first.`),
    el('ol.entries', {}, own.map((event) => el('li', { 'data-key': event.id },
      el(counted.has(event.id) ? 'span' : 's', {},
        `${time(event.at)} ${inWords(game, event)}`),
      counted.has(event.id) ? null : ' taken back',
      event.by === scene.phone.by ? null : ` · ${event.by ? 'another phone' : 'the desk'}`)))]);
}

/** @param {number} at */
function time(at) {
  return new Date(at).toTimeString().slice(0, 8);
}

/** @param {import('../model.js').GamePlan} game @param {CourtEvent} event */
function inWords(game, event) {
  switch (event.type) {
    case 'rally':
      return `rally to ${event.winner ? names(game, event.winner) : '?'}`;
    case 'final-score':
      return `result ${event.a}–${event.b}${event.finish === 'TIME_CALLED' ? ', time called' : ''}`;
    case 'first-server':
      return `${event.server ? names(game, event.server) : '?'} serves first`;
    default:
      return 'time called';
  }
}
