// The sheets of the notes: those of the session, and one that is being written.

import { el } from '../dom.js';
import { aboutWords, LONGEST_NOTE, notesOf, subject, unreadable } from '../notes.js';
import { sheet } from './frame.js';
import { wrong } from './more.js';

/** @typedef {import('../model.js').Scene} Scene */

/** @param {Scene} scene */
export function notes(scene) {
  const own = notesOf(scene);
  const others = unreadable(scene);
  return sheet('Notes', [
    el('button.button.now.wide', { 'data-act': 'open-note', 'data-key': 'write' }, 'Write a note'),
    own.length === 0 ? el('p', {}, 'Nothing is noted yet. Notes are on a player, on the drill or on '
      + 'the session.') : null,
    el('ul.plain.notes', {}, own.map((note) => el('li.note-line', { 'data-key': note.id },
      el('strong', {}, aboutWords(scene, note)), note.instead ? ' (corrected)' : '',
      el('p.note-text', {}, note.text ?? ''),
      el('div.note-acts', {},
        el('button.button', { 'data-act': 'open-note', 'data-note': note.id }, 'Correct'),
        el('button.button', { 'data-act': 'drop-note', 'data-note': note.id }, 'Take away'))))),
    others === 0 ? null : el('p', {}, `${others === 1 ? '1 note' : `${others} notes`} of other `
      + 'phones can be read at the coach\'s desk.')]);
}

/** @param {Scene} scene */
export function note(scene) {
  const id = scene.choice.sheet?.id;
  const old = scene.session.counted.find((event) => event.id === id);
  return sheet(old ? 'Correct a note' : 'A note', [
    el('div.note-about', { role: 'group', 'aria-label': 'What it is about', 'data-key': 'about' },
      subjects(scene).map(([value, words]) => el('button.cell', { 'data-act': 'set',
        'data-part': 'about', 'data-value': value, 'data-key': value,
        'aria-pressed': subject(scene) === value }, words))),
    el('div.note-field', { 'data-key': `field ${id ?? ''}` },
      el('label', { for: 'note' }, 'The note'),
      el('textarea', { id: 'note', rows: 4, maxlength: LONGEST_NOTE, autocomplete: 'off',
        'aria-describedby': 'note-who' }, old?.text ?? '')),
    wrong(scene),
    el('button.button.now.wide', { 'data-act': 'keep-note', 'data-note': id,
      'data-key': 'keep' }, old ? 'Keep the correction' : 'Keep the note'),
    el('p', { id: 'note-who', 'data-key': 'who' }, 'The coach reads it at the desk; other phones and '
      + 'the wall do not show it.')]);
}

/** What a note can be about: this drill, the session, each player. @param {Scene} scene */
function subjects(scene) {
  const about = subject(scene);
  const blocks = scene.plan.blocks.filter(({ id }) =>
    id === scene.block?.id || about === `block ${id}`);
  return [...blocks.map((block) => [`block ${block.id}`, scene.titleOf(block)]), ['session', 'The session'],
    ...scene.plan.players.map(({ id, name }) => [`player ${id}`, name])];
}
