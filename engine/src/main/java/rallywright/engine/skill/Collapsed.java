package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Evidence counted together: games of the same contest between the same sides in the same week, and
 * balls of the same test, say exactly what their sum says.
 */
final class Collapsed {

  private record GameKey(int week, int contest, Sides sides, Clarity clarity, Class<?> kind) {
    /** An odd number near 2³² over the golden ratio; it spreads small numbers (Knuth, volume 3). */
    private static final int SPREAD = 0x9E3779B1;

    @Override
    public int hashCode() {
      int hash = week * SPREAD + contest;
      for (int player : sides.a()) {
        hash = hash * SPREAD + player;
      }
      for (int player : sides.b()) {
        hash = hash * SPREAD + player;
      }
      return hash ^ hash >>> 15;
    }
  }

  private record TestKey(int week, YardstickResult.Test test) {}

  /** Contests by number: most games share a few, whose many weights need not be compared. */
  private static final class Contests {
    private final IdentityHashMap<Contest, Integer> seen = new IdentityHashMap<>();
    private final Map<Contest, Integer> numbers = new HashMap<>();

    private int number(Contest contest) {
      return seen.computeIfAbsent(
          contest, each -> numbers.computeIfAbsent(each, unknown -> numbers.size()));
    }
  }

  private Collapsed() {}

  static List<Evidence> of(List<? extends Evidence> evidence) {
    Map<Object, Evidence> sums = new LinkedHashMap<>();
    List<Evidence> single = new ArrayList<>();
    Contests contests = new Contests();
    for (Evidence piece : evidence) {
      if (piece instanceof YardstickResult result) {
        sums.merge(new TestKey(result.week(), result.test()), result, Collapsed::sum);
      } else if (piece instanceof Game game && !(game.result() instanceof ScorePath)) {
        Game ordered = ordered(game);
        GameKey key =
            new GameKey(
                ordered.week(),
                contests.number(ordered.contest()),
                ordered.sides(),
                ordered.clarity(),
                ordered.result().getClass());
        sums.merge(key, ordered, Collapsed::sum);
      } else {
        single.add(piece);
      }
    }
    List<Evidence> all = new ArrayList<>(sums.values());
    all.addAll(single);
    return all;
  }

  /** In an even drill A and B are only names: the lower number is A. */
  private static Game ordered(Game game) {
    boolean even =
        game.contest().roles() == Contest.Roles.BY_SIDE
            && game.contest().effects().isEmpty()
            && game.contest().first().equals(game.contest().second());
    if (!even || game.sides().a().get(0) < game.sides().b().get(0)) {
      return game;
    }
    return new Game(
        game.week(),
        game.contest(),
        new Sides(game.sides().b(), game.sides().a()),
        swapped(game.result()),
        game.clarity());
  }

  private static Result swapped(Result result) {
    if (result instanceof RalliesWon won) {
      return new RalliesWon(won.b(), won.a());
    }
    RalliesByServer log = (RalliesByServer) result;
    return new RalliesByServer(
        log.bServed(), log.bServedAndWon(), log.aServed(), log.aServedAndWon());
  }

  private static Evidence sum(Evidence one, Evidence other) {
    if (one instanceof YardstickResult first && other instanceof YardstickResult second) {
      return new YardstickResult(
          first.week(), first.test(), first.hits() + second.hits(), first.balls() + second.balls());
    }
    Game first = (Game) one;
    Result result = sum(first.result(), ((Game) other).result());
    return new Game(first.week(), first.contest(), first.sides(), result, first.clarity());
  }

  private static Result sum(Result one, Result other) {
    if (one instanceof RalliesWon first && other instanceof RalliesWon second) {
      return new RalliesWon(first.a() + second.a(), first.b() + second.b());
    }
    RalliesByServer first = (RalliesByServer) one;
    RalliesByServer second = (RalliesByServer) other;
    return new RalliesByServer(
        first.aServed() + second.aServed(),
        first.aServedAndWon() + second.aServedAndWon(),
        first.bServed() + second.bServed(),
        first.bServedAndWon() + second.bServedAndWon());
  }
}
