// What surrounds every view: the bar on top, the way home, the row of what can be done next.

import { el } from '../dom.js';
import { clock, endsByClock } from '../clock.js';
import { names, undoable, written } from '../model.js';

/** @typedef {import('../model.js').Scene} Scene */

/** @param {Scene} scene @param {import('../sync.js').Way} way @param {number} now */
export function bar(scene, way, now) {
  const { blocks } = scene.plan;
  const number = scene.block ? blocks.indexOf(scene.block) + 1 : null;
  return el('header.bar', {},
    el('button.bar-block', { 'data-act': 'sheet', 'data-sheet': 'blocks' },
      el('span.bar-count', {}, number ? `${number} of ${blocks.length}` : 'End'),
      ' ', el('span.bar-title', {}, scene.block?.title ?? scene.plan.name)),
    document.body.dataset.demo === 'yes' ? el('span.bar-way', { 'data-key': 'demo' }, 'demo') : null,
    hornIn(scene, now),
    wayHome(way),
    el('button.bar-more', { 'data-act': 'sheet', 'data-sheet': 'more' }, 'More'));
}

/** The time left in games that end by the horn. @param {Scene} scene @param {number} now */
function hornIn(scene, now) {
  const { block } = scene;
  return block && block.games.length > 0 && endsByClock(scene, block) && scene.isOn()
    ? el('span.bar-way', { role: 'timer', 'data-key': 'horn' },
      clock(scene, block, now).text)
    : null;
}

/** A quiet sign of what is not home yet. @param {import('../sync.js').Way} way */
function wayHome(way) {
  const words = way.unsent > 0 ? `${way.unsent} unsent` : way.state === 'waiting' ? 'offline' : '';
  return el('span.bar-way', { role: 'status', 'data-unsent': way.unsent }, words);
}

/** Without TLS a browser opens no page that the server does not answer: this one has to stay. */
export const KEEP_OPEN = 'Keep this page open: scores are kept in it.';
/** Only pages over TLS may keep the screen on. */
export const SCREEN_OFF = 'The screen may go off by itself: in the settings of the phone, choose the '
  + 'longest time before it does.';

/** The way out for scores of a phone that reaches the server no more. */
export function saveButton() {
  return el('button.button', { 'data-act': 'save-file' }, 'Save unsent scores as a file');
}

/** Things that need a word. @param {Scene} scene @param {import('../sync.js').Way} way */
export function notices(scene, way) {
  return [stay(scene), shut(scene, way), version(way), trouble(way), refused(way)]
    .filter((node) => node !== null);
}

/** @param {Scene} scene */
function stay(scene) {
  return globalThis.isSecureContext || scene.choice.stays ? null
    : el('div.notice', { role: 'status', 'data-key': 'keep-open' },
      el('p', {}, KEEP_OPEN),
      el('button.button', { 'data-act': 'stays' }, 'Understood'));
}

/** @param {Scene} scene @param {import('../sync.js').Way} way */
function shut(scene, way) {
  return way.state !== 'closed' ? null : el('div.notice', { role: 'alert', 'data-key': 'shut' },
    el('p', {}, 'This phone is not let in any more. Scores stay here until it is. '
      + (scene.phone.coach ? 'Sign in again in another tab.'
        : 'Scan the code of the session again.')),
    way.unsent > 0 ? saveButton() : null);
}

/** The page and the program are not of one age. @param {import('../sync.js').Way} way */
function version(way) {
  if (way.state === 'older') {
    return el('div.notice', { role: 'alert', 'data-key': 'older' },
      el('p', {}, 'The program on the laptop is older than this page and does not understand it. '
        + 'Scores stay on this phone. Tell the coach.'),
      way.unsent > 0 ? saveButton() : null);
  }
  return !way.outdated ? null : el('div.notice', { role: 'status', 'data-key': 'newer' },
    el('p', {}, 'The laptop has a newer page. Scores stay here while it loads.'),
    el('button.button', { 'data-act': 'load-page' }, 'Load it'));
}

/** The server is there and cannot keep anything; why, it says under More. @param {import('../sync.js').Way} way */
function trouble(way) {
  return way.trouble === '' ? null : el('div.notice', { role: 'alert', 'data-key': 'trouble' },
    el('p', {}, 'The laptop cannot store scores just now. They stay on this phone and are sent '
      + 'again by themselves. Tell the coach.'),
    saveButton());
}

/** @param {import('../sync.js').Way} way */
function refused(way) {
  return way.news.length === 0 ? null : el('div.notice', { role: 'alert', 'data-key': 'refused' },
    el('p', {}, way.news[way.news.length - 1]),
    el('button.button', { 'data-act': 'forget-refusals' }, 'Understood'));
}

/** Undo, always in the same place, saying what it takes back. @param {Scene} scene */
export function undoButton(scene) {
  const last = undoable(scene);
  return el('button.act', { 'data-act': 'undo', disabled: last === null, 'data-key': 'undo' },
    el('span.act-word', {}, 'Undo'), last ? el('span.act-what', {}, last.words) : '');
}

/** What leads on: the next game on this lane, else the next block. @param {Scene} scene */
export function onward(scene) {
  const following = scene.nextOnLane();
  if (scene.game && scene.isOver(scene.game) && following) {
    return leading('next-game', 'Next game', `${who(following, 'A')} – ${who(following, 'B')}`);
  }
  if (scene.session.end) {
    return leading('to-end', 'Next', 'Effort and end');
  }
  const block = scene.next();
  if (scene.isBehind()) {
    return leading('follow', 'On to', scene.blockTitle(scene.present()?.id));
  }
  if (!scene.isOn()) {
    return leading('start-block', 'Start', scene.blockTitle(scene.block?.id));
  }
  const done = scene.openGames().length === 0;
  return leading(block ? 'next-block' : 'to-end', 'Next',
    block ? scene.titleOf(block) : 'Effort and end', done);
}

/** Who plays a side and in which role. @param {import('../model.js').GamePlan} game
 * @param {import('../score.js').Side} side */
function who(game, side) {
  const { role } = side === 'A' ? game.a : game.b;
  return role === 'even' ? names(game, side) : `${names(game, side)} ${role}`;
}

/** @param {string} act @param {string} word @param {string} what @param {boolean} [now] */
function leading(act, word, what, now = true) {
  return el(now ? 'button.act.act-on.act-now' : 'button.act.act-on',
    { 'data-act': act, 'data-key': 'onward' },
    el('span.act-word', {}, word), el('span.act-what', {}, what));
}

/** What was just done, for the ear and the eye. @param {Scene} scene */
export function said(scene) {
  return el('p.unseen', { role: 'status', 'data-key': 'said' }, scene.choice.said);
}

/** A sheet over the page. @param {string} title @param {(Node|null|false)[]} content */
export function sheet(title, content) {
  return el('dialog.sheet', { 'aria-label': title, 'data-key': 'sheet' },
    el('div.sheet-head', {},
      el('h2', {}, title),
      el('button.button', { 'data-act': 'close' }, 'Close')),
    el('div.sheet-body', {}, content.filter((node) => node instanceof Node)));
}

/** One line about a game that is over or not. @param {Scene} scene
 * @param {import('../model.js').GamePlan} game */
export function standing(scene, game) {
  const view = scene.view(game);
  switch (view.status) {
    case 'PLAYED_OUT':
      return written(view.score);
    case 'TIME_CALLED':
      return `${written(view.score)} time`;
    case 'RUNNING':
      return `${written(view.score)} …`;
    default:
      return '–';
  }
}
