/**
 * The invented club of the demo: its people and a history simulated from the model.
 *
 * <p>Start with {@link rallywright.web.demo.DemoClub}. Nothing here is ever added to a club that
 * holds anything already.
 */
@NullMarked
package rallywright.web.demo;

import org.jspecify.annotations.NullMarked;
