package rallywright.store.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rallywright.engine.session.CourtEvent;
import rallywright.store.Examples;

class EventJsonTest {

  private static final String RALLY =
      "{\"v\":1,\"type\":\"rally\",\"id\":\"e\",\"session\":\"s\",\"at\":5,\"by\":\"\","
          + "\"game\":\"g\",\"winner\":\"A\",\"bonus\":\"NONE\"}";

  @Test
  void everyTypeOfEvent_writtenAndRead_isTheSame() {
    for (CourtEvent event : Examples.oneOfEach()) {
      assertThat(EventJson.read(EventJson.write(event))).isEqualTo(event);
    }
  }

  @Test
  void examples_holdEveryTypeOfEvent() {
    assertThat(Examples.oneOfEach().stream().map(Object::getClass).distinct())
        .hasSameElementsAs(
            Arrays.asList((Object[]) CourtEvent.class.getPermittedSubclasses()).stream()
                .<Class<?>>map(each -> (Class<?>) each)
                .toList());
  }

  @Test
  void rally_written_hasTheDocumentedForm() {
    assertThat(EventJson.write(EventJson.read(RALLY))).isEqualTo(RALLY);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"type\":\"rally\"   | \"type\":\"hologram\"       | type   | not known",
        "\"v\":1              | \"v\":2                     | v      | newer",
        "\"winner\":\"A\"     | \"winner\":\"C\"            | winner | allowed: A, B",
        "\"winner\":\"A\"     | \"winner\":1                | winner | a text",
        "\"at\":5             | \"at\":5.5                  | at     | a whole number",
        "\"game\":\"g\",      | ``                          | game   | missing",
        "\"id\":\"e\"         | \"id\":\"\"                 | id     | 1 to 64",
        "\"bonus\":\"NONE\"   | \"bonus\":\"NONE\",\"x\":1  | x      | not known",
        "\"bonus\":\"NONE\"   | \"bonus\":\"NONE\",\"v\":1  | char   | Duplicate",
        "\"bonus\":\"NONE\"}  | \"bonus\":\"NONE\"          | char   | not JSON",
        "\"bonus\":\"NONE\"}  | \"bonus\":\"NONE\"}{}       | char   | not JSON"
      })
  void wrongText_isRefused_withTheField(String right, String wrong, String field, String reason) {
    String text = RALLY.replace(right, wrong == null ? "" : wrong);
    assertThat(text).isNotEqualTo(RALLY);
    assertThatThrownBy(() -> EventJson.read(text))
        .isInstanceOf(WrongJson.class)
        .hasMessageContaining(reason)
        .satisfies(problem -> assertThat(((WrongJson) problem).field()).startsWith(field));
  }

  @Test
  void plan_writtenAndRead_isTheSame() {
    assertThat(PlanJson.read(PlanJson.write(Examples.plan()))).isEqualTo(Examples.plan());
  }

  @Test
  void plan_withWrongSeat_namesThePlace() {
    String text = PlanJson.write(Examples.plan()).replaceFirst("\"UP\"", "\"SIDEWAYS\"");
    assertThatThrownBy(() -> PlanJson.read(text))
        .isInstanceOf(WrongJson.class)
        .hasMessageContaining("blocks[1].games[0].b.role")
        .hasMessageContaining("SERVER");
  }
}
