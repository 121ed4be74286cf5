package rallywright.paper;

import java.util.Optional;
import java.util.function.Function;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.Yardstick;

/**
 * Where the sheet looks up what a block plays.
 *
 * @param drills the drill or warm-up of a key, if there is one
 * @param yardsticks the yardstick of a key, if there is one
 */
public record DrillBook(
    Function<DrillKey, Optional<Drill>> drills,
    Function<DrillKey, Optional<Yardstick>> yardsticks) {}
