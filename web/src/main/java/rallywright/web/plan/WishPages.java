package rallywright.web.plan;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import rallywright.engine.club.PlayerId;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;
import rallywright.store.ClubStore;
import rallywright.web.oncourt.OpenSession;
import rallywright.web.oncourt.SessionDesk;
import rallywright.web.page.Form;
import rallywright.web.page.FormReader;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;

/** What a session was planned for, to be changed without typing all of it again. */
@Controller
final class WishPages {

  private static final int UNPROCESSABLE = 422;

  private final ClubStore store;
  private final SessionDesk sessions;
  private final PlanDesk desk;
  private final WishPlanner planner;
  private final PlanRuns runs;
  private final PageFrames frames;

  WishPages(
      ClubStore store,
      SessionDesk sessions,
      PlanDesk desk,
      WishPlanner planner,
      PlanRuns runs,
      PageFrames frames) {
    this.store = store;
    this.sessions = sessions;
    this.desk = desk;
    this.planner = planner;
    this.runs = runs;
    this.frames = frames;
  }

  @GetMapping("/sessions/{id}/plan/wish")
  String asked(@PathVariable String id, HttpServletRequest request, Model model) {
    OpenSession open = open(id);
    Optional<PlanRun> before = runs.find(request.getParameter("again"));
    return before.isPresent()
        ? show(open, before.get().origin().form(), before.get().refused(), request, model)
        : show(open, asPlanned(open.session()), List.of(), request, model);
  }

  @PostMapping("/sessions/{id}/plan/wish")
  String change(
      @PathVariable String id,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    OpenSession open = open(id);
    FormReader in = FormReader.of(request);
    WishForm.Wished wished = wishes(open).read(in);
    if (wished == null) {
      response.setStatus(UNPROCESSABLE);
      return show(open, in.form(), List.of(), request, model);
    }
    boolean same = planner.asksForTheSame(wished, open.session());
    PlanRun run =
        runs.start(
            new PlanRun.Origin(
                "/sessions/" + id + "/plan/wish",
                in.form(),
                same
                    ? "Kept; the plan itself stays as it was."
                    : "Planned anew. Changes made by hand before are gone."),
            search -> same ? planner.renamed(wished, open) : planner.changed(wished, open, search));
    List<String> refused = runs.soonRefused(run);
    if (!refused.isEmpty()) {
      response.setStatus(UNPROCESSABLE);
      return show(open, in.form(), refused, request, model);
    }
    return "redirect:/planning/" + run.id();
  }

  private Form asPlanned(Session session) {
    Form form =
        Form.empty()
            .with("name", session.name())
            .with("date", session.date().toString())
            .with("start", session.start().toString())
            .with("minutes", String.valueOf(session.plan().minutes()))
            .with("courts", String.valueOf(session.plan().courts()))
            .with("coverage", desk.wish(session).coverage().name())
            .with("venue", session.venue() == null ? "" : session.venue().value())
            .with("group", session.group() == null ? "" : session.group().value())
            .with(
                "who",
                session.plan().present().stream().map(PlayerId::value).toArray(String[]::new));
    return desk.more(session).shownIn(form);
  }

  private WishForm wishes(OpenSession open) {
    return WishForm.alsoOffering(store, open.session().plan().present());
  }

  private OpenSession open(String id) {
    if (id.isBlank() || id.length() > SessionId.LONGEST) {
      throw PlanPages.notHere();
    }
    return sessions.find(new SessionId(id)).orElseThrow(PlanPages::notHere);
  }

  private String show(
      OpenSession open, Form form, List<String> refused, HttpServletRequest request, Model model) {
    String title = "Change " + open.session().name();
    WishForm wishes = wishes(open);
    model.addAttribute("frame", frames.frame(title, PageFrame.Part.SESSIONS, request));
    model.addAttribute("form", form);
    model.addAttribute("refused", refused);
    model.addAttribute("players", wishes.players());
    model.addAttribute("venues", wishes.venues());
    model.addAttribute("groups", wishes.groups());
    model.addAttribute("templates", wishes.templates());
    model.addAttribute("session", open.session());
    return "plan/wish";
  }
}
