// How much time a block has left, from when it started: right again after any sleep of the page.

/** @typedef {import('./model.js').Scene} Scene */
/** @typedef {import('./model.js').BlockPlan} BlockPlan */

const MINUTE_MS = 60000;

/** The clock of a timed block. @param {Scene} scene @param {BlockPlan} block @param {number} now */
export function clock(scene, block, now) {
  const started = scene.session.starts.get(block.id);
  const ended = scene.session.ends.get(block.id);
  const whole = Math.round(block.minutes * MINUTE_MS);
  if (!started) {
    return { text: minutesAndSeconds(whole), words: 'Not started', over: false };
  }
  const left = whole - ((ended ? ended.at : now) - started.at);
  return left >= 0
    ? { text: minutesAndSeconds(left), words: ended ? 'Ended' : 'left', over: false }
    : { text: `+${minutesAndSeconds(-left)}`, words: 'over time', over: true };
}

/** @param {number} millis */
function minutesAndSeconds(millis) {
  const seconds = Math.round(millis / 1000);
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}
