package rallywright.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rallywright.engine.club.Limit;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.SkillGroup;
import rallywright.engine.rotation.Pairing;
import rallywright.engine.rotation.RotationAnswer;
import rallywright.engine.rotation.RotationGame;
import rallywright.engine.rotation.RotationSearch;
import rallywright.engine.rotation.RotationWish;
import rallywright.engine.rotation.SearchEffort;

/** Each wish that cannot be met is answered by a sentence that says what to change. */
class ImpossibleWishTest {

  private static final List<Attendee> FOUR = ToyDrills.players(4);
  private static final SessionWish WISH = SessionWish.of(90, 2);

  private static PlanProblem problem(List<Attendee> players, SessionWish wish) {
    return PlanProblem.of(players, ToyDrills.all(), wish);
  }

  private static PlanProblem asking(Requests requests) {
    return problem(FOUR, WISH.withRequests(requests));
  }

  private static Requests pinned(String drill, int rounds) {
    return Requests.NONE.with(new Slot.Pinned(new DrillKey(drill), Line.CROSS, rounds));
  }

  private static List<Attendee> with(int place, Attendee other) {
    List<Attendee> players = new ArrayList<>(FOUR);
    players.set(place, other);
    return players;
  }

  static Stream<Arguments> sessions() {
    return Stream.concat(numbers(), Stream.concat(pairsOfWishes(), times()));
  }

  private static Stream<Arguments> numbers() {
    List<Attendee> spared =
        FOUR.stream()
            .map(each -> new Attendee(each.id(), each.standing(), Set.of(Limit.EASY_ONLY)))
            .toList();
    List<Drill> hard = new ArrayList<>(ToyDrills.warmUps());
    ToyDrills.all().stream().filter(each -> each.key().value().equals("hands")).forEach(hard::add);
    return Stream.of(
        arguments(problem(List.of(), WISH), "Nobody is there to plan for", "choose who"),
        arguments(problem(ToyDrills.players(1), WISH), "1 player is there", "let the coach play"),
        arguments(problem(ToyDrills.players(41), WISH), "41 players are there", "plan two groups"),
        arguments(problem(FOUR, SessionWish.of(90, 0)), "courts (0)", "Maybe 1."),
        arguments(problem(FOUR, SessionWish.of(90, 13)), "from 1 to 12", "plan two groups"),
        arguments(problem(FOUR, SessionWish.of(9, 1)), "(9 min)", "Maybe 90."),
        arguments(problem(FOUR, SessionWish.of(481, 1)), "(481 min)", "Maybe 90."),
        arguments(
            problem(FOUR, SessionWish.of(10, 1)), "10 minutes are too few: the warm-up", "book"),
        arguments(problem(FOUR, WISH.withConfidence(Double.NaN)), "(NaN)", "nine times in ten"),
        arguments(problem(FOUR, WISH.withMaxHardMinutes(1)), "from 5 to 120", "Maybe 20."),
        arguments(PlanProblem.of(FOUR, hard.subList(3, 4), WISH), "no warm-up", "leave warm-ups"),
        arguments(PlanProblem.of(FOUR, ToyDrills.warmUps(), WISH), "no game", "add a drill"),
        arguments(PlanProblem.of(spared, hard, WISH), "No drill is left", "ease a limit"));
  }

  private static Requests ninePlacesForHands() {
    Requests hands = Requests.NONE;
    for (int i = 0; i < 9; i++) {
      hands = hands.with(new Slot.AnyOf(SkillGroup.HANDS));
    }
    return hands;
  }

  private static Stream<Arguments> pairsOfWishes() {
    List<Drill> needy =
        ToyDrills.all().stream()
            .map(
                each ->
                    each.key().value().equals("dinks") ? ToyDrills.needing(each, "cones") : each)
            .toList();
    SessionWish bare = WISH.withRequests(pinned("dinks", 1).withEquipment(Set.of("balls")));
    Requests tooLong =
        pinned("drops", 8).with(new Slot.Pinned(new DrillKey("drives"), Line.CROSS, 8));
    YardstickWish noTest = new YardstickWish.Named(List.of(new DrillKey("no-test")));
    List<Drill> four = new ArrayList<>(ToyDrills.all());
    four.add(ToyDrills.doubles("doubles", Skill.DINK));
    return Stream.of(
        arguments(
            asking(pinned("dinks", 1).without(new DrillKey("dinks"))),
            "asked for and ruled out at once",
            "take back one"),
        arguments(
            PlanProblem.of(FOUR, needy, bare), "needs cones, which is not at hand", "bring it"),
        arguments(
            problem(FOUR, SessionWish.of(40, 1).withRequests(tooLong)),
            "but 40 are booked",
            "fewer rounds"),
        arguments(asking(pinned("general", 1)), "is a warm-up", "a game"),
        arguments(asking(pinned("nothing", 1)), "unknown", "spelled"),
        arguments(
            PlanProblem.of(ToyDrills.players(3), four, WISH.withRequests(pinned("doubles", 1))),
            "needs 4 players, 3 are there",
            "a drill for fewer"),
        arguments(asking(Requests.NONE.withYardsticks(noTest)), "The test \"no-test\"", "spelled"),
        arguments(asking(ninePlacesForHands()), "9 drills for", "ask for fewer"),
        arguments(
            problem(FOUR.stream().map(each -> each.withWeight(0)).toList(), WISH),
            "all weights are 0",
            "Maybe 1 for everybody"),
        arguments(problem(List.of(FOUR.get(0), FOUR.get(0)), WISH), "is named twice", "take one"));
  }

  private static Stream<Arguments> times() {
    List<Attendee> two = ToyDrills.players(2);
    return Stream.of(
        arguments(
            problem(with(1, FOUR.get(1).during(Stay.from(90))), WISH),
            "P1 comes at minute 90, but the session ends at minute 90",
            "leave the name out"),
        arguments(
            problem(with(1, FOUR.get(1).during(Stay.from(80))), WISH),
            "P1 is there for 10 minutes",
            "15 minutes at least"),
        arguments(
            problem(List.of(two.get(0), two.get(1).during(Stay.from(40))), WISH),
            "From minute 15 to 45 only 1 player is there and warm",
            "begin later"),
        arguments(
            problem(List.of(two.get(0), two.get(1).during(Stay.until(60))), WISH),
            "From minute 60 to 90 only 1 player",
            "end sooner"));
  }

  @ParameterizedTest
  @MethodSource("sessions")
  void session_thatCannotBe_saysWhatToChange(PlanProblem problem, String what, String change) {
    PlanAnswer answer = SessionPlanner.plan(problem);
    assertThat(answer).isInstanceOf(PlanAnswer.Refused.class);
    assertThat(((PlanAnswer.Refused) answer).sentences())
        .anySatisfy(sentence -> assertThat(sentence).contains(what, "Maybe", change).endsWith("."));
  }

  static Stream<Arguments> rotations() {
    RotationWish eight = RotationWish.of(RotationGame.DOUBLES, 2, 6, RotationWish.numbered(8));
    Pairing pair = new Pairing(eight.players().get(0).id(), eight.players().get(1).id());
    return Stream.of(
        arguments(
            RotationWish.of(RotationGame.DOUBLES, 1, 6, List.of()), "There are no players", "who"),
        arguments(
            RotationWish.of(RotationGame.DOUBLES, 3, 6, RotationWish.numbered(8)),
            "courts (3) must be at most 2",
            "Maybe 2"),
        arguments(
            RotationWish.of(RotationGame.DOUBLES, 13, 6, RotationWish.numbered(8)),
            "courts (13) must be 1 to 12",
            "Maybe 2"),
        arguments(
            eight.keepingApart(pair).keepingTogether(pair),
            "both apart and together",
            "drop one wish"));
  }

  @ParameterizedTest
  @MethodSource("rotations")
  void rotation_thatCannotBe_saysWhatToChange(RotationWish wish, String what, String change) {
    RotationAnswer answer =
        RotationSearch.find(
            wish, new SearchEffort(1, 1_000), rallywright.engine.rotation.SearchWatch.PATIENT);
    assertThat(((RotationAnswer.Refused) answer).sentences())
        .anySatisfy(sentence -> assertThat(sentence).contains(what, change));
  }

  @ParameterizedTest
  @MethodSource("courts")
  void courts_moreThanNeeded_areSaidToStayEmpty(int players, int courts, String sentence) {
    PlanAnswer.Planned planned =
        ToyDrills.planned(problem(ToyDrills.players(players), SessionWish.of(60, courts)));
    assertThat(planned.check().brokenRules()).isEmpty();
    assertThat(planned.check().notes().stream().map(each -> each.words(String::valueOf)))
        .containsExactly(sentence);
  }

  static Stream<Arguments> courts() {
    return Stream.of(
        arguments(4, 3, "4 players can use at most 2 of 3 courts. Maybe give one back."),
        arguments(5, 5, "5 players can use at most 2 of 5 courts. Maybe give 3 back."));
  }
}
