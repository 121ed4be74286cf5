// What the phone keeps of a session: events that are not home yet, what the server said last, and
// what the server did not take. In a store of the browser that survives a reload, or in memory.

/** @typedef {import('./fold.js').CourtEvent} CourtEvent */

/**
 * What the server said last, so that the page opens without it.
 * @typedef {object} Known
 * @property {Record<string, any>} plan
 * @property {string} planMark
 * @property {CourtEvent[]} home
 * @property {string} visitor
 * @property {number} ahead how far the server's clock is ahead of the phone's, in milliseconds
 */

/**
 * An event that the server did not take, and why.
 * @typedef {{event: CourtEvent, reason: string}} Refused
 */

/**
 * @typedef {object} Queue
 * @property {(events: CourtEvent[]) => Promise<void>} add keeps events, in order, before they count
 * @property {() => Promise<CourtEvent[]>} all what waits, in order
 * @property {(ids: string[]) => Promise<void>} drop forgets events that are home
 * @property {(refused: Refused[]) => Promise<void>} refuse keeps what the server did not take
 * @property {() => Promise<Refused[]>} refused
 * @property {(known: Known) => Promise<void>} know
 * @property {() => Promise<Known|undefined>} known
 * @property {(before: number) => Promise<string[]>} forget what is known of sessions not looked at
 *   since a time, unless something of theirs still waits; answers their names
 * @property {boolean} lasting whether a reload keeps them
 */

const NAME = 'rallywright-court';
const VERSION = 2;
const EVENTS = 'events';
const REFUSED = 'refused';
const KNOWN = 'known';

/** @returns {Promise<IDBDatabase>} */
function open() {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(NAME, VERSION);
    request.onupgradeneeded = () => {
      const { result } = request;
      for (const name of [EVENTS, REFUSED]) {
        if (!result.objectStoreNames.contains(name)) {
          result.createObjectStore(name, { keyPath: 'place', autoIncrement: true });
        }
      }
      if (!result.objectStoreNames.contains(KNOWN)) {
        result.createObjectStore(KNOWN, { keyPath: 'session' });
      }
    };
    request.onsuccess = () => {
      // A newer page in another tab may change the store; this one then reads nothing more from it.
      request.result.onversionchange = () => request.result.close();
      resolve(request.result);
    };
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

/** @template T @param {IDBRequest<T>} request @returns {Promise<T>} */
function answered(request) {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
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
  /** @param {string} store @returns {Promise<any[]>} */
  const rows = async (store) => (await answered(
    /** @type {IDBRequest<any[]>} */ (database.transaction(store).objectStore(store).getAll())))
    .filter((row) => row.session === session);
  /** @param {string} store @param {object[]} added */
  const add = (store, added) => {
    const transaction = database.transaction(store, 'readwrite', { durability: 'strict' });
    added.forEach((row) => transaction.objectStore(store).add({ session, ...row }));
    return done(transaction);
  };
  return {
    lasting: true,
    add: (events) => add(EVENTS, events.map((event) => ({ event }))),
    all: async () => (await rows(EVENTS)).map((row) => row.event),
    drop: async (ids) => {
      const gone = new Set(ids);
      const found = (await rows(EVENTS)).filter((row) => gone.has(row.event.id));
      const transaction = database.transaction(EVENTS, 'readwrite');
      found.forEach((row) => transaction.objectStore(EVENTS).delete(row.place));
      return done(transaction);
    },
    refuse: (refused) => add(REFUSED, refused),
    refused: async () => (await rows(REFUSED)).map(({ event, reason }) => ({ event, reason })),
    know: (known) => {
      const transaction = database.transaction(KNOWN, 'readwrite');
      transaction.objectStore(KNOWN).put({ session, at: Date.now(), ...known });
      return done(transaction);
    },
    forget: async (before) => {
      /** @type {IDBRequest<any[]>} */
      const waiting = database.transaction(EVENTS).objectStore(EVENTS).getAll();
      const busy = new Set((await answered(waiting)).map((row) => row.session));
      /** @type {IDBRequest<any[]>} */
      const all = database.transaction(KNOWN).objectStore(KNOWN).getAll();
      const old = (await answered(all)).filter((row) =>
        row.session !== session && (row.at ?? 0) < before && !busy.has(row.session));
      const transaction = database.transaction(KNOWN, 'readwrite');
      old.forEach((row) => transaction.objectStore(KNOWN).delete(row.session));
      await done(transaction);
      return old.map((row) => row.session);
    },
    known: () => answered(database.transaction(KNOWN).objectStore(KNOWN).get(session)),
  };
}

/** @returns {Queue} */
function memoryQueue() {
  /** @type {CourtEvent[]} */
  let waiting = [];
  /** @type {Refused[]} */
  const refused = [];
  /** @type {Known|undefined} */
  let last;
  return {
    lasting: false,
    add: async (events) => {
      waiting.push(...events);
    },
    all: async () => [...waiting],
    drop: async (ids) => {
      waiting = waiting.filter((event) => !ids.includes(event.id));
    },
    refuse: async (more) => {
      refused.push(...more);
    },
    refused: async () => [...refused],
    know: async (known) => {
      last = known;
    },
    known: async () => last,
    forget: async () => [],
  };
}
