package rallywright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rallywright.catalogue.Catalogue;
import rallywright.engine.plan.PlanAnswer;
import rallywright.engine.plan.SessionPlanner;

/** A session for those who are there, from a file. */
@Command(
    name = "plan",
    description = {
      "Plans a session: warm-ups, drills, who plays whom, with the reason for each block.",
      "The same file gives the same plan."
    },
    footer = {
      "",
      "FILE is one JSON object: minutes, courts, players [{name, level, skills {name: mean}}];"
          + " if you like, coverage (full or needs, default full), confidence of being done in time"
          + " (0.5 to 0.99, default 0.9), maxHardMinutes in a row (5 to 120, default 20), seed,"
          + " warmUps (first or left-out).",
      "Wishes: pinned [{drill, line (straight or cross-court), rounds}], slots [soft game, hands or"
          + " power], forbidden [drills], equipment [what is at hand], yardsticks (where-unsure, a"
          + " list, or {every, sinceLast}), spare (sit-out or three-on-a-lane), ends (usual,"
          + " by-clock or last-lane), rests {every, minutes}.",
      "A player may also have limits [no overheads, no lunging, no running back, easy work only], a"
          + " weight (0 to 10, default 1), fillsIn (true for a coach who plays only where the"
          + " number is odd), and from and until, the minutes from the start at which somebody"
          + " comes late or leaves early.",
      "Skills are logits beside level 3.5; those not named follow from the level.",
      "",
      "Example: {\"minutes\": 90, \"courts\": 1, \"players\": [{\"name\": \"Ann\", \"level\": 3.5,"
          + " \"skills\": {\"drop\": -0.4}}, {\"name\": \"Ben\", \"level\": 4.0}]}"
    },
    mixinStandardHelpOptions = true)
final class PlanCommand implements Callable<Integer> {

  @Parameters(paramLabel = "FILE", description = "JSON file with the wish and the players.")
  private Path file = Path.of("");

  @Option(names = "--json", description = "Print one JSON object, numbers unrounded.")
  private boolean json;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    JsonField root = JsonFile.root(file);
    PlanAnswer answer = SessionPlanner.plan(PlanFile.read(root));
    if (answer instanceof PlanAnswer.Refused refused) {
      String sentences = String.join(" ", refused.sentences());
      throw root.field("minutes").refused(new IllegalArgumentException(sentences));
    }
    PlanAnswer.Planned planned = (PlanAnswer.Planned) answer;
    PlanJson plan = PlanJson.of(planned, Catalogue.shipped());
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      JsonAnswer.print(out, plan);
    } else {
      PlanTable.print(out, planned, plan);
    }
    return 0;
  }
}
