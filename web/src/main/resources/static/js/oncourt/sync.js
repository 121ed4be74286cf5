// Between the phone and the server: events go out in order until each is answered for, what others
// did comes in. Repeating a message does no harm, so every doubt ends in sending again.

import { queueOf } from './queue.js';
import { openWithKey } from './key.js';

/** @typedef {import('./fold.js').CourtEvent} CourtEvent */

const FIRST_PAUSE_MS = 1000;
const LONGEST_PAUSE_MS = 30000;
const LOOK_EVERY_MS = 8000;
const MOST_AT_ONCE = 100;

/**
 * What the page shows of the way home.
 * @typedef {object} Way
 * @property {number} unsent how many events are not home yet
 * @property {'home'|'sending'|'waiting'|'closed'} state closed: the server does not let us in
 * @property {string[]} refused the sentences of events that were refused
 * @property {boolean} lasting whether a reload keeps unsent events
 */

export class Sync {
  /**
   * @param {string} session
   * @param {() => void} changed called whenever something to be shown has changed
   */
  constructor(session, changed) {
    this.session = session;
    this.changed = changed;
    /** @type {CourtEvent[]} the server's events in its order */
    this.home = [];
    /** @type {CourtEvent[]} own events that the server's list does not show yet */
    this.own = [];
    /** @type {Set<string>} ids of own events that still have to be sent */
    this.unsent = new Set();
    /** @type {Record<string, any>|null} */
    this.plan = null;
    this.planMark = '';
    /** @type {string[]} */
    this.refused = [];
    this.closed = false;
    this.reached = true;
    this.sending = false;
    this.looking = false;
    this.pause = FIRST_PAUSE_MS;
    /** @type {ReturnType<typeof setTimeout>|undefined} */
    this.timer = undefined;
  }

  /** Starts: takes up what an earlier page left unsent, then looks what the server has. */
  async start() {
    this.queue = await queueOf(this.session);
    navigator.storage?.persist?.().catch(() => {
      // Refused: the browser may clear its store when the disk is full, not before.
    });
    this.own = await this.queue.all();
    this.own.forEach((event) => this.unsent.add(event.id));
    await this.look();
    this.send();
    setInterval(() => document.visibilityState === 'visible' && this.wake(), LOOK_EVERY_MS);
    document.addEventListener('visibilitychange', () => this.wake());
    addEventListener('online', () => this.wake());
    addEventListener('pageshow', () => this.wake());
  }

  /** Everything that happened, the server's list first, then what it does not show yet. */
  events() {
    return [...this.home, ...this.own];
  }

  /** What is not home yet, in order. */
  waiting() {
    return this.own.filter((event) => this.unsent.has(event.id));
  }

  /** @returns {Way} */
  way() {
    const waiting = this.unsent.size > 0;
    return {
      unsent: this.unsent.size,
      state: this.closed ? 'closed' : this.reached && !waiting ? 'home' : this.reached
        ? 'sending' : 'waiting',
      refused: this.refused,
      lasting: this.queue?.lasting ?? false,
    };
  }

  /**
   * Takes new events: kept first, then counted, then sent.
   * @param {CourtEvent[]} events
   */
  async add(events) {
    this.own.push(...events);
    events.forEach((event) => this.unsent.add(event.id));
    const kept = this.queue?.add(events);
    this.changed();
    try {
      await kept;
    } catch {
      this.refused.push(
        'This browser could not keep the last score in its store. Leave this page open until it is'
          + ' sent.');
    }
    this.send();
  }

  /** Looks and sends at once, whatever pause was running. */
  wake() {
    this.pause = FIRST_PAUSE_MS;
    this.look();
    this.send();
  }

  /** Sends what waits; after a failure again, with growing pauses. */
  async send() {
    if (this.sending || this.unsent.size === 0) {
      return;
    }
    clearTimeout(this.timer);
    this.sending = true;
    let again = false;
    try {
      while (this.unsent.size > 0 && (await this.sendSome())) {
        this.pause = FIRST_PAUSE_MS;
      }
      again = this.unsent.size > 0;
    } catch {
      this.reached = false;
      again = true;
    }
    this.sending = false;
    this.changed();
    if (again) {
      this.timer = setTimeout(() => this.send(), this.pause * (0.75 + Math.random() / 2));
      this.pause = Math.min(LONGEST_PAUSE_MS, this.pause * 2);
    } else {
      this.look();
    }
  }

  /** Sends the oldest unsent events. @returns {Promise<boolean>} whether the server answered */
  async sendSome() {
    const some = this.waiting().slice(0, MOST_AT_ONCE);
    const response = await this.ask('events', { method: 'POST', body: JSON.stringify(some) });
    if (!response) {
      return false;
    }
    /** @type {{answers: {id: string, outcome: string, reason?: string}[]}} */
    const { answers } = await response.json();
    for (const { id, outcome, reason } of answers) {
      this.unsent.delete(id);
      if (outcome === 'refused') {
        this.own = this.own.filter((event) => event.id !== id);
        this.refused.push(reason ?? 'The server refused a score without a reason.');
      }
    }
    await this.queue?.drop(answers.map((answer) => answer.id));
    this.reached = true;
    this.changed();
    return answers.length > 0;
  }

  /** Asks what happened elsewhere. */
  async look() {
    if (this.looking) {
      return;
    }
    this.looking = true;
    try {
      const query = `state?since=${this.home.length}&plan=${encodeURIComponent(this.planMark)}`;
      const response = await this.ask(query, { method: 'GET' });
      if (response) {
        this.takeIn(await response.json());
      }
    } catch {
      this.reached = false;
    }
    this.looking = false;
    this.changed();
  }

  /** @param {Record<string, any>} state */
  takeIn(state) {
    this.reached = true;
    this.home = [...this.home.slice(0, state.from), ...state.events];
    if (state.plan) {
      this.plan = state.plan;
      this.planMark = state.planMark;
    }
    const there = new Set(this.home.map((event) => event.id));
    const back = this.own.filter((event) => there.has(event.id) && this.unsent.has(event.id));
    back.forEach((event) => this.unsent.delete(event.id));
    this.queue?.drop(back.map((event) => event.id));
    this.own = this.own.filter((event) => !there.has(event.id));
  }

  /**
   * One message. A server that was started anew has forgotten the visit, not the key: then the key
   * opens the session again, once.
   * @param {string} what @param {RequestInit} how @returns {Promise<Response|null>}
   */
  async ask(what, how) {
    const response = await this.reach(what, how);
    if (response && !response.ok) {
      throw new Error(`answered ${response.status}`);
    }
    return response;
  }

  /**
   * Asks for a change of who is there or who plays; unlike scores it does not wait for the server.
   * @param {string} what @param {object} body @returns {Promise<string>} why not, or an empty text
   */
  async change(what, body) {
    try {
      const response = await this.reach(what, { method: 'POST', body: JSON.stringify(body) });
      if (!response) {
        return 'This phone is not let in any more. Scan the code of the session again.';
      }
      if (response.ok) {
        await this.look();
        return '';
      }
      const { problem } = await response.json();
      return problem ?? 'The server did not take this. Load the page again, then try once more.';
    } catch {
      return 'The server cannot be reached just now. Go nearer to the Wi-Fi, then try again.';
    }
  }

  /**
   * One message and its answer, whatever it says; null where the phone is not let in.
   * @param {string} what @param {RequestInit} how @returns {Promise<Response|null>}
   */
  async reach(what, how) {
    const send = () =>
      fetch(`/court/${encodeURIComponent(this.session)}/${what}`, {
        ...how,
        headers: { 'Content-Type': 'application/json', Accept: 'application/json' },
        credentials: 'same-origin',
        cache: 'no-store',
        redirect: 'manual',
      });
    let response = await send();
    if (isShut(response) && (await openWithKey(this.session))) {
      response = await send();
    }
    this.closed = isShut(response);
    return this.closed ? null : response;
  }

  /** The person has read why something was refused. */
  forgetRefusals() {
    this.refused = [];
    this.changed();
  }
}

/** Whether the server did not let the message in. @param {Response} response */
function isShut(response) {
  return response.type === 'opaqueredirect' || response.status === 401 || response.status === 403;
}
