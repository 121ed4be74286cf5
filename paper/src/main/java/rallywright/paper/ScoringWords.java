package rallywright.paper;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import rallywright.engine.court.Lane;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.Layout;
import rallywright.engine.drill.Role;
import rallywright.engine.drill.Serving;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.RoundThePost;

/** Scoring and feed: what is usual once for the whole sheet, and at a drill what differs. */
final class ScoringWords {

  private static final String HORN = "At the horn the score stands.";

  private final boolean anyGames;
  private final boolean hornForAll;

  private ScoringWords(boolean anyGames, boolean hornForAll) {
    this.anyGames = anyGames;
    this.hornForAll = hornForAll;
  }

  static ScoringWords of(SessionPlan plan) {
    List<PlannedBlock> played =
        plan.blocks().stream().filter(block -> !block.games().isEmpty()).toList();
    return new ScoringWords(
        !played.isEmpty(), played.stream().allMatch(ScoringWords::endsByHorn));
  }

  /** What holds unless a drill says otherwise; empty without games. */
  String usual() {
    if (!anyGames) {
      return "";
    }
    return "Unless a drill says otherwise: "
        + GameFormat.DRILL_GAME.label()
        + "; the winner of the rally before feeds."
        + (hornForAll ? " " + HORN : "");
  }

  /** What differs from the usual, or what the usual leaves open, as short sentences. */
  String differing(Drill drill, Collection<Lane> lanes, List<PlannedBlock> blocks) {
    Optional<DrillForm.Scored> scored = drill.scored();
    if (scored.isEmpty()) {
      return "";
    }
    DrillForm.Scored game = scored.get();
    Predicate<String> alreadySaid = words -> lower(drill.rule()).contains(lower(words));
    List<String> sentences = new ArrayList<>();
    String format = game.format().label();
    if (!format.equals(GameFormat.DRILL_GAME.label())) {
      sentences.add(firstUpper(format) + ".");
    }
    start(game).filter(words -> !alreadySaid.test(words.split(",", 2)[0])).ifPresent(
        words -> sentences.add(firstUpper(words) + "."));
    if (countsRoundThePost(game, lanes) && !alreadySaid.test("ball round the post")) {
      sentences.add("A legal ball round the post wins.");
    }
    if (!hornForAll && blocks.stream().anyMatch(ScoringWords::endsByHorn)) {
      sentences.add(HORN);
    }
    return String.join(" ", sentences);
  }

  /** How rallies start where the winner of the rally before does not feed. */
  private static Optional<String> start(DrillForm.Scored game) {
    if (game.serving() != Serving.FEED) {
      return Optional.of(game.serving().words());
    }
    Layout layout = game.layout();
    return switch (game.feed().by()) {
      case RALLY_WINNER -> Optional.empty();
      case FIRST_ROLE -> Optional.of(feeder(layout.sides().a().role(), "near"));
      case SECOND_ROLE -> Optional.of(feeder(layout.sides().b().role(), "far"));
      case IN_TURN, SERVER -> Optional.of("feed: " + game.feed().by().words());
    };
  }

  private static String feeder(Role role, String end) {
    return switch (role) {
      case EVEN -> "feed: the " + end + " player";
      case UP, MID, BACK -> "feed: the " + role.words() + " player";
      case SERVER, RECEIVER -> "feed: the " + role.words();
    };
  }

  private static boolean countsRoundThePost(DrillForm.Scored game, Collection<Lane> lanes) {
    return lanes.stream()
        .anyMatch(
            lane -> game.roundThePostIn(lane.direction()) == RoundThePost.LEGAL_ON_FULL_COURT);
  }

  private static boolean endsByHorn(PlannedBlock block) {
    return block.end() == PlannedBlock.End.BY_CLOCK;
  }

  private static String lower(String words) {
    return words.toLowerCase(Locale.ROOT);
  }

  private static String firstUpper(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
