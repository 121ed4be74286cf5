package rallywright.web.plan;

import jakarta.servlet.http.HttpServletRequest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.plan.BlockId;
import rallywright.engine.plan.PlanCheck;
import rallywright.engine.plan.PlanEditor;
import rallywright.engine.plan.WhyNot;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;
import rallywright.store.ClubStore;
import rallywright.web.oncourt.OpenSession;
import rallywright.web.oncourt.SessionDesk;
import rallywright.web.page.DayWords;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;
import rallywright.web.weather.WeatherBook;
import rallywright.web.weather.WeatherWords;

/** Shows a session's plan: the blocks, what may be changed, why a drill is not in it. */
@Component
final class PlanView {

  private final ClubStore store;
  private final SessionDesk sessions;
  private final PlanDesk desk;
  private final PageFrames frames;
  private final WeatherBook weather;

  PlanView(
      ClubStore store,
      SessionDesk sessions,
      PlanDesk desk,
      PageFrames frames,
      WeatherBook weather) {
    this.store = store;
    this.sessions = sessions;
    this.desk = desk;
    this.frames = frames;
    this.weather = weather;
  }

  /** The session of an address. */
  OpenSession open(String id) {
    if (id.isBlank() || id.length() > SessionId.LONGEST) {
      throw PlanPages.notHere();
    }
    return sessions.find(new SessionId(id)).orElseThrow(PlanPages::notHere);
  }

  /** Whether only the blocks are asked for, by a page that shows the rest already. */
  static boolean isPart(HttpServletRequest request) {
    return "true".equals(request.getHeader("HX-Request"));
  }

  /** The plan's page, or its part, with a problem beside it. */
  String show(OpenSession open, String problem, HttpServletRequest request, Model model) {
    Session session = open.session();
    PageFrame frame = frames.frame(session.name(), PageFrame.Part.SESSIONS, request);
    model.addAttribute("frame", frame);
    model.addAttribute("session", session);
    model.addAttribute("indoors", open.isIndoors());
    model.addAttribute("weather", WeatherWords.of(weather.of(session.id()), frame.units()));
    model.addAttribute("who", open.names().listed(session.plan().present()));
    model.addAttribute("when", DayWords.of(session));
    model.addAttribute("templates", store.sessions().templates().keySet());
    model.addAttribute("drills", WishChoices.drills());
    String asked = request.getParameter("why") == null ? "" : request.getParameter("why");
    model.addAttribute("asked", asked);
    model.addAttribute("why", why(session, asked));
    String block = request.getParameter("block") == null ? "" : request.getParameter("block");
    model.addAttribute("board", board(open, new PlanBoard.Problem(problem, block)));
    return isPart(request) ? "plan/board" : "plan/page";
  }

  /** Why a drill is not in the plan, or an empty text where nobody asked. */
  private String why(Session session, String drill) {
    return !WishChoices.drills().containsKey(drill)
        ? ""
        : WhyNot.of(desk.problem(session)).about(session.plan(), new DrillKey(drill)).sentence();
  }

  private PlanBoard board(OpenSession open, PlanBoard.Problem problem) {
    return desk.withEditor(open.session(), editor -> board(open, problem, editor));
  }

  private PlanBoard board(OpenSession open, PlanBoard.Problem problem, PlanEditor editor) {
    PlanCheck check = editor.check(open.plan());
    Set<BlockId> touched = PlanDesk.touched(open.progress());
    String coverage =
        check.minutesByGroup().entrySet().stream()
            .map(entry -> entry.getKey().words() + " " + Math.round(entry.getValue()) + " min")
            .collect(Collectors.joining(", "));
    return new PlanBoard(
        open.session().id().value(),
        PlanBlock.of(open, touched, editor::spared),
        check.clock().words(),
        check.clock().fits(),
        coverage,
        check.brokenRules().stream().map(PlanCheck.BrokenRule::sentence).toList(),
        PlanBlock.notes(open, check),
        check.clock().fits() && check.brokenRules().isEmpty() ? check.gapWords() : "",
        problem,
        offered(),
        people(open),
        lastBefore(open.session()).map(last -> BesideLast.words(open, last)).orElse(""));
  }

  /** The newest session that was played before this one. */
  private Optional<OpenSession> lastBefore(Session session) {
    return store.sessions().lastBegunBefore(session).flatMap(sessions::find);
  }

  private static Map<String, String> people(OpenSession open) {
    Map<String, String> people = new LinkedHashMap<>();
    open.plan().present().forEach(id -> people.put(id.value(), open.names().of(id)));
    return people;
  }

  private Map<String, String> offered() {
    List<Drill> drills = desk.drills();
    Map<String, String> names = new LinkedHashMap<>();
    drills.stream()
        .filter(drill -> drill.scored().isPresent())
        .forEach(drill -> names.put(drill.key().value(), drill.name()));
    return names;
  }
}
