package rallywright.engine.rotation;

import java.util.ArrayList;
import java.util.List;

/** Says what is impossible in the wish for a day, each time with what to change. */
final class DayCheck {

  private final DayWish wish;
  private final List<String> problems = new ArrayList<>();

  private DayCheck(DayWish wish) {
    this.wish = wish;
  }

  static List<String> problems(DayWish wish) {
    DayCheck check = new DayCheck(wish);
    check.problems.addAll(
        RotationCheck.problems(
            RotationWish.of(wish.game(), wish.courts(), wish.rounds(), all(wish))));
    if (check.problems.isEmpty()) {
      check.style();
    }
    return List.copyOf(check.problems);
  }

  /** Everybody, whenever they come: a day with late-comers is judged by who is there in all. */
  private static List<RotationPlayer> all(DayWish wish) {
    return wish.players().stream().map(each -> RotationPlayer.of(each.id(), 0)).toList();
  }

  private void style() {
    boolean wishes = !wish.apart().isEmpty() || !wish.together().isEmpty();
    if (wishes && wish.style() != DayStyle.NEW_PARTNERS) {
      problems.add(
          "Wishes for pairs (%d) can only be kept with new partners. Maybe drop these."
              .formatted(wish.apart().size() + wish.together().size()));
    }
    if (wish.style() == DayStyle.FIXED_PAIRS || wish.style() == DayStyle.MIXED) {
      pairs();
    }
  }

  private void pairs() {
    int players = wish.players().size();
    if (!wish.game().equals(RotationGame.DOUBLES)) {
      problems.add(
          "Pairs play doubles, not %s. Maybe choose doubles.".formatted(wish.game().words()));
    } else if (players % 2 == 1) {
      problems.add(
          "The number of players (%d) must be even: each needs a partner. Maybe one more comes."
              .formatted(players));
    } else if (wish.style() == DayStyle.MIXED && !MixedDoubles.sizes().contains(players / 2)) {
      problems.add(
          "The number of couples (%d) must be one of %s: for others no complete schedule is known"
                  .formatted(players / 2, MixedDoubles.sizes())
              + " here. Maybe one couple sits out, or play with new partners.");
    }
  }
}
