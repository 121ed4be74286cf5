// How a rally ended: where its last ball was struck, on a court to scale, and with which stroke.

import { el } from '../dom.js';
import { names } from '../model.js';
import { sheet } from './frame.js';

/** @typedef {import('../model.js').Scene} Scene */
/** @typedef {import('../model.js').GamePlan} GamePlan */

const STROKES = [['DINK', 'Dink'], ['DROP', 'Drop'], ['RESET', 'Reset'], ['DRIVE', 'Drive'],
  ['ATTACK', 'Attack'], ['COUNTER', 'Counter'], ['PRESSING_VOLLEY', 'Press. volley'],
  ['LOB', 'Lob'], ['OVERHEAD', 'Overhead'], ['SERVE', 'Serve'], ['RETURN', 'Return']];

/** The far side's places from its baseline to the net, then the near side's. */
const PLACES = /** @type {const} */ ([
  ['B', 'BACK', 'back'], ['B', 'WAY', 'on the way in'], ['B', 'LINE', 'at the line'],
  ['A', 'LINE', 'at the line'], ['A', 'WAY', 'on the way in'], ['A', 'BACK', 'back']]);

/** Which place a noted ending belongs to. */
/** @param {import('../fold.js').CourtEvent|null} last */
function noted(last) {
  const { stage, manner } = last?.ending ?? {};
  const side = manner === 'BEATEN' ? last?.winner : last?.winner === 'A' ? 'B' : 'A';
  const zone = stage === 'NET_EXCHANGE' ? 'LINE' : stage === 'TRANSITION' ? 'WAY' : 'BACK';
  return stage && manner ? `${side} ${zone}` : '';
}

/** @param {Scene} scene */
export function endings(scene) {
  const { game } = scene;
  const last = game ? scene.view(game).lastRally : null;
  if (!game || !last) {
    return null;
  }
  const stroke = last.ending?.stroke;
  return sheet('How it ended', [
    el('p', {}, 'A stroke if you like, then where the last ball was struck.'),
    el('div.how', {},
      court(game, noted(last)),
      el('div.cells.how-strokes', { role: 'group', 'aria-label': 'Its last stroke' },
        STROKES.map(([value, words]) => el('button.cell', { 'data-act': 'note',
          'data-part': 'stroke', 'data-value': value, 'aria-pressed': stroke === value },
        words)))),
    el('button.button', { 'data-act': 'set', 'data-part': 'ask',
      'data-value': scene.choice.ask === 'on' ? 'off' : 'on',
      'aria-pressed': scene.choice.ask === 'on' }, 'Ask after every rally')]);
}

/** The court with a button for each place. @param {GamePlan} game @param {string} chosen */
function court(game, chosen) {
  return el('div.how-court', {},
    lines(),
    PLACES.map(([side, zone, words]) => el('button.how-place', { 'data-act': 'struck',
      'data-side': side, 'data-zone': zone, 'aria-pressed': chosen === `${side} ${zone}` },
    el('span', {}, el('strong', {}, names(game, side)), ` ${words}`))));
}

/** The lines of a court, 20 × 44 ft, kitchen 7 ft, drawn to scale behind the buttons. */
function lines() {
  const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  svg.setAttribute('viewBox', '-0.5 -0.5 21 45');
  svg.setAttribute('preserveAspectRatio', 'none');
  svg.setAttribute('aria-hidden', 'true');
  const path = document.createElementNS('http://www.w3.org/2000/svg', 'path');
  path.setAttribute('d', 'M0 0H20V44H0ZM0 15H20M0 29H20M10 0V15M10 29V44');
  const net = document.createElementNS('http://www.w3.org/2000/svg', 'path');
  net.setAttribute('d', 'M-0.5 22H20.5');
  net.setAttribute('class', 'net');
  svg.append(path, net);
  return svg;
}
