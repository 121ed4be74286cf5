package rallywright.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Exact odds of a game from the chances of a rally. */
@Command(
    name = "odds",
    description = {
      "Exact odds of a game: who wins, how long it takes, which scores, which head start.",
      "A chance is a number from 0 to 1."
    },
    footer = {
      "",
      "Two values for a side (0.50,0.40) are the chances on the serve of its two players, the one"
          + " who started the game on the right first. In a live score a1 is then the player whom"
          + " the score puts on the right, a2 the partner; 0-0 with a2 (or b2) is the start of the"
          + " game, where the starting player is the only server.",
      "",
      "Example: rallywright odds --scoring side-out-pairs --target 11 --win-by 2"
          + " --serve-a 0.45 --serve-b 0.40 --score 7-9 --serving a2"
    },
    mixinStandardHelpOptions = true)
final class OddsCommand implements Callable<Integer> {

  @Option(
      names = "--scoring",
      paramLabel = "WAY",
      description = "every-rally, side-out (one server a side) or side-out-pairs (two servers).")
  private @Nullable String scoring;

  @Option(names = "--target", paramLabel = "N", description = "Points to win, 1 to 200.")
  private @Nullable String target;

  @Option(
      names = "--win-by",
      paramLabel = "N",
      description = "Lead needed at the target, 1 or 2. Default: 1.")
  private @Nullable String winBy;

  @Option(
      names = "--cap",
      paramLabel = "N",
      description = "The first to N points wins whatever the lead. Default: no cap.")
  private @Nullable String cap;

  @Option(
      names = "--serve-a",
      paramLabel = "P",
      description = "Chance that A's side wins a rally that A serves; or two chances P,P.")
  private @Nullable String serveA;

  @Option(
      names = "--serve-b",
      paramLabel = "P",
      description = "Chance that B's side wins a rally that B serves; or two chances P,P.")
  private @Nullable String serveB;

  @Option(
      names = "--rally",
      paramLabel = "P",
      description = "Every rally scores, one chance: that A wins it, whoever serves.")
  private @Nullable String rally;

  @Option(
      names = "--score",
      paramLabel = "A-B",
      description = "A live score, A's points first. Default: the start of the game.")
  private @Nullable String score;

  @Option(
      names = "--serving",
      paramLabel = "WHO",
      description =
          "Who serves now: a1, a2, b1 or b2; the 2 only with two servers. Default at the start: a1,"
              + " with two servers a2 (0-0-2).")
  private @Nullable String serving;

  @Option(
      names = "--last-point",
      paramLabel = "WHO",
      description =
          "Who may score the last point when every rally scores: anyone (2026) or server (2025)."
              + " Default: anyone.")
  private @Nullable String lastPoint;

  @Option(
      names = "--fair",
      paramLabel = "P",
      arity = "0..1",
      fallbackValue = "0.5",
      description =
          "Also find the head start that brings A's chance closest to P (0.5 if left out), from"
              + " the start of the game.")
  private @Nullable String fair;

  @Option(names = "--json", description = "Print one JSON object, numbers unrounded.")
  private boolean json;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    OddsQuestion question =
        new OddsFlags(
                new OddsFlags.Game(scoring, target, winBy, cap, lastPoint),
                new OddsFlags.Rallies(serveA, serveB, rally),
                new OddsFlags.Live(score, serving),
                fair)
            .question();
    OddsAnswer answer = OddsAnswer.to(question);
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      JsonAnswer.print(out, answer.asJson());
    } else {
      answer.lines().forEach(out::println);
      out.flush();
    }
    return 0;
  }
}
