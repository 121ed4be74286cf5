package rallywright.cli;

import java.util.List;
import rallywright.engine.score.Score;
import rallywright.engine.skill.RalliesByServer;
import rallywright.engine.skill.ScorePath;

/** The rallies of a side-out game, each written as its server and its winner: "ab". */
final class RallyLog {

  private static final List<String> RALLIES = List.of("aa", "ab", "ba", "bb");

  private final JsonField field;
  private final List<JsonField> rallies;

  private RallyLog(JsonField field) {
    this.field = field;
    rallies = field.elements();
    rallies.forEach(rally -> rally.oneOf(RALLIES));
  }

  static RallyLog of(JsonField field) {
    return new RallyLog(field);
  }

  /** The counts by server, once the log is known to lead to the score. */
  RalliesByServer checkedAgainst(ScorePath path) {
    checkServers(path);
    int pointsA = count("aa");
    int pointsB = count("bb");
    Score told = Score.of(path.start().a() + pointsA, path.start().b() + pointsB);
    if (!told.equals(path.end())) {
      throw field.wrong(
          "rallies that lead to %s, these lead to %s".formatted(path.end(), told),
          "a rally is missing");
    }
    return new RalliesByServer(pointsA + count("ab"), pointsA, pointsB + count("ba"), pointsB);
  }

  /** The first server is the one named; then the winner of a rally serves the next. */
  private void checkServers(ScorePath path) {
    String server =
        switch (path.firstServer()) {
          case A -> "a";
          case B -> "b";
          case UNKNOWN -> "";
        };
    for (JsonField rally : rallies) {
      if (!rally.text().startsWith(server)) {
        throw rally.wrong("served by %s, who won the rally before".formatted(server), server + "a");
      }
      server = rally.text().substring(1);
    }
  }

  private int count(String rally) {
    return (int) rallies.stream().filter(r -> r.text().equals(rally)).count();
  }
}
