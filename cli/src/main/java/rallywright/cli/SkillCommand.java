package rallywright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rallywright.engine.skill.Estimate;
import rallywright.engine.skill.Posterior;
import rallywright.engine.skill.SkillSum;

/** What scores say about players: reads a file of results, prints the estimates. */
@Command(
    name = "skill",
    description = {
      "What scores say about players: estimates of every skill of every player in every week.",
      "Numbers are logits of a rally chance: a player one logit ahead wins about 73 of 100 rallies."
    },
    mixinStandardHelpOptions = true)
final class SkillCommand implements Callable<Integer> {

  @Parameters(paramLabel = "FILE", description = "JSON file with drills, levels and results.")
  private Path file = Path.of("");

  @Option(names = "--json", description = "Print one JSON object, numbers unrounded.")
  private boolean json;

  @Option(
      names = "--csv",
      paramLabel = "TABLE",
      description = "Print one table as CSV: skills or effects.")
  private @Nullable String csv;

  @Spec private CommandSpec spec = CommandSpec.create();

  /** The estimates of one player in one week, one number for each skill. */
  record PlayerWeek(
      int player,
      int week,
      List<Double> mean,
      List<Double> sd,
      List<Double> mode,
      List<Double> modeSd) {}

  /** The estimate of a drill's advantage or a yardstick's difficulty. */
  record Effect(String name, double mean, double sd, double mode, double modeSd) {}

  /** The whole answer. */
  record Answer(List<PlayerWeek> posterior, List<Effect> drillEffects, double logEvidence) {}

  @Override
  public Integer call() {
    SkillCsv.check(csv);
    SkillFile input = read(file);
    Posterior posterior = input.model().fit(input.evidence(), input.allWeeks());
    PrintWriter out = spec.commandLine().getOut();
    if (csv != null) {
      SkillCsv.print(out, csv, input, answer(input, posterior));
    } else if (json) {
      JsonAnswer.print(out, answer(input, posterior));
    } else {
      SkillTable.print(out, input, posterior);
    }
    return 0;
  }

  static SkillFile read(Path file) {
    return SkillFile.read(JsonFile.root(file));
  }

  private static Answer answer(SkillFile input, Posterior posterior) {
    List<PlayerWeek> lines = new ArrayList<>();
    for (int player = 0; player < input.club().entrants().size(); player++) {
      for (int week = 0; week < input.weeks(); week++) {
        lines.add(playerWeek(input, posterior, player, week));
      }
    }
    List<Effect> effects = new ArrayList<>();
    for (int effect = 0; effect < input.club().effects().size(); effect++) {
      Estimate mean = posterior.effect(effect);
      Estimate mode = posterior.effectMode(effect);
      effects.add(
          new Effect(
              input.club().effects().get(effect).name(),
              mean.mean(),
              mean.sd(),
              mode.mean(),
              mode.sd()));
    }
    return new Answer(lines, effects, posterior.logEvidence());
  }

  private static PlayerWeek playerWeek(SkillFile input, Posterior posterior, int player, int week) {
    List<Estimate> means = new ArrayList<>();
    List<Estimate> modes = new ArrayList<>();
    for (int skill = 0; skill < input.skills().size(); skill++) {
      SkillSum.Key key = new SkillSum.Key(player, skill, week);
      means.add(posterior.skill(key));
      modes.add(posterior.skillMode(key));
    }
    return new PlayerWeek(
        player,
        week,
        means.stream().map(Estimate::mean).toList(),
        means.stream().map(Estimate::sd).toList(),
        modes.stream().map(Estimate::mean).toList(),
        modes.stream().map(Estimate::sd).toList());
  }
}
