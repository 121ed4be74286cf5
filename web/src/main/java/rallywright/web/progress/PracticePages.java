package rallywright.web.progress;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.drill.Skill;
import rallywright.engine.reading.ClubReading;
import rallywright.engine.reading.PlayedGame;
import rallywright.engine.reading.SkillReading;
import rallywright.store.ClubStore;
import rallywright.web.page.Form;
import rallywright.web.page.FormReader;
import rallywright.web.page.NotHere;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;

/** Does practice work: what rose since a day, and the drills that seem to bring something here. */
@Controller
final class PracticePages {

  private static final int UNPROCESSABLE = 422;
  private static final int USUAL_WEEKS = 8;

  private final ClubStore store;
  private final ClubReadings readings;
  private final PageFrames frames;

  PracticePages(ClubStore store, ClubReadings readings, PageFrames frames) {
    this.store = store;
    this.readings = readings;
    this.frames = frames;
  }

  @GetMapping("/progress/{id}/rise")
  String rise(
      @PathVariable String id,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    Player player = find(id);
    ClubReading reading = readings.now();
    LocalDate today = readings.history().today();
    LocalDate usual = usual(player, reading, today);
    FormReader in = FormReader.of(request);
    LocalDate since = since(in, usual, today);
    RiseSize size = in.choice("size", "The rise", RiseSize.MIDDLE);
    Form form = in.form();
    if (in.failed()) {
      response.setStatus(UNPROCESSABLE);
    } else {
      form = Form.empty().with("since", since.toString()).with("size", size.name());
    }
    model.addAttribute(
        "frame", frames.frame(player.name() + ": risen?", PageFrame.Part.PROGRESS, request));
    model.addAttribute("player", player);
    model.addAttribute("form", form);
    model.addAttribute("since", SkillWords.DAY.format(since) + " " + since.getYear());
    model.addAttribute("lines", lines(player, reading, since, size));
    model.addAttribute("early", early(player, reading));
    return "progress/rise";
  }

  /** Eight weeks ago, or the player's first day where that was later. */
  private static LocalDate usual(Player player, ClubReading reading, LocalDate today) {
    LocalDate ago = today.minusWeeks(USUAL_WEEKS);
    return reading.games(player.id()).stream()
        .map(PlayedGame::date)
        .min(Comparator.naturalOrder())
        .filter(first -> first.isAfter(ago))
        .orElse(ago);
  }

  private static LocalDate since(FormReader in, LocalDate usual, LocalDate today) {
    String text = in.raw("since").strip();
    if (text.isEmpty()) {
      return usual;
    }
    try {
      LocalDate since = LocalDate.parse(text);
      if (since.isBefore(today)) {
        return since;
      }
      in.problem(
          "since",
          "The day (%s) must lie before today (%s). Maybe %s.".formatted(since, today, usual));
    } catch (DateTimeException unreadable) {
      in.problem(
          "since",
          "The day (%s) must be written as year-month-day. Maybe %s."
              .formatted(FormReader.echo(text), usual));
    }
    return usual;
  }

  private static List<RiseLine> lines(
      Player player, ClubReading reading, LocalDate since, RiseSize size) {
    List<RiseLine> lines = new ArrayList<>();
    for (Skill skill : Skill.values()) {
      if (reading.skill(player.id(), skill).enough()) {
        lines.add(
            RiseLine.of(
                skill,
                reading.rise(player.id(), skill, since),
                size,
                reading.aboutPractice().sessionsToShow(player.id(), skill, since, size.logits())));
      }
    }
    return lines;
  }

  private static String early(Player player, ClubReading reading) {
    return Arrays.stream(Skill.values())
        .map(skill -> reading.skill(player.id(), skill))
        .filter(skill -> !skill.enough())
        .map(SkillReading::skill)
        .map(Skill::words)
        .collect(Collectors.joining(", "));
  }

  @GetMapping("/progress/drills")
  String drills(HttpServletRequest request, Model model) {
    List<GainLine> lines =
        readings.now().gains().stream()
            .sorted(Comparator.comparingDouble(gain -> -gain.perMinute().chanceAbove(0)))
            .map(GainLine::of)
            .toList();
    model.addAttribute(
        "frame", frames.frame("Drills that work here", PageFrame.Part.PROGRESS, request));
    model.addAttribute("lines", lines);
    model.addAttribute("before", GainLine.before());
    return "progress/drills";
  }

  private Player find(String id) {
    return store
        .players()
        .find(new PlayerId(id))
        .filter(player -> player.standing() != Standing.ERASED)
        .orElseThrow(
            () -> new NotHere("There is no such player. Maybe look under Progress for the name."));
  }
}
