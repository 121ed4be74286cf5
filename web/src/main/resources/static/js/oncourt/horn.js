// The sound at the end of a timed block, and a screen that stays on.

import { dueAt, endsByClock } from './clock.js';

/** @typedef {import('./model.js').Scene} Scene */

const BLASTS = [0, 0.45, 0.9];

/**
 * Blows when the time of a block is over. The blast is laid into the sound system's own clock as
 * soon as the block runs, so that it also comes while the page sleeps.
 */
export class Horn {
  constructor() {
    /** @type {AudioContext|null} */
    this.audio = null;
    /** @type {OscillatorNode[]} */
    this.laid = [];
    this.laidFor = '';
  }

  /** A tap allows sound. */
  wake() {
    this.audio ??= 'AudioContext' in globalThis ? new AudioContext() : null;
    if (this.audio?.state === 'suspended') {
      this.audio.resume();
    }
  }

  /** A short sound for an entry: higher for the far side, low for what is taken back. */
  /** @param {'A'|'B'|'undo'|'other'} what */
  tick(what) {
    if (this.audio) {
      const sound = this.audio.createOscillator();
      const volume = this.audio.createGain();
      sound.frequency.value = { A: 520, B: 780, undo: 260, other: 620 }[what];
      volume.gain.value = 0.15;
      sound.connect(volume).connect(this.audio.destination);
      sound.start();
      sound.stop(this.audio.currentTime + 0.07);
    }
  }

  /**
   * Lays the blast for the block that is on, and takes an old one away.
   * @param {Scene} scene @param {number} now on the clock that all phones share
   */
  listen(scene, now) {
    const block = scene.plan.blocks.find((each) => each.id === scene.session.current);
    const started = block ? scene.session.starts.get(block.id) : undefined;
    const wanted = block && started && endsByClock(scene, block) && block.kind !== 'YARDSTICK'
      ? `${started.id} ${dueAt(scene, block)}` : '';
    if (wanted === this.laidFor || !this.audio) {
      return;
    }
    this.laid.forEach((sound) => sound.stop());
    this.laid = [];
    this.laidFor = wanted;
    const left = wanted ? Number(wanted.split(' ')[1]) - now : 0;
    if (left > 0) {
      this.lay(this.audio, left / 1000);
    }
  }

  /** @param {AudioContext} audio @param {number} seconds from now */
  lay(audio, seconds) {
    for (const blast of BLASTS) {
      const sound = audio.createOscillator();
      const volume = audio.createGain();
      sound.type = 'square';
      sound.frequency.value = 660;
      volume.gain.value = 0.4;
      sound.connect(volume).connect(audio.destination);
      sound.start(audio.currentTime + seconds + blast);
      sound.stop(audio.currentTime + seconds + blast + 0.3);
      this.laid.push(sound);
    }
  }
}

/** Keeps the screen on where the browser allows it: over TLS or on this computer. */
export function keepAwake() {
  const ask = () => {
    if (document.visibilityState === 'visible' && 'wakeLock' in navigator) {
      navigator.wakeLock.request('screen').catch(() => {
        // Refused, for example at a low battery: the screen follows the phone's own setting.
      });
    }
  };
  document.addEventListener('visibilitychange', ask);
  ask();
}
