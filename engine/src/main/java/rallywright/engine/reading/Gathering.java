package rallywright.engine.reading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.court.Direction;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.Yardstick;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.score.FinalScoreCheck;
import rallywright.engine.score.GameState;
import rallywright.engine.session.CourtEvent.YardstickCounted;
import rallywright.engine.session.GameProgress;
import rallywright.engine.session.SessionProgress;
import rallywright.engine.skill.Clarity;
import rallywright.engine.skill.Club;
import rallywright.engine.skill.Entrant;
import rallywright.engine.skill.Evidence;
import rallywright.engine.skill.Game;
import rallywright.engine.skill.SkillGroups;
import rallywright.engine.skill.YardstickResult;

/** Turns a club's history into the numbered players, effects and evidence of the skill model. */
final class Gathering {

  private final Weeks weeks;
  private final Map<PlayerId, Integer> numbers = new LinkedHashMap<>();
  private final Map<DrillKey, Yardstick> yardsticks = new HashMap<>();
  private final ClubEffects effects;
  private final DrillMinutes minutes = new DrillMinutes();
  private final List<PlayedGame> games = new ArrayList<>();
  private final List<Evidence> evidence = new ArrayList<>();
  private final Map<PlayerId, Integer> firstWeeks = new HashMap<>();
  private final ClubHistory history;

  Gathering(ClubHistory history) {
    this.history = history;
    LocalDate earliest =
        history.sessions().stream()
            .map(each -> each.session().date())
            .min(Comparator.naturalOrder())
            .filter(date -> date.isBefore(history.today()))
            .orElse(history.today());
    weeks = Weeks.from(earliest);
    history.players().forEach(player -> numbers.put(player.id(), numbers.size()));
    effects = new ClubEffects(history.drills(), history.yardsticks());
    history.yardsticks().forEach(each -> yardsticks.put(each.key(), each));
    history.sessions().stream()
        .sorted(
            Comparator.comparing((SessionProgress each) -> each.session().date())
                .thenComparing(each -> each.session().start()))
        .forEach(this::read);
    evidence.addAll(minutes.practice(numbers, effects));
  }

  ClubHistory history() {
    return history;
  }

  private void read(SessionProgress session) {
    for (PlannedBlock block : session.session().plan().blocks()) {
      if (block.kind() == PlannedBlock.Kind.YARDSTICK) {
        session.yardsticks(block.id()).forEach(count -> addYardstick(session, block, count));
      } else {
        history.drill(block.drill()).ifPresent(drill -> readGames(session, block, drill));
      }
    }
  }

  private void readGames(SessionProgress session, PlannedBlock block, Drill drill) {
    if (drill.form() instanceof DrillForm.Scored) {
      block.games().stream()
          .flatMap(game -> session.game(game.id()).stream())
          .filter(this::isReadable)
          .forEach(
              game ->
                  addGame(
                      new PlayedGame(session.session().id(), session.session().date(), drill, game),
                      WeatherClarity.of(session.conditions())));
    }
  }

  /** A game tells something if rallies were played, by known players, to a lawful score. */
  private boolean isReadable(GameProgress game) {
    boolean known =
        numbers.keySet().containsAll(game.game().a().players())
            && numbers.keySet().containsAll(game.game().b().players());
    GameState.Clock clock =
        game.status() == GameProgress.Status.PLAYED_OUT
            ? GameState.Clock.RUNNING
            : GameState.Clock.TIME_CALLED;
    return known
        && game.tellsSomething()
        && FinalScoreCheck.of(game.format()).refusalOf(game.score(), clock).isEmpty();
  }

  private void addGame(PlayedGame played, Clarity clarity) {
    Fixture fixture = fixture(played);
    int week = weeks.of(played.date());
    Results.of(played.game(), fixture)
        .ifPresent(
            result -> {
              games.add(played);
              minutes.add(played, week);
              evidence.add(new Game(week, fixture.contest(), fixture.sides(), result, clarity));
              played.game().game().a().players().forEach(each -> seen(each, week));
              played.game().game().b().players().forEach(each -> seen(each, week));
            });
  }

  private void addYardstick(SessionProgress session, PlannedBlock block, YardstickCounted count) {
    Yardstick yardstick = yardsticks.get(block.drill());
    Integer player = numbers.get(count.player());
    Optional<Integer> difficulty = effects.difficulty(block.drill());
    if (yardstick != null && player != null && difficulty.isPresent()) {
      int week = weeks.of(session.session().date());
      YardstickResult.Test test =
          new YardstickResult.Test(
              player, SkillGroups.numberOf(yardstick.skill()), difficulty.get());
      evidence.add(new YardstickResult(week, test, count.hits(), count.balls()));
      seen(count.player(), week);
    }
  }

  private void seen(PlayerId player, int week) {
    firstWeeks.merge(player, week, Math::min);
  }

  /** The game as the model sees it. */
  Fixture fixture(PlayedGame played) {
    Direction direction = played.game().game().place().lane().direction();
    return Fixture.of(
        played.drill(),
        played.game().game().a(),
        played.game().game().b(),
        numbers,
        effects.of(played.drill(), Optional.of(direction)));
  }

  /** The club as the model sees it. */
  Club club() {
    List<Entrant> entrants = new ArrayList<>();
    for (Player player : history.players()) {
      OptionalDouble level =
          player.level() == null
              ? OptionalDouble.empty()
              : OptionalDouble.of(player.level().value());
      entrants.add(new Entrant(level, firstWeek(player.id())));
    }
    return new Club(SkillGroups.ofTheTrade(), entrants, effects.effects(), effects.gains());
  }

  /** The week of a player's first score, or this week. */
  int firstWeek(PlayerId player) {
    return firstWeeks.getOrDefault(player, thisWeek());
  }

  int thisWeek() {
    return Math.max(
        weeks.of(history.today()),
        firstWeeks.values().stream().mapToInt(Integer::intValue).max().orElse(0));
  }

  /** Whether an earlier history numbers players, effects and weeks as this one does. */
  boolean continues(Gathering earlier) {
    List<PlayerId> before = new ArrayList<>(earlier.numbers.keySet());
    List<PlayerId> now = new ArrayList<>(numbers.keySet());
    return weeks.equals(earlier.weeks)
        && now.size() >= before.size()
        && now.subList(0, before.size()).equals(before)
        && effects.effects().equals(earlier.effects.effects())
        && effects.gains().equals(earlier.effects.gains());
  }

  Weeks weeks() {
    return weeks;
  }

  Map<PlayerId, Integer> numbers() {
    return numbers;
  }

  ClubEffects effects() {
    return effects;
  }

  List<PlayedGame> games() {
    return games;
  }

  List<Evidence> evidence() {
    return evidence;
  }
}
