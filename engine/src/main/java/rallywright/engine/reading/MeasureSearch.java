package rallywright.engine.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rallywright.engine.club.Limit;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.DrillSide;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.Yardstick;
import rallywright.engine.plan.RoleAccess;
import rallywright.engine.plan.Seat;
import rallywright.engine.score.Side;
import rallywright.engine.skill.Contest;
import rallywright.engine.skill.Estimate;
import rallywright.engine.skill.PlannedRallies;
import rallywright.engine.skill.Posterior;
import rallywright.engine.skill.SkillGroups;
import rallywright.engine.skill.SkillSum;

/**
 * Finds what tells most about a skill for the time it takes.
 *
 * <p>Method: the Gaussian at the posterior mode is conditioned, exactly, on rallies that are still
 * to come, each with the information p (1 − p) of its expected chance ({@link
 * Posterior#expectedVarianceDrop}). Compared are {@value #MINUTES} minutes of each of the {@value
 * #DRILLS} drill roles that load the skill most, against the {@value #OPPONENTS} active players who
 * are best known in it, and every yardstick of the skill with all its balls. A player's limits are
 * kept. The three counts keep the search short (assumptions of this project).
 */
final class MeasureSearch {

  private static final int MINUTES = 5;
  private static final int DRILLS = 5;
  private static final int OPPONENTS = 3;
  private static final double SECONDS_PER_MINUTE = 60;

  private final ClubHistory history;
  private final Gathering gathering;
  private final Posterior posterior;
  private final int week;

  MeasureSearch(ClubHistory history, Gathering gathering, Posterior posterior) {
    this.history = history;
    this.gathering = gathering;
    this.posterior = posterior;
    this.week = gathering.thisWeek();
  }

  /** The best that can be done, or empty where no drill and no yardstick turns on the skill. */
  Optional<Measure> best(Player player, Skill skill) {
    List<Measure> found = new ArrayList<>();
    history.yardsticks().stream()
        .filter(test -> test.skill() == skill && isAllowed(player, skill))
        .forEach(test -> found.add(counted(player, test)));
    List<Player> opponents = opponents(player, skill);
    for (Option option : options(player, skill)) {
      opponents.forEach(other -> found.add(played(player, skill, option, other)));
    }
    return found.stream().max(Comparator.comparingDouble(Measure::dropPerMinute));
  }

  /** A drill with the side that the player takes in it. */
  private record Option(Drill drill, Side side) {

    DrillForm.Scored game() {
      return drill.scored().orElseThrow();
    }

    double load(Skill skill) {
      return game().layout().sides().of(side).weights().of(skill);
    }
  }

  private List<Option> options(Player player, Skill skill) {
    List<Option> options = new ArrayList<>();
    for (Drill drill : history.drills()) {
      boolean forTwo = drill.scored().map(game -> game.layout().players() == 2).orElse(false);
      if (forTwo) {
        RoleAccess access = RoleAccess.of(player.limits(), drill);
        for (Side side : Side.values()) {
          Option option = new Option(drill, side);
          if (access.mayTake(side) && option.load(skill) > 0 && !isMirror(option)) {
            options.add(option);
          }
        }
      }
    }
    options.sort(Comparator.comparingDouble((Option option) -> option.load(skill)).reversed());
    return options.subList(0, Math.min(DRILLS, options.size()));
  }

  /** In an even drill both sides are one and the same. */
  private static boolean isMirror(Option option) {
    return option.side() == Side.B && option.game().layout().isEven();
  }

  private static boolean isAllowed(Player player, Skill skill) {
    Set<Limit> limits = player.limits();
    return !(skill == Skill.OVERHEAD && limits.contains(Limit.NO_OVERHEADS))
        && !(skill == Skill.LOB && limits.contains(Limit.NO_RUNNING_BACK));
  }

  private List<Player> opponents(Player player, Skill skill) {
    return history.players().stream()
        .filter(each -> each.standing() == Standing.ACTIVE && !each.id().equals(player.id()))
        .sorted(Comparator.comparingDouble(each -> now(each.id(), skill).sd()))
        .limit(OPPONENTS)
        .toList();
  }

  private Estimate now(PlayerId player, Skill skill) {
    return posterior.skill(key(player, skill));
  }

  private SkillSum.Key key(PlayerId player, Skill skill) {
    Integer number = gathering.numbers().get(player);
    if (number == null) {
      throw new IllegalArgumentException("Nothing is known of the player " + player + ".");
    }
    return new SkillSum.Key(number, SkillGroups.numberOf(skill), week);
  }

  private Measure counted(Player player, Yardstick test) {
    SkillSum edge =
        SkillSum.builder()
            .plusSkill(1, key(player.id(), test.skill()))
            .plusEffect(-1, gathering.effects().difficulty(test.key()).orElseThrow())
            .build();
    double minutes = test.minutesForOne();
    return measure(
        player,
        new Measured(test.skill(), minutes, List.of(new PlannedRallies(edge, test.balls()))),
        new Named(test.key(), test.name(), Optional.empty()));
  }

  private Measure played(Player player, Skill skill, Option option, Player opponent) {
    DrillSide own = option.game().layout().sides().of(option.side());
    DrillSide others = option.game().layout().sides().of(option.side().opponent());
    Seat seat = new Seat(own.role(), List.of(player.id()));
    Seat other = new Seat(others.role(), List.of(opponent.id()));
    Fixture fixture =
        Fixture.of(
            option.drill(),
            option.side() == Side.A ? seat : other,
            option.side() == Side.A ? other : seat,
            gathering.numbers(),
            gathering.effects().of(option.drill(), Optional.empty()));
    double rallies = MINUTES * SECONDS_PER_MINUTE / option.game().seconds().mean();
    return measure(
        player,
        new Measured(skill, MINUTES, rallies(fixture, rallies)),
        new Named(option.drill().key(), option.drill().name(), Optional.of(opponent.id())));
  }

  private List<PlannedRallies> rallies(Fixture fixture, double rallies) {
    Contest contest = fixture.contest();
    SkillSum whenA = contest.serverEdge(fixture.sides(), week, Side.A);
    if (contest.roles() == Contest.Roles.BY_SIDE) {
      return List.of(new PlannedRallies(whenA, rallies));
    }
    SkillSum whenB = contest.serverEdge(fixture.sides(), week, Side.B);
    return List.of(new PlannedRallies(whenA, rallies / 2), new PlannedRallies(whenB, rallies / 2));
  }

  /** What is planned for how long. */
  private record Measured(Skill skill, double minutes, List<PlannedRallies> rallies) {}

  /** What it is called. */
  private record Named(DrillKey key, String name, Optional<PlayerId> opponent) {}

  private Measure measure(Player player, Measured planned, Named named) {
    SkillSum target = SkillSum.skill(key(player.id(), planned.skill()));
    double variance = Math.pow(now(player.id(), planned.skill()).sd(), 2);
    double drop = posterior.expectedVarianceDrop(target, planned.rallies());
    return new Measure(
        planned.skill(),
        named.key(),
        named.name(),
        named.opponent(),
        planned.minutes(),
        Math.sqrt(variance),
        Math.sqrt(Math.max(0, variance - Math.max(0, drop))));
  }
}
