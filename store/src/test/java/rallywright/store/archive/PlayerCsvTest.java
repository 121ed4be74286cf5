package rallywright.store.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Level;
import rallywright.engine.club.Limit;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;

class PlayerCsvTest {

  @Test
  void list_withAllHeadings_isRead() {
    List<PlayerCsv.Line> lines =
        right(
            """
            name,level,hand,limits,notes,age group
            Marlo Quint,3.5,right,,,
            "Orrin, Tessa",4,LEFT,"no overheads; No Lunging","shoulder
            since spring",adult

            Ivo Ærlund,,both,easy work only,,junior
            """);
    assertThat(lines)
        .extracting(line -> line.withId(new PlayerId("p-" + line.number())))
        .map(PlayerCsvTest::withoutNotesAndAge)
        .containsExactly(
            player("p-2", "Marlo Quint", new Level(3.5), Hand.RIGHT, Set.of()),
            player(
                "p-3",
                "Orrin, Tessa",
                new Level(4),
                Hand.LEFT,
                Set.of(Limit.NO_OVERHEADS, Limit.NO_LUNGING)),
            player("p-6", "Ivo Ærlund", null, Hand.BOTH, Set.of(Limit.EASY_ONLY)));
    assertThat(lines)
        .extracting(PlayerCsv.Line::notes)
        .containsExactly("", "shoulder\nsince spring", "");
    assertThat(lines)
        .extracting(PlayerCsv.Line::ageGroup)
        .containsExactly(AgeGroup.ADULT, AgeGroup.ADULT, AgeGroup.JUNIOR);
  }

  @Test
  void headings_inAnyOrderAndCase_areFound() {
    PlayerCsv.Line line = right("Level, NAME\r\n3.5, Marlo\r\n").get(0);
    assertThat(line.name()).isEqualTo("Marlo");
    assertThat(line.level()).isEqualTo(new Level(3.5));
  }

  @Test
  void listPastedFromASheet_withTabs_isRead() {
    assertThat(right("name\tlevel\nMarlo, the tall\t3,5").get(0))
        .satisfies(
            line -> {
              assertThat(line.name()).isEqualTo("Marlo, the tall");
              assertThat(line.level()).isEqualTo(new Level(3.5));
            });
  }

  @Test
  void listWithSemicolonsAndByteOrderMark_isRead() {
    assertThat(right("\uFEFFname;level\nMarlo;3,25\n").get(0).level()).isEqualTo(new Level(3.25));
  }

  @Test
  void nameGuardedAgainstFormulas_losesItsApostrophe() {
    assertThat(right("name\n'=SUM(A1)\n'tHooft\n"))
        .extracting(PlayerCsv.Line::name)
        .containsExactly("=SUM(A1)", "'tHooft");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "name,level/Marlo,35        | 2 | level     | 35       | 1.0 to 7.0",
        "name,level/Marlo,good      | 2 | level     | good     | a number",
        "name,level/Marlo,NaN       | 2 | level     | NaN      | a number",
        "name,level/Marlo,-3        | 2 | level     | -3       | a number",
        "name,level/Marlo,1e1       | 2 | level     | 1e1      | a number",
        "name,hand/Marlo,third      | 2 | hand      | third    | right, left, both",
        "name,limits/Marlo,no fun   | 2 | limits    | no fun   | no overheads",
        "name,age group/Marlo,12    | 2 | age group | 12       | adult, junior",
        "name,level/,3.5            | 2 | name      | ``       | 1 to 80",
        "name,level/Marlo,3.5,x     | 2 | ``        | 3 cells  | 2, as many",
        "name,grade/Marlo,3.5       | 1 | heading 2 | grade    | name, level",
        "name,name/Marlo,Quint      | 1 | heading 2 | name     | once",
        "level/3.5                  | 1 | ``        | level    | name",
        "name/                      | 2 | ``        | no player | a player a line",
        "name/\"Marlo               | 2 | ``        | a quotation | closing"
      })
  void wrongCell_isNamedWithItsPlace(
      String list, int line, String column, String seen, String allowed) {
    PlayerCsv.Result result = PlayerCsv.read(list.replace("/", "\n"));
    assertThat(result).isInstanceOf(PlayerCsv.Wrong.class);
    PlayerCsv.Problem problem = ((PlayerCsv.Wrong) result).problems().get(0);
    assertThat(problem.line()).isEqualTo(line);
    assertThat(problem.column()).isEqualTo(column);
    assertThat(problem.seen()).startsWith(seen);
    assertThat(problem.allowed()).contains(allowed);
  }

  @Test
  void severalWrongCells_areAllListed() {
    PlayerCsv.Result result = PlayerCsv.read("name,level,hand\n,9,x\nMarlo,3,left\nIvo,y,\n");
    assertThat(((PlayerCsv.Wrong) result).problems())
        .extracting(problem -> problem.line() + " " + problem.column())
        .containsExactly("2 name", "2 level", "2 hand", "4 level");
  }

  @Test
  void nothing_isRefused() {
    assertThat(PlayerCsv.read("")).isInstanceOf(PlayerCsv.Wrong.class);
  }

  private static List<PlayerCsv.Line> right(String list) {
    PlayerCsv.Result result = PlayerCsv.read(list);
    assertThat(result).isInstanceOf(PlayerCsv.Right.class);
    return ((PlayerCsv.Right) result).lines();
  }

  private static Player player(String id, String name, Level level, Hand hand, Set<Limit> limits) {
    return new Player(
        new PlayerId(id), name, level, hand, limits, "", AgeGroup.ADULT, Standing.ACTIVE);
  }

  private static Player withoutNotesAndAge(Player player) {
    return player(
        player.id().value(), player.name(), player.level(), player.hand(), player.limits());
  }
}
