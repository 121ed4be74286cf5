// Notes in words: on a player, on the drill of a block, or on the session. A correction takes the
// old note back and stands in its place; both stay in the log.

/** @typedef {import('./fold.js').CourtEvent} CourtEvent */
/** @typedef {import('./model.js').Scene} Scene */
/** @typedef {import('./actions.js').Outcome} Outcome */

/** The longest note, as the server takes it. */
export const LONGEST_NOTE = 500;

/**
 * The notes that this phone may read, the newest first: the coach's phone all, others their own.
 * @param {Scene} scene @returns {CourtEvent[]}
 */
export function notesOf(scene) {
  return scene.session.counted.filter((event) => event.type === 'note' && event.text).reverse();
}

/** How many notes only the coach may read. @param {Scene} scene */
export function unreadable(scene) {
  return scene.session.counted.filter((event) => event.type === 'note' && !event.text).length;
}

/**
 * What a new note would be about: 'session', a block or a player.
 * @param {Scene} scene @returns {string}
 */
export function subject(scene) {
  return scene.choice.about || (scene.block ? `block ${scene.block.id}` : 'session');
}

/** What a note is about, in words. @param {Scene} scene @param {CourtEvent} note */
export function aboutWords(scene, note) {
  if (note.player) {
    return scene.playerName(note.player);
  }
  return note.block ? scene.blockTitle(note.block) : 'The session';
}

/** @param {Scene} scene @param {DOMStringMap} data @returns {Outcome} */
export function keepNote(scene, data) {
  const text = (data.text ?? '').replace(/\r\n?/g, '\n').trim();
  const old = scene.session.counted.find((event) => event.id === data.note);
  if (text === '') {
    return { choice: { problem: 'The note is empty. Type a few words, then keep it.' } };
  }
  if (old?.text === text) {
    return { choice: { sheet: { kind: 'notes' } } };
  }
  const about = subject(scene);
  const [kind, id] = [about.split(' ')[0], about.slice(about.indexOf(' ') + 1)];
  return {
    events: [
      ...(old ? [{ type: /** @type {const} */ ('undone'), undone: old.id }] : []),
      { type: 'note', text,
        ...(kind === 'block' ? { block: id } : kind === 'player' ? { player: id } : {}),
        ...(old ? { instead: old.id } : {}) }],
    choice: { sheet: { kind: 'notes' }, about: '', said: old ? 'Corrected.' : 'Noted.' },
  };
}

/** @param {Scene} _ @param {DOMStringMap} data @returns {Outcome} */
export function dropNote(_, data) {
  return { events: [{ type: 'undone', undone: data.note }],
    choice: { sheet: { kind: 'notes' }, said: 'The note is taken away.' } };
}

/** Opens the sheet on which a note is written or corrected. */
/** @param {Scene} scene @param {DOMStringMap} data @returns {Outcome} */
export function openNote(scene, data) {
  const old = scene.session.counted.find((event) => event.id === data.note);
  const about = !old ? scene.choice.about : old.player ? `player ${old.player}`
    : old.block ? `block ${old.block}` : 'session';
  return { choice: { sheet: { kind: 'note', ...(old ? { id: old.id } : {}) }, about } };
}
