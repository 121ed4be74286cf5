package rallywright.web.plan;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import rallywright.engine.club.Group;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.store.ClubStore;
import rallywright.web.page.Form;
import rallywright.web.page.FormReader;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;

/** A new session: what the coach wishes for, and the plan that one click makes of it. */
@Controller
final class NewSessionPages {

  private static final int UNPROCESSABLE = 422;

  private final ClubStore store;
  private final WishPlanner planner;
  private final PlanRuns runs;
  private final PageFrames frames;
  private final WishForm wishes;

  NewSessionPages(ClubStore store, WishPlanner planner, PlanRuns runs, PageFrames frames) {
    this.store = store;
    this.planner = planner;
    this.runs = runs;
    this.frames = frames;
    this.wishes = WishForm.of(store);
  }

  @GetMapping("/sessions/new")
  String blank(HttpServletRequest request, Model model) {
    Optional<PlanRun> before = runs.find(request.getParameter("again"));
    if (before.isPresent()) {
      return show(before.get().origin().form(), before.get().refused(), request, model);
    }
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    String group = request.getParameter("group") == null ? "" : request.getParameter("group");
    Optional<Group> chosen =
        store.groups().all().stream().filter(g -> g.id().value().equals(group)).findFirst();
    String[] ticked =
        wishes.offered().stream()
            .map(Player::id)
            .filter(id -> chosen.isPresent() && chosen.get().members().contains(id))
            .map(PlayerId::value)
            .toArray(String[]::new);
    Form form =
        Form.empty()
            .with("name", chosen.map(Group::name).orElse("Session"))
            .with("date", today.toString())
            .with("start", "18:00")
            .with("minutes", "90")
            .with("courts", "1")
            .with("coverage", "NEEDS".equals(request.getParameter("coverage")) ? "NEEDS" : "FULL")
            .with("group", group)
            .with("who", ticked);
    return show(inFront(request).shownIn(form), List.of(), request, model);
  }

  /** What a week of a season puts in front, if the page was reached from there. */
  private static MoreWishes inFront(HttpServletRequest request) {
    FormReader in = FormReader.of(request);
    MoreWishes wishes = MoreWishes.read(in);
    return in.failed() ? MoreWishes.NONE : wishes;
  }

  @PostMapping("/sessions/new")
  String plan(HttpServletRequest request, HttpServletResponse response, Model model) {
    FormReader in = FormReader.of(request);
    WishForm.Wished wished = wishes.read(in);
    if (wished == null) {
      response.setStatus(UNPROCESSABLE);
      return show(in.form(), List.of(), request, model);
    }
    PlanRun run =
        runs.start(
            new PlanRun.Origin(
                "/sessions/new",
                in.form(),
                "The plan is ready. Change anything; the clock answers at once."),
            search -> planner.newSession(wished, search));
    List<String> refused = runs.soonRefused(run);
    if (!refused.isEmpty()) {
      response.setStatus(UNPROCESSABLE);
      return show(in.form(), refused, request, model);
    }
    return "redirect:/planning/" + run.id();
  }

  private String show(Form form, List<String> refused, HttpServletRequest request, Model model) {
    model.addAttribute("frame", frames.frame("Plan a session", PageFrame.Part.SESSIONS, request));
    model.addAttribute("form", form);
    model.addAttribute("refused", refused);
    model.addAttribute("players", wishes.players());
    model.addAttribute("venues", wishes.venues());
    model.addAttribute("groups", wishes.groups());
    model.addAttribute("templates", wishes.templates());
    return "plan/new";
  }
}
