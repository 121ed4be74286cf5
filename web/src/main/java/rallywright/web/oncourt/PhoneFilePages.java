package rallywright.web.oncourt;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import rallywright.engine.session.SessionId;
import rallywright.store.StoreProblem;
import rallywright.web.page.Form;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;

/** Scores that a phone could not send and saved as a file, taken in at the desk. */
@Controller
final class PhoneFilePages {

  private static final int UNPROCESSABLE = 422;

  private final SessionDesk desk;
  private final EventIntake intake;
  private final PageFrames frames;

  PhoneFilePages(SessionDesk desk, EventIntake intake, PageFrames frames) {
    this.desk = desk;
    this.intake = intake;
    this.frames = frames;
  }

  @GetMapping("/sessions/{id}/phone-file")
  String blank(@PathVariable String id, HttpServletRequest request, Model model) {
    return show(find(id), new Answered(Form.empty(), null), request, model);
  }

  /** What the page shows after a file was sent. */
  private record Answered(Form form, @Nullable FileReceipt receipt) {}

  @PostMapping("/sessions/{id}/phone-file")
  String take(
      @PathVariable String id,
      @RequestParam(name = "file", required = false) @Nullable MultipartFile file,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model)
      throws IOException {
    OpenSession open = find(id);
    Answered answered = answer(open, file);
    if (!answered.form().problems().isEmpty()) {
      response.setStatus(UNPROCESSABLE);
    }
    return show(open, answered, request, model);
  }

  private Answered answer(OpenSession open, @Nullable MultipartFile file) throws IOException {
    try {
      if (file == null || file.isEmpty()) {
        throw new UnreadableEvents(
            HttpStatus.BAD_REQUEST,
            "No file was chosen, or it is empty. Choose the file that the phone saved; its name"
                + " begins with rallywright-scores.");
      }
      var answers = intake.take(open, file.getBytes(), EventIntake.Source.FILE);
      return new Answered(Form.empty(), FileReceipt.of(answers));
    } catch (UnreadableEvents whole) {
      return refused(whole.sentence());
    } catch (StoreProblem full) {
      return refused(String.valueOf(full.getMessage()));
    }
  }

  private static Answered refused(String sentence) {
    return new Answered(Form.empty().withProblem("file", sentence), null);
  }

  private OpenSession find(String id) {
    if (id.isBlank() || id.length() > SessionId.LONGEST) {
      throw CourtAccess.notHere(id);
    }
    return desk.find(new SessionId(id)).orElseThrow(() -> CourtAccess.notHere(id));
  }

  private String show(
      OpenSession open, Answered answered, HttpServletRequest request, Model model) {
    model.addAttribute("frame", frames.frame("A phone's file", PageFrame.Part.SESSIONS, request));
    model.addAttribute("session", open.session());
    model.addAttribute("form", answered.form());
    model.addAttribute("receipt", answered.receipt());
    return "sessions/phone-file";
  }
}
