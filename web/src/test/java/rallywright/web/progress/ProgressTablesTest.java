package rallywright.web.progress;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import rallywright.catalogue.Catalogue;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Level;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.drill.Skill;
import rallywright.engine.reading.ClubHistory;
import rallywright.engine.reading.ClubReading;

class ProgressTablesTest {

  private static final LocalDate TODAY = LocalDate.of(2026, 3, 31);
  private static final Player MEAN_NAME = player("one", "=HYPERLINK(A1)", 3.5);
  private static final Player OTHER = player("two", "Bo, the \"second\"", 4.0);
  private static final ClubReading READING =
      ClubReading.of(
          new ClubHistory(
              List.of(MEAN_NAME, OTHER),
              Catalogue.shipped().drills(),
              Catalogue.shipped().yardsticks(),
              List.of(),
              TODAY));

  private static Player player(String id, String name, double level) {
    return new Player(
        new PlayerId(id),
        name,
        new Level(level),
        Hand.RIGHT,
        Set.of(),
        "",
        AgeGroup.ADULT,
        Standing.ACTIVE);
  }

  private static List<CSVRecord> read(String table) throws IOException {
    return CSVFormat.RFC4180.parse(new StringReader(table)).getRecords();
  }

  @Test
  void nameThatASpreadsheetWouldRun_isGuardedInEveryTable() throws IOException {
    List<String> tables =
        List.of(
            ProgressTables.skills(MEAN_NAME, READING),
            ProgressTables.needs(List.of(MEAN_NAME), READING, READING.points().worth()),
            PointTables.worth(MEAN_NAME, READING.points()),
            PointTables.breakdown(MEAN_NAME, READING.points()),
            PointTables.partners(OTHER, READING.points()));
    for (String table : tables) {
      assertThat(read(table)).hasSizeGreaterThan(1);
      assertThat(table).contains("'=HYPERLINK(A1)").doesNotContain(",=HYPERLINK");
      assertThat(table.lines()).noneMatch(line -> line.startsWith("=") || line.startsWith("\"="));
    }
  }

  @Test
  void skills_withoutScores_standAtTheLevel_andAreTooEarlyToTell() throws IOException {
    List<CSVRecord> rows = read(ProgressTables.skills(OTHER, READING));
    assertThat(rows).hasSize(1 + Skill.values().length);
    assertThat(rows.get(1).get(0)).isEqualTo("Bo, the \"second\"");
    // Half a step of level is worth 0.45 logits (assumption of this project); level 4.0 is one up.
    assertThat(Double.parseDouble(rows.get(1).get(3))).isEqualTo(0.45);
    assertThat(rows.get(1).get(9)).isEqualTo("no");
  }

  @Test
  void matrix_ranksThreeNeedsOfEachPlayer_andOutlinesWhatRestsOnNoScore() {
    GainMatrix matrix = GainMatrix.of(List.of(MEAN_NAME, OTHER), READING, READING.points().worth());
    assertThat(matrix.rows()).hasSize(2);
    for (GainMatrix.Row row : matrix.rows()) {
      assertThat(row.cells()).hasSize(Skill.values().length).noneMatch(GainMatrix.Cell::known);
      assertThat(row.cells())
          .extracting(GainMatrix.Cell::rank)
          .filteredOn(rank -> !rank.isEmpty())
          .containsExactlyInAnyOrder("1", "2", "3");
      assertThat(row.cells())
          .allSatisfy(cell -> assertThat(Double.parseDouble(cell.side())).isBetween(2.0, 20.0));
      double first = side(row, "1");
      assertThat(row.cells())
          .allSatisfy(
              cell -> assertThat(Double.parseDouble(cell.side())).isLessThanOrEqualTo(first));
    }
  }

  private static double side(GainMatrix.Row row, String rank) {
    return row.cells().stream()
        .filter(cell -> cell.rank().equals(rank))
        .mapToDouble(cell -> Double.parseDouble(cell.side()))
        .findFirst()
        .orElseThrow();
  }
}
