package rallywright.engine.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rallywright.engine.club.PlayerId;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.practice.EffortRating;
import rallywright.engine.practice.SessionLoad;
import rallywright.engine.session.GameProgress;
import rallywright.engine.session.SessionProgress;

/**
 * The load of a player's sessions.
 *
 * <p><b>Card.</b> A session counts for a player who rated it, struck a yardstick in it or stood in
 * a game of it that was played. Its minutes run from the start of the first block to the end of the
 * last, as recorded on court. Where nothing of the kind was recorded, or where it lies below half
 * or above twice the planned time (scores typed in from paper, an end pressed the next day), the
 * planned time stands (assumption of this project).
 */
public final class LoadReading {

  private static final double SHORTEST_PART = 0.5;
  private static final double LONGEST_PART = 2;
  private static final double MILLIS_PER_MINUTE = 60_000;

  private LoadReading() {}

  /**
   * The sessions of a player.
   *
   * @param sessions the club's sessions with what happened in them
   * @param player the player
   * @return one for each session that counts, in the order given
   */
  public static List<SessionLoad> of(List<SessionProgress> sessions, PlayerId player) {
    List<SessionLoad> loads = new ArrayList<>();
    for (SessionProgress progress : sessions) {
      Optional<EffortRating> effort =
          progress.efforts().stream()
              .filter(each -> each.player().equals(player))
              .map(each -> new EffortRating(each.rating()))
              .findFirst();
      if (effort.isPresent() || tookPart(progress, player)) {
        loads.add(new SessionLoad(progress.session().date(), minutes(progress), effort));
      }
    }
    return loads;
  }

  private static boolean tookPart(SessionProgress progress, PlayerId player) {
    boolean played =
        progress.games().stream()
            .filter(game -> game.status() != GameProgress.Status.NOT_BEGUN)
            .map(GameProgress::game)
            .anyMatch(
                game -> game.a().players().contains(player) || game.b().players().contains(player));
    return played
        || progress.session().plan().blocks().stream()
            .flatMap(block -> progress.yardsticks(block.id()).stream())
            .anyMatch(counted -> counted.player().equals(player));
  }

  /**
   * How long a session took.
   *
   * @param progress the session with what happened in it
   * @return minutes, warm-ups and rests included
   */
  static double minutes(SessionProgress progress) {
    double planned = progress.session().plan().minutes();
    double recorded = recorded(progress).orElse(planned);
    boolean likely = recorded >= SHORTEST_PART * planned && recorded <= LONGEST_PART * planned;
    return likely ? recorded : planned;
  }

  private static OptionalDouble recorded(SessionProgress progress) {
    List<PlannedBlock> blocks = progress.session().plan().blocks();
    OptionalDouble start =
        blocks.stream()
            .flatMap(block -> progress.startedAt(block.id()).stream())
            .mapToDouble(Long::doubleValue)
            .min();
    OptionalDouble end =
        blocks.stream()
            .flatMap(block -> progress.endedAt(block.id()).stream())
            .mapToDouble(Long::doubleValue)
            .max();
    return start.isPresent() && end.isPresent()
        ? OptionalDouble.of((end.getAsDouble() - start.getAsDouble()) / MILLIS_PER_MINUTE)
        : OptionalDouble.empty();
  }
}
