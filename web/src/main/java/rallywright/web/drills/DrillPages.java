package rallywright.web.drills;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import rallywright.catalogue.Catalogue;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.Progression;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.Yardstick;
import rallywright.web.page.NotHere;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;

/** The catalogue: all drills from the line back to the baseline, and each by itself. */
@Controller
final class DrillPages {

  private final PageFrames frames;
  private final Catalogue catalogue = Catalogue.shipped();

  DrillPages(PageFrames frames) {
    this.frames = frames;
  }

  @GetMapping("/drills")
  String list(
      @RequestParam(defaultValue = "") String skill, HttpServletRequest request, Model model) {
    Optional<Skill> chosen = skill.isEmpty() ? Optional.empty() : Optional.of(skill(skill));
    model.addAttribute("frame", frames.frame("Drills", PageFrame.Part.DRILLS, request));
    model.addAttribute("shelves", shelves(chosen));
    model.addAttribute("skills", List.copyOf(DrillWords.skills(catalogue.drills())));
    model.addAttribute("chosen", chosen.map(Skill::words).orElse(""));
    return "drills/list";
  }

  @GetMapping("/drills/{key}")
  String one(@PathVariable String key, HttpServletRequest request, Model model) {
    PageFrame frame = frames.frame("", PageFrame.Part.DRILLS, request);
    DrillView view = view(key, frame);
    model.addAttribute("frame", frames.frame(view.name(), PageFrame.Part.DRILLS, request));
    model.addAttribute("drill", view);
    return "drills/one";
  }

  private DrillView view(String key, PageFrame frame) {
    Optional<DrillKey> known = key(key);
    Optional<Drill> drill = known.flatMap(catalogue::drill);
    Optional<Yardstick> yardstick = known.flatMap(catalogue::yardstick);
    return drill
        .map(each -> DrillView.of(each, frame.units()))
        .or(() -> yardstick.map(each -> DrillView.of(each, frame.units())))
        .orElseThrow(
            () ->
                new NotHere(
                    "There is no drill \""
                        + key
                        + "\" in the catalogue. Maybe it was renamed:"
                        + " open Drills and choose it from the list."));
  }

  private static Optional<DrillKey> key(String text) {
    try {
      return Optional.of(new DrillKey(text));
    } catch (IllegalArgumentException notAKey) {
      return Optional.empty();
    }
  }

  private static Skill skill(String text) {
    return Arrays.stream(Skill.values())
        .filter(skill -> skill.words().equals(text.toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow(
            () ->
                new NotHere(
                    "There is no skill \"%s\"; the skills are %s. Maybe open Drills and choose one."
                        .formatted(
                            text,
                            Arrays.stream(Skill.values())
                                .map(Skill::words)
                                .collect(Collectors.joining(", ")))));
  }

  private List<DrillCard.Shelf> shelves(Optional<Skill> skill) {
    List<DrillCard.Shelf> shelves = new ArrayList<>();
    for (Progression place : Progression.values()) {
      List<DrillCard> cards =
          catalogue.drills().stream()
              .filter(drill -> drill.progression() == place)
              .filter(drill -> skill.isEmpty() || drill.skills().contains(skill.get()))
              .map(DrillCard::of)
              .toList();
      if (!cards.isEmpty()) {
        shelves.add(new DrillCard.Shelf(CourtFigure.capital(place.words()), cards));
      }
    }
    List<DrillCard> yardsticks =
        catalogue.yardsticks().stream()
            .filter(yardstick -> skill.isEmpty() || yardstick.skill() == skill.get())
            .map(DrillCard::of)
            .toList();
    if (!yardsticks.isEmpty()) {
      shelves.add(new DrillCard.Shelf("Yardsticks", yardsticks));
    }
    return shelves;
  }
}
