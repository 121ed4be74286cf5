// Sheets over the page: choosing, and what is not needed every minute.

import { drawing, el } from '../dom.js';
import { names } from '../model.js';
import { headStart, resultGrid } from './scoring.js';
import { KEEP_OPEN, saveButton, sheet, standing } from './frame.js';
import { cautions } from './other.js';
import { categoryOf, heatIndex } from '../heat.js';

/** @typedef {import('../model.js').Scene} Scene */

const STAGES = [['SERVE', 'Serve'], ['RETURN', 'Return'], ['THIRD_SHOT', 'Third shot'],
  ['TRANSITION', 'On the way in'], ['NET_EXCHANGE', 'At the line']];
const STROKES = [['DINK', 'Dink'], ['DROP', 'Drop'], ['RESET', 'Reset'], ['DRIVE', 'Drive'],
  ['ATTACK', 'Attack'], ['COUNTER', 'Counter'], ['PRESSING_VOLLEY', 'Press. volley'],
  ['LOB', 'Lob'], ['OVERHEAD', 'Overhead'], ['SERVE', 'Serve'], ['RETURN', 'Return']];

/** The sheet that is open, or null. */
/** @param {Scene} scene @param {boolean} coach @param {import('../sync.js').Way} way */
export function openSheet(scene, coach, way) {
  switch (scene.choice.sheet?.kind) {
    case 'blocks':
      return blocks(scene);
    case 'place':
      return places(scene);
    case 'drill':
      return drill(scene);
    case 'more':
      return more(scene, coach, way);
    case 'result':
      return result(scene, scene.choice.sheet.id ?? '');
    case 'ending':
      return endings(scene);
    case 'others-play':
      return othersPlay(scene);
    case 'seats':
      return seats(scene);
    case 'counted':
      return counted(scene);
    case 'total':
      return total(scene);
    default:
      return null;
  }
}

/** @param {Scene} scene */
function blocks(scene) {
  const line = (/** @type {string} */ id, /** @type {string} */ title,
    /** @type {string} */ state, /** @type {boolean} */ here) =>
    el('li', {}, el('button.choose', { 'data-act': 'show-block', 'data-block': id,
      'aria-current': here ? 'true' : null }, el('span', {}, title), el('span', {}, state)));
  return sheet('The session', [el('ol.plain', {},
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
  const games = scene.block?.games ?? [];
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

/** @param {Scene} scene */
function endings(scene) {
  const note = scene.game ? scene.view(scene.game).lastRally?.ending ?? {} : {};
  const cells = (/** @type {string} */ part, /** @type {string[][]} */ offered,
    /** @type {string|undefined} */ chosen) =>
    el('div.cells.cells-words', {}, offered.map(([value, words]) => el('button.cell',
      { 'data-act': 'note', 'data-part': part, 'data-value': value,
        'aria-pressed': chosen === value }, words)));
  return sheet('How it ended', [
    el('p', {}, 'Its last stroke: the one missed after an error, the winning one if beaten.'),
    cells('stroke', STROKES, note.stroke),
    el('p', {}, 'In which stage of the point'),
    cells('stage', STAGES, note.stage)]);
}

/** Who is there, and a name more. @param {Scene} scene */
function people(scene) {
  return el('section', { 'data-key': 'people' },
    el('h3', {}, 'Who is there'),
    el('p', {}, `${scene.plan.players.map((player) => player.name).join(', ')}.`),
    el('label', { for: 'arrival' }, 'Somebody else turned up'),
    el('div.add-name', {},
      el('input', { id: 'arrival', name: 'arrival', maxlength: 80, autocomplete: 'off',
        autocapitalize: 'words', enterkeyhint: 'done', placeholder: '' }),
      el('button.button', { 'data-act': 'arrive' }, 'Add')),
    wrong(scene));
}

/** @param {Scene} scene */
function wrong(scene) {
  return scene.choice.problem
    ? el('p.field-error', { role: 'alert', 'data-key': 'wrong' }, scene.choice.problem) : null;
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

/** @param {Scene} scene @param {boolean} coach @param {import('../sync.js').Way} way */
function more(scene, coach, way) {
  return sheet('More', [
    way.unsent > 0 ? unsent(way.unsent) : null,
    people(scene),
    globalThis.isSecureContext ? null : el('p', {}, KEEP_OPEN),
    scene.plan.indoors ? null : weather(scene),
    el('h3', {}, 'Your hand'),
    el('div.cells.cells-words', {}, [['right', 'Right'], ['left', 'Left']].map(([hand, words]) =>
      el('button.cell', { 'data-act': 'hand', 'data-hand': hand,
        'aria-pressed': scene.choice.hand === hand }, words))),
    el('h3', {}, 'Take care'),
    cautions(scene),
    coach ? el('p', {}, el('a.button', { href: `/sessions/${document.body.dataset.session}` },
      'Session page')) : null]);
}

/** @param {number} count */
function unsent(count) {
  return el('section', { 'data-key': 'unsent' },
    el('h3', {}, 'Not sent yet'),
    el('p', {}, `${count === 1 ? '1 entry waits' : `${count} entries wait`} in this phone for the `
      + 'server. If it cannot be reached any more, save them and give the file to the coach.'),
    saveButton());
}

/** @param {Scene} scene */
function weather(scene) {
  const noted = scene.session.conditions;
  const fahrenheit = scene.plan.units === 'FEET';
  const celsius = noted?.celsius ?? 20;
  const degrees = fahrenheit ? Math.round(celsius * 1.8 + 32) : Math.round(celsius);
  const cells = (/** @type {string} */ part, /** @type {string[][]} */ offered,
    /** @type {string|undefined} */ chosen) =>
    el('div.cells.cells-words', {}, offered.map(([value, words]) => el('button.cell',
      { 'data-act': 'weather', 'data-part': part, 'data-value': value,
        'aria-pressed': chosen === value }, words)));
  return el('section', {},
    el('h3', {}, 'Wind'),
    cells('wind', [['CALM', 'Calm'], ['LIGHT', 'Moves soft balls'], ['STRONG', 'Changes shots']],
      noted?.wind),
    el('h3', {}, 'Sun'),
    cells('sun', [['NONE', 'No trouble'], ['BLINDING', 'Blinds one side']], noted?.sun),
    el('h3', {}, 'Temperature'),
    el('div.stepper', {},
      el('button.cell', { 'data-act': 'warmer', 'data-by': fahrenheit ? -2 : -1,
        'aria-label': 'Colder' }, '−'),
      el('output.stepper-value', {}, noted?.celsius === undefined ? '–'
        : `${degrees} ${fahrenheit ? '°F' : '°C'}`),
      el('button.cell', { 'data-act': 'warmer', 'data-by': fahrenheit ? 2 : 1,
        'aria-label': 'Warmer' }, '+')),
    el('h3', {}, 'Humidity'),
    el('div.stepper', {},
      el('button.cell', { 'data-act': 'damper', 'data-by': -5, 'aria-label': 'Drier' }, '−'),
      el('output.stepper-value', {}, noted?.humidityPercent === undefined ? '–'
        : `${Math.round(noted.humidityPercent)} %`),
      el('button.cell', { 'data-act': 'damper', 'data-by': 5, 'aria-label': 'Damper' }, '+')),
    heat(scene));
}

/** How hot it feels, once both temperature and humidity are noted. @param {Scene} scene */
function heat(scene) {
  const { celsius, humidityPercent } = scene.session.conditions ?? {};
  const known = scene.plan.weather;
  if (celsius === undefined || humidityPercent === undefined || !known) {
    return el('p', { 'data-key': 'heat' }, 'Temperature and humidity together tell the heat.');
  }
  const index = heatIndex(celsius, humidityPercent);
  const felt = scene.plan.units === 'FEET' ? `${Math.round(index)} °F`
    : `${Math.round((index - 32) / 1.8)} °C`;
  const [, words, advice] = categoryOf(known.heat, index);
  return el('div.caution', { 'data-key': 'heat', role: 'status' },
    el('ul.plain', {},
      el('li', {}, el('strong', {}, `Feels like ${felt} in the shade: ${words}. `), advice),
      el('li', {}, known.always),
      el('li', {}, known.edition)));
}
