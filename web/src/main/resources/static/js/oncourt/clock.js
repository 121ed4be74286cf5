// How much time a block has left, from when it started: right again after any sleep of the page.

/** @typedef {import('./model.js').Scene} Scene */
/** @typedef {import('./model.js').BlockPlan} BlockPlan */

const MINUTE_MS = 60000;

/**
 * When a block is to end: the time set while it was on, else the planned minutes after its start.
 * @param {Scene} scene @param {BlockPlan} block @returns {number|null}
 */
export function dueAt(scene, block) {
  const limit = scene.session.limits.get(block.id);
  if (limit?.minutesLeft !== undefined) {
    return limit.at + limit.minutesLeft * MINUTE_MS;
  }
  const started = scene.session.starts.get(block.id);
  return started ? started.at + Math.round(block.minutes * MINUTE_MS) : null;
}

/** Whether a block ends at a time, whatever its games do. */
/** @param {Scene} scene @param {BlockPlan} block */
export function endsByClock(scene, block) {
  return block.games.length === 0 || block.end === 'BY_CLOCK'
    || scene.session.limits.get(block.id)?.minutesLeft !== undefined;
}

/** The clock of a timed block. @param {Scene} scene @param {BlockPlan} block @param {number} now */
export function clock(scene, block, now) {
  const due = dueAt(scene, block);
  const ended = scene.session.ends.get(block.id);
  if (due === null) {
    const whole = Math.round(block.minutes * MINUTE_MS);
    return { text: minutesAndSeconds(whole), words: 'Not started', over: false };
  }
  const left = due - (ended ? ended.at : now);
  return left >= 0
    ? { text: minutesAndSeconds(left), words: ended ? 'Ended' : 'left', over: false }
    : { text: `+${minutesAndSeconds(-left)}`, words: 'over time', over: true };
}

/** @param {number} millis */
function minutesAndSeconds(millis) {
  const seconds = Math.round(millis / 1000);
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}
