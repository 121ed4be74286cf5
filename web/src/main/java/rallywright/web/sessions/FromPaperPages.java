package rallywright.web.sessions;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.score.FinalScoreCheck;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.GameState;
import rallywright.engine.score.Score;
import rallywright.engine.score.ScoreRefusal;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.CourtEvent.FinalScoreGiven;
import rallywright.engine.session.CourtEvent.Finish;
import rallywright.engine.session.GameProgress;
import rallywright.engine.session.SessionId;
import rallywright.web.oncourt.OpenSession;
import rallywright.web.oncourt.SessionDesk;
import rallywright.web.page.AllowedNumber;
import rallywright.web.page.Confirmation;
import rallywright.web.page.Form;
import rallywright.web.page.FormProblems;
import rallywright.web.page.FormReader;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;

/** Scores that were written on the court sheet, typed in afterwards in the sheet's order. */
@Controller
final class FromPaperPages {

  /** The largest number that is looked at; what a game allows is checked by its format. */
  private static final int MOST_POINTS = 400;

  private final SessionDesk desk;
  private final PageFrames frames;
  private final InstantSource clock = InstantSource.system();

  FromPaperPages(SessionDesk desk, PageFrames frames) {
    this.desk = desk;
    this.frames = frames;
  }

  @GetMapping("/sessions/{id}/from-paper")
  String grid(@PathVariable String id, HttpServletRequest request, Model model) {
    OpenSession open = open(id);
    return show(open, Form.of(known(open), FormProblems.none()), request, model);
  }

  @PostMapping("/sessions/{id}/from-paper")
  String keep(
      @PathVariable String id,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model,
      RedirectAttributes redirect) {
    OpenSession open = open(id);
    FormReader in = FormReader.of(request);
    List<CourtEvent> typed = new ArrayList<>();
    for (PlannedBlock block : open.plan().blocks()) {
      for (PlannedGame game : block.games()) {
        read(open, block, game, in).ifPresent(typed::add);
      }
    }
    if (in.failed()) {
      response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
      return show(open, in.form(), request, model);
    }
    desk.keepTyped(open, typed);
    Confirmation.say(
        redirect,
        typed.isEmpty()
            ? "Nothing had changed, so nothing was stored."
            : typed.size() == 1 ? "One score was stored." : typed.size() + " scores were stored.");
    return "redirect:/sessions/" + open.session().id();
  }

  private Optional<CourtEvent> read(
      OpenSession open, PlannedBlock block, PlannedGame game, FormReader in) {
    String field = game.id().value();
    OptionalInt a = in.whole("a-" + field, allowed());
    OptionalInt b = in.whole("b-" + field, allowed());
    if (!in.form().problem("a-" + field).isEmpty() || !in.form().problem("b-" + field).isEmpty()) {
      return Optional.empty();
    }
    if (a.isEmpty() && b.isEmpty()) {
      return Optional.empty();
    }
    if (a.isEmpty() || b.isEmpty()) {
      in.problem(
          (a.isEmpty() ? "a-" : "b-") + field,
          "One box is empty; a score needs both, or none where the game was not played.");
      return Optional.empty();
    }
    Finish finish = in.ticked("time-" + field) ? Finish.TIME_CALLED : Finish.PLAYED_OUT;
    Score score = Score.of(a.getAsInt(), b.getAsInt());
    Optional<String> refusal = refusal(open.formatOf(block, game), score, finish);
    if (refusal.isPresent()) {
      in.problem("a-" + field, open.named(game, refusal.get()));
      return Optional.empty();
    }
    return isKnown(open, game, score, finish)
        ? Optional.empty()
        : Optional.of(given(open, game, score, finish));
  }

  private static Optional<String> refusal(GameFormat format, Score score, Finish finish) {
    GameState.Clock clock =
        finish == Finish.TIME_CALLED ? GameState.Clock.TIME_CALLED : GameState.Clock.RUNNING;
    return FinalScoreCheck.of(format).refusalOf(score, clock).map(ScoreRefusal::sentence);
  }

  private static boolean isKnown(OpenSession open, PlannedGame game, Score score, Finish finish) {
    return open.progress()
        .game(game.id())
        .filter(GameProgress::isOver)
        .filter(known -> known.score().equals(score) && finish(known) == finish)
        .isPresent();
  }

  private CourtEvent given(OpenSession open, PlannedGame game, Score score, Finish finish) {
    var stamp = new CourtEvent.Stamp(desk.freshEventId(), open.session().id(), clock.millis(), "");
    return new FinalScoreGiven(stamp, game.id(), score, finish);
  }

  private static Finish finish(GameProgress game) {
    return game.status() == GameProgress.Status.TIME_CALLED
        ? Finish.TIME_CALLED
        : Finish.PLAYED_OUT;
  }

  private static AllowedNumber allowed() {
    return new AllowedNumber("The score", 0, MOST_POINTS, "Maybe a letter slipped in.");
  }

  /** The boxes as they would be typed for what is known already. */
  private static Map<String, List<String>> known(OpenSession open) {
    Map<String, List<String>> values = new LinkedHashMap<>();
    for (GameProgress game : open.progress().games()) {
      if (game.isOver()) {
        String field = game.game().id().value();
        values.put("a-" + field, List.of(String.valueOf(game.score().a())));
        values.put("b-" + field, List.of(String.valueOf(game.score().b())));
        if (finish(game) == Finish.TIME_CALLED) {
          values.put("time-" + field, List.of("on"));
        }
      }
    }
    return values;
  }

  private OpenSession open(String id) {
    if (id.isBlank() || id.length() > SessionId.LONGEST) {
      throw SessionPages.notHere();
    }
    return desk.find(new SessionId(id)).orElseThrow(SessionPages::notHere);
  }

  private String show(OpenSession open, Form form, HttpServletRequest request, Model model) {
    PageFrame frame = frames.frame("From paper", PageFrame.Part.SESSIONS, request);
    model.addAttribute("frame", frame);
    model.addAttribute("session", open.session());
    model.addAttribute("form", form);
    model.addAttribute(
        "blocks",
        open.plan().blocks().stream()
            .filter(block -> !block.games().isEmpty())
            .map(
                block ->
                    new PaperRows(
                        open.title(block),
                        open.formatOf(block, block.games().get(0))
                            .withStart(Score.LOVE_ALL)
                            .label(),
                        GameWords.of(open, block)))
            .toList());
    return "sessions/from-paper";
  }
}
