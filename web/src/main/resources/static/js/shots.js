// What a shot allows, while it is dragged: the server works it out, this page only draws. Without
// script the form is sent and the page comes back with the answer.

/**
 * @typedef {{
 *   asked: string,
 *   parts: Record<string, Record<string, string>>,
 *   words: Record<string, string>,
 *   more: string[],
 *   query: string,
 *   problems: Record<string, string>,
 * }} Answer
 */

/** How long after the last change the full answer is asked for, in ms. */
const REST = 250;

const form = /** @type {HTMLFormElement} */ (document.querySelector('form[data-shots]'));

/** The numbers of one shot and its pictures. */
class Shot {
  /** @param {HTMLElement} section */
  constructor(section) {
    this.section = section;
    this.prefix = section.dataset.shot ?? '';
    this.asked = 0;
    /** Whether the full answer waits for the live one. */
    this.due = false;
    this.shown = 0;
    this.busy = false;
    this.again = false;
    /** @type {AbortController | null} */
    this.full = null;
    this.rest = 0;
    section.addEventListener('input', (event) => this.changed(event));
    section.addEventListener('change', (event) => this.changed(event));
    section.querySelectorAll('[data-handle]').forEach((handle) => {
      handle.addEventListener('pointerdown', (event) =>
        this.hold(/** @type {SVGGElement} */ (handle), /** @type {PointerEvent} */ (event)));
    });
  }

  /** The control of a number. @param {string} name @returns {HTMLInputElement} */
  field(name) {
    const found = this.section.querySelector(`[data-field="${name}"]`);
    return /** @type {HTMLInputElement} */ (found);
  }

  /** The shot as the server reads it. */
  query() {
    const query = new URLSearchParams();
    new FormData(form).forEach((value, name) => {
      const mine = this.prefix === '' ? !name.startsWith('b.') : name.startsWith(this.prefix);
      if (mine) {
        query.set(name.slice(this.prefix.length), String(value));
      }
    });
    return query;
  }

  /** @param {Event} event */
  changed(event) {
    const input = /** @type {HTMLInputElement} */ (event.target);
    if (input.type === 'range') {
      const output = /** @type {HTMLElement} */ (input.parentElement?.querySelector('output'));
      output.textContent = `${input.value} ${output.dataset.unit ?? ''}`.trim();
    }
    if (input.value !== '') {
      this.ask();
    }
  }

  /** Asks for an answer at once, and for the full one when nothing changes any more. */
  ask() {
    this.full?.abort();
    this.section.classList.add('waiting-for');
    this.say('The list below is that of the last rest.');
    clearTimeout(this.rest);
    this.due = false;
    this.rest = window.setTimeout(() => this.finish(), REST);
    if (this.busy) {
      this.again = true;
    } else {
      this.fetch('live');
    }
  }

  /** Asks for the full answer, after the live one that is on its way: it must be the last. */
  finish() {
    if (this.busy) {
      this.due = true;
    } else {
      this.fetch('full');
    }
  }

  /** One live question is on its way at most; the next takes what is set then. */
  async fetch(/** @type {'live' | 'full'} */ detail) {
    const query = this.query();
    this.asked += 1;
    query.set('asked', String(this.asked));
    query.set('detail', detail);
    const control = new AbortController();
    if (detail === 'full') {
      this.full = control;
      this.say('Working out the rest…');
    } else {
      this.busy = true;
    }
    const start = performance.now();
    try {
      const answer = await fetch(`/shots/answer?${query}`, {
        headers: { Accept: 'application/json' },
        signal: control.signal,
      });
      if (answer.ok || answer.status === 422) {
        this.take(await answer.json(), detail);
        this.section.dataset[detail] = (performance.now() - start).toFixed(1);
      } else {
        this.say('The program did not answer. Maybe sign in again, then load the page anew.');
      }
    } catch (problem) {
      if (!control.signal.aborted) {
        this.say('The program cannot be reached. Maybe it was stopped.');
      }
    }
    if (detail === 'live') {
      this.busy = false;
      if (this.again) {
        this.again = false;
        this.fetch('live');
      } else if (this.due) {
        this.due = false;
        this.fetch('full');
      }
    }
  }

  /** Shows an answer unless a later question was answered before. @param {Answer} answer */
  take(answer, /** @type {'live' | 'full'} */ detail) {
    const number = Number(answer.asked);
    if (number < this.shown) {
      return;
    }
    this.shown = number;
    this.complain(answer.problems);
    if (Object.keys(answer.problems).length > 0) {
      this.say('');
      return;
    }
    for (const [part, attributes] of Object.entries(answer.parts)) {
      const held = this.section.querySelector(`[data-part="${part}"].held`);
      const shape = this.section.querySelector(`[data-part="${part}"]`);
      for (const [name, value] of Object.entries(held ? {} : attributes)) {
        shape?.setAttribute(name, value);
      }
    }
    for (const [place, words] of Object.entries(answer.words)) {
      const line = this.section.querySelector(`[data-word="${place}"]`);
      if (line && line.textContent !== words) {
        line.textContent = words;
      }
    }
    this.label('side', `Side view: ${answer.words.band}`);
    this.label('plan', `Plan: ${answer.words.advice}`);
    if (detail === 'full') {
      this.settle(answer);
    }
  }

  /** @param {string} view @param {string} words */
  label(view, words) {
    this.section.querySelector(`[data-view="${view}"]`)?.setAttribute('aria-label', words);
  }

  /** What only a full answer has, and the addresses that carry the shot. @param {Answer} answer */
  settle(answer) {
    this.say('');
    this.section.classList.remove('waiting-for');
    const list = /** @type {HTMLElement} */ (this.section.querySelector('[data-more]'));
    list.replaceChildren(
      ...answer.more.map((sentence) => {
        const line = document.createElement('li');
        line.textContent = sentence;
        return line;
      }),
    );
    this.section.querySelectorAll('[data-card]').forEach((link) => {
      const paper = new URL(/** @type {HTMLAnchorElement} */ (link).href).searchParams.get('paper');
      link.setAttribute('href', `/shots/card.pdf?paper=${paper}&${answer.query}`);
    });
    const all = new URLSearchParams();
    new FormData(form).forEach((value, name) => all.set(name, String(value)));
    history.replaceState(null, '', `/shots?${all}`);
  }

  /** @param {string} words */
  say(words) {
    /** @type {HTMLElement} */ (this.section.querySelector('[data-state]')).textContent = words;
  }

  /** Puts a sentence at each field that is wrong. @param {Record<string, string>} problems */
  complain(problems) {
    this.section.querySelectorAll('[data-field]').forEach((control) => {
      const sentence = problems[/** @type {HTMLElement} */ (control).dataset.field ?? ''] ?? '';
      const error = document.getElementById(`${control.id}-error`);
      if (error) {
        error.textContent = sentence;
        error.hidden = sentence === '';
        control.toggleAttribute('aria-invalid', false);
        if (sentence !== '') {
          control.setAttribute('aria-invalid', 'true');
          control.setAttribute('aria-describedby', error.id);
        }
      }
    });
  }

  /** @param {SVGGElement} handle @param {PointerEvent} event */
  hold(handle, event) {
    if (event.button !== 0) {
      return;
    }
    event.preventDefault();
    const svg = /** @type {SVGSVGElement} */ (handle.ownerSVGElement);
    const feet = this.section.querySelector('[data-field="hn"]')?.getAttribute('step') === '0.5';
    const move = (/** @type {PointerEvent} */ at) => this.drag(handle, svg, at, feet ? 1 : 0.3048);
    const drop = () => {
      handle.classList.remove('held');
      handle.removeEventListener('pointermove', move);
      handle.removeEventListener('pointerup', drop);
      handle.removeEventListener('pointercancel', drop);
      this.ask();
    };
    handle.setPointerCapture(event.pointerId);
    handle.classList.add('held');
    handle.addEventListener('pointermove', move);
    handle.addEventListener('pointerup', drop);
    handle.addEventListener('pointercancel', drop);
  }

  /**
   * Takes a handle to where the pointer is; the fields say what is allowed.
   * @param {SVGGElement} handle @param {SVGSVGElement} svg @param {PointerEvent} event
   * @param {number} unit how long a foot is in the units of the fields
   */
  drag(handle, svg, event, unit) {
    const matrix = /** @type {DOMMatrix} */ (svg.getScreenCTM()).inverse();
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix);
    const kind = handle.dataset.handle;
    const own = { hitter: 'h', target: 't', opponent: 'o' }[kind ?? ''] ?? 'h';
    const sign = own === 'h' ? 1 : -1;
    let [right, down] = [at.x, at.y];
    if (kind === 'contact') {
      right = this.set('hn', -at.x * unit, unit) / -unit;
      down = this.set('hh', -at.y * unit, unit) / -unit;
      this.follow('plan-hitter', Number(this.field('hx').value) / unit, -right);
    } else {
      right = this.set(`${own}x`, at.x * unit, unit) / unit;
      down = (sign * this.set(`${own}n`, sign * at.y * unit, unit)) / unit;
      if (own === 'h') {
        this.follow('side-hitter', -down, -Number(this.field('hh').value) / unit);
      }
    }
    handle.setAttribute('transform', `translate(${right.toFixed(2)} ${down.toFixed(2)})`);
    this.ask();
  }

  /** @param {string} part @param {number} right @param {number} down */
  follow(part, right, down) {
    const shape = this.section.querySelector(`[data-part="${part}"]`);
    shape?.setAttribute('transform', `translate(${right.toFixed(2)} ${down.toFixed(2)})`);
  }

  /** Writes a number into its field, within its range. @returns {number} what was written */
  set(/** @type {string} */ name, /** @type {number} */ wanted, /** @type {number} */ unit) {
    const field = this.field(name);
    const digits = unit === 1 ? 10 : 100;
    const within = Math.max(Number(field.min), Math.min(Number(field.max), wanted));
    const value = Math.round(within * digits) / digits;
    field.value = String(value);
    return value;
  }
}

document.querySelectorAll('section[data-shot]').forEach((section) => {
  new Shot(/** @type {HTMLElement} */ (section));
});
