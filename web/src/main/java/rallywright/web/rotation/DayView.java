package rallywright.web.rotation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rallywright.engine.club.PlayerId;
import rallywright.engine.rotation.DayResult;
import rallywright.engine.rotation.DayStyle;
import rallywright.engine.rotation.PlayDay;
import rallywright.engine.rotation.RotationGame;
import rallywright.engine.rotation.RotationMatch;
import rallywright.engine.rotation.RotationMeasures;
import rallywright.engine.rotation.RotationRound;
import rallywright.engine.rotation.Standings;

/**
 * A day of games as pages show it.
 *
 * @param about what is played, by how many, in how many rounds
 * @param now the round being played, 0 before the first
 * @param current the round being played, if there is one
 * @param next the one after it, if it is known
 * @param advance what the button for the next round says; empty where none can begin
 * @param waits why the next round is not known yet; empty where it is, or none follows
 * @param rounds all rounds that are known
 * @param courts the heads of their columns
 * @param standings the table by the scores so far; empty before the first score
 * @param words how even and how new the matches are, in sentences
 * @param there who is there in the next round, by id
 */
public record DayView(
    String about,
    int now,
    Optional<Round> current,
    Optional<Round> next,
    String advance,
    String waits,
    List<Round> rounds,
    List<String> courts,
    List<Place> standings,
    List<String> words,
    Map<String, String> there) {

  /** Whether somebody sits out in some round. */
  public boolean someSit() {
    return rounds.stream().anyMatch(round -> !round.sitting().isEmpty());
  }

  /**
   * A round.
   *
   * @param number from 1
   * @param matches its matches
   * @param sitting who sits out, with commas; or empty
   * @param state begun or ahead
   */
  public record Round(int number, List<Match> matches, String sitting, State state) {}

  /** Whether a round was begun. */
  public enum State {
    /** Played or being played. */
    BEGUN,
    /** Still to come. */
    AHEAD
  }

  /**
   * A match.
   *
   * @param place its place in the round, from 0
   * @param where the court, and the lane where there are two
   * @param a side A
   * @param b side B
   * @param start a head start in words, or empty
   * @param pointsA points of A, or empty
   * @param pointsB points of B, or empty
   */
  public record Match(
      int place, String where, String a, String b, String start, String pointsA, String pointsB) {}

  /**
   * A line of the table.
   *
   * @param place from 1; the same where two are equal by every rule
   * @param who the player, or the pair
   * @param played matches played
   * @param won matches won
   * @param difference points won less points lost, with its sign
   */
  public record Place(int place, String who, int played, int won, String difference) {}

  static DayView of(PlayDay day, Map<PlayerId, String> names, String played) {
    Writer writer = new Writer(day, names);
    return new DayView(
        writer.about(played),
        day.now(),
        day.current().map(writer::round),
        day.following().map(writer::round),
        writer.advance(),
        writer.waits(),
        day.rounds().stream().map(writer::round).toList(),
        writer.courts(),
        day.results().isEmpty() ? List.of() : writer.standings(),
        writer.words(),
        writer.there());
  }

  /** Puts a day into words. */
  private record Writer(PlayDay day, Map<PlayerId, String> names) {

    String about(String played) {
      int players = day.wish().present(day.now() + 1).size();
      return "%s. %d players, %d %s, %d rounds. %s."
          .formatted(
              played,
              players,
              day.wish().courts(),
              day.wish().courts() == 1 ? "court" : "courts",
              day.wish().style().isKnownAhead() ? day.rounds().size() : day.wish().rounds(),
              StyleChoice.words(day.wish().style()));
    }

    String advance() {
      if (day.following().isEmpty()) {
        return "";
      }
      return (day.now() == 0 ? "Begin round " : "On to round ") + (day.now() + 1);
    }

    String waits() {
      return day.following().isEmpty() && day.now() > 0 && !day.isOver()
          ? "The next round follows from these scores. Type in all of them first."
          : "";
    }

    Round round(RotationRound round) {
      List<Match> matches = new ArrayList<>();
      for (RotationMatch match : round.matches()) {
        matches.add(match(round.number(), matches.size(), match));
      }
      return new Round(
          round.number(),
          matches,
          listed(round.sitting(), ", "),
          round.number() <= day.now() ? State.BEGUN : State.AHEAD);
    }

    private Match match(int round, int place, RotationMatch match) {
      Optional<DayResult> result = day.result(round, place);
      int a = match.headStart().a();
      int b = match.headStart().b();
      return new Match(
          place,
          where(match),
          listed(match.a(), " + "),
          listed(match.b(), " + "),
          a + b == 0 ? "" : "starts at %d–%d".formatted(a, b),
          result.map(each -> String.valueOf(each.pointsA())).orElse(""),
          result.map(each -> String.valueOf(each.pointsB())).orElse(""));
    }

    private String where(RotationMatch match) {
      return day.wish().game().perCourt() == 1
          ? "Court " + match.court()
          : "Court %d %s".formatted(match.court(), match.lane() == 1 ? "left" : "right");
    }

    List<String> courts() {
      return day.rounds().stream()
          .max((one, other) -> one.matches().size() - other.matches().size())
          .map(round -> round.matches().stream().map(this::where).toList())
          .orElse(List.of());
    }

    private String listed(List<PlayerId> players, String between) {
      return players.stream()
          .map(player -> names.getOrDefault(player, "Former player"))
          .collect(Collectors.joining(between));
    }

    List<Place> standings() {
      List<Place> places = new ArrayList<>();
      for (Standings.Line<List<PlayerId>> line : day.standings()) {
        places.add(
            new Place(
                line.place(),
                listed(line.entrant(), " + "),
                line.played(),
                line.won(),
                (line.difference() > 0 ? "+" : line.difference() < 0 ? "−" : "")
                    + Math.abs(line.difference())));
      }
      return places;
    }

    Map<String, String> there() {
      Map<String, String> there = new java.util.LinkedHashMap<>();
      day.wish()
          .present(day.now() + 1)
          .forEach(id -> there.put(id.value(), names.getOrDefault(id, "Former player")));
      return there;
    }

    List<String> words() {
      RotationMeasures measures = day.measures();
      List<String> words = new ArrayList<>();
      if (day.wish().style() == DayStyle.NEW_PARTNERS || day.wish().style() == DayStyle.LADDER) {
        words.add(partners(measures));
      }
      words.add(sitOuts(measures));
      if (day.wish().players().stream().anyMatch(each -> each.strengthLogits() != 0)) {
        long uneven =
            day.rounds().stream()
                .flatMap(round -> round.matches().stream())
                .filter(match -> match.headStart().a() + match.headStart().b() > 0)
                .count();
        words.add(
            uneven == 0
                ? "By the club's scores every match is about even."
                : "%d of %d matches stay uneven by the club's scores and have a head start."
                    .formatted(uneven, matches()));
      }
      if (measures.apartMeetings() > 0) {
        words.add(
            "Those who keep apart meet %s all the same: there was no other way."
                .formatted(times(measures.apartMeetings())));
      }
      if (measures.togetherMisses() > 0) {
        words.add(
            "Those who play together miss each other %s."
                .formatted(times(measures.togetherMisses())));
      }
      missing().ifPresent(words::add);
      return words;
    }

    private int matches() {
      return day.rounds().stream().mapToInt(round -> round.matches().size()).sum();
    }

    private String partners(RotationMeasures measures) {
      String close = day.wish().game().form() == RotationGame.Form.PAIRS ? "partner" : "opponent";
      int most = mostPartners();
      if (most <= 1 && measures.partnerRepeats() == 0) {
        return "Nobody has the same %s twice.".formatted(close);
      }
      return measures.partnerRepeats() == 0
          ? "Nobody has the same %s twice; up to %d different ones each.".formatted(close, most)
          : "The same %ss come again %s in all; up to %d different ones each."
              .formatted(close, times(measures.partnerRepeats()), most);
    }

    private int mostPartners() {
      Map<PlayerId, java.util.Set<PlayerId>> met = new HashMap<>();
      boolean pairs = day.wish().game().form() == RotationGame.Form.PAIRS;
      for (RotationRound round : day.rounds()) {
        for (RotationMatch match : round.matches()) {
          List<List<PlayerId>> close =
              pairs ? List.of(match.a(), match.b()) : List.of(match.players());
          for (List<PlayerId> group : close) {
            group.forEach(
                one ->
                    group.stream()
                        .filter(other -> !other.equals(one))
                        .forEach(
                            other ->
                                met.computeIfAbsent(one, id -> new java.util.HashSet<>())
                                    .add(other)));
          }
        }
      }
      return met.values().stream().mapToInt(java.util.Set::size).max().orElse(0);
    }

    private static String sitOuts(RotationMeasures measures) {
      if (measures.mostSitOuts() == 0) {
        return "Nobody sits out.";
      }
      String often =
          measures.mostSitOuts() == measures.fewestSitOuts()
              ? times(measures.mostSitOuts())
              : measures.fewestSitOuts() == 0
                  ? "at most " + times(measures.mostSitOuts())
                  : "%d to %s".formatted(measures.fewestSitOuts(), times(measures.mostSitOuts()));
      return "Each who stays sits out %s, %s."
          .formatted(
              often,
              measures.twiceRunning() == 0
                  ? "nobody twice running"
                  : "%s twice running".formatted(times(measures.twiceRunning())));
    }

    private static String times(int count) {
      return count == 1 ? "once" : count == 2 ? "twice" : count + " times";
    }

    /** Where the time ends before all have met. */
    private Optional<String> missing() {
      if (day.wish().style() != DayStyle.FIXED_PAIRS) {
        return Optional.empty();
      }
      int pairs = day.wish().players().size() / 2;
      int all = pairs * (pairs - 1) / 2;
      return matches() >= all
          ? Optional.empty()
          : Optional.of("%d of %d matches are played in this time.".formatted(matches(), all));
    }
  }
}
