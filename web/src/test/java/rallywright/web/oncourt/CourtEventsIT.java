package rallywright.web.oncourt;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
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
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          no type         | "game":"b2-t1-l1","winner":"A","bonus":"NONE" | "type" is missing
          other type      | "type":"smash","game":"b2-t1-l1" | "smash" is not known
          type a number   | "type":7,"game":"b2-t1-l1" | allowed: a text
          strange game    | "type":"rally","game":"g99","winner":"A","bonus":"NONE" | game (g99) must be one of this
          empty game      | "type":"rally","game":"","winner":"A","bonus":"NONE" | must not be empty
          no game         | "type":"rally","winner":"A","bonus":"NONE" | "game" is missing
          strange side    | "type":"rally","game":"b2-t1-l1","winner":"C","bonus":"NONE" | allowed: A, B
          no side         | "type":"rally","game":"b2-t1-l1","bonus":"NONE" | "winner" is missing
          strange bonus   | "type":"rally","game":"b2-t1-l1","winner":"A","bonus":"ACE" | allowed: NONE
          bonus not here  | "type":"rally","game":"b5-t1-l1","winner":"A","bonus":"ROUND_THE_POST" | must be allowed by the drill
          strange stroke  | "type":"rally","game":"b2-t1-l1","winner":"A","bonus":"NONE","ending":{"stroke":"SMASH"} | allowed: SERVE
          empty ending    | "type":"rally","game":"b2-t1-l1","winner":"A","bonus":"NONE","ending":{} | must name a stage
          unknown field   | "type":"time-called","game":"b2-t1-l1","note":"x" | not known here
          nobody there    | "type":"final-score","game":"b2-t1-l1","a":4,"b":3,"finish":"PLAYED_OUT" | must bring one side
          both there      | "type":"final-score","game":"b2-t1-l1","a":5,"b":5,"finish":"PLAYED_OUT" | must leave the loser short
          past the end    | "type":"final-score","game":"b2-t1-l1","a":7,"b":3,"finish":"PLAYED_OUT" | must not pass the end
          won before time | "type":"final-score","game":"b2-t1-l1","a":5,"b":3,"finish":"TIME_CALLED" | must be unfinished
          below the start | "type":"final-score","game":"b3-t1-l1","a":1,"b":5,"finish":"PLAYED_OUT" | at least its head start (2)
          minus           | "type":"final-score","game":"b2-t1-l1","a":-1,"b":5,"finish":"PLAYED_OUT" | no number below 0
          half a point    | "type":"final-score","game":"b2-t1-l1","a":4.5,"b":5,"finish":"PLAYED_OUT" | a whole number
          score a text    | "type":"final-score","game":"b2-t1-l1","a":"5","b":3,"finish":"PLAYED_OUT" | a whole number
          strange finish  | "type":"final-score","game":"b2-t1-l1","a":5,"b":3,"finish":"RAIN" | allowed: PLAYED_OUT
          strange block   | "type":"block-started","block":"b77" | block (b77) must be one of this
          nothing to undo | "type":"undone","undone":"01890000-0000-7000-8000-00000000ffff" | must be one of this session
          no yardstick    | "type":"yardstick","block":"b2","player":"p1","hits":3,"balls":10 | must be a yardstick
          more than balls | "type":"yardstick","block":"b4","player":"p1","hits":11,"balls":10 | must be 0 or more of
          strange player  | "type":"effort","player":"p9","rating":5 | must take part
          effort of 11    | "type":"effort","player":"p1","rating":11 | must be from 0 to 10
          heat of 90 °C   | "type":"conditions","wind":"CALM","sun":"NONE","celsius":90 | from −40 to 60
          strange wind    | "type":"conditions","wind":"GALE","sun":"NONE" | allowed: CALM
          """)
  void event_thatCannotStand_isRefusedWithASentenceAndNotStored(
      String name, String fields, String expected) {
    int before = stored(HERE);
    JsonNode answer = phone.answers(HERE, "[" + event(id(), HERE, fields) + "]").get(0);
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
          id no uuid      | {"v":1,"id":"e1","session":"tuesday-evening","at":5,"by":"x","type":"session-ended"} | must be a UUID
          id missing      | {"v":1,"session":"tuesday-evening","at":5,"by":"x","type":"session-ended"} | "id" is missing
          other session   | {"v":1,"id":"01890000-0000-7000-8000-00000000aaaa","session":"thursday-morning","at":5,"by":"x","type":"session-ended"} | must be the one of this address
          time before 0   | {"v":1,"id":"01890000-0000-7000-8000-00000000aaaa","session":"tuesday-evening","at":-5,"by":"x","type":"session-ended"} | milliseconds since 1970
          time a text     | {"v":1,"id":"01890000-0000-7000-8000-00000000aaaa","session":"tuesday-evening","at":"now","by":"x","type":"session-ended"} | a whole number
          newer version   | {"v":9,"id":"01890000-0000-7000-8000-00000000aaaa","session":"tuesday-evening","at":5,"by":"x","type":"session-ended"} | version (9)
          no object       | 7 | must be an object
          nothing         | null | must be an object
          """)
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
