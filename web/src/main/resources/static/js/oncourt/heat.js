// How hot the air feels: a twin of the engine's heat index, so that it is known without a network.

/** The nine terms of SR 90-23 (Rothfusz 1990). @param {number} t @param {number} r */
function regression(t, r) {
  return -42.379 + 2.04901523 * t + 10.14333127 * r - 0.22475541 * t * r - 0.00683783 * t * t
    - 0.05481717 * r * r + 0.00122874 * t * t * r + 0.00085282 * t * r * r
    - 0.00000199 * t * t * r * r;
}

/** @param {number} t @param {number} r */
function adjustment(t, r) {
  if (r < 13 && t >= 80 && t <= 112) {
    return -(13 - r) / 4 * Math.sqrt((17 - Math.abs(t - 95)) / 17);
  }
  return r > 85 && t >= 80 && t <= 87 ? (r - 85) / 10 * ((87 - t) / 5) : 0;
}

/** The heat index in °F. @param {number} celsius @param {number} percent relative humidity */
export function heatIndex(celsius, percent) {
  const t = Math.round((celsius * 1.8 + 32) * 1e9) / 1e9;
  if (t <= 40) {
    return t;
  }
  const simple = 0.5 * (t + 61 + (t - 68) * 1.2 + 0.094 * percent);
  return simple < 80 ? simple : regression(t, percent) + adjustment(t, percent);
}

/** The category of a heat index: the last that begins at or below it. */
/** @param {[number, string, string][]} categories @param {number} fahrenheit */
export function categoryOf(categories, fahrenheit) {
  return categories.filter(([from]) => fahrenheit >= from).pop() ?? categories[0];
}
