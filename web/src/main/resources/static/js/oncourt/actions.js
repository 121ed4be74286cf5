// What a tap does: which events it makes, and what the phone then shows.

import { newId } from './ids.js';
import { names, undoable, written } from './model.js';
import { dropNote, keepNote, openNote } from './notes.js';
import { isSideOut } from './score.js';

/** @typedef {import('./fold.js').CourtEvent} CourtEvent */
/** @typedef {import('./model.js').Scene} Scene */
/** @typedef {import('./model.js').Choice} Choice */

/** Two taps on the same area within this time are one: no rally is that short. */
const ONE_TAP_MS = 300;

/**
 * What follows from a tap.
 * @typedef {object} Outcome
 * @property {Partial<CourtEvent>[]} [events] what happened, without id, time and phone
 * @property {Partial<Choice>} [choice] what the phone shows from now on
 */

/** @typedef {(scene: Scene, data: DOMStringMap, now: number) => Outcome} Action */

let lastRallyAt = 0;

/** @param {Scene} scene @param {DOMStringMap} data @param {number} now @returns {Outcome} */
function rally(scene, data, now) {
  const { game } = scene;
  if (!game || scene.isOver(game) || now - lastRallyAt < ONE_TAP_MS) {
    return {};
  }
  lastRallyAt = now;
  const winner = /** @type {'A'|'B'} */ (data.side);
  return {
    events: [{ type: 'rally', game: game.id, winner, bonus: 'NONE' }],
    choice: { said: `Rally to ${names(game, winner)}.`, game: game.id, lane: game.lane,
      sheet: scene.choice.ask === 'on' ? { kind: 'ending' } : null },
  };
}

/** The last rally once more, with more said about it: the old one no longer counts. */
/** @param {Scene} scene @param {(last: CourtEvent) => Partial<CourtEvent>} change
 * @returns {Outcome} */
function amend(scene, change) {
  const last = scene.game ? scene.view(scene.game).lastRally : null;
  if (!last) {
    return {};
  }
  const { type, game, winner, bonus, ending, at } = last;
  const said = { type, game, winner, bonus, ...(ending ? { ending } : {}), at, ...change(last) };
  if (said.ending && Object.keys(said.ending).length === 0) {
    delete said.ending;
  }
  return { events: [{ type: 'undone', undone: last.id }, said] };
}

/** @param {Scene} scene @param {string} part @param {string} value */
function noteEnding(scene, part, value) {
  return amend(scene, (last) => {
    /** @type {Record<string, string>} */
    const ending = { ...last.ending };
    if (ending[part] === value) {
      delete ending[part];
    } else {
      ending[part] = value;
    }
    return { ending };
  });
}

/**
 * Where the last ball of a rally was struck tells in which stage the rally ended and, with who won
 * it, whether it was an error.
 * @param {Scene} scene @param {DOMStringMap} data @returns {Outcome}
 */
function struck(scene, data) {
  const view = scene.game ? scene.view(scene.game) : null;
  const serves = scene.game?.feed === 'SERVE'
    || (scene.game !== null && isSideOut(scene.game.format));
  const outcome = amend(scene, (last) => {
    const stroke = last.ending?.stroke;
    const behind = serves && data.side !== view?.lastServer ? 'RETURN' : 'THIRD_SHOT';
    const stage = data.zone === 'LINE' ? 'NET_EXCHANGE' : data.zone === 'WAY' ? 'TRANSITION'
      : stroke === 'SERVE' || stroke === 'RETURN' ? stroke : behind;
    return { ending: { ...last.ending, stage,
      manner: data.side === last.winner ? 'BEATEN' : 'ERROR' } };
  });
  return { ...outcome, choice: { sheet: null, said: 'Noted.' } };
}

/**
 * Two phones do not say the same: the wrong entries are taken back, or one phone's follow on the
 * other's. All stay in the log.
 * @param {Scene} scene @param {DOMStringMap} data @returns {Outcome}
 */
function settle(scene, data) {
  const dispute = scene.dispute();
  if (!dispute) {
    return { choice: { sheet: null } };
  }
  const wrong = data.keep === 'other' ? dispute.standing : dispute.waiting;
  const again = data.keep === 'both' ? dispute.waiting : [];
  return {
    events: [
      ...wrong.map(({ id }) => ({ type: /** @type {const} */ ('undone'), undone: id })),
      ...again.map(({ type, game, winner, bonus, ending, at }) =>
        ({ type, game, winner, bonus, ...(ending ? { ending } : {}), at }))],
    choice: { sheet: null, said: 'Settled.' },
  };
}

/** @param {Scene} scene @param {DOMStringMap} data @returns {Outcome} */
function final(scene, data) {
  const game = scene.gameOf(data.game ?? '');
  const [a, b] = [Number(data.a), Number(data.b)];
  if (!game) {
    return {};
  }
  const said = `${names(game, 'A')} ${written([a, b])} ${names(game, 'B')} is in.`;
  const inGrid = scene.choice.mode === 'lanes';
  return {
    events: [{ type: 'final-score', game: game.id, a, b,
      finish: /** @type {'PLAYED_OUT'|'TIME_CALLED'} */ (data.finish) }],
    choice: { said, sheet: null, timeCalled: false, picked: [null, null],
      ...(inGrid ? {} : { game: game.id, lane: game.lane }) },
  };
}

/** @param {Scene} scene @returns {Outcome} */
function undo(scene) {
  const last = undoable(scene);
  if (!last) {
    return {};
  }
  const started = last.events[0].type === 'block-started';
  return {
    events: last.events.map((event) => ({ type: 'undone', undone: event.id })),
    choice: { said: `Taken back: ${last.words}.`, sheet: null,
      ...(started ? { block: null, game: null } : {}),
      ...(scene.game && !started ? { game: scene.game.id } : {}) },
  };
}

/** Going back takes everybody along, so it is asked first. */
/** @param {Scene} scene @returns {Outcome} */
function startBlock(scene) {
  return scene.isBehind() ? { choice: { sheet: { kind: 'back' } } } : startNow(scene);
}

/** @param {Scene} scene @returns {Outcome} */
function startNow(scene) {
  const { block } = scene;
  if (!block) {
    return {};
  }
  const { current } = scene.session;
  return {
    events: [
      ...(current ? [{ type: /** @type {const} */ ('block-ended'), block: current }] : []),
      { type: 'block-started', block: block.id }],
    choice: { block: null, game: null, sheet: null, said: `${block.title} has started.` },
  };
}

/** @param {Scene} scene @returns {Outcome} */
function nextBlock(scene) {
  const next = scene.next();
  if (!next || !scene.block) {
    return {};
  }
  return {
    events: [{ type: 'block-ended', block: scene.block.id },
      { type: 'block-started', block: next.id }],
    choice: { block: null, game: null, timeCalled: false, sheet: null,
      said: `${next.title} has started.` },
  };
}

/** @param {Scene} scene @param {DOMStringMap} data @returns {Outcome} */
function ball(scene, data) {
  const { block } = scene;
  const balls = block?.yardstick?.balls ?? 0;
  const count = scene.session.counts.get(`${block?.id} ${data.player}`);
  const struck = count?.balls ?? 0;
  if (!block || struck >= balls) {
    return {};
  }
  const hits = (count?.hits ?? 0) + (data.hit === 'HIT' ? 1 : 0);
  return {
    events: [{ type: 'yardstick', block: block.id, player: data.player, hits, balls: struck + 1 }],
    choice: { player: data.player, said: `${hits} of ${struck + 1}.` },
  };
}

/** @param {Scene} scene @param {Partial<CourtEvent>} change @returns {Outcome} */
function weather(scene, change) {
  const noted = scene.session.conditions;
  const known = { wind: noted?.wind ?? 'CALM', sun: noted?.sun ?? 'NONE',
    ...(noted?.celsius === undefined ? {} : { celsius: noted.celsius }),
    ...(noted?.humidityPercent === undefined ? {} : { humidityPercent: noted.humidityPercent }) };
  return { events: [{ type: 'conditions', ...known, ...change }], choice: { said: 'Noted.' } };
}

/** @param {Scene} scene @param {DOMStringMap} data @returns {Outcome} */
function warmer(scene, data) {
  const noted = scene.session.conditions?.celsius;
  const step = Number(data.by) / (scene.plan.units === 'FEET' ? 1.8 : 1);
  const celsius = noted === undefined ? scene.plan.weather?.celsius ?? 20
    : Math.min(60, Math.max(-40, noted + step));
  return weather(scene, { celsius: Math.round(celsius * 10) / 10 });
}

/** @param {Scene} scene @param {DOMStringMap} data @returns {Outcome} */
function damper(scene, data) {
  const noted = scene.session.conditions?.humidityPercent;
  const percent = noted === undefined ? scene.plan.weather?.humidityPercent ?? 50
    : Math.min(100, Math.max(0, noted + Number(data.by)));
  return weather(scene, { humidityPercent: Math.round(percent) });
}

/** Every action by the name that stands on the button. @type {Record<string, Action>} */
export const actions = {
  rally,
  final,
  undo,
  ball,
  warmer,
  damper,
  'start-block': startBlock,
  'start-back': startNow,
  follow: () => ({ choice: { block: null, game: null, timeCalled: false, sheet: null } }),
  'next-block-now': nextBlock,
  'next-block': (scene) => scene.openGames().length > 0
    ? { choice: { sheet: { kind: 'others-play' } } } : nextBlock(scene),
  'to-end': () => ({ choice: { block: 'end', sheet: null } }),
  'next-game': (scene) => ({ choice: { game: scene.nextOnLane()?.id ?? null, timeCalled: false,
    said: 'Next game.' } }),
  struck,
  settle,
  ready: (scene) => ({ choice: { ready: scene.game?.id ?? '', sheet: null } }),
  set: (_, data) => ({ choice: { [data.part ?? '']: data.value } }),
  'time-called': (scene) => ({ events: [{ type: 'time-called', game: scene.game?.id }],
    choice: { said: 'Time called; the score stands.', game: scene.game?.id ?? null } }),
  'toggle-time': (scene) => ({ choice: { timeCalled: !scene.choice.timeCalled,
    picked: [null, null] } }),
  pick: (scene, data) => ({ choice: { picked: data.side === 'A'
    ? [Number(data.points), scene.choice.picked[1]]
    : [scene.choice.picked[0], Number(data.points)] } }),
  'first-server': (scene, data) => ({ events: [{ type: 'first-server', game: scene.game?.id,
    server: /** @type {'A'|'B'} */ (data.side) }] }),
  'ending-ERROR': (scene) => noteEnding(scene, 'manner', 'ERROR'),
  'ending-BEATEN': (scene) => noteEnding(scene, 'manner', 'BEATEN'),
  note: (scene, data) => noteEnding(scene, data.part ?? '', data.value ?? ''),
  bonus: (scene) => amend(scene, (last) => ({
    bonus: last.bonus === 'ROUND_THE_POST' ? 'NONE' : 'ROUND_THE_POST' })),
  'open-ending': () => ({ choice: { sheet: { kind: 'ending' } } }),
  mode: (_, data) => ({ choice: { mode: /** @type {Choice['mode']} */ (data.mode),
    timeCalled: false, picked: [null, null] } }),
  sheet: (_, data) => ({ choice: { sheet: { kind: data.sheet ?? '' }, timeCalled: false } }),
  'result-of': (_, data) => ({ choice: { sheet: { kind: 'result', id: data.game },
    timeCalled: false, picked: [null, null] } }),
  close: () => ({ choice: { sheet: null, timeCalled: false } }),
  'show-block': (_, data) => ({ choice: { block: data.block ?? null, game: null, sheet: null } }),
  'choose-game': (scene, data) => ({ choice: { lane: data.lane ?? null, game: data.game ?? null,
    sheet: null, timeCalled: false,
    mode: scene.choice.mode === 'lanes' ? 'result' : scene.choice.mode } }),
  'choose-player': (_, data) => ({ choice: { player: data.player ?? null, sheet: null } }),
  count: (scene, data) => ({ events: [{ type: 'yardstick', block: scene.block?.id,
    player: data.player, hits: Number(data.hits), balls: scene.block?.yardstick?.balls }],
  choice: { sheet: null, player: data.player ?? null, said: `${data.hits} hits.` } }),
  effort: (_, data) => ({ events: [{ type: 'effort', player: data.player,
    rating: Number(data.rating) }] }),
  'end-session': (scene) => ({ events: [
    ...(scene.session.current
      ? [{ type: /** @type {const} */ ('block-ended'), block: scene.session.current }] : []),
    { type: 'session-ended' }], choice: { block: 'end', said: 'The session is over.' } }),
  weather: (scene, data) => weather(scene, { [data.part ?? '']: data.value }),
  'open-note': openNote,
  'keep-note': keepNote,
  'drop-note': dropNote,
  stays: () => ({ choice: { stays: true } }),
};

/**
 * Events ready to travel.
 * @param {Partial<CourtEvent>[]} made @param {string} session @param {string} by
 * @param {number} now @returns {CourtEvent[]}
 */
export function stamped(made, session, by, now) {
  return made.map((event) =>
    /** @type {CourtEvent} */ ({ v: 1, id: newId(now), session, at: now, by, ...event }));
}
