// The on-court page: shows the scene, turns taps into events, hands them to the queue.

import { actions, stamped } from './actions.js';
import { keepPage, loadNewPage, rememberSession } from './app.js';
import { el, fit } from './dom.js';
import { phoneName } from './ids.js';
import { arrive, swap } from './people.js';
import { Scene } from './model.js';
import { Sync } from './sync.js';
import { Horn, keepAwake } from './horn.js';
import { doubtNotice } from './views/doubt.js';
import { bar, notices, said } from './views/frame.js';
import { lanes } from './views/lanes.js';
import { ending, timed, yardstick } from './views/other.js';
import { scoring } from './views/scoring.js';
import { openSheet } from './views/sheets.js';
import { saveFile } from './save.js';

const session = decodeURIComponent(location.pathname.split('/')[2] ?? '');
const root = /** @type {HTMLElement} */ (document.getElementById('court'));
const sheets = /** @type {HTMLElement} */ (document.getElementById('sheets'));
const by = phoneName();
const horn = new Horn();
const KEPT = `rallywright-view ${session}`;
const NEW = { mode: 'result', block: null, lane: null, game: null, player: null, timeCalled: false,
  picked: [null, null], sheet: null, said: '', problem: '', about: '', hand: 'right', size: 'usual',
  light: 'auto', sound: 'on', buzz: 'on', guide: '', ask: 'off', ready: '', stays: false };
/** What stays chosen after a reload. */
const LASTING = /** @type {const} */ (['mode', 'lane', 'game', 'player', 'hand', 'size', 'light',
  'sound', 'buzz', 'guide', 'ask', 'ready', 'stays']);

/** @type {import('./model.js').Choice} */
let choice = /** @type {any} */ ({ ...NEW, ...kept() });
/** @type {string|null|undefined} the block that was on when the page was drawn last */
let wasOn;

/** What this phone had chosen before it was loaded again. */
function kept() {
  try {
    return JSON.parse(localStorage.getItem(KEPT) ?? '{}');
  } catch {
    return {};
  }
}

function keep() {
  try {
    localStorage.setItem(KEPT,
      JSON.stringify(Object.fromEntries(LASTING.map((name) => [name, choice[name]]))));
  } catch {
    // A browser that keeps nothing: the lane has to be chosen again after a reload.
  }
}

const sync = new Sync(session, { by, build: document.body.dataset.build ?? '' }, show);

/** @returns {Scene|null} null until the plan is here */
function scene() {
  return sync.plan ? sceneOf(choice) : null;
}

/** @param {import('./model.js').Choice} chosen */
function sceneOf(chosen) {
  return new Scene(/** @type {import('./model.js').SessionPlan} */ (sync.plan), sync.events(),
    chosen, { by, coach: sync.visitor === 'coach' });
}

/** @param {Scene} now */
function body(now) {
  const { block, game } = now;
  if (!block) {
    return ending(now);
  }
  if (block.kind === 'YARDSTICK') {
    return yardstick(now, block);
  }
  if (!game) {
    return timed(now, block, sync.now());
  }
  return choice.mode === 'lanes' ? lanes(now) : scoring(now, game);
}

/** Draws everything; only what differs changes. */
function show() {
  const now = scene();
  if (!now) {
    return;
  }
  stay(now);
  document.body.dataset.hand = choice.hand;
  document.documentElement.dataset.size = choice.size;
  document.documentElement.dataset.light = choice.light;
  document.body.dataset.view = now.block ? now.game ? choice.mode : now.block.kind : 'END';
  fit(root, [el('h1.unseen', {}, 'On court'), bar(now, sync.way(), sync.now()),
    ...notices(now, sync.way()), doubtNotice(now), ...body(now), said(now)]
    .filter((node) => node instanceof Node));
  showSheet(now);
  horn.listen(now, sync.now());
}

/** A game under a finger stays, whatever begins elsewhere; otherwise the phone follows. */
/** @param {Scene} now */
function stay(now) {
  const on = now.session.end ? 'end' : now.session.current;
  if (wasOn !== undefined && wasOn !== on && choice.block === null && wasOn !== null) {
    const before = sceneOf({ ...choice, block: wasOn });
    if (before.game && before.view(before.game).status === 'RUNNING' && on !== null) {
      choice = { ...choice, block: wasOn, said: on === 'end' ? 'The session has ended.'
        : `${now.blockTitle(on)} has started.` };
      now.choice = choice;
      Object.assign(now, sceneOf(choice));
    }
  }
  wasOn = on;
}

/** @param {Scene} now */
function showSheet(now) {
  const wanted = openSheet(now, sync.way());
  fit(sheets, wanted ? [wanted] : []);
  const dialog = sheets.querySelector('dialog');
  if (dialog && !dialog.open) {
    dialog.showModal();
    dialog.addEventListener('close', () => {
      const closed = scene();
      if (choice.sheet || closed?.isToBeGuided()) {
        choice = { ...choice, sheet: null, timeCalled: false,
          ready: choice.sheet ? choice.ready : closed?.game?.id ?? '' };
        keep();
        show();
      }
    });
  }
}

/** @param {Event} event */
function tapped(event) {
  const button = event.target instanceof Element ? event.target.closest('[data-act]') : null;
  const now = scene();
  if (!(button instanceof HTMLElement) || !now) {
    return;
  }
  horn.wake();
  const other = others[button.dataset.act ?? ''];
  if (other) {
    other(button.dataset);
    return;
  }
  const at = sync.now();
  const data = { ...button.dataset, text: typed('note') };
  const outcome = actions[button.dataset.act ?? '']?.(now, data, at) ?? {};
  choice = { ...choice, problem: '', ...outcome.choice };
  keep();
  if (outcome.events && outcome.events.length > 0) {
    confirm(outcome.events);
    const events = stamped(outcome.events, session, by, at);
    const starts = events.find((each) => each.type === 'block-started');
    wasOn = starts ? starts.block : wasOn;
    take(events);
  } else {
    show();
  }
}

/** The page is marked as long as new entries are on their way into the phone's store. */
/** @param {import('./fold.js').CourtEvent[]} events */
async function take(events) {
  document.body.dataset.keeping = 'yes';
  await sync.add(events);
  delete document.body.dataset.keeping;
}

/** What a tap does that makes no event. @type {Record<string, (data: DOMStringMap) => void>} */
const others = {
  'forget-refusals': () => sync.forgetNews(),
  arrive: (data) => changePeople(data),
  swap: (data) => changePeople(data),
  'save-file': () => saveFile(sync.waiting(), by),
  'save-refused': () => saveFile(sync.refused.map(({ event }) => event), by),
  'load-page': () => loadNewPage(),
};

/** What stands in a field, if it is on the page. @param {string} id @returns {string} */
function typed(id) {
  return /** @type {HTMLInputElement|null} */ (document.getElementById(id))?.value ?? '';
}

/** The finger and the ear hear that an entry was taken. */
/** @param {Partial<import('./fold.js').CourtEvent>[]} made */
function confirm(made) {
  const last = made[made.length - 1];
  const what = last.type === 'undone' ? 'undo' : last.winner ?? 'other';
  if (choice.buzz === 'on') {
    navigator.vibrate?.(what === 'undo' ? [15, 60, 15] : 15);
  }
  if (choice.sound === 'on') {
    horn.tick(what);
  }
}

/** @param {DOMStringMap} data */
async function changePeople(data) {
  const field = /** @type {HTMLInputElement|null} */ (document.getElementById('arrival'));
  const { done, problem } = data.act === 'arrive'
    ? await arrive(sync, typed('arrival')) : await swap(sync, data);
  if (done && field) {
    field.value = '';
  }
  choice = { ...choice, problem, ...(done ? { said: done } : {}),
    ...(done && data.act === 'swap' ? { sheet: null, game: null } : {}) };
  show();
}

document.addEventListener('click', tapped);
document.addEventListener('keydown', (event) => {
  if (event.key === 'Enter' && event.target instanceof Element && event.target.id === 'arrival') {
    event.preventDefault();
    changePeople(/** @type {any} */ ({ act: 'arrive' }));
  }
});
setInterval(() => document.visibilityState === 'visible' && show(), 1000);
document.addEventListener('visibilitychange', show);
keepAwake();
keepPage();
rememberSession(session);
sync.start();
