package rallywright.web.drills;

import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import rallywright.engine.court.Direction;
import rallywright.engine.court.HalfArea;
import rallywright.engine.court.Spot;
import rallywright.engine.drill.Demand;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.DrillSide;
import rallywright.engine.drill.Feed;
import rallywright.engine.drill.Layout;
import rallywright.engine.drill.Role;
import rallywright.engine.drill.Serving;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.SkillWeights;
import rallywright.engine.drill.Yardstick;
import rallywright.engine.score.Ending.Stroke;
import rallywright.engine.score.RoundThePost;
import rallywright.web.page.Units;

/** What a drill's page says, in a coach's words. */
final class DrillWords {

  private DrillWords() {}

  /** Skills and sort in a few words, for a list. */
  static String remark(Drill drill) {
    return drill.layout().isEmpty() || drill.kind().isWarmUp()
        ? "%s · %s min".formatted(drill.intensity().words(), minutes(drill))
        : "%s · %s"
            .formatted(
                words(drill.skills(), Skill::words),
                drill.layout().get().isEven() ? "both the same" : "two roles");
  }

  /** The facts beside a drill's purpose. */
  static Map<String, String> facts(Drill drill) {
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("Sort", drill.kind().words());
    facts.put("Place", drill.progression().words());
    drill.layout().ifPresent(layout -> facts.put("Players", layout.players() + " on a lane"));
    if (!drill.directions().isEmpty()) {
      facts.put(
          "Directions",
          drill.directions().stream().map(Direction::words).collect(Collectors.joining("; ")));
    }
    facts.put("Work", drill.intensity().words());
    if (!drill.demands().isEmpty()) {
      facts.put("Asks for", words(drill.demands(), Demand::words));
    }
    facts.put(
        "Usual length",
        drill
            .scored()
            .map(game -> UsualLength.of(game).words())
            .orElseGet(() -> minutes(drill) + " min"));
    facts.put("Bring", bring(drill.advice().equipment()));
    return facts;
  }

  static Map<String, String> facts(Yardstick yardstick) {
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("Measures", yardstick.skill().words());
    facts.put("Balls", String.valueOf(yardstick.balls()));
    facts.put(
        "Usual length",
        "about %d min for one player".formatted(Math.round(yardstick.minutesForOne())));
    facts.put("Bring", bring(yardstick.advice().equipment()));
    return facts;
  }

  /** How a game is counted. */
  static Map<String, String> scoring(DrillForm.Scored game) {
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("Score", game.format().label());
    facts.put("First ball", "%s (%s)".formatted(game.feed().how(), feeder(game)));
    if (game.serving() != Serving.FEED) {
      facts.put("Where to stand", game.serving().words());
    }
    if (game.roundThePost() == RoundThePost.LEGAL_ON_FULL_COURT) {
      facts.put(
          "Round the post",
          "played cross-court, a ball "
              + game.roundThePost().label()
              + ", wins the rally when it lands in the court");
    }
    facts.put("Between equals", balance(game));
    return facts;
  }

  private static String feeder(DrillForm.Scored game) {
    Feed.By by = game.feed().by();
    return switch (by) {
      case FIRST_ROLE -> "always by " + player(game.layout().sides().a().role());
      case SECOND_ROLE -> "always by " + player(game.layout().sides().b().role());
      case RALLY_WINNER, IN_TURN, SERVER -> "by " + by.words();
    };
  }

  private static String balance(DrillForm.Scored game) {
    if (game.layout().isEven()) {
      return "both win as many rallies, because both do the same";
    }
    double chance = game.advantage().chanceBetweenEquals();
    return "%s wins about %d rallies in 20 (%s; your club's scores correct it)"
        .formatted(
            player(game.layout().sides().a().role()),
            Math.round(chance * 20),
            game.advantage().source().words());
  }

  private static String player(Role role) {
    return switch (role) {
      case UP, MID, BACK -> "the " + role.words() + " player";
      case EVEN -> "either player";
      case SERVER, RECEIVER -> "the " + role.words();
    };
  }

  /** What a role may do. */
  static Map<String, String> side(Layout layout, DrillSide side, Units units) {
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("Starts", spot(side.stands().get(0).in(layout.directions().get(0)), units));
    facts.put(
        "In bounds", area(side.inBounds().in(layout.directions().get(0)), units) + " of this side");
    facts.put("May play", words(side.strokes(), DrillWords::stroke));
    facts.put("Movement", side.advance().words());
    facts.put("Trains", weights(side.weights()));
    return facts;
  }

  private static String weights(SkillWeights weights) {
    return weights.shares().entrySet().stream()
        .sorted(Map.Entry.<Skill, Double>comparingByValue(Comparator.reverseOrder()))
        .map(
            share ->
                "%s %d %%".formatted(share.getKey().words(), Math.round(share.getValue() * 100)))
        .collect(Collectors.joining(", "));
  }

  static String spot(Spot spot, Units units) {
    return "%s from the net, %s from the centre line"
        .formatted(units.length(spot.fromNet().metres()), units.length(spot.fromCentre().metres()));
  }

  static String area(HalfArea area, Units units) {
    if (area.equals(HalfArea.KITCHEN)) {
      return "the kitchen";
    }
    if (area.equals(HalfArea.WHOLE_HALF)) {
      return "the whole half";
    }
    if (area.equals(HalfArea.BEHIND_THE_KITCHEN)) {
      return "behind the kitchen";
    }
    double nearest = area.corners().stream().mapToDouble(c -> c.fromNet().metres()).min().orElse(0);
    double farthest =
        area.corners().stream().mapToDouble(c -> c.fromNet().metres()).max().orElse(0);
    double inner =
        area.corners().stream().mapToDouble(c -> c.fromCentre().metres()).min().orElse(0);
    String depth = "%s to %s from the net".formatted(units.length(nearest), units.length(farthest));
    return inner == 0
        ? depth
        : depth + ", %s and more from the centre line".formatted(units.length(inner));
  }

  private static String stroke(Stroke stroke) {
    return stroke.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static String bring(List<String> equipment) {
    return equipment.isEmpty() ? "paddles and a ball" : String.join("; ", equipment);
  }

  private static String minutes(Drill drill) {
    return String.valueOf(Math.round(drill.minutes().orElse(0)));
  }

  private static <T> String words(Collection<T> values, Function<T, String> word) {
    return values.stream().map(word).collect(Collectors.joining(", "));
  }

  /** The skills that some drill on a lane trains, for the filter. */
  static Set<Skill> skills(List<Drill> drills) {
    return drills.stream()
        .flatMap(drill -> drill.skills().stream())
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Skill.class)));
  }
}
