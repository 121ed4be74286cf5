package rallywright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import rallywright.engine.club.PlayerId;
import rallywright.engine.odds.FairGame.HeadStart;
import rallywright.engine.rotation.RotationGame;
import rallywright.engine.rotation.RotationMatch;
import rallywright.engine.rotation.RotationMeasures;
import rallywright.engine.rotation.RotationRound;
import rallywright.engine.rotation.RotationSchedule;
import rallywright.engine.rotation.RotationTime;

/** A rotation for people: a table with a line for each round, then what it comes to. */
final class RotationLines {

  private static final String GAP = "   ";

  private RotationLines() {}

  static void print(
      PrintWriter out, RotationGame game, RotationSchedule schedule, RotationTime time) {
    RotationRound longest =
        schedule.rounds().stream()
            .max((one, other) -> one.matches().size() - other.matches().size())
            .orElseThrow();
    int wide =
        schedule.rounds().stream()
            .flatMap(round -> round.matches().stream())
            .mapToInt(match -> text(match).length())
            .max()
            .orElse(0);
    wide = Math.max(wide, "court 12 lane 2".length());
    StringBuilder head = new StringBuilder("round");
    for (RotationMatch match : longest.matches()) {
      head.append(GAP).append(padded(place(game, match), wide));
    }
    out.println(head + (anybodySits(schedule) ? GAP + "sit out" : ""));
    for (RotationRound round : schedule.rounds()) {
      StringBuilder line = new StringBuilder("%5d".formatted(round.number()));
      for (int place = 0; place < longest.matches().size(); place++) {
        String match = place < round.matches().size() ? text(round.matches().get(place)) : "";
        line.append(GAP).append(padded(match, wide));
      }
      out.println((line + GAP + listed(round.sitting(), ", ")).stripTrailing());
    }
    out.println();
    sentences(game, schedule.measures()).forEach(out::println);
    out.println(time.sentence());
    out.flush();
  }

  private static boolean anybodySits(RotationSchedule schedule) {
    return schedule.rounds().stream().anyMatch(round -> !round.sitting().isEmpty());
  }

  private static String place(RotationGame game, RotationMatch match) {
    return game.perCourt() > 1
        ? "court %d lane %d".formatted(match.court(), match.lane())
        : "court %d".formatted(match.court());
  }

  private static String text(RotationMatch match) {
    HeadStart start = match.headStart();
    String from = start.a() + start.b() == 0 ? "" : " from %d-%d".formatted(start.a(), start.b());
    return listed(match.a(), "+") + " v " + listed(match.b(), "+") + from;
  }

  private static String listed(List<PlayerId> players, String between) {
    return players.stream().map(PlayerId::value).collect(Collectors.joining(between));
  }

  private static String padded(String text, int wide) {
    return text + " ".repeat(Math.max(0, wide - text.length()));
  }

  private static List<String> sentences(RotationGame game, RotationMeasures measures) {
    String close = game.form() == RotationGame.Form.PAIRS ? "partners" : "opponents";
    return List.of(
        measures.partnerRepeats() == 0
            ? "Nobody has the same %s twice.".formatted(close)
            : "%s are the same again %d times."
                .formatted(
                    close.substring(0, 1).toUpperCase(Locale.ROOT) + close.substring(1),
                    measures.partnerRepeats()),
        sitOuts(measures),
        "The largest difference of two sides is %.2f logits."
            .formatted(measures.worstDifference()));
  }

  private static String sitOuts(RotationMeasures measures) {
    if (measures.mostSitOuts() == 0) {
      return "Nobody sits out.";
    }
    String often =
        measures.mostSitOuts() == measures.fewestSitOuts()
            ? "%d times".formatted(measures.mostSitOuts())
            : "%d to %d times".formatted(measures.fewestSitOuts(), measures.mostSitOuts());
    return "Each sits out %s, %s."
        .formatted(
            often,
            measures.twiceRunning() == 0
                ? "never twice running"
                : "%d times twice running".formatted(measures.twiceRunning()));
  }
}
