package rallywright.web.demo;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rallywright.catalogue.Catalogue;
import rallywright.engine.club.Player;
import rallywright.engine.drill.Skill;
import rallywright.engine.practice.Need;
import rallywright.engine.practice.Needs;
import rallywright.engine.practice.PlayerStanding;
import rallywright.engine.practice.SkillStanding;
import rallywright.engine.practice.SkillWorth;
import rallywright.engine.reading.ClubHistory;
import rallywright.engine.reading.ClubReading;
import rallywright.engine.reading.SkillChange;
import rallywright.engine.reading.SkillReading;
import rallywright.engine.skill.Estimate;

/**
 * What the tool says of the players of an invented season, held against what is true of them.
 *
 * @param players one for each player
 */
record TruthCheck(List<OfPlayer> players) {

  /** A change is named from this chance on, as on the pages. */
  static final double NAMED_FROM = 0.8;

  /** How many needs a page names. */
  static final int NEEDS = 3;

  private static final double KNOWN = 1e-6;

  /** Keeps a copy. */
  TruthCheck {
    players = List.copyOf(players);
  }

  /**
   * A change that a page names.
   *
   * @param way whether the page says that the skill rose or that it fell
   * @param chance the chance that goes with it, from 0.8 to 1
   * @param outcome whether the truth changed that way
   */
  record Claim(Way way, double chance, Outcome outcome) {}

  /** What a page says of a change. */
  enum Way {
    /** It rose. */
    ROSE,
    /** It fell. */
    FELL
  }

  /** How a statement stands beside the truth. */
  enum Outcome {
    /** It is true. */
    RIGHT,
    /** It is not. */
    WRONG
  }

  /**
   * One player.
   *
   * @param name who
   * @param covered how many skills of all lie in their 80 % interval today
   * @param moved how many of the changes since the first week lie in their 80 % interval
   * @param claims the changes that the page names
   * @param needs how many of the three needs named are among the true three
   * @param behind the skills said to be behind, each right or wrong
   */
  record OfPlayer(
      String name, int covered, int moved, List<Claim> claims, int needs, List<Outcome> behind) {

    /** Keeps copies. */
    OfPlayer {
      claims = List.copyOf(claims);
      behind = List.copyOf(behind);
    }
  }

  /** Reads a season as the pages do, on the day after its last session, and compares. */
  static TruthCheck of(DemoSeason season, LocalDate today) {
    Catalogue catalogue = Catalogue.shipped();
    List<Player> players = season.people().players();
    ClubReading reading =
        ClubReading.of(
            new ClubHistory(
                players,
                catalogue.drills(),
                catalogue.yardsticks(),
                season.history().past(),
                today));
    List<OfPlayer> all = new ArrayList<>();
    for (Player player : players) {
      all.add(new OnePlayer(season, reading, player, today).held());
    }
    return new TruthCheck(all);
  }

  /** All changes that are named, of all players. */
  List<Claim> claims() {
    return players.stream().flatMap(each -> each.claims().stream()).toList();
  }

  /** One player of a season beside the truth. */
  private record OnePlayer(DemoSeason season, ClubReading reading, Player player, LocalDate today) {

    OfPlayer held() {
      int covered = 0;
      int moved = 0;
      List<Claim> claims = new ArrayList<>();
      for (Skill skill : Skill.values()) {
        SkillReading one = reading.skill(player.id(), skill);
        double truth = trueSkill(skill, DemoSeason.WEEKS - 1);
        Estimate now = one.now();
        covered += truth >= now.low80() && truth <= now.high80() ? 1 : 0;
        SkillChange change =
            SkillChange.between(reading, player.id(), skill, one.course().get(0).monday(), today)
                .orElseThrow(() -> new IllegalStateException(player.name() + " never played."));
        double rise = trueRise(change);
        moved += rise >= change.rise().low80() && rise <= change.rise().high80() ? 1 : 0;
        if (one.enough()) {
          addClaim(claims, change.chanceOfRise(), rise);
        }
      }
      SkillWorth worth = reading.points().worth();
      List<Need> said = Needs.of(standing(), worth).byUrgency();
      PlayerStanding truth = truth();
      Set<Skill> named = firstThree(said);
      named.retainAll(firstThree(Needs.of(truth, worth).byUrgency()));
      return new OfPlayer(player.name(), covered, moved, claims, named.size(), behind(said, truth));
    }

    private double trueSkill(Skill skill, int week) {
      return season.history().weeks().get(week).of(player.id(), skill);
    }

    private double trueRise(SkillChange change) {
      long first =
          ChronoUnit.WEEKS.between(
              DemoSeason.firstTuesday(today), change.from().monday().plusDays(1));
      return trueSkill(change.skill(), DemoSeason.WEEKS - 1)
          - trueSkill(change.skill(), (int) first);
    }

    private static void addClaim(List<Claim> claims, double chance, double rise) {
      if (chance >= NAMED_FROM) {
        claims.add(new Claim(Way.ROSE, chance, rise > 0 ? Outcome.RIGHT : Outcome.WRONG));
      } else if (chance <= 1 - NAMED_FROM) {
        claims.add(new Claim(Way.FELL, 1 - chance, rise < 0 ? Outcome.RIGHT : Outcome.WRONG));
      }
    }

    private PlayerStanding standing() {
      return reading.standing(player.id());
    }

    /** The same player, practice and all, if everything were known. */
    private PlayerStanding truth() {
      Map<Skill, SkillStanding> skills = new EnumMap<>(Skill.class);
      for (Skill skill : Skill.values()) {
        skills.put(
            skill,
            new SkillStanding(
                skill,
                trueSkill(skill, DemoSeason.WEEKS - 1),
                KNOWN,
                Needs.ENOUGH_RALLIES,
                standing().in(skill).minutesByWeek()));
      }
      return new PlayerStanding(standing().name(), standing().level(), skills);
    }

    private static Set<Skill> firstThree(List<Need> needs) {
      return new HashSet<>(needs.stream().limit(NEEDS).map(Need::skill).toList());
    }

    private static List<Outcome> behind(List<Need> said, PlayerStanding truth) {
      return said.stream()
          .filter(need -> need.cause() == Need.Cause.BEHIND)
          .map(Need::skill)
          .map(
              skill ->
                  truth.in(skill).mean() < truth.expectedIn(skill) ? Outcome.RIGHT : Outcome.WRONG)
          .toList();
    }
  }
}
