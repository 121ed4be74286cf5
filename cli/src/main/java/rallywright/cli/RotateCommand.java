package rallywright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rallywright.engine.rotation.RotationAnswer;
import rallywright.engine.rotation.RotationSearch;
import rallywright.engine.rotation.RotationWish;
import rallywright.engine.rotation.SearchEffort;
import rallywright.engine.rotation.SearchWatch;

/** Who plays whom on which court, round after round. */
@Command(
    name = "rotate",
    description = {
      "Who plays whom on which court: new partners, new opponents, even matches, even sit-outs.",
      "The same options give the same rotation."
    },
    footer = {
      "",
      "Players are numbered from 1. With --json: partnerRepeats counts partners (on lanes: those"
          + " who share a lane) after their first time; opponentExcess counts opponents met"
          + " beyond the even share, rounded up; worstDifference is the largest difference of two"
          + " sides in logits, of partners the mean. Lanes count from 1; null is a whole court.",
      "",
      "Example: rallywright rotate --players 13 --courts 3 --rounds 8 --apart 2-9"
    },
    mixinStandardHelpOptions = true)
final class RotateCommand implements Callable<Integer> {

  @Option(names = "--players", paramLabel = "N", description = "How many play, 1 to 40.")
  private @Nullable String players;

  @Option(names = "--courts", paramLabel = "C", description = "Courts at hand, 1 to 12.")
  private @Nullable String courts;

  @Option(names = "--rounds", paramLabel = "R", description = "Rounds, 1 to 60.")
  private @Nullable String rounds;

  @Option(
      names = "--game",
      paramLabel = "GAME",
      description = "doubles, or lanes (two against each other, two lanes a court).")
  private String game = "doubles";

  @Option(
      names = "--strengths",
      paramLabel = "A,B,…",
      description = "One strength in logits for each player; then matches are made even.")
  private @Nullable String strengths;

  @Option(
      names = "--apart",
      paramLabel = "A-B",
      split = ",",
      description = "Pairs that must not meet, for example 1-5,2-9.")
  private List<String> apart = List.of();

  @Option(
      names = "--together",
      paramLabel = "A-B",
      split = ",",
      description = "Pairs that must be partners whenever they play, for example 3-4.")
  private List<String> together = List.of();

  @Option(names = "--seed", paramLabel = "S", description = "Any whole number. Default: 1.")
  private String seed = "1";

  @Option(names = "--thorough", description = "Search about ten times as long.")
  private boolean thorough;

  @Option(names = "--json", description = "Print one JSON object, numbers unrounded.")
  private boolean json;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    RotationWish wish =
        new RotateFlags(
                new RotateFlags.Counts(players, courts, rounds, seed),
                game,
                strengths,
                new RotateFlags.Pairs(apart, together))
            .wish();
    SearchEffort effort = thorough ? SearchEffort.THOROUGH : SearchEffort.USUAL;
    RotationAnswer answer = RotationSearch.find(wish, effort, SearchWatch.PATIENT);
    if (answer instanceof RotationAnswer.Refused refused) {
      throw new WrongInput(String.join(" ", refused.sentences()));
    }
    RotationAnswer.Found found = (RotationAnswer.Found) answer;
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      JsonAnswer.print(out, RotationJson.of(wish.game(), found.schedule()));
    } else {
      RotationLines.print(out, wish.game(), found.schedule());
    }
    return 0;
  }
}
