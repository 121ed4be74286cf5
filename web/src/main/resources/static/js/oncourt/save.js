// Unsent scores as a file, for a phone that cannot reach the server: it needs no network, and the
// coach takes the file in on the session's page.

/** @typedef {import('./fold.js').CourtEvent} CourtEvent */

/** Long enough for a browser to take the file over. */
const FREE_AFTER_MS = 60000;

/**
 * Hands the events over as a file, in the form in which they are posted.
 * @param {CourtEvent[]} events @param {string} by the phone's name
 */
export function saveFile(events, by) {
  const text = JSON.stringify(events, null, 1);
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = `rallywright-scores ${by}.json`.replaceAll(' ', '-');
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), FREE_AFTER_MS);
}
