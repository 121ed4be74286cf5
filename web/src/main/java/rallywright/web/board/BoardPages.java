package rallywright.web.board;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.method.annotation.SseEmitter;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.SessionId;
import rallywright.web.oncourt.OpenSession;
import rallywright.web.oncourt.SessionDesk;
import rallywright.web.page.Confirmation;
import rallywright.web.page.FormReader;
import rallywright.web.page.NotHere;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;

/** The live board: seen by the coach and on a wall; from it the next block and the end. */
@Controller
final class BoardPages {

  private final SessionDesk desk;
  private final PageFrames frames;
  private final BoardStream stream;
  private final Clock clock = Clock.systemUTC();

  BoardPages(SessionDesk desk, PageFrames frames, BoardStream stream) {
    this.desk = desk;
    this.frames = frames;
    this.stream = stream;
  }

  private OpenSession found(String id) {
    if (id.isBlank() || id.length() > SessionId.LONGEST) {
      throw notHere();
    }
    return desk.find(new SessionId(id)).orElseThrow(BoardPages::notHere);
  }

  private static NotHere notHere() {
    return new NotHere("There is no such session. Maybe it was removed; look under Sessions.");
  }

  @GetMapping("/sessions/{id}/board")
  String board(@PathVariable String id, HttpServletRequest request, Model model) {
    return show("board/board", id, request, model);
  }

  @GetMapping("/sessions/{id}/wall")
  String wall(@PathVariable String id, HttpServletRequest request, Model model) {
    return show("board/wall", id, request, model);
  }

  private String show(String template, String id, HttpServletRequest request, Model model) {
    OpenSession open = found(id);
    model.addAttribute(
        "frame", frames.frame(open.session().name() + ": board", PageFrame.Part.SESSIONS, request));
    model.addAttribute("session", open.session());
    model.addAttribute("view", BoardView.of(open, clock.instant()));
    return template;
  }

  @GetMapping(path = "/sessions/{id}/changes", produces = MediaType.TEXT_EVENT_STREAM_VALUE)
  SseEmitter changes(@PathVariable String id) {
    return stream.join(found(id).session().id());
  }

  /** Begins the block that the coach saw as the next one; phones follow. */
  @PostMapping("/sessions/{id}/board/next")
  String next(@PathVariable String id, HttpServletRequest request, RedirectAttributes redirect) {
    OpenSession open = found(id);
    String wanted = FormReader.of(request).raw("block");
    Optional<PlannedBlock> next =
        open.progress().next().filter(block -> block.id().value().equals(wanted));
    if (open.progress().isEnded() || next.isEmpty()) {
      Confirmation.say(
          redirect, "That block has begun already, or is gone. The board shows what is next.");
    } else {
      desk.keepTyped(open, List.of(new CourtEvent.BlockStarted(stamp(open), next.get().id())));
      Confirmation.say(redirect, open.title(next.get()) + " has begun; the phones follow.");
    }
    return "redirect:/sessions/" + id + "/board";
  }

  /** Ends the session for everybody. */
  @PostMapping("/sessions/{id}/board/end")
  String end(@PathVariable String id, RedirectAttributes redirect) {
    OpenSession open = found(id);
    if (!open.progress().isEnded()) {
      desk.keepTyped(open, List.of(new CourtEvent.SessionEnded(stamp(open))));
      Confirmation.say(redirect, "The session has ended; scores can still be corrected.");
    }
    return "redirect:/sessions/" + id + "/board";
  }

  private CourtEvent.Stamp stamp(OpenSession open) {
    return new CourtEvent.Stamp(desk.freshEventId(), open.session().id(), clock.millis(), "");
  }
}
