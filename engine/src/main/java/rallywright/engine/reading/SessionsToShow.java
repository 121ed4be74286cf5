package rallywright.engine.reading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Skill;
import rallywright.engine.score.Side;
import rallywright.engine.session.SessionId;
import rallywright.engine.skill.Contest;
import rallywright.engine.skill.PlannedRallies;
import rallywright.engine.skill.Posterior;
import rallywright.engine.skill.SkillGroups;
import rallywright.engine.skill.SkillSum;

/**
 * How many more sessions it takes until a rise of a given size would show.
 *
 * <p><b>Card.</b> A rise shows when its chance is 0.9 or more, once the estimate stands at that
 * rise: its SD must be at most rise / 1.2816. Each further session tells what the player's newest
 * {@value #SESSIONS} sessions told on average, game by game, with the information p (1 − p) of each
 * rally at today's estimate; the Gaussian is conditioned on them exactly. Limits: the sessions are
 * taken as played this week, so that the weeks to come add no wandering of their own; a start that
 * is badly known stays badly known, and then no number of sessions is enough.
 */
final class SessionsToShow {

  /** More sessions than this are not promised. */
  static final int MOST = 60;

  /** The 90 % quantile of the standard normal: a rise shows with a chance of 9 in 10. */
  private static final double SDS_WHEN_SHOWN = 1.2815515655446004;

  private static final int SESSIONS = 3;

  private final Gathering gathering;
  private final Posterior posterior;
  private final int week;

  SessionsToShow(Gathering gathering, Posterior posterior) {
    this.gathering = gathering;
    this.posterior = posterior;
    this.week = gathering.thisWeek();
  }

  OptionalInt count(PlayerId player, Skill skill, LocalDate since, double rise) {
    if (!(rise > 0 && rise < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "The rise (%s) must be above 0. Maybe 0.2, about 5 rallies in 100.".formatted(rise));
    }
    Integer number = gathering.numbers().get(player);
    if (number == null) {
      throw new IllegalArgumentException("Nothing is known of the player " + player + ".");
    }
    int earlier =
        Math.min(week, Math.max(gathering.firstWeek(player), gathering.weeks().of(since)));
    SkillSum.Key key = new SkillSum.Key(number, SkillGroups.numberOf(skill), week);
    double sd = posterior.rise(key, earlier).sd();
    double allowed = Math.pow(rise / SDS_WHEN_SHOWN, 2);
    List<PlannedRallies> session = typical(player, skill);
    SkillSum target = SkillSum.rise(key, earlier);
    return search(sessions -> sd * sd - drop(target, session, sessions) <= allowed);
  }

  private interface Enough {
    boolean after(int sessions);
  }

  /** The smallest number that is enough; more sessions never tell less. */
  private static OptionalInt search(Enough enough) {
    if (!enough.after(MOST)) {
      return OptionalInt.empty();
    }
    int low = 0;
    int high = MOST;
    while (low < high) {
      int middle = (low + high) / 2;
      if (enough.after(middle)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return OptionalInt.of(low);
  }

  private double drop(SkillSum target, List<PlannedRallies> session, int sessions) {
    if (sessions == 0 || session.isEmpty()) {
      return 0;
    }
    return posterior.expectedVarianceDrop(
        target,
        session.stream()
            .map(each -> new PlannedRallies(each.edge(), each.rallies() * sessions))
            .toList());
  }

  /** The rallies of one session, as the newest sessions had them on average. */
  private List<PlannedRallies> typical(PlayerId player, Skill skill) {
    List<PlayedGame> games =
        gathering.games().stream()
            .filter(game -> game.has(player) && turnsOn(game, skill))
            .toList();
    List<SessionId> newest = new ArrayList<>();
    for (int i = games.size() - 1; i >= 0 && newest.size() < SESSIONS; i--) {
      if (!newest.contains(games.get(i).session())) {
        newest.add(games.get(i).session());
      }
    }
    List<PlannedRallies> rallies = new ArrayList<>();
    for (PlayedGame game : games) {
      if (newest.contains(game.session())) {
        add(rallies, gathering.fixture(game), game.rallies() / (double) newest.size());
      }
    }
    return rallies;
  }

  private static boolean turnsOn(PlayedGame game, Skill skill) {
    var sides = game.drill().scored().orElseThrow().layout().sides();
    return sides.a().weights().of(skill) > 0 || sides.b().weights().of(skill) > 0;
  }

  private void add(List<PlannedRallies> rallies, Fixture fixture, double count) {
    Contest contest = fixture.contest();
    SkillSum whenA = contest.serverEdge(fixture.sides(), week, Side.A);
    if (contest.roles() == Contest.Roles.BY_SIDE) {
      rallies.add(new PlannedRallies(whenA, count));
    } else {
      rallies.add(new PlannedRallies(whenA, count / 2));
      rallies.add(new PlannedRallies(contest.serverEdge(fixture.sides(), week, Side.B), count / 2));
    }
  }
}
