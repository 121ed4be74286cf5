/**
 * The weather of a session in a coach's words: what a forecast says and what was noted on court.
 *
 * <p>Start with {@link rallywright.web.weather.WeatherWords}. The limits and cautions are the
 * engine's; nothing is fetched from a weather service.
 */
@NullMarked
package rallywright.web.weather;

import org.jspecify.annotations.NullMarked;
