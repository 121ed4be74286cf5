package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rallywright.engine.club.PlayerId;
import rallywright.engine.court.CourtLane;
import rallywright.engine.court.Lane;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.Role;
import rallywright.engine.plan.BlockId;
import rallywright.engine.plan.BlockTime;
import rallywright.engine.plan.GameId;
import rallywright.engine.plan.HeadStart;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.plan.Seat;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.score.EndChange;
import rallywright.engine.score.FinalScoreCheck;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.GameState;
import rallywright.engine.score.Goal;
import rallywright.engine.score.Partner;
import rallywright.engine.score.Places;
import rallywright.engine.score.Rally;
import rallywright.engine.score.Score;
import rallywright.engine.score.ScoreRefusal;
import rallywright.engine.score.Scoring;
import rallywright.engine.score.ServiceCourt;
import rallywright.engine.score.Side;
import rallywright.engine.score.WinBy;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.Dispute;
import rallywright.engine.session.EventId;
import rallywright.engine.session.GameProgress;
import rallywright.engine.session.PhoneOrder;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;
import rallywright.engine.session.SessionProgress;
import rallywright.store.json.EventJson;
import tools.jackson.databind.json.JsonMapper;

/**
 * The phone's scoring against the engine: random games of every format with head starts, undo,
 * bonus endings, results, time called and late first servers, by one phone or by two that know more
 * or less of each other, in the middle of a game or at its end; replayed in the real browser and
 * compared exactly.
 */
class ScoringTwinIT {

  private static final int GAMES = 5000;
  private static final int BATCH = 500;
  private static final int BEYOND = 4;
  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final GameId GAME = new GameId("g");

  private static final String REPLAY =
      """
      async (games) => {
        const score = await import('/js/oncourt/score.js');
        const fold = await import('/js/oncourt/fold.js');
        return games.map(({ format: text, events, typed }) => {
          const format = JSON.parse(text);
          const blocks = [{ games: [{ id: 'g', format }] }];
          const session = fold.foldSession(blocks, events.map((each) => JSON.parse(each)));
          const view = session.games.get('g');
          const doubts = session.disputes.map(({ phone, score: shown, over, waiting, standing }) =>
            [phone, shown.join('-'), over, waiting.map((each) => each.id).join(' '),
              standing.map((each) => each.id).join(' ')].join(', ')).join(' | ');
          const over = view.status === 'PLAYED_OUT' || view.status === 'TIME_CALLED';
          const s = view.state;
          const serve = s === null ? '-' : [score.call(s, over), s.server, s.number, s.partner,
            score.serverCourt(s), score.receiver(s), s.changeOfEnds,
            ...['A', 'B'].flatMap((side) => ['RIGHT_AT_EVEN', 'LEFT_AT_EVEN']
              .map((partner) => score.courtOf(s, side, partner)))].join(' ');
          const finals = ['A', 'B'].map((side) => score.finals(format, side, %d)
            .map((each) => each.join('-')).join(' ')).join(' | ');
          return [view.status, view.score.join('-'), view.rallies, view.firstServer ?? '-',
            view.last?.id ?? '-', doubts, serve, finals,
            score.refusal(format, typed.score, typed.time) ?? '-'].join('; ');
        });
      }
      """
          .formatted(BEYOND);

  private final Random random = new Random(20261125);

  @Test
  void phone_replayingRandomGames_standsWhereTheEngineStands(@TempDir Path data) {
    try (StartedProgram program = StartedProgram.serve(data);
        Browsers browsers = new Browsers()) {
      Page page = browsers.phone().newPage();
      page.navigate(program.address() + "/court");
      int undone = 0;
      int doubted = 0;
      for (int done = 0; done < GAMES; done += BATCH) {
        List<Map<String, Object>> sent = new ArrayList<>();
        List<String> expected = new ArrayList<>();
        for (int i = 0; i < BATCH; i++) {
          Vector vector = vector();
          sent.add(vector.sent());
          expected.add(vector.expected());
          undone += vector.undone();
          doubted += vector.doubted();
        }
        assertThat((List<?>) page.evaluate(REPLAY, sent)).isEqualTo(expected);
      }
      assertThat(undone).as("undos among the events").isGreaterThan(GAMES);
      assertThat(doubted).as("games in doubt").isGreaterThan(GAMES / 20);
    }
  }

  private record Vector(Map<String, Object> sent, String expected, int undone, int doubted) {}

  private Vector vector() {
    GameFormat format = format();
    List<CourtEvent> events = events(format);
    Score typed = Score.of(random.nextInt(26), random.nextInt(26));
    boolean time = random.nextInt(4) == 0;
    Map<String, Object> sent = new LinkedHashMap<>();
    sent.put("format", JSON.writeValueAsString(wire(format)));
    sent.put("events", events.stream().map(EventJson::write).toList());
    sent.put("typed", Map.of("score", List.of(typed.a(), typed.b()), "time", time));
    SessionProgress progress = SessionProgress.of(session(), (block, game) -> format, events);
    GameProgress game = progress.game(GAME).orElseThrow();
    FinalScoreCheck check = FinalScoreCheck.of(format);
    String refusal =
        check
            .refusalOf(typed, time ? GameState.Clock.TIME_CALLED : GameState.Clock.RUNNING)
            .map(ScoreRefusal::reason)
            .map(Enum::name)
            .orElse("-");
    int undone = (int) events.stream().filter(CourtEvent.Undone.class::isInstance).count();
    String expected = words(game, progress.disputes()) + "; " + finals(check) + "; " + refusal;
    return new Vector(sent, expected, undone, progress.disputes().size());
  }

  private static String words(GameProgress game, List<Dispute> disputes) {
    return "%s; %s; %s; %s; %s; %s; %s"
        .formatted(
            game.status(),
            game.score(),
            game.rallies().size(),
            game.firstServer().map(Enum::name).orElse("-"),
            game.lastEvent().map(EventId::value).orElse("-"),
            disputes.stream().map(ScoringTwinIT::doubt).collect(Collectors.joining(" | ")),
            game.state().map(state -> serve(state, game)).orElse("-"));
  }

  private static String doubt(Dispute dispute) {
    return "%s, %s, %s, %s, %s"
        .formatted(
            dispute.phone(),
            dispute.score(),
            dispute.over(),
            ids(dispute.waiting()),
            ids(dispute.standing()));
  }

  private static String ids(List<EventId> ids) {
    return ids.stream().map(EventId::value).collect(Collectors.joining(" "));
  }

  private static String serve(GameState state, GameProgress game) {
    List<String> parts = new ArrayList<>();
    parts.add(game.isOver() ? state.score().toString() : state.call());
    parts.add(state.serve().side().name());
    parts.add(String.valueOf(state.serve().number().called()));
    parts.add(state.serve().server().name());
    parts.add(state.serverCourt().name());
    parts.add(state.receiver().name());
    parts.add(String.valueOf(state.changeOfEnds() == GameState.ChangeOfEnds.CHANGE_NOW));
    for (Side side : Side.values()) {
      for (Partner partner : Partner.values()) {
        parts.add(state.courtOf(side, partner).name());
      }
    }
    return String.join(" ", parts);
  }

  private static String finals(FinalScoreCheck check) {
    var possible = check.possible(BEYOND).map(list -> list.stream().map(Score::toString).toList());
    return String.join(" ", possible.a()) + " | " + String.join(" ", possible.b());
  }

  private List<CourtEvent> events(GameFormat format) {
    List<CourtEvent> events = new ArrayList<>();
    int length = random.nextInt(60);
    boolean two = random.nextInt(3) == 0;
    for (int i = 0; i < length; i++) {
      int kind = random.nextInt(100);
      CourtEvent.Stamp stamp = stamp(i, two);
      Side side = random.nextBoolean() ? Side.A : Side.B;
      if (kind < 12 && !events.isEmpty()) {
        EventId last =
            events.get(events.size() - 1 - random.nextInt(Math.min(3, events.size()))).stamp().id();
        events.add(new CourtEvent.Undone(stamp, last));
      } else if (kind < 14) {
        events.add(new CourtEvent.FirstServerNamed(stamp, GAME, side));
      } else if (kind < 15) {
        events.add(new CourtEvent.TimeCalled(stamp, GAME));
      } else if (kind < 16) {
        List<Score> finals = FinalScoreCheck.of(format).possible(BEYOND).of(side);
        Score score = finals.get(random.nextInt(finals.size()));
        events.add(
            new CourtEvent.FinalScoreGiven(stamp, GAME, score, CourtEvent.Finish.PLAYED_OUT));
      } else if (kind < 18 && !events.isEmpty()) {
        events.add(events.get(random.nextInt(events.size())));
      } else {
        events.add(new CourtEvent.RallyPlayed(stamp, GAME, rally(side)));
      }
    }
    return events;
  }

  private Rally rally(Side side) {
    Rally.Bonus bonus = random.nextInt(6) == 0 ? Rally.Bonus.ROUND_THE_POST : Rally.Bonus.NONE;
    return new Rally(side, bonus, Optional.empty());
  }

  /** One phone, or two that mostly know all but the last few events; some overtake each other. */
  private CourtEvent.Stamp stamp(int place, boolean two) {
    String phone = two && random.nextBoolean() ? "phone 2" : "phone 1";
    int number = random.nextInt(10) == 0 ? Math.max(1, place - 2) : place + 1;
    int seen = two && random.nextInt(4) == 0 ? Math.max(0, place - random.nextInt(8)) : place;
    return new CourtEvent.Stamp(
        new EventId("e" + place),
        new SessionId("s"),
        place,
        phone,
        two ? new PhoneOrder(number, seen) : PhoneOrder.UNKNOWN);
  }

  private GameFormat format() {
    int target = 1 + random.nextInt(21);
    WinBy winBy = random.nextBoolean() ? WinBy.ONE : WinBy.TWO;
    Goal goal = Goal.firstTo(target).withWinBy(winBy);
    int shape = random.nextInt(5);
    if (shape == 0) {
      goal = goal.withCap(target + random.nextInt(5));
    } else if (shape == 1) {
      goal = Goal.unequal(target, 1 + random.nextInt(21));
    }
    Scoring[] ways = Scoring.values();
    Scoring scoring = ways[random.nextInt(ways.length)];
    int a = goal.targets().a();
    int b = goal.targets().b();
    Score start =
        switch (random.nextInt(3)) {
          case 0 -> Score.of(random.nextInt(a), 0);
          case 1 -> Score.of(0, random.nextInt(b));
          default -> Score.LOVE_ALL;
        };
    Side first = random.nextBoolean() ? Side.A : Side.B;
    EndChange ends = random.nextBoolean() ? EndChange.NONE : EndChange.AT_HALF;
    return new GameFormat(scoring, places(scoring), goal, start, first, ends);
  }

  private Places places(Scoring scoring) {
    boolean pairs =
        scoring == Scoring.SIDE_OUT_TWO_SERVERS
            || (scoring != Scoring.SIDE_OUT_ONE_SERVER && random.nextBoolean());
    if (pairs) {
      return Places.PAIRS;
    }
    ServiceCourt a = random.nextBoolean() ? ServiceCourt.EVEN : ServiceCourt.ODD;
    ServiceCourt b = random.nextBoolean() ? ServiceCourt.EVEN : ServiceCourt.ODD;
    return random.nextBoolean() ? Places.HALF_COURT_BY_SCORE : Places.fixedLane(a, b);
  }

  private static Map<String, Object> wire(GameFormat format) {
    Map<String, Object> out = new LinkedHashMap<>();
    OptionalInt cap = format.goal().cap();
    boolean fixed = format.places() instanceof Places.FixedLane;
    boolean pairs = format.places() instanceof Places.Pairs;
    out.put("scoring", format.scoring().name());
    out.put("places", fixed ? "FIXED_LANE" : pairs ? "PAIRS" : "BY_SCORE");
    out.put(
        "courts",
        format.places() instanceof Places.FixedLane lane
            ? List.of(lane.courts().a().name(), lane.courts().b().name())
            : null);
    out.put("targets", List.of(format.goal().targets().a(), format.goal().targets().b()));
    out.put("winBy", format.goal().winBy().points());
    out.put("cap", cap.isPresent() ? cap.getAsInt() : null);
    out.put("start", List.of(format.start().a(), format.start().b()));
    out.put("firstServer", format.firstServer().name());
    out.put("ends", format.ends().name());
    return out;
  }

  private static Session session() {
    PlannedGame game =
        new PlannedGame(
            GAME,
            1,
            new CourtLane(1, Lane.STRAIGHT_RIGHT),
            new Seat(Role.EVEN, List.of(new PlayerId("p1"))),
            new Seat(Role.EVEN, List.of(new PlayerId("p2"))),
            HeadStart.NONE);
    PlannedBlock block =
        new PlannedBlock(
            new BlockId("b"),
            PlannedBlock.Kind.DRILL,
            new DrillKey("dink-game"),
            PlannedBlock.End.LAST_LANE,
            new BlockTime(5, 1),
            List.of(game),
            List.of(List.of()),
            "");
    SessionPlan plan = new SessionPlan(60, 1, List.of(new PlayerId("p1")), List.of(block));
    return new Session(
        new SessionId("s"),
        "Random",
        LocalDate.of(2026, 3, 3),
        LocalTime.NOON,
        null,
        null,
        plan,
        Session.State.RUNNING);
  }
}
