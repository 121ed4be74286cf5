package rallywright.engine.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
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
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Rally;
import rallywright.engine.score.Score;
import rallywright.engine.score.Scoring;
import rallywright.engine.score.Side;
import rallywright.engine.session.CourtEvent.BlockStarted;
import rallywright.engine.session.CourtEvent.FinalScoreGiven;
import rallywright.engine.session.CourtEvent.Finish;
import rallywright.engine.session.CourtEvent.FirstServerNamed;
import rallywright.engine.session.CourtEvent.RallyPlayed;
import rallywright.engine.session.CourtEvent.Stamp;
import rallywright.engine.session.CourtEvent.Undone;

/** Several phones on one lane: order without clocks, rallies seen twice, and what is in doubt. */
class TwoPhonesTest {

  private static final GameId GAME = new GameId("g1");
  private final List<CourtEvent> arrived = new ArrayList<>();
  private GameFormat format = GameFormat.DRILL_GAME;
  private int made;

  @Test
  void messagesOfOnePhone_arrivingInAnyOrder_addUpToTheSame() {
    for (int i = 0; i < 12; i++) {
      rally("phone 1", i + 1, -1, i % 3 == 1 ? Side.B : Side.A);
    }
    arrived.add(new Undone(stamp("phone 1", 13, -1), arrived.get(11).stamp().id()));
    rally("phone 1", 14, -1, Side.B);
    GameProgress inOrder = game();
    Random random = new Random(5);
    for (int i = 0; i < 50; i++) {
      Collections.shuffle(arrived, random);
      assertThat(game().rallies()).isEqualTo(inOrder.rallies());
      assertThat(game().rallyTimes()).isEqualTo(inOrder.rallyTimes());
    }
  }

  @Test
  void clocks_decadesApart_changeNothing() {
    rally("phone 1", 1, 0, Side.A);
    arrived.add(new RallyPlayed(at(9_000_000_000_000L, "phone 2", 1, 1), GAME, won(Side.B)));
    rally("phone 1", 2, 2, Side.A);
    assertThat(game().rallies()).extracting(Rally::winner).containsExactly(Side.A, Side.B, Side.A);
  }

  @Test
  void rallies_tappedOnBothPhonesAlike_countOnceWithoutDoubt() {
    rally("phone 1", 1, 0, Side.A);
    rally("phone 2", 1, 0, Side.A);
    rally("phone 2", 2, 1, Side.B);
    rally("phone 1", 2, 1, Side.B);
    assertThat(game().score()).isEqualTo(Score.of(1, 1));
    assertThat(progress().disputes()).isEmpty();
  }

  @Test
  void phonesThatDoNotSayTheSame_areShownWithBothScores() {
    rally("phone 1", 1, 0, Side.A);
    rally("phone 1", 2, 0, Side.A);
    rally("phone 2", 1, 0, Side.B);
    assertThat(game().score()).isEqualTo(Score.of(2, 0));
    Dispute dispute = onlyDispute();
    assertThat(dispute.phone()).isEqualTo("phone 2");
    assertThat(dispute.score()).isEqualTo(Score.of(0, 1));
    assertThat(dispute.waiting()).containsExactly(arrived.get(2).stamp().id());
    assertThat(dispute.standing())
        .containsExactly(arrived.get(0).stamp().id(), arrived.get(1).stamp().id());
  }

  @Test
  void dispute_settledForTheOther_countsTheOtherAlone() {
    rally("phone 1", 1, 0, Side.A);
    rally("phone 2", 1, 0, Side.B);
    undo(onlyDispute().standing());
    assertThat(game().score()).isEqualTo(Score.of(0, 1));
    assertThat(progress().disputes()).isEmpty();
  }

  @Test
  void dispute_settledForTheStanding_isGone() {
    rally("phone 1", 1, 0, Side.A);
    rally("phone 2", 1, 0, Side.B);
    undo(onlyDispute().waiting());
    assertThat(game().score()).isEqualTo(Score.of(1, 0));
    assertThat(progress().disputes()).isEmpty();
  }

  @Test
  void sideOut_seenByOnePhoneOnly_isInDoubtThoughNobodyScored() {
    format = GameFormat.DRILL_GAME.withScoring(Scoring.SIDE_OUT_ONE_SERVER);
    rally("phone 1", 1, 0, Side.A);
    rally("phone 2", 1, 0, Side.B);
    assertThat(game().score()).isEqualTo(Score.of(1, 0));
    assertThat(onlyDispute().score()).isEqualTo(Score.of(0, 0));
  }

  @Test
  void entry_madeWithTheOthersKnown_simplyFollows() {
    rally("phone 1", 1, 0, Side.A);
    rally("phone 2", 1, 1, Side.B);
    assertThat(game().score()).isEqualTo(Score.of(1, 1));
    assertThat(progress().disputes()).isEmpty();
  }

  @Test
  void result_givenWithoutKnowingOfRalliesThatCouldLeadToIt_counts() {
    rally("phone 1", 1, 0, Side.A);
    result("phone 2", 1, 0, Score.of(5, 2));
    assertThat(game().score()).isEqualTo(Score.of(5, 2));
    assertThat(progress().disputes()).isEmpty();
  }

  @Test
  void result_thatTheRalliesHavePassed_isInDoubt() {
    for (int i = 1; i <= 3; i++) {
      rally("phone 1", i, 0, Side.B);
    }
    result("phone 2", 1, 0, Score.of(5, 2));
    assertThat(game().score()).isEqualTo(Score.of(0, 3));
    assertThat(onlyDispute().over()).isTrue();
    assertThat(onlyDispute().score()).isEqualTo(Score.of(5, 2));
  }

  @Test
  void ralliesOfAPhone_thatComeAfterTheResultTheyLedTo_areNoDoubt() {
    result("coach", 1, 0, Score.of(5, 2));
    rally("phone 1", 1, 0, Side.A);
    rally("phone 1", 2, 0, Side.B);
    assertThat(game().score()).isEqualTo(Score.of(5, 2));
    assertThat(progress().disputes()).isEmpty();
  }

  @Test
  void twoResults_thatDiffer_areInDoubt_andTheSameResultTwiceIsNot() {
    result("phone 1", 1, 0, Score.of(5, 2));
    result("phone 2", 1, 0, Score.of(5, 2));
    assertThat(progress().disputes()).isEmpty();
    result("phone 3", 1, 0, Score.of(5, 3));
    assertThat(game().score()).isEqualTo(Score.of(5, 2));
    assertThat(onlyDispute().phone()).isEqualTo("phone 3");
  }

  @Test
  void firstServer_namedOtherwiseOnTwoPhones_isInDoubt() {
    arrived.add(new FirstServerNamed(stamp("phone 1", 1, 0), GAME, Side.A));
    arrived.add(new FirstServerNamed(stamp("phone 2", 1, 0), GAME, Side.B));
    assertThat(game().firstServer()).contains(Side.A);
    assertThat(progress().disputes()).hasSize(1);
  }

  @Test
  void block_begunByAPhoneThatDidNotKnowOfALaterOne_doesNotTurnTheSessionBack() {
    arrived.add(new BlockStarted(stamp("phone 1", 1, 0), new BlockId("b1")));
    arrived.add(new BlockStarted(stamp("phone 1", 2, 1), new BlockId("b2")));
    arrived.add(new BlockStarted(stamp("phone 2", 1, 1), new BlockId("b1")));
    assertThat(progress().current()).contains(new BlockId("b2"));
    arrived.add(new BlockStarted(stamp("phone 2", 2, 3), new BlockId("b1")));
    assertThat(progress().current()).contains(new BlockId("b1"));
  }

  @Test
  void desk_knowsAll_andItsResultCounts() {
    rally("phone 1", 1, 0, Side.A);
    arrived.add(
        new FinalScoreGiven(
            new Stamp(id(), new SessionId("s1"), 5, ""), GAME, Score.of(2, 5), Finish.PLAYED_OUT));
    assertThat(game().score()).isEqualTo(Score.of(2, 5));
    assertThat(progress().disputes()).isEmpty();
  }

  private Dispute onlyDispute() {
    assertThat(progress().disputes()).hasSize(1);
    return progress().disputes().get(0);
  }

  private void undo(List<EventId> wrong) {
    for (EventId each : wrong) {
      arrived.add(new Undone(stamp("phone 1", 100 + made, arrived.size()), each));
    }
  }

  private void rally(String phone, long number, long seen, Side winner) {
    arrived.add(new RallyPlayed(stamp(phone, number, seen), GAME, won(winner)));
  }

  private void result(String phone, long number, long seen, Score score) {
    arrived.add(new FinalScoreGiven(stamp(phone, number, seen), GAME, score, Finish.PLAYED_OUT));
  }

  private static Rally won(Side side) {
    return Rally.wonBy(side);
  }

  private Stamp stamp(String phone, long number, long seen) {
    return at(1000L * made, phone, number, seen);
  }

  private Stamp at(long millis, String phone, long number, long seen) {
    return new Stamp(id(), new SessionId("s1"), millis, phone, new PhoneOrder(number, seen));
  }

  private EventId id() {
    made++;
    return new EventId("e" + made);
  }

  private GameProgress game() {
    return progress().game(GAME).orElseThrow();
  }

  private SessionProgress progress() {
    return SessionProgress.of(session(), (block, game) -> format, arrived);
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
            new BlockId("b1"),
            PlannedBlock.Kind.DRILL,
            new DrillKey("dink-game"),
            PlannedBlock.End.LAST_LANE,
            new BlockTime(5, 1),
            List.of(game),
            List.of(List.of()),
            "");
    SessionPlan plan =
        new SessionPlan(60, 1, List.of(new PlayerId("p1"), new PlayerId("p2")), List.of(block));
    return new Session(
        new SessionId("s1"),
        "Tuesday",
        LocalDate.of(2026, 3, 3),
        LocalTime.of(18, 0),
        null,
        null,
        plan,
        Session.State.PLANNED);
  }
}
