package rallywright.paper;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import rallywright.engine.court.Direction;
import rallywright.engine.court.Lane;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.Feed;
import rallywright.engine.drill.Role;
import rallywright.engine.drill.Serving;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.RoundThePost;
import rallywright.engine.score.Side;

/** Scoring and feed: what is usual once for the whole sheet, and at a drill what differs. */
final class ScoringWords {

  private static final String HORN = "At the horn the score stands.";

  private static final String ROUND_THE_POST = "legal ball round the post wins";

  private final List<PlannedBlock> played;
  private final boolean hornForAll;
  private final boolean roundThePostIsUsual;

  private ScoringWords(SheetRequest request) {
    played =
        request.session().plan().blocks().stream()
            .filter(block -> !block.games().isEmpty())
            .toList();
    hornForAll = played.stream().allMatch(ScoringWords::endsByHorn);
    List<RoundThePost> across = played.stream().flatMap(block -> cross(request, block)).toList();
    long counting = across.stream().filter(RoundThePost.LEGAL_ON_FULL_COURT::equals).count();
    roundThePostIsUsual = counting > across.size() - counting;
  }

  static ScoringWords of(SheetRequest request) {
    return new ScoringWords(request);
  }

  private static Stream<RoundThePost> cross(SheetRequest request, PlannedBlock block) {
    return request.drills().drills().apply(block.drill()).flatMap(Drill::scored).stream()
        .flatMap(game -> acrossCourt(game, GameRows.lanes(block)).stream());
  }

  /** What holds unless a drill says otherwise; empty without games. */
  String usual() {
    if (played.isEmpty()) {
      return "";
    }
    return "Unless a drill says otherwise: "
        + GameFormat.DRILL_GAME.label()
        + "; the winner of the rally before feeds."
        + (roundThePostIsUsual ? " Cross-court, a " + ROUND_THE_POST + "." : "")
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
    start(game)
        .filter(words -> !alreadySaid.test(words.substring(0, (words + ",").indexOf(','))))
        .ifPresent(words -> sentences.add(firstUpper(words) + "."));
    if (!roundThePostIsUsual
        && acrossCourt(game, lanes).contains(RoundThePost.LEGAL_ON_FULL_COURT)
        && !alreadySaid.test(ROUND_THE_POST)) {
      sentences.add("A " + ROUND_THE_POST + ".");
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
    boolean even = game.layout().isEven();
    return switch (game.feed().by()) {
      case RALLY_WINNER -> Optional.empty();
      case FIRST_ROLE -> even ? Optional.of("feed: the near player") : Optional.empty();
      case SECOND_ROLE -> even ? Optional.of("feed: the far player") : Optional.empty();
      case IN_TURN, SERVER -> Optional.of("feed: " + game.feed().by().words());
    };
  }

  /** What a role does beside its place: whether it starts every rally; empty where it does not. */
  static String starting(Drill drill, Side side) {
    Feed.By its = side == Side.A ? Feed.By.FIRST_ROLE : Feed.By.SECOND_ROLE;
    boolean feeds =
        drill
            .scored()
            .filter(game -> game.serving() == Serving.FEED && game.feed().by() == its)
            .isPresent();
    boolean serves =
        drill.layout().filter(each -> each.sides().of(side).role() == Role.SERVER).isPresent();
    return !feeds ? "" : serves ? ", serves" : ", feeds";
  }

  /** What to add to a direction in which the usual ball round the post does not count. */
  String exceptRoundThePost(Drill drill, Collection<Lane> lanes) {
    return roundThePostIsUsual
            && drill
                .scored()
                .filter(game -> acrossCourt(game, lanes).contains(RoundThePost.NOT_ALLOWED))
                .isPresent()
        ? ", no ball round the post"
        : "";
  }

  private static List<RoundThePost> acrossCourt(DrillForm.Scored game, Collection<Lane> lanes) {
    return lanes.stream()
        .map(Lane::direction)
        .filter(Direction::isCross)
        .map(game::roundThePostIn)
        .toList();
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
