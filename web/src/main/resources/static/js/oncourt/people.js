// Who is there and who plays: asked of the server at once, since a name must be known to everybody.

import { newId } from './ids.js';

/** @typedef {import('./sync.js').Sync} Sync */
/** @typedef {{done: string, problem: string}} Answered */

/** The id goes with the name until it is stored, so that trying again adds nobody twice. */
let waiting = { name: '', id: '' };

/** Somebody turned up. @param {Sync} sync @param {string} typed @returns {Promise<Answered>} */
export async function arrive(sync, typed) {
  const name = typed.trim();
  if (name !== waiting.name) {
    waiting = { name, id: newId(Date.now()) };
  }
  const problem = await sync.change('arrivals', waiting);
  return { problem, done: problem ? '' : `${name} is there.` };
}

/**
 * Somebody else plays a game that has not begun.
 * @param {Sync} sync @param {DOMStringMap} data @returns {Promise<Answered>}
 */
export async function swap(sync, data) {
  const problem =
    await sync.change('seats', { game: data.game, out: data.out, in: data.in });
  return { problem, done: problem ? '' : `${data.name} plays now.` };
}
