package rallywright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import rallywright.store.ClubContents;
import rallywright.web.Endpoints.Endpoint;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Whatever is sent to whichever address: the server does not break, stores nothing of what it does
 * not take, and says in a sentence what is wrong. The number of tries is {@code fuzz.tries}; each
 * follows from the seed that stands in the message of a failure.
 */
class StrangeInputIT {

  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final Pattern SENTENCE = Pattern.compile("[A-Za-z][^<>]{15,}[.]");
  private static final String EVENTS = "/court/" + StrangeClub.SESSION + "/events";

  /** A good message: an event of every type, each with everything that it can carry. */
  private static final List<String> GOOD =
      List.of(
          "'type':'rally','game':'b2-t1-l1','winner':'A','bonus':'NONE',"
              + "'ending':{'stage':'TRANSITION','stroke':'DROP','manner':'ERROR'}",
          "'type':'first-server','game':'b5-t1-l1','server':'B'",
          "'type':'final-score','game':'b2-t2-l1','a':5,'b':3,'finish':'PLAYED_OUT'",
          "'type':'time-called','game':'b3-t1-l1'",
          "'type':'undone','undone':'01890000-0000-7000-8000-00000000ffff'",
          "'type':'block-started','block':'b2'",
          "'type':'block-ended','block':'b2'",
          "'type':'yardstick','block':'b4','player':'p1','hits':7,'balls':20",
          "'type':'conditions','wind':'CALM','sun':'NONE','celsius':21.5,'humidityPercent':40",
          "'type':'effort','player':'p2','rating':6",
          "'type':'session-ended'");

  private static final List<String> PAGES =
      List.of(
          "/court/%s/state",
          "/sessions/%s",
          "/sessions/%s/board",
          "/sessions/%s/wall",
          "/sessions/%s/from-paper",
          "/sessions/%s/phone-file");

  private static StrangeClub club;
  private static PostedForms forms;
  private static List<Endpoint> endpoints;
  private static int numbered;

  @BeforeContainer
  static void start() {
    club = new StrangeClub();
    endpoints = Endpoints.all().stream().filter(each -> !each.path().endsWith("/changes")).toList();
    List<String> starts = new ArrayList<>(List.of("/", "/settings"));
    PAGES.forEach(page -> starts.add(page.formatted(StrangeClub.SESSION)));
    club.ids().forEach(id -> starts.addAll(List.of("/players/" + id, "/rotations/" + id)));
    forms = PostedForms.of(club.coach(), starts);
  }

  @AfterContainer
  static void stop() {
    club.close();
  }

  @Example
  void inputs_areFound() {
    assertThat(endpoints).hasSizeGreaterThan(80);
    assertThat(forms.pages()).hasSizeGreaterThan(30);
    assertThat(forms.names()).hasSizeGreaterThan(40);
    assertThat(forms.fieldsOf("/players/p1")).containsKeys("name", "notes");
    assertThat(forms.fieldsOf("/sessions/new")).containsKey("minutes");
    String whole = "[" + event(GOOD.get(0)) + "]";
    ClubContents before = club.contents();
    assertThat(postJson(EVENTS, whole.getBytes(StandardCharsets.UTF_8)).body()).contains("stored");
    assertThat(club.contents()).isNotEqualTo(before);
  }

  @Property(seed = "3011", edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
  void events_spoiltInAnyPlace_areTakenOrRefusedOneByOne(@ForAll long seed) {
    StrangeValues strange = new StrangeValues(seed);
    List<String> events = new ArrayList<>();
    for (int many = 1 + strange.below(4); many > 0; many--) {
      JsonNode good = JSON.readTree(event(strange.one(GOOD)));
      events.add((strange.oneIn(4) ? good : strange.spoilt(good)).toString());
    }
    String list = "[" + String.join(",", events) + "]";
    byte[] sent = strange.spoiltBytes(list.getBytes(StandardCharsets.UTF_8));
    ClubContents before = club.contents();
    HttpResponse<String> answer = postJson(EVENTS, sent);
    check(answer, "POST " + EVENTS + " " + new String(sent, StandardCharsets.UTF_8));
    boolean stored = answer.statusCode() == 200 && answer.body().contains("\"stored\"");
    boolean known = answer.statusCode() == 200 && answer.body().contains("\"known\"");
    if (!stored && !known) {
      assertThat(club.contents()).as("stored nothing of %s", list).isEqualTo(before);
    }
    if (answer.statusCode() == 200) {
      for (JsonNode each : JSON.readTree(answer.body()).get("answers")) {
        if (each.get("outcome").stringValue().equals("refused")) {
          assertThat(each.get("reason").stringValue()).as(list).contains(" ").endsWith(".");
        }
      }
    }
    if (stored) {
      String page = strange.one(PAGES).formatted(StrangeClub.SESSION);
      assertThat(club.coach().get(page).statusCode()).as("%s after %s", page, list).isEqualTo(200);
    }
  }

  @Property(seed = "3012", edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
  void forms_withSpoiltFields_areTakenOrAnsweredInWords(@ForAll long seed) {
    StrangeValues strange = new StrangeValues(seed);
    Endpoint endpoint =
        strange.one(endpoints.stream().filter(each -> each.method().equals("POST")).toList());
    String path = filled(endpoint.path(), strange);
    Map<String, String> good = new LinkedHashMap<>(forms.fieldsOf(path));
    boolean takesAway = path.matches(".*/(remove|erase|merge|archive|take-back|password)");
    for (int more = strange.below(4); more > 0; more--) {
      good.put(strange.one(forms.names()), "1");
    }
    String fields =
        good.entrySet().stream()
            .filter(field -> !strange.oneIn(12))
            .map(
                field ->
                    field.getKey()
                        + "="
                        + (takesAway || strange.oneIn(3)
                            ? strange.encoded(field.getValue())
                            : plain(field.getValue())))
            .collect(Collectors.joining("&"));
    ClubContents before = club.contents();
    HttpResponse<String> answer =
        path.startsWith("/court")
            ? postJson(path, strange.spoilt(JSON.valueToTree(good)).toString().getBytes(UTF))
            : club.post(path, fields);
    check(answer, "POST " + path + " " + fields);
    if (answer.statusCode() >= 400) {
      assertThat(club.contents()).as("POST %s %s", path, fields).isEqualTo(before);
    }
  }

  @Property(seed = "3013", edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
  void addresses_withSpoiltPartsAndQuestions_areAnswered(@ForAll long seed) {
    StrangeValues strange = new StrangeValues(seed);
    Endpoint endpoint =
        strange.one(endpoints.stream().filter(each -> each.method().equals("GET")).toList());
    List<String> asked = new ArrayList<>(endpoint.asked());
    asked.add(strange.one(forms.names()));
    String query =
        asked.stream()
            .filter(name -> !strange.oneIn(3))
            .map(name -> name + "=" + strange.encoded("2"))
            .collect(Collectors.joining("&"));
    String path = filled(endpoint.path(), strange) + (query.isEmpty() ? "" : "?" + query);
    ClubContents before = club.contents();
    check(club.coach().get(path), "GET " + path);
    assertThat(club.contents()).as("GET %s", path).isEqualTo(before);
  }

  @Property(seed = "3014", edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
  void files_spoiltInAnyPlace_areTakenOrAnsweredInWords(@ForAll long seed) {
    StrangeValues strange = new StrangeValues(seed);
    boolean list = strange.oneIn(2);
    String path = list ? "/players/import" : "/sessions/" + StrangeClub.SESSION + "/phone-file";
    String file =
        list
            ? "name,level,hand,notes\n%s,3.5,right,x\n%s,%s,%s,%s\n"
                .formatted(
                    strange.text(), strange.text(), strange.text(), strange.text(), strange.text())
            : "[" + strange.spoilt(JSON.readTree(event(strange.one(GOOD)))) + "]";
    byte[] sent = strange.spoiltBytes(file.getBytes(StandardCharsets.UTF_8));
    ClubContents before = club.contents();
    HttpResponse<String> answer = postFile(path, strange, sent);
    check(answer, "POST " + path + " " + new String(sent, StandardCharsets.UTF_8));
    if (answer.statusCode() >= 400 || list) {
      assertThat(club.contents()).as(file).isEqualTo(before);
    }
  }

  @Property(seed = "3015", edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
  void methodsAndHeads_thatNobodySends_areAnswered(@ForAll long seed) {
    StrangeValues strange = new StrangeValues(seed);
    Endpoint endpoint = strange.one(endpoints);
    String path = filled(endpoint.path(), strange);
    String method =
        strange.one(List.of("PUT", "DELETE", "PATCH", "HEAD", "OPTIONS", "FOO", "TRACE", "POST"));
    String form = strange.one(List.of("2", "1", "99", "x", "-1", "999999", "9999999999"));
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(club.address() + path))
            .header("Content-Type", strange.one(List.of("text/plain", "a/b", "x", "*/*", "json")))
            .header("Accept", strange.one(List.of("application/json", "text/html", "x/y", "q", "")))
            .header("Rallywright-Form", form)
            .header("X-CSRF-TOKEN", strange.oneIn(2) ? club.token() : "x")
            .method(method, BodyPublishers.ofString(strange.text()));
    ClubContents before = club.contents();
    HttpResponse<String> answer = club.send(request);
    assertThat(answer.statusCode()).as("%s %s", method, path).isLessThan(500);
    if (answer.statusCode() >= 400) {
      assertThat(club.contents()).as("%s %s", method, path).isEqualTo(before);
    }
  }

  private static final java.nio.charset.Charset UTF = StandardCharsets.UTF_8;

  private static void check(HttpResponse<String> answer, String sent) {
    assertThat(answer.statusCode()).as(sent).isLessThan(500);
    if (answer.statusCode() >= 400) {
      assertThat(answer.body()).as("%d to %s", answer.statusCode(), sent).containsPattern(SENTENCE);
    }
  }

  private static String filled(String path, StrangeValues strange) {
    StringBuilder filled = new StringBuilder();
    for (String part : path.substring(1).split("/", -1)) {
      filled.append('/');
      if (!part.startsWith("{")) {
        filled.append(part);
      } else if (strange.oneIn(4)) {
        filled.append(strange.encoded(StrangeClub.SESSION));
      } else {
        String id =
            path.startsWith("/sessions") && !strange.oneIn(5)
                ? StrangeClub.SESSION
                : strange.one(club.ids());
        filled.append(path.endsWith("/remove") ? "spare-" + strange.below(30) : id);
      }
    }
    return filled.toString();
  }

  private static String plain(String value) {
    return CoachBrowser.encoded(value.replace("&#34;", "\"").replace("&amp;", "&"));
  }

  private static String event(String content) {
    return """
    {"v":1,"id":"01890000-0000-7000-8000-%012x","session":"%s","at":1772557200000,"by":"t",\
    "n":%d,"seen":0,%s}"""
        .formatted(++numbered, StrangeClub.SESSION, numbered, content.replace('\'', '"'));
  }

  private static HttpResponse<String> postJson(String path, byte[] body) {
    return club.send(
        HttpRequest.newBuilder(URI.create(club.address() + path))
            .header("Content-Type", "application/json")
            .POST(BodyPublishers.ofByteArray(body)));
  }

  private static HttpResponse<String> postFile(String path, StrangeValues strange, byte[] file) {
    String name = strange.text().replaceAll("[\"\r\n]", "");
    String head =
        """
        --cut\r
        Content-Disposition: form-data; name="_csrf"\r
        \r
        %s\r
        --cut\r
        Content-Disposition: form-data; name="%s"; filename="%s"\r
        Content-Type: %s\r
        \r
        """
            .formatted(
                club.token(),
                strange.oneIn(8) ? "other" : "file",
                name,
                strange.one(List.of("text/csv", "application/json", "x")));
    byte[] tail = (strange.oneIn(8) ? "" : "\r\n--cut--\r\n").getBytes(UTF);
    return club.send(
        HttpRequest.newBuilder(URI.create(club.address() + path))
            .header("Content-Type", "multipart/form-data; boundary=cut")
            .POST(
                BodyPublishers.concat(
                    BodyPublishers.ofString(head),
                    BodyPublishers.ofByteArray(file),
                    BodyPublishers.ofByteArray(tail))));
  }
}
