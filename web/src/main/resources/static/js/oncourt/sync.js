// Between the phone and the server: events go out in order until each is answered for, what others
// did comes in. Repeating a message does no harm, so every doubt ends in sending again.

import { forgetKey, openWithKey } from './key.js';
import { queueOf } from './queue.js';

/** @typedef {import('./fold.js').CourtEvent} CourtEvent */
/** @typedef {import('./queue.js').Refused} Refused */

/** The form in which this page talks; a server with a smaller number does not understand it. */
const FORM = 3;
const FIRST_PAUSE_MS = 1000;
const LONGEST_PAUSE_MS = 60000;
const LOOK_EVERY_MS = 4000;
const PATIENCE_MS = 10000;
const MOST_AT_ONCE = 100;
/** How long a phone keeps what it knows of a session: two weeks. */
const KEPT_MS = 14 * 24 * 3600 * 1000;
/** A store that takes longer to keep a tap must not make the page look dead. */
const STORE_PATIENCE_MS = 300;
/** Below this the way of a message explains the difference of two clocks. */
const SAME_CLOCK_MS = 2000;

/** A longer way there and back says little about the server's clock. */
const SLOW_ANSWER_MS = 5000;

/**
 * What the page shows of the way home.
 * @typedef {object} Way
 * @property {number} unsent how many events are not home yet
 * @property {'home'|'sending'|'waiting'|'closed'|'older'} state closed: the server does not let us
 *   in; older: it does not understand this page
 * @property {string[]} news the sentences of events that were refused and not read yet
 * @property {Refused[]} refused all that the server did not take
 * @property {boolean} lasting whether a reload keeps unsent events
 * @property {boolean} outdated whether the server has a newer page
 * @property {string} trouble why the server cannot keep anything just now, or an empty text
 */

export class Sync {
  /**
   * @param {string} session
   * @param {{by: string, build: string}} phone its name and the mark of its page
   * @param {() => void} changed called whenever something to be shown has changed
   */
  constructor(session, phone, changed) {
    this.session = session;
    this.phone = phone;
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
    this.visitor = 'phone';
    this.ahead = 0;
    /** @type {Refused[]} */
    this.refused = [];
    /** @type {string[]} */
    this.news = [];
    this.closed = false;
    this.older = false;
    this.met = false;
    this.outdated = false;
    this.trouble = '';
    this.reached = true;
    this.busy = false;
    this.pause = FIRST_PAUSE_MS;
    /** @type {ReturnType<typeof setTimeout>|undefined} */
    this.timer = undefined;
  }

  /** Starts with what this phone kept, then goes on with the server for as long as it is open. */
  async start() {
    this.queue = await queueOf(this.session);
    navigator.storage?.persist?.().catch(() => {
      // Refused: the browser may clear its store when the disk is full, not before.
    });
    this.own = await this.queue.all();
    this.own.forEach((event) => this.unsent.add(event.id));
    this.refused = await this.queue.refused();
    const known = await this.queue.known();
    if (known) {
      Object.assign(this, { plan: known.plan, planMark: known.planMark, home: known.home,
        visitor: known.visitor, ahead: known.ahead });
      const back = this.settle();
      this.changed();
      await this.queue.drop(back);
    }
    document.addEventListener('visibilitychange', () => this.wake());
    addEventListener('online', () => this.wake());
    addEventListener('pageshow', () => this.wake());
    this.tidy();
    await this.round();
  }

  /** People's names do not stay on a phone for longer than they are of use there. */
  async tidy() {
    try {
      (await this.queue?.forget(Date.now() - KEPT_MS))?.forEach(forgetKey);
    } catch {
      // A store that cannot be read now is tidied at the next opening.
    }
  }

  /** The time on the server's clock, on which all phones agree whatever their own clocks say. */
  now() {
    return Date.now() + this.ahead;
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
      state: this.closed ? 'closed' : this.older ? 'older' : !this.reached ? 'waiting'
        : waiting ? 'sending' : 'home',
      news: this.news,
      refused: this.refused,
      lasting: this.queue?.lasting ?? false,
      outdated: this.outdated,
      trouble: this.trouble,
    };
  }

  /**
   * Takes new events: counted on, kept, shown, then sent.
   * @param {CourtEvent[]} made
   */
  async add(made) {
    let n = this.counted();
    const seen = this.home.length;
    const events = made.map((event) => ({ ...event, n: ++n, seen }));
    this.own.push(...events);
    events.forEach((event) => this.unsent.add(event.id));
    try {
      // What is shown is kept: a page that ends in the middle of a tap has shown nothing yet.
      await Promise.race([this.queue?.add(events), rest(STORE_PATIENCE_MS)]);
    } catch {
      this.news.push(
        'This browser could not keep the last score in its store. Leave this page open until it is'
          + ' sent.');
    }
    this.changed();
    if (this.reached) {
      this.wake();
    }
  }

  /** How far this phone has counted its own events. */
  counted() {
    return [...this.events(), ...this.refused.map(({ event }) => event)]
      .filter((event) => event.by === this.phone.by)
      .reduce((most, event) => Math.max(most, event.n ?? 0), 0);
  }

  /** Goes on at once, whatever pause was running. */
  wake() {
    this.pause = FIRST_PAUSE_MS;
    this.round();
  }

  /**
   * Sends what waits and looks what others did; then again after a while, after a failure with
   * growing pauses.
   */
  async round() {
    if (this.busy) {
      return;
    }
    clearTimeout(this.timer);
    if (document.visibilityState === 'hidden' && this.unsent.size === 0) {
      // Nobody looks and nothing waits: coming back into sight goes on at once.
      this.timer = setTimeout(() => this.round(), LOOK_EVERY_MS);
      return;
    }
    this.busy = true;
    // Nothing goes out before the server has said in which form it talks.
    const met = this.met || (await this.tried(() => this.look()));
    const sent = met && (await this.tried(async () => {
      while (this.unsent.size > 0 && !this.older && (await this.sendSome()));
    }));
    const looked = met && (await this.tried(() => this.look()));
    this.reached = looked;
    this.busy = false;
    this.changed();
    if (sent && looked && !this.closed) {
      this.pause = FIRST_PAUSE_MS;
      this.timer = setTimeout(() => this.round(), LOOK_EVERY_MS);
    } else {
      this.timer = setTimeout(() => this.round(), this.pause * (0.75 + Math.random() / 2));
      this.pause = Math.min(LONGEST_PAUSE_MS, this.pause * 2);
    }
  }

  /** Whether a step came to its end. @param {() => Promise<void>} step */
  async tried(step) {
    try {
      await step();
      return true;
    } catch {
      return false;
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
    this.trouble = '';
    const refused = answers.filter(({ outcome }) => outcome === 'refused');
    await this.setAside(refused);
    await this.queue?.drop(refused.map(({ id }) => id));
    answers.forEach(({ id }) => this.unsent.delete(id));
    this.reached = true;
    this.changed();
    return answers.some(({ id }) => some.some((event) => event.id === id));
  }

  /** Counts no more what the server refused. @param {{id: string, reason?: string}[]} answers */
  async setAside(answers) {
    const refused = answers.flatMap(({ id, reason }) =>
      this.own.filter((event) => event.id === id).map((event) => ({
        event,
        reason: reason ?? 'The server refused a score without a reason.',
      })));
    if (refused.length > 0) {
      await this.queue?.refuse(refused);
      this.refused.push(...refused);
      this.news.push(...refused.map(({ reason }) => reason));
      this.own = this.own.filter((event) => !refused.some((each) => each.event === event));
    }
  }

  /** Asks what happened elsewhere. */
  async look() {
    const query = `state?since=${this.home.length}&plan=${encodeURIComponent(this.planMark)}`;
    const asked = Date.now();
    const response = await this.ask(query, { method: 'GET' });
    if (response) {
      const state = await response.json();
      this.compareClocks(state.now, asked);
      await this.takeIn(state);
    }
  }

  /** @param {number|undefined} now the server's clock @param {number} asked the phone's, before */
  compareClocks(now, asked) {
    const back = Date.now();
    // A phone that slept between question and answer cannot tell when the answer was given.
    if (now === undefined || back < asked || back - asked > SLOW_ANSWER_MS) {
      return;
    }
    const ahead = now - (asked + back) / 2;
    if (Math.abs(ahead - this.ahead) > SAME_CLOCK_MS) {
      this.ahead = Math.round(ahead);
    }
  }

  /** @param {Record<string, any>} state */
  async takeIn(state) {
    this.reached = true;
    this.met = true;
    this.older = (state.form ?? 1) < FORM;
    this.outdated = state.build !== undefined && state.build !== this.phone.build;
    const before = this.home.length;
    const fresh = /** @type {CourtEvent[]} */ (state.events).map((event) => this.whole(event));
    this.home = [...this.home.slice(0, state.from), ...fresh];
    this.visitor = state.visitor ?? this.visitor;
    if (state.plan) {
      this.plan = state.plan;
      this.planMark = state.planMark;
    }
    const back = this.settle();
    this.changed();
    if (this.plan && (state.plan || state.events.length > 0 || before !== this.home.length)) {
      await this.queue?.know({ plan: this.plan, planMark: this.planMark, home: this.home,
        visitor: this.visitor, ahead: this.ahead });
    }
    // Only now is it kept among what the server said, where an own note has no text.
    await this.queue?.drop(back);
  }

  /** Own events that the server's list shows count there only. @returns {string[]} their ids */
  settle() {
    const there = new Set(this.home.map((event) => event.id));
    const back = this.own.map(({ id }) => id).filter((id) => there.has(id));
    back.forEach((id) => this.unsent.delete(id));
    this.own = this.own.filter((event) => !there.has(event.id));
    return back;
  }

  /** An own note keeps its text. @param {CourtEvent} event @returns {CourtEvent} */
  whole(event) {
    const known = event.type === 'note' && event.text === undefined
      ? [...this.own, ...this.home].find(({ id }) => id === event.id) : undefined;
    return known ?? event;
  }

  /**
   * One message. A server that was started anew has forgotten the visit, not the key: then the key
   * opens the session again, once.
   * @param {string} what @param {RequestInit} how @returns {Promise<Response|null>}
   */
  async ask(what, how) {
    const response = await this.reach(what, how);
    if (response?.status === 409) {
      this.older = true;
    }
    if (response?.status === 503) {
      this.trouble = (await response.json()).problem ?? '';
    }
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
   * One message and its answer, whatever it says; null where the phone is not let in. A network
   * that takes the message and never answers counts as none.
   * @param {string} what @param {RequestInit} how @returns {Promise<Response|null>}
   */
  async reach(what, how) {
    const send = () =>
      fetch(`/court/${encodeURIComponent(this.session)}/${what}`, {
        ...how,
        headers: { 'Content-Type': 'application/json', Accept: 'application/json',
          'Rallywright-Form': String(FORM) },
        credentials: 'same-origin',
        cache: 'no-store',
        redirect: 'manual',
        signal: AbortSignal.timeout(PATIENCE_MS),
      });
    let response = await send();
    if (isShut(response) && (await openWithKey(this.session))) {
      response = await send();
    }
    this.closed = isShut(response);
    return this.closed ? null : response;
  }

  /** The person has read why something was refused. */
  forgetNews() {
    this.news = [];
    this.changed();
  }
}

/** Whether the server did not let the message in. @param {Response} response */
function isShut(response) {
  return response.type === 'opaqueredirect' || response.status === 401 || response.status === 403;
}

/** @param {number} millis @returns {Promise<void>} */
function rest(millis) {
  return new Promise((resolve) => {
    setTimeout(resolve, millis);
  });
}
