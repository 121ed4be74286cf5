package rallywright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;
import rallywright.cli.SkillCommand.Effect;
import rallywright.cli.SkillCommand.PlayerWeek;

/** Prints one table of skill estimates as CSV (RFC 4180), numbers unrounded, in logits. */
final class SkillCsv {

  private static final List<String> TABLES = List.of("skills", "effects");

  private SkillCsv() {}

  static void check(@Nullable String table) {
    if (table != null && !TABLES.contains(table)) {
      throw new WrongInput(
          "The table --csv (%s) must be one of %s. Maybe skills."
              .formatted(table, String.join(", ", TABLES)));
    }
  }

  static void print(PrintWriter out, String table, SkillFile input, SkillCommand.Answer answer) {
    try {
      CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180);
      if (table.equals("skills")) {
        skills(printer, input, answer.posterior());
      } else {
        effects(printer, answer.drillEffects());
      }
      printer.flush();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void skills(CSVPrinter printer, SkillFile input, List<PlayerWeek> lines)
      throws IOException {
    printer.printRecord("player", "week", "skill", "mean", "sd", "mode", "modeSd");
    for (PlayerWeek line : lines) {
      for (int skill = 0; skill < input.skills().size(); skill++) {
        printer.printRecord(
            line.player(),
            line.week(),
            input.skills().get(skill),
            line.mean().get(skill),
            line.sd().get(skill),
            line.mode().get(skill),
            line.modeSd().get(skill));
      }
    }
  }

  private static void effects(CSVPrinter printer, List<Effect> effects) throws IOException {
    printer.printRecord("name", "mean", "sd", "mode", "modeSd");
    for (Effect effect : effects) {
      printer.printRecord(
          effect.name(), effect.mean(), effect.sd(), effect.mode(), effect.modeSd());
    }
  }
}
