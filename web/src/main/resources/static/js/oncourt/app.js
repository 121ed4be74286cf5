// The page as an app of the phone: kept by the browser, opened without a network.

const LAST = 'rallywright-last-session';

/** Lets the browser keep the page, where it allows that: over TLS or on this computer. */
export function keepPage() {
  if ('serviceWorker' in navigator) {
    navigator.serviceWorker.register('/court/worker.js', { scope: '/court' }).catch(() => {
      // Refused or out of reach: the page works as long as it stays open.
    });
  }
}

/** Fetches a newer page, then shows it; events stay where they are kept. */
export async function loadNewPage() {
  try {
    const registration = await navigator.serviceWorker?.getRegistration('/court');
    await registration?.update();
    const fresh = registration?.installing;
    if (fresh) {
      await new Promise((resolve) => {
        fresh.addEventListener('statechange', () =>
          ['activated', 'redundant'].includes(fresh.state) && resolve(null));
      });
    }
  } catch {
    // Out of reach: the page that is here is shown again.
  }
  location.reload();
}

/** @param {string} session */
export function rememberSession(session) {
  try {
    localStorage.setItem(LAST, session);
  } catch {
    // A browser that keeps nothing: the code has to be scanned again.
  }
}

/** The session that this phone showed last. @returns {string|null} */
export function lastSession() {
  try {
    return localStorage.getItem(LAST);
  } catch {
    return null;
  }
}
