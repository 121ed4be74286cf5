// Opens a session on court with the key that the QR code carries. The key stands in the address's
// fragment, which is never sent to a server by itself; it is kept on this phone so that the session
// opens again after the server was started anew.

const KEPT = 'rallywright-court-key ';

/** @param {string} key @returns {Promise<{session?: string, problem?: string}>} */
export async function open(key) {
  const response = await fetch('/court/open', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json', Accept: 'application/json' },
    credentials: 'same-origin',
    body: JSON.stringify({ key }),
  });
  const answer = await response.json();
  if (answer.session) {
    keep(answer.session, key);
  }
  return answer;
}

/** @param {string} session @param {string} key */
function keep(session, key) {
  try {
    localStorage.setItem(KEPT + session, key);
  } catch {
    // A browser that keeps nothing: the code has to be scanned again after a restart.
  }
}

/**
 * The session that a key opened on this phone before; so its code also works without a network.
 * @param {string} key @returns {string|null}
 */
export function openedBefore(key) {
  try {
    const name = Object.keys(localStorage)
      .find((each) => each.startsWith(KEPT) && localStorage.getItem(each) === key);
    return name ? name.slice(KEPT.length) : null;
  } catch {
    return null;
  }
}

/**
 * Opens a session again with the key that was used before.
 * @param {string} session @returns {Promise<boolean>} whether it is open
 */
export async function openWithKey(session) {
  let key = null;
  try {
    key = localStorage.getItem(KEPT + session);
  } catch {
    return false;
  }
  if (!key) {
    return false;
  }
  return (await open(key)).session === session;
}

/** Forgets the key of a session. @param {string} session */
export function forgetKey(session) {
  try {
    localStorage.removeItem(KEPT + session);
  } catch {
    // A browser that keeps nothing has nothing to forget.
  }
}
