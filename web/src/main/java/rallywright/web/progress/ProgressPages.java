package rallywright.web.progress;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import rallywright.catalogue.Catalogue;
import rallywright.engine.club.Group;
import rallywright.engine.club.Player;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.Skill;
import rallywright.engine.plan.DrillGains;
import rallywright.engine.plan.RoleAccess;
import rallywright.engine.practice.SessionLoad;
import rallywright.engine.practice.WeekLoad;
import rallywright.engine.reading.ClubReading;
import rallywright.engine.reading.LoadReading;
import rallywright.engine.reading.Measure;
import rallywright.engine.reading.PlayedGame;
import rallywright.engine.reading.PracticeReading;
import rallywright.engine.reading.SkillChange;
import rallywright.engine.reading.SkillReading;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;

/** What the scores say: the club or a group in a table, and the page of each player. */
@Controller
final class ProgressPages {

  /** The newest games that a player's page shows. */
  private static final int MOST_GAMES = 40;

  private static final int UNPROCESSABLE = 422;

  private static final int MOST_NEEDS = 3;

  private final ShownPlayers players;
  private final ClubReadings readings;
  private final PageFrames frames;
  private final Catalogue catalogue = Catalogue.shipped();

  ProgressPages(ShownPlayers players, ClubReadings readings, PageFrames frames) {
    this.players = players;
    this.readings = readings;
    this.frames = frames;
  }

  @GetMapping("/progress")
  String club(HttpServletRequest request, Model model) {
    Optional<Group> chosen = players.group(Objects.toString(request.getParameter("group"), ""));
    ClubReading reading = readings.now();
    List<Player> shown = players.of(chosen);
    model.addAttribute("frame", frames.frame("Progress", PageFrame.Part.PROGRESS, request));
    model.addAttribute("rows", shown.stream().map(player -> row(player, reading)).toList());
    model.addAttribute("matrix", GainMatrix.of(shown, reading, readings.points().worth()));
    model.addAttribute("skills", Arrays.stream(Skill.values()).map(Skill::words).toList());
    model.addAttribute("groups", players.groups());
    model.addAttribute("group", chosen.map(each -> each.id().value()).orElse(""));
    return "progress/club";
  }

  private PlayerRow row(Player player, ClubReading reading) {
    List<String> cells = new ArrayList<>();
    for (Skill skill : Skill.values()) {
      SkillReading one = reading.skill(player.id(), skill);
      cells.add(
          one.enough()
              ? SkillWords.ten(one.lowShare()) + "–" + SkillWords.ten(one.highShare())
              : "");
    }
    return new PlayerRow(
        player.id().value(), player.name(), cells, LoadView.number(thisWeek(player)));
  }

  private WeekLoad thisWeek(Player player) {
    return WeekLoad.weeks(loads(player), readings.history().today(), 1).get(0);
  }

  private List<SessionLoad> loads(Player player) {
    return LoadReading.of(readings.history().sessions(), player.id());
  }

  @GetMapping("/progress/{id}")
  String player(
      @PathVariable String id,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    Player player = players.one(id);
    ClubReading reading = readings.now();
    model.addAttribute("frame", frames.frame(player.name(), PageFrame.Part.PROGRESS, request));
    model.addAttribute("player", player);
    Comparison comparison = comparison(player, reading, request);
    model.addAttribute("comparison", comparison);
    model.addAttribute("skills", skills(player, reading, comparison));
    model.addAttribute("games", games(player, reading));
    model.addAttribute("needs", advice(player, reading));
    model.addAttribute("measures", measures(player, reading));
    model.addAttribute("points", PointView.of(player.id(), readings.points()));
    model.addAttribute("notes", NoteOnPlayer.of(readings.history().sessions(), player.id()));
    model.addAttribute("load", LoadView.of(loads(player), readings.history().today()));
    if (!comparison.form().problems().isEmpty()) {
      response.setStatus(UNPROCESSABLE);
    }
    return "progress/player";
  }

  private static Comparison comparison(
      Player player, ClubReading reading, HttpServletRequest request) {
    Days days = Days.of(reading.skill(player.id(), Skill.SERVE).course());
    return Comparison.of(
        days,
        Objects.toString(request.getParameter(Comparison.FROM), ""),
        Objects.toString(request.getParameter(Comparison.TO), ""));
  }

  /** What can be said first, what is too early to tell after it. */
  private static List<SkillLine> skills(Player player, ClubReading reading, Comparison comparison) {
    return Arrays.stream(Skill.values())
        .map(
            skill ->
                SkillLine.of(
                    reading.skill(player.id(), skill),
                    SkillChange.between(
                            reading, player.id(), skill, comparison.from(), comparison.to())
                        .map(SkillWords::change)
                        .orElse("")))
        .sorted(Comparator.comparing(line -> line.enough() ? 0 : 1))
        .toList();
  }

  private List<GameLine> games(Player player, ClubReading reading) {
    List<PlayedGame> newest = new ArrayList<>(reading.games(player.id()));
    Collections.reverse(newest);
    return newest.stream()
        .limit(MOST_GAMES)
        .map(game -> GameLine.of(game, player.id(), reading.outlook(game), players::firstName))
        .toList();
  }

  private List<NextLine> advice(Player player, ClubReading reading) {
    return PlayerNeeds.of(player, reading, readings.points().worth()).stream()
        .limit(MOST_NEEDS)
        .map(
            need ->
                new NextLine(
                    SkillWords.capital(need.skill().words()),
                    need.sentence(),
                    drillsFor(player, need.skill(), reading)))
        .toList();
  }

  /** Where too little is known: what tells most, the most valuable first. */
  private List<MeasureLine> measures(Player player, ClubReading reading) {
    Map<Skill, Double> worth = readings.points().worth().of(reading.standing(player.id()));
    return Arrays.stream(Skill.values())
        .filter(skill -> PracticeReading.isWide(reading.skill(player.id(), skill)))
        .flatMap(skill -> reading.aboutPractice().measure(player.id(), skill).stream())
        .sorted(
            Comparator.comparingDouble(
                (Measure measure) ->
                    -measure.dropPerMinute() * worth.getOrDefault(measure.skill(), 0.0)))
        .limit(MOST_NEEDS)
        .map(measure -> MeasureLine.of(measure, players::firstName))
        .toList();
  }

  private List<NextLine.DrillLink> drillsFor(Player player, Skill skill, ClubReading reading) {
    DrillGains gains = PracticeReading.beside(reading.gains());
    return catalogue.drills().stream()
        .filter(drill -> drill.scored().isPresent() && weight(drill, skill) > 0)
        .filter(drill -> RoleAccess.of(player.limits(), drill) != RoleAccess.NEITHER)
        .sorted(
            Comparator.comparingDouble(
                (Drill drill) -> -weight(drill, skill) * gains.of(drill.key())))
        .limit(2)
        .map(drill -> new NextLine.DrillLink(drill.key().value(), drill.name()))
        .toList();
  }

  private static double weight(Drill drill, Skill skill) {
    var sides = drill.scored().orElseThrow().layout().sides();
    return Math.max(sides.a().weights().of(skill), sides.b().weights().of(skill));
  }
}
