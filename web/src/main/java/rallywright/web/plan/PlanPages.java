package rallywright.web.plan;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import rallywright.engine.club.Player;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.plan.BlockId;
import rallywright.engine.plan.PlanAnswer;
import rallywright.engine.plan.PlanCheck;
import rallywright.engine.plan.PlanEdit;
import rallywright.engine.plan.PlanEditor;
import rallywright.engine.plan.PlanProblem;
import rallywright.engine.plan.SessionPlanner;
import rallywright.engine.plan.WhyNot;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;
import rallywright.store.ClubStore;
import rallywright.web.oncourt.OpenSession;
import rallywright.web.oncourt.SessionDesk;
import rallywright.web.page.Confirmation;
import rallywright.web.page.DayWords;
import rallywright.web.page.FormReader;
import rallywright.web.page.NotHere;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;
import rallywright.web.weather.WeatherBook;
import rallywright.web.weather.WeatherWords;

/** A session's plan: see it, change it by hand, plan it anew, keep it as a template. */
@Controller
final class PlanPages {

  private static final int UNPROCESSABLE = 422;

  private final ClubStore store;
  private final SessionDesk sessions;
  private final PlanDesk desk;
  private final PageFrames frames;
  private final WeatherBook weather;

  PlanPages(
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

  @GetMapping("/sessions/{id}/plan")
  String page(@PathVariable String id, HttpServletRequest request, Model model) {
    return show(open(id), "", request, model);
  }

  /** One change by hand; a page that asks for a part gets the board alone. */
  @PostMapping("/sessions/{id}/plan/change")
  String change(
      @PathVariable String id,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    FormReader in = FormReader.of(request);
    PlanEdit answer = store.inOneStep(() -> changed(id, in));
    if (answer instanceof PlanEdit.Refused refused) {
      response.setStatus(isPart(request) ? 200 : UNPROCESSABLE);
      return show(open(id), refused.sentence(), request, model);
    }
    return isPart(request)
        ? show(open(id), "", request, model)
        : "redirect:/sessions/" + id + "/plan";
  }

  private PlanEdit changed(String id, FormReader in) {
    OpenSession open = open(id);
    PlanChange change = PlanChange.of(in, open, PlanDesk.touched(open.progress()));
    PlanEdit answer = desk.edit(open.session(), change::apply);
    if (answer instanceof PlanEdit.Changed changed) {
      store.sessions().save(open.session().withPlan(changed.plan()));
    }
    return answer;
  }

  @PostMapping("/sessions/{id}/plan/anew")
  String anew(
      @PathVariable String id,
      HttpServletRequest request,
      HttpServletResponse response,
      RedirectAttributes redirect,
      Model model) {
    OpenSession open = open(id);
    if (!PlanDesk.touched(open.progress()).isEmpty()) {
      response.setStatus(UNPROCESSABLE);
      return show(
          open,
          "Some of this session was played already; a new plan would lose its place. Maybe change"
              + " the blocks that are still to come by hand.",
          request,
          model);
    }
    PlanProblem problem = desk.problem(open.session());
    PlanAnswer answer = SessionPlanner.planAnew(problem, open.plan());
    if (answer instanceof PlanAnswer.Refused refused) {
      response.setStatus(UNPROCESSABLE);
      return show(open, String.join(" ", refused.sentences()), request, model);
    }
    store.sessions().save(open.session().withPlan(((PlanAnswer.Planned) answer).plan()));
    Confirmation.say(redirect, "Planned anew from what is known today.");
    return "redirect:/sessions/" + id + "/plan";
  }

  @PostMapping("/sessions/{id}/plan/template")
  String keep(
      @PathVariable String id,
      HttpServletRequest request,
      HttpServletResponse response,
      RedirectAttributes redirect,
      Model model) {
    OpenSession open = open(id);
    FormReader in = FormReader.of(request);
    String name = in.text("template", "The template's name", Player.LONGEST_NAME);
    if (!in.failed() && store.sessions().templates().containsKey(name)) {
      in.problem(
          "template",
          "There is already a template named \"%s\". Maybe add a number."
              .formatted(FormReader.echo(name)));
    }
    if (in.failed()) {
      response.setStatus(UNPROCESSABLE);
      return show(open, in.form().problem("template"), request, model);
    }
    store.sessions().saveTemplate(name, open.plan());
    Confirmation.say(redirect, "Kept as \"" + name + "\"; it is offered with the next session.");
    return "redirect:/sessions/" + id + "/plan";
  }

  @PostMapping("/sessions/{id}/plan/template/remove")
  String forget(@PathVariable String id, HttpServletRequest request, RedirectAttributes redirect) {
    OpenSession open = open(id);
    String name = FormReader.of(request).raw("template");
    store.sessions().removeTemplate(name);
    Confirmation.say(redirect, "The template \"" + FormReader.echo(name) + "\" is not kept now.");
    return "redirect:/sessions/" + open.session().id() + "/plan";
  }

  private static boolean isPart(HttpServletRequest request) {
    return "true".equals(request.getHeader("HX-Request"));
  }

  private OpenSession open(String id) {
    if (id.isBlank() || id.length() > SessionId.LONGEST) {
      throw notHere();
    }
    return sessions.find(new SessionId(id)).orElseThrow(PlanPages::notHere);
  }

  static NotHere notHere() {
    return new NotHere("There is no such session. Maybe it was removed; look under Sessions.");
  }

  private String show(OpenSession open, String problem, HttpServletRequest request, Model model) {
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
    PlanEditor editor = desk.editor(open.session());
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
    return sessions.all().stream()
        .filter(each -> each.state() != Session.State.PLANNED)
        .filter(each -> !each.id().equals(session.id()))
        .filter(
            each ->
                !each.date().atTime(each.start()).isAfter(session.date().atTime(session.start())))
        .findFirst()
        .flatMap(each -> sessions.find(each.id()));
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
