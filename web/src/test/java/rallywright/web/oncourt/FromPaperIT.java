package rallywright.web.oncourt;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FromPaperIT {

  private static final String HERE = SampleClub.SESSION.value();
  private static final String PAGE = "/sessions/" + HERE + "/from-paper";
  private static CourtServer server;
  private static CourtClient coach;

  @BeforeAll
  static void start(@TempDir Path data) {
    server = new CourtServer(data);
    coach = server.coach();
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          4   | 3  |    | must bring one side to its target
          5   | 5  |    | must leave the loser short
          9   | 2  |    | must not pass the end
          5   | 2  | on | must be unfinished if time was called
          x   | 2  |    | must be a whole number
          -1  | 5  |    | must be a whole number from 0
          5.5 | 2  |    | must be a whole number
          5   |    |    | One box is empty
          999 | 3  |    | must be a whole number from 0 to 400
          """)
  void typedScore_thatCannotBe_isRefusedInPlaceAndTheRestIsKept(
      String a, String b, String time, String expected) {
    int before = stored();
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("a-b2-t1-l2", "5");
    fields.put("b-b2-t1-l2", "1");
    fields.put("a-b2-t1-l1", a);
    fields.put("b-b2-t1-l1", b == null ? "" : b);
    if (time != null) {
      fields.put("time-b2-t1-l1", time);
    }
    HttpResponse<String> answer = coach.postForm(PAGE, PAGE, fields);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains(expected, "aria-invalid=\"true\"");
    assertThat(answer.body()).contains("name=\"a-b2-t1-l2\" value=\"5\"");
    assertThat(stored()).isEqualTo(before);
  }

  @Test
  void headStart_notReached_isRefused() {
    HttpResponse<String> answer =
        coach.postForm(PAGE, PAGE, Map.of("a-b3-t1-l1", "0", "b-b3-t1-l1", "5"));
    assertThat(answer.body()).contains("must give Ilse at least its head start (2)");
  }

  @Test
  void halfASheet_isStored_andStoringItAgainAddsNothing() {
    Map<String, String> fields =
        Map.of(
            "a-b5-t1-l1",
            "5",
            "b-b5-t1-l1",
            "3",
            "a-b5-t1-l2",
            "2",
            "b-b5-t1-l2",
            "4",
            "time-b5-t1-l2",
            "on");
    int before = stored();
    assertThat(coach.postForm(PAGE, PAGE, fields).statusCode()).isEqualTo(302);
    assertThat(stored()).isEqualTo(before + 2);
    coach.postForm(PAGE, PAGE, fields);
    assertThat(stored()).isEqualTo(before + 2);
    String page = coach.get("/sessions/" + HERE).body();
    assertThat(page).contains("5–3", "2–4, time called");
    assertThat(coach.get(PAGE).body()).contains("name=\"a-b5-t1-l1\" value=\"5\"");
  }

  @Test
  void codeForPhones_takenBack_turnsPhonesAway() {
    CourtClient phone = server.phone();
    assertThat(phone.get("/court/" + HERE + "/state").statusCode()).isEqualTo(200);
    coach.postForm("/sessions/" + HERE, "/sessions/" + HERE + "/phones/take-back", Map.of());
    assertThat(phone.get("/court/" + HERE + "/state").statusCode()).isEqualTo(401);
    assertThat(server.phone().get("/court/" + HERE + "/state").statusCode()).isEqualTo(401);
  }

  @Test
  void session_thatIsNotThere_saysSo() {
    assertThat(coach.get("/sessions/nothing").statusCode()).isEqualTo(404);
    assertThat(coach.get("/sessions/nothing").body()).contains("no such session");
    assertThat(coach.get("/court/nothing/state").statusCode()).isEqualTo(404);
  }

  private static int stored() {
    return coach.state(HERE).get("events").size();
  }
}
