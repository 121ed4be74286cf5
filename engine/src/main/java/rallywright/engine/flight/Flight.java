package rallywright.engine.flight;

import org.jspecify.annotations.Nullable;

/**
 * One flight from the paddle to the floor.
 *
 * @param launch where it began
 * @param net over the net plane, or null if the ball lands before it
 * @param apex the highest point, or null where none was passed
 * @param reach through the plane that was asked for, or null
 * @param landing the first touch of the floor: the centre is one radius above it
 */
public record Flight(
    Launch launch,
    @Nullable Passage net,
    @Nullable Passage apex,
    @Nullable Passage reach,
    Passage landing) {}
