// The on-court page: shows the scene, turns taps into events, hands them to the queue.

import { actions, stamped } from './actions.js';
import { el, fit } from './dom.js';
import { phoneName } from './ids.js';
import { arrive, swap } from './people.js';
import { Scene } from './model.js';
import { Sync } from './sync.js';
import { Horn, keepAwake } from './horn.js';
import { bar, notices, said } from './views/frame.js';
import { lanes } from './views/lanes.js';
import { ending, timed, yardstick } from './views/other.js';
import { scoring } from './views/scoring.js';
import { openSheet } from './views/sheets.js';
import { saveFile } from './save.js';

const session = document.body.dataset.session ?? '';
const coach = document.body.dataset.visitor === 'coach';
const root = /** @type {HTMLElement} */ (document.getElementById('court'));
const sheets = /** @type {HTMLElement} */ (document.getElementById('sheets'));
const by = phoneName();
const horn = new Horn();
const KEPT = `rallywright-view ${session}`;
const NEW = { mode: 'result', block: null, lane: null, game: null, player: null, timeCalled: false,
  picked: [null, null], sheet: null, said: '', problem: '', hand: 'right', stays: false };

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
    const { mode, lane, game, player, hand, stays } = choice;
    localStorage.setItem(KEPT, JSON.stringify({ mode, lane, game, player, hand, stays }));
  } catch {
    // A browser that keeps nothing: the lane has to be chosen again after a reload.
  }
}

const sync = new Sync(session, show);

/** @returns {Scene|null} null until the plan is here */
function scene() {
  const { plan } = sync;
  return plan
    ? new Scene(/** @type {import('./model.js').SessionPlan} */ (plan), sync.events(), choice)
    : null;
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
    return timed(now, block, Date.now());
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
  document.body.dataset.view = now.block ? now.game ? choice.mode : now.block.kind : 'END';
  fit(root, [el('h1.unseen', {}, 'On court'), bar(now, sync.way()),
    ...notices(now, sync.way(), coach), ...body(now), said(now)]
    .filter((node) => node instanceof Node));
  showSheet(now);
  horn.listen(now);
}

/** A game under a finger stays, whatever begins elsewhere; otherwise the phone follows. */
/** @param {Scene} now */
function stay(now) {
  const on = now.session.current;
  if (wasOn !== undefined && wasOn !== on && choice.block === null && wasOn !== null) {
    const before = new Scene(now.plan, sync.events(), { ...choice, block: wasOn });
    if (before.game && before.view(before.game).status === 'RUNNING' && on !== null) {
      choice = { ...choice, block: wasOn, said: `${now.blockTitle(on)} has started.` };
      now.choice = choice;
      Object.assign(now, new Scene(now.plan, sync.events(), choice));
    }
  }
  wasOn = on;
}

/** @param {Scene} now */
function showSheet(now) {
  const wanted = openSheet(now, coach, sync.way());
  fit(sheets, wanted ? [wanted] : []);
  const dialog = sheets.querySelector('dialog');
  if (dialog && !dialog.open) {
    dialog.showModal();
    dialog.addEventListener('close', () => {
      if (choice.sheet) {
        choice = { ...choice, sheet: null, timeCalled: false };
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
  if (button.dataset.act === 'forget-refusals') {
    sync.forgetRefusals();
    return;
  }
  if (button.dataset.act === 'arrive' || button.dataset.act === 'swap') {
    changePeople(button.dataset);
    return;
  }
  if (button.dataset.act === 'save-file') {
    saveFile(sync.waiting(), by);
    return;
  }
  const at = Date.now();
  const outcome = actions[button.dataset.act ?? '']?.(now, button.dataset, at) ?? {};
  choice = { ...choice, problem: '', ...outcome.choice };
  keep();
  if (outcome.events && outcome.events.length > 0) {
    navigator.vibrate?.(15);
    const events = stamped(outcome.events, session, by, at);
    const starts = events.find((each) => each.type === 'block-started');
    wasOn = starts ? starts.block : wasOn;
    sync.add(events);
  } else {
    show();
  }
}

/** @param {DOMStringMap} data */
async function changePeople(data) {
  const field = /** @type {HTMLInputElement|null} */ (document.getElementById('arrival'));
  const { done, problem } = data.act === 'arrive'
    ? await arrive(sync, field?.value ?? '') : await swap(sync, data);
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
sync.start();
