package rallywright.engine.rotation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rallywright.engine.club.PlayerId;
import rallywright.engine.rotation.CourtQueue.Fixture;
import rallywright.engine.score.Side;

/** Finds the rounds of a day in its style, those already begun being kept as they are. */
final class DayRounds {

  private final DayWish wish;
  private final List<RotationRound> kept;
  private final List<DayResult> results;

  DayRounds(DayWish wish, List<RotationRound> kept, List<DayResult> results) {
    this.wish = wish;
    this.kept = kept;
    this.results = results;
  }

  /** The rounds, or sentences that say what is impossible. */
  sealed interface Found {
    /** The rounds, those kept first. */
    record Rounds(List<RotationRound> all) implements Found {}

    /** Why there are none. */
    record Problems(List<String> sentences) implements Found {}
  }

  Found find() {
    return switch (wish.style()) {
      case NEW_PARTNERS -> newPartners();
      case LADDER -> ladder();
      case FIXED_PAIRS -> queued(fixedPairs());
      case MIXED -> queued(couples());
    };
  }

  private Found newPartners() {
    RotationAnswer answer =
        RotationSearch.find(wish.rotation(kept), SearchEffort.USUAL, SearchWatch.PATIENT);
    return answer instanceof RotationAnswer.Found found
        ? new Found.Rounds(found.schedule().rounds())
        : new Found.Problems(((RotationAnswer.Refused) answer).sentences());
  }

  private Found ladder() {
    Ladder ladder = Ladder.start(wish.game(), wish.courts(), wish.present(1));
    List<RotationRound> all = new ArrayList<>();
    all.add(ladder.round());
    for (RotationRound round : kept) {
      Optional<List<Side>> winners = winners(round);
      if (winners.isEmpty() || round.number() == wish.rounds()) {
        break;
      }
      ladder = ladder.after(winners.get(), wish.present(round.number() + 1));
      all.add(ladder.round());
    }
    return new Found.Rounds(all);
  }

  private Optional<List<Side>> winners(RotationRound round) {
    List<Side> winners = new ArrayList<>();
    for (int match = 0; match < round.matches().size(); match++) {
      int place = match;
      results.stream()
          .filter(result -> result.isOf(round.number(), place))
          .findFirst()
          .ifPresent(result -> winners.add(result.winner()));
    }
    return winners.size() == round.matches().size() ? Optional.of(winners) : Optional.empty();
  }

  private Found queued(List<Fixture> fixtures) {
    int next = kept.size() + 1;
    List<PlayerId> present = wish.present(next);
    List<Fixture> possible =
        fixtures.stream()
            .filter(each -> present.containsAll(each.players()) || isKept(each))
            .toList();
    return new Found.Rounds(
        new CourtQueue(wish.courts(), present, possible).after(kept).rounds(wish.rounds()));
  }

  private boolean isKept(Fixture fixture) {
    return kept.stream()
        .flatMap(round -> round.matches().stream())
        .anyMatch(match -> match.a().equals(fixture.a()) && match.b().equals(fixture.b()));
  }

  private List<Fixture> fixedPairs() {
    List<List<PlayerId>> pairs =
        IntStream.range(0, wish.players().size() / 2)
            .mapToObj(pair -> List.of(player(2 * pair), player(2 * pair + 1)))
            .toList();
    return RoundRobin.rounds(pairs).stream()
        .flatMap(List::stream)
        .map(meeting -> new Fixture(meeting.one(), meeting.other()))
        .toList();
  }

  private List<Fixture> couples() {
    return MixedDoubles.rounds(wish.players().size() / 2).stream()
        .flatMap(List::stream)
        .map(
            game ->
                new Fixture(
                    List.of(man(game.manA()), woman(game.womanA())),
                    List.of(man(game.manB()), woman(game.womanB()))))
        .toList();
  }

  private PlayerId man(int couple) {
    return player(2 * couple - 2);
  }

  private PlayerId woman(int couple) {
    return player(2 * couple - 1);
  }

  private PlayerId player(int place) {
    return wish.players().get(place).id();
  }
}
