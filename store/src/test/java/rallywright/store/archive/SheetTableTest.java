package rallywright.store.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SheetTableTest {

  @Test
  void cells_areQuotedWhereTheyMustBe_andNumbersStayNumbers() {
    SheetTable table = SheetTable.with("who", "minus");
    table.row("Okhelund, Maris \"M\"", -2.5);
    assertThat(table.text()).isEqualTo("who,minus\r\n\"Okhelund, Maris \"\"M\"\"\",-2.5\r\n");
  }

  // The first characters that spreadsheets take for a formula, as the OWASP page on CSV injection
  // lists them.
  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)"})
  void text_thatASpreadsheetWouldRun_isGivenAnApostrophe(String text) {
    SheetTable table = SheetTable.with("name");
    table.row(text);
    assertThat(table.text()).isEqualTo("name\r\n'" + text + "\r\n");
  }

  @Test
  void row_ofTheWrongLength_isRefused() {
    SheetTable table = SheetTable.with("one", "two");
    assertThatThrownBy(() -> table.row(1))
        .hasMessageContaining("1 cells")
        .hasMessageContaining("2");
  }
}
