package rallywright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import rallywright.engine.club.PlayerId;
import rallywright.engine.rotation.DayStyle;
import rallywright.engine.rotation.Pairing;
import rallywright.engine.rotation.RotationGame;
import rallywright.engine.rotation.RotationPlayer;
import rallywright.engine.rotation.RotationWish;

/** The options of {@code rotate} as typed, turned into a wish or refused in one sentence. */
record RotateFlags(Counts counts, String game, @Nullable String strengths, Pairs pairs) {

  private static final Pattern PAIR = Pattern.compile("\\s*(\\d{1,3})\\s*-\\s*(\\d{1,3})\\s*");
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d{1,3})?");

  /** How many of each. */
  record Counts(
      @Nullable String players, @Nullable String courts, @Nullable String rounds, String seed) {}

  /** Who keeps apart and who together. */
  record Pairs(List<String> apart, List<String> together) {}

  RotationWish wish() {
    RotationGame chosen = chosenGame();
    int players = whole("--players", counts.players(), "13");
    int courts = whole("--courts", counts.courts(), "3");
    int rounds = whole("--rounds", counts.rounds(), "8");
    if (players < 0 || players > RotationWish.MOST_PLAYERS) {
      throw new WrongInput(
          "The number of players (%d) must be 1 to %d. Maybe split them into two groups."
              .formatted(players, RotationWish.MOST_PLAYERS));
    }
    RotationWish wish =
        RotationWish.of(chosen, courts, rounds, players(players)).withSeed(seedNumber());
    for (String pair : pairs.apart()) {
      wish = wish.keepingApart(pair("--apart", pair, players));
    }
    for (String pair : pairs.together()) {
      wish = wish.keepingTogether(pair("--together", pair, players));
    }
    return wish;
  }

  /** How partners are found. */
  static DayStyle style(String partners) {
    return switch (partners.strip().toLowerCase(Locale.ROOT)) {
      case "new" -> DayStyle.NEW_PARTNERS;
      case "fixed" -> DayStyle.FIXED_PAIRS;
      case "couples" -> DayStyle.MIXED;
      default ->
          throw new WrongInput(
              "The partners (%s) must be new, fixed or couples. Maybe --partners new."
                  .formatted(partners));
    };
  }

  private RotationGame chosenGame() {
    return switch (game.strip().toLowerCase(Locale.ROOT)) {
      case "doubles" -> RotationGame.DOUBLES;
      case "lanes" -> RotationGame.LANES;
      default ->
          throw new WrongInput(
              "The game (%s) must be doubles or lanes. Maybe --game doubles.".formatted(game));
    };
  }

  private List<RotationPlayer> players(int count) {
    List<Double> typed = typedStrengths(count);
    List<RotationPlayer> players = new ArrayList<>();
    for (int place = 0; place < count; place++) {
      players.add(RotationPlayer.of(new PlayerId(String.valueOf(place + 1)), typed.get(place)));
    }
    return players;
  }

  private List<Double> typedStrengths(int count) {
    if (strengths == null) {
      return java.util.Collections.nCopies(count, 0.0);
    }
    List<Double> numbers = new ArrayList<>();
    for (String part : strengths.split(",", -1)) {
      numbers.add(strength(part.strip()));
    }
    if (numbers.size() != count) {
      throw new WrongInput(
          "The strengths (%d numbers) must be one for each of the players (%d). Maybe a comma is"
                  .formatted(numbers.size(), count)
              + " missing; write 0.5 with a point.");
    }
    return numbers;
  }

  private static double strength(String part) {
    double value = NUMBER.matcher(part).matches() ? Double.parseDouble(part) : Double.NaN;
    if (!(Math.abs(value) <= RotationPlayer.STRONGEST_LOGITS)) {
      throw new WrongInput(
          "The strength (%s) must be a number from -10 to 10 logits. Maybe 0 for a middling player."
              .formatted(part));
    }
    return value;
  }

  private static Pairing pair(String name, String typed, int players) {
    Matcher parts = PAIR.matcher(typed);
    if (!parts.matches()) {
      throw new WrongInput(
          "The pair of %s (%s) must be two numbers of players. Maybe %s 2-9."
              .formatted(name, typed, name));
    }
    for (int side = 1; side <= 2; side++) {
      int number = Integer.parseInt(parts.group(side));
      if (number < 1 || number > players) {
        throw new WrongInput(
            "The player %d of %s must be one of 1 to %d. Maybe the number is a slip."
                .formatted(number, name, players));
      }
    }
    return new Pairing(playerId(parts.group(1)), playerId(parts.group(2)));
  }

  private static PlayerId playerId(String number) {
    return new PlayerId(String.valueOf(Integer.parseInt(number)));
  }

  private long seedNumber() {
    if (!counts.seed().strip().matches("-?\\d{1,18}")) {
      throw new WrongInput(
          "The seed (%s) must be a whole number. Maybe --seed 1.".formatted(counts.seed()));
    }
    return Long.parseLong(counts.seed().strip());
  }

  private static int whole(String name, @Nullable String typed, String example) {
    if (typed == null) {
      throw new WrongInput(
          "The option %s is missing; it must be given. Maybe %s %s."
              .formatted(name, name, example));
    }
    if (!typed.strip().matches("-?\\d{1,6}")) {
      throw new WrongInput(
          "The value of %s (%s) must be a whole number. Maybe %s %s."
              .formatted(name, typed, name, example));
    }
    return Integer.parseInt(typed.strip());
  }
}
