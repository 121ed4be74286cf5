package rallywright.web.rotation;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.function.Function;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.rotation.DayAnswer;
import rallywright.engine.rotation.DayResult;
import rallywright.engine.rotation.PlayDay;
import rallywright.engine.rotation.RotationSchedule;
import rallywright.engine.rotation.SavedDay;
import rallywright.paper.Origin;
import rallywright.paper.PaperSize;
import rallywright.paper.RotationRequest;
import rallywright.paper.RotationSheet;
import rallywright.web.ServerSettings;
import rallywright.web.page.Confirmation;
import rallywright.web.page.DayWords;
import rallywright.web.page.Form;
import rallywright.web.page.FormReader;
import rallywright.web.page.NotHere;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;
import rallywright.web.page.PrintedPages;

/** One day of games: run it round by round, change who is there, print it, show it on a wall. */
@Controller
final class DayPages {

  private static final int UNPROCESSABLE = 422;

  private final RotationDesk desk;
  private final PageFrames frames;
  private final ServerSettings settings;

  DayPages(RotationDesk desk, PageFrames frames, ServerSettings settings) {
    this.desk = desk;
    this.frames = frames;
    this.settings = settings;
  }

  static NotHere notHere() {
    return new NotHere("There is no such rotation. Maybe it was removed; look under Rotations.");
  }

  private SavedDay found(String id) {
    return desk.find(id).orElseThrow(DayPages::notHere);
  }

  @GetMapping("/rotations/{id}")
  String one(@PathVariable String id, HttpServletRequest request, Model model) {
    return show(found(id), Form.empty(), request, model);
  }

  private String show(SavedDay saved, Form form, HttpServletRequest request, Model model) {
    model.addAttribute("frame", frames.frame(saved.name(), PageFrame.Part.SESSIONS, request));
    model.addAttribute("saved", saved);
    model.addAttribute("when", DayWords.of(saved.date()));
    model.addAttribute("view", view(saved));
    model.addAttribute("time", desk.time(saved));
    model.addAttribute("form", form);
    model.addAttribute("known", desk.namesBeside(saved));
    return "rotation/one";
  }

  private DayView view(SavedDay saved) {
    return DayView.of(saved.day(), desk.names(saved), desk.played(saved));
  }

  @PostMapping("/rotations/{id}/next")
  String next(
      @PathVariable String id,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    return scored(PlayDay::next, new Reply(id, request, response, model));
  }

  @PostMapping("/rotations/{id}/score")
  String score(
      @PathVariable String id,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    return scored(DayAnswer.Ready::new, new Reply(id, request, response, model));
  }

  /** Keeps the scores that were typed in, and then does what was pressed. */
  private String scored(Function<PlayDay, DayAnswer> then, Reply to) {
    FormReader in = FormReader.of(to.request());
    List<DayResult> results = DayScores.typed(in);
    String refusal =
        in.failed() ? "" : desk.change(to.id(), day -> DayScores.kept(day, results, then));
    return answered(in, refusal, "score", to);
  }

  @PostMapping("/rotations/{id}/leave")
  String leave(
      @PathVariable String id,
      HttpServletRequest request,
      HttpServletResponse response,
      RedirectAttributes redirect,
      Model model) {
    FormReader in = FormReader.of(request);
    String who = in.text("leaves", "Who leaves", Player.LONGEST_NAME);
    String name = in.failed() ? "" : desk.names(found(id)).getOrDefault(new PlayerId(who), "");
    String refusal = in.failed() ? "" : desk.change(id, day -> day.leaving(new PlayerId(who)));
    if (!in.failed() && refusal.isEmpty()) {
      Confirmation.say(redirect, name + " leaves; the rounds to come were found anew.");
    }
    return answered(in, refusal, "leaves", new Reply(id, request, response, model));
  }

  @PostMapping("/rotations/{id}/arrive")
  String arrive(
      @PathVariable String id,
      HttpServletRequest request,
      HttpServletResponse response,
      RedirectAttributes redirect,
      Model model) {
    FormReader in = FormReader.of(request);
    String name = in.text("arrives", "The name", Player.LONGEST_NAME);
    SavedDay saved = found(id);
    String refusal = in.failed() ? "" : desk.arrive(saved, name);
    if (!in.failed() && refusal.isEmpty()) {
      Confirmation.say(redirect, name + " plays from the next round on.");
    }
    return answered(in, refusal, "arrives", new Reply(id, request, response, model));
  }

  @PostMapping("/rotations/{id}/remove")
  String remove(@PathVariable String id, RedirectAttributes redirect) {
    SavedDay saved = found(id);
    desk.remove(saved.id());
    Confirmation.say(redirect, saved.name() + " was removed.");
    return "redirect:/rotations";
  }

  /** Where an answer goes. */
  private record Reply(
      String id, HttpServletRequest request, HttpServletResponse response, Model model) {}

  /** What a change came to: back to the page, or the page with what was wrong. */
  private String answered(FormReader in, String refusal, String field, Reply to) {
    if (!refusal.isEmpty()) {
      in.problem(field, PairLines.named(refusal, desk.names(found(to.id()))));
    }
    if (!in.failed()) {
      return "redirect:/rotations/" + to.id();
    }
    to.response().setStatus(UNPROCESSABLE);
    return show(found(to.id()), in.form(), to.request(), to.model());
  }

  @GetMapping("/rotations/{id}/wall")
  String wall(@PathVariable String id, HttpServletRequest request, Model model) {
    SavedDay saved = found(id);
    model.addAttribute("frame", frames.frame(saved.name(), PageFrame.Part.SESSIONS, request));
    model.addAttribute("saved", saved);
    model.addAttribute("view", view(saved));
    return "rotation/wall";
  }

  @GetMapping("/rotations/{id}/sheet.pdf")
  ResponseEntity<byte[]> sheet(
      @PathVariable String id, @RequestParam(defaultValue = "a4") String paper) {
    SavedDay saved = found(id);
    PaperSize size = PrintedPages.paper(paper);
    Origin origin = settings.mode() == ServerSettings.Mode.DEMO ? Origin.DEMO : Origin.OWN_CLUB;
    byte[] pdf =
        RotationSheet.pdf(
            new RotationRequest(
                saved.name(),
                DayWords.of(saved.date()),
                saved.day().wish().game(),
                new RotationSchedule(saved.day().roundsToPrint(), saved.day().measures()),
                desk.names(saved),
                origin),
            size);
    String file = "rotation-" + saved.date() + ".pdf";
    return PrintedPages.shown(pdf, file);
  }
}
