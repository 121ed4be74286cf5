// The sheet "More": what is not needed every minute.

import { el } from '../dom.js';
import { categoryOf, heatIndex } from '../heat.js';
import { KEEP_OPEN, saveButton, SCREEN_OFF, sheet } from './frame.js';
import { cautions } from './other.js';

/** @typedef {import('../model.js').Scene} Scene */
/** @typedef {import('../sync.js').Way} Way */

/** @param {Scene} scene @param {Way} way */
export function more(scene, way) {
  return sheet('More', [
    way.unsent > 0 ? unsent(way) : null,
    way.refused.length > 0 ? notTaken(way.refused) : null,
    el('button.button', { 'data-act': 'sheet', 'data-sheet': 'notes', 'data-key': 'notes' },
      'Notes'),
    people(scene),
    scene.plan.indoors ? null : weather(scene),
    settings(scene),
    el('h3', {}, 'Take care'),
    cautions(scene),
    scene.phone.coach ? el('p', {}, el('a.button',
      { href: `/sessions/${location.pathname.split('/')[2]}` }, 'Session page')) : null]);
}

/** @param {Way} way */
function unsent(way) {
  const count = way.unsent;
  return el('section', { 'data-key': 'unsent' },
    el('h3', {}, 'Not sent yet'),
    way.trouble === '' ? null
      : el('p', { 'data-key': 'why' }, `The laptop says: ${way.trouble}`),
    el('p', {}, `${count === 1 ? '1 entry waits' : `${count} entries wait`} in this phone for the `
      + 'server. If it cannot be reached any more, save them and give the file to the coach.'),
    saveButton());
}

/** @param {import('../queue.js').Refused[]} refused */
function notTaken(refused) {
  return el('section', { 'data-key': 'not-taken' },
    el('h3', {}, 'Not taken'),
    el('p', {}, 'These entries do not count, but are kept on this phone:'),
    el('ul', {}, refused.map(({ reason }) => el('li', {}, reason))),
    el('button.button', { 'data-act': 'save-refused' }, 'Save them as a file'));
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
export function wrong(scene) {
  return scene.choice.problem
    ? el('p.field-error', { role: 'alert', 'data-key': 'wrong' }, scene.choice.problem) : null;
}

/** How this phone shows and says things. @param {Scene} scene */
function settings(scene) {
  const { choice, phone } = scene;
  const guided = choice.guide === '' ? (phone.coach ? 'off' : 'on') : choice.guide;
  return el('section.settings', { 'data-key': 'settings' },
    el('h3', {}, 'This phone'),
    pick('Hand', 'hand', [['right', 'Right'], ['left', 'Left']], choice.hand),
    pick('Type', 'size', [['usual', 'Usual'], ['large', 'Large']], choice.size),
    pick('Light', 'light', [['auto', 'As the phone'], ['bright', 'Bright'], ['dark', 'Dark']],
      choice.light),
    pick('Sound for every tap', 'sound', [['on', 'On'], ['off', 'Off']], choice.sound),
    pick('Buzz for every tap', 'buzz', [['on', 'On'], ['off', 'Off']], choice.buzz),
    pick('Who stands where, before each game', 'guide', [['on', 'On'], ['off', 'Off']], guided),
    globalThis.isSecureContext ? null : el('p', {}, `${KEEP_OPEN} ${SCREEN_OFF}`));
}

/** @param {string} words @param {string} part @param {string[][]} offered @param {string} chosen */
function pick(words, part, offered, chosen) {
  return el('div.pick', { role: 'group', 'aria-label': words },
    el('span.pick-word', {}, words),
    el('div.cells.cells-words', {}, offered.map(([value, name]) => el('button.cell',
      { 'data-act': 'set', 'data-part': part, 'data-value': value,
        'aria-pressed': chosen === value }, name))));
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
