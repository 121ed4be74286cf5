// Where events wait until the server has said that it keeps them: a store of the browser that
// survives a reload, or memory where there is none.

/** @typedef {import('./fold.js').CourtEvent} CourtEvent */

/**
 * @typedef {object} Queue
 * @property {(events: CourtEvent[]) => Promise<void>} add keeps events, in order, before they count
 * @property {() => Promise<CourtEvent[]>} all what waits, in order
 * @property {(ids: string[]) => Promise<void>} drop forgets events that are home
 * @property {boolean} lasting whether a reload keeps them
 */

const NAME = 'rallywright-court';
const EVENTS = 'events';

/** @returns {Promise<IDBDatabase>} */
function open() {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(NAME, 1);
    request.onupgradeneeded = () => {
      request.result.createObjectStore(EVENTS, { keyPath: 'place', autoIncrement: true });
    };
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
    request.onblocked = () => reject(new Error('blocked'));
  });
}

/** @param {IDBTransaction} transaction @returns {Promise<void>} */
function done(transaction) {
  return new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onerror = () => reject(transaction.error);
    transaction.onabort = () => reject(transaction.error);
  });
}

/**
 * The queue of one session.
 * @param {string} session @returns {Promise<Queue>}
 */
export async function queueOf(session) {
  try {
    return lastingQueue(await open(), session);
  } catch {
    return memoryQueue();
  }
}

/** @param {IDBDatabase} database @param {string} session @returns {Queue} */
function lastingQueue(database, session) {
  /** @returns {Promise<{place: number, session: string, event: CourtEvent}[]>} */
  const rows = () =>
    new Promise((resolve, reject) => {
      const request = database.transaction(EVENTS).objectStore(EVENTS).getAll();
      request.onsuccess = () =>
        resolve(request.result.filter((/** @type {any} */ row) => row.session === session));
      request.onerror = () => reject(request.error);
    });
  return {
    lasting: true,
    add: (events) => {
      const transaction = database.transaction(EVENTS, 'readwrite', { durability: 'strict' });
      events.forEach((event) => transaction.objectStore(EVENTS).add({ session, event }));
      return done(transaction);
    },
    all: async () => (await rows()).map((row) => row.event),
    drop: async (ids) => {
      const gone = new Set(ids);
      const found = (await rows()).filter((row) => gone.has(row.event.id));
      const transaction = database.transaction(EVENTS, 'readwrite');
      found.forEach((row) => transaction.objectStore(EVENTS).delete(row.place));
      return done(transaction);
    },
  };
}

/** @returns {Queue} */
function memoryQueue() {
  /** @type {CourtEvent[]} */
  let waiting = [];
  return {
    lasting: false,
    add: async (events) => {
      waiting.push(...events);
    },
    all: async () => [...waiting],
    drop: async (ids) => {
      waiting = waiting.filter((event) => !ids.includes(event.id));
    },
  };
}
