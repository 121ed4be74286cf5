package rallywright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rallywright.catalogue.Catalogue;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.Yardstick;

/** The catalogue over real HTTP. */
class DrillPagesIT {

  @TempDir static Path data;
  private static RunningServer server;
  private static CoachBrowser coach;

  @BeforeAll
  static void start() {
    server =
        WebServer.start(new ServerSettings(data, ServerSettings.Mode.CLUB, Reach.thisComputer(0)));
    coach = CoachBrowser.signedIn(server);
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  static Stream<Drill> drills() {
    return Catalogue.shipped().drills().stream();
  }

  @Test
  void list_namesEveryDrillAndYardstick_inTheOrderOfASession() {
    HttpResponse<String> answer = coach.get("/drills");
    assertThat(answer.statusCode()).isEqualTo(200);
    String[] names =
        Stream.concat(
                drills().map(Drill::name),
                Catalogue.shipped().yardsticks().stream().map(Yardstick::name))
            .map(name -> ">" + name + "</a>")
            .toArray(String[]::new);
    assertThat(answer.body()).containsSubsequence(names);
  }

  @Test
  void list_ofOneSkill_holdsOnlyItsDrills() {
    String body = coach.get("/drills?skill=lob").body();
    drills()
        .forEach(
            drill -> {
              String link = "href=\"/drills/" + drill.key() + "\"";
              if (drill.skills().contains(Skill.LOB)) {
                assertThat(body).contains(link);
              } else {
                assertThat(body).doesNotContain(link);
              }
            });
  }

  @ParameterizedTest
  @MethodSource("drills")
  void page_ofADrill_showsItsRuleADrawingForEachDirectionAndItsCautions(Drill drill) {
    HttpResponse<String> answer = coach.get("/drills/" + drill.key());
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.body()).contains(drill.rule()).contains(drill.purpose());
    assertThat(answer.body()).contains(drill.advice().safety());
    assertThat(answer.body().split("court-drawing", -1)).hasSize(drill.directions().size() + 1);
    assertThat(answer.body()).doesNotContain("style=\"");
  }

  @Test
  void pageOfAYardstick_saysWhatCounts() {
    Yardstick yardstick = Catalogue.shipped().yardsticks().get(0);
    String body = coach.get("/drills/" + yardstick.key()).body();
    assertThat(body).contains("The ball lands in the kitchen").contains("Balls").contains(">20<");
  }

  @Test
  void unknownDrillOrSkill_isAnsweredWithWhatToTry() {
    HttpResponse<String> drill = coach.get("/drills/no-such-drill");
    assertThat(drill.statusCode()).isEqualTo(404);
    assertThat(drill.body()).contains("There is no drill").contains("choose it from the list");
    assertThat(coach.get("/drills/No%20Such").statusCode()).isEqualTo(404);
    HttpResponse<String> skill = coach.get("/drills?skill=flying");
    assertThat(skill.statusCode()).isEqualTo(404);
    assertThat(skill.body()).contains("the skills are serve, return");
  }
}
