package rallywright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A whole point in its stages: where rallies end, who wins them, what each skill is worth. */
@Command(
    name = "point",
    description = {
      "A whole point in its stages: where rallies end, who wins them and the game to 11, what each"
          + " skill is worth.",
      "Skills are in logits of a rally chance; 0 is a player of level 3.5."
    },
    footer = {
      "",
      "FILE is an object: play (doubles or half-court), a and b (lists of one or two players, each"
          + " {\"name\": \"Ada\", \"skills\": {\"drop\": -0.4}}; a skill that is missing is 0;"
          + " the first of a pair starts on the right), stages (optional, for each stage to change"
          + " {\"serverWins\": 0.05, \"receiverWins\": 0.16, \"again\": 0}: chances between"
          + " equals), endings (optional, noted endings of a's rallies: {\"server\": \"a\","
          + " \"stage\": \"third-shot\", \"winner\": \"b\"}) and clubEndings (the same of other"
          + " rallies, from which the stages are learned). The stages: serve, return, third-shot,"
          + " transition, net-exchange.",
      "",
      "Example: rallywright point --skills drop=-0.4,dink=0.3 --against 0.1"
    },
    mixinStandardHelpOptions = true)
final class PointCommand implements Callable<Integer> {

  @Parameters(
      paramLabel = "FILE",
      arity = "0..1",
      description = "Players, stages and noted endings as JSON. Without it: a player by --skills.")
  private @Nullable Path file;

  @Option(
      names = "--play",
      paramLabel = "GAME",
      description = "doubles or half-court. Default: doubles.")
  private @Nullable String play;

  @Option(
      names = "--skills",
      paramLabel = "SKILL=X,…",
      description = "The player's skills in logits; those not named are 0.")
  private @Nullable String skills;

  @Option(
      names = "--against",
      paramLabel = "X",
      description = "How good the others are at everything, in logits. Default: 0.")
  private @Nullable String against;

  @Option(names = "--json", description = "Print one JSON object, numbers unrounded.")
  private boolean json;

  @Option(
      names = "--csv",
      paramLabel = "TABLE",
      description = "Print one table as CSV: stages, worth, derivatives or breakdown.")
  private @Nullable String csv;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    PointTables.check(csv);
    PointAnswer answer = PointAnswer.to(question());
    PrintWriter out = spec.commandLine().getOut();
    if (csv != null) {
      PointTables.print(out, csv, answer);
    } else if (json) {
      JsonAnswer.print(out, answer.asJson());
    } else {
      answer.lines().forEach(out::println);
      out.flush();
    }
    return 0;
  }

  private PointQuestion question() {
    if (file == null) {
      return PointFlags.question(play, skills, against);
    }
    if (play != null || skills != null || against != null) {
      throw new WrongInput(
          "The file %s says who plays; --play, --skills and --against go without a file. Maybe"
                  .formatted(file)
              + " leave them out.");
    }
    return PointFile.read(JsonFile.root(file));
  }
}
