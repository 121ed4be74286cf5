package rallywright.cli;

import java.io.PrintWriter;
import java.util.Locale;
import rallywright.engine.skill.Estimate;
import rallywright.engine.skill.Posterior;
import rallywright.engine.skill.SkillSum;

/** The estimates of the last week as a table for people, each with its 80 % interval. */
final class SkillTable {

  private SkillTable() {}

  static void print(PrintWriter out, SkillFile input, Posterior posterior) {
    int week = input.weeks() - 1;
    out.printf("Estimates in week %d, in logits, with 80 %% intervals.%n", week);
    for (int player = 0; player < input.club().entrants().size(); player++) {
      for (int skill = 0; skill < input.skills().size(); skill++) {
        line(
            out,
            "player %d  %-18s".formatted(player, input.skills().get(skill)),
            posterior.skill(new SkillSum.Key(player, skill, week)));
      }
    }
    for (int effect = 0; effect < input.club().effects().size(); effect++) {
      line(out, input.club().effects().get(effect).name(), posterior.effect(effect));
    }
    out.printf(Locale.ROOT, "Log evidence %.4f%n", posterior.logEvidence());
    out.flush();
  }

  private static void line(PrintWriter out, String name, Estimate estimate) {
    out.printf(
        Locale.ROOT,
        "%-42s %6.2f  (%5.2f to %5.2f)%n",
        name,
        estimate.mean(),
        estimate.low80(),
        estimate.high80());
  }
}
