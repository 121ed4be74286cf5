package rallywright.engine.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rallywright.engine.court.Direction;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.RoleAdvantage;
import rallywright.engine.drill.Yardstick;
import rallywright.engine.skill.SharedEffect;

/**
 * The numbers of what all players of a club share: role advantages of uneven drills, what a
 * direction adds to them, difficulties of yardsticks, and what a minute of each drill brings.
 */
final class ClubEffects {
  /**
   * How far a direction may move a role's advantage, in logits: an assumption of this project. Its
   * prior mean is 0, as nobody knows which direction helps whom.
   */
  private static final double DIRECTION_SD = 0.2;

  private record Lie(DrillKey drill, Direction direction) {}

  private final List<SharedEffect> effects = new ArrayList<>();
  private final List<SharedEffect> gains = new ArrayList<>();
  private final Map<DrillKey, Integer> advantages = new HashMap<>();
  private final Map<Lie, Integer> directions = new HashMap<>();
  private final Map<DrillKey, Integer> difficulties = new HashMap<>();
  private final Map<DrillKey, Integer> gainNumbers = new HashMap<>();

  ClubEffects(List<Drill> drills, List<Yardstick> yardsticks) {
    drills.forEach(this::addDrill);
    for (Yardstick yardstick : yardsticks) {
      difficulties.put(yardstick.key(), effects.size());
      effects.add(
          new SharedEffect(
              yardstick.name(), yardstick.difficulty().logit(), yardstick.difficulty().sd()));
    }
  }

  private void addDrill(Drill drill) {
    drill.scored().ifPresent(game -> gainNumbers.put(drill.key(), gains.size()));
    drill.scored().ifPresent(game -> gains.add(SharedEffect.gain(drill.name())));
    if (drill.scored().isPresent() && !drill.scored().get().layout().isEven()) {
      RoleAdvantage advantage = drill.scored().get().advantage();
      advantages.put(drill.key(), effects.size());
      effects.add(new SharedEffect(drill.name(), advantage.logit(), advantage.sd()));
      if (drill.directions().size() > 1) {
        drill.directions().forEach(direction -> addDirection(drill, direction));
      }
    }
  }

  private void addDirection(Drill drill, Direction direction) {
    directions.put(new Lie(drill.key(), direction), effects.size());
    effects.add(new SharedEffect(drill.name() + ", " + direction.words(), 0, DIRECTION_SD));
  }

  /** What is added to the edge of the first role; nothing in an even drill. */
  List<Integer> of(Drill drill, Optional<Direction> direction) {
    List<Integer> numbers = new ArrayList<>();
    Optional.ofNullable(advantages.get(drill.key())).ifPresent(numbers::add);
    direction.map(way -> directions.get(new Lie(drill.key(), way))).ifPresent(numbers::add);
    return numbers;
  }

  Optional<Integer> difficulty(DrillKey yardstick) {
    return Optional.ofNullable(difficulties.get(yardstick));
  }

  Optional<Integer> gain(DrillKey drill) {
    return Optional.ofNullable(gainNumbers.get(drill));
  }

  List<SharedEffect> effects() {
    return effects;
  }

  List<SharedEffect> gains() {
    return gains;
  }
}
