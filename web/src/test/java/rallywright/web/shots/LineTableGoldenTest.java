package rallywright.web.shots;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rallywright.engine.aim.LineTable;
import rallywright.engine.aim.ShotSetting;
import rallywright.web.page.Units;

/** The guide's table of straight against cross-court is what the program works out. */
class LineTableGoldenTest {

  private static final Path GUIDE = Path.of("../docs/guide/shots.md");

  private static Stream<LineRow> rows(LineTable table) {
    return Stream.of(
        LineRow.of(table.shot(), "straight", table.straight(), Units.FEET),
        LineRow.of(table.shot(), "cross-court", table.cross(), Units.FEET));
  }

  private static String line(LineRow row) {
    List<String> cells = new ArrayList<>(List.of(row.shot(), row.way()));
    row.answers().stream()
        .map(cell -> cell.value() + (cell.range().isEmpty() ? "" : " (" + cell.range() + ")"))
        .forEach(cells::add);
    cells.addAll(row.geometry());
    return "| " + String.join(" | ", cells) + " |";
  }

  @Test
  void guide_hasTheTableAsItIsWorkedOut() throws Exception {
    List<String> lines =
        LineTable.SHOTS.stream()
            .map(shot -> LineTable.of(shot, ShotSetting.Day.CALM, 3.5))
            .flatMap(LineTableGoldenTest::rows)
            .map(LineTableGoldenTest::line)
            .toList();
    assertThat(lines).hasSize(8);
    assertThat(Files.readString(GUIDE)).contains(String.join("\n", lines));
  }
}
