package rallywright.web.progress;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import rallywright.catalogue.Catalogue;
import rallywright.engine.club.Group;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.Skill;
import rallywright.engine.plan.DrillGains;
import rallywright.engine.plan.RoleAccess;
import rallywright.engine.practice.DoublesTable;
import rallywright.engine.practice.Need;
import rallywright.engine.practice.Needs;
import rallywright.engine.practice.PlayerStanding;
import rallywright.engine.practice.SessionLoad;
import rallywright.engine.practice.WeekLoad;
import rallywright.engine.reading.ClubReading;
import rallywright.engine.reading.LoadReading;
import rallywright.engine.reading.Measure;
import rallywright.engine.reading.PlayedGame;
import rallywright.engine.reading.PracticeReading;
import rallywright.engine.reading.SkillReading;
import rallywright.store.ClubStore;
import rallywright.web.page.NotHere;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;

/** What the scores say: the club or a group in a table, and the page of each player. */
@Controller
final class ProgressPages {

  /** The newest games that a player's page shows. */
  private static final int MOST_GAMES = 40;

  private static final int MOST_NEEDS = 3;

  private final ClubStore store;
  private final ClubReadings readings;
  private final PageFrames frames;
  private final Catalogue catalogue = Catalogue.shipped();

  ProgressPages(ClubStore store, ClubReadings readings, PageFrames frames) {
    this.store = store;
    this.readings = readings;
    this.frames = frames;
  }

  @GetMapping("/progress")
  String club(HttpServletRequest request, Model model) {
    String group = request.getParameter("group") == null ? "" : request.getParameter("group");
    List<Group> groups = store.groups().all();
    Optional<Group> chosen = groups.stream().filter(g -> g.id().value().equals(group)).findFirst();
    ClubReading reading = readings.now();
    List<PlayerRow> rows =
        store.players().all().stream()
            .filter(ProgressPages::isShown)
            .filter(player -> chosen.isEmpty() || chosen.get().members().contains(player.id()))
            .sorted(Comparator.comparing(Player::name))
            .map(player -> row(player, reading))
            .toList();
    model.addAttribute("frame", frames.frame("Progress", PageFrame.Part.PROGRESS, request));
    model.addAttribute("rows", rows);
    model.addAttribute("skills", Arrays.stream(Skill.values()).map(Skill::words).toList());
    model.addAttribute("groups", groups);
    model.addAttribute("group", chosen.map(each -> each.id().value()).orElse(""));
    return "progress/club";
  }

  private static boolean isShown(Player player) {
    return Set.of(Standing.ACTIVE, Standing.WALK_IN).contains(player.standing());
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
        player.id().value(),
        player.name(),
        cells,
        LoadView.number(thisWeek(player)),
        needs(player, reading).get(0).skill().words());
  }

  private WeekLoad thisWeek(Player player) {
    return WeekLoad.weeks(loads(player), readings.history().today(), 1).get(0);
  }

  private List<SessionLoad> loads(Player player) {
    return LoadReading.of(readings.history().sessions(), player.id());
  }

  private static List<Need> needs(Player player, ClubReading reading) {
    return Needs.of(reading.standing(player.id()), DoublesTable.SHARES).byUrgency();
  }

  @GetMapping("/progress/{id}")
  String player(@PathVariable String id, HttpServletRequest request, Model model) {
    Player player = find(id);
    ClubReading reading = readings.now();
    model.addAttribute("frame", frames.frame(player.name(), PageFrame.Part.PROGRESS, request));
    model.addAttribute("player", player);
    model.addAttribute("skills", skills(player, reading));
    model.addAttribute("games", games(player, reading));
    model.addAttribute("needs", advice(player, reading));
    model.addAttribute("measures", measures(player, reading));
    model.addAttribute("load", LoadView.of(loads(player), readings.history().today()));
    return "progress/player";
  }

  private Player find(String id) {
    return Optional.of(id)
        .filter(text -> !text.isBlank())
        .flatMap(text -> store.players().find(new PlayerId(text)))
        .filter(player -> player.standing() != Standing.ERASED)
        .orElseThrow(
            () -> new NotHere("There is no such player. Maybe look under Progress for the name."));
  }

  /** What can be said first, what is too early to tell after it. */
  private static List<SkillLine> skills(Player player, ClubReading reading) {
    return Arrays.stream(Skill.values())
        .map(skill -> SkillLine.of(reading.skill(player.id(), skill)))
        .sorted(Comparator.comparing(line -> line.enough() ? 0 : 1))
        .toList();
  }

  private List<GameLine> games(Player player, ClubReading reading) {
    List<PlayedGame> newest = new ArrayList<>(reading.games(player.id()));
    Collections.reverse(newest);
    return newest.stream()
        .limit(MOST_GAMES)
        .map(game -> GameLine.of(game, player.id(), reading.outlook(game), this::firstName))
        .toList();
  }

  private String firstName(PlayerId id) {
    return store
        .players()
        .find(id)
        .map(each -> each.standing() == Standing.ERASED ? "a former player" : each.firstName())
        .orElse("somebody");
  }

  private List<NextLine> advice(Player player, ClubReading reading) {
    return needs(player, reading).stream()
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
    PlayerStanding standing = reading.standing(player.id());
    return Arrays.stream(Skill.values())
        .filter(skill -> PracticeReading.isWide(reading.skill(player.id(), skill)))
        .flatMap(skill -> reading.aboutPractice().measure(player.id(), skill).stream())
        .sorted(
            Comparator.comparingDouble(
                (Measure measure) ->
                    -measure.dropPerMinute() * DoublesTable.SHARES.of(standing, measure.skill())))
        .limit(MOST_NEEDS)
        .map(measure -> MeasureLine.of(measure, this::firstName))
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
