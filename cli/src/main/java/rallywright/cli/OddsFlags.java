package rallywright.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import rallywright.cli.OddsQuestion.Given;
import rallywright.cli.OddsQuestion.Shape;
import rallywright.engine.odds.RallyChances;
import rallywright.engine.odds.RallyChances.PairChances;
import rallywright.engine.quantity.Probability;
import rallywright.engine.score.EndChange;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Goal;
import rallywright.engine.score.Partner;
import rallywright.engine.score.Places;
import rallywright.engine.score.Score;
import rallywright.engine.score.Scoring;
import rallywright.engine.score.Serve;
import rallywright.engine.score.ServerNumber;
import rallywright.engine.score.Side;
import rallywright.engine.score.WinBy;

/** The options of {@code odds} as typed, turned into a question or refused in one sentence. */
record OddsFlags(Game game, Rallies rallies, Live live, @Nullable String fair) {

  private static final Pattern SCORE = Pattern.compile("(\\d{1,4})-(\\d{1,4})");
  private static final Pattern SERVER = Pattern.compile("([ab])([12])");

  /** How the game is counted. */
  record Game(
      @Nullable String scoring,
      @Nullable String target,
      @Nullable String winBy,
      @Nullable String cap,
      @Nullable String lastPoint) {}

  /** The chances of a rally. */
  record Rallies(@Nullable String serveA, @Nullable String serveB, @Nullable String rally) {}

  /** Where the game stands. */
  record Live(@Nullable String score, @Nullable String serving) {}

  OddsQuestion question() {
    Scoring scoring = scoring();
    List<Probability> a = chances("--serve-a", rallies.serveA(), scoring);
    List<Probability> b = chances("--serve-b", rallies.serveB(), scoring);
    GameFormat format = format(scoring);
    Score score = score(format);
    Serve serve = serve(scoring, score);
    boolean fromStart = score.equals(Score.LOVE_ALL);
    Function<Score, Serve> firstServe =
        start ->
            fromStart && serve.number() == ServerNumber.FIRST
                ? new Serve(serve.side(), serve.number(), Partner.onRightAt(start.of(serve.side())))
                : fromStart ? serve : format.firstServe();
    Optional<Probability> wish = wish();
    if (a.isEmpty()) {
      RallyChances one = RallyChances.ofRally(Chance.one("--rally", rallies.rally()));
      List<Given> given = List.of(new Given("rally", List.of(0), Shape.ONE_NUMBER));
      return new OddsQuestion(format, one, given, score, serve, wish, firstServe);
    }
    boolean named = a.size() + b.size() > 2;
    RallyChances chances =
        named ? RallyChances.ofServers(pair(a), pair(b)) : RallyChances.ofServe(a.get(0), b.get(0));
    List<Given> given =
        List.of(
            given("serveA", a, named ? List.of(0, 1) : List.of(0)),
            given("serveB", b, named ? List.of(2, 3) : List.of(1)));
    return new OddsQuestion(format, chances, given, score, serve, wish, firstServe);
  }

  private static Given given(String name, List<Probability> typed, List<Integer> places) {
    return new Given(name, places, typed.size() == 2 ? Shape.ONE_EACH : Shape.ONE_NUMBER);
  }

  private static PairChances pair(List<Probability> chances) {
    return new PairChances(chances.get(0), chances.get(chances.size() - 1));
  }

  private Scoring scoring() {
    String lastPoint = game.lastPoint() == null ? "" : lower(game.lastPoint());
    if (!List.of("", "anyone", "server").contains(lastPoint)) {
      throw new WrongInput(
          "The last point (%s) must be anyone or server. Maybe --last-point server, the option of"
                  .formatted(game.lastPoint())
              + " 2025.");
    }
    Scoring scoring =
        switch (lower(required("--scoring", game.scoring(), "side-out-pairs"))) {
          case "every-rally" ->
              lastPoint.equals("server") ? Scoring.RALLY_2025 : Scoring.EVERY_RALLY;
          case "side-out" -> Scoring.SIDE_OUT_ONE_SERVER;
          case "side-out-pairs" -> Scoring.SIDE_OUT_TWO_SERVERS;
          default ->
              throw new WrongInput(
                  ("The scoring (%s) must be every-rally, side-out or side-out-pairs. Maybe"
                          + " side-out-pairs for doubles in which only the server scores.")
                      .formatted(game.scoring()));
        };
    if (lastPoint.equals("anyone") && !scoring.everyRallyScores()) {
      throw new WrongInput(
          "The last point (anyone) must be the server's when only the server scores. Maybe leave"
              + " --last-point out.");
    }
    return scoring;
  }

  private GameFormat format(Scoring scoring) {
    int target = whole("--target", required("--target", game.target(), "11"));
    int lead = game.winBy() == null ? 1 : whole("--win-by", game.winBy());
    if (lead != 1 && lead != 2) {
      throw new WrongInput(
          "The lead of --win-by (%d) must be 1 or 2. Maybe --win-by 2.".formatted(lead));
    }
    Goal goal = Goal.firstTo(target).withWinBy(lead == 1 ? WinBy.ONE : WinBy.TWO);
    if (game.cap() != null) {
      goal = goal.withCap(whole("--cap", game.cap()));
    }
    Places places = scoring.hasTwoServers() ? Places.PAIRS : Places.SINGLES;
    return new GameFormat(scoring, places, goal, Score.LOVE_ALL, Side.A, EndChange.NONE);
  }

  private List<Probability> chances(String name, @Nullable String typed, Scoring scoring) {
    boolean oneChance = rallies.rally() != null;
    if (oneChance && !scoring.everyRallyScores()) {
      throw new WrongInput(
          "The option --rally must go with every-rally scoring. Maybe --serve-a and --serve-b, the"
              + " chances of the serving side.");
    }
    if (oneChance && typed != null) {
      throw new WrongInput(
          "The options --rally and %s must not stand together. Maybe leave --rally out."
              .formatted(name));
    }
    if (oneChance) {
      return List.of();
    }
    List<Probability> chances = Chance.oneOrTwo(name, required(name, typed, "0.45"));
    if (chances.size() == 2 && !scoring.hasTwoServers()) {
      throw new WrongInput(
          "The two chances of %s (%s) must go with side-out-pairs. Maybe one chance, with a point:"
                  .formatted(name, typed)
              + " 0.45.");
    }
    return chances;
  }

  private Score score(GameFormat format) {
    if (live.score() == null) {
      return Score.LOVE_ALL;
    }
    Matcher parts = SCORE.matcher(live.score().strip());
    if (!parts.matches()) {
      throw new WrongInput(
          "The score (%s) must be two whole numbers, A's first. Maybe --score 7-9."
              .formatted(live.score()));
    }
    Score score = Score.of(Integer.parseInt(parts.group(1)), Integer.parseInt(parts.group(2)));
    if (!format.goal().isOpenAt(score)) {
      throw new WrongInput(
          "The score (%s) must be one at which the game (%s) goes on. Maybe it is the final score."
              .formatted(score, format.goal().label()));
    }
    return score;
  }

  private Serve serve(Scoring scoring, Score score) {
    if (live.serving() == null) {
      boolean serverMatters = rallies.rally() == null || scoring == Scoring.RALLY_2025;
      if (live.score() != null && serverMatters) {
        throw new WrongInput(
            "The score (%s) must come with its server. Maybe --serving a1.".formatted(score));
      }
      return new Serve(
          Side.A,
          scoring.hasTwoServers() ? ServerNumber.SECOND : ServerNumber.FIRST,
          Partner.RIGHT_AT_EVEN);
    }
    Matcher parts = SERVER.matcher(lower(live.serving()));
    boolean second = parts.matches() && parts.group(2).equals("2");
    if (!parts.matches() || (second && !scoring.hasTwoServers())) {
      throw new WrongInput(
          "The server (%s) must be %s. Maybe --serving a1."
              .formatted(
                  live.serving(),
                  scoring.hasTwoServers() ? "a1, a2, b1 or b2" : "a1 or b1, one server a side"));
    }
    Side side = parts.group(1).equals("a") ? Side.A : Side.B;
    if (!second) {
      return new Serve(side, ServerNumber.FIRST, Partner.onRightAt(score.of(side)));
    }
    boolean start = score.equals(Score.LOVE_ALL);
    Partner right = Partner.onRightAt(score.of(side));
    return new Serve(side, ServerNumber.SECOND, start ? right : right.other());
  }

  private Optional<Probability> wish() {
    if (fair == null) {
      return Optional.empty();
    }
    Probability wish = Chance.one("--fair", fair);
    if (!(wish.value() > 0 && wish.value() < 1)) {
      throw new WrongInput(
          "The wish of --fair (%s) must lie between 0 and 1. Maybe --fair 0.5.".formatted(fair));
    }
    return Optional.of(wish);
  }

  private static int whole(String name, String typed) {
    if (!typed.strip().matches("-?\\d{1,6}")) {
      throw new WrongInput(
          "The value of %s (%s) must be a whole number. Maybe %s 11.".formatted(name, typed, name));
    }
    return Integer.parseInt(typed.strip());
  }

  private static String required(String name, @Nullable String typed, String example) {
    if (typed == null) {
      throw new WrongInput(
          "The option %s is missing; it must be given. Maybe %s %s."
              .formatted(name, name, example));
    }
    return typed;
  }

  private static String lower(String typed) {
    return typed.strip().toLowerCase(Locale.ROOT);
  }
}
