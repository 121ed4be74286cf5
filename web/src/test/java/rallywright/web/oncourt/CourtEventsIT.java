package rallywright.web.oncourt;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

class CourtEventsIT {

  private static final String HERE = SampleClub.SESSION.value();
  private static final String THERE = SampleClub.OTHER.value();
  private static int made;
  private static CourtServer server;
  private static CourtClient phone;

  @BeforeAll
  static void start(@TempDir Path data) {
    server = new CourtServer(data);
    phone = server.phone();
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  @ParameterizedTest(name = "{0} {1}")
  @CsvFileSource(resources = "bad-events.txt", delimiter = '|', quoteCharacter = '`')
  void event_thatCannotStand_isRefusedWithASentenceAndNotStored(
      String name, String fields, String expected) {
    int before = stored(HERE);
    JsonNode answer = phone.answers(HERE, "[" + event(id(), HERE, fields) + "]").get(0);
    assertThat(answer.get("outcome").stringValue()).as(name).isEqualTo("refused");
    assertThat(answer.get("reason").stringValue()).contains(expected);
    assertThat(stored(HERE)).isEqualTo(before);
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "bad-stamps.txt", delimiter = '|', quoteCharacter = '`')
  void stamp_thatCannotStand_isRefusedWithASentenceAndNotStored(
      String name, String sent, String expected) {
    int before = stored(HERE);
    JsonNode answer = phone.answers(HERE, "[" + sent + "]").get(0);
    assertThat(answer.get("outcome").stringValue()).as(name).isEqualTo("refused");
    assertThat(answer.get("reason").stringValue()).contains(expected);
    assertThat(stored(HERE)).isEqualTo(before);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          cut off  | [{"v":1,"id" | 400 | is not JSON
          no list  | {"v":1}      | 400 | must be a list
          empty    | ``           | 400 | must be a list
          """)
  void message_thatIsNoList_isRefusedAsAWhole(String name, String body, int status, String says) {
    HttpResponse<String> response = phone.postJson("/court/" + HERE + "/events", body);
    assertThat(response.statusCode()).as(name).isEqualTo(status);
    assertThat(response.body()).contains(says);
  }

  @Test
  void message_beyondTheLimits_isRefusedAsAWhole() {
    String long300 = "[\"" + "x".repeat(300_000) + "\"]";
    assertThat(phone.postJson("/court/" + HERE + "/events", long300).statusCode()).isEqualTo(413);
    String many = "[" + "1,".repeat(500) + "1]";
    assertThat(phone.postJson("/court/" + HERE + "/events", many).body()).contains("501 events");
  }

  @Test
  void event_sentTwice_isStoredOnceAndAnsweredBothTimes() {
    String rally = rally(id(), "b2-t2-l1", "B");
    int before = stored(HERE);
    assertThat(outcome(rally)).isEqualTo("stored");
    assertThat(outcome(rally)).isEqualTo("known");
    assertThat(stored(HERE)).isEqualTo(before + 1);
    assertThat(game("b2-t2-l1").get("b").intValue()).isEqualTo(1);
  }

  @Test
  void id_usedForAnotherEvent_isRefused() {
    String id = id();
    assertThat(outcome(rally(id, "b2-t2-l2", "A"))).isEqualTo("stored");
    JsonNode answer = phone.answers(HERE, "[" + rally(id, "b2-t2-l2", "B") + "]").get(0);
    assertThat(answer.get("outcome").stringValue()).isEqualTo("refused");
    assertThat(answer.get("reason").stringValue()).contains("names another event already");
    assertThat(game("b2-t2-l2").get("b").intValue()).isZero();
  }

  @Test
  void badEventAmongGoodOnes_isRefusedAlone() {
    String events =
        "[%s,%s,%s]"
            .formatted(
                rally(id(), "b3-t2-l1", "A"),
                event(id(), HERE, "\"type\":\"smash\""),
                rally(id(), "b3-t2-l1", "B"));
    JsonNode answers = phone.answers(HERE, events);
    assertThat(answers.get(0).get("outcome").stringValue()).isEqualTo("stored");
    assertThat(answers.get(1).get("outcome").stringValue()).isEqualTo("refused");
    assertThat(answers.get(2).get("outcome").stringValue()).isEqualTo("stored");
    assertThat(game("b3-t2-l1").get("a").intValue()).isEqualTo(3);
  }

  @Test
  void undo_ofAResult_bringsTheRalliesBack() {
    String given = id();
    phone.answers(
        HERE,
        "[%s,%s]"
            .formatted(
                rally(id(), "b5-t2-l2", "A"),
                event(
                    given,
                    HERE,
                    "\"type\":\"final-score\",\"game\":\"b5-t2-l2\",\"a\":2,\"b\":5,"
                        + "\"finish\":\"PLAYED_OUT\"")));
    assertThat(game("b5-t2-l2").get("status").stringValue()).isEqualTo("PLAYED_OUT");
    phone.answers(
        HERE, "[" + event(id(), HERE, "\"type\":\"undone\",\"undone\":\"" + given + "\"") + "]");
    assertThat(game("b5-t2-l2").get("a").intValue()).isEqualTo(1);
    assertThat(game("b5-t2-l2").get("call").stringValue()).isEqualTo("1-0");
  }

  @Test
  void undo_thatOvertakesWhatItTakesBack_countsOnceBothAreThere() {
    String given = id();
    String undo = event(id(), HERE, "\"type\":\"undone\",\"undone\":\"" + given + "\"");
    assertThat(outcome(undo)).isEqualTo("stored");
    assertThat(outcome(rally(given, "b2-t1-l2", "A"))).isEqualTo("stored");
    assertThat(game("b2-t1-l2").get("a").intValue()).isZero();
  }

  @Test
  void messagesOfOnePhone_inAnyOrder_countAsThePhoneCounted() {
    String first = rally(id(), "b5-t1-l1", "A");
    String second = rally(id(), "b5-t1-l1", "B");
    String third = rally(id(), "b5-t1-l1", "A");
    for (String late : new String[] {counted(third, 3), counted(first, 1), counted(second, 2)}) {
      assertThat(outcome(late)).isEqualTo("stored");
    }
    // A serves and scores, B wins the serve back, A wins it: 1-0 and A serves.
    assertThat(game("b5-t1-l1").get("call").stringValue()).isEqualTo("1-0");
    assertThat(game("b5-t1-l1").get("server").stringValue()).isEqualTo("A");
  }

  private static String counted(String event, int number) {
    return event.replace("\"by\":\"t\"", "\"by\":\"counting\",\"n\":" + number);
  }

  @ParameterizedTest
  @CsvSource({"2, 200, answers", "1, 200, answers", "99, 409, is newer", "x, 409, whole number"})
  void page_thatTalksInAnotherForm_isToldSoAndNothingIsStored(
      String form, int status, String says) {
    int before = stored(HERE);
    HttpResponse<String> answer = phone.postJson("/court/" + HERE + "/events", "[]", form);
    assertThat(answer.statusCode()).isEqualTo(status);
    assertThat(answer.body()).contains(says);
    assertThat(stored(HERE)).isEqualTo(before);
  }

  @Test
  void keeperOfThePage_namesFilesThatAreThere_andHoldsNothingOfTheClub() {
    CourtClient stranger = server.stranger();
    HttpResponse<String> worker = stranger.get("/court/worker.js");
    assertThat(worker.headers().firstValue("Service-Worker-Allowed")).contains("/court");
    var files =
        Pattern.compile("'(/[^']+)'")
            .matcher(worker.body().lines().skip(1).findFirst().orElseThrow());
    int found = 0;
    while (files.find()) {
      HttpResponse<String> file = stranger.get(files.group(1));
      assertThat(file.statusCode()).as(files.group(1)).isEqualTo(200);
      assertThat(file.body()).doesNotContain("Ilse", HERE);
      found++;
    }
    assertThat(found).isGreaterThan(30);
  }

  @Test
  void key_ofOneSession_opensNoOther() {
    assertThat(phone.get("/court/" + THERE + "/state").statusCode()).isEqualTo(403);
    String end = event(id(), THERE, "\"type\":\"session-ended\"");
    assertThat(phone.postJson("/court/" + THERE + "/events", "[" + end + "]").statusCode())
        .isEqualTo(403);
    for (String page : new String[] {"/", "/players", "/sessions", "/sessions/" + HERE}) {
      assertThat(phone.get(page).body()).as(page).doesNotContain("Marwick");
      assertThat(phone.get(page).statusCode()).as(page).isEqualTo(403);
    }
  }

  @Test
  void stranger_withoutAKey_readsAndWritesNothing() {
    CourtClient stranger = server.stranger();
    assertThat(stranger.get("/court/" + HERE + "/state").statusCode()).isEqualTo(401);
    assertThat(stranger.postJson("/court/" + HERE + "/events", "[]").statusCode()).isEqualTo(401);
    assertThat(stranger.get("/court/" + HERE).body()).doesNotContain("Ilse");
  }

  @Test
  void key_thatIsWrongOrHasRunOut_isRefusedWithASentence() {
    CourtClient stranger = server.stranger();
    for (String key : new String[] {"", "guess", server.expiredKey, "x".repeat(5000)}) {
      HttpResponse<String> answer = stranger.postJson("/court/open", "{\"key\":\"" + key + "\"}");
      assertThat(answer.statusCode()).isIn(403, 429);
      assertThat(answer.body()).contains("problem");
    }
    assertThat(stranger.get("/court/" + HERE + "/state").statusCode()).isEqualTo(401);
  }

  @Test
  void state_ofAPhone_showsFirstNamesAndNothingMore() {
    String body = phone.get("/court/" + HERE + "/state").body();
    assertThat(body).contains("Ilse", "Tomas");
    assertThat(body).doesNotContain("Marwick", "Okafor", SampleClub.NOTE, "overhead", "OVERHEAD");
  }

  private static int stored(String session) {
    return phone.state(session).get("events").size();
  }

  private static JsonNode game(String id) {
    for (JsonNode game : phone.state(HERE).get("games").values()) {
      if (game.get("id").stringValue().equals(id)) {
        return game;
      }
    }
    throw new AssertionError("No game " + id);
  }

  private static String outcome(String event) {
    return phone.answers(HERE, "[" + event + "]").get(0).get("outcome").stringValue();
  }

  private static String rally(String id, String game, String winner) {
    return event(
        id,
        HERE,
        "\"type\":\"rally\",\"game\":\"%s\",\"winner\":\"%s\",\"bonus\":\"NONE\""
            .formatted(game, winner));
  }

  private static String event(String id, String session, String fields) {
    return "{\"v\":1,\"id\":\"%s\",\"session\":\"%s\",\"at\":1772557200000,\"by\":\"t\",%s}"
        .formatted(id, session, fields);
  }

  private static String id() {
    made++;
    return "01890000-0000-7000-8000-%012x".formatted(made);
  }
}
