package rallywright.engine.rotation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rallywright.engine.club.PlayerId;

/** Says what is impossible in a wish, each time with what to change. */
final class RotationCheck {

  private final RotationWish wish;
  private final RotationGame game;
  private final Set<PlayerId> known = new HashSet<>();
  private final List<String> problems = new ArrayList<>();

  private RotationCheck(RotationWish wish) {
    this.wish = wish;
    game = wish.game();
  }

  static List<String> problems(RotationWish wish) {
    RotationCheck check = new RotationCheck(wish);
    check.counts();
    if (check.problems.isEmpty()) {
      check.courts();
      check.playedRounds();
      check.pairs();
    }
    if (check.problems.isEmpty()) {
      check.room();
    }
    return List.copyOf(check.problems);
  }

  private void counts() {
    int players = wish.players().size();
    if (players == 0) {
      problems.add("There are no players; 1 to 40 are allowed. Maybe choose who is there.");
      return;
    }
    if (players > RotationWish.MOST_PLAYERS) {
      problems.add(
          "The number of players (%d) must be 1 to %d. Maybe split them into two groups."
              .formatted(players, RotationWish.MOST_PLAYERS));
    }
    for (RotationPlayer player : wish.players()) {
      if (!known.add(player.id())) {
        problems.add(
            "The player %s is named twice; each is named once. Maybe leave one out."
                .formatted(player.id()));
      }
    }
    ranges(players);
    if (players < game.size()) {
      problems.add(
          "The number of players (%d) must be %d or more for %s. Maybe %s."
              .formatted(
                  players,
                  game.size(),
                  game.words(),
                  players < 2 ? "one more comes" : "play lanes, two on a lane"));
    }
  }

  private void ranges(int players) {
    if (wish.courts() < 1 || wish.courts() > RotationWish.MOST_COURTS) {
      problems.add(
          "The number of courts (%d) must be 1 to %d. Maybe %d."
              .formatted(
                  wish.courts(),
                  RotationWish.MOST_COURTS,
                  Math.max(1, Math.min(RotationWish.MOST_COURTS, game.courtsFilledBy(players)))));
    }
    if (wish.rounds() < 1 || wish.rounds() > RotationWish.MOST_ROUNDS) {
      problems.add(
          "The number of rounds (%d) must be 1 to %d. Maybe 8."
              .formatted(wish.rounds(), RotationWish.MOST_ROUNDS));
    }
  }

  private void courts() {
    int most = 0;
    for (int round = 1; round <= wish.rounds(); round++) {
      most = Math.max(most, present(round));
    }
    int filled = game.courtsFilledBy(most);
    if (wish.courts() > filled) {
      problems.add(
          "The number of courts (%d) must be at most %d: %d players fill no more with %s. Maybe %d."
              .formatted(wish.courts(), filled, most, game.words(), filled));
    }
  }

  private int present(int round) {
    return (int) wish.players().stream().filter(each -> each.isThere(round)).count();
  }

  private void playedRounds() {
    if (wish.played().size() > wish.rounds()) {
      problems.add(
          ("The number of rounds played (%d) must be at most the rounds in all (%d). Maybe %d in"
                  + " all.")
              .formatted(wish.played().size(), wish.rounds(), wish.played().size() + 1));
    }
    for (int place = 0; place < wish.played().size(); place++) {
      playedRound(place + 1, wish.played().get(place));
    }
  }

  private void playedRound(int number, RotationRound round) {
    Set<PlayerId> seen = new HashSet<>();
    List<PlayerId> named = new ArrayList<>(round.sitting());
    for (RotationMatch match : round.matches()) {
      named.addAll(match.players());
      if (match.players().size() != game.size()) {
        problems.add(
            "A match of round %d has %d players; %s need %d. Maybe leave the match out."
                .formatted(number, match.players().size(), game.words(), game.size()));
      }
    }
    if (round.number() != number) {
      problems.add(
          "The round %d stands where round %d is due; rounds count from 1. Maybe one is missing."
              .formatted(round.number(), number));
    }
    for (PlayerId player : named) {
      if (!known.contains(player)) {
        problems.add(
            "The player %s of round %d must be in the list of players. Maybe add them, until round"
                    .formatted(player, number)
                + " %d.".formatted(number));
      }
      if (!seen.add(player)) {
        problems.add(
            "The player %s stands twice in round %d; each stands once. Maybe one is a slip."
                .formatted(player, number));
      }
    }
  }

  private void pairs() {
    for (Pairing pair : wish.together()) {
      known(pair);
      if (wish.apart().contains(pair)) {
        problems.add(
            "The players %s and %s must not be kept both apart and together. Maybe drop one wish."
                .formatted(pair.one(), pair.other()));
      }
    }
    wish.apart().forEach(this::known);
    if (game.form() == RotationGame.Form.PAIRS || game.size() == 2) {
      for (RotationPlayer player : wish.players()) {
        long partners = wish.together().stream().filter(pair -> pair.has(player.id())).count();
        if (partners > 1) {
          problems.add(
              "The player %s is to be kept together with %d others; one partner is possible. Maybe"
                      .formatted(player.id(), partners)
                  + " drop all but one of these wishes.");
        }
      }
    }
  }

  private void known(Pairing pair) {
    for (PlayerId player : List.of(pair.one(), pair.other())) {
      if (!known.contains(player)) {
        problems.add(
            "The player %s of a wish must be in the list of players. Maybe the name is a slip."
                .formatted(player));
      }
    }
  }

  /** More players that keep apart from each other than there are places away from each other. */
  private void room() {
    for (int round = wish.played().size() + 1; round <= wish.rounds(); round++) {
      int present = present(round);
      int groups = game.groups(present, wish.courts());
      int places = groups + present - groups * game.size();
      List<PlayerId> strangers = strangers(List.of(), round, places + 1);
      if (!strangers.isEmpty() && groups > 0) {
        problems.add(
            "The players %s cannot all be kept apart in round %d: there %s. Maybe drop one of these"
                    .formatted(names(strangers), round, placesInWords(groups, places - groups))
                + " wishes.");
        return;
      }
    }
  }

  private static String placesInWords(int groups, int sitting) {
    String playing = groups == 1 ? "is 1 group" : "are %d groups".formatted(groups);
    return playing + (sitting == 0 ? " and nobody sits out" : " and %d sit out".formatted(sitting));
  }

  private static String names(List<PlayerId> players) {
    return String.join(", ", players.stream().map(PlayerId::value).toList());
  }

  private List<PlayerId> strangers(List<PlayerId> chosen, int round, int wanted) {
    if (chosen.size() == wanted) {
      return chosen;
    }
    int from = chosen.isEmpty() ? 0 : placeOf(chosen.get(chosen.size() - 1)) + 1;
    for (RotationPlayer next : wish.players().subList(from, wish.players().size())) {
      boolean fits =
          next.isThere(round)
              && chosen.stream()
                  .allMatch(one -> wish.apart().contains(new Pairing(one, next.id())));
      if (fits) {
        List<PlayerId> more = new ArrayList<>(chosen);
        more.add(next.id());
        List<PlayerId> found = strangers(more, round, wanted);
        if (!found.isEmpty()) {
          return found;
        }
      }
    }
    return List.of();
  }

  private int placeOf(PlayerId player) {
    for (int place = 0; place < wish.players().size(); place++) {
      if (wish.players().get(place).id().equals(player)) {
        return place;
      }
    }
    throw new IllegalArgumentException("The player %s is not known.".formatted(player));
  }
}
