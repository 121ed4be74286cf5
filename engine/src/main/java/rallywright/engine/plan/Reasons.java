package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKind;
import rallywright.engine.drill.DrillSide;
import rallywright.engine.drill.Skill;
import rallywright.engine.practice.Need;
import rallywright.engine.score.Side;

/** Why a block is in the plan, as one sentence for the coach: whose need, and which skill. */
final class Reasons {

  private static final int OTHERS_NAMED = 2;

  /** What weighs so much of the strongest is as good a reason: an assumption of this project. */
  private static final double NEARLY_AS_MUCH = 2.0 / 3;

  /** Reasons that rest on what a player was seen to do. */
  private static final Set<Need.Cause> SEEN =
      EnumSet.of(Need.Cause.BEHIND, Need.Cause.NOT_PRACTISED);

  private final PlanContext context;

  Reasons(PlanContext context) {
    this.context = context;
  }

  /** How a drill's work is shared among the skills, the mean over both roles. */
  static Map<Skill, Double> load(Drill drill) {
    Map<Skill, Double> load = new EnumMap<>(Skill.class);
    for (Side side : Side.values()) {
      DrillSide role = drill.layout().orElseThrow().sides().of(side);
      role.weights().shares().forEach((skill, share) -> load.merge(skill, share / 2, Double::sum));
    }
    return load;
  }

  private record Call(int place, Need need, double weight) {}

  String of(DrillLine line, List<Integer> there) {
    List<Call> calls = new ArrayList<>();
    for (int place : context.eligible(line.drill(), there)) {
      calls.add(strongest(place, load(line.drill())));
    }
    calls.sort(Comparator.comparingDouble(Call::weight).reversed());
    Call first = telling(calls);
    calls.remove(first);
    String opening =
        line.drill().kind() == DrillKind.FULL_GAME
            ? "Puts everything together with serve and return. "
            : "";
    return opening + first.need().sentence() + worth(first) + others(calls);
  }

  /**
   * The reason to give: what somebody was seen to lack tells a coach more than that little is known
   * of another, such as a guest, if it weighs nearly as much.
   */
  private static Call telling(List<Call> strongestFirst) {
    Call strongest = strongestFirst.get(0);
    return strongestFirst.stream()
        .filter(call -> SEEN.contains(call.need().cause()))
        .filter(call -> call.weight() >= NEARLY_AS_MUCH * strongest.weight())
        .findFirst()
        .orElse(strongest);
  }

  /** How many games in 100 half a level more in the skill is worth. */
  private String worth(Call call) {
    double games = context.gamesPerHundred(call.place()).in(call.need().skill());
    return " Half a level more in it is worth about %s in 100.".formatted(games(games));
  }

  private static String games(double games) {
    long whole = Math.round(games);
    return whole < 1 ? "half a game" : whole == 1 ? "1 game" : whole + " games";
  }

  private Call strongest(int place, Map<Skill, Double> load) {
    return load.entrySet().stream()
        .map(
            share -> {
              Need need = context.needs().get(place).of(share.getKey());
              return new Call(place, need, need.value() * share.getValue());
            })
        .max(Comparator.comparingDouble(Call::weight))
        .orElseThrow();
  }

  private String others(List<Call> calls) {
    List<String> named = new ArrayList<>();
    for (Call call : calls.subList(0, Math.min(calls.size(), OTHERS_NAMED))) {
      named.add(
          "%s (%s)"
              .formatted(
                  context.attendees().get(call.place()).name(), call.need().skill().words()));
    }
    return named.isEmpty() ? "" : " Also for " + String.join(" and ", named) + ".";
  }

  String ofWarmUp(Drill drill) {
    return switch (drill.kind()) {
      case GENERAL_WARM_UP -> "Gets hearts, legs and shoulders warm before any ball is struck.";
      case PADDLE_WARM_UP -> "Gets hands and touch ready before anything counts.";
      case VOLLEY_WARM_UP -> "Gets eyes and reactions ready for volleys.";
      case COOPERATIVE, SCORED_GAME, FULL_GAME ->
          throw new IllegalArgumentException(drill.name() + " is no warm-up.");
    };
  }

  String ofYardstick(YardstickTimes.Planned planned) {
    return "Shows where the %s stands, whoever else improves: %s"
        .formatted(planned.yardstick().skill().words(), planned.why());
  }

  String ofWater() {
    return "Water and rest before the next games.";
  }
}
