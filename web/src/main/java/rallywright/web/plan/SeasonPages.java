package rallywright.web.plan;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import rallywright.engine.club.Group;
import rallywright.engine.club.PlayerId;
import rallywright.engine.plan.Attendee;
import rallywright.engine.practice.PointWorth;
import rallywright.engine.season.Phase;
import rallywright.engine.season.Season;
import rallywright.engine.season.SeasonWeek;
import rallywright.engine.season.SeasonWish;
import rallywright.store.ClubStore;
import rallywright.web.page.AllowedNumber;
import rallywright.web.page.FormReader;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;

/** The weeks ahead for a group: what stands in front when; each week is planned when it comes. */
@Controller
final class SeasonPages {

  private static final AllowedNumber WEEKS =
      new AllowedNumber("The number of weeks", 1, SeasonWish.MOST_WEEKS, "Maybe 8.");
  private static final AllowedNumber EVERY =
      new AllowedNumber("The weeks from test to test", 1, SeasonWish.MOST_WEEKS, "Maybe 4.");

  private final ClubStore store;
  private final PlanDesk desk;
  private final PageFrames frames;

  SeasonPages(ClubStore store, PlanDesk desk, PageFrames frames) {
    this.store = store;
    this.desk = desk;
    this.frames = frames;
  }

  @GetMapping("/season")
  String weeks(HttpServletRequest request, Model model) {
    FormReader in = FormReader.of(request);
    int weeks = in.whole("weeks", WEEKS).orElse(8);
    int every = in.whole("every", EVERY).orElse(4);
    Optional<Group> group =
        store.groups().all().stream()
            .filter(each -> each.id().value().equals(in.raw("group")))
            .findFirst()
            .or(() -> store.groups().all().stream().findFirst());
    List<PlayerId> players = new ArrayList<>();
    group.ifPresent(each -> players.addAll(each.members()));
    List<Attendee> attendees = desk.attendees(players);
    List<SeasonLine> shown = new ArrayList<>();
    if (!in.failed() && !attendees.isEmpty()) {
      Season season = Season.of(attendees, PointWorth.DOUBLES, new SeasonWish(weeks, every));
      season.weeks().forEach(week -> shown.add(week(week, group.orElseThrow())));
    }
    model.addAttribute("frame", frames.frame("Weeks ahead", PageFrame.Part.SESSIONS, request));
    model.addAttribute(
        "form",
        in.form()
            .with("weeks", in.raw("weeks").isEmpty() ? "8" : in.raw("weeks"))
            .with("every", in.raw("every").isEmpty() ? "4" : in.raw("every"))
            .with("group", group.map(each -> each.id().value()).orElse("")));
    model.addAttribute("groups", groups());
    model.addAttribute("weeks", shown);
    return "plan/season";
  }

  private Map<String, String> groups() {
    Map<String, String> names = new LinkedHashMap<>();
    store.groups().all().forEach(each -> names.put(each.id().value(), each.name()));
    return names;
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private static SeasonLine week(SeasonWeek week, Group group) {
    String focus =
        week.focus().stream().map(skill -> "&focus=" + skill.name()).collect(Collectors.joining());
    boolean due = week.test() == SeasonWeek.Test.DUE;
    String link =
        "/sessions/new?group=%s%s&tests=%s&coverage=%s"
            .formatted(
                group.id().value(),
                focus,
                due ? MoreWishes.Tests.ONE : MoreWishes.Tests.NONE,
                week.phase() == Phase.BROAD ? "FULL" : "NEEDS");
    return new SeasonLine(
        week.number(),
        capital(week.phase().words()),
        week.focus().stream().map(skill -> skill.words()).collect(Collectors.joining(" and ")),
        due ? "a test is due" : "",
        link);
  }
}
