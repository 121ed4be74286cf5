/**
 * An invented club that plays by the model: true skills, true rallies, and what a coach would note.
 *
 * <p>Start with {@link rallywright.engine.simulation.SimulatedSession}. Nothing here estimates a
 * skill, and no simulated result may ever be mixed with those of real people.
 */
@NullMarked
package rallywright.engine.simulation;

import org.jspecify.annotations.NullMarked;
